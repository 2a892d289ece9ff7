"""Lines of a formula looked through and rewritten, before any name in them is bound."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

from manchet.syntax import nodes
from manchet.syntax.nodes import Entry, Part, Word

Key = Callable[[str], str]

NAMED = (nodes.MaterialNode, nodes.TakeAll, nodes.TakeLeft, nodes.BareName)
"""Lines that weigh the one thing they name."""


def names_in(entries: Iterable[Entry]) -> Iterator[str]:
    """What is weighed under some headings, as written, overall included."""
    for entry in entries:
        if isinstance(entry.node, NAMED):
            yield entry.node.name.text
        if _holds_materials(entry):
            yield from names_in(entry.children)


def take_out(entries: Iterable[Entry], gone: str, key: Key) -> list[Entry]:
    """The lines without an ingredient: no line weighs it, none holds it back or adds it."""
    found: list[Entry] = []
    for entry in entries:
        node = entry.node
        if isinstance(node, NAMED) and key(node.name.text) == gone:
            continue
        if isinstance(node, nodes.HoldBack | nodes.Add):
            kept = tuple(part for part in node.items if key(part.name.text) != gone)
            if not kept:
                continue
            entry = entry._replace(node=node._replace(items=kept))
        elif _holds_materials(entry):
            entry = entry._replace(children=tuple(take_out(entry.children, gone, key)))
        found.append(entry)
    return found


def rename(
    entries: Iterable[Entry],
    old: str,
    key: Key,
    material: Callable[[Entry], Entry],
    part: Callable[[Part], Part],
    new: str,
) -> tuple[Entry, ...]:
    """The lines with one ingredient written for another. `material` and `part` say what becomes of lines and of items of
    `hold back` and `add` that give an amount; a line that gives none only takes the new name."""
    found: list[Entry] = []
    for entry in entries:
        node = entry.node
        if isinstance(node, nodes.MaterialNode) and key(node.name.text) == old:
            entry = material(entry)
        elif isinstance(node, nodes.TakeAll | nodes.TakeLeft | nodes.TopUp) and key(node.name.text) == old:
            entry = entry._replace(node=node._replace(name=with_name(node.name, new)))
        elif isinstance(node, nodes.HoldBack | nodes.Add):
            items = tuple(part(p) if key(p.name.text) == old else p for p in node.items)
            entry = entry._replace(node=node._replace(items=items))
        elif _holds_materials(entry):
            entry = entry._replace(children=rename(entry.children, old, key, material, part, new))
        found.append(entry)
    return tuple(found)


def with_name(word: Word, name: str) -> Word:
    """The word with another name, at its old place in the line."""
    return word._replace(text=name)


def _holds_materials(entry: Entry) -> bool:
    return isinstance(entry.node, nodes.OverallHead | nodes.StageHead | nodes.BranchHead)
