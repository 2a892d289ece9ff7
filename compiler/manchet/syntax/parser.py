"""From the text of a file to its tree: indentation makes the tree, each line is read by itself.

A line that cannot be read is reported once and stands in the tree as `Unread`; the lines around it are read on.
"""

from __future__ import annotations

from typing import Any

from manchet.diagnostics.diagnostic import Diagnostic, Edit
from manchet.diagnostics.outcome import Outcome
from manchet.source.merge_marks import is_unmerged
from manchet.source.text import Line, SourceText, lines_of
from manchet.syntax import nodes as n
from manchet.syntax.building import tail_of
from manchet.syntax.line import read_line
from manchet.syntax.mistakes.faults import REMARKS, Fault, LineFix, LineTrouble, as_report
from manchet.syntax.mistakes.lacking import in_its_stage, lacking
from manchet.syntax.nodes import Entry, File
from manchet.syntax.openings import ONE_LINE
from manchet.syntax.vocabulary import BY_THE_STAGE

DEEPEST = 64
STEP = 2
TO_SPACES = (LineFix((), "indent with spaces, two for each step deeper", safe=True),)
MOST_LINES = 5_000
"""Lines changed by one fix. A bakery's longest file has fewer."""
MOST_REPORTS = 20
"""Reports of a file that are worth reading at once; a last line says how many more there are."""


class _Open:
    """A line whose deeper lines are still being read."""

    __slots__ = ("children", "context", "depth", "line", "node")

    def __init__(self, line: Line | None, node: Any, depth: int, context: str) -> None:
        self.line = line
        self.node = node
        self.depth = depth
        self.context = context
        self.children: list[Entry] = []


class _Reports:
    """What is wrong with a file: the first reports in full, of the others only how many."""

    def __init__(self, most: int) -> None:
        self.most = most
        self.kept: list[Diagnostic] = []
        self.more = 0
        self.spread: dict[int, list[Edit]] = {}
        self.sure = True
        """No line that is indented with a tab is indented wrongly besides, or with odd spaces: then spaces for tabs move nothing."""
        self.last: Line | None = None

    def full(self, line: Line) -> bool:
        """Whether there is no room for one more; then it is counted."""
        if len(self.kept) < self.most:
            return False
        self.more += 1
        self.last = self.last or line
        return True

    def add(self, fault: Fault | None, line: Line) -> None:
        if fault is not None and not self.full(line):
            self.kept.append(as_report(fault, line))

    def add_of_lines(self, fault: Fault | None, line: Line) -> list[Edit]:
        """Adds one that is said once for several lines; what is put into the list given back is done for them all."""
        edits: list[Edit] = []
        if fault is not None and not self.full(line):
            self.spread[len(self.kept)] = edits
            self.kept.append(as_report(fault, line))
        return edits

    def all(self) -> tuple[Diagnostic, ...]:
        for at, edits in self.spread.items():
            one = self.kept[at]
            fix = one.fixes[0]
            fix = fix._replace(edits=tuple(edits[:MOST_LINES]), safe=fix.safe and self.sure)
            self.kept[at] = one._replace(fixes=(fix,) if edits else ())
        self.kept.sort(key=lambda report: (report.place.line, report.place.column))
        if self.last is not None:
            self.kept.append(as_report(Fault("too-many-mistakes", 0, 1, {"more": str(self.more)}), self.last))
        return tuple(self.kept)


def parse(source: SourceText, most: int = MOST_REPORTS) -> Outcome[File]:
    """The tree of a file, and a report for each of its mistakes, of `most` of them in full; in time linear in its length.
    Of a half-finished merge our version is the tree, and nothing but the merge is reported. Never raises."""
    lines = lines_of(source)
    if is_unmerged(source.text):
        from manchet.source.unmerged import ours_of, reports_of_unmerged  # few files are

        unmerged = reports_of_unmerged(lines)
        if unmerged:
            tree = _tree(ours_of(lines), source.path, most).value
            return Outcome(tree._replace(lines=lines), unmerged)
    return _tree(lines, source.path, most)


