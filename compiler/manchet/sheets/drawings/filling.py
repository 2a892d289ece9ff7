"""Which tin or basket is drawn at a step, how full, and how it says so."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.losses.level import Level, Stands, level_of
from manchet.formula.model import Range, Reach, Step
from manchet.quantities.units import INCH
from manchet.sheets.drawings import levels
from manchet.sheets.drawings.levels import Captions, VesselCut
from manchet.sheets.drawings.pen import Drawing, drawing
from manchet.sheets.page.measures import Measures
from manchet.syntax.vocabulary import RISES

UNKNOWN_BEFORE, UNKNOWN_AFTER = 0.42, 0.8
"""Where a level is drawn that nobody can know: then the title says that it is not to scale."""


def filling(step: Step, stands: Stands, after: Sequence[Step], m: Measures) -> Drawing | None:
    """The level before and after, where the file says how far the dough is to rise; where it says nothing of that, how
    full the tin is when the dough goes in, and where its seam lies."""
    if not stands.word:
        return None
    rises = _rises(step)
    if rises is None:
        if step.verb != "place" or any(_rises(later) is not None for later in after):
            return None
        level = level_of(stands)
        if level.before is None and not stands.seam:
            return None
        return _cut_drawing(stands, level, None, m)
    gap = rises.value if rises.what == "below rim" else None
    level = level_of(stands, None if gap is None else gap.likely, None if gap else rises.value.likely)
    if level.sinks or (gap is None and level.after is None):
        return None
    return _cut_drawing(stands, level, gap, m)


def _rises(step: Step) -> Reach | None:
    """`to 20 mm below the rim`, `to 1.8 times its volume`, of a dough that stands and rises."""
    if step.verb not in RISES:
        return None
    return next((reach for reach in step.reaches if reach.what in ("below rim", "volume")), None)


def _cut_drawing(stands: Stands, level: Level, gap: Range | None, m: Measures) -> Drawing:
    words, rises = m.words, gap is not None or level.after is not None
    before = "" if level.before is None else _high(level.before, level.depth, m)
    after = "" if level.after is None or gap is not None else _high(level.after, level.depth, m)
    below = "" if gap is None else m.length(gap)
    seam = words[f"manner.seam {stands.seam}"] if stands.seam else ""
    said = Captions(
        tuple(
            filter(None, (words["drawings.before" if rises else "drawings.dough"] if rises or before else "", before))
        ),
        (words.say("drawings.rim", below),) if below else (words["drawings.after"], after) if rises and after else (),
        bool(below),
        seam,
    )
    vessel = levels.TIN if stands.word == "tin" else levels.BASKET
    if level.depth is not None and stands.vessel is not None and stands.vessel.rim is not None:
        rim, floor = stands.vessel.rim, stands.vessel.base or stands.vessel.rim
        vessel = VesselCut(float(min(rim)), float(min(floor)), float(level.depth))
        title = words.say(f"drawings.{stands.word}_to_scale", m.length(Range(level.depth, level.depth)))
    else:
        title = words[f"drawings.{stands.word}"]
    end = level.after if level.after is not None else UNKNOWN_AFTER if rises else None
    start = level.before if level.before is not None else UNKNOWN_BEFORE
    art = levels.cut(vessel, float(start), None if end is None else float(end), stands.seam, said)
    parts = [title, words.say("drawings.dough_before", before) if before else words["drawings.dough_unknown"]]
    if gap is not None:
        parts.append(words.say("drawings.dough_below", below))
    elif after:
        parts.append(words.say("drawings.dough_after", after))
    return drawing(stands.word, "; ".join(filter(None, (*parts, seam))), art)


def _high(share: Fraction, depth: Fraction | None, m: Measures) -> str:
    """`about 35 mm`, to the nearest 5, or quarter of an inch; of a vessel not measured `about 45 % full`, to the nearest 5."""
    if depth is None:
        return m.words.say("drawings.full", m.percent(_nearest(Fraction(5), share * 100) / 100))
    height = _nearest(INCH / 4 if m.house.units == "US" else Fraction(5), share * depth)
    return m.words.say("drawings.about", m.length(Range(height, height)))


def _nearest(step: Fraction, figure: Fraction) -> Fraction:
    return round(figure / step) * step
