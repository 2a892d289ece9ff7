"""The baker's own pictures, where a page shows them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from manchet.formula.picture import Picture
from manchet.sheets.views import Figure

Pictures = Mapping[Picture, Figure] | None
"""Those that can be shown; None: no drawings and no pictures at all."""


def own(named: Iterable[Picture], pictures: Pictures) -> tuple[Figure, ...]:
    """The baker's own. One that could not be shown is left out, and was reported."""
    there = pictures or {}
    return tuple(there[one] for one in named if one in there)
