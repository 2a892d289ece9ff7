"""What can be done about a clash, and what finds one."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from manchet.day.posting.net import Tie
from manchet.records import NamedTuple


class TurnTaken(NamedTuple):
    """One step in the order of an oven: a load goes in next, or beside the last, or at the mouth; or the oven is lit anew."""

    oven: int
    load: int = -1
    """-1: a fire is lit."""
    beside: bool = False
    at_the_mouth: bool = False
    fire: int = -1


class Choice(NamedTuple):
    """One way out of a clash: the ties that it adds."""

    ties: tuple[Tie, ...]
    turn: TurnTaken | None = None


Starts = Sequence[int]
"""Of each job, when it begins; the knot at minute 0 may follow."""


class SoFar(NamedTuple):
    """How things stand between two choices."""

    latest: Starts
    """All jobs at their latest: this is what may clash."""
    earliest: Starts
    taken: Sequence[Choice]

    def turns(self, oven: int) -> list[TurnTaken]:
        return [choice.turn for choice in self.taken if choice.turn and choice.turn.oven == oven]


Finder = Callable[[SoFar], tuple[Choice, ...] | None]
"""None where nothing clashes, else every way out of the first clash, counted from the end of the day."""


class Rule(NamedTuple):
    """One thing of the day that jobs are in each other's way at."""

    jobs: tuple[int, ...]
    """What it finds hangs on nothing but the latest beginnings of these,"""
    ways_out: Finder
    hangs_on_choices: bool = False
    """unless this says that the choices made so far matter too."""
    leaves_out: bool = False
    """It gives the likeliest ways out, not all of them."""
