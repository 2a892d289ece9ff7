"""Names that lie close to an unknown one: what it may have meant."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.diagnostics.suggest import nearest
from manchet.larder.names import key


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
