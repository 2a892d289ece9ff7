"""How things are kept: neither cold nor hot; the baked bread in warm weather, and wrapped or sliced before it is cold."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, where_kept
from manchet.cautions.caution import Caution, caution, celsius, duration
from manchet.cautions.facts import (
    is_dairy,
    is_kept_by_itself,
    is_meat_or_fish,
    is_raw_egg,
    is_wet,
    markets_of,
    needs_no_cold,
    perishes_cooked,
    ways_kept,
)
from manchet.cautions.gate import TIGHT
from manchet.cautions.legs import was_heated
from manchet.cautions.limits import figure
from manchet.cautions.phrase import Wording
from manchet.cautions.under_fat import plants_closed_in
from manchet.cautions.vessel import FoodVessel, breads_of, vessels_of
from manchet.formula.model import Formula
from manchet.syntax.vocabulary import COOLS_BREAD, WRAPS


def neither_cold_nor_hot(work: Work) -> Iterator[Caution]:
    """Each way of keeping that is between the two. Raw egg and plants under fat have limits of their own."""
    if not is_kept_by_itself(work.formula):
        return
    (vessel,) = vessels_of(work)[-1:]
    foods = [
        food
        for food in vessel.foods
        if not needs_no_cold(food)
        and (
            food.ingredient.class_ == "egg"
            or is_dairy(food)
            or is_meat_or_fish(food)
            or (perishes_cooked(food) and was_heated(vessel.line(food)))
        )
    ]
    raw_egg = any(is_raw_egg(food) for food in vessel.foods) and vessel.last_heat is None
    if not foods or raw_egg or not is_wet(vessel) or plants_closed_in(vessel):
        return
    markets = markets_of(work)
    cold, hot = figure("cold", markets), figure("hot", markets)
    for way in ways_kept(work.formula):
        if cold < way.celsius < hot:
            said = celsius(way.celsius) if way.is_said else "no temperature, so a room's"
            why = (f"{foods[0].name}, kept at ", said, "; cold is ", celsius(cold), " and hot ", celsius(hot))
            yield caution("neither-cold-nor-hot", where_kept(work.formula), "warning", why=why)
            return


def rope_in_warm_weather(work: Work) -> Iterator[Caution]:
    """Where the kitchen is warm or the bread is to keep, and nothing sours it."""
    air, totals = work.kitchen.air, work.totals
    warm = air is not None and air >= figure("rope-air")
    keeps = _keeps(work.formula)
    if not (warm or keeps > figure("rope-keeps")) or totals.cultures or work.formula.preparation:
        return
    share = totals.by_class
    whole = sum((line.share for line in work.formula.overall if "whole" in line.name.casefold()), Fraction(0))
    rough = share.get("grain", Fraction(0)) + share.get("seed", Fraction(0)) + whole
    scald = any(s.word == "scald" for s in work.formula.stages)
    sour = any("vinegar" in line.name or "propionate" in line.name for line in work.formula.overall)
    if not sour and (scald or share.get("bread") or rough > figure("rope-coarse")):
        why: Wording = (
            ("nothing sours it, and the air is at ", celsius(air)) if warm and air is not None
            else ("nothing sours it, and it is to keep ", duration(keeps))
        )  # fmt: skip
        yield caution("rope-weather", _where_cooled(work), "note", why=why)


def _keeps(formula: Formula) -> Fraction:
    """Seconds for which it is to keep, as its head says: its date, or how old it is sold."""
    marks = [sale.date_mark for sale in (formula.sale, *(b.sale for b in formula.branches)) if sale is not None]
    ends = [mark.seconds for mark in marks if mark is not None]
    return max(
        [*ends, *([formula.sold.high] if formula.sold is not None and formula.sold.high is not None else [])],
        default=Fraction(0),
    )


def _where_cooled(work: Work) -> CautionPlace:
    """The first step after the bake that cools it; the dough as a whole where none does."""
    for bread in breads_of(work):
        last = bread.last_heat
        for leg in bread.legs[len(bread.legs) if last is None else last + 1 :]:
            if leg.step.verb in COOLS_BREAD:
                return leg.at
    return CautionPlace(work.formula.dough.key)


def wrapped_warm(work: Work) -> Iterator[Caution]:
    """Slicing, or wrapping in something that holds steam, sooner than the middle can have cooled."""
    if work.bread.wrapped_warm or work.formula.preparation:
        return
    for bread in breads_of(work):
        yield from _wrapped(bread)


def _wrapped(bread: FoodVessel) -> Iterator[Caution]:
    baked = max((n for n, leg in enumerate(bread.legs) if leg.step.verb == "bake"), default=None)
    if baked is None:
        return
    least = figure("cooled-to-wrap")
    cooled = Fraction(0)
    for leg in bread.legs[baked + 1 :]:
        step = leg.step
        if step.verb in COOLS_BREAD:
            cooled += leg.most
        tight = step.where is not None and any(word in step.where[1].split() for word in TIGHT)
        if (step.verb == "slice" or (step.verb in WRAPS and tight)) and cooled < least:
            why = (duration(cooled) if cooled else "at once", " from the oven" if not cooled else " after the oven")
            yield caution("wrapped-warm", leg.at, "note", why=why)
