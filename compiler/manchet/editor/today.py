"""A formula at the size it is wanted today, and its figures."""

from __future__ import annotations

from manchet.batch.work import Work, once
from manchet.editor.settings import Settings
from manchet.editor.standing import block_around
from manchet.figures.derived import Figures, figures_of
from manchet.formula.model import Formula
from manchet.quantities.printing import decimal
from manchet.syntax.nodes import File
from manchet.workspace.open_bakery import OpenBakery


def formula_at(bakery: OpenBakery, file: File, line: int) -> Formula | None:
    """The sound formula, preparation, dish or variant that a line belongs to."""
    block = block_around(file, line)
    if block is None:
        return None
    at = (file.path, block.line.number)
    return next((one for one in bakery.read([file.path]).formulas if (one.place.path, one.place.line) == at), None)


def work_today(bakery: OpenBakery, formula: Formula, settings: Settings) -> Work | None:
    """It at the size of today; as its file says, where today's amount cannot be made."""
    read = bakery.read([formula.place.path])
    return read.work(formula, settings.order(formula.name)).value or read.work(formula).value


@once
def figures_today(work: Work) -> Figures:
    """Every figure of it, but for those of an oven shared with other breads."""
    return figures_of(work)


def size_of(work: Work) -> str:
    """How much is made, in words: `16 loaves`, `20000 g`."""
    pieces = [f"{decimal(one.number, 0)} {one.noun}".rstrip() for one in work.batch.pieces if one.noun]
    return " and ".join(pieces) or f"{decimal(work.batch.divided or work.batch.dough, 0)} g"
