"""What a row would weigh today by the version before: only where that can be known."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.weighed_table import WeighedLine
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula


def shares_by_name(formula: Formula) -> Mapping[str, Fraction]:
    """The overall formula, as a version before is remembered: grams per gram of all flour, by the folded name of the line."""
    return {fold(line.name): line.share for line in formula.overall}


def was_weighed(line: WeighedLine, work: Work, before: Mapping[str, Fraction]) -> Fraction | None:
    """Grams for today's flour, where the share of all flour was another; None where it is the same, or nobody can say.

    `before` is the overall formula of the version before, by key. It says nothing of stages, so of what is weighed in several
    rows nobody knows how it was parted.
    """
    portion = line.weighed.portion
    was = before.get(portion.key)
    if was is None:
        return None
    now = next((one.share for one in work.formula.overall if fold(one.name) == portion.key), None)
    rows = sum(1 for stage in work.batch.stages for weighed in stage.weighed if weighed.portion.key == portion.key)
    if not now or was == now or rows != 1:
        return None
    return line.weighed.grams * was / now


def is_new(line: WeighedLine, work: Work, before: Mapping[str, Fraction]) -> bool:
    """Whether the version before had none of it."""
    key = line.weighed.portion.key
    return bool(before) and key not in before and any(fold(one.name) == key for one in work.formula.overall)
