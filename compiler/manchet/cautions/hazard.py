"""What the data says of one hazard."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple

Level = Literal["warning", "note"]


class Hazard(NamedTuple):
    """A hazard before it is met in a formula; its fields are those of `Caution`."""

    level: Level
    of: str
    words: str
    limit: str
    reading: str
    if_missed: str
    source: str
