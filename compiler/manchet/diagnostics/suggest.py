"""How names are compared, and which name somebody may have meant."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Set


def fold(name: str) -> str:
    """The key by which names are compared: without case, composed, inner space single."""
    if name.isascii():
        return " ".join(name.lower().split())
    return " ".join(unicodedata.normalize("NFC", unicodedata.normalize("NFC", name).casefold()).split())


def nearest(word: str, candidates: Iterable[str]) -> str | None:
    """The candidate `word` is a slip of: by edit distance, else the shortest that contains it, or that it contains.

    A slip is a letter too many, too few, wrong, or two changed about: one in a short word, two from five letters on,
    three from nine. Of equals the first candidate wins; of a set, which has no first, the first by the alphabet. None where
    nothing is near.
    """
    wanted = fold(word)
    if not wanted or len(wanted) > LONGEST:
        return None
    allowed = 1 if len(wanted) < 5 else 2 if len(wanted) < 9 else 3
    letters = frozenset(wanted)
    best: str | None = None
    inside: str | None = None
    for candidate in sorted(candidates) if isinstance(candidates, Set) else candidates:
        key = fold(candidate)
        if key == wanted:
            return candidate
        if _may_be_near(wanted, letters, key, allowed):
            steps = distance(wanted, key, allowed)
            if steps <= allowed:
                best, allowed = candidate, steps - 1
                if allowed < 1:
                    allowed = 0
                continue
        held = wanted in key or (len(key) > 3 and key in wanted)
        if len(wanted) > 2 and held and (inside is None or len(candidate) < len(inside)):
            inside = candidate
    return best or inside


def _may_be_near(wanted: str, letters: frozenset[str], key: str, most: int) -> bool:
    """Whether it is worth looking letter by letter: a slip adds at most one letter that the other has not, and one that it has.

    All but a few of a thousand names are told apart by this, in a fraction of the time.
    """
    return (
        abs(len(key) - len(wanted)) <= most
        and len(letters.difference(key)) <= most
        and len(frozenset(key) - letters) <= most
    )


LONGEST = 60
"""No name of more letters is compared: nobody misspells a paragraph."""


def distance(one: str, other: str, most: int) -> int:
    """Letters added, left out, changed or swapped with their neighbour; more than `most` counts as `most + 1`."""
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, a in enumerate(one, 1):
        previous, before, row = before, row, [i]
        for j, b in enumerate(other, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (a != b))
            if i > 1 and j > 1 and a == other[j - 2] and one[i - 2] == b:
                cost = min(cost, previous[j - 2] + 1)
            row.append(cost)
        if min(row) > most:
            return most + 1
    return min(row[-1], most + 1)
