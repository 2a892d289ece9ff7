"""The day chart: from jobs, waits and loads to one page."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import timedelta

from manchet.day.pages.day_plan import DayPlan
from manchet.sheets.drawings.day_chart import ChartLane, DayChart, day_chart
from manchet.sheets.drawings.pen import drawing
from manchet.sheets.drawings.wall_clock import WallClock
from manchet.sheets.forms.day_chart.lanes import Lanes
from manchet.sheets.forms.day_chart.prose import ages_said, how_sure, is_checked, least_to_spare, why_it_waits
from manchet.sheets.forms.day_chart.view import ChartPage
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.clock_lines import clock_lines
from manchet.sheets.parts.day_clock import WallTime, changes_within, minute_of
from manchet.sheets.parts.views import Illustration

ROOM = {"A4": (275.0, 142.0), "Letter": (257.0, 146.0)}
"""Millimetres of a landscape page for a chart, beside its head and the words under it."""
MOST = 14
"""Lanes of one chart; more are parted between several. Our own rule."""


def chart_page(plan: DayPlan, issue: Issue, house: House) -> ChartPage:
    """The view of the day chart."""
    words = words_of(house.words)
    m = Measures(house, words)
    wall = WallTime(plan, m)
    sure = [_sentence(how_sure(plan, m))]
    sure += [words["chart.checked"]] if is_checked(plan) else []
    sure += [] if plan.planned.is_finished else [words["chart.unfinished"]]
    return ChartPage(
        title=plan.said.name,
        language=words["language"],
        paper=house.paper,
        running=running_head(plan.said.name, "", issue),
        makes=tuple(_makes(plan, wall)),
        first=_first(plan, wall),
        chart=tuple(_charts(plan, wall)),
        waits=tuple(why_it_waits(plan, m)),
        sure=tuple(sure),
        spare=tuple(least_to_spare(plan, m)),
        oldest=ages_said(plan, m),
        clock_changes=clock_lines(changes_within(plan, plan.day.begins, plan.day.finishes), m),
    )


def _sentence(said: Iterator[str]) -> str:
    text = "; ".join(said)
    return f"{text[:1].upper()}{text[1:]}."


def _makes(plan: DayPlan, wall: WallTime) -> Iterator[str]:
    say = wall.m.words.say
    breads = {one.want.name for one in plan.of.breads if not one.work.formula.preparation}
    dishes = {one.want.name for one in plan.of.breads if one.work.formula.dish}
    for one, several, made in (("chart.bread", "chart.breads", breads), ("chart.dish", "chart.dishes", dishes)):
        pieces = str(sum(end.pieces for end in plan.day.ends if end.bread in made))
        if made:
            yield say(one, pieces) if len(made) == 1 else say(several, str(len(made)), pieces)
    for departure in plan.said.departures:
        yield say("chart.leaves", departure.name, wall.moment(plan.of.clock.minute(departure.at)))
    names = dict.fromkeys(shift.name for shift in plan.day.shifts)
    yield say("chart.there", wall.m.words["day.and"].join(names))


def _first(plan: DayPlan, wall: WallTime) -> str:
    say, day = wall.m.words.say, plan.day
    said = [say("chart.first", wall.moment(min(plan.timetable.starts)))]
    for fire in day.fires:
        lit = plan.begins(fire.light)
        if any(oven.name == fire.oven and oven.curve for oven in day.ovens):
            said.append(say("chart.lit", fire.oven, wall.moment(lit), wall.moment(lit + fire.heats)))
        else:
            said.append(say("chart.switched", fire.oven, wall.moment(lit)))
    if day.loads:
        said.append(say("chart.last_out", wall.moment(max(plan.begins(load.take) for load in day.loads))))
    return " · ".join(said)


def _charts(plan: DayPlan, wall: WallTime) -> Iterator[Illustration]:
    starts = plan.timetable.starts
    first, last = min(starts), max(plan.ends(at) for at in range(len(starts)))
    last = max([last, *(end.due for end in plan.day.ends), *(shift.ends for shift in plan.day.shifts)])
    first = min([first, *(shift.begins for shift in plan.day.shifts)])
    zero = first - (plan.of.clock.at(first).minute % 60)
    lanes = Lanes(plan, zero, wall.m)
    breads = lanes.breads()
    wide, high = ROOM[wall.m.house.paper]
    parts = [breads[at : at + MOST] for at in range(0, len(breads), MOST)]
    for number, some in enumerate(parts, 1):
        is_last = number == len(parts)
        chart = DayChart(
            tuple(some),
            tuple(lanes.ovens()) if is_last else (),
            tuple(lanes.rows()) if is_last else (),
            last - zero,
            _key(wall.m) if is_last else (),
        )
        room = high if is_last else high * 1.3
        art = day_chart(chart, _clock(plan, zero, last), tuple(_days(plan, zero, last, wall)), wide, room)
        made = drawing("day", _told(plan, some, first, last, wall), art)
        yield Illustration(made.title, made.svg, high=made.high)


def _key(m: Measures) -> tuple[tuple[str, str], ...]:
    inks = {"work": "work", "alone": "alone", "cold": "cold", "oven": "in_oven", "due": "due"}
    return tuple((ink, m.words["chart." + word]) for ink, word in inks.items())


def _clock(plan: DayPlan, zero: int, last: int) -> WallClock:
    """What the wall shows from the chart's first minute on."""
    begins = plan.of.clock.at(zero)
    jumps = tuple((minute_of(plan, change) - zero, change.minutes) for change in changes_within(plan, zero, last))
    return WallClock(begins.hour * 60 + begins.minute, jumps)


def _days(plan: DayPlan, zero: int, last: int, wall: WallTime) -> Iterator[tuple[int, str]]:
    """The midnights after the first minute."""
    shows = plan.of.clock.at(zero)
    midnight = shows.replace(hour=0, minute=0, second=0, microsecond=0)
    while (minute := plan.of.clock.minute((midnight := midnight + timedelta(days=1)).replace(tzinfo=None))) <= last:
        yield minute - zero, wall.m.words.several("days.short")[midnight.weekday()]


def _told(plan: DayPlan, lanes: Sequence[ChartLane], first: int, last: int, wall: WallTime) -> str:
    """The chart in words, for whoever cannot see it."""
    said = []
    for lane in lanes:
        begins = wall.moment(min(plan.begins(at) for at, job in enumerate(plan.day.jobs) if lane.title in job.breads))
        into = [wall.moment(plan.begins(load.put)) for load in plan.day.loads if load.bread == lane.title]
        due = [end.clock for end in lane.ends]
        if into and due:
            said.append(wall.m.words.say("chart.lane", lane.title, begins, ", ".join(into), ", ".join(due)))
        else:
            said.append(wall.m.words.say("chart.lane_bare", lane.title, begins))
    return wall.m.words.say("chart.picture", wall.moment(first), wall.moment(last), "; ".join(said))
