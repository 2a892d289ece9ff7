"""Names that lie close to an unknown one: what it may have meant."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.diagnostics.suggest import nearest
from manchet.larder.names import key


class NamesToCompare:
    """The names of a larder, with the words of each, taken apart once for all the unknown ones that are held against them."""

    def __init__(self, names: Iterable[str]) -> None:
        self._words = {name: frozenset(key(name).split()) for name in names}

    def near(self, name: str) -> tuple[str, ...]:
        """At most three: the nearest by spelling, then those that hold all its words (or it theirs), nearest in length."""
        wanted = set(key(name).split())
        if not wanted:
            return ()
        best = nearest(name, self._words)
        holding = [other for other, words in self._words.items() if words and (wanted <= words or words <= wanted)]
        holding.sort(key=lambda other: (abs(len(other) - len(name)), other))
        found = dict.fromkeys(holding if best is None else [best, *holding])
        return tuple(found)[:3]
