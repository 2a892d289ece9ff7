"""Cooked flour that stands warm, raw grain that soaks warm."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.caution import Caution, caution, celsius, duration
from manchet.cautions.facts import markets_of
from manchet.cautions.legs import Leg
from manchet.cautions.limits import figure
from manchet.cautions.vessel import FoodVessel, breads_of, vessels_of
from manchet.larder.ingredient import FLOUR_CLASSES
from manchet.syntax.vocabulary import COOLS, HOT_WATER, STANDS

SOURING = ("culture", "yeast", "sweet-dough yeast")
STARCHY = ("grain", *sorted(FLOUR_CLASSES))
RAW = ("grain", "seed", "wheat flour", "rye flour", "other flour")
POURED = ("water", "liquid", "dairy")


def standing_warm(work: Work) -> Iterator[Caution]:
    """Of what is made before a dough, and of preparations: in a dough something rises."""
    for vessel in vessels_of(work):
        if vessel.of_class(*SOURING) and not _sours_late(vessel):
            continue
        if _cooked_paste(vessel):
            yield from _warm_and_wet(vessel, work)
        else:
            yield from _warm_soak(vessel, work)


def _sours_late(vessel: FoodVessel) -> bool:
    """What sours it comes in after it has stood: only what is in from the first keeps other germs down."""
    first = next((n for n, leg in enumerate(vessel.legs) if _stands(leg)), len(vessel.legs))
    return all(food.since > first for food in vessel.of_class(*SOURING))


def _stands(leg: Leg) -> bool:
    return leg.step.verb in STANDS or (leg.step.verb in COOLS and not leg.heats)


def _cooked_paste(vessel: FoodVessel) -> bool:
    """Flour, starch or grain that is scalded, or was heated so far that its starch swells."""
    from_heat = figure("paste-cooks-from")
    if not vessel.of_class(*STARCHY) or not vessel.share(*POURED):
        return False
    hot = vessel.stage.word in HOT_WATER or any(leg.start >= from_heat for leg in vessel.legs[:1])
    return hot or any(
        leg.heats and (leg.boils or leg.end.high is None or leg.end.high >= from_heat) for leg in vessel.legs
    )


def _warm_and_wet(vessel: FoodVessel, work: Work) -> Iterator[Caution]:
    """Of what is cooled down the way down is not counted, unless it takes longer than it may stand: our rule. The cooling of a
    food that is kept has a caution of its own."""
    cold, hot, most = figure("cold", markets_of(work)), figure("paste-held"), figure("paste-stands")
    first = next((n for n, leg in enumerate(vessel.legs) if leg.heats), -1)
    warm = [
        leg
        for leg in vessel.legs[first + 1 :]
        if cold < leg.around < hot
        and (leg.step.verb in STANDS or (leg.step.verb in COOLS and leg.least > most and not work.formula.preparation))
    ]
    standing = sum((leg.most for leg in warm), Fraction(0))
    if standing > most:
        why = (
            "it stands between ", celsius(cold), " and ", celsius(hot), " for ", duration(standing), ", and nothing sours it",
        )  # fmt: skip
        yield caution("warm-and-wet", warm[0].at, "warning", why=why)


def _warm_soak(vessel: FoodVessel, work: Work) -> Iterator[Caution]:
    water, salt = vessel.share(*POURED), vessel.share("salt")
    raw = vessel.of_class(*RAW)
    if not raw or not water or salt >= water * figure("soaked-salt"):
        return
    baked = any(leg.heats for leg in vessel.legs) or any(bread.last_heat is not None for bread in breads_of(work))
    most = figure("soaked-and-baked" if baked else "soaked-and-eaten")
    for leg in vessel.legs:
        if leg.step.verb in STANDS and leg.around > figure("cold") and leg.most >= most:
            why = (f"{raw[0].name}, wet at ", celsius(leg.around), " for ", duration(leg.most))
            yield caution("warm-soak", leg.at, "note" if baked else "warning", why=why)
