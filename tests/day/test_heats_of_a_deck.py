"""A deck that is set from one heat to another: how long that takes, and what the floor is when the next load goes in."""

from __future__ import annotations

from fractions import Fraction

from day.days import Draft
from every import every
from works import first_work

from manchet.day.checking import check
from manchet.day.floors import floor_at, set_for
from manchet.day.jobs.making import work_of_day
from manchet.day.jobs.ovens import enters, leaves
from manchet.day.model import Day, DayOven, End, HeatSpan, Planned, Shift
from manchet.day.posting import plan_by_hand

BREAD = """
kitchen House
  oven deck
    heat        electric
formula Tin bread
  kind tin loaf
  makes 10 loaves at 900 g dough

  overall
    white flour           100%
    water                  62%
    salt                    2%
    instant yeast           0.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape long
    prove covered 60 min at 25 C
    bake 40 min at {heat} C
    cool 2 h
"""


def spans(heat: str) -> tuple[HeatSpan | None, HeatSpan | None]:
    """That of going in and that of coming out, of a bread whose file says this heat."""
    (load, *_) = work_of_day(first_work(BREAD.format(heat=heat))).loads
    return enters(load), leaves(load)


def two_loads(first: str, second: str, climbs: int = 2, sinks: int = 1) -> Day:
    draft = Draft(0, 600)
    draft.shifts.append(Shift("Tom", "Tom", 1, 0, 600))
    draft.ovens.append(DayOven("deck", climbs=Fraction(climbs), sinks=Fraction(sinks)))
    for name, heat, due in (("first", first, 300), ("second", second, 500)):
        into, out = spans(heat)
        _, take = draft.load(name, "deck", 40, enters=into, leaves=out)
        draft.ends.append(End(name, 8, "loaves", take, 0, due, oldest=60))
    draft.wait(draft.loads[0].take, draft.loads[1].put, 3, 600)
    return draft.day()


@every(
    [
        ("220", "180", 2, 1, 40),
        ("220", "180", 2, 5, 8),
        ("180", "220", 2, 1, 20),
        ("220", "225", 2, 1, 3),
        ("210-220", "180-190", 2, 1, 20),
        ("200", "190-210", 2, 1, 0),
    ],
    at_least=6,
)
def test_from_figure_to_figure_it_is_the_whole_way(
    first: str, second: str, climbs: int, sinks: int, least: int
) -> None:
    """40 °C down at 1 °C a minute are 40 minutes, and a minute sooner the checker refuses it."""
    day = two_loads(first, second, climbs, sinks)
    found = plan_by_hand(day)
    assert isinstance(found, Planned)
    out = found.timetable.starts[day.loads[0].take] + 3

    def with_second_at(minute: int) -> bool:
        starts = list(found.timetable.starts)
        starts[day.loads[1].put], starts[day.loads[1].take] = minute, minute + 40
        return all(one.rule != "deck" for one in check(day, found.timetable._replace(starts=tuple(starts))))

    assert with_second_at(out + least) and not with_second_at(out + least - 1)
    assert found.timetable.starts[day.loads[1].put] >= out + least


def test_the_floor_is_what_the_deck_has_come_to_and_not_what_it_is_set_to() -> None:
    day = two_loads("220", "180")
    found = plan_by_hand(day)
    assert isinstance(found, Planned)
    starts = list(found.timetable.starts)
    starts[day.loads[1].put] = starts[day.loads[0].take] + 3 + 25
    early = found.timetable._replace(starts=tuple(starts))
    assert (set_for(day, early, day.loads[1]), floor_at(day, early, day.loads[1])) == (180, 195)
    assert floor_at(day, found.timetable, day.loads[1]) == 180
