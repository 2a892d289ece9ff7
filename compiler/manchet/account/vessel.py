"""What is in a vessel after its steps, followed with what is in it: the same account as `formula.stage_balance` keeps of its weight.

Two kinds of loss. Water goes off in a heat, and as hot things cool. The stuff goes as it is when it is trimmed, divided, strained.
What is drained is a liquid, and what it carries with it cannot be said.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.account.mixture import Content, Mixture, held_alone, put_together
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Portion, Stage, Step
from manchet.formula.what_goes import LossOf, loss_of
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BRINGS_IN, COOKS, HOT_WATER, OF_THE_FIRST

NOTHING = Fraction(0)
ONE = Fraction(1)

Fill = Callable[[Portion], Mixture]
"""What a line of a stage puts in."""


class Following(NamedTuple):
    """A vessel while its steps are followed; `waiting` stands beside it."""

    inside: Mixture
    waiting: dict[str, list[Mixture]]
    first: str
    """The key of the first thing weighed."""
    water: Ingredient
    poured: Fraction = NOTHING
    put_in: Fraction = NOTHING
    returned: Fraction = NOTHING


def vessel_after(stage: Stage, fill: Fill, water: Ingredient, steps: tuple[Step, ...] | None = None) -> Mixture:
    """What comes out of a stage, per gram of all flour, before any of it is kept. Dividing ends the vessel."""
    waiting: dict[str, list[Mixture]] = {}
    start: list[Mixture] = []
    first = ""
    for portion in stage.portions:
        mixture = fill(portion)
        if portion.held:
            waiting.setdefault(portion.key, []).append(mixture)
        else:
            first = first or portion.key
            start.append(mixture)
    inside = put_together(start)
    vessel = Following(inside, waiting, first, water, put_in=inside.weight)
    returning = sum(len(step.goes) for step in stage.steps if step.verb == "return")
    back = stage.returned_share / returning if returning else NOTHING
    for step in stage.steps if steps is None else steps:
        if step.verb == "divide":
            break
        vessel = _after(vessel, step, stage.word in HOT_WATER, back)
    late = [mixture for mixtures in vessel.waiting.values() for mixture in mixtures]
    return put_together([vessel.inside, *late])


def _after(vessel: Following, step: Step, hot: bool, each_back: Fraction) -> Following:
    """`each_back`: what goes back to the pot of each culture that came in, here or in a stage before."""
    inside = vessel.inside
    if step.verb in BRINGS_IN:
        arriving = [_arriving(vessel.waiting, goes.key, goes.share) for goes in step.goes if not goes.beyond]
        more = put_together(arriving)
        vessel = vessel._replace(inside=put_together([inside, more]), put_in=vessel.put_in + more.weight)
    elif step.verb == "top up":
        short = vessel.put_in - vessel.returned - vessel.poured - inside.weight
        vessel = vessel._replace(inside=put_together([inside, held_alone(vessel.water, short)]))
    elif step.poured is not None:
        share = step.poured.share
        if step.poured.water == 1:
            inside = inside.drained(share, water_in(inside))
        else:
            inside = inside.drained(share * step.poured.water, water_in(inside)).amount(inside.weight - share)
        vessel = vessel._replace(inside=inside, poured=vessel.poured + share)
    elif step.verb == "return":
        back = each_back * len(step.goes)
        vessel = vessel._replace(inside=inside.amount(inside.weight - back), returned=vessel.returned + back)
    if step.loses is not None and not step.loss_is_weighed:
        vessel = vessel._replace(inside=_losing(vessel.inside, step, hot, vessel.first))
    return vessel._replace(inside=vessel.inside.through_heat()) if step.verb in COOKS else vessel


def _losing(inside: Mixture, step: Step, hot: bool, first: str) -> Mixture:
    share = step.loses or NOTHING
    if step.verb in OF_THE_FIRST:
        return without_share_of(inside, first, share)
    return losing(inside, share, loss_of(step, hot))


def losing(inside: Mixture, share: Fraction, of: LossOf) -> Mixture:
    """Without a share of its weight, of the one kind or the other."""
    if of is LossOf.STUFF:
        return inside.times(1 - share)
    grams = inside.weight * share
    return inside.without_water(grams) if of is LossOf.WATER else inside.drained(grams, water_in(inside))


def without_share_of(inside: Mixture, first: str, share: Fraction) -> Mixture:
    """Without a share of one thing: what is peeled. Water that has gone before goes with all alike."""
    peeled = put_together(Mixture({key: held}) for key, held in inside.holds.items() if _came_as(first, held))
    rest = Mixture({key: held for key, held in inside.holds.items() if key not in peeled.holds})
    whole = inside.put_in
    dried = inside.gone / whole if whole else NOTHING
    peel = peeled.times(1 - share)
    gone = dried * (peel.put_in + rest.put_in)
    return Mixture({**rest.holds, **peel.holds}, gone, inside.taken_up)


def _came_as(first: str, held: Content) -> bool:
    return fold(held.way[0].name if held.way else held.ingredient.name) == first


def water_in(mixture: Mixture) -> Fraction:
    """Grams of water in it, as far as the larder knows: that of its water and of all that is moist, less what has gone."""
    found = sum((held.grams * share_of_water(held.ingredient) for held in mixture.holds.values()), NOTHING)
    return max(found - mixture.gone, NOTHING)


def share_of_water(ingredient: Ingredient) -> Fraction:
    return ONE if ingredient.class_ == "water" else ingredient.composition.get("water", NOTHING) / 100


def _arriving(waiting: dict[str, list[Mixture]], key: str, share: Fraction | None) -> Mixture:
    there = put_together(waiting.get(key, ()))
    if share is None or share >= there.weight:
        waiting.pop(key, None)
        return there
    part = there.amount(share)
    waiting[key] = [there.amount(there.weight - share)]
    return part
