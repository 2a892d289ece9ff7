"""Whether a formula may have a caution that is told: most breads have none, and then nothing else of this room is loaded.

It says yes too often and never too seldom: `tests/cautions` asks it of every text that has one. It knows no figure of the
limits but one that is under all of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.formula.model import Formula, Range, Stage, Step
from manchet.larder.foods import is_meat_or_fish
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import COOKS, COOLS, IN_FAT, ON_THE_CRUST, STANDS, WRAPS

LONG = 2 * 3600
"""Seconds from which a wait may be too long for something."""
COLD, HOT = 5, 60
WARM_AIR = 25
KEEPS = 2 * 24 * 3600
TIGHT = ("film", "bag", "bags", "plastic", "foil")
"""What holds the steam in when a bread is wrapped in it."""
RAW_FOR_A_DAY = frozenset({"egg", "dairy", "water", "salt", "sweetener"})
GROW_WET = frozenset({"grain", "seed", "starch", "wheat flour", "rye flour", "other flour"})
HARMLESS = frozenset(
    {
        "fat",
        "sweetener",
        "salt",
        "seed",
        "nut",
        "fruit",
        "water",
        "wheat flour",
        "rye flour",
        "other flour",
        "spice",
        "malt",
    }
)
"""Classes that may touch a bread before its last heat."""
AT_ALL = HARMLESS - {"wheat flour", "rye flour", "other flour", "spice"}
"""And after it."""
ON_A_CRUST = HARMLESS | {"egg", "dairy", "starch", "grain", "bread", "culture", "yeast"}
"""And in a preparation that lies on a crust in the oven."""


def may_hurt(work: Work) -> bool:
    formula = work.formula
    if formula.preparation:
        return formula.dish or not _is_raw_and_short(formula)
    if _keeps_in_the_warm(work) or any(_of_stage(stage, formula) for stage in formula.stages):
        return True
    return any(_on_the_way(steps, work) for _, steps in formula.ways)


def _is_raw_and_short(formula: Formula) -> bool:
    """A preparation of egg and milk that nobody heats, and that is kept for a day in the cold: an egg wash."""
    there = [portion.ingredient for stage in formula.stages for portion in stage.portions]
    return (
        all(one is not None and one.class_ in RAW_FOR_A_DAY for one in there)
        and not any(step.verb in COOKS or step.verb in STANDS for step in formula.steps)
        and all(one.seconds <= 24 * 3600 and _are_cold([one.celsius]) for one in formula.kept)
    )


def _of_stage(stage: Stage, formula: Formula) -> bool:
    for portion in stage.portions:
        ingredient = portion.ingredient
        if ingredient is None and formula.stage(portion.stage) is None:
            return True  # made elsewhere, and part of the dough
        if ingredient is not None and (ingredient.class_ == "lye" or is_meat_or_fish(ingredient, portion.name)):
            return True
    if stage is formula.dough:
        return False
    classes = {portion.ingredient.class_ for portion in stage.portions if portion.ingredient is not None}
    grows = bool(classes & GROW_WET) or any(portion.ingredient is None for portion in stage.portions)
    return "vegetable" in classes or (grows and any(_stands_long(step) for step in stage.steps))


def _stands_long(step: Step) -> bool:
    if step.time is None:
        return False
    heats = [heat.celsius for heat in step.heats]
    if step.verb in COOLS:
        return step.time.low is None or step.time.low > LONG
    return step.verb in STANDS and _longest(step) > LONG and not (_are_cold(heats) or _are_hot(heats))


def _on_the_way(steps: tuple[Step, ...], work: Work) -> bool:
    last = max((at for at, step in enumerate(steps) if step.verb in COOKS), default=len(steps))
    for at, step in enumerate(steps):
        if step.verb in IN_FAT or (not work.bread.wrapped_warm and _is_closed_or_cut(step)):
            return True
        if step.bath or (step.applied is not None and not _is_harmless(step, at < last, work)):
            return True
    return False


def _is_closed_or_cut(step: Step) -> bool:
    if step.verb == "slice":
        return True
    return step.verb in WRAPS and step.where is not None and any(word in step.where[1].split() for word in TIGHT)


def _is_harmless(step: Step, is_baked: bool, work: Work) -> bool:
    goods = step.applied
    assert goods is not None
    if goods.ingredient is not None:
        return _are_of(
            (goods.ingredient,), (ON_A_CRUST if step.verb in ON_THE_CRUST else HARMLESS) if is_baked else AT_ALL
        )
    made = work.formula.stage(goods.stage) or (
        work.preparations[goods.stage].dough if goods.stage in work.preparations else None
    )
    if made is None or not is_baked or any(portion.ingredient is None for portion in made.portions):
        return False
    allowed = ON_A_CRUST if step.verb in ON_THE_CRUST else HARMLESS
    there = [portion.ingredient for portion in made.portions if portion.ingredient is not None]
    return _are_of(there, allowed) and not any(one.class_ == "spice" for one in there)


def _are_of(ingredients: Iterable[Ingredient], classes: frozenset[str]) -> bool:
    return all(one.class_ in classes and not is_meat_or_fish(one, one.name) for one in ingredients)


def _longest(step: Step) -> Fraction:
    if step.time is None:
        return Fraction(0)
    return step.time.high if step.time.high is not None else step.time.likely


def _are_cold(heats: Sequence[Range | None]) -> bool:
    return bool(heats) and all(one is not None and (one.high or one.likely) <= COLD for one in heats)


def _are_hot(heats: Sequence[Range]) -> bool:
    return bool(heats) and all((one.low or one.likely) >= HOT for one in heats)


def _keeps_in_the_warm(work: Work) -> bool:
    """Whether the air is warm, or the bread is to keep for long."""
    formula, air = work.formula, work.kitchen.air
    if air is not None and air >= WARM_AIR:
        return True
    sold = formula.sold.high if formula.sold is not None else None
    dated = any(sale is not None and sale.date_mark for sale in (formula.sale, *(b.sale for b in formula.branches)))
    return dated or (sold is not None and sold > KEEPS)
