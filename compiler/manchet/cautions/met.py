"""When a hazard of the formula is met, and at which stage.

Unknown temperature counts as that of a room, unknown acidity as none. A bread that is baked through is let off what
baking mends; only the words for the bench are left.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.caution import Caution, caution
from manchet.figures.composition.lye import lye_in
from manchet.figures.water.mix_temperature import mix_temperature
from manchet.formula.model import Formula, Stage, Step
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import BOILS, COOKS, COOLS, HOLDS_WATER, STANDS, WRAPS

HOUR = 3600
FAT_CONTINUOUS = Fraction(30, 100)
DRIED = ("dried", "flakes", "powder", "olives", "capers", "sauerkraut", "paste", "starch", "flour", "potato", "puree")
"""Words in the names of plants that are dry or sour enough not to be meant here."""

COOLING = COOLS - {"freeze"}
"""How fast a freezer cools is not judged."""
SOURING = frozenset({"culture"})


def hazards_met(work: Work) -> Iterator[Caution]:
    """Every hazard of the formula, at each stage that causes it; the same one may come several times."""
    for stage in work.formula.stages:
        yield from _lye(work, stage)
        yield from _under_fat(work, stage)
        yield from _cooked(work, stage)
        yield from _standing(work, stage)
        yield from _burns(work, stage)
        yield from _words_of_steps(stage)
    yield from _after_heat(work)
    yield from _rope(work)
    yield from _wrapped(work)


def _weight(stage: Stage) -> Fraction:
    return sum((p.share for p in stage.portions), Fraction(0))


def _class_share(stage: Stage, *classes: str) -> Fraction:
    return sum((p.share for p in stage.portions if p.ingredient and p.ingredient.class_ in classes), Fraction(0))


def _names(stage: Stage, *classes: str) -> list[Ingredient]:
    return [p.ingredient for p in stage.portions if p.ingredient is not None and p.ingredient.class_ in classes]


def _lye(work: Work, stage: Stage) -> Iterator[Caution]:
    whole = _weight(stage)
    strength = sum((lye_in(p.ingredient) * p.share for p in stage.portions), Fraction(0)) / whole if whole else 0
    if strength >= Fraction(2, 100):
        yield caution("lye-corrosive", stage.key)
    elif strength >= Fraction(5, 1000):
        yield caution("lye-irritant", stage.key)
    for step in _done_with(stage, work.formula):
        applied = step.applied
        if applied is None:
            continue
        if (applied.ingredient is not None and applied.ingredient.class_ == "lye") or "lye" in applied.name.split():
            yield caution("lye-corrosive", stage.key)


def _fresh_plant(ingredient: Ingredient) -> bool:
    name = ingredient.name.casefold()
    herb = ingredient.class_ == "spice" and any(word in name for word in ("fresh", "leaves"))
    return (ingredient.class_ == "vegetable" or herb) and not any(word in name for word in DRIED)


def _under_fat(work: Work, stage: Stage) -> Iterator[Caution]:
    whole = _weight(stage)
    if not whole or _class_share(stage, "fat") / whole < FAT_CONTINUOUS or any(p.is_flour for p in stage.portions):
        return
    if not any(_fresh_plant(i) for i in _names(stage, "vegetable", "spice")):
        return
    kept = work.formula.preparation and work.formula.good_for is not None
    waits = any(step.may_wait or (step.verb in STANDS and _long(step) > 2 * HOUR) for step in stage.steps)
    yield caution("plants-under-fat" if kept or waits else "plants-in-fat-today", stage.key)


def _long(step: Step) -> Fraction:
    if step.time is None:
        return Fraction(0)
    return step.time.high if step.time.high is not None else step.time.likely


def _reached(step: Step) -> Fraction | None:
    return next((r.value.likely for r in step.reaches if r.what in ("temperature", "core")), None)


def _cooked(work: Work, stage: Stage) -> Iterator[Caution]:
    """Preparations of egg, milk, vegetables or starch that are cooked and kept: a dough or a scald is baked later."""
    if not work.formula.preparation:
        return
    perishable = _names(stage, "egg", "dairy", "vegetable", "starch")
    heats = [step for step in stage.steps if step.verb in COOKS]
    if not perishable:
        return
    if any(i.class_ == "egg" for i in perishable):
        tops = [t for t in (_reached(step) for step in heats) if t is not None]
        boils = any(step.verb in BOILS for step in heats)
        if heats and not boils and (not tops or max(tops) < 71):
            yield caution("cook-egg-through", stage.key)
        elif not heats:
            yield caution("raw-egg-kept", stage.key)
    if heats and (work.formula.good_for is not None or any(s.verb in COOLING for s in stage.steps)):
        yield caution("cool-it-fast", stage.key, "" if _slow_cooling(stage) else "note")


def _slow_cooling(stage: Stage) -> bool:
    """Whether the steps as written break 21 C in 2 h or 5 C in 6 h; a cooling that names no end does."""
    cools = [step for step in stage.steps if step.verb in COOLING]
    taken = Fraction(0)
    warm_until = cold_until = None
    for step in cools:
        taken += _long(step)
        end = _reached(step)
        if end is None and step.verb == "chill" and step.heats:
            end = step.heats[0].celsius.likely
        if end is not None and end <= 21 and warm_until is None:
            warm_until = taken
        if end is not None and end <= 5 and cold_until is None:
            cold_until = taken
    return warm_until is None or cold_until is None or warm_until > 2 * HOUR or cold_until > 6 * HOUR


def _standing(work: Work, stage: Stage) -> Iterator[Caution]:
    """Cooked flour that stands warm, raw grain that soaks warm. Baked later, it is a note."""
    if _names(stage, *SOURING, "yeast", "sweet-dough yeast") or any(p.stage for p in stage.portions):
        return
    level = "" if work.formula.preparation else "note"
    if stage.word == "scald":
        warm = Fraction(0)
        for step in stage.steps:
            heat = step.heats[0].celsius.likely if step.heats else Fraction(20)
            if step.verb in STANDS and 10 <= heat < 60:
                warm += _long(step)
        if warm > 2 * HOUR:
            yield caution("warm-and-wet", stage.key, level)
    water, salt = _class_share(stage, "water", "liquid", "dairy"), _class_share(stage, "salt")
    raw = _names(stage, "grain", "seed", "wheat flour", "rye flour", "other flour")
    if stage.word == "scald" or not raw or not water or salt >= water / 10:
        return
    for step in stage.steps:
        heat = step.heats[0].celsius.likely if step.heats else Fraction(20)
        if step.verb in STANDS and heat > 7 and _long(step) >= 12 * HOUR:
            yield caution("warm-soak", stage.key, level)


def _burns(work: Work, stage: Stage) -> Iterator[Caution]:
    living = stage is work.formula.dough and not work.formula.preparation
    hot = [p.celsius for p in stage.portions if p.celsius is not None and p.ingredient is not None]
    if stage.word in HOLDS_WATER and (max(hot, default=Fraction(0)) >= 65 or mix_temperature(work, stage) >= 65):
        yield caution("scald-burns", stage.key)
    whole = _weight(stage)
    sugary = whole and _class_share(stage, "sweetener") / whole >= Fraction(1, 2)
    for step in _done_with(stage, work.formula):
        if step.verb == "fry":
            yield caution("hot-oil", stage.key)
        if step.verb == "boil" and living:
            yield caution("kettle-burns", stage.key)
        if step.verb == "bake" and step.lid:
            yield caution("hot-lid", stage.key)
        if sugary and (_reached(step) or 0) >= 110:
            yield caution("hot-sugar", stage.key)


def _words_of_steps(stage: Stage) -> Iterator[Caution]:
    for step in stage.steps:
        said = " ".join((step.how, step.until, step.why, *step.notes)).casefold()
        if (
            step.verb == "mix"
            and "by hand" not in step.manner
            and any(w in said for w in ("scrape", "reach in", "feel"))
        ):
            yield caution("stop-the-mixer", stage.key)


def _after_heat(work: Work) -> Iterator[Caution]:
    """What goes on or in after the last heat is eaten as it is."""
    if work.formula.preparation:
        return
    for _, noun_steps in work.formula.ways:
        last = max((i for i, step in enumerate(noun_steps) if step.verb in COOKS), default=None)
        if last is None:
            continue
        for number, step in enumerate(noun_steps):
            applied = step.applied
            if applied is None:
                continue
            class_ = applied.ingredient.class_ if applied.ingredient is not None else ""
            name = applied.name.casefold()
            if number < last:
                if class_ == "egg" or "egg wash" in name:
                    yield caution("raw-egg-kept", "dough")
                continue
            if class_ == "egg" or "egg wash" in name:
                yield caution("raw-egg-after-heat", "dough")
            elif class_ == "dairy" or any(word in name for word in ("custard", "cream")):
                yield caution("keep-filling-cold", "dough")
            elif class_.endswith("flour"):
                yield caution("raw-flour-after-heat", "dough")


def _done_with(stage: Stage, formula: Formula) -> tuple[Step, ...]:
    """The steps of a stage; of the dough, those of all that it is divided into too."""
    if stage is not formula.dough:
        return stage.steps
    return stage.steps + tuple(step for branch in formula.branches for step in branch.steps)


def _rope(work: Work) -> Iterator[Caution]:
    """Only where the kitchen is warm, and nothing sours the bread."""
    air, totals = work.kitchen.air, work.totals
    if air is None or air < 25 or totals.cultures or work.formula.preparation:
        return
    share = totals.by_class
    whole = sum((line.share for line in work.formula.overall if "whole" in line.name.casefold()), Fraction(0))
    rough = share.get("grain", Fraction(0)) + share.get("seed", Fraction(0)) + whole
    scald = next((s.key for s in work.formula.stages if s.word == "scald"), None)
    sour = any("vinegar" in line.name or "propionate" in line.name for line in work.formula.overall)
    if not sour and (scald is not None or share.get("bread") or rough > Fraction(20, 100)):
        yield caution("rope-weather", scald or "dough")


def _wrapped(work: Work) -> Iterator[Caution]:
    """Slicing, or wrapping in something that holds steam, sooner than the middle can have cooled."""
    if work.bread.wrapped_warm or work.formula.preparation:
        return
    for _, steps in work.formula.ways:
        baked = max((i for i, step in enumerate(steps) if step.verb == "bake"), default=None)
        if baked is None:
            continue
        cooled = Fraction(0)
        for step in steps[baked + 1 :]:
            if step.verb == "cool":
                cooled += _long(step)
            tight = step.where is not None and any(w in step.where[1] for w in ("film", "bag", "plastic", "foil"))
            if (step.verb == "slice" or (step.verb in WRAPS and tight)) and cooled < 90 * 60:
                yield caution("wrapped-warm", "dough")
