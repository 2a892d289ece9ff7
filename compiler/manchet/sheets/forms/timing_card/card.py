"""The timing card of one formula: from clock times and minutes to text, job by job."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from fractions import Fraction
from itertools import groupby

from manchet.batch.work import Work
from manchet.formula.model import Range
from manchet.formula.nouns import noun_for
from manchet.quantities.printing import round_to
from manchet.sheets.forms.timing_card.before import before_lines
from manchet.sheets.forms.timing_card.clauses import (
    capital,
    clause_of,
    handling_clause,
    is_said,
    minutes_of,
    note_of,
    work_of,
)
from manchet.sheets.forms.timing_card.day_strip import day_strip
from manchet.sheets.forms.timing_card.goes_in import GoesIn
from manchet.sheets.forms.timing_card.late_lines import clash_lines, late_lines
from manchet.sheets.forms.timing_card.view import (
    BulkTime,
    CardDay,
    CardJob,
    CardLine,
    CardLoad,
    CardWait,
    Clause,
    LoadList,
    MixTick,
    TimingCard,
)
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import HOUR, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.clock_lines import clock_lines
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import IN_OVEN
from manchet.timing.card.card import card_of
from manchet.timing.card.late_spans import late_spans
from manchet.timing.card.moments import EVENTS, OUT, LoadTable, LoadTurn, Moment, MomentLine, moments_of
from manchet.timing.card.values import CameOutAt, CardRow
from manchet.timing.when import When


def timing_card(work: Work, when: When, issue: Issue, house: House) -> TimingCard:
    """The view of the timing card. Pure: the day, the version and the house's habits all come in."""
    words = words_of(house.words)
    m = Measures(house, words)
    card = card_of(work, when, m.system)
    moments = moments_of(card.rows)
    days = tuple(_days(moments, GoesIn(work, m), m))
    mix = words.say("head.mixes_short", str(card.mixes)) if card.mixes > 1 else ""
    date = issue.date or m.day(card.ready)
    return TimingCard(
        title=card.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(card.name, mix, issue._replace(date=date)),
        makes=tuple(_makes(work, m)),
        start=words.say("card.start", _moment(card.start, m)),
        out="" if card.out_of_oven is None else words.say("card.out", _moment(card.out_of_oven, m)),
        ready="" if card.clashes else words.say("card.ready", _moment(card.ready, m)),
        strip=day_strip(card, m),
        days=days,
        late=late_lines(late_spans(work, moments), m),
        warmths=_bulk_times(card.came_out_at, m),
        before=before_lines(card.before_you_go, work.kitchen, m),
        clashes=clash_lines(card.clashes, m),
        notes=(words["card.later_loads"],) if any(_stands_longer(one) for one in moments) else (),
        estimates=words["day.estimates"] if any(_estimates(days)) else "",
        swapped=(*swap_lines(card.swapped, m), *wait_lines(card.moved, m)),
        clock_changes=clock_lines(card.clock_changes, m),
        contains=allergen_line(work, m),
    )


def _estimates(days: Sequence[CardDay]) -> Iterator[str]:
    for job in (job for day in days for job in day.jobs):
        for part in (job,) if isinstance(job, LoadList) else job.lines:
            yield from (clause.about for clause in part.clauses)
            if isinstance(part, CardLine) and part.wait is not None:
                yield part.wait.about


def _moment(at: datetime, m: Measures) -> str:
    return m.words.say("card.moment", _short_day(at, m), m.clock(at))


def _short_day(at: datetime, m: Measures) -> str:
    return m.words.several("days.short")[at.weekday()]


def _bulk_times(warmths: Sequence[CameOutAt], m: Measures) -> tuple[BulkTime, ...]:
    """One beside the other in one way: all in hours where one of them is said in hours. () where all say the same."""
    times = [Range(_fives(x.low), None if x.high is None else _fives(x.high)) for x in warmths]
    in_hours = any(max(end for end in time if end is not None) >= 2 * HOUR for time in times)
    say = m.hours if in_hours else m.time
    found = tuple(BulkTime(m.degrees(single(x.celsius)), say(time)) for x, time in zip(warmths, times, strict=True))
    return found if len({one.bulk for one in found}) > 1 else ()


def _fives(seconds: Fraction) -> Fraction:
    """An estimate is no more exact than five minutes."""
    return round_to(seconds / 300, 0) * 300


def _makes(work: Work, m: Measures) -> Iterator[str]:
    for piece in work.batch.pieces:
        number, noun = m.plain(single(piece.number), 1), noun_for(piece.number, piece.noun)
        yield m.words.say("card.makes", number, noun, m.each(piece.grams))
    if not work.batch.pieces:
        yield m.mass(work.batch.dough)


def _stands_longer(moment: Moment | LoadTable) -> bool:
    """A later load goes in when what it holds has stood longer than the file lets it."""
    if isinstance(moment, Moment):
        return False
    firsts = (turn.rows[0] for turn in moment.loads[1:])
    return any(row.stands_until is not None and row.stands_until <= row.start for row in firsts)


# ---- its jobs -------------------------------------------------------------------------------------


