"""Asking whether a day can be planned, question after question, until the time is up."""

from __future__ import annotations

from collections.abc import Callable

from manchet.day.checking import check
from manchet.day.clashes.sums import cannot_be
from manchet.day.clashes.values import Ask, Reply
from manchet.day.model import Day, Timetable
from manchet.day.posting import NotPlanned, plan_by_hand

FOR_A_SET = 5
"""Seconds after which a smallest set is looked for no longer."""
FOR_ALL = 8
"""Seconds after which nothing more is asked."""


class TimeIsUp(Exception):
    """Nothing more is asked; what was found so far stands."""


class Inquiry:
    """Answers of whoever plans, and whether all that were No are proven."""

    def __init__(self, ask: Ask, elapsed: Callable[[], int]):
        """`elapsed`: seconds since the asking began, by the caller's clock."""
        self._ask, self._elapsed = ask, elapsed
        self.is_certain = True

    def is_over(self, seconds: int = FOR_ALL) -> bool:
        return self._elapsed() >= seconds

    def plan(self, day: Day) -> Timetable | None:
        """Of a day in which nothing may be late. Whoever plans is asked only where sums don't say No already, and a plan that
        the checker refuses is none."""
        if self.is_over():
            raise TimeIsUp
        if cannot_be(day):
            return None
        reply = self._ask(day)
        holds = reply.timetable is not None and not check(day, reply.timetable)
        if not holds and (reply.timetable is not None or not reply.is_certain):
            self.is_certain = False
        return reply.timetable if holds else None


def ask_by_hand(day: Day) -> Reply:
    """Without a solver: that no plan is found proves only sometimes that there is none."""
    found = plan_by_hand(day)
    if isinstance(found, NotPlanned):
        return Reply(None, found.is_impossible)
    return Reply(found.timetable, is_certain=True)


def ask_the_solver(day: Day) -> Reply:
    """That there is none is proven, but where the solver had to stop. Needs OR-Tools."""
    from manchet.day.solving.search import Limits, feasible_by_solver

    answer = feasible_by_solver(day, Limits(first=1, seconds=2))
    return Reply(
        answer.planned.timetable if answer.planned else None, answer.planned is not None or answer.is_impossible
    )


def least(low: int, high: int, is_enough: Callable[[int], bool]) -> int:
    """The least number from `low` to `high` that is enough; `high` is."""
    while low < high:
        middle = (low + high) // 2
        if is_enough(middle):
            high = middle
        else:
            low = middle + 1
    return high
