"""A line of material as it will be read: what is written is read back, and kept only where it says the same."""

from __future__ import annotations

from fractions import Fraction

from manchet.source.text import SourceText
from manchet.syntax.nodes import Entry, MaterialNode
from manchet.syntax.parser import parse


def line_of(name: str, figure: str, unit: str) -> str:
    """`rye flour  500 g`, four spaces in: a name that ends in a figure is parted from its amount by two more.

    "" where no line says that name and that amount; a name is quoted where it is not read as one without.
    """
    for written in (name, f'"{name}"'):
        line = f"    {written}  {figure} {unit}"
        if _says(line, name, figure, unit):
            return line
    return ""


def _says(line: str, name: str, figure: str, unit: str) -> bool:
    parsed = parse(SourceText("", f"formula read back\n\n  dough\n{line}\n"))
    found = [entry.node for entry in _all(parsed.value.entries) if isinstance(entry.node, MaterialNode)]
    if parsed.diagnostics or len(found) != 1:
        return False
    (node,) = found
    amount = node.amount
    return (node.name.text, amount.unit, amount.low, amount.high) == (name, unit, _worth(figure), _worth(figure))


def _all(entries: tuple[Entry, ...]) -> list[Entry]:
    return [one for entry in entries for one in (entry, *_all(entry.children))]


def _worth(figure: str) -> Fraction:
    """`1 1/2`, `1.5`, `1,5`."""
    return sum((Fraction(part.replace(",", ".")) for part in figure.split()), Fraction(0))
