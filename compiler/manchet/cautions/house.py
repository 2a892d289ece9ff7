"""Hazards of the house: one posted card per kitchen, and which of them a formula calls on."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.caution import Caution, caution
from manchet.kitchen.model import Kitchen
from manchet.syntax.vocabulary import IN_OVEN

ALWAYS = ("oven-steam", "flour-dust", "raw-dough", "lifting", "moving-machines", "blades", "burns")


def house_hazards(kitchen: Kitchen) -> tuple[Caution, ...]:
    """The posted card: every hazard of this kitchen, whatever is baked; the gravest first."""
    return (*_fire(kitchen), *(caution(name) for name in ALWAYS))


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
