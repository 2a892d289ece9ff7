"""A caution, as it is printed: what may go wrong, the limit, what to do if it is missed, and who says so.

The words stand in `hazards.toml`, dated, with their sources; `hazards.py` is generated from it (`literals.py`), since
reading TOML would cost every start of the command. No caution says that anything is harmless, and every one gives way
to local codes and licensed practice.
"""

from __future__ import annotations

from manchet.cautions.at import CautionPlace
from manchet.cautions.hazard import Level
from manchet.records import NamedTuple

HOUSE = CautionPlace()


class Caution(NamedTuple):
    """One hazard of a formula or of the house."""

    name: str
    level: Level
    """"warning" (boxed) or "note"."""
    of: str
    """"formula", or "house": those stand on one posted card, and the sheet only points to it."""
    at: CautionPlace
    """The step that causes it, or the stage as a whole; nowhere, for the house."""
    words: str
    limit: str
    """The figure to hold, "" where there is none."""
    reading: str
    """What to write in the box ("C at 2 h and at 6 h"), "" for no box."""
    if_missed: str
    source: str


DEFERS = "Local codes and licensed practice come first."
"""Printed once with every set of cautions."""


def caution(name: str, at: CautionPlace = HOUSE, level: Level | None = None) -> Caution:
    """The caution of that name at that step; `level` overrules the data's. Raises `KeyError` on an unknown name."""
    from manchet.cautions.hazards import HAZARDS

    h = HAZARDS[name]
    return Caution(name, level or h.level, h.of, at, h.words, h.limit, h.reading, h.if_missed, h.source)
