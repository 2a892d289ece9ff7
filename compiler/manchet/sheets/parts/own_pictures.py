"""The baker's own pictures, where a page shows them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from manchet.formula.picture import Picture
from manchet.sheets.parts.views import Illustration

Pictures = Mapping[Picture, Illustration] | None
"""Those that can be shown; None: no drawings and no pictures at all."""


def own_illustrations(named: Iterable[Picture], pictures: Pictures) -> tuple[Illustration, ...]:
    """The baker's own. One that could not be shown is left out, and was reported."""
    there = pictures or {}
    return tuple(there[one] for one in named if one in there)
