"""Plants where no air comes to them: under oil, in butter, cooked in a closed jar."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, Done, done_in, where_kept
from manchet.cautions.caution import Caution, caution, celsius, duration
from manchet.cautions.facts import WETS, is_wet_plant, sour_in_the_pieces, too_dry, ways_kept
from manchet.cautions.hazard import Level
from manchet.cautions.legs import out_of_the_cold, was_heated
from manchet.cautions.limits import figure
from manchet.cautions.phrase import Wording
from manchet.cautions.vessel import Foodstuff, FoodVessel, vessel_called, vessels_of
from manchet.formula.model import Formula
from manchet.formula.step import Step
from manchet.syntax.vocabulary import STANDS, WRAPS

DAY = 86400
CLOSED = ("jar", "jars", "bottle", "bottles", "vacuum", "pouch", "pouches")
"""What shuts the air out of what was cooked."""


def plants_under_fat(work: Work) -> Iterator[Caution]:
    """Where they are packed, and where they are kept; where nothing is kept, at the last step. Then where a jar is opened."""
    for vessel in vessels_of(work):
        yield from _in_vessel(vessel, work)
    for at, key in _opened(work):
        if is_from_under_fat(key, work):
            made = work.preparations[key]
            yield caution("plants-under-fat", at, "top", _own(made), (f"{made.name} comes from under fat",))


def _opened(work: Work) -> Iterator[tuple[CautionPlace, str]]:
    """Where something made elsewhere is taken: the step that puts it on or adds it, or the weighing."""
    for stage in work.formula.stages:
        done = done_in(stage, work.formula)
        for at, step in done:
            if step.applied is not None:
                yield at, step.applied.stage
        for portion in stage.portions:
            if portion.stage:
                added = (at for at, step in done if any(goes.key == portion.key for goes in step.goes))
                yield next(added, CautionPlace(stage.key)), portion.stage


def plants_closed_in(vessel: FoodVessel) -> tuple[Foodstuff, ...]:
    """The wet plants that no air comes to: in a third of fat or so, or cooked and closed in."""
    soaked = bool(vessel.of_class(*WETS))
    wet = tuple(food for food in vessel.foods if is_wet_plant(food, soaked) and not too_dry(food))
    if any(portion.is_flour for portion in vessel.stage.portions) or not wet:
        return ()
    if vessel.share("fat") >= figure("fat-closes-from"):
        return wet
    closed = [n for n, leg in enumerate(vessel.legs) if _closes(leg.step)]
    return tuple(food for food in wet if closed and was_heated(food.before + vessel.legs[: closed[-1]]))


def _closes(step: Step) -> bool:
    return step.verb in WRAPS and step.where is not None and any(word in step.where[1].split() for word in CLOSED)


def _in_vessel(vessel: FoodVessel, work: Work) -> Iterator[Caution]:
    plants = plants_closed_in(vessel)
    if not plants:
        return
    formula = work.formula
    is_kept = formula.preparation and formula.good_for is not None
    done = [Done(leg.at, leg.step) for leg in vessel.legs]
    waits = next((at for at, step in done if _waits(step)), None)
    if not is_kept and waits is None:
        if vessel.share("fat") >= figure("fat-closes-from"):
            why: Wording = (f"{plants[0].name} in fat, made and used today",)
            yield caution("plants-in-fat-today", vessel.end, "note", why=why)
        return
    why, keeps = _why(vessel, plants[0])
    packed = next((at for at, step in done if step.verb in WRAPS), None)
    at = packed or (where_kept(formula) if is_kept else waits) or vessel.end
    level: Level = "limit" if sour_in_the_pieces(vessel, plants) else "top"
    yield caution("plants-under-fat", at, level, _own(formula) if keeps else {}, why)


def _waits(step: Step) -> bool:
    longest = step.time.high if step.time is not None else None
    return step.may_wait is not None or (
        step.verb in STANDS and longest is not None and longest > figure("under-fat-out")
    )


def _why(vessel: FoodVessel, plant: Foodstuff) -> tuple[Wording, bool]:
    """What the file says of it, against the limits; and whether it keeps to them."""
    cold, longest, out = figure("under-fat-cold"), figure("under-fat-longest"), figure("under-fat-out")
    broken: list[Wording] = []
    for way in ways_kept(vessel.formula):
        if way.celsius <= figure("frozen"):
            continue
        if not way.is_said:
            broken.append(("nothing says how cold: ", celsius(cold), " or colder"))
        elif way.celsius > cold:
            broken.append((celsius(way.celsius), ", and the limit is ", celsius(cold)))
        if way.seconds > longest:
            broken.append(("kept ", duration(way.seconds), ", and the limit is ", duration(longest)))
    standing = out_of_the_cold(vessel.legs[plant.since :], cold)
    if standing > out:
        broken.append(("out of the cold for ", duration(standing), ", and the limit is ", duration(out)))
    told: Wording = (f"{plant.name} with no air round it", *(part for one in broken for part in ("; ", *one)))
    return told, not broken


def _own(formula: Formula) -> dict[str, Fraction]:
    """The file's own days and degrees, where they are the stricter."""
    cold, longest = figure("under-fat-cold"), figure("under-fat-longest")
    ways = [way for way in ways_kept(formula) if figure("frozen") < way.celsius]
    if len(ways) != 1 or not ways[0].is_said or ways[0].celsius > cold or ways[0].seconds > longest:
        return {}
    return {"cold": ways[0].celsius, "days": ways[0].seconds / DAY}


def is_from_under_fat(key: str, work: Work) -> bool:
    vessel = vessel_called(work, key) if key in work.preparations else None
    return vessel is not None and vessel.formula.good_for is not None and bool(plants_closed_in(vessel))


def tub_label_withheld(work: Work) -> bool:
    """Whether a date on its tub would be our word that it keeps: plants under fat, warmer or longer than the limit."""
    for vessel in vessels_of(work):
        plants = plants_closed_in(vessel)
        if (
            plants
            and any(way.celsius > figure("frozen") for way in ways_kept(vessel.formula))
            and not _why(vessel, plants[0])[1]
        ):
            return True
    return False
