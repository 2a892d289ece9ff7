"""A figure that can say why: its value, the rule that made it, from what, by which source."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Given(NamedTuple):
    """A figure that stands in a file: what it is called, its value and unit, and where (`tern.bake:12`)."""

    name: str
    value: Fraction
    unit: str
    where: str


class Figure(NamedTuple):
    """A derived figure. `unit` is "%", "g", "C", "s" … or ""; `rule` is a sentence; `source` names who says so."""

    name: str
    value: Fraction
    unit: str
    rule: str
    inputs: tuple[Given | Figure, ...]
    source: str
