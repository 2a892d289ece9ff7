"""When each dough of a planned day is divided, and what leaves with whom."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.said import Finish
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import DIVIDES


class Dividing(NamedTuple):
    """A job that divides a dough: one of its mixes, or all of it."""

    job: int
    minute: int
    """When its dividing begins, in minutes of the day."""


def dividings(plan: DayPlan) -> tuple[Dividing, ...]:
    """By the clock."""
    found = []
    works = works_of(plan)
    for job, moment in enumerate(plan.of.moments):
        before = Fraction(0)
        if moment is None or works[moment.bread].formula.preparation:
            continue
        for part in moment.parts:
            if part.step is not None and part.step.verb in DIVIDES:
                found.append(Dividing(job, plan.begins(job) + int(before // 60)))
            before += part.seconds
    return tuple(sorted(found, key=lambda one: (one.minute, one.job)))


class PackedFor(NamedTuple):
    """So many of one sort of a bread, of which each customer gets some."""

    bread: str
    noun: str
    number: Fraction
    each: tuple[tuple[str, Fraction], ...]
    """(customer, how many)."""
    spare: Fraction
    by: int
    """When it is wanted, in minutes of the day."""
    begins: int
    """When the first of it is wanted: of a dish that is served for some hours another time."""


def pieces_to_pack(plan: DayPlan) -> tuple[PackedFor, ...]:
    """Each sort of each bread, in the order of the plan."""
    found = []
    for want in plan.said.wants:
        for number, noun in want.pieces:
            if not number:
                continue
            each: dict[str, Fraction] = {}
            for order in want.orders:
                for some, of in order.pieces:
                    if same_noun(of, noun):
                        each[order.customer] = each.get(order.customer, Fraction(0)) + some
            spare = sum((some for some, of in want.spare if same_noun(of, noun)), Fraction(0))
            by = plan.of.clock.minute(want.end.by)
            first = want.end.not_before if want.end.how is Finish.SERVED else None
            begins = by if first is None else plan.of.clock.minute(first)
            found.append(PackedFor(want.name, noun, number, tuple(each.items()), spare, by, begins))
    return tuple(found)


def customers(plan: DayPlan) -> tuple[tuple[str, int], ...]:
    """Each customer with the minute at which theirs leaves or is to be there, the first of what they get: those of each
    departure together, as the plan names them."""
    due: dict[str, int] = {}
    for want in plan.said.wants:
        for order in want.orders:
            at = plan.of.clock.minute(order.end.by)
            due[order.customer] = min(at, due.get(order.customer, at))
    named = [name for departure in plan.said.departures for name in departure.customers]
    return tuple((name, due[name]) for name in dict.fromkeys((*named, *due)) if name in due)
