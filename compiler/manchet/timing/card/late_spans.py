"""Running late: from when to when the same thing gives, in a few lines for the card's foot."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from manchet.batch.work import Work
from manchet.formula.model import Who
from manchet.records import NamedTuple
from manchet.timing.card.late import most_caught_up
from manchet.timing.card.moments import LoadTable, Moment
from manchet.timing.card.values import CardRow, Change

MOST = 5
"""Lines that are read at all when it is late. Our own rule."""


class CutWait(NamedTuple):
    """A wait, by its verb and its stage ("" for the dough)."""

    stage: str
    verb: str


class LateSpan(NamedTuple):
    """Whoever is late at a clock from `first` to `last`, up to `minutes`: what gives, and the bread is ready on time.

    0 minutes: nothing gives; all that follows is so much later.
    """

    first: datetime
    last: datetime
    minutes: int
    shorter: tuple[CutWait, ...]
    """Waits that are cut short, within their ranges."""
    over: tuple[str, ...]
    """Stages ("" for the dough) that have then stood longer than the file says: they are looked at first."""
    to_the_end: bool = False


def late_spans(work: Work, moments: Sequence[Moment | LoadTable]) -> tuple[LateSpan, ...]:
    """In order of time; neighbours that differ least are told together, with what holds for both, until they are few."""
    found: list[LateSpan] = []
    for moment in moments:
        span = _span(work, moment)
        if span is None:
            continue
        if found and _gives(found[-1]) == _gives(span):
            found[-1] = found[-1]._replace(last=span.last)
        else:
            found.append(span)
    while len(found) > MOST:
        at = min(range(len(found) - 1), key=lambda at: (_apart(found[at], found[at + 1]), -at))
        found[at : at + 2] = [_both(found[at], found[at + 1])]
    if found:
        found[-1] = found[-1]._replace(to_the_end=True)
    return tuple(found)


def _gives(span: LateSpan) -> tuple[object, ...]:
    return span.minutes, span.shorter, span.over


def _apart(one: LateSpan, other: LateSpan) -> tuple[bool, int]:
    """How much is lost by telling two together: that one of them gives anything at all, before what it is."""
    things = {*one.shorter} ^ {*other.shorter}
    looks = {*one.over} ^ {*other.over}
    return bool(one.minutes) != bool(other.minutes), abs(one.minutes - other.minutes) // 15 + len(things) + len(looks)


def _both(one: LateSpan, other: LateSpan) -> LateSpan:
    minutes = min(one.minutes, other.minutes)
    if not minutes:
        return LateSpan(one.first, other.last, 0, (), ())
    shorter = tuple(dict.fromkeys((*one.shorter, *other.shorter)))
    return LateSpan(one.first, other.last, minutes, shorter, tuple(dict.fromkeys((*one.over, *other.over))))


def _span(work: Work, moment: Moment | LoadTable) -> LateSpan | None:
    """None inside a wait: a fold that is late is late, and nothing moves."""
    row = _first_that_moves(moment)
    if row is None:
        return None
    most = most_caught_up(work, row)
    if most is None:
        return LateSpan(moment.start, moment.start, 0, (), ())
    return LateSpan(
        moment.start,
        moment.start,
        most.minutes,
        _things(most.shorter),
        tuple(thing.stage for thing in _things(most.over)),
    )


def _first_that_moves(moment: Moment | LoadTable) -> CardRow | None:
    rows = moment.loads[0].rows if isinstance(moment, LoadTable) else [line.rows[0] for line in moment.lines]
    timed = [row for row in rows if row.at is not None]
    return min(timed, key=lambda row: row.latest or row.start, default=None)


def _things(changes: Sequence[Change]) -> tuple[CutWait, ...]:
    """Only waits: nobody mixes faster because it is late."""
    waits = (change for change in changes if change.step.who is Who.WAITING)
    return tuple(dict.fromkeys(CutWait(change.stage, change.step.verb) for change in waits))
