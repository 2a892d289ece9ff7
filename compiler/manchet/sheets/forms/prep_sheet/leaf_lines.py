"""Steps as the lines of a prep sheet: what is done in one go, by one person, without a look or a reading between, is one line."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from manchet.formula.model import Step, Who
from manchet.sheets.forms.prep_sheet.view import LeafLine
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.clauses import clause_of
from manchet.sheets.parts.steps import amount_moved
from manchet.sheets.parts.views import Box, CautionNote, Illustration, WeighRow
from manchet.sheets.parts.wording import has_reading, is_by_feel
from manchet.syntax.vocabulary import BRINGS_IN, SETS_WARMTH

LETTERS = 105
"""A line of more is read twice. Our rule, as the two below."""
SHORT = Fraction(30 * 60)
"""Seconds of a wait that still belongs to what was done before it, and ends its line; a longer one has a line of its own."""
AT_MOST = 1
"""Drawings of a line."""


def leaf_line(
    step: Step,
    adds: Bowl | Mapping[str, WeighRow],
    notes: tuple[str, ...],
    figures: tuple[Illustration, ...],
    cautions: tuple[CautionNote, ...],
    times: bool,
    m: Measures,
) -> LeafLine:
    """One step. `notes` go after its own; `times`: the hour is written down too, as it is in mixing."""
    said, boxes = list(wording.notes(step, m)), wording.boxes(step, m)
    rows: tuple[WeighRow, ...] = ()
    moved = letter = ""
    if step.verb in BRINGS_IN:
        felt = [goes for goes in step.goes if is_by_feel(goes)]
        rows = tuple(_row(goes.name, adds.added(goes) if isinstance(adds, Bowl) else adds.get(goes.key))
                     for goes in step.goes if goes not in felt)  # fmt: skip
        if isinstance(adds, Bowl):
            letter = next((adds.letters[goes.key] for goes in step.goes if goes.key in adds.letters), "")
            said = [adds.jug(goes) for goes in felt] + said
        if felt:
            moved = f"{', '.join(goes.name for goes in felt)} {m.words['say.by_feel']}"
            boxes = (Box(m.words["box.went_in"], m.weight_unit()), *boxes)
    elif step.goes and isinstance(adds, Bowl):
        moved = amount_moved(step, adds, m)
    clause = clause_of(step, m, moved, letter)._replace(adds=rows)
    return LeafLine((clause,), (*said, *notes), boxes if times else boxes[:-1], (), figures, cautions)


def _row(name: str, row: WeighRow | None) -> WeighRow:
    return WeighRow(name, "", "") if row is None else row


def join_lines(steps: Iterable[tuple[Step, LeafLine]], bench: bool) -> tuple[LeafLine, ...]:
    """The lines of one way. On the bench whatever may be joined is; in mixing, what goes in with the mix that works it in."""
    lines: list[LeafLine] = []
    before: Step | None = None
    for step, line in steps:
        if before is None or line.cautions:
            lines.append(line)
        elif _is_open(before, lines[-1]) and (
            _works_in(before, step) or (bench and _may_follow(step, line, lines[-1]))
        ):
            lines[-1] = _with(lines[-1], line)
        else:
            lines.append(line)
        before = step
    return tuple(lines)


def _works_in(before: Step, step: Step) -> bool:
    """Whether a step works in what the step before has added."""
    return before.verb in BRINGS_IN and step.verb in SETS_WARMTH


def _with(line: LeafLine, more: LeafLine) -> LeafLine:
    """What follows goes on in small letters; its boxes and its notes end the line."""
    clauses = (clause._replace(doing=clause.doing[:1].lower() + clause.doing[1:]) for clause in more.clauses)
    return line._replace(
        clauses=(*line.clauses, *clauses),
        notes=(*line.notes, *more.notes),
        boxes=more.boxes or line.boxes,
        figures=line.figures + more.figures,
    )


def _fits(line: LeafLine) -> bool:
    return len(line.text) < LETTERS and len(line.figures) <= AT_MOST


def _is_open(last: Step, line: LeafLine) -> bool:
    """Whether more may follow in the line: it ends with hands at work, without a reading, a look or a note."""
    return not line.notes and not has_reading(last) and not last.until and last.who is not Who.WAITING


def _may_follow(step: Step, line: LeafLine, last: LeafLine) -> bool:
    longest = max((end for end in step.time or () if end is not None), default=Fraction(0))
    is_long = step.who is Who.WAITING and longest > SHORT
    apart = line.notes or step.folds or has_reading(step) or step.until or is_long or step.verb in BRINGS_IN
    return not apart and _fits(_with(last, line))