def _days(moments: Sequence[Moment | LoadTable], weights: GoesIn, m: Measures) -> Iterator[CardDay]:
    for _, day in groupby(moments, key=lambda one: one.start.date()):
        of_day = list(day)
        jobs = [_loads(one, weights, m) if isinstance(one, LoadTable) else _job(one, weights, m) for one in of_day]
        yield CardDay(m.day(of_day[0].start), tuple(jobs))


def _elapsed(minutes: int) -> str:
    return f"+{minutes // 60}:{minutes % 60:02}"


def _job(moment: Moment, weights: GoesIn, m: Measures) -> CardJob:
    alone = len(moment.lines) == 1
    return CardJob(
        clock=m.clock(moment.start),
        elapsed=_elapsed(moment.elapsed),
        lines=tuple(_line(line, alone, weights, m) for line in moment.lines),
        start_by="" if moment.sharp or moment.start_by is None or moment.mixes else m.clock(moment.start_by),
        sharp=moment.sharp,
        mixes=tuple(MixTick(one.mix, m.words.say("card.mix", str(one.mix)), m.clock(one.at)) for one in moment.mixes),
    )


def _line(line: MomentLine, alone: bool, weights: GoesIn, m: Measures) -> CardLine:
    """The dough's name stands only where another line stands beside it."""
    wait = line.wait
    whose = line.stage or line.branch
    is_fire = line.rows[0].job != "step" and not whose and line.rows[0].place != ""
    whose = whose or ("" if alone or is_fire else m.words["late.dough"])
    events = [row for row in line.rows if wait is not None and row.job in EVENTS and row.start >= wait.start]
    rows = [row for row in line.rows if row not in events]
    clauses = [clause for row in rows for clause in _clauses(row, row is wait, weights, m)]
    if not whose:
        clauses = _capitalised(clauses)
    waits = None if wait is None else _wait(wait, events, m)
    if waits is not None and not whose and not clauses:
        waits = waits._replace(do=capital(waits.do))
    into = weights.into_the_bowl(line.stage) if line.first and not line.branch else ()
    return CardLine(capital(whose), line.stage, line.branch, tuple(clauses), waits, into)


def _clauses(row: CardRow, is_wait: bool, weights: GoesIn, m: Measures) -> Iterator[Clause]:
    for one in row.handling if row.job == "step" else ():
        if one.does == "load" or (one.does == "weigh" and is_said(one.seconds)):
            yield handling_clause(one, m)
    if not is_wait:
        yield clause_of(row, weights.of_step(row), m)


def _capitalised(clauses: list[Clause]) -> list[Clause]:
    return [clauses[0]._replace(do=capital(clauses[0].do)), *clauses[1:]] if clauses else clauses


def _wait(row: CardRow, events: Sequence[CardRow], m: Measures) -> CardWait:
    """`events`: steam and damper, where they come soon after."""
    said = clause_of(row, (), m)
    later = [f"{clause_of(one, (), m).do} {m.words.say('card.event_at', m.clock(one.start))}" for one in events]
    return CardWait(
        do=said.do,
        how=", ".join(filter(None, (said.how, *later))),
        work="cold" if work_of(row) == "cold" else "left alone",
        minutes=minutes_of(row),
        begins=m.clock(row.begins),
        ends=m.clock(row.end),
        ends_day=_short_day(row.end, m) if row.end.date() != row.start.date() else "",
        note=note_of(row, m),
        about=said.about,
    )


# ---- loads ----------------------------------------------------------------------------------------


def _loads(table: LoadTable, weights: GoesIn, m: Measures) -> LoadList:
    first = table.loads[0].rows
    steps = [row for row in first if row.job == "step"]
    baked = next(row for row in steps if row.step is not None and row.step.verb in IN_OVEN)
    return LoadList(
        clock=m.clock(table.start),
        elapsed=_elapsed(table.elapsed),
        whose=capital(table.branch),
        oven=m.words.say("card.loads", capital(baked.place or m.words["oven"]), str(len(table.loads))),
        clauses=tuple(clause for row in steps for clause in _clauses(row, False, weights, m)),
        between=tuple(_head(row, m) for row in _between(table.loads[0])),
        loads=tuple(_load(turn, m) for turn in table.loads),
    )


def _between(turn: LoadTurn) -> list[CardRow]:
    """What is seen to while it is in the oven."""
    return [row for row in turn.rows if row.start > turn.into and row.job != OUT]


def _head(row: CardRow, m: Measures) -> str:
    """`damper` where it opens then, else what is done."""
    if row.job == "step" and row.step is not None and row.step.opens_vent:
        return m.words["vent"]
    return (
        m.words["card.next_heat"]
        if row.job == "step"
        else m.words.known("short", row.job) or m.words["card." + row.job]
    )


def _load(turn: LoadTurn, m: Measures) -> CardLoad:
    pieces = turn.rows[0].pieces
    return CardLoad(
        number=str(turn.number),
        pieces=m.plain(single(pieces), 1) if pieces else "",
        into=m.clock(turn.into),
        between=tuple(m.clock(row.start) for row in _between(turn)),
        out=m.clock(turn.out),
        of_mixes=tuple(one.mix for one in turn.rows[0].of_mixes),
    )
