"""The page of the evening before: from the first shift, the fires and the vessels to text."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.day.pages.late import delays_the_fire
from manchet.day.pages.leaving import equipment, is_evening
from manchet.day.pot import to_step
from manchet.sheets.forms.day_tonight.view import TonightPage
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_jobs import JobWords
from manchet.sheets.parts.day_leaving import before_you_go, fire_laid
from manchet.sheets.parts.day_rows import has_estimates, late_breads, no_delay, work_days

NOON, DUSK = 12, 17
"""Hours of the clock: a shift that begins by noon is not tonight's, nor is a first job before dusk. Our own rule."""


def tonight_page(plan: DayPlan, issue: Issue, house: House) -> TonightPage:
    """The view of the evening before. Where the first shift leads straight into the day, it has no work, only what is to be
    there by then."""
    words = words_of(house.words)
    m = Measures(house, words)
    wall, first = WallTime(plan, m), min(range(len(plan.day.shifts)), key=lambda at: plan.day.shifts[at].begins)
    evening, said = is_evening(plan, first), plan.day.shifts[first]
    days = work_days(plan, first, m) if evening else ()
    if evening:
        hours = words.say("tonight.hours", wall.weekday(said.begins), wall.clock(said.begins), wall.clock(said.ends))
        head = words.say("tonight.with" if _hour(plan, said.begins) >= NOON else "tonight.day_before", said.name)
    else:
        first_job = min(plan.timetable.starts)
        hours = words.say("tonight.from", wall.moment(first_job))
        head = words["tonight.alone" if _hour(plan, first_job) >= DUSK else "tonight.before"]
    go = [
        *(before_you_go(plan, first, m) if evening else _first_job(plan, wall)),
        *_fires(plan, said.ends if evening else plan.day.begins, m),
        *_there(plan, m),
        *_pots(plan, m),
    ]
    return TonightPage(
        title=plan.said.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(plan.said.name, "", issue),
        head=head,
        hours=hours,
        days=days,
        late=late_breads(plan, first, m) if evening else (),
        fire="" if not evening or delays_the_fire(plan, first) else no_delay(plan, m),
        before_you_go=tuple(dict.fromkeys(go)),
        equipment=(
            *(words.say("tonight.counted", one.name, str(one.wanted), str(one.there)) for one in equipment(plan)),
            *((words.say("tonight.uncounted", ", ".join(plan.of.unlimited)),) if plan.of.unlimited else ()),
        ),
        estimates=words["day.estimates"] if has_estimates(days, m) else "",
    )


def _hour(plan: DayPlan, minute: int) -> int:
    return plan.of.clock.at(minute).hour


def _first_job(plan: DayPlan, wall: WallTime) -> Iterator[str]:
    job = min((at for at, job in enumerate(plan.day.jobs) if not job.is_break), key=plan.begins)
    shift = plan.timetable.shifts[job]
    name = plan.day.shifts[shift].name if shift >= 0 else ""
    brief = JobWords(plan, works_of(plan), wall.m).brief(job)
    yield wall.m.words.say("go.next", name, wall.moment(plan.begins(job)), brief)


def _fires(plan: DayPlan, left_at: int, m: Measures) -> Iterator[str]:
    """Those still to be lit when whoever works tonight goes."""
    return (fire_laid(plan, fire, m) for fire in plan.day.fires if plan.begins(fire.light) >= left_at)


def _pots(plan: DayPlan, m: Measures) -> Iterator[str]:
    """What the pots want until the next plan, by the evening: `Thu evening, ripe rye starter: add 40 g flour and 40 g water`."""
    for culture, fed in sorted(plan.pots, key=lambda one: (one.feeding.on, one.culture)):
        parts = [m.words.say("tonight.amount", m.mass(to_step(grams)), name) for name, grams in fed.parts]
        said = "tonight.feed" if fed.because == "use" else "tonight.feed_half"
        day = m.words.several("days.short")[fed.on.weekday()]
        what = m.words["day.and"].join(parts) or m.mass(to_step(fed.wanted - fed.there))
        yield m.words.say(said, day, culture, what)


def _there(plan: DayPlan, m: Measures) -> Iterator[str]:
    """What the plan counts on as already made."""
    for one in plan.said.already:
        if one.grams is None:
            yield m.words.say("tonight.already_enough", one.name)
        else:
            yield m.words.say("tonight.already", one.name, m.mass(one.grams))
