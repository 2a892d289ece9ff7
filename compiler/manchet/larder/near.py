"""Names that lie close to one another: what an unknown one may have meant, and which of two may be a slip."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING, NamedTuple

from manchet.diagnostics.suggest import nearest
from manchet.larder.names import key

if TYPE_CHECKING:
    from manchet.larder.book import Larder

SAME_SIZE = Fraction(9, 10)
"""Two amounts are of one size when the smaller is more than this part of the larger. Our rule."""


class Use(NamedTuple):
    """A name as a formula weighs it; `amount` in whatever the formula counts in, None where it only names it."""

    name: str
    amount: Fraction | None


def nearest_names(name: str, candidates: Sequence[str]) -> tuple[str, ...]:
    """At most three: the nearest by spelling, then those that hold all its words (or it theirs), nearest in length."""
    wanted = set(key(name).split())
    if not wanted:
        return ()
    found: dict[str, None] = {}
    best = nearest(name, candidates)
    if best is not None:
        found[best] = None
    holding = []
    for candidate in candidates:
        words = set(key(candidate).split())
        if words and (wanted <= words or words <= wanted):
            holding.append(candidate)
    holding.sort(key=lambda candidate: (abs(len(candidate) - len(name)), candidate))
    found |= dict.fromkeys(holding)
    return tuple(found)[:3]


def one_slip_apart(one: str, other: str) -> bool:
    """Whether the names differ by one letter put in, left out, changed, or changed places with its neighbour."""
    one, other = key(one), key(other)
    if one == other or abs(len(one) - len(other)) > 1:
        return False
    if len(one) > len(other):
        one, other = other, one
    at = 0
    while at < len(one) and one[at] == other[at]:
        at += 1
    if len(one) < len(other):
        return one[at:] == other[at + 1 :]
    rest, rest_of_other = one[at:], other[at:]
    swapped = (
        len(rest) > 1 and rest[0] == rest_of_other[1] and rest[1] == rest_of_other[0] and rest[2:] == rest_of_other[2:]
    )
    return swapped or rest[1:] == rest_of_other[1:]


def likely_slips(uses: Sequence[Use], larder: Larder) -> tuple[tuple[str, str], ...]:
    """Pairs of names of one formula of which one is likely a slip for the other.

    Silent if both are in the larder (salt and malt), if they differ only in digits (T55 and T65), or if both are
    weighed with amounts of their own size.
    """
    found = []
    for number, one in enumerate(uses):
        for other in uses[number + 1 :]:
            if not one_slip_apart(one.name, other.name) or _differ_in_digits(one.name, other.name):
                continue
            if larder.find(one.name) is not None and larder.find(other.name) is not None:
                continue
            if _of_their_own_size(one.amount, other.amount):
                continue
            found.append((one.name, other.name))
    return tuple(found)


def _differ_in_digits(one: str, other: str) -> bool:
    def letters(name: str) -> str:
        return "".join(sign for sign in key(name) if not sign.isdigit())

    return letters(one) == letters(other)


def _of_their_own_size(one: Fraction | None, other: Fraction | None) -> bool:
    if not one or not other:
        return False
    return min(one, other) <= SAME_SIZE * max(one, other)
