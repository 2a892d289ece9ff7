"""What a plan says: who wants what and by when, who is there, what is there already. Nothing of it is worked out.

Every moment is on the clock of the plan's kitchen and carries no offset; of one that this clock shows twice, `fold` is 1
for the second. Spans of time are seconds, weights grams; all figures are exact.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import Enum
from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.formula.ranges import Range
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple

Pieces = tuple[tuple[Fraction, str], ...]
"""How many of which noun: ((4, "plaits"), (30, "buns")). Each noun stands once."""


class Finish(Enum):
    """Three ends of a bread, each a state that it is in by then."""

    READY = "ready"
    """Fit to cut: the formula's last `cool` is over, its least."""
    PACKED = "packed"
    """Cold enough to pack, by the kitchen's `packs … after`."""
    SERVED = "served"
    """On the table."""


class SaidEnd(NamedTuple):
    """By when something is to be there, and in what state."""

    how: Finish
    by: datetime
    """The latest."""
    not_before: datetime | None = None
    """The beginning of a window (`ready Sat 05:00-06:00`)."""
    departure: str = ""
    """What leaves then: `van`. "" where the plan says the end itself."""
    place: Place | None = None


class CustomerOrder(NamedTuple):
    """What one customer gets of one bread."""

    customer: str
    pieces: Pieces
    grams: Fraction | None
    """Of a preparation, which is wanted by weight: then there are no pieces."""
    end: SaidEnd
    standing: bool
    """Out of an `order` block, not said in the plan."""
    place: Place


class Want(NamedTuple):
    """A bread or a preparation, and how much of it is made: that of all orders, and `spare`."""

    name: str
    """Of the formula, as its file writes it; a variant's full name."""
    pieces: Pieces
    grams: Fraction | None
    end: SaidEnd
    """The earliest of its ends: the bread's own, else that of the first departure that takes some of it."""
    orders: tuple[CustomerOrder, ...]
    spare: Pieces
    spare_grams: Fraction | None
    age: Range | None
    """Seconds from out of the oven to its end: as the plan says, else as the formula's head does; None where neither."""
    place: Place


class Departure(NamedTuple):
    """Something leaves, with what its customers get."""

    name: str
    """`van`, `van north`."""
    at: datetime
    customers: tuple[str, ...]
    place: Place


class AlreadyMade(NamedTuple):
    """A stage, a preparation or a starter that is there."""

    name: str
    key: str
    """The name folded, as formulas have it."""
    grams: Fraction | None
    """None: enough."""
    made: datetime | None
    """When, where the plan says so."""
    place: Place


class SaidShift(NamedTuple):
    """Somebody is there."""

    name: str
    """"" for hands without a name."""
    hands: int
    start: datetime
    end: datetime
    rest: Fraction | None
    """Seconds of break in it."""
    place: Place


class Fires(NamedTuple):
    """How often an oven may be lit, and when."""

    oven: str
    """"" where the kitchen's only oven is meant and has no name."""
    number: int
    lit: tuple[datetime, datetime] | None
    """From and until when; one moment has both alike. None where it does not matter."""
    place: Place


class Away(NamedTuple):
    """A thing of the kitchen that somebody else has: lent, or in for repair."""

    word: str
    """`mixer`, `oven`, `tray` …"""
    name: str
    start: datetime
    end: datetime
    place: Place


class Appointment(NamedTuple):
    """A step that begins at a fixed time."""

    verb: str
    name: str
    """Of the formula."""
    at: datetime
    place: Place


class Plan(NamedTuple):
    """A day that is to be planned."""

    name: str
    place: Place
    kitchen: Kitchen
    """With what the plan's own file says instead of it."""
    date: date
    """Which day its weekdays are counted back from."""
    wants: tuple[Want, ...] = ()
    departures: tuple[Departure, ...] = ()
    already: tuple[AlreadyMade, ...] = ()
    shifts: tuple[SaidShift, ...] = ()
    fires: tuple[Fires, ...] = ()
    away: tuple[Away, ...] = ()
    appointments: tuple[Appointment, ...] = ()
    takes_orders: bool = False
    """The standing orders of its day are in `wants`."""
    every: tuple[int, ...] = ()
    """The weekdays of a pattern; Monday is 0."""
    like: str = ""
    """The pattern that it differs from."""
