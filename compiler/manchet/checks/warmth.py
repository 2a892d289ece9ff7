"""How warm a mix becomes: a heat balance of what goes into the bowl, an estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Place
from manchet.formula.model import Stage

WATER = Fraction("4.19")
DRY = Fraction("1.8")
"""kJ/kg K. Flour 1.80 to 1.88 and water 4.185: Geankoplis, Transport Processes, appendix A.4."""

ROOM = Fraction(20)
"""Celsius, of whatever the file gives no temperature and the kitchen none either."""


def mix_temperature(subject: Subject, stage: Stage, held: bool = False) -> Fraction:
    """Celsius of everything weighed into a stage at its start (with `held`, also what is added later).

    Work of the mixer and heat of wetting are left out, so the true mix is some degrees warmer.
    """
    by_key = {other.key: other for other in subject.formula.stages}
    air = subject.kitchen.air if subject.kitchen.air is not None else ROOM
    heat = capacity = Fraction(0)
    for portion in stage.portions:
        if portion.held and not held:
            continue
        warmth = portion.celsius
        inner = by_key.get(portion.stage)
        if warmth is None and inner is not None and inner.key != stage.key:
            warmth = last_temperature(subject, inner)
        if warmth is None and portion.ingredient is not None and portion.ingredient.class_ == "water":
            warmth = subject.kitchen.tap if subject.kitchen.tap is not None else air
        if inner is not None:
            wet = Fraction(1, 2)
        elif portion.ingredient is None:
            wet = Fraction(0)
        else:
            wet = subject.larder.poured(portion.ingredient).water
        specific = wet * WATER + (1 - wet) * DRY
        capacity += portion.share * specific
        heat += portion.share * specific * (air if warmth is None else warmth)
    return heat / capacity if capacity else air


def last_temperature(subject: Subject, stage: Stage) -> Fraction | None:
    """How warm a stage is when it is used: the last figure its steps reach, after long waits that of the room.

    None: it has stood long enough, or nothing is said.
    """
    warmth: Fraction | None = None
    if any(p.celsius is not None for p in stage.portions):
        warmth = mix_temperature(subject, stage)
    for step in stage.steps:
        reached = next((r.value.likely for r in step.reaches if r.what in ("temperature", "core")), None)
        if reached is not None:
            warmth = reached
        elif step.heats and step.verb != "bake":
            warmth = step.heats[0].celsius.likely
        elif step.verb in ("boil", "simmer"):
            warmth = Fraction(100)
        elif step.verb in ("rest", "cool", "chill", "soak", "ripen") and step.time is not None:
            if step.time.likely >= 2 * 3600:
                warmth = None
            elif warmth is not None and step.time.likely >= 3600:
                warmth = min(warmth, Fraction(40))
    return warmth


def hottest_place(subject: Subject, stage: Stage) -> Place:
    """Where the file names the hottest thing that goes into a stage."""
    by_key = {other.key: other for other in subject.formula.stages}
    best: Fraction | None = None
    place = stage.place
    for portion in stage.portions:
        warmth = portion.celsius
        inner = by_key.get(portion.stage)
        if warmth is None and inner is not None and inner.key != stage.key:
            warmth = last_temperature(subject, inner)
        if warmth is not None and (best is None or warmth > best):
            best, place = warmth, portion.place
    return place
