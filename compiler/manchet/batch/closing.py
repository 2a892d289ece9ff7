"""Flour and water go up where rounding has left a table short of what the formula asks."""

from __future__ import annotations

from collections.abc import Callable, Sequence
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
    at = [found for found in (largest(lines, is_flour), largest(lines, is_water)) if found is not None]
    if not at or short <= 0:
        return tuple(lines)
    number = ceil(short / max(lines[one].reading.step for one in at))
    splits = [(number,)] if len(at) == 1 else [(flour, number - flour) for flour in range(number, -1, -1)]
    covering = [
        split for split in splits if sum(n * lines[i].reading.step for n, i in zip(split, at, strict=True)) >= short
    ]
    tables = [_up(lines, dict(zip(at, split, strict=True))) for split in covering]
    wanted = _hydration([(line, line.wanted) for line in lines])
    return min(tables, key=lambda table: abs(_hydration([(line, line.reading.grams) for line in table]) - wanted))


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


def _up(lines: Sequence[WeighedLine], steps: dict[int, int]) -> tuple[WeighedLine, ...]:
    def one(at: int, line: WeighedLine) -> WeighedLine:
        if not steps.get(at):
            return line
        grams = line.reading.grams + steps[at] * line.reading.step
        return line._replace(reading=line.reading._replace(grams=grams), closes=True)

    return tuple(one(at, line) for at, line in enumerate(lines))


def _hydration(weights: Sequence[tuple[WeighedLine, Fraction]]) -> Fraction:
    flour = sum((grams for line, grams in weights if is_flour(line)), NOTHING)
    return sum((grams for line, grams in weights if is_water(line)), NOTHING) / flour if flour else NOTHING
