"""What was cooked and is kept: cooled fast, heated again to the middle; and egg that no heat cooks through."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import where_kept
from manchet.cautions.caution import Caution, caution, celsius, duration, warning_unless
from manchet.cautions.facts import is_kept_by_itself, is_raw_egg, is_wet, markets_of, perishes_cooked, ways_kept
from manchet.cautions.legs import CoolingDown, Leg, comes_to, coolings, stays_at, was_boiled, was_heated
from manchet.cautions.limits import figure, limit
from manchet.cautions.phrase import Wording
from manchet.cautions.vessel import Foodstuff, FoodVessel, breads_of, vessels_of
from manchet.syntax.vocabulary import COOLS, ON_THE_CRUST


def cooled_fast(work: Work) -> Iterator[Caution]:
    """At the first step that cools it; where none does, where it is kept. A bread is no such food."""
    if not is_kept_by_itself(work.formula):
        return
    for vessel in vessels_of(work)[-1:]:
        foods = [food for food in vessel.foods if perishes_cooked(food) and was_heated(vessel.line(food))]
        if foods and is_wet(vessel):
            yield from _cooling(vessel, foods[0], work)


def _cooling(vessel: FoodVessel, food: Foodstuff, work: Work) -> Iterator[Caution]:
    markets = markets_of(work)
    hot, warm, cold = figure("cooled-from"), figure("warm-at-most"), figure("cold", markets)
    is_kept = any(way.celsius <= cold for way in ways_kept(vessel.formula))
    for found in coolings(vessel.legs, hot, warm, cold):
        if found.at is not None or is_kept:
            yield _cooled(found, vessel, food, warm, cold, markets)


def _cooled(
    found: CoolingDown, vessel: FoodVessel, food: Foodstuff, warm: Fraction, cold: Fraction, markets: tuple[str, ...]
) -> Caution:
    by, by_cold, in_fridge = figure("warm-within"), figure("cold-within"), limit("fridge-within", markets)
    broken: Wording = ()
    if found.warm is None or found.cold is None:
        broken = ("no step says that it comes down to ", celsius(cold if found.warm is not None else warm))
    elif found.warm > by:
        broken = (celsius(warm), " after ", duration(found.warm), ", and the limit is ", duration(by))
    elif found.cold > by_cold:
        broken = (celsius(cold), " after ", duration(found.cold), ", and the limit is ", duration(by_cold))
    elif in_fridge is not None and (found.to_fridge is None or found.to_fridge > in_fridge):
        broken = ("not in the cold within ", duration(in_fridge))
    why: Wording = (f"{food.name}, cooked and kept", *(("; ", *broken) if broken else ()))
    return caution("cool-it-fast", found.at or where_kept(vessel.formula), warning_unless(not broken), why=why)


def heated_again(work: Work) -> Iterator[Caution]:
    """What was cooked and cooled, and is heated once more."""
    if not is_kept_by_itself(work.formula):
        return
    markets = markets_of(work)
    hot, quick = figure("reheated-to", markets), figure("reheated-within", markets)
    for vessel in vessels_of(work):
        if not any(perishes_cooked(food) for food in vessel.foods):
            continue
        was_cooked = cooled = False
        for leg in vessel.legs:
            if cooled and leg.heats:
                through = leg.boils or leg.is_up_to(hot)
                keeps = through and 0 < leg.most <= quick
                why: Wording = (
                    ("it takes ", duration(leg.most), ", and the limit is ", duration(quick))
                    if through and leg.most > quick
                    else ("it is heated again, and the limit is ", celsius(hot), " in the middle")
                )
                yield caution("reheat-through", leg.at, warning_unless(keeps), {"hot": hot}, why)
            cooled = cooled or (was_cooked and leg.step.verb in COOLS)
            was_cooked = was_cooked or leg.heats


def egg_through(work: Work) -> Iterator[Caution]:
    """Raw egg in what is heated; and in a filling that is baked, where the middle decides. A dough's egg is baked with it."""
    for vessel in vessels_of(work) if is_kept_by_itself(work.formula) else ():
        eggs = [food for food in vessel.foods if is_raw_egg(food)]
        yield from _egg(vessel, eggs, work)
    for bread in breads_of(work):
        filled = [
            food
            for food in bread.foods
            if food.put_on and is_raw_egg(food) and bread.legs[food.since].step.verb not in ON_THE_CRUST
        ]
        yield from _egg(bread, filled, work, in_middle=True)


def _egg(vessel: FoodVessel, eggs: list[Foodstuff], work: Work, in_middle: bool = False) -> Iterator[Caution]:
    markets = markets_of(work)
    heated = [(food, [leg for leg in vessel.legs[food.since :] if leg.heats]) for food in eggs]
    heated = [(food, legs) for food, legs in heated if legs and not is_egg_cooked(food.before, markets)]
    if not heated:
        return
    keeps = all(is_egg_cooked(vessel.line(food), markets, in_middle) for food, _ in heated)
    at_once = figure("egg-at-once", markets)
    why: Wording = (
        f"{heated[0][0].name}: no step says that its middle comes to ",
        celsius(at_once),
        *(
            (", or ", celsius(figure("egg-held")), " for ", duration(figure("held-for")))
            if at_once != figure("egg-held")
            else ()
        ),
    )
    own = {"at-once": at_once} if at_once == figure("egg-held") else {}
    yield caution("cook-egg-through", heated[0][1][-1].at, warning_unless(keeps), own, why)


def is_egg_cooked(line: tuple[Leg, ...], markets: tuple[str, ...], in_middle: bool = False) -> bool:
    """Boiled, hot enough at once, or a little less for two minutes."""
    at_once = comes_to(line, figure("egg-at-once", markets), in_middle)
    return was_boiled(line) or at_once or stays_at(line, figure("egg-held"), figure("held-for"), in_middle)
