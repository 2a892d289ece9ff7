"""What a plan takes for granted where no file says it, so that it can be told."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.jobs.day_of import PlannedDay
from manchet.formula.model import Step, Who
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN


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


def of_one_figure(of: PlannedDay) -> tuple[str, ...]:
    """Breads with a wait for which the file says one figure, so that the plan may stretch it; a bake never is, and bread that cools
    bears it."""
    return tuple(
        dict.fromkeys(
            bread.want.name
            for bread in of.breads
            if any(_is_one_figure(step) for step in bread.work.formula.steps if step.verb not in IN_OVEN | {"cool"})
        )
    )


def _is_one_figure(step: Step) -> bool:
    return (
        step.who is Who.WAITING
        and step.time is not None
        and step.time.low is not None
        and step.time.low == step.time.high
    )


def has_folds(of: PlannedDay) -> bool:
    """Whether anything is folded inside a wait."""
    return any(step.folds for bread in of.breads for step in bread.work.formula.steps)
