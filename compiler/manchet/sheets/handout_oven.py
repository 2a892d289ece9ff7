"""The bake as a domestic oven does it: each phase in Celsius with and without a fan, in Fahrenheit and gas marks."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.formula.model import Range, Step
from manchet.sheets import wording
from manchet.sheets.drawings.choosing import bake_curve
from manchet.sheets.handout_values import Figure, Oven, Phase
from manchet.sheets.home_measures import HOTTEST, marks
from manchet.sheets.measures import Measures
from manchet.sheets.prep_view import Prepared

HEARTH = frozenset({"hearth loaf", "rye hearth loaf"})


def oven_of(bake: Sequence[Step], work: Prepared, m: Measures, shown: tuple[Figure, ...]) -> Oven:
    drawn = bake_curve(bake, m)
    curve = (Figure(drawn.title, drawn.svg),) if drawn is not None else ()
    return Oven(tuple(_phase(step, m) for step in bake), tuple(_advice(bake, work, m)), (*curve, *shown))


def dial(step: Step) -> Range | None:
    """The one heat a domestic oven is set to: the middle of what the file says of floor, air, top and bottom."""
    heats = [heat.celsius.likely for heat in step.heats if heat.where != "fan"]
    if not heats:
        return next((heat.celsius for heat in step.heats), None)
    if len(heats) == 1:
        return step.heats[0].celsius
    middle = sum(heats, Fraction(0)) / len(heats)
    return Range(middle, middle)


def _phase(step: Step, m: Measures) -> Phase:
    heat = dial(step)
    core = next((m.degrees(reach.value) for reach in step.reaches if reach.what == "core"), "")
    minutes = m.time(step.time) if step.time is not None else ""
    notes = tuple(note for note in wording.phase(step._replace(vent=None), m).notes if note)
    if step.ramp is not None:
        notes = (m.words.say("say." + step.ramp[0], m.oven(step.ramp[1])), *notes)
    if heat is None:
        return Phase(minutes, "", "", "", "", core, wording.look(step, m), step.why, notes)
    said = marks(heat, m)
    return Phase(
        minutes, said.celsius, said.fan, said.fahrenheit, said.gas, core, wording.look(step, m), step.why, notes
    )  # fmt: skip


def _advice(bake: Sequence[Step], work: Prepared, m: Measures) -> list[str]:
    """What a pot or a stone does here, when to heat the oven, and what to do where the file is hotter than it."""
    lidded = any(step.lid is not None for step in bake)
    steamed = any(step.steam for step in bake)
    stone = not lidded and not any(piece.tin for piece in work.batch.pieces) and (
        steamed or work.batch.formula.kind in HEARTH
    )  # fmt: skip
    said = [m.words["handout.heat_first_stone" if stone or lidded else "handout.heat_first"]]
    if stone:
        first = bake[0]
        time = m.time(first.time) if first.time is not None and len(bake) > 1 else m.words["handout.first_third"]
        said += [m.words.say("handout.pot", time), m.words["handout.stone"]]
    if steamed and not lidded:
        said.append(m.words["handout.steam_at_home"])
    if any((heat := dial(step)) is not None and heat.likely > HOTTEST for step in bake):
        said.append(m.words.say("handout.too_hot", m.degrees(Range(HOTTEST, HOTTEST))))
    if lidded and sum(piece.number for piece in work.batch.pieces) > 1:
        said.append(m.words["handout.one_after_another"])
    return said
