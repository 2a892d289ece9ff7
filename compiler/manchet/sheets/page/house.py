"""How a house prints."""

from __future__ import annotations

from manchet.batch.scales import System
from manchet.records import NamedTuple


class House(NamedTuple):
    """How this house prints: paper ("A4", "Letter"), units ("metric", "US"), degrees ("C", "F"), whose words, and lengths
    ("mm", "inch"; US units have inches)."""

    paper: str = "A4"
    units: str = "metric"
    degrees: str = "C"
    words: str = "British"
    lengths: str = "mm"

    @property
    def system(self) -> System:
        """The units that its scales read."""
        return System.US if self.units == "US" else System.METRIC
