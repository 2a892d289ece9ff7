"""What the lines of a stocktake say."""

from __future__ import annotations

from manchet.records import NamedTuple
from manchet.syntax.clauses import Amount, Word


class StockHead(NamedTuple):
    """`stock counted 2026-11-28`"""

    date: Word


class StockLine(NamedTuple):
    """`butter 6 packs` in a stocktake; without a figure, a thing that nobody has counted. What is weighed is a `MaterialNode`."""

    name: Word
    packs: Amount | None = None
