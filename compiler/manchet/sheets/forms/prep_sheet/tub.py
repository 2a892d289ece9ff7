"""What the scale shows when a bowl is full, and where that goes: the check, the part kept, and the way on in one line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.tubs import given_back
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.records import NamedTuple
from manchet.sheets.forms.prep_sheet.view import Handed, Tub
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.bowl import Bowl


class _Taken(NamedTuple):
    """What another stage takes of this one, in grams as it is read there."""

    user: Table
    each: Fraction
    """For one of its bowls."""
    whole: Fraction
    """For all bowls that one making fills."""
    step: Fraction


def tub_of(bowl: Bowl) -> Tub | None:
    """None where a single line says it all, and nothing is handed on."""
    table, work, m = bowl.table, bowl.work, bowl.m
    taken = tuple(_taken(table, work, m))
    goes = tuple(_handed_on(one, table, work, m) for one in taken)
    holds = bowl.holds()
    if holds is None and not goes:
        return None
    weight = "" if holds is None else str(holds)
    made = table.making.stage
    letters = tuple(dict.fromkeys(sorted(bowl.letters.values())))
    changes = letters or made.left or made.kept or made.returned or made.lost or made.topped_up
    if len(taken) == 1 and not changes and _is_one_figure(table, taken[0]):
        weight = goes[0].weight  # all of it goes, and all is in: one figure, as it is read where it goes in
    return Tub(bowl.vessel, weight, letters, tuple(_back(bowl)), goes)


def _is_one_figure(table: Table, taken: _Taken) -> bool:
    """Whether what is in the tub and what is taken of it are apart by rounding alone: half of what the coarsest scale reads."""
    step = max((taken.step, *(line.reading.step for line in table.lines)))
    return abs(taken.whole - table.total) * 2 <= step


def _back(bowl: Bowl) -> Sequence[Handed]:
    """What is kept, and what goes back to the pot in this stage."""
    batch, m = bowl.table.making.stage, bowl.m
    moved = (*bowl.table.kept, *(given_back(bowl.table, bowl.tables) if _returns(batch.stage.steps) else ()))
    return [Handed(m.mass(grams), name) for name, grams in moved if grams and name]


def _returns(steps: Sequence[Step]) -> bool:
    return any(step.verb == "return" for step in steps)


def _taken(table: Table, work: Work, m: Measures) -> Iterator[_Taken]:
    """By whom, in working order: the very figures that are weighed there."""
    batch = table.making.stage
    for user in weighings(work, m.system).value:
        lines = [line for line in user.lines if line.weighed.portion.stage == batch.stage.key]
        if not lines or user.making.stage is batch:
            continue
        each = sum((line.reading.grams for line in lines), Fraction(0))
        whole = each * user.making.times if user.making.times > table.making.times else each
        yield _Taken(user, each, whole, max(line.reading.step for line in lines))


def _handed_on(taken: _Taken, table: Table, work: Work, m: Measures) -> Handed:
    """Where it goes, and the part of it for each bowl."""
    bowl, making = Bowl(taken.user, work, m), taken.user.making
    each = str(bowl.weight(taken.each, taken.step)) if making.times > table.making.times else ""
    return Handed(str(bowl.weight(taken.whole, taken.step)), making.stage.stage.name, each)
