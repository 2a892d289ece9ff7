"""The order in which the clauses of a step are written: what, how, how long, at what heat, where, to what, and until when.

Clauses of different sorts say the same in any order, and so do steam and vent, which have the clock. Others of one sort are a
sequence: `at 260 C floor 240 C air`.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.quantities.units import UNITS
from manchet.syntax import clauses as c
from manchet.syntax.clauses import Clause

ORDER = (
    "as", "with", "how", "manner", "time", "who", "at", "falling", "within", "where", "to", "by fire", "humidity", "loses", "takes up", "steam and vent", "lid", "turn",
    "at a time", "may wait", "optional", "if late", "why", "note", "picture", "until",
)  # fmt: skip

AFTER_A_COMMA = frozenset(ORDER[ORDER.index("by fire") : ORDER.index("if late")])
"""Sorts that stand after a comma: what happens beside the step, and what may."""

_SORTS: dict[type, str] = {
    c.As: "as",
    c.AppliedClause: "with",
    c.Time: "time",
    c.Turns: "time",
    c.At: "at",
    c.Ramp: "falling",
    c.Within: "within",
    c.Where: "where",
    c.IntoSlices: "where",
    c.ServeWithin: "time",
    c.To: "to",
    c.ByFire: "by fire",
    c.Humidity: "humidity",
    c.Loses: "loses",
    c.TakesUp: "takes up",
    c.Steam: "steam and vent",
    c.Vent: "steam and vent",
    c.Lid: "lid",
    c.TurnAfter: "turn",
    c.AtATime: "at a time",
    c.MayWait: "may wait",
}
_PLACES = {sort: at for at, sort in enumerate(ORDER)}


def sort_of(clause: Clause) -> str:
    """Which of `ORDER` a clause is."""
    if isinstance(clause, c.Prose):
        return "how" if clause.what in ("how", "do") else clause.what
    if isinstance(clause, c.Manner):
        return {"hands-on": "who", "waiting": "who", "optional": "optional"}.get(clause.word, "manner")
    return _SORTS[type(clause)]


def place_of(clause: Clause) -> tuple[int, Fraction, int]:
    """Where a clause stands among others: by this they are sorted. Steam and vent stand as the clock has them; at one moment
    the vent is shut before steam goes in, and is opened after it."""
    place = _PLACES[sort_of(clause)]
    if not isinstance(clause, c.Steam | c.Vent):
        return place, AT_ONCE, 0
    after = AT_ONCE if clause.after is None else _seconds(clause.after)
    return place, after, 1 if isinstance(clause, c.Steam) else 2 if clause.open else 0


AT_ONCE = Fraction(0)


def _seconds(amount: c.Amount) -> Fraction:
    return (amount.low or amount.high or AT_ONCE) * UNITS[amount.unit].factor


def in_order(clauses: Iterable[Clause]) -> tuple[Clause, ...]:
    """The clauses as they are written; those of one sort stay in their order."""
    return tuple(sorted(clauses, key=place_of))
