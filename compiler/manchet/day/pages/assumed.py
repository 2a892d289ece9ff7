"""What a plan takes for granted where no file says it, so that it can be told."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.jobs.day_of import PlannedDay
from manchet.records import NamedTuple


class AgeTaken(NamedTuple):
    """The oldest age when due that stands for breads of which no file says any."""

    seconds: Fraction
    """From out of the oven."""
    breads: tuple[str, ...]


def ages_taken(of: PlannedDay) -> tuple[AgeTaken, ...]:
    """By their kind: those of most breads first."""
    made = {bread.want.name for bread in of.breads if not bread.work.formula.preparation}
    by_age: dict[Fraction, list[str]] = {}
    for bread, oldest in of.oldest:
        if oldest.of_kind and bread in made:
            by_age.setdefault(oldest.seconds, []).append(bread)
    ages = (AgeTaken(seconds, tuple(breads)) for seconds, breads in by_age.items())
    return tuple(sorted(ages, key=lambda age: -len(age.breads)))
