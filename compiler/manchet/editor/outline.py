"""What stands where in a file: its blocks with their stages and entries, and what can be folded away."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.suggest import fold
from manchet.editor.standing import last_line
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of
from manchet.source.text import Line, line_of
from manchet.syntax import nodes as n
from manchet.syntax.nodes import Entry, File
from manchet.syntax.things import THING
from manchet.workspace.open_bakery import OpenBakery

MOST_FOUND = 300
"""Names that are handed out for one search: nobody reads more."""


class Outlined(NamedTuple):
    """Something with a name. `sort`: a block's word, "stage", "overall", "variant", "entry" or "thing". `whole` is all that belongs
    to it, `head` its heading; `says` what stands beside the name."""

    name: str
    sort: str
    whole: Place
    head: Place
    says: str = ""
    under: tuple[Outlined, ...] = ()


class Fold(NamedTuple):
    """Lines that can be folded into the first of them; remarks are told from what is read."""

    first: int
    last: int
    is_remark: bool = False


def outline(file: File) -> tuple[Outlined, ...]:
    """What stands in a file, in order."""
    return tuple(_outlined(file.entries))


def _outlined(entries: tuple[Entry, ...]) -> Iterator[Outlined]:
    for entry in entries:
        named = _named_as(entry)
        if named is not None:
            name, sort, says = named
            head, last = entry.line.place(), last_line(entry)
            whole = head._replace(end_line=last.number, end_column=len(last.raw) + 1)
            yield Outlined(name, sort, whole, head, says, tuple(_outlined(entry.children)))


def _named_as(entry: Entry) -> tuple[str, str, str] | None:
    node = entry.node
    if isinstance(node, n.BlockHead):
        return node.name.text or node.word, node.word, node.word
    if isinstance(node, n.StageHead):
        share = "" if node.share is None else entry.line.body[node.share.start :]
        return (node.name or node.word).text, "stage", f"{node.word.text if node.name else ''} {share}".strip()
    if isinstance(node, n.OverallHead):
        return "overall", "overall", ""
    if isinstance(node, n.VariantHead):
        return node.name.text, "variant", "variant"
    if isinstance(node, n.BranchHead):
        return f"for the {node.noun.text}", "stage", ""
    if isinstance(node, n.EntryName):
        return node.name.text, "entry", ""
    if isinstance(node, n.Setting) and node.key in THING:
        return (node.names[0].text if node.names else node.key), "thing", node.key
    return None


def named_like(bakery: OpenBakery, query: str) -> tuple[Outlined, ...]:
    """What of the whole bakery has a name in which every word of the query begins a word; no file is parsed for it."""
    wanted = fold(query).split()
    found: list[Outlined] = []
    for file in bakery.files:
        rows = None
        for top in file.blocks:
            for block in top.with_variants():
                heading = block.text.split("\n", 1)[0] if block.word != "variant" else ""
                name = block.name or heading.split("#")[0].strip()
                if name and _is_like(name, wanted):
                    rows = rows or rough_text_of(file.data).split("\n")
                    place = line_of(file.path, block.line, rows[block.line - 1]).place()
                    found.append(Outlined(name, block.word if block.name else "stage", place, place, file.path))
        if len(found) >= MOST_FOUND:
            return tuple(found[:MOST_FOUND])
    for entry in bakery.read([]).larder.own():
        if isinstance(entry, Ingredient) and entry.place is not None and _is_like(entry.name, wanted):
            found.append(Outlined(entry.name, "entry", entry.place, entry.place, entry.place.path))
    return tuple(found[:MOST_FOUND])


def _is_like(name: str, wanted: list[str]) -> bool:
    words = fold(name).split()
    return all(any(word.startswith(part) for word in words) for part in wanted)


def folds(file: File) -> tuple[Fold, ...]:
    """What can be folded away: whatever has lines under it, and remarks of several lines."""
    return tuple(sorted({*_under(file.entries), *_remarks(file.lines)}))


def _under(entries: tuple[Entry, ...]) -> Iterator[Fold]:
    for entry in entries:
        if entry.children:
            yield Fold(entry.line.number, last_line(entry).number)
            yield from _under(entry.children)


def _remarks(lines: tuple[Line, ...]) -> Iterator[Fold]:
    first = 0
    for line in (*lines, None):
        if line is not None and line.comment and not line.body:
            first = first or line.number
            last = line.number
        elif first:
            if last > first:
                yield Fold(first, last, is_remark=True)
            first = 0
