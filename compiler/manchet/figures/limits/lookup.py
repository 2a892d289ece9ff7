"""The thresholds by which a figure is ordinary or not, by kind of bread.

The figures and who says so stand in `thresholds.toml`; `thresholds.py` is generated from it (`literals.py`), since
reading TOML would cost every start of the command.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache


@cache
def limit(name: str, kind: str = "") -> Fraction | None:
    """The threshold of that name for that kind; None where there is none."""
    from manchet.figures.limits.thresholds import THRESHOLDS

    found = THRESHOLDS.get(name)
    return None if found is None else found.kinds.get(kind, found.any_bread)