def _tree(lines: tuple[Line, ...], path: str, most: int) -> Outcome[File]:
    reports = _Reports(most)
    root = _Open(None, None, -1, "top")
    stack = [root]
    skipped = -1  # how deep the line stands whose deeper lines are left out; -1 for none
    tabs = False
    tab_shift = 0
    slip: tuple[int, int] | None = None  # an indentation that is wrong, said once, and the depth it is read as
    contexts = [""] * len(lines)
    of_tabs: list[Edit] = []
    of_slip: list[Edit] = []
    of_skipped: list[Edit] = []
    for line in lines:
        if not line.body:
            continue
        if skipped >= 0 and (line.indent > skipped or line.body[0].isspace()):
            of_skipped.append(Edit(line.place(0, 0), "# "))
            continue
        skipped = -1
        if line.body[0].isspace():
            if not tabs:
                of_tabs = reports.add_of_lines(Fault("tab-indentation", 0, 1, {}, TO_SPACES), line)
            tabs = True
            tabbed = True
            line, spaces = _without_tabs(line)
            above = stack[-1]
            if above.line is not None and above.line.raw[:1] == " ":
                # a tab among lines indented with spaces: as deep as the line above allows
                tab_shift = STEP * (above.depth + (above.context not in ONE_LINE)) - spaces
            spaces += tab_shift
        else:
            spaces = line.indent
            tabbed = False
        if slip is not None and slip[0] == spaces:
            depth, odd = min(slip[1], stack[-1].depth + 1), True
        else:
            depth, misplaced = _depth(line, spaces, stack)
            of_slip = reports.add_of_lines(misplaced, line)
            odd = misplaced is not None
            slip = (spaces, depth) if odd else None
        if odd:
            of_slip.append(_indent(line, depth))
        if tabbed:
            of_tabs.append(_indent(line, depth))
            reports.sure &= not odd and not line.raw[: line.indent].strip(" \t")
        standing = stack[:]
        while stack[-1].depth >= depth:
            reports.add(*_close(stack))
        parent = stack[-1]
        if parent.context == "skipped":
            continue
        contexts[line.number - 1] = parent.context
        found = read_line(line.body, parent.context)
        if odd and found.trouble is not None:
            of_slip.clear()  # it cannot be read there either, so nobody knows where it belongs
            of_slip = []
        node, context = found.node, found.opens
        sure = [fault for fault in found.faults if fault.name not in REMARKS or node is not None]
        for fault in sure:
            if type(node) is n.ReservedHead:
                of_skipped = reports.add_of_lines(fault, line)
                of_skipped.append(Edit(line.place(0, 0), "# "))
            else:
                reports.add(_mending(fault, line.body, parent.context), line)
        if found.trouble is not None:
            from manchet.syntax.mistakes.recovery import unread_node  # a sound file has no need of it

            if not sure and not reports.full(line):
                reports.add(_diagnosis(found.trouble, odd, line, standing), line)
            node = unread_node(found.trouble)
            context = node.opens or "skipped"
        elif type(node) is n.Tail:
            if isinstance(parent.node, n.MaterialNode):
                parent.node = tail_of(parent.node, node)
                continue
            if isinstance(parent.node, (n.TakeAll, n.TakeLeft, n.EverythingElse)):
                warm = [part for part in node.parts if isinstance(part, n.Amount)]
                if warm:
                    parent.node = parent.node._replace(at=warm[0])
                continue
        if context == "skipped":
            skipped = line.indent
        stack.append(_Open(line, node, depth, context))
    while len(stack) > 1:
        reports.add(*_close(stack))
    return Outcome(File(path, lines, tuple(root.children), tuple(contexts)), reports.all())


def _diagnosis(trouble: LineTrouble, odd: bool, line: Line, above: list[_Open]) -> Fault | None:
    """Why a line could not be read; one whose indentation is wrong is not said to stand in the wrong place too. `above` is
    the line above, after those it stands under."""
    from manchet.syntax.mistakes.blame import diagnose  # a sound file has no need of it

    fault = diagnose(trouble)
    if fault.name in ("line-outside-stage", "line-outside-block"):
        if odd:
            return None
        return fault._replace(fixes=_under_what_is_above(line, above))
    if fault.start == 0 and fault.name == "unreadable-line" and not fault.fixes:
        return fault._replace(fixes=_under_what_is_above(line, above))
    return _mending(fault, line.body, trouble.context)


