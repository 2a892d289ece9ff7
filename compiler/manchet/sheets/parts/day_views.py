"""What the pages of a planned day show alike: rows of work by the clock, each figure already text."""

from __future__ import annotations

from manchet.records import NamedTuple
from manchet.sheets.parts.views import CautionNote


class WorkClause(NamedTuple):
    """One thing done: what, how, and what to look for."""

    do: str
    how: str = ""
    look: str = ""
    strong: bool = False
    """At the oven's door: in bold."""


class WorkLine(NamedTuple):
    """What is done to one bread within a row."""

    bread: str
    """Whose it is; of a fire its oven, "" of a break."""
    stage: str
    """`poolish`; "" for the dough."""
    clock: str
    """When it begins, where the row began sooner."""
    clauses: tuple[WorkClause, ...]
    then: str = ""
    """Where it goes from here, in bold: `to the cold`."""
    cautions: tuple[CautionNote, ...] = ()
    """Of what is done here."""


class WorkRow(NamedTuple):
    """One clock at which somebody begins, and does not stop until all of it is done."""

    clock: str
    lines: tuple[WorkLine, ...]
    start_by: str
    """The latest that moves nothing else; "" where there is none."""
    sharp: bool
    minutes: str
    """How long it takes; `~` before it where some of that is an estimate."""


class WorkDay(NamedTuple):
    """The rows of one date."""

    title: str
    rows: tuple[WorkRow, ...]


class LateJobs(NamedTuple):
    """From one clock to another: how late, and what gives."""

    clocks: str
    gives: str


class LateBread(NamedTuple):
    """How late a bread may be, and what gives."""

    bread: str
    jobs: tuple[LateJobs, ...]
