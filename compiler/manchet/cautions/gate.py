"""Whether a formula may have a caution that is told: most breads have none, and then nothing else of this room is loaded.

It says yes too often and never too seldom: `tests/cautions` asks it of every text that has one. The few figures it knows are under
those of the limits, which another test asks; so it loads none of these.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.formula.model import Formula, Range, Reach, Stage, Step
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import COOKS, COOLS, COOLS_BREAD, HOT_WATER, IN_FAT, ON_THE_CRUST, STANDS, WRAPS

LONG = 2 * 3600
"""Seconds from which a wait may be too long for something, and under which nothing has cooled to be wrapped."""
SOAKED_AND_BAKED, SOAKED_AND_EATEN = 12 * 3600, 4 * 3600
"""Seconds from which raw grain in water may soak too long."""
FOR_EVER = 10**9
SUGAR_BOILS = 110
COLD, HOT = 5, 60
WARM_AIR = 25
KEEPS = 2 * 24 * 3600
TIGHT = ("film", "bag", "bags", "plastic", "foil")
"""What holds the steam in when a bread is wrapped in it."""
RAW_FOR_A_DAY = frozenset({"egg", "dairy", "water", "salt", "sweetener"})
PLAIN = frozenset({"water", "liquid", "salt", "sweetener", "fruit", "spice", "malt", "nut", "fat"})
"""Classes of a preparation in which nothing grows that has a limit, cooked or kept."""
DRY_FLOURS = frozenset({"wheat flour", "rye flour", "other flour"})
"""And these with them, where nothing wet comes to them."""
WET = frozenset({"water", "liquid"})
SOURING = frozenset({"culture", "yeast", "sweet-dough yeast"})
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
        "liquid",
    }
)
"""Classes that may touch a bread before its last heat."""
AT_ALL = HARMLESS - {"wheat flour", "rye flour", "other flour", "spice", "liquid"}
"""And after it."""
ON_A_CRUST = HARMLESS | {"egg", "dairy", "starch", "grain", "bread", "culture", "yeast"}
"""And in a preparation that lies on a crust in the oven."""


def may_hurt(work: Work) -> bool:
    formula = work.formula
    if formula.preparation:
        return formula.dish or not (_is_raw_and_short(formula) or _is_plain(formula))
    if _keeps_in_the_warm(work) or any(_of_stage(stage, work) for stage in formula.stages):
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


def _is_plain(formula: Formula) -> bool:
    """A preparation of fruit, sugar, fat and the like, in which no sugar boils and no herb lies under fat or in a jar; or dry crumbs."""
    classes = set()
    for stage in formula.stages:
        for portion in stage.portions:
            if portion.ingredient is None:
                return False
            classes.add(portion.ingredient.class_)
    steps = formula.steps
    if not classes & WET and not any(step.verb in COOKS for step in steps):
        classes -= DRY_FLOURS
    if not classes <= PLAIN or ("spice" in classes and _may_close(formula.stages)):
        return False
    return not any(
        step.verb in IN_FAT or step.bath or step.applied is not None or any(_ends_hot(reach) for reach in step.reaches)
        for step in steps
    )


def _may_close(stages: Iterable[Stage]) -> bool:
    """Whether a herb of it may lie under fat, or in a jar: in no flour."""
    return any(
        (portion.ingredient is not None and portion.ingredient.class_ == "fat")
        for stage in stages
        if not any(portion.is_flour for portion in stage.portions)
        for portion in stage.portions
    ) or any(step.verb in WRAPS for stage in stages for step in stage.steps)


def _ends_hot(reach: Reach) -> bool:
    high = reach.value.high if reach.value.high is not None else reach.value.low
    return reach.what in ("temperature", "core") and (high is None or high >= SUGAR_BOILS)


def _of_stage(stage: Stage, work: Work) -> bool:
    formula = work.formula
    for portion in stage.portions:
        ingredient = portion.ingredient
        if ingredient is None and formula.stage(portion.stage) is None:
            return True  # made elsewhere, and part of the dough
        if ingredient is not None and (ingredient.class_ == "lye" or _is_meat_or_fish(ingredient, portion.name)):
            return True
    if stage is formula.dough:
        return False
    classes = {portion.ingredient.class_ for portion in stage.portions if portion.ingredient is not None}
    if "vegetable" in classes or any(_ends_hot(reach) for step in stage.steps for reach in step.reaches):
        return True
    if "spice" in classes and _may_close((stage,)):
        return True
    if any(p.ingredient is not None and p.ingredient.class_ in SOURING and not p.held for p in stage.portions):
        return False  # what sours it from the first keeps other germs down
    if _is_cooked(stage, work):
        long = LONG
    else:
        baked = any(step.verb in COOKS for _, steps in formula.ways for step in steps)
        long = SOAKED_AND_BAKED if baked else SOAKED_AND_EATEN
    return sum(map(_stands, stage.steps)) >= long and _grows(stage, formula, set())


def _is_cooked(stage: Stage, work: Work) -> bool:
    """Whether it may be a paste: scalded, heated, or made with something hot."""
    kitchen = work.kitchen
    if stage.word in HOT_WATER or any(warm is not None and warm >= HOT for warm in (kitchen.tap, kitchen.flour)):
        return True
    return any(step.verb in COOKS for step in stage.steps) or any(
        portion.ingredient is None or (portion.celsius is not None and portion.celsius >= HOT)
        for portion in stage.portions
    )


def _grows(stage: Stage, formula: Formula, seen: set[str]) -> bool:
    """Whether grain, seed or flour is in it, or in a stage that it is made of."""
    seen.add(stage.key)
    for portion in stage.portions:
        if portion.ingredient is not None:
            if portion.ingredient.class_ in GROW_WET:
                return True
        elif portion.stage not in seen:
            inner = formula.stage(portion.stage)
            if inner is None or _grows(inner, formula, seen):
                return True
    return False


def _stands(step: Step) -> Fraction | int:
    """Seconds that it stands in the warm, or may; what is cooled down no longer than it may be, not at all."""
    heats = [heat.celsius for heat in step.heats]
    if step.time is None or _are_cold(heats) or _are_hot(heats):
        return 0
    if step.verb in COOLS:
        return 0 if step.time.low is not None and step.time.low <= LONG else FOR_EVER
    return _longest(step) if step.verb in STANDS else 0


def _on_the_way(steps: tuple[Step, ...], work: Work) -> bool:
    last = max((at for at, step in enumerate(steps) if step.verb in COOKS), default=len(steps))
    cooled = Fraction(0)
    for at, step in enumerate(steps):
        if step.verb in COOLS_BREAD and at > last:
            cooled += _longest(step)
        if step.verb in IN_FAT or (cooled < LONG and not work.bread.wrapped_warm and _is_closed_or_cut(step)):
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
    return _are_of(there, allowed) and not (any(one.class_ == "spice" for one in there) and _may_close((made,)))


def _are_of(ingredients: Iterable[Ingredient], classes: frozenset[str]) -> bool:
    return all(one.class_ in classes and not _is_meat_or_fish(one, one.name) for one in ingredients)


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


def _is_meat_or_fish(ingredient: Ingredient, written: str) -> bool:
    if ingredient.class_ not in ("meat", "fish", "other"):
        return False
    from manchet.larder.foods import is_meat_or_fish  # few formulas have need of it

    return is_meat_or_fish(ingredient, written)
