"""What a dish is built on: pieces of a bread or of a preparation, whole or in slices, and other dishes."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.diagnostics.suggest import fold
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple


class DishPart(NamedTuple):
    """One thing that a formula, a preparation or a dish makes by the piece, as a dish may take it."""

    key: str
    """The name folded by which the dish's lines have it: of the formula, with its noun where it makes several things."""
    name: str
    formula: str
    """The folded name of what makes it."""
    noun: str
    """"" of what is not made by the piece."""
    grams: Fraction | None
    """What one weighs when it is finished and cold; None where nobody has weighed it."""
    at_most: Fraction
    """What one weighs before anything is lost: stands in where `grams` is not known, and is printed nowhere."""
    slices: int | None = None
    """Into how many its own file cuts it."""
    is_bread: bool = False
    is_sound: bool = True
    """Its file has no mistake that keeps it from being made."""


class Parts(NamedTuple):
    """What the bakery offers to a dish."""

    all: tuple[DishPart, ...] = ()

    def called(self, name: str) -> tuple[DishPart, ...]:
        """The parts that a name may mean: several where it is that of a formula that makes several things."""
        key = fold(name)
        own = tuple(part for part in self.all if key == part.key)
        own = own or tuple(part for part in self.all if key == part.formula)
        return own or tuple(
            part
            for part in self.all
            if part.noun and key.startswith(f"{part.formula} ") and same_noun(key[len(part.formula) + 1 :], part.noun)
        )

    @property
    def names(self) -> Iterable[str]:
        return dict.fromkeys(part.name for part in self.all)


class Slicing(NamedTuple):
    """`slice into 22 slices, loses 6%`: of one piece."""

    number: int
    loss: Fraction


class CountedAmount(NamedTuple):
    """How an amount in whole pieces or slices is counted."""

    unit: str
    """"slices" or "whole"."""
    grams: Fraction
    """What one weighs."""
    known: bool
    """Whether anybody can say what it weighs."""
    a_piece: int
    """How many of them one piece of the part gives: 1 where it is taken whole."""


NO_PARTS = Parts()
