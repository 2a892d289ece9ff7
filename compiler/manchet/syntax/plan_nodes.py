"""What one line of a plan or of an order says, before any name in it is looked up and any day is known."""

from __future__ import annotations

from manchet.records import NamedTuple
from manchet.syntax.clauses import Amount, Word


class OnClock(NamedTuple):
    """`Sat 06:00`, `06:00`, `2026-11-28 06:00`, `Fri 15:00-18:00`, `Sun 01:30 second`.

    `day` is a weekday or a date, `which` "first" or "second": of an hour that the clock shows twice.
    """

    day: Word | None
    clock: Word
    which: Word | None = None


class OnDay(NamedTuple):
    """`on 2026-11-28`"""

    date: Word


class EveryDay(NamedTuple):
    """`every Tue, Thu, Sat`"""

    days: tuple[Word, ...]


class UntilDay(NamedTuple):
    """`until 2026-12-24`"""

    date: Word


class Departs(NamedTuple):
    """`van leaves Sat 06:00 with Quay cafe, the stall`; `van` and `name` are what leaves."""

    word: Word
    name: Word | None
    at: OnClock
    customers: tuple[Word, ...]


class MadeItem(NamedTuple):
    """One of what is already made: `egg wash 800 g made Thu 18:00`."""

    name: Word
    amount: Amount | None = None
    at: OnClock | None = None


class AlreadyThere(NamedTuple):
    """`already made ripe rye starter 4 kg, egg wash`"""

    items: tuple[MadeItem, ...]


class ShiftNode(NamedTuple):
    """`hands Tom Fri 16:00 to Sat 02:30, break 30 min`, `hands 2 Fri 22:00 to Sat 04:00`.

    `end` is None where the clock time is a range of its own: `hands Tom Fri 16:00-22:00`.
    """

    name: Word | None
    number: Amount | None
    start: OnClock
    end: OnClock | None
    rest: Amount | None = None


class FiresNode(NamedTuple):
    """`oven mother 1 fire, lit Fri 15:00-18:00`; without a number there is one."""

    thing: Word
    name: Word | None
    number: Amount | None
    lit: OnClock | None = None
    lit_until: OnClock | None = None


class TakenNode(NamedTuple):
    """`mixer spiral taken Fri 15:00 to Fri 17:00`"""

    thing: Word
    name: Word | None
    start: OnClock
    end: OnClock | None


class AppointmentNode(NamedTuple):
    """`divide Tern loaf Fri 12:00`"""

    verb: Word
    name: Word
    at: OnClock


class TakesOrders(NamedTuple):
    """`orders`"""


class CountOf(NamedTuple):
    """`12 loaves`; a preparation is wanted by weight, then there is no noun."""

    amount: Amount
    noun: Word | None = None


class Customer(NamedTuple):
    """`for Quay cafe`: the counts behind it are this customer's."""

    name: Word


class SpareNode(NamedTuple):
    """`spare`: the counts behind it are made in addition."""

    word: Word


class Ending(NamedTuple):
    """`ready Sat 07:00`, `served Sat 12:00-14:00`, `packed Fri 22:00 to Sat 02:00`; `word` is one of the three."""

    word: Word
    at: OnClock
    until: OnClock | None = None


class OldAt(NamedTuple):
    """`24-48 h old`"""

    time: Amount


WantPart = CountOf | Customer | SpareNode | Ending | OldAt


class WantNode(NamedTuple):
    """`Ebb rye 14 loaves, ready Sat 06:00, 8-48 h old`"""

    name: Word
    parts: tuple[WantPart, ...] = ()


class WantLine(NamedTuple):
    """What stands under a bread: `for Quay cafe 4 loaves`, `spare 2 loaves`, `ready Sat 07:00`."""

    parts: tuple[WantPart, ...]


PlanNode = (
    OnDay | EveryDay | UntilDay | Departs | AlreadyThere | ShiftNode | FiresNode | TakenNode | AppointmentNode | TakesOrders
    | WantNode | WantLine
)  # fmt: skip
