"""Whoever plans a day may be wrong: a plan that breaks a rule is never passed on, and that it was made is told."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from day.days import MORNING, Draft

from manchet.day import finding, posting
from manchet.day.again.fixing import Again, day_again
from manchet.day.again.news import LateBy, News
from manchet.day.again.planning import plan_again
from manchet.day.breaks import breaks_in_the_middle
from manchet.day.checking import check, check_planned
from manchet.day.finding import find_plan, find_plan_soon
from manchet.day.model import Day, Planned, Shift, Timetable
from manchet.day.posting import NotPlanned, plan_by_hand
from manchet.day.solving import search
from manchet.day.solving.search import Answer

Breaks = Callable[[Planned], Planned]
MADE = plan_by_hand(MORNING.day)


def too_early(planned: Planned) -> Planned:
    """Its first job begins before the day does."""
    starts = (MORNING.day.begins - 1, *planned.timetable.starts[1:])
    return planned._replace(timetable=planned.timetable._replace(starts=starts))


def better_than_it_is(planned: Planned) -> Planned:
    """Its minutes are sound, and it says of itself what isn't so."""
    return planned._replace(goals=tuple(goal._replace(value=goal.value - 1) for goal in planned.goals))


def in_its_stead(monkeypatch: pytest.MonkeyPatch, *, by_hand: object = None, solver: Answer | None = None) -> None:
    if by_hand is not None:
        monkeypatch.setattr(posting, "plan_by_hand", lambda day: by_hand)
    if solver is not None:
        monkeypatch.setattr(search, "planned_by_solver", lambda day, known: solver)
        monkeypatch.setattr(search, "feasible_by_solver", lambda day, limits: solver)


@pytest.mark.parametrize("breaks", [too_early, better_than_it_is])
def test_a_broken_plan_made_by_hand_is_left_out(breaks: Breaks, monkeypatch: pytest.MonkeyPatch) -> None:
    assert isinstance(MADE, Planned)
    in_its_stead(monkeypatch, by_hand=breaks(MADE))
    without = find_plan(MORNING.day, with_solver=False)
    assert without.planned is None and without.refused
    found = find_plan(MORNING.day)
    assert found.planned is not None and check_planned(MORNING.day, found.planned) == ()
    assert found.planned.engine == "cp-sat"
    assert found.refused == without.refused


@pytest.mark.parametrize("breaks", [too_early, better_than_it_is])
def test_a_broken_plan_of_the_solver_leaves_the_one_by_hand(breaks: Breaks, monkeypatch: pytest.MonkeyPatch) -> None:
    assert isinstance(MADE, Planned)
    in_its_stead(monkeypatch, solver=Answer(breaks(MADE), is_impossible=False))
    found = find_plan(MORNING.day)
    parted = MADE._replace(timetable=breaks_in_the_middle(MORNING.day, MADE.timetable))
    assert found.planned == parted and found.refused


def test_a_broken_plan_that_should_be_on_time_is_none_to_begin_with(monkeypatch: pytest.MonkeyPatch) -> None:
    assert isinstance(MADE, Planned)
    in_its_stead(
        monkeypatch, by_hand=NotPlanned((), is_impossible=False), solver=Answer(too_early(MADE), is_impossible=False)
    )
    found = find_plan(MORNING.day)
    assert found.planned is None and found.refused


def late_morning() -> Again:
    return day_again(MORNING.day, MORNING.plan, News(430, (), (LateBy(10, load=0),)))


def nobody(_: Day) -> Timetable | None:
    return None


def test_planned_again_a_broken_plan_of_the_solver_leaves_what_was_kept() -> None:
    again = late_morning()
    kept = plan_again(again, nobody).planned
    assert kept is not None
    found = plan_again(again, nobody, lambda told, known: too_early(kept))
    assert found.planned == kept
    assert found.refused and found.refused == check_planned(again.day, too_early(kept))


def test_planned_again_a_broken_plan_made_anew_is_no_plan() -> None:
    """Nothing can be kept: a job is eleven hours late."""
    again = day_again(MORNING.day, MORNING.plan, News(100, (), (LateBy(700, job=0),)))
    assert check(again.day, MORNING.plan)
    assert plan_again(again, lambda day: MORNING.plan).planned is None


def test_nobody_looks_for_what_sums_rule_out(monkeypatch: pytest.MonkeyPatch) -> None:
    """A day of one minute, which no plan fits; and a large one that can only be late."""

    def looked_for(day: Day) -> Planned:
        raise AssertionError("looked for")

    monkeypatch.setattr(posting, "plan_by_hand", looked_for)
    assert find_plan(MORNING.day._replace(finishes=MORNING.day.begins + 1)) == (None, ())
    monkeypatch.setattr(finding, "MANY_JOBS", len(MORNING.day.jobs))
    ends = tuple(end._replace(due=MORNING.day.begins + 1) for end in MORNING.day.ends)
    assert find_plan_soon(MORNING.day._replace(ends=ends)) == (None, ())
    with pytest.raises(AssertionError, match="looked for"):
        find_plan_soon(MORNING.day)


@pytest.mark.parametrize("with_solver", [False, True])
def test_a_break_parts_the_work_of_its_shift(with_solver: bool) -> None:
    """In the middle of it, or as near as what comes out of the oven and the hands leave it."""
    draft = Draft(0, 900)
    draft.shifts.append(Shift("Ines", "Ines", 1, 0, 900))
    first, last = draft.job("rye/feed", 10, 300, 300), draft.job("tin/feed", 10, 690, 690)
    rest = draft.job("Ines/break", 30, shift="Ines", is_break=True)
    starts = find_plan(draft.day(), with_solver).planned.timetable.starts  # type: ignore[union-attr]
    assert (starts[first], starts[rest], starts[last]) == (300, 485, 690)
    draft.job("rye/fold", 20, 490, 490)
    starts = find_plan(draft.day(), with_solver).planned.timetable.starts  # type: ignore[union-attr]
    assert starts[rest] == 460
