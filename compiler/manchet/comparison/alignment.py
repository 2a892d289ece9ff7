"""Two sequences put beside each other: which of the one is which of the other. The same pairs whichever is named first."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TypeVar

T = TypeVar("T")
Pairs = tuple[tuple[int, int], ...]
"""Places in the first sequence and in the second, both in ascending order."""


def pairs_in_order(before: Sequence[T], after: Sequence[T], weight: Callable[[T, T], int]) -> Pairs:
    """The pairs, in order on both sides, that weigh the most together. `weight` is 0 for two that are not the same thing, and has to be
    the same both ways round."""
    rows, columns = len(before), len(after)
    best = [[0] * (columns + 1) for _ in range(rows + 1)]
    for i in reversed(range(rows)):
        for j in reversed(range(columns)):
            pair = weight(before[i], after[j])
            kept = pair + best[i + 1][j + 1] if pair else 0
            best[i][j] = max(kept, best[i + 1][j], best[i][j + 1])
    found = []
    i = j = 0
    while i < rows and j < columns:
        pair = weight(before[i], after[j])
        if pair and best[i][j] == pair + best[i + 1][j + 1]:
            found.append((i, j))
            i, j = i + 1, j + 1
        elif best[i + 1][j] >= best[i][j + 1]:
            i += 1
        else:
            j += 1
    return tuple(found)


def pairs_either_way(
    before: Sequence[T], after: Sequence[T], weight: Callable[[T, T], int], name: Callable[[T], str]
) -> Pairs:
    """As `pairs_in_order`, with ties decided the same whichever sequence comes first: by the `name` of what is in them."""
    if [name(one) for one in after] < [name(one) for one in before]:
        return tuple((i, j) for j, i in pairs_in_order(after, before, weight))
    return pairs_in_order(before, after, weight)
