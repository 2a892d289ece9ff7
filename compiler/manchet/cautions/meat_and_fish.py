"""Raw meat and fish: through by the end of the last heat, or frozen first where there is none."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace
from manchet.cautions.caution import Caution, caution, celsius, duration, warning_unless
from manchet.cautions.facts import is_raw_fish, is_raw_meat_or_fish, markets_of
from manchet.cautions.legs import Leg, comes_to, stays_at, was_boiled
from manchet.cautions.limits import figure
from manchet.cautions.phrase import Wording
from manchet.cautions.vessel import Foodstuff, FoodVessel, breads_of, vessels_of

STUFFED_AT_ONCE = "US"
"""Where what is stuffed has to be hot at once: US Food Code 3-401.11(A)(3)."""


def meat_through(work: Work) -> Iterator[Caution]:
    """At the last heat of each thing that has raw meat or fish in it by then. What is filled or wrapped is stuffed."""
    markets = markets_of(work)
    hot = figure("meat-at-once", markets)
    own = {"hot": hot} if STUFFED_AT_ONCE in markets else {}
    for vessel in (*vessels_of(work), *breads_of(work)):
        last = vessel.last_heat
        if last is None:
            continue
        inside = [food for food in vessel.foods if food.since <= last and is_raw_meat_or_fish(food)]
        raw = [food for food in inside if not _through(food.before, markets)]
        if raw and not all(_through(vessel.line(food), markets) for food in raw):
            why: Wording = (f"{raw[0].name}: no step says that its middle comes to ", celsius(hot))
            yield caution("cook-meat-through", vessel.legs[last].at, "warning", own, why)
        elif raw:
            yield caution("cook-meat-through", vessel.legs[last].at, "limit", own, (f"raw {raw[0].name}",))


def _through(line: tuple[Leg, ...], markets: tuple[str, ...]) -> bool:
    at_once = comes_to(line, figure("meat-at-once", markets), in_middle=True)
    if STUFFED_AT_ONCE in markets:
        return at_once
    return at_once or stays_at(line, figure("meat-held"), figure("held-for"), in_middle=True)


def fish_never_cooked(work: Work) -> Iterator[Caution]:
    """Where it is weighed in, and never heated to 60 C in the middle; where it is laid on after the last heat."""
    for vessel in vessels_of(work) if work.formula.preparation else ():
        weighed = [food for food in vessel.foods if is_raw_fish(food) and not _no_longer_raw(vessel.line(food))]
        if weighed:
            at = vessel.legs[0].at if vessel.legs else CautionPlace(vessel.stage.key)
            yield from _frozen_first(vessel, weighed[0], at, work)
    for bread in breads_of(work):
        last = -1 if bread.last_heat is None else bread.last_heat
        laid = {food.since: food for food in bread.foods if food.put_on and food.since > last and is_raw_fish(food)}
        for since, food in laid.items():
            if not _no_longer_raw(food.before):
                yield from _frozen_first(bread, food, bread.legs[since].at, work)


def _no_longer_raw(line: tuple[Leg, ...]) -> bool:
    return was_boiled(line) or comes_to(line, figure("fish-not-raw-from"), in_middle=True)


def _frozen_first(vessel: FoodVessel, food: Foodstuff, at: CautionPlace, work: Work) -> Iterator[Caution]:
    degrees, seconds = figure("fish-frozen-to"), figure("fish-frozen-for", markets_of(work))
    keeps = was_frozen(vessel.line(food), degrees, seconds)
    why: Wording = (
        f"raw {food.name}: no step says that its middle comes to ",
        celsius(degrees),
        " and then stays so cold for ",
        duration(seconds),
    )
    yield caution("raw-fish", at, warning_unless(keeps), why=why)


def was_frozen(line: tuple[Leg, ...], degrees: Fraction, seconds: Fraction) -> bool:
    """Whether it is said to come to this cold in the middle, and to stay in it for so long after: what only stands so cold says
    nothing of its middle."""
    is_there = False
    stood = Fraction(0)
    for leg in line:
        if leg.in_middle and leg.is_down_to(degrees):
            is_there, stood = True, Fraction(0)
        elif is_there and leg.step.verb == "freeze" and leg.is_said and leg.around <= degrees:
            stood += leg.least
        elif is_there:
            is_there = False
        if is_there and stood >= seconds:
            return True
    return False
