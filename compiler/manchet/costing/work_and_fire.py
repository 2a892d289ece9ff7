"""What hands and ovens cost for a batch, where the kitchen says what they cost; and what is not known of them."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.oven.bakes import bakes_of
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.quantities.money import Money
from manchet.records import NamedTuple
from manchet.timing.jobs.durations import is_attended, length_of
from manchet.timing.jobs.rounds import pieces_of_stage

NOTHING = Fraction(0)
HOUR = 3600


class Hands(NamedTuple):
    """`seconds` of hands that the file or the kitchen gives; `money` None where the kitchen does not say what an hour costs.
    `untimed` are the verbs of steps done by hand whose time nobody gives."""

    seconds: Fraction
    rate: Money | None
    untimed: tuple[str, ...]

    @property
    def money(self) -> Fraction | None:
        return None if self.rate is None else self.rate.amount * self.seconds / HOUR


class OvenCost(NamedTuple):
    """An oven that a batch is baked in. `currency` is "" where the kitchen does not say what its fire costs."""

    oven: str
    loads: int
    an_hour: bool
    money: Fraction
    currency: str


def hands_of(work: Work) -> Hands:
    """Hands-on time, of one pair of hands: machines and waits are none of it."""
    seconds = NOTHING
    untimed: dict[str, None] = {}
    for step, pieces, times in _steps(work):
        if not is_attended(step) or step.who.value == "machine":
            continue
        length = length_of(step, pieces, work.kitchen, 1)
        if length.is_estimate:
            untimed[step.verb] = None
        else:
            seconds += length.planned * times
    return Hands(seconds, work.kitchen.selling.work, tuple(untimed))


def _steps(work: Work) -> Iterator[tuple[Step, Fraction, int]]:
    """Each step with the pieces that it is done to, and how many times it is done: once for each mix up to the dividing."""
    everyone = sum((piece.number for piece in work.batch.pieces), NOTHING)
    for made in work.batch.stages:
        divided = False
        is_dough = made is work.dough
        for step in made.stage.steps:
            divided = divided or step.verb == "divide"
            mixes = work.mixes.number if (is_dough or made.stage.for_each_mix) and not divided else 1
            yield step, everyone if is_dough else pieces_of_stage(work, made), mixes
    for branch in work.formula.branches:
        mine = sum((p.number for p in work.batch.pieces if same_noun(p.noun, branch.noun)), NOTHING)
        for step in branch.steps:
            yield step, mine, 1


def fires_of(work: Work) -> tuple[OvenCost, ...]:
    """Each oven once: a firing is paid once however many loads it bakes, an hour by the hours of the loads."""
    found: dict[str, OvenCost] = {}
    for bake in bakes_of(work):
        costs, loads = bake.oven.costs, len(bake.loads)
        last = found.get(bake.oven.name)
        money = NOTHING if costs is None else costs.money.amount * (bake.lasts / HOUR if costs.an_hour else 1)
        if last is not None:
            money = last.money + money if costs is not None and costs.an_hour else max(last.money, money)
            loads += last.loads
        currency = "" if costs is None else costs.money.currency
        found[bake.oven.name] = OvenCost(bake.oven.name, loads, costs is not None and costs.an_hour, money, currency)
    return tuple(found.values())
