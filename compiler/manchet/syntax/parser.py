"""From the text of a file to its tree: indentation makes the tree, each line is read by itself.

A line that cannot be read is reported once and stands in the tree as `Unread`; the lines around it are read on.
"""

from __future__ import annotations

from typing import Any

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.outcome import Outcome
from manchet.source.text import Line, SourceText, lines_of
from manchet.syntax import nodes as n
from manchet.syntax.building import tail_of
from manchet.syntax.context import context_under
from manchet.syntax.faults import Fault, at_most, reported
from manchet.syntax.line import read_line
from manchet.syntax.nodes import Entry, File, Unread

DEEPEST = 64
STEP = 2


class _Open:
    """A line whose deeper lines are still being read."""

    __slots__ = ("children", "context", "depth", "line", "node")

    def __init__(self, line: Line | None, node: Any, depth: int, context: str) -> None:
        self.line = line
        self.node = node
        self.depth = depth
        self.context = context
        self.children: list[Entry] = []


def parse(source: SourceText) -> Outcome[File]:
    """The tree of a file, and a report for each of its mistakes, in time linear in its length. Never raises."""
    lines = lines_of(source)
    reports: list[Diagnostic] = []
    root = _Open(None, None, -1, "top")
    stack = [root]
    for line in lines:
        if not line.body:
            continue
        depth = _depth(line, stack, reports)
        while stack[-1].depth >= depth:
            _close(stack)
        parent = stack[-1]
        if parent.context == "skipped":
            continue
        node, faults = read_line(line.body, parent.context)
        if faults:
            reports += [reported(fault, line) for fault in faults]
        if isinstance(node, n.Tail) and isinstance(parent.node, n.Material):
            parent.node = tail_of(parent.node, node)
            continue
        stack.append(_Open(line, node, depth, context_under(node, parent.context)))
    while len(stack) > 1:
        _close(stack)
    return Outcome(File(source.path, lines, tuple(root.children)), at_most(reports))


def _close(stack: list[_Open]) -> None:
    done = stack.pop()
    if done.line is not None:
        stack[-1].children.append(Entry(done.line, done.node, tuple(done.children)))


def _depth(line: Line, stack: list[_Open], reports: list[Diagnostic]) -> int:
    """How deep a line stands: one step is two spaces, and a line is at most one step deeper than the one above it."""
    deepest = stack[-1].depth + 1
    if line.body[0].isspace():
        reports.append(reported(Fault("tab-indentation", 0, 1, {}), line))
        return min(deepest, max(1, line.indent // STEP + 1))
    depth, odd = divmod(line.indent, STEP)
    if depth > DEEPEST:
        if stack[-1].depth < DEEPEST:
            reports.append(reported(Fault("too-deep", 0, 1, {"most": str(DEEPEST)}), line))
        return min(deepest, DEEPEST)
    if odd:
        reports.append(reported(Fault("odd-indentation", 0, 1, {"spaces": str(line.indent)}), line))
        depth = min(deepest, depth + odd if depth < deepest and stack[-1].context == "skipped" else depth)
    elif depth > deepest:
        reports.append(
            reported(Fault("deep-indentation", 0, 1, {"spaces": str(line.indent), "most": str(deepest * STEP)}), line)
        )
    return min(depth, deepest)


__all__ = ["Unread", "parse"]
