"""When the middle of a dough that is put into the fridge is cold: said on the card at the line that puts it there."""

from __future__ import annotations

from manchet.batch.mixes import Mixes
from manchet.batch.model import Batch
from manchet.figures.fermentation.chilling import chilled_in
from manchet.formula.model import Range
from manchet.timing.card.values import Row


def with_cooling(rows: tuple[Row, ...], batch: Batch, mixes: Mixes) -> tuple[Row, ...]:
    """The rows; those that put a warm dough into a fridge say from when to when its middle is cold."""
    cold = {(one.step.place, one.branch): Range(*one.cold_after) for one in chilled_in(batch, mixes) if one.cold_after}
    return tuple(
        row._replace(cold_after=cold.get((row.step.place, row.branch)) or cold.get((row.step.place, "")))
        if row.step is not None and row.job == "step"
        else row
        for row in rows
    )
