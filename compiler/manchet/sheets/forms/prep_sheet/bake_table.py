"""The phases of a bake on the prep sheet: their table, the core of its kind where the file gives none, and the loads."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.oven.bakes import dries, holds_of, loads_of
from manchet.figures.oven.curve import floor_heat, oven_of, rising_phase, window
from manchet.figures.oven.oven_figures import own_fire
from manchet.formula.bake_events import STEAM
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import round_to
from manchet.sheets.forms.prep_sheet.view import BakeTable
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.core_estimate import core_estimate
from manchet.sheets.parts.views import BakePhase, Box
from manchet.sheets.parts.wording import single

COUNTED = 4
"""Up to so many loads, the pieces of each are said. Our rule."""


def bake_table(work: Work, phases: Sequence[Step], is_last: bool, noun: str, m: Measures) -> BakeTable:
    """`is_last`: nothing is baked after it. `noun` is the sort of piece whose way this is, "" where the dough is not parted."""
    kitchen = work.kitchen
    boxes = (Box(m.words["box.oven"], m.degree()),)
    table = [_phase(step, kitchen, m) for step in phases]
    notes = (*_loads(work, phases, noun, m), *_falling(work, phases, m))
    core = core_estimate(work.formula, phases, m) if is_last and not dries(phases[0]) else None
    if core is not None:
        table[-1] = table[-1]._replace(core=core.about)
        notes += (core.note,)
    return BakeTable(tuple(table), boxes, notes)


def _phase(step: Step, kitchen: Kitchen, m: Measures) -> BakePhase:
    """The phase; its first steam with how this oven makes it, where the kitchen says (`steam by pan`) and the file no water."""
    phase, oven = wording.phase(step, m), oven_of(step, kitchen)
    first = next((at for at, event in enumerate(step.events) if event.what == STEAM), None)
    if first is None or step.events[first].millilitres is not None or oven is None or not oven.steam:
        return phase
    said = list(phase.steam_vent)
    said[first] = m.words.say("load.steam_by", said[first], oven.steam)
    return phase._replace(steam_vent=tuple(said))


def _loads(work: Work, phases: Sequence[Step], noun: str, m: Measures) -> Iterable[str]:
    """`24 at once in the mother: 2 loads of 24, 16; 4 min between two …`, where not all go in at once."""
    oven = oven_of(phases[0], work.kitchen)
    sorts = tuple(piece for piece in work.batch.pieces if not noun or same_noun(noun, piece.noun))
    pieces = sum((piece.number for piece in sorts), Fraction(0))
    holds = None if oven is None else holds_of(work, phases[0], sorts, oven)
    loads = loads_of(pieces, holds)
    if oven is None or holds is None or holds.by == "step" or len(loads) == 1:
        return
    if len(loads) > COUNTED:
        said = m.words.say("load.many_loads", str(len(loads)), m.plain(single(loads[-1]), 0))
    else:
        said = m.words.say("load.loads", str(len(loads)), ", ".join(m.plain(single(load), 0) for load in loads))
    phrase = "load.at_once_estimate" if holds.by == "floor" else "load.at_once"
    said = m.words.say(phrase, str(holds.number), oven.name or m.words["oven"], said)
    yield m.words.say("load.between", said, m.duration(oven.recovers)) if oven.recovers else said


def _falling(work: Work, phases: Sequence[Step], m: Measures) -> Iterable[str]:
    """From when to when an oven whose fire is out has the heat the bake begins at, to five minutes: an estimate. Of a heat
    that is to rise: that this oven cannot."""
    oven, heat = oven_of(phases[0], work.kitchen), floor_heat(phases[0])
    if oven is None or not oven.falls or phases[0].by_fire:
        return
    name = oven.name or m.words["oven"]
    if rising_phase(phases) is not None:
        yield m.words.say("load.never_rises", name)
        return
    fired_to = own_fire(work, oven)
    when = None if heat is None else window(oven.falls, heat, fired_to)
    if when is None:
        return
    opens, closes = (m.duration(round_to(hours * 12, 0) * 300) for hours in when)
    span = (opens, closes) if when.opens else (closes,)
    phrase = "load.falling" if when.opens else "load.falling_at_first"
    yield m.words.say(phrase, name, m.oven(single(round_to(fired_to, 0))), *span)
