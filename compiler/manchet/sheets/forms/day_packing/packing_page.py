"""Divide and pack: from doughs, pieces and orders to text."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.dividing import Dividing, PackedFor, customers, dividings, pieces_to_pack
from manchet.formula.model import Step, Who
from manchet.formula.nouns import noun_beside, noun_for
from manchet.sheets.forms.day_packing.view import DoughDivided, PackCell, PackedCustomer, PackingPage, PackRow
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts import wording
from manchet.sheets.parts.bowl import LARGE
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.joining import run_on
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import DIVIDES, IN_OVEN
from manchet.timing.jobs.chains import pieces_of_mix

TENS = Fraction(10)
"""Grams to which a whole dough is said."""


def packing_page(plan: DayPlan, issue: Issue, house: House) -> PackingPage:
    """The view of divide and pack."""
    words = words_of(house.words)
    m = Measures(house, words)
    wall, rows, who = WallTime(plan, m), pieces_to_pack(plan), customers(plan)
    works = works_of(plan)
    has_spare = any(row.spare for row in rows)
    return PackingPage(
        title=plan.said.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(plan.said.name, "", issue),
        divide=_with_days([_divide(plan, one, works, m) for one in dividings(plan)]),
        customers=tuple(PackedCustomer(name, wall.moment(at)) for name, at in who),
        has_spare=has_spare,
        pack=tuple(_pack(row, [name for name, _ in who], wall) for row in rows),
        departures=tuple(_departures(plan, wall)),
    )


def _divide(plan: DayPlan, one: Dividing, works: dict[str, Work], m: Measures) -> DoughDivided:
    wall, moment = WallTime(plan, m), plan.of.moments[one.job]
    assert moment is not None
    work = works[moment.bread]
    mixes = work.mixes.number
    pieces = []
    for piece in work.batch.pieces:
        number = pieces_of_mix(work, piece.noun, moment.mix) if moment.mix else piece.number
        if number:
            count = m.words.say("packing.piece", m.plain(single(number), 1), str(m.piece(piece.grams)))
            pieces.append(m.words.say("packing.with_noun", count, noun_for(number, piece.noun)))
    return DoughDivided(
        clock=wall.clock(one.minute),
        day=wall.weekday(one.minute),
        bread=moment.bread,
        mix=m.words.say("packing.mix", str(moment.mix), str(mixes)) if moment.mix and mixes > 1 else "",
        dough=str(m.weight(work.batch.divided / (mixes if moment.mix else 1), TENS, in_kg=_is_large(works))),
        pieces=tuple(pieces),
        to=_to(work, m),
    )


def _with_days(rows: list[DoughDivided]) -> tuple[DoughDivided, ...]:
    """The weekday stands where it is another than in the row before; nowhere on the page of one day."""
    if len({row.day for row in rows}) <= 1:
        return tuple(row._replace(day="") for row in rows)
    before = ["", *(row.day for row in rows)]
    return tuple(row._replace(day="" if row.day == last else row.day) for row, last in zip(rows, before, strict=False))


def _is_large(works: dict[str, Work]) -> bool:
    """All of a page in kilograms where one dough is too much to be said in grams."""
    return any(work.batch.divided >= LARGE for work in works.values())


def _to(work: Work, m: Measures) -> str:
    """What is done with the pieces, and what they lie in, sort by sort; up to the oven."""
    ways = [
        way.steps for way in work.formula.branches if any(p.number and p.noun == way.noun for p in work.batch.pieces)
    ]
    if not ways:
        steps = work.dough.stage.steps
        at = next((n for n, step in enumerate(steps) if step.verb in DIVIDES), len(steps))
        ways = [steps[at + 1 :]]
    return "; ".join(", ".join(_handled(steps, m)) for steps in ways)


def _handled(steps: tuple[Step, ...], m: Measures) -> Iterator[str]:
    for step in steps:
        if step.verb in IN_OVEN:
            return
        if step.who is Who.HANDS and (step.shape or step.where is not None):
            said = [run_on(wording.opening(step, m)), *wording.manner(step, m), *wording.place(step, m)]
            yield " ".join(part for part in said if part)


def _pack(row: PackedFor, who: list[str], wall: WallTime) -> PackRow:
    each, m = dict(row.each), wall.m
    return PackRow(
        bread=row.bread,
        noun=noun_beside(row.bread, noun_for(row.number, row.noun)),
        cells=tuple(PackCell(_number(each.get(name, Fraction(0)), m)) for name in who),
        spare=_number(row.spare, m),
        in_all=_number(row.number, m),
        by=wall.moments(row.begins, row.by),
    )


def _number(number: Fraction, m: Measures) -> str:
    return m.plain(single(number), 1) if number else ""


def _departures(plan: DayPlan, wall: WallTime) -> Iterator[str]:
    for one in plan.said.departures:
        clock = wall.moment(plan.of.clock.minute(one.at))
        if one.customers:
            *first, last = one.customers
            names = wall.m.words["day.and"].join(filter(None, (", ".join(first), last)))
            yield wall.m.words.say("packing.departure", one.name, clock, names)
        else:
            yield wall.m.words.say("packing.departure_alone", one.name, clock)
