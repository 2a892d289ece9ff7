"""The bake as a domestic oven does it: each phase with and without a fan, in both degrees and in gas marks."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.usual_bake_loss import THIN_NAMES
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.figures.oven.core import core_of
from manchet.figures.oven.floor import shapes
from manchet.formula.model import Heat, Range, Step
from manchet.sheets.forms.handout.floor_plans import floor_plan
from manchet.sheets.forms.handout.home_measures import FAN_LESS, HOTTEST, oven_marks
from manchet.sheets.forms.handout.view import HomeOven, HomePhase
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.step_pictures import bake_illustration, illustrations
from manchet.sheets.parts.wording import single

POTTED = Fraction(350)
"""Grams from which a piece is a loaf that a pot is worth heating for. Our own rule."""
FULL_POT = Fraction(1200)
"""Grams of dough that a pot of 5 litres takes with room to rise. Our own rule."""
IN_A_POT = frozenset({"round", "oval", "ball", "boule", "batard"})
"""What is shaped so is round, or short enough for a pot. Our own rule."""


def home_oven(
    bake: Sequence[Step], work: Work, pictures: Pictures, noun: str, grams: Fraction, m: Measures
) -> HomeOven:
    """`grams`: of the largest piece that is baked here, of this noun."""
    ours = bake_illustration([_on_one_dial(step) for step in bake], pictures, m)
    if pictures is not None and grams >= POTTED and _on_a_stone(bake, work, noun):
        ours += illustrations(floor_plan(bake[0], work, m))
    phases = [_phase(step, m) for step in bake]
    shown = own_illustrations([picture for step in bake for picture in step.pictures], pictures)
    core = core_of(work.batch.formula, bake)
    if core is not None:
        about = m.degrees(single(Fraction(core.celsius)))
        phases[-1] = phases[-1]._replace(core=m.words.say("handout.core_about", about))
    other = m.words["handout.celsius" if m.house.degrees == "F" else "handout.fahrenheit"]
    return HomeOven(other, tuple(phases), tuple(_advice(bake, work, noun, grams, m)), (*ours, *shown))


def _on_one_dial(step: Step) -> Step:
    heat = dial(step)
    return step if heat is None else step._replace(heats=(Heat(heat),))


def dial(step: Step) -> Range | None:
    """The one heat a domestic oven is set to: the middle of what the file says of floor, air, top and bottom."""
    still = [heat.celsius for heat in step.heats if heat.where != "fan"]
    if not still:
        return next((_still(heat.celsius) for heat in step.heats), None)
    if len(still) == 1:
        return still[0]
    heats = [heat.likely for heat in still]
    middle = sum(heats, Fraction(0)) / len(heats)
    return Range(middle, middle)


def _still(fan: Range) -> Range:
    """The heat without a fan that does what this does with one."""
    return Range(*(None if end is None else end + FAN_LESS for end in fan))


def _phase(step: Step, m: Measures) -> HomePhase:
    heat = dial(step)
    core = next((m.degrees(reach.value) for reach in step.reaches if reach.what == "core"), "")
    minutes = m.time(step.time) if step.time is not None else ""
    notes = tuple(note for note in wording.phase(step._replace(vent=None), m).notes if note)
    if step.ramp is not None:
        notes = (m.words.say("say." + step.ramp[0], m.oven(step.ramp[1])), *notes)
    if heat is None:
        return HomePhase(minutes, "", "", "", "", core, wording.look(step, m), step.why, notes)
    said = oven_marks(heat, m)
    return HomePhase(
        minutes, said.oven, said.fan, said.other, said.gas, core, wording.look(step, m), step.why, notes
    )  # fmt: skip


def _on_a_stone(bake: Sequence[Step], work: Work, noun: str) -> bool:
    """A hearth bread with nothing under or over it."""
    formula = work.batch.formula
    bare = not any(step.lid is not None for step in bake) and not any(piece.tin for piece in work.batch.pieces)
    lie = (step.where[1] for step in formula.way_of(noun) if step.verb == "place" and step.where is not None)
    return bare and formula.bread.hearth and not any(fold(what).split()[-1] in ON_SOMETHING for what in lie)


ON_SOMETHING = ("tray", "trays", "tin", "tins")


def _fits_a_pot(work: Work, noun: str, grams: Fraction) -> bool:
    """A round or a short loaf; one that is not shaped, by its name."""
    nouns = [fold(noun)] if noun else [fold(piece.noun) for piece in work.batch.pieces]
    other = any(name in word for word in nouns for name in (*THIN_NAMES, "roll", "bun", "flat"))
    shaped = next((word for word in shapes(work.batch.formula, noun) if word), "round")
    return POTTED <= grams <= FULL_POT and shaped in IN_A_POT and not other


def _advice(bake: Sequence[Step], work: Work, noun: str, grams: Fraction, m: Measures) -> list[str]:
    """What a pot or a stone does here, when to heat the oven, and what to do where the file is hotter than it."""
    lidded = any(step.lid is not None for step in bake)
    steamed = any(step.steam for step in bake)
    stone = _on_a_stone(bake, work, noun)
    pot = stone and _fits_a_pot(work, noun, grams)
    heated = (
        "handout.heat_first_stone" if pot or lidded else "handout.heat_first_bare" if stone else "handout.heat_first"
    )
    said = [m.words[heated]]
    if stone and not pot:
        said.append(m.words["handout.stone_alone"])
    if pot:
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
