"""A caution: a hazard at the step that causes it.

The words stand in `hazards.toml`, dated, with their sources; `hazards.py` is generated from it (`literals.py`), since
reading TOML would cost every start of the command. No caution says that anything is harmless, and every one gives way
to local codes and licensed practice. It is answered by a fact (`pasteurised`, a core that is said, a day in the cold), never by
permission: no `allow` quiets it.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.cautions.at import CautionPlace
from manchet.cautions.hazard import Hazard, Level, Said
from manchet.cautions.phrase import Measured, Unit, Wording, with_own
from manchet.records import NamedTuple

HOUSE = CautionPlace()
NONE_OF_ITS_OWN: Mapping[str, Fraction] = {}


class Caution(NamedTuple):
    """One hazard of a formula or of the house."""

    name: str
    level: Level
    at: CautionPlace
    """The step that causes it, or the stage as a whole; nowhere, for the house."""
    own: tuple[tuple[str, Fraction], ...] = ()
    """Figures of the step that stand for those of the hazard, by the names that its words have for them, in their units."""
    why: Wording = ()
    """What in the file causes it, in few words: for who reads the file and not the sheet."""

    @property
    def hazard(self) -> Hazard:
        """Loaded when it is asked for: a formula without a caution has no use for the words."""
        from manchet.cautions.hazards import HAZARDS

        return HAZARDS[self.name]

    @property
    def of(self) -> str:
        """Whom it concerns: see `Hazard.of`."""
        return self.hazard.of

    def said(self, american: bool) -> Said:
        """The words of the hazard, with the step's own figures in them."""
        hazard = self.hazard
        said, own = hazard.american if american else hazard.british, dict(self.own)
        limit = (with_own(said.own_limit, own) if own else ()) or with_own(said.limit, own)
        boxes = tuple(
            box._replace(label=label)
            for box in said.boxes
            if box.unless not in own and (label := with_own(box.label, own))
        )
        return said._replace(
            words=with_own(said.words, own), limit=limit, if_missed=with_own(said.if_missed, own), boxes=boxes
        )


DEFERS = "Local codes come first. Where two limits differ, keep the stricter."
"""Printed once with every set of cautions."""


def caution(
    name: str,
    at: CautionPlace = HOUSE,
    level: Level | None = None,
    own: Mapping[str, Fraction] = NONE_OF_ITS_OWN,
    why: Wording = (),
) -> Caution:
    """The caution of that name at that step, as grave as its words say if no `level` is given. Raises `KeyError` on an unknown
    name then."""
    if level is None:
        from manchet.cautions.hazards import HAZARDS

        level = HAZARDS[name].level
    return Caution(name, level, at, tuple(own.items()), why)


def celsius(degrees: Fraction) -> Measured:
    """A temperature in a `why`."""
    return Measured("C", degrees)


def duration(seconds: Fraction) -> Measured:
    """A time in a `why`: in days, hours or minutes, the largest that it is a whole number of."""
    units: tuple[tuple[Unit, int], ...] = (("days", 86400), ("h", 3600))
    unit, length = next(((unit, length) for unit, length in units if seconds and seconds % length == 0), ("min", 60))
    return Measured(unit, seconds / length)


def warning_unless(keeps: bool) -> Level:
    """What the file keeps to is a box for the pen; what it does not keep to is said."""
    return "limit" if keeps else "warning"
