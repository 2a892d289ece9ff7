"""What the data says of one hazard."""

# No postponed annotations here: as strings they would make the class half as costly again at each start.

from typing import NamedTuple


class Hazard(NamedTuple):
    """A hazard before it is met in a formula; its fields are those of `Caution`."""

    level: str
    of: str
    words: str
    limit: str
    reading: str
    if_missed: str
    source: str
