"""Which drawing belongs to a step. Words of a closed list choose it; a word we have no drawing for gets none.

A score or a cue is prose: it chooses only where it plainly says one thing, and a doubt gets no drawing.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.losses.level import NOWHERE, Stands
from manchet.formula.model import Range, Step
from manchet.sheets.drawings import curve, finger, folds, plaits, scoring, shapes
from manchet.sheets.drawings.filling import filling
from manchet.sheets.drawings.pen import Drawing, drawing
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import Words
from manchet.syntax.vocabulary import RISES_WARM

_STRANDS = {"3": 3, "three": 3, "4": 4, "four": 4, "6": 6, "six": 6}
_PLAIT = re.compile(
    r"(?:plait|braid) of (?P<of>\w+)(?: strands)?|(?P<by>\w+)[- ]strand(?:ed)? (?:plait|braid)|(?P<bare>\w+) strands"
)

_SCORES = (
    ("two overlapping", r"(two|2) (long |lengthwise )?(cuts|slashes),? (that overlap|overlapping)( by a (third|quarter|half))?"),
    ("one long", r"(one|1|a|a single|one single) (long|lengthwise) (cut|slash)|(one|1) (cut|slash) (lengthwise|along its length|end to end)"),
    ("cross", r"(one|a|1) cross"),
    ("square", r"(one|a|1) square|four cuts (as|in) a square"),
    ("leaf", r"(one|a|1) leaf"),
    ("slanted row", r"(a row of )?(\w+ )?(slanted|slanting|diagonal) (cuts|slashes)( in a row)?|a slanted row"),
)  # fmt: skip
_DEEP = re.compile(r"(?:about )?(\d{1,2}) mm deep|a (finger) deep")
_STEEP = re.compile(r"(?:at )?(\d{1,2}) degrees|blade (flat|upright)")
_REST = re.compile(r"(blade|at|about|\d{1,2}|mm|degrees|a|finger|deep|flat|upright|shallow|quick|and|,|\s)*")
FINGER = Fraction(15)
"""Millimetres drawn for a finger's depth. Common practice."""
_FINGER = re.compile(
    r"\b(finger|fingertip|thumb)('s|s)?\b.*\b(mark|dent|hole|press|poke|pushed?|springs?|fills?|stays?)|\b(poked?|dent)\b"
    r"|\b(mark|dent|hole) of a (finger|fingertip|thumb)\b"
)


def drawings_of(step: Step, m: Measures, stands: Stands = NOWHERE, after: Sequence[Step] = ()) -> tuple[Drawing, ...]:
    """The drawings for one step. `stands`: what the pieces stand in; `after`: what is done later."""
    found = (_shape(step, after, m.words), _score(step, m), _fold(step, m.words), filling(step, stands, after, m),
             _finger(step, m.words))  # fmt: skip
    return tuple(one for one in found if one is not None)


def _shape(step: Step, after: Sequence[Step], words: Words) -> Drawing | None:
    if step.verb != "shape":
        return None
    said = " ".join(step.shape.casefold().split())
    name = shapes.SHAPE_WORDS.get(said)
    if name == "round" and any(later.verb == "shape" for later in after):
        name = "pre-shape"
    if name is not None:
        return drawing(name, words["drawings." + name], shapes.SHAPES[name]())
    match = _PLAIT.fullmatch(said)
    strands = _STRANDS.get(next(filter(None, match.groups()), "")) if match else None
    if strands is None:
        return None
    title = words.say("drawings.plait", str(strands), _moves(strands, words))
    return drawing(f"plait of {strands}", title, plaits.plait(strands, words["drawings.over"]))


def _moves(strands: int, words: Words) -> str:
    first, again = plaits.MOVES[strands]
    said = [words.say("drawings.over", str(a), str(b)) for a, b in again]
    once = [words.say("drawings.once", words.say("drawings.over", str(a), str(b))) for a, b in first]
    return ", ".join([*once, *said])


def _score(step: Step, m: Measures) -> Drawing | None:
    words = m.words
    if step.verb != "score":
        return None
    said = " ".join(step.how.casefold().split())
    for name, pattern in _SCORES:
        match = re.match(pattern, said)
        # What stands after the cut may say how deep and how steep, and nothing else.
        if match is None or not _REST.fullmatch(said[match.end() :]):
            continue
        deep, steep = _DEEP.search(said), _STEEP.search(said)
        depth, millimetres = "", None
        if deep:
            millimetres = FINGER if deep[2] else Fraction(deep[1])
            depth = words["drawings.finger"] if deep[2] else m.length(Range(millimetres, millimetres))
        held, degrees, angle = _held(name, steep, words)
        title = ", ".join(
            filter(None, (words[f"drawings.{name}"] + "; " + held, words.say("drawings.deep", depth) if depth else ""))
        )
        art = scoring.score(name, depth, None if millimetres is None else float(millimetres), degrees, angle)
        return drawing(name, title, art)
    return None


def _held(name: str, steep: re.Match[str] | None, words: Words) -> tuple[str, int, str]:
    """How the blade is held, in words and in degrees; and the figure to print, "" where the file gives none."""
    usual = scoring.CUTS[name][1]
    if steep and steep[1]:
        return words.say("drawings.blade", steep[1]), int(steep[1]), f"{int(steep[1])}°"
    if steep:
        return words[f"drawings.blade_{steep[2]}"], scoring.SHALLOW if steep[2] == "flat" else scoring.STEEP, ""
    return words["drawings.blade_usual" if usual == scoring.SHALLOW else "drawings.blade_usual_upright"], usual, ""


def _fold(step: Step, words: Words) -> Drawing | None:
    name = step.verb
    if step.verb == "fold":
        name = next((f"fold {word}" for word in step.manner if word in ("in three", "in four")), "hand fold")
    if step.verb == "ferment" and any(inside.work == "fold" for inside in step.folds):
        name = "hand fold"
    if name not in folds.FOLDS:
        return None
    return drawing(name, words["drawings." + name], folds.FOLDS[name](words["drawings.open_edge"]))


def _finger(step: Step, words: Words) -> Drawing | None:
    if step.verb not in RISES_WARM or not _FINGER.search(step.until.casefold()):
        return None
    seen = (words["drawings.springs"], words["drawings.fills"], words["drawings.stays"])
    captions = words["drawings.wait"], words["drawings.bake"], words["drawings.late"]
    return drawing("finger mark", words.say("drawings.finger_mark", *seen), finger.finger_mark(captions))


def bake_curve(phases: Sequence[Step], m: Measures) -> Drawing | None:
    """The heat over the minutes, for a bake that falls or has three phases and more; a table says two as well."""
    if len(phases) < 3 and not any(phase.ramp for phase in phases):
        return None
    stretches = []
    for phase in phases:
        if phase.time is None or not phase.heats:
            return None
        start = phase.heats[0].celsius.likely
        end = phase.ramp[1].likely if phase.ramp else start
        stretches.append(curve.Stretch(float(phase.time.likely) / 60, float(m.reading(start)), float(m.reading(end))))
    said = ", ".join(
        m.words.say("drawings.stretch", m.time(phase.time), _heats(phase, m)) for phase in phases if phase.time
    )
    art = curve.curve(stretches, m.degree(), m.words["units.min"])
    return drawing("bake curve", m.words.say("drawings.curve", said), art)


def _heats(phase: Step, m: Measures) -> str:
    start = m.oven(phase.heats[0].celsius)
    return start if phase.ramp is None else f"{start} {m.words.say('say.' + phase.ramp[0], m.oven(phase.ramp[1]))}"