def _mending(fault: Fault, body: str, context: str) -> Fault:
    if not fault.fixes:
        return fault
    from manchet.syntax.mistakes.mending import mending  # a sound file has no need of it

    return mending(fault, body, context)


def _under_what_is_above(line: Line, above: list[_Open]) -> tuple[LineFix, ...]:
    """The line as deep as it can be read under the line above, or beside it."""
    for parent in reversed(above):
        if parent.context == "skipped":
            return ()
        found = read_line(line.body, parent.context)
        if found.trouble is None and not found.faults and type(found.node) is not n.BareName:
            spaces = " " * (STEP * (parent.depth + 1))
            return (LineFix(((-line.indent, 0, spaces),), f"put {_spaces(len(spaces))} before it"),)
    return ()


def _indent(line: Line, depth: int) -> Edit:
    return Edit(line.place(-line.indent, 0), " " * (STEP * depth))


def _close(stack: list[_Open]) -> tuple[Fault | None, Line]:
    """Put the last line, with what stands under it, under the line above; and what it lacks, now that all is read."""
    done = stack.pop()
    assert done.line is not None
    odd = None
    if type(done.node) is n.StepNode and done.node.verb.text in BY_THE_STAGE:
        done.node, odd = in_its_stage(done.node, [above.node for above in stack])
    stack[-1].children.append(Entry(done.line, done.node, tuple(done.children)))
    if odd is not None:
        return odd, done.line
    if stack[-1].context == "kitchen":
        return None, done.line  # it says how long one piece takes, whatever is done with it
    if type(done.node) is not n.StepNode or any(isinstance(child.node, n.Unread) for child in done.children):
        return None, done.line
    under = tuple(c for child in done.children if isinstance(child.node, n.ClauseLine) for c in child.node.clauses)
    return lacking(done.node, under, done.line.body), done.line


def _without_tabs(line: Line) -> tuple[Line, int]:
    """The line with a body that begins at its first word, and the spaces that were probably meant: two for a tab."""
    body = line.body.lstrip()
    blank = line.raw[: len(line.raw) - len(line.raw.lstrip())]
    return line._replace(indent=len(blank), body=body), STEP * blank.count("\t") + blank.count(" ")


def _depth(line: Line, spaces: int, stack: list[_Open]) -> tuple[int, Fault | None]:
    """How deep a line stands, and what is wrong with its indentation.

    One step is two spaces, and a line is at most one step deeper than the one above it. What stands too deep is read as
    if it stood where it can: under a heading, else beside the line above it.
    """
    deepest = stack[-1].depth + 1
    depth, odd = divmod(spaces, STEP)
    if depth > DEEPEST:
        return min(deepest, DEEPEST), Fault("too-deep", -line.indent, 0, {"most": str(DEEPEST)})
    if not odd and depth <= deepest:
        return depth, None
    if stack[-1].context in ONE_LINE:
        deepest -= 1
    if odd:
        depth = min(max(depth, 1), max(deepest, 0))
        if depth < deepest and _reads_deeper(line.body, depth, stack):
            depth += 1
        words = {"spaces": _spaces(spaces), "near": _spaces(STEP * depth)}
        return depth, Fault("odd-indentation", -line.indent, 0, words, _with_spaces(depth))
    words = {"spaces": _spaces(spaces), "most": _spaces(STEP * deepest)}
    return deepest, Fault("deep-indentation", -line.indent, 0, words, _with_spaces(deepest))


def _with_spaces(depth: int) -> tuple[LineFix, ...]:
    """A fix whose edits are put together line by line."""
    return (LineFix((), f"put {_spaces(STEP * depth)} there"),)


def _reads_deeper(body: str, depth: int, stack: list[_Open]) -> bool:
    """Whether a line can be read one step deeper, and not at `depth`."""
    there, deeper = (next(o.context for o in reversed(stack) if o.depth < d) for d in (depth, depth + 1))
    if "skipped" in (there, deeper):
        return False
    return read_line(body, there).trouble is not None and read_line(body, deeper).trouble is None


def _spaces(number: int) -> str:
    return "no space" if not number else f"{number} space{'s' if number > 1 else ''}"
