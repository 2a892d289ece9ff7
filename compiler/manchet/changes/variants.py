"""A variant, rewritten into a formula of its own: what it does not say is as its formula has it.

Nothing is bound or computed here. Lines go in and lines come out, so that a variant is read, checked, sized and printed
by the same passes as any formula. Every line keeps its place in the file.
"""

from __future__ import annotations

from collections.abc import Callable

from manchet.changes.rewriting import names_in, take_out
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import one_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import nearest
from manchet.formula.block import is_dough
from manchet.formula.draft import stage_key
from manchet.formula.head import words_of_line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

Key = Callable[[str], str]
"""What a name is compared by: the name folded, of the ingredient in the larder where it is one."""


def variants_of(formula: Entry) -> tuple[Entry, ...]:
    """The variants that stand under a formula."""
    return tuple(child for child in formula.children if isinstance(child.node, nodes.VariantHead))


def without_variants(formula: Entry) -> Entry:
    """The formula itself."""
    return formula._replace(children=tuple(child for child in formula.children if not _is_variant(child)))


def full_name(formula: Entry, variant: Entry) -> str:
    """`Tern loaf, by hand`"""
    assert isinstance(formula.node, nodes.BlockHead) and isinstance(variant.node, nodes.VariantHead)
    return f"{formula.node.name.text}, {variant.node.name.text}"


def rewrite_variant(formula: Entry, variant: Entry, key: Key) -> Outcome[Entry]:
    """The formula that a variant describes, and reports on lines that differ from nothing. `formula` stands without its variants.

    A line of the head takes the place of the line that says the same, `makes` lines that of all `makes` lines. A line of
    `overall` takes the place of the line of the same ingredient, or is added. A stage takes the place of the stage of
    that name, or is added before the dough. `without` takes an ingredient out of overall and of every stage, or a stage out of the formula. Its `swap`
    lines are left to `swaps`.
    """
    assert isinstance(formula.node, nodes.BlockHead)
    written = formula.node.name
    name = full_name(formula, variant)
    children = formula.children
    reports: list[Diagnostic] = []
    for entry in variant.children:
        match entry.node:
            case nodes.OverallHead():
                children, found = _with_overall(children, entry, written.text, key)
                reports += found
            case nodes.StageHead():
                children = _with_stage(children, entry)
            case nodes.Without(word):
                children, found = _without(children, entry, word, name, key)
                reports += found
            case nodes.Swap():
                pass
            case _:
                children = _with_head_line(children, entry, variant)
    head = formula.node._replace(name=written._replace(text=name))
    return Outcome(Entry(variant.line, head, children), tuple(reports))


def lines_of(variant: Entry) -> range:
    """The lines of its file that a variant stands in."""
    return range(variant.line.number, _last(variant) + 1)


def _last(entry: Entry) -> int:
    return max((entry.line.number, *map(_last, entry.children)))


def swaps_of(variant: Entry) -> tuple[Entry, ...]:
    return tuple(entry for entry in variant.children if isinstance(entry.node, nodes.Swap))


def _is_variant(entry: Entry) -> bool:
    node = entry.node
    return isinstance(node, nodes.VariantHead) or (isinstance(node, nodes.Unread) and node.opens == "variant")


Lines = tuple[Entry, ...]


def _with_head_line(children: Lines, entry: Entry, variant: Entry) -> Lines:
    """A new line of the head, and out with the lines of the formula that it replaces."""
    replaced = _replaced_by(entry.node)
    own = {id(line) for line in variant.children}
    left = tuple(c for c in children if not replaced or id(c) in own or _said(c.node) not in replaced)
    headings = (nodes.OverallHead, nodes.StageHead)
    at = next((at for at, child in enumerate(left) if isinstance(child.node, headings)), len(left))
    return (*left[:at], entry, *left[at:])


def _replaced_by(node: nodes.Node | nodes.Unread) -> frozenset[str]:
    said = _said(node)
    if said in _HOW_MUCH:
        return _HOW_MUCH
    return frozenset({said}) if said else frozenset()


_HOW_MUCH = frozenset({"makes", "from … flour"})


def _said(node: nodes.Node | nodes.Unread) -> str:
    """What a line of the head is about; "" for one of which there may be several."""
    return "makes" if isinstance(node, nodes.MakesNode) else words_of_line(node)


def _with_overall(children: Lines, entry: Entry, formula: str, key: Key) -> Outcome[Lines]:
    at = next((at for at, child in enumerate(children) if isinstance(child.node, nodes.OverallHead)), None)
    if at is None:
        message = f"{formula} has no `overall` whose lines could differ"
        help = "write the stage that differs, whole, under its heading"
        return Outcome(children, (report("variant-without-overall", entry.line.place(), message, help),))
    lines = list(children[at].children)
    where = {key(line.node.name.text): n for n, line in enumerate(lines) if isinstance(line.node, nodes.MaterialNode)}
    for line in entry.children:
        there = where.get(key(line.node.name.text)) if isinstance(line.node, nodes.MaterialNode) else None
        if there is None:
            lines.append(line)
        else:
            lines[there] = line
    return Outcome((*children[:at], children[at]._replace(children=tuple(lines)), *children[at + 1 :]))


def _with_stage(children: Lines, entry: Entry) -> Lines:
    assert isinstance(entry.node, nodes.StageHead)
    wanted = stage_key(entry.node)
    stages = [
        at for at, c in enumerate(children) if isinstance(c.node, nodes.StageHead) and stage_key(c.node) == wanted
    ]
    if stages:
        return (*children[: stages[0]], entry, *children[stages[0] + 1 :])
    dough = next((at for at, child in enumerate(children) if is_dough(child)), len(children))
    return (*children[:dough], entry, *children[dough:])


def _is_stage(entry: Entry, name: str) -> bool:
    return isinstance(entry.node, nodes.StageHead) and stage_key(entry.node) == name


def _without(children: Lines, entry: Entry, word: nodes.Word, name: str, key: Key) -> Outcome[Lines]:
    gone = key(word.text)
    here = {key(found): found for found in names_in(children)}
    here |= {stage_key(c.node): stage_key(c.node) for c in children if isinstance(c.node, nodes.StageHead)}
    here.pop("dough", None)
    if gone in here:
        return Outcome(tuple(c for c in take_out(children, gone, key) if not _is_stage(c, gone)))
    near = nearest(word.text, here.values())
    offer = f"did you mean `{near}`?" if near else f"what is in it: {', '.join(sorted(here.values()))}"
    place = entry.line.place(word.start, word.end)
    return Outcome(
        children,
        (
            report(
                "without-what",
                place,
                f"there is no {word.text} in {name}",
                offer,
                fixes=one_of(place, [near] if near else ()),
            ),
        ),
    )
