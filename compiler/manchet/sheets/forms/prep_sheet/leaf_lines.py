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
from manchet.sheets.parts.joining import LETTERS, SHORT_REST, run_on
from manchet.sheets.parts.steps import step_goods
from manchet.sheets.parts.views import CautionNote, Illustration, WeighRow
from manchet.sheets.parts.wording import has_reading
from manchet.syntax.vocabulary import BRINGS_IN, SETS_WARMTH

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
    rounds: str = "",
) -> LeafLine:
    """One step. `notes` go after its own; `times`: the hour is written down too, as it is in mixing. `rounds`: in how many
    it is done, where that is known."""
    goods = step_goods(step, adds, m)
    letters = adds.letters if isinstance(adds, Bowl) and step.verb in BRINGS_IN else {}
    letter = next((letters[goes.key] for goes in step.goes if goes.key in letters), "")
    clause = clause_of(step, m, goods.moved, letter)._replace(adds=goods.rows)
    if rounds:
        clause = clause._replace(rest=f"{clause.rest} ({rounds})")
    boxes = (*goods.boxes, *wording.boxes(step, m))
    said = (*goods.notes, *wording.notes(step, m), *notes)
    return LeafLine((clause,), said, boxes if times else boxes[:-1], (), figures, cautions)


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
    clauses = (clause._replace(doing=run_on(clause.doing)) for clause in more.clauses)
    return line._replace(
        limits=(*line.limits, *more.limits),
        clauses=(*line.clauses, *clauses),
        notes=(*line.notes, *more.notes),
        boxes=more.boxes or line.boxes,
        figures=line.figures + more.figures,
    )


def _fits(line: LeafLine) -> bool:
    return len(line.text) < LETTERS and len(line.figures) <= AT_MOST


def _is_open(last: Step, line: LeafLine) -> bool:
    """Whether more may follow in the line: it ends with hands at work, without a reading, a look or a note."""
    return (
        not line.notes and not line.limits and not has_reading(last) and not last.until and last.who is not Who.WAITING
    )


def _may_follow(step: Step, line: LeafLine, last: LeafLine) -> bool:
    longest = max((end for end in step.time or () if end is not None), default=Fraction(0))
    is_long = step.who is Who.WAITING and longest > SHORT_REST
    apart = line.notes or step.folds or has_reading(step) or step.until or is_long or step.verb in BRINGS_IN
    return not apart and _fits(_with(last, line))
