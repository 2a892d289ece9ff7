"""A caution: a hazard at the step that causes it.

The words stand in `hazards.toml`, dated, with their sources; `hazards.py` is generated from it (`literals.py`), since
reading TOML would cost every start of the command. No caution says that anything is harmless, and every one gives way
to local codes and licensed practice.
"""

from __future__ import annotations

from manchet.cautions.at import CautionPlace
from manchet.cautions.hazard import Hazard, Level
from manchet.records import NamedTuple

HOUSE = CautionPlace()


class Caution(NamedTuple):
    """One hazard of a formula or of the house."""

    name: str
    level: Level
    """"warning" (boxed) or "note"."""
    at: CautionPlace
    """The step that causes it, or the stage as a whole; nowhere, for the house."""
    hazard: Hazard
    again: bool = False
    """It stands in full at another step; here its limit is enough."""

    @property
    def of(self) -> str:
        """Whom it concerns: see `Hazard.of`."""
        return self.hazard.of


DEFERS = "Local codes come first. Where two limits differ, keep the stricter."
"""Printed once with every set of cautions."""


def caution(name: str, at: CautionPlace = HOUSE, level: Level | None = None) -> Caution:
    """The caution of that name at that step; `level` overrules the data's. Raises `KeyError` on an unknown name."""
    from manchet.cautions.hazards import HAZARDS

    hazard = HAZARDS[name]
    return Caution(name, level or hazard.level, at, hazard)
