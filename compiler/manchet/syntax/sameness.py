"""Whether two texts say the same: their trees are equal but for where in the text things stand."""

from __future__ import annotations

from typing import Any

from manchet.source.text import SourceText
from manchet.syntax.parser import parse


def reads_same(one: SourceText, other: SourceText) -> bool:
    """Whether the trees of two texts are equal but for lines and columns. Remarks and blank lines are no part of a tree."""
    first, second = (_without_places(parse(text).value.entries) for text in (one, other))
    return bool(first == second)


def _without_places(value: Any) -> Any:
    if not isinstance(value, tuple):
        return value
    fields = getattr(value, "_fields", None)
    if fields is None:
        return tuple(map(_without_places, value))
    said = tuple(_without_places(part) for field, part in zip(fields, value, strict=True) if field not in _WHERE)
    return (type(value).__name__, *said)


_WHERE = frozenset({"line", "start", "end"})
"""Fields of an entry, a word or an amount that say where it stands."""
