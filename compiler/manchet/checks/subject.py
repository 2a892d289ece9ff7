"""What a check looks at: one formula at the size its file asks for, and what surrounds it."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.checks import saying
from manchet.figures.totals import Totals
from manchet.formula.model import Batch, Formula
from manchet.larder.book import Larder
from manchet.larder.kitchen import Kitchen


class Subject(NamedTuple):
    """One formula, its batch at the written size, and the kitchen, larder and figures that belong to it."""

    formula: Formula
    batch: Batch
    kitchen: Kitchen
    larder: Larder
    totals: Totals

    @property
    def kind(self) -> str:
        return self.formula.kind

    def degrees(self, celsius: Fraction) -> str:
        """A temperature as the kitchen writes its own: `26 C`, `79 F`."""
        return saying.fahrenheit(celsius) if self.kitchen.degrees == "F" else saying.celsius(celsius)
