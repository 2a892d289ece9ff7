"""Cautions as they are printed: those of the formula at their step, those of the house on one posted card.

What the file keeps to is a box for the pen at its step, and no sentence. A handout goes where no card hangs on the wall and
nobody fills in boxes: there a limit is said in words, and what the card of a house says stands at its step.
"""

from __future__ import annotations

from collections.abc import Sequence

from manchet.cautions.at import CautionPlace
from manchet.cautions.caution import Caution
from manchet.cautions.hazard import PenBox
from manchet.cautions.phrase import LocalWord, Measured, Wording
from manchet.formula.ranges import Range
from manchet.quantities import printing
from manchet.quantities.units import INCH, POUND
from manchet.sheets.page.measures import HOUR, NBSP, Measures
from manchet.sheets.parts.views import Box, CautionNote


def cautions_of_stage(cautions: Sequence[Caution], key: str, m: Measures) -> tuple[CautionNote, ...]:
    """Those that the stage of this key causes as a whole: above what is weighed."""
    return _at(cautions, CautionPlace(key), m)


def cautions_at_step(
    cautions: Sequence[Caution], key: str, step: int, m: Measures, branch: int | None = None
) -> tuple[CautionNote, ...]:
    """What is said of those that one step causes: `step` of the steps of the stage of this key, or of a branch of
    `Formula.branches`."""
    return tuple(note for note in _at(cautions, CautionPlace(key, step, branch), m) if note.level != "limit")


def all_cautions_at_step(
    cautions: Sequence[Caution], key: str, step: int, m: Measures, branch: int | None = None
) -> tuple[CautionNote, ...]:
    """The same, and after it the boxes of the limits: for forms on which these have no place in the line of the step."""
    return (
        *cautions_at_step(cautions, key, step, m, branch),
        *(note for note in _at(cautions, CautionPlace(key, step, branch), m) if note.level == "limit"),
    )


def limits_at_step(
    cautions: Sequence[Caution], key: str, step: int, m: Measures, branch: int | None = None
) -> tuple[Box, ...]:
    """The boxes of the limits that a step keeps to."""
    notes = _at(cautions, CautionPlace(key, step, branch), m)
    return tuple(box for note in notes if note.level == "limit" for box in note.boxes)


def read_once(boxes: Sequence[Box], limits: Sequence[Box], m: Measures) -> tuple[Box, ...]:
    """The boxes of a step without the degrees that a limit beside them asks for."""
    asked = any(m.degree() in box.label or box.unit == m.degree() for box in limits)
    return tuple(box for box in boxes if not (asked and box.unit == m.degree()))


def cautions_at_home(
    cautions: Sequence[Caution], key: str, step: int | None, m: Measures, branch: int | None = None
) -> tuple[CautionNote, ...]:
    """Those that one step causes, or a stage as a whole, for who has neither a card on the wall nor a box to fill in."""
    here = (c for c in cautions if c.of in ("formula", "hands") and c.at == CautionPlace(key, step, branch))
    return tuple(_in_words(c, m) for c in here)


def _in_words(c: Caution, m: Measures) -> CautionNote:
    """A limit as a sentence: what it is of, and the figure."""
    note = caution_note(c, m)
    if c.level != "limit":
        return note
    said = c.said(m.house.words == "American")
    limit = said_in_units(said.limit, m)
    return note._replace(level="note", words=f"{c.hazard.catchword}.", limit=limit, boxes=(), source=c.hazard.source)


def cautions_of_no_stage(cautions: Sequence[Caution], keys: Sequence[str], m: Measures) -> tuple[CautionNote, ...]:
    """The formula's cautions of no stage that is printed: they stand under the head."""
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.at.stage not in keys)


def cautions_for_eaters(cautions: Sequence[Caution], m: Measures) -> tuple[CautionNote, ...]:
    """What whoever eats it is told, on card, label and handout: the crew's sheet leaves it out."""
    return tuple(caution_note(c, m) for c in cautions if c.of == "eater")


def caution_note(c: Caution, m: Measures) -> CautionNote:
    """In the words and the units of the house; a source keeps its own words."""
    hazard = c.hazard
    said = c.said(m.house.words == "American")
    words, limit, missed = (said_in_units(wording, m) for wording in (said.words, said.limit, said.if_missed))
    boxes = tuple(_pen_box(box, m) for box in said.boxes)
    if c.level == "limit":
        words = limit = missed = ""
        boxes = tuple(box._replace(wide=True) for box in boxes)
    step, branch = ("" if number is None else str(number + 1) for number in (c.at.step, c.at.branch))
    return CautionNote(
        c.level,
        words,
        limit,
        missed,
        boxes,
        hazard.source,
        hazard.address,
        hazard.catchword,
        c.name,
        c.at.stage,
        step,
        branch,
    )


def sources_once(notes: Sequence[CautionNote]) -> tuple[str, ...]:
    """Every source of a page once, in full: its address, or what is said of it where it has none."""
    return tuple(dict.fromkeys(note.address or note.source for note in notes))


def said_in_units(wording: Wording, m: Measures) -> str:
    """The text of a wording, its figures in the units of the house."""
    return "".join(_part(part, m) for part in wording)


def _part(part: str | Measured | LocalWord, m: Measures) -> str:
    match part:
        case Measured():
            return _measured(part, m)
        case LocalWord(name):
            return m.words["caution." + name]
    return part


def _measured(figure: Measured, m: Measures) -> str:
    """Temperatures to the whole degree, lengths to half an inch, sacks to the pound."""
    assert figure.low is not None, figure
    low, high = figure.low, figure.low if figure.high is None else figure.high
    ends = Range(low, high)
    match figure.unit:
        case "C":
            return m.degrees(ends)
        case "h":
            return m.time(Range(low * HOUR, high * HOUR))
        case "min":
            return m.time(Range(low * 60, high * 60))
        case "days":
            return m.words.say("caution.day" if low == high == 1 else "caution.days", m.plain(ends))
        case "percent":
            return f"{m.plain(ends)}{NBSP}{m.words['units.percent']}"
        case "kg" if m.house.units == "US":
            pounds = (printing.round_to(end * 1000 / POUND, 0) for end in (low, high))
            return f"{m.plain(Range(*pounds))}{NBSP}{m.words['units.lb']}"
        case "cm" if m.in_inches:
            inches = (printing.round_to(end * 20 / INCH, 0) / 2 for end in (low, high))
            return f"{m.plain(Range(*inches))}{NBSP}{m.words['units.inch']}"
    return f"{m.plain(ends)}{NBSP}{m.words['units.' + figure.unit]}"


def _pen_box(box: PenBox, m: Measures) -> Box:
    """Its unit stands after its label, where the label has not named it with a limit: `lye %`, `≤ 4 °C; warmer: bin`."""
    label = said_in_units(box.label, m)
    unit = {"": "", "C": m.degree(), "percent": m.words["units.percent"]}[box.unit]
    return Box(label, "" if unit in label else unit)


def _at(cautions: Sequence[Caution], at: CautionPlace, m: Measures) -> tuple[CautionNote, ...]:
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.at == at)
