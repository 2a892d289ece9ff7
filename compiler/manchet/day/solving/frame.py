"""What all topics of the model build on: the beginnings of the jobs, and a few words for saying things about them."""

from __future__ import annotations

from collections.abc import Sequence

from ortools.sat.python import cp_model
from ortools.sat.python.cp_model_helper import Literal

from manchet.day.model import Day
from manchet.day.windows import JobSpan
from manchet.records import NamedTuple


class Frame(NamedTuple):
    """The model of a day as far as it is built."""

    day: Day
    model: cp_model.CpModel
    spans: tuple[JobSpan, ...]
    """Between which minutes each job can begin, as far as is known without search."""
    starts: tuple[cp_model.IntVar, ...]
    true: cp_model.IntVar
    false: cp_model.IntVar

    def length(self, job: int) -> int:
        return self.day.jobs[job].minutes

    def boolean(self) -> Literal:
        return self.model.new_bool_var("")

    def apart(self, earlier: int, later: int) -> tuple[int, int]:
        """The least and the most minutes from the beginning of one job to that of another, by their spans alone."""
        return (
            self.spans[later].low - self.spans[earlier].high,
            self.spans[later].high - self.spans[earlier].low,
        )

    def follows(self, earlier: int, later: int, minutes: int) -> Literal:
        """A literal under which one job begins at least so many minutes after another: always true or never where the spans
        say so already."""
        least, most = self.apart(earlier, later)
        if least >= minutes:
            return self.true
        if most < minutes:
            return self.false
        found = self.boolean()
        self.lag(earlier, later, minutes, found)
        return found

    def lag(self, earlier: int, later: int, minutes: int, *when: Literal) -> None:
        """One job begins at least so many minutes after another, if all of some literals hold."""
        if self.apart(earlier, later)[0] < minutes:
            said = self.model.add(self.starts[later] - self.starts[earlier] >= minutes)
            if when:
                said.only_enforce_if(*when)

    def interval(self, job: int, literal: Literal | None = None, more: int = 0) -> cp_model.IntervalVar:
        """The minutes of a job, and some more behind it; only there if a literal holds."""
        size = self.length(job) + more
        if literal is None or literal is self.true:
            return self.model.new_fixed_size_interval_var(self.starts[job], size, "")
        return self.model.new_optional_fixed_size_interval_var(self.starts[job], size, literal, "")

    def fixed(self, begins: int, ends: int) -> cp_model.IntervalVar:
        """Minutes that are taken whatever is planned."""
        return self.model.new_fixed_size_interval_var(begins, ends - begins, "")

    def exactly_one(self, literals: Sequence[Literal]) -> None:
        self.model.add_exactly_one(literals)


def frame_of(day: Day, spans: tuple[JobSpan, ...]) -> Frame:
    """A model in which every job begins, and nothing more is said. All spans hold a minute."""
    model = cp_model.CpModel()
    starts = tuple(model.new_int_var(span.low, span.high, "") for span in spans)
    return Frame(day, model, spans, starts, model.new_constant(1), model.new_constant(0))
