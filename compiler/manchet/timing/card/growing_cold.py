"""When the middle of a dough that is put into the fridge is cold: said on the card at the line that puts it there."""

from __future__ import annotations

from manchet.batch.work import Work
from manchet.figures.fermentation.chilling import chilled_in
from manchet.formula.model import Range
from manchet.timing.card.values import CardRow


def with_cooling(work: Work, rows: tuple[CardRow, ...]) -> tuple[CardRow, ...]:
    """The rows; those that put a warm dough into a fridge say from when to when its middle is cold."""
    cold = {(one.step.place, one.branch): Range(*one.cold_after) for one in chilled_in(work) if one.cold_after}
    return tuple(
        row._replace(cold_after=cold.get((row.step.place, row.branch)) or cold.get((row.step.place, "")))
        if row.step is not None and row.job == "step"
        else row
        for row in rows
    )
