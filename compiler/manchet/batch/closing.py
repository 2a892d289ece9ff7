"""Flour and water go up where rounding has left a table short of what the formula asks."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from math import ceil

from manchet.batch.weighed_table import WeighedLine

NOTHING = Fraction(0)


def cover_shortfall(lines: Sequence[WeighedLine]) -> tuple[WeighedLine, ...]:
    """The lines as they are, unless together they fall short of the exact total by more than one step of the coarsest:
    then so much higher that they do so no more."""
    short = sum((line.wanted - line.reading.grams for line in lines), NOTHING)
    return raise_flour_and_water(lines, short - max((line.reading.step for line in lines), default=NOTHING))


def raise_flour_and_water(lines: Sequence[WeighedLine], short: Fraction) -> tuple[WeighedLine, ...]:
    """The lines with the largest flour and the largest water up by the fewest steps that cover the grams that are `short`.

    Of as few steps, those that leave the stage's hydration nearest to the formula's. With no water flour alone goes up,
    with no flour water; with neither, nothing: salt, yeast, malt, lye and cultures never do.
    """
    flour, water = largest(lines, is_flour), largest(lines, is_water)
    at = [found for found in (flour, water) if found is not None]
    if not at or short <= 0:
        return tuple(lines)
    number = ceil(short / max(lines[one].reading.step for one in at))
    splits = [(number,)] if len(at) == 1 else [(first, number - first) for first in range(number, -1, -1)]
    ups = [{i: steps * lines[i].reading.step for i, steps in zip(at, split, strict=True)} for split in splits]
    read = _flour_and_water([(line, line.reading.grams) for line in lines])
    wanted = _hydration(*_flour_and_water([(line, line.wanted) for line in lines]))

    def off(up: Mapping[int, Fraction]) -> Fraction:
        """How far the stage's hydration is from the formula's with these lines up."""
        more = [NOTHING if one is None else up[one] for one in (flour, water)]
        return abs(_hydration(read[0] + more[0], read[1] + more[1]) - wanted)

    return _up(lines, min((up for up in ups if sum(up.values()) >= short), key=off))


def is_flour(line: WeighedLine) -> bool:
    portion = line.weighed.portion
    return (
        portion.is_flour
        and portion.ingredient is not None
        and portion.ingredient.class_ not in ("culture", "malt", "lye")
    )


def is_water(line: WeighedLine) -> bool:
    ingredient = line.weighed.portion.ingredient
    return ingredient is not None and ingredient.class_ == "water"


def largest(lines: Sequence[WeighedLine], is_of: Callable[[WeighedLine], bool]) -> int | None:
    """Where the largest line of a sort stands that its scale reads at all; one that is held back only if there is no other."""
    there = [at for at, line in enumerate(lines) if is_of(line) and line.reading.grams > 0]
    return max(there, key=lambda at: (not lines[at].weighed.portion.held, lines[at].wanted), default=None)


def _up(lines: Sequence[WeighedLine], grams: Mapping[int, Fraction]) -> tuple[WeighedLine, ...]:
    """The lines, those at these places up by so many grams."""

    def one(at: int, line: WeighedLine) -> WeighedLine:
        if not grams.get(at):
            return line
        return line._replace(reading=line.reading._replace(grams=line.reading.grams + grams[at]), closes=True)

    return tuple(one(at, line) for at, line in enumerate(lines))


def _flour_and_water(weights: Sequence[tuple[WeighedLine, Fraction]]) -> tuple[Fraction, Fraction]:
    """Grams of all flour and of all water that is poured."""
    flour = sum((grams for line, grams in weights if is_flour(line)), NOTHING)
    return flour, sum((grams for line, grams in weights if is_water(line)), NOTHING)


def _hydration(flour: Fraction, water: Fraction) -> Fraction:
    return water / flour if flour else NOTHING
