"""What the bread comes to: said only where no line of it is the cause that says as much."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.totals import Totals
from manchet.comparison.values import Change, ExchangedFor, ShareChange, StageComesOrGoes, StageShare, TotalChange

HALF_A_POINT = Fraction(1, 200)
"""Fat, sugar and water in all that move less than this are no news beside the line that moved them. Our own rule, as the next is."""
A_TWENTIETH = Fraction(1, 2000)
"""The same of salt, which is weighed and tasted in tenths of a per cent."""


def total_changes(
    before: Totals, after: Totals, told: Sequence[Change], classes: frozenset[str]
) -> Iterator[TotalChange]:
    """`told`: the changes of materials so far; `classes`: of the ingredients that they are about."""
    by_an_ingredient = any(isinstance(one, ShareChange | ExchangedFor) for one in told)
    least = HALF_A_POINT if by_an_ingredient else Fraction(0)
    salt = A_TWENTIETH if by_an_ingredient else Fraction(0)
    if "water" not in classes and _apart(before.water_in_all, after.water_in_all, least):
        yield TotalChange("water in all", before.water_in_all, after.water_in_all)
    if "salt" not in classes and _apart(before.salt, after.salt, salt):
        yield TotalChange("salt in all", before.salt, after.salt)
    if _apart(before.sugar, after.sugar, least):
        yield TotalChange("sugar", before.sugar, after.sugar)
    if _apart(before.fat, after.fat, least):
        yield TotalChange("fat", before.fat, after.fat)


def _apart(before: Fraction, after: Fraction, least: Fraction) -> bool:
    return before != after and abs(before - after) >= least


def with_prefermented(before: Totals, after: Totals, changes: Sequence[Change]) -> tuple[Change, ...]:
    """The same, with the prefermented flour in brackets behind the stage that is its cause, or as a line where no stage, or more
    than one, is."""
    was, now = before.prefermented, after.prefermented
    if was == now:
        return tuple(changes)
    causes = [one for one in changes if isinstance(one, StageShare | StageComesOrGoes) and one.is_leaven]
    if len(causes) == 1 and isinstance(causes[0], StageShare):
        said = causes[0]._replace(prefermented=(was, now))
        return tuple(said if one is causes[0] else one for one in changes)
    return (*changes, TotalChange("prefermented flour", was, now))
