"""How long a run is: continuous checks take the long one, a developer's machine a short one. No test is left out of either.

`CI=true python -m pytest -n 2` is the long one anywhere.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence
from typing import TypeVar

from hypothesis import settings

IS_LONG = bool(os.environ.get("CI"))


def at_length(long: int, short: int) -> int:
    """How many examples, characters, lines or seconds of it."""
    return long if IS_LONG else short


T = TypeVar("T")
U = TypeVar("U")


def turn_of(one: T, among: Iterable[T], of: Sequence[U]) -> list[U]:
    """Of what is tried in several ways, what is tried in this one: each thing once, the ways in turn."""
    ways = list(among)
    return list(of[ways.index(one) :: len(ways)])


EXAMPLES = settings(deadline=None, max_examples=at_length(150, 25), derandomize=IS_LONG, print_blob=IS_LONG)
"""For every property that says nothing else: no deadline on a shared machine; in the long run the same examples every time."""

MANY_EXAMPLES = settings(EXAMPLES, max_examples=at_length(1000, 60))
"""For what reads a line."""

FEW_EXAMPLES = settings(EXAMPLES, max_examples=at_length(60, 8))
"""For what reads a bakery each time, or is tried on every row of a table."""
