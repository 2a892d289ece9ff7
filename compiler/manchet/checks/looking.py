"""Ways to look through a formula that several checks share."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.formula.model import Applied, Formula, Portion, Stage, Step, Who
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import COOLS_BREAD, DIVIDES, IN_POT

WETS = frozenset({"water", "liquid"})
"""Classes in which what is dried soaks."""


def breads(formula: Formula) -> tuple[tuple[str, tuple[Step, ...]], ...]:
    """The ways of its breads (noun, steps): none of a preparation."""
    return () if formula.preparation else formula.ways


def portions(formula: Formula) -> Iterator[Portion]:
    for stage in formula.stages:
        yield from stage.portions


def fat_share(formula: Formula) -> Fraction:
    """The fat weighed in, of all that is weighed."""
    there = [(p.share, p.ingredient is not None and p.ingredient.class_ == "fat") for p in portions(formula)]
    whole = sum((share for share, _ in there), Fraction(0))
    return sum((share for share, is_fat in there if is_fat), Fraction(0)) / whole if whole else Fraction(0)


def ingredients(formula: Formula) -> Iterator[Ingredient]:
    """Everything the formula takes from the larder: what is weighed, and what only touches the bread."""
    for portion in portions(formula):
        if portion.ingredient is not None:
            yield portion.ingredient
    for branch in formula.branches:
        for portion in branch.added:
            if portion.ingredient is not None:
                yield portion.ingredient
    for step in formula.steps:
        if step.applied is not None and step.applied.ingredient is not None:
            yield step.applied.ingredient


def place_of(formula: Formula, wanted: Callable[[Ingredient], bool]) -> Place:
    """Where the file says the amount of such an ingredient: in `overall`, else where it is weighed, else its head."""
    for line in formula.overall:
        if line.ingredient is not None and line.place is not None and wanted(line.ingredient):
            return line.place
    for portion in portions(formula):
        if portion.ingredient is not None and wanted(portion.ingredient):
            return portion.place
    return formula.place


def place_of_class(formula: Formula, *classes: str) -> Place:
    return place_of(formula, lambda ingredient: ingredient.class_ in classes)


def shares_of(stage: Stage, *classes: str) -> Fraction:
    """What a stage weighs of some classes, in grams per gram of all flour."""
    return sum(
        (p.share for p in stage.portions if p.ingredient is not None and p.ingredient.class_ in classes), Fraction(0)
    )


def boiled_paste(formula: Formula) -> bool:
    """Whether the whole dough is cooked in the pot before it is divided, as choux is: its starch then holds the water."""
    steps = formula.dough.steps
    divided = next((n for n, step in enumerate(steps) if step.verb in DIVIDES), len(steps))
    return not is_alive(formula.dough, formula) and any(step.verb in IN_POT for step in steps[:divided])


def flour_in(stage: Stage) -> Fraction:
    """Flour weighed into a stage as flour, in grams per gram of all flour."""
    return sum((p.share for p in stage.portions if p.is_flour), Fraction(0))


def locks_in_butter(formula: Formula, step: Step) -> bool:
    """Whether the step locks in a block that has butter in it."""
    if step.verb != "lock in":
        return False
    blocks = [formula.stage(goes.key) for goes in step.goes]
    inside = [p for block in blocks if block is not None for p in block.portions]
    names = [goes.name for goes in step.goes] + [
        p.name for p in inside if p.ingredient and p.ingredient.class_ == "fat"
    ]
    return any("butter" in name.casefold().split() for name in names)


def is_raw_egg(applied: Applied) -> bool:
    """Egg, or a wash of it, as it goes on."""
    class_ = applied.ingredient.class_ if applied.ingredient is not None else ""
    return class_ == "egg" or "egg wash" in applied.name.casefold()


RAISING = frozenset({"yeast", "sweet-dough yeast", "culture", "raising agent"})


def has_leaven(formula: Formula) -> bool:
    """Whether it has yeast, a culture or a raising agent, or draws on a stage that may."""
    if any(stage.from_nothing or stage.shared for stage in formula.stages):
        return True
    return any(ingredient.class_ in RAISING for ingredient in ingredients(formula))


def cools_bread(step: Step) -> bool:
    """Whether baked bread grows cold in it, be it said in the baker's own words: `do "on the rack" 2 h waiting`."""
    return step.verb in COOLS_BREAD or (step.verb == "do" and step.who is Who.WAITING)


def is_alive(stage: Stage, formula: Formula) -> bool:
    """Whether yeast or a culture is weighed into it, or comes in with a stage that has some."""
    for portion in stage.portions:
        if portion.ingredient is not None and portion.ingredient.class_ in ("yeast", "sweet-dough yeast", "culture"):
            return True
        inner = formula.stage(portion.stage)
        if inner is not None and inner.key != stage.key and is_alive(inner, formula):
            return True
    return False


def in_fahrenheit_by_its_line(step: Step) -> bool:
    """Whether the line of a step says its first heat in degrees Fahrenheit, whatever the kitchen counts in."""
    said = FIRST_DEGREES.search(step.place.text)
    return said is not None and said[1] == "F"


FIRST_DEGREES = re.compile(r"\bat\s+-?[0-9][0-9.\-]*\s*°?([CF])\b")


def of_verbs(steps: Iterable[Step], *verbs: str) -> Iterator[Step]:
    return (step for step in steps if step.verb in verbs)


def longest(steps: Iterable[Step]) -> Fraction:
    """Seconds that the steps take together, each at the long end of what it says."""
    total = Fraction(0)
    for step in steps:
        if step.time is not None:
            total += step.time.high if step.time.high is not None else step.time.likely
    return total


def likely(steps: Iterable[Step]) -> Fraction:
    """Seconds that the steps take together, each at the middle of what it says."""
    return sum((step.time.likely for step in steps if step.time is not None), Fraction(0))
