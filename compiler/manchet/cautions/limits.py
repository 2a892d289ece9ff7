"""The figures by which a caution is met, by market.

They stand in `limits.toml`, each with its source; `limit_figures.py` is generated from it, as `hazards.py` from `hazards.toml`.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction


def limit(name: str, markets: Iterable[str] = ()) -> Fraction | None:
    """The figure of that name for a house that sells in these markets, the strictest; None where none of them has one.
    Raises `KeyError` on an unknown name."""
    from manchet.cautions.limit_figures import LIMITS

    found = LIMITS[name]
    own = dict(found.markets)
    figures = [figure for market in markets or ("",) if (figure := own.get(market, found.figure)) is not None]
    if not figures:
        return None
    return min(figures) if found.keeps == "most" else max(figures)


def figure(name: str, markets: Iterable[str] = ()) -> Fraction:
    """The same of a limit that every market has."""
    found = limit(name, markets)
    assert found is not None, name
    return found
