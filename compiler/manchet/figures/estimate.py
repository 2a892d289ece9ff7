"""A figure that is likely, and the ends it may lie between; all three alike where the file says it."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Estimate(NamedTuple):
    likely: Fraction
    low: Fraction
    high: Fraction
