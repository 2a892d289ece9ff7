"""Raw egg: kept in its bowl, brushed on before the oven, and what of it goes on after the last heat."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.at import where_kept
from manchet.cautions.caution import Caution, caution, celsius, duration, warning_unless
from manchet.cautions.cooked import is_egg_cooked
from manchet.cautions.facts import is_kept_by_itself, is_raw_egg, markets_of, ways_kept
from manchet.cautions.limits import figure
from manchet.cautions.phrase import Wording
from manchet.cautions.vessel import Foodstuff, breads_of, vessels_of

HOUR = 3600


def raw_egg_kept(work: Work) -> Iterator[Caution]:
    """Where a preparation of it is kept; and at the step by which it goes on a bread, since its bowl waits there."""
    markets = markets_of(work)
    cold, longest, frozen = figure("cold", markets), figure("raw-egg-longest"), figure("frozen")
    if is_kept_by_itself(work.formula):
        (vessel,) = vessels_of(work)[-1:]
        eggs = [food for food in vessel.foods if is_raw_egg(food)]
        if not eggs or any(leg.heats for leg in vessel.legs) or not ways_kept(work.formula):
            return
        broken: Wording = ()
        for way in ways_kept(work.formula):
            if way.celsius > cold:
                broken = (celsius(way.celsius), ", and the limit is ", celsius(cold))
            elif way.celsius > frozen and way.seconds > longest:
                broken = ("kept ", duration(way.seconds), ", and the limit is ", duration(longest))
        why: Wording = (f"raw {eggs[0].name}", *(("; ", *broken) if broken else ()))
        yield caution("raw-egg-kept", where_kept(work.formula), warning_unless(not broken), why=why)
        return
    for bread in breads_of(work):
        last = bread.last_heat
        before = {food.since: food for food in _raw(bread.foods, work) if last is not None and food.since < last}
        for since, food in before.items():
            yield caution("raw-egg-kept", bread.legs[since].at, "limit", why=(f"raw {food.name}",))


def raw_egg_after_heat(work: Work) -> Iterator[Caution]:
    for bread in breads_of(work):
        last = bread.last_heat
        after = {food.since: food for food in _raw(bread.foods, work) if last is not None and food.since > last}
        for since, food in after.items():
            why = (f"{food.name}, on after the last heat",)
            yield caution("raw-egg-after-heat", bread.legs[since].at, "warning", why=why)


def _raw(foods: tuple[Foodstuff, ...], work: Work) -> Iterator[Foodstuff]:
    """What is put on and was not cooked before."""
    markets = markets_of(work)
    return (food for food in foods if food.put_on and is_raw_egg(food) and not is_egg_cooked(food.before, markets))
