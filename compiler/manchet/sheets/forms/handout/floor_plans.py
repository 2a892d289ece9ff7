"""The floor of the oven and the tray from above, with the pieces on it."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.batch.model import PieceBatch
from manchet.batch.work import Work
from manchet.figures.oven.at_home import TRAY
from manchet.figures.oven.curve import oven_of as oven_at
from manchet.figures.oven.floor import GAP, across, load_of, places
from manchet.formula.model import Step
from manchet.sheets.drawings.oven import plan
from manchet.sheets.drawings.pen import Drawing, drawing
from manchet.sheets.page.measures import Measures

LIES_ROUND = frozenset({"round", "ring", "knot"})


def floor_plan(bake: Step, work: Work, m: Measures) -> tuple[Drawing, ...]:
    """The measured floor of the oven from above, for two loaves of one sort and more that all lie on it."""
    batch, oven = work.batch, oven_at(bake, work.kitchen)
    if oven is None or oven.floor is None or len(batch.pieces) != 1:
        return ()
    load, number = load_of(work, batch.pieces[0], oven), int(batch.pieces[0].number)
    if load is None or number < 2 or load.number < number:
        return ()
    lie = places(oven.floor, load.piece.wide, load.piece.deep, GAP, number)
    size = m.words.say("handout.tray_size", *(str(int(side) // 10) for side in oven.floor[:2]))
    art = plan(oven.floor, lie, load.piece.wide, load.piece.deep, m.words["drawings.door"], size, oven.door)
    return (drawing("floor", m.words.say("drawings.floor", size, str(number)), art),)


def tray_plan(step: Step, pieces: Sequence[PieceBatch], m: Measures) -> tuple[Drawing, ...]:
    """The tray from above, for small pieces of one sort that lie as they are shaped: three at least, and all of them fit."""
    if step.shape not in LIES_ROUND or len(pieces) != 1 or pieces[0].tin:
        return ()
    wide, number = across(pieces[0].grams), int(pieces[0].number)
    lie = places(TRAY, wide, wide, GAP, number)
    if number < 3 or len(lie) < number:
        return ()
    size = m.words.say("handout.tray_size", "46", "33")
    return (drawing("tray", m.words.say("drawings.tray", size, str(number)), plan(TRAY, lie, wide, wide, "", size)),)
