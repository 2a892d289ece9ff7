"""Where on its line a value stands: always in the same column of the file, so that a new long name moves no other line."""

from __future__ import annotations

from manchet.records import NamedTuple
from manchet.syntax.openings import OF_A_DAY, WEIGHS

AMOUNT, KITCHEN, LARDER, COMPOSITION, PLAN = 28, 17, 19, 21, 25
"""Columns of the file, the first is 1: the ones digit of an ingredient's amount; the value of a kitchen's and of a larder's line,
and of what is in 100 g, where `carbohydrate` is the longest word; and of a plan's line."""


class Column(NamedTuple):
    """Where the value of a line stands.

    `at` counts from the first character of its body, which is 0. `by_ones`: there stands the ones digit, and not the first.
    `apart`: so many spaces stand before it at least.
    """

    at: int
    by_ones: bool
    apart: int


def column_of(context: str, indent: int, per_100_g: bool) -> Column | None:
    """The column of a value on a line in a context, which stands so deep; `per_100_g`, under that line of a larder's entry."""
    if context == "composition" and per_100_g:
        return Column(COMPOSITION - 1 - indent, False, 2)
    if context in WEIGHS:
        return Column(AMOUNT - 1 - indent, True, 2)
    if context == "entry":
        return Column(LARDER - 1 - indent, False, 1)
    if context in ("kitchen", "thing"):
        return Column(KITCHEN - 1 - indent, False, 1)
    if context in OF_A_DAY:
        return Column(PLAN - 1 - indent, False, 1)
    return None


def in_column(before: str, value: str, column: Column | None) -> str:
    """The value put into its column behind what stands before it."""
    if column is None:
        return f"{before} {value}"
    digits = len(value) - len(value.lstrip("0123456789"))
    ones = max(digits - 1, 0) if column.by_ones else 0
    return before + " " * max(column.apart, column.at - ones - len(before)) + value
