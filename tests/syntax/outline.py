"""A tree as a person would write it down: one line an entry, its kind and what it says."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from manchet.diagnostics.outcome import Outcome
from manchet.source.text import SourceText
from manchet.syntax.nodes import Amount, Entry, File, Word
from manchet.syntax.parser import parse


def outline(source: str) -> str:
    """The tree of a source, then its reports as `line:column name: message`."""
    out: Outcome[File] = parse(SourceText("case.bake", source))
    rows = [row for entry in out.value.entries for row in _rows(entry, 0)]
    rows += [f"! {d.place.line}:{d.place.column} {d.name}: {d.message}" for d in out.diagnostics]
    return "\n".join(rows) + "\n"


def _rows(entry: Entry, depth: int) -> list[str]:
    said = [_value_text(value) for value in entry.node]
    row = " ".join((_name(entry.node), *(part for part in said if part)))
    return ["  " * depth + row, *(row for child in entry.children for row in _rows(child, depth + 1))]


def _name(value: Any) -> str:
    """What a node is called in the cases: without what tells it from the model's value of the same name."""
    name = type(value).__name__
    return "Applied" if name == "AppliedClause" else name.removesuffix("Node")


def _value_text(value: Any) -> str:
    if isinstance(value, Word):
        return f"“{value.text}”"
    if isinstance(value, Amount):
        low, high = _figure(value.low), _figure(value.high)
        return f"[{low if low == high else f'{low}..{high}'}{' ' + value.unit if value.unit else ''}]"
    if isinstance(value, tuple):
        name = "" if type(value) is tuple else _name(value) + " "
        inner = [part for part in map(_value_text, value) if part]
        return f"({name}{' '.join(inner)})" if inner else name.strip()
    return "" if value in (None, False, "") else str(value)


def _figure(value: Fraction | None) -> str:
    return "" if value is None else str(value)
