"""A plan that was found, whoever found it, and what the checker says of it: nothing else is passed on."""

from __future__ import annotations

from manchet.day.checking import check_planned
from manchet.day.model import Day, Planned
from manchet.day.rules.refusal import Refusal
from manchet.records import NamedTuple


class FoundPlan(NamedTuple):
    """The best plan that was found and holds."""

    planned: Planned | None
    refused: tuple[Refusal, ...] = ()
    """What the checker found in a plan of ours, which was left out: a fault of Manchet's own."""

    def or_else(self, other: FoundPlan) -> FoundPlan:
        """The other one where this one is none; what was refused of either stays told."""
        return FoundPlan(self.planned or other.planned, (*other.refused, *self.refused))


def that_holds(day: Day, planned: Planned | None) -> FoundPlan:
    """The plan, if it breaks no rule of the day."""
    refused = () if planned is None else check_planned(day, planned)
    return FoundPlan(None if refused else planned, refused)
