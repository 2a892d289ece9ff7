"""Whether two texts say the same: their trees are equal but for where in the text things stand."""

from __future__ import annotations

from typing import Any

from manchet.source.text import SourceText
from manchet.syntax.clause_order import in_order
from manchet.syntax.nodes import File
from manchet.syntax.parser import parse


def reads_same(one: SourceText, other: SourceText) -> bool:
    """Whether the trees of two texts are the same. Remarks and blank lines are no part of a tree."""
    return is_same_tree(parse(one).value, parse(other).value)


def is_same_tree(one: File, other: File) -> bool:
    """Whether two trees are equal but for lines and columns, and for the order in which clauses of different sorts stand."""
    return says_same(one.entries, other.entries)


def says_same(one: Any, other: Any) -> bool:
    """The same of two nodes, or of several."""
    return bool(_without_places(one) == _without_places(other))


def _without_places(value: Any) -> Any:
    if not isinstance(value, tuple):
        return value
    fields = getattr(value, "_fields", None)
    if fields is None:
        return tuple(map(_without_places, value))
    said = (
        _without_places(in_order(part) if field == "clauses" else part)
        for field, part in zip(fields, value, strict=True)
        if field not in _WHERE
    )
    return (type(value).__name__, *said)


_WHERE = frozenset({"line", "start", "end"})
"""Fields of an entry, a word or an amount that say where it stands."""
