"""What a rule of swapping says: so much of the one for a gram of the other, and what has to move with it."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.larder.yeast_factors import Factors
from manchet.records import NamedTuple


class Exchange(NamedTuple):
    """`factor` grams go in for each gram that is taken out. `moves` are grams of water and salt put in (or, below 0, taken
    out) elsewhere for each gram taken out. `said` is what does not stay as it was, "" if all does. `touches`: what touches
    the bread (brushed, spread, dusted on) goes by the same factor; else it stays, as powder cannot take the place of a wash."""

    factor: Fraction
    moves: tuple[tuple[str, Fraction], ...]
    source: str
    said: str = ""
    touches: bool = False

    def back(self) -> Exchange:
        """The same the other way round: there and back is where it was, exactly."""
        return self._replace(factor=1 / self.factor, moves=tuple((name, -g / self.factor) for name, g in self.moves))


class Asks(NamedTuple):
    """A swap that a rule is for, and a figure it lacks."""

    lacks: str
    instead: str


class Asking(NamedTuple):
    """What a rule may look at."""

    larder: Larder
    factors: Factors
    """Between yeasts, as the kitchen goes by them."""


class SwapRule(NamedTuple):
    """`between` gives the exchange of one ingredient for another, None where the rule is not for these two.
    `instead_of` are the names of built-in ingredients that it can put in an ingredient's place."""

    between: Callable[[Ingredient, Ingredient, Asking], Exchange | Asks | None]
    instead_of: Callable[[Ingredient], tuple[str, ...]]


def balance_water(
    off: Ingredient, on: Ingredient, factor: Fraction, larder: Larder, source: str, said: str = ""
) -> Exchange:
    """The exchange that leaves water in all and salt as they are, by the larder's composition of both."""
    was, comes = larder.poured(off), larder.poured(on)
    water, salt = was.water - factor * comes.water, was.salt - factor * comes.salt
    moves = tuple((name, grams) for name, grams in (("water", water), ("salt", salt)) if grams)
    return Exchange(factor, moves, source, said)


def by_what_is_in_them(
    off: Ingredient, on: Ingredient, what: str, asking: Asking, source: str, said: str = ""
) -> Exchange | None:
    """So much of `on` that as much of `what` comes in as goes out; None where the larder does not know it of both."""
    was, comes = off.composition.get(what), on.composition.get(what)
    if not was or not comes:
        return None
    return balance_water(off, on, was / comes, asking.larder, source, said)
