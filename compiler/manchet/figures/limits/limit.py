"""One threshold."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.records import NamedTuple


class Limit(NamedTuple):
    """A threshold: shares of 1, seconds, Celsius or grams.

    `any_bread` holds where no kind is given and for kinds not named; None: no such limit there.
    """

    any_bread: Fraction | None
    kinds: Mapping[str, Fraction]
    source: str
