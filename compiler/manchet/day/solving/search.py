"""The search: goal after goal, each held at what was reached before the next is looked at.

One worker, a fixed seed and limits counted in the solver's own work, not in seconds: the same day gives the same plan wherever
the search gets that far. The clock is only the last stop.
"""

from __future__ import annotations

from ortools.sat.python import cp_model

from manchet.day.goals import MOST_ROOM
from manchet.day.model import Day, Goal, Planned, Timetable
from manchet.day.solving.aims import Aim, Aims, aims_of
from manchet.day.solving.whole import Whole, chosen, timetable_of, whole_of
from manchet.records import NamedTuple

ENGINE = "cp-sat"
SEED = 1
FOUND = (cp_model.OPTIMAL, cp_model.FEASIBLE)
FIRST = ("late", "beyond", "may wait")
SUMS = ("presence", "age", "early")
"""Goals to which every job adds a little: their bounds come from the relaxed, linear model, which is slow to look at."""


class Limits(NamedTuple):
    """How long is searched. Work is counted as the solver counts it; a unit takes some seconds."""

    first: int = 20
    """Work for being on time, and again for waits within their ranges."""
    then: int = 2
    """Work for each goal after these."""
    seconds: int = 120
    """By the clock, for all goals together."""


USUAL = Limits()


class Answer(NamedTuple):
    """Whether a day can be planned, and how well."""

    planned: Planned | None
    is_impossible: bool
    """Proven: there is no plan. False and no plan: none was found within the limits."""


def planned_by_solver(day: Day, known: Timetable | None = None, limits: Limits = USUAL, aims: Aims = aims_of) -> Answer:
    """The best plan that is found. `known` holds to every rule, and is where the search begins: what it finds is never worse,
    goal for goal in their order."""
    whole = whole_of(day, aims)
    if whole is None:
        return Answer(None, is_impossible=True)
    search = _Search(whole, limits)
    if known is not None:
        search.begin_with(known)
    for aim in whole.aims:
        if search.is_impossible:
            break
        search.pursue(aim)
    return search.answer()


def feasible_by_solver(day: Day, limits: Limits = USUAL) -> Answer:
    """Some plan, however good."""
    whole = whole_of(day)
    if whole is None:
        return Answer(None, is_impossible=True)
    search = _Search(whole, limits)
    search.look(limits.first)
    return search.answer()


class _Search:
    """A model, the best plan so far, and what has been gone through."""

    def __init__(self, whole: Whole, limits: Limits):
        self.whole, self.limits = whole, limits
        self.model = whole.frame.model
        self.timetable: Timetable | None = None
        self.goals: list[Goal] = []
        self.seconds: float = limits.seconds
        self.is_impossible = False

    def begin_with(self, known: Timetable) -> None:
        """Has the solver work out what a plan makes of every variable of the model, so that its hint is complete."""
        self.timetable = known
        self._hint(chosen(self.whole, known))
        self.look(self.limits.first, fixed=True)
        if self.is_impossible:
            self.timetable, self.is_impossible = None, False
            self.model.proto.clear_solution_hint()

    def pursue(self, aim: Aim) -> None:
        """Makes one goal as good as it will go, and holds it there."""
        bound = aim.least
        if self._reached(aim) != bound and self.seconds > 0:
            self.model.minimize(aim.value)
            work = self.limits.first if aim.name in FIRST else self.limits.then
            bound = max(bound, self.look(work, relaxed=aim.name in SUMS))
        reached = self._reached(aim)
        if reached is not None:
            self.model.add(aim.value <= reached)
            self.goals.append(_goal(aim, reached, bound))

    def _reached(self, aim: Aim) -> int | None:
        return None if self.timetable is None else aim.reached(self.timetable)

    def look(self, work: int, *, fixed: bool = False, relaxed: bool = False) -> int:
        """Searches once, and keeps what is found as the hint for the next time. Gives what no plan does better than."""
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        solver.parameters.random_seed = SEED
        solver.parameters.max_deterministic_time = work
        solver.parameters.max_time_in_seconds = self.seconds
        solver.parameters.fix_variables_to_their_hinted_value = fixed
        solver.parameters.linearization_level = 2 if relaxed else 1
        status = solver.solve(self.model)
        self.seconds -= solver.wall_time
        if status in FOUND:
            self._keep(solver)
        self.is_impossible = status == cp_model.INFEASIBLE
        return round(solver.best_objective_bound)

    def _keep(self, solver: cp_model.CpSolver) -> None:
        """What was found is the hint for the next time, with every figure as small as the plan allows."""
        self.timetable = timetable_of(self.whole, solver)
        values = dict(enumerate(solver.response_proto.solution))
        for aim in self.whole.aims:
            values.update((figure.index, of(self.timetable)) for figure, of in aim.figures)
        self._hint(values)

    def _hint(self, values: dict[int, int]) -> None:
        self.model.proto.clear_solution_hint()
        self.model.proto.solution_hint.vars.extend(list(values))
        self.model.proto.solution_hint.values.extend(list(values.values()))

    def answer(self) -> Answer:
        if self.timetable is None:
            return Answer(None, self.is_impossible)
        planned = Planned(self.timetable, tuple(self.goals), ENGINE, is_finished=self.seconds > 0)
        return Answer(planned, is_impossible=False)


def _goal(aim: Aim, reached: int, bound: int) -> Goal:
    proven = reached == bound
    if aim.name == "room":
        return Goal(aim.name, MOST_ROOM - reached, MOST_ROOM - bound, proven)
    return Goal(aim.name, reached, bound, proven)
