"""The order in which the clauses of a step are written: what, how, how long, at what heat, where, to what, and until when.

Clauses of different sorts say the same in any order. Those of one sort are a sequence: `at 260 C floor 240 C air`.
"""

from __future__ import annotations

from collections.abc import Iterable

from manchet.syntax import clauses as c
from manchet.syntax.clauses import Clause

ORDER = (
    "as", "with", "how", "manner", "time", "who", "at", "falling", "within", "where", "to", "by fire", "humidity", "loses", "steam", "vent", "lid", "turn",
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
    c.To: "to",
    c.ByFire: "by fire",
    c.Humidity: "humidity",
    c.Loses: "loses",
    c.Steam: "steam",
    c.Vent: "vent",
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


def place_of(clause: Clause) -> int:
    """Where a clause stands among others: by this they are sorted."""
    return _PLACES[sort_of(clause)]


def in_order(clauses: Iterable[Clause]) -> tuple[Clause, ...]:
    """The clauses as they are written; those of one sort stay in their order."""
    return tuple(sorted(clauses, key=place_of))
