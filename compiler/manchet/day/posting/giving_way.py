"""What gives way where nothing else works: first a wait beyond its range, as far as it may, then an end that is late."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.day.posting.net import Conflict
from manchet.day.posting.outset import Leave, Outset
from manchet.records import NamedTuple


class Give(NamedTuple):
    """One thing that would undo a conflict; the first of several, in their order, costs least."""

    is_late: bool
    minutes: int
    number: int
    """Of the end or the wait."""


def least_give(outset: Outset, leave: Leave, conflicts: Sequence[Conflict]) -> Give | None:
    """The cheapest thing that undoes one of the conflicts, alone or as a step; None where nothing may give way."""
    return min(gives(outset, leave, conflicts), default=None)


def gives(outset: Outset, leave: Leave, conflicts: Sequence[Conflict]) -> list[Give]:
    """All that undo one of the conflicts, each once."""
    return sorted({give for conflict in conflicts for give in _gives(outset, leave, conflict)})


def _gives(outset: Outset, leave: Leave, conflict: Conflict) -> Iterator[Give]:
    day = outset.day
    for tie in conflict.ties:
        if tie.why.sort == "most":
            left = day.waits[tie.why.number].may - leave.may[tie.why.number]
            if left > 0:
                yield Give(False, min(left, conflict.minutes), tie.why.number)
    for knot, why in conflict.bounds[1:]:
        if why.sort == "end":
            end = day.ends[why.number]
            due = end.due + leave.late[why.number] - end.after - day.jobs[knot].minutes
            wanted = due + conflict.minutes
            spans = [max(first, wanted) for first, last in outset.staffed[knot] if wanted <= last]
            if spans:
                yield Give(True, spans[0] - due, why.number)


def with_give(leave: Leave, give: Give) -> Leave:
    """The leave with what was given added to it."""
    minutes = list(leave.late if give.is_late else leave.may)
    minutes[give.number] += give.minutes
    return leave._replace(late=tuple(minutes)) if give.is_late else leave._replace(may=tuple(minutes))
