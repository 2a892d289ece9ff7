"""What the data says of one hazard."""

from __future__ import annotations

from manchet.records import NamedTuple


class Hazard(NamedTuple):
    """A hazard before it is met in a formula; its fields are those of `Caution`."""

    level: str
    of: str
    words: str
    limit: str
    reading: str
    if_missed: str
    source: str
