"""Looks over a plan of a day, minute by minute, whoever made it: every rule of the day holds, or it is said which does not.

It shares no code with whoever plans: it knows the day's values and nothing else, so that a mistake in planning is no mistake
here too. Nothing is printed that it refuses.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from manchet.day.model import Day, Planned, Timetable
from manchet.day.rules.floor import floor
from manchet.day.rules.hands import breaks, hands, shift
from manchet.day.rules.ovens import deck, fire, load, share
from manchet.day.rules.refusal import Refusal
from manchet.day.rules.room import mixer, place
from manchet.day.rules.times import end, wait, window
from manchet.day.rules.whole import whole

Rule = Callable[[Day, Timetable], Iterator[Refusal]]

RULES: tuple[Rule, ...] = (window, wait, shift, hands, breaks, mixer, place, load, deck, share, fire, floor, end)


def check(day: Day, timetable: Timetable) -> tuple[Refusal, ...]:
    """What a plan breaks; nothing where it holds. Being late, or waiting as long as a wait may, breaks nothing."""
    missing = tuple(whole(day, timetable))
    return missing or tuple(refusal for rule in RULES for refusal in rule(day, timetable))


def check_planned(day: Day, planned: Planned) -> tuple[Refusal, ...]:
    """The same of a plan with how good it is said to be: the minutes late and waited are counted again."""
    return check(day, planned.timetable) or tuple(_goals(day, planned))


def _goals(day: Day, planned: Planned) -> Iterator[Refusal]:
    starts = planned.timetable.starts
    counted = {
        "late": sum(max(starts[end.job] + day.jobs[end.job].minutes + end.after - end.due, 0) for end in day.ends),
        "may wait": sum(
            max(starts[wait.after] - starts[wait.before] - wait.most, 0) for wait in day.waits if wait.most is not None
        ),
    }
    for goal in planned.goals:
        if goal.name in counted and goal.value != counted[goal.name]:
            yield Refusal("goal", f"{goal.name} is said to be {goal.value} min, and is {counted[goal.name]}")
        if goal.proven and goal.bound != goal.value:
            yield Refusal("goal", f"{goal.name} is said to be proven at {goal.value}, with a bound of {goal.bound}")
