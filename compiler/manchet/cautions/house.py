"""Hazards of the house: one posted card per kitchen, and which of them a formula calls on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from manchet.batch.work import Work
from manchet.cautions.caution import Caution, caution
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.syntax.vocabulary import IN_OVEN

ALWAYS = ("oven-steam", "kettles-and-lids", "flour-dust", "raw-dough", "lifting", "moving-machines", "blades", "burns")
LYE = ("lye-mixing",)


def house_hazards(kitchen: Kitchen, has_lye: bool = False) -> tuple[Caution, ...]:
    """The posted card: every hazard of this kitchen, whatever is baked; the gravest first. `has_lye`: it is mixed there."""
    lye = [caution(name) for name in LYE] if has_lye else []
    return (*lye, *_fire(kitchen), *(caution(name) for name in ALWAYS))


def mixes_lye(formulas: Iterable[Formula]) -> bool:
    """Whether lye is weighed for one of them, or touches its bread."""
    return any(
        ingredient is not None and ingredient.class_ == "lye"
        for formula in formulas
        for ingredient in (
            *(portion.ingredient for stage in formula.stages for portion in stage.portions),
            *(step.applied.ingredient for step in formula.steps if step.applied is not None),
        )
    )


def house_hazards_met(work: Work) -> Iterator[Caution]:
    """The hazards of the house that this formula calls on, so that its sheet can point to the card."""
    steps = work.formula.steps
    baked = [step for step in steps if step.verb in IN_OVEN]
    if baked:
        yield from _fire(work.kitchen)
    if any(step.steamed or any(heat.celsius.likely >= 200 for heat in step.heats) for step in baked):
        yield caution("oven-steam")
    flour = any(portion.is_flour for stage in work.formula.stages for portion in stage.portions)
    if flour and work.batch.flour >= 5000:
        yield caution("flour-dust")
    if flour:
        yield caution("raw-dough")
    if any(line.grams > 16_000 for stage in work.batch.stages for line in stage.weighed):
        yield caution("lifting")
    if any(step.verb == "mix" and "by hand" not in step.manner for step in steps):
        yield caution("moving-machines")
    if any(step.verb == "score" for step in steps):
        yield caution("blades")


def _fire(kitchen: Kitchen) -> Iterator[Caution]:
    heats = " ".join(oven.heat for oven in kitchen.ovens).casefold()
    if "wood" in heats or "charcoal" in heats:
        yield caution("smoke-and-monoxide")
    if "gas" in heats:
        yield caution("gas-oven")
