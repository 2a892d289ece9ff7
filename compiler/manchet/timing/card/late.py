"""What one line of the card says of lateness: worked out for the lines that are asked about, and for no other."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.syntax.vocabulary import DONE_BY_LOOK
from manchet.timing.card.card import course_of, minute
from manchet.timing.card.values import CardRow, Change, Late
from manchet.timing.jobs.lateness import LateDay, TimeGiven

ASKED = (15, 30, 45)
"""Minutes late that the card answers for."""


def most_caught_up(work: Work, row: CardRow) -> Late | None:
    """The most minutes of lateness after which all is ready on time, with nothing baked or boiled for longer or shorter; None
    where no lateness can be caught up."""
    for minutes in reversed(ASKED):
        if row.at is not None and not minute(_day(work).ready(row.at, Fraction(minutes * 60))):
            late = late_of(work, row, minutes)
            if not any(change.step.verb in DONE_BY_LOOK for change in (*late.shorter, *late.over)):
                return late
    return None


def late_of(work: Work, row: CardRow, minutes: int) -> Late:
    """What becomes of the day if the job of a line begins so late."""
    assert row.at is not None, "a fold is late in its wait, and nothing moves"
    found = _day(work).lateness(row.at, Fraction(minutes * 60))
    jobs = course_of(work).jobs

    def changes(given: Iterable[TimeGiven]) -> tuple[Change, ...]:
        return tuple(
            Change("" if jobs[j].is_dough else jobs[j].stage.name or jobs[j].stage.word, jobs[j].step, minute(seconds))
            for j, seconds in given
            if minute(seconds)
        )

    return Late(
        minutes=minutes,
        shorter=changes(found.shorter),
        longer=changes(found.longer),
        over=changes(found.over),
        bake=minute(found.bake),
        ready=minute(found.ready),
    )


@once
def _day(work: Work) -> LateDay:
    course = course_of(work)
    return LateDay(course.jobs, course.starts)
