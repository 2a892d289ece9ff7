"""Hazards of the house: one posted card per kitchen, and which of them a formula calls on."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.cautions.caution import Caution, caution
from manchet.checks.subject import Subject
from manchet.larder.kitchen import Kitchen

ALWAYS = ("oven-steam", "flour-dust", "raw-dough", "lifting", "moving-machines", "blades")


def card_of(kitchen: Kitchen) -> tuple[Caution, ...]:
    """The posted card: every hazard of this kitchen, whatever is baked; the gravest first."""
    return (*_fire(kitchen), *(caution(name) for name in ALWAYS))


def of_house(subject: Subject) -> Iterator[Caution]:
    """The hazards of the house that this formula calls on, so that its sheet can point to the card."""
    steps = [step for stage in subject.formula.stages for step in stage.steps]
    steps += [step for branch in subject.formula.branches for step in branch.steps]
    baked = [step for step in steps if step.verb in ("bake", "roast")]
    if baked:
        yield from _fire(subject.kitchen)
    if any(step.steam or any(heat.celsius.likely >= 200 for heat in step.heats) for step in baked):
        yield caution("oven-steam")
    flour = any(portion.is_flour for stage in subject.formula.stages for portion in stage.portions)
    if flour and subject.batch.flour >= 5000:
        yield caution("flour-dust")
    if flour:
        yield caution("raw-dough")
    if any(line.grams > 16_000 for stage in subject.batch.stages for line in stage.weighed):
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
