"""What the scale shows when a bowl is full, and where that goes: the check, the part kept, and the way on in one line."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.tubs import given_back
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.sheets.forms.prep_sheet.view import Handed, Tub
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.bowl import Bowl


def tub_of(bowl: Bowl) -> Tub | None:
    """None where a single line says it all, and nothing is handed on."""
    table, work, m = bowl.table, bowl.work, bowl.m
    goes = tuple(_handed_on(table, work, m))
    holds = bowl.holds()
    if holds is None and not goes:
        return None
    weight = "" if holds is None else str(holds)
    made = table.making.stage
    letters = tuple(dict.fromkeys(sorted(bowl.letters.values())))
    if (
        len(goes) == 1
        and _is_one_figure(table, work, m)
        and not (letters or made.left or made.kept or made.returned or made.lost or made.topped_up)
    ):
        weight = goes[0].weight  # all of it goes, and all is in: one figure, as it is read where it goes in
    return Tub(bowl.vessel, weight, letters, tuple(_back(bowl)), goes)


def _is_one_figure(table: Table, work: Work, m: Measures) -> bool:
    """Whether what is in the tub and what is taken of it are apart by rounding alone: half of what the coarsest scale reads."""
    key, inside = table.making.stage.stage.key, sum((line.reading.grams for line in table.lines), Fraction(0))
    users = [user for user in weighings(work, m.system).value if user.making.stage is not table.making.stage]
    taken = [(user, line) for user in users for line in user.lines if line.weighed.portion.stage == key]
    goes = sum(
        (line.reading.grams * max(1, user.making.times // table.making.times) for user, line in taken), Fraction(0)
    )
    step = max(line.reading.step for line in (*table.lines, *(line for _, line in taken)))
    return abs(goes - inside) * 2 <= step


def _back(bowl: Bowl) -> Sequence[Handed]:
    """What is kept, and what goes back to the pot in this stage."""
    batch, m = bowl.table.making.stage, bowl.m
    moved = (*bowl.table.kept, *(given_back(bowl.table, bowl.tables) if _returns(batch.stage.steps) else ()))
    return [Handed(m.mass(grams), name) for name, grams in moved if grams and name]


def _returns(steps: Sequence[Step]) -> bool:
    return any(step.verb == "return" for step in steps)


def _handed_on(table: Table, work: Work, m: Measures) -> Sequence[Handed]:
    """Where what was made goes, and the part of it for each bowl: the very figures that are weighed there."""
    batch, times = table.making.stage, table.making.times
    found = []
    for user in weighings(work, m.system).value:
        lines = [line for line in user.lines if line.weighed.portion.stage == batch.stage.key]
        if not lines or user.making.stage is batch:
            continue
        bowl, name = Bowl(user, work, m), user.making.stage.stage.name
        each, step = sum((x.reading.grams for x in lines), Fraction(0)), max(x.reading.step for x in lines)
        several = user.making.times > times
        whole = each * user.making.times if several else each
        found.append(Handed(str(bowl.weight(whole, step)), name, str(bowl.weight(each, step)) if several else ""))
    return found
