"""What a label is made of, as figures that say why: the panel of 100 g of each food, and what each ingredient brings to it."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.figures.composition.contents import in_what
from manchet.figures.figure import Figure
from manchet.label.conventions import ENERGY
from manchet.label.markets import markets_of
from manchet.label.nutrition import Brought, PanelLine, panel_of
from manchet.quantities.printing import decimal


def label_figures(work: Work) -> dict[str, Figure]:
    """Of each sort of piece, by a name such as `fat in 100 g of one loaf, EU`; nothing of what has no finished weight."""
    return {figure.name: figure for piece in sold_pieces(work) for figure in _of_piece(work, piece)}


def _of_piece(work: Work, piece: SoldPiece) -> Iterator[Figure]:
    what = in_what(work, piece).removeprefix("in ")
    for market in markets_of(work.kitchen):
        panel = panel_of(piece, market)
        for line in panel.lines:
            yield _figure(f"{line.name} in 100 g of {what}, {market}", line, market)


def _figure(name: str, line: PanelLine, market: str) -> Figure:
    ends = f"{decimal(line.span.low, 3)} to {decimal(line.span.high, 3)} {line.unit}"
    span = "" if line.span.is_known else f"; it lies between {ends}"
    printed = f"printed as {line.text}" if line.is_known else "cannot be said"
    rule = f"what each ingredient brings, summed, / finished weight x 100; {printed}{span}"
    inputs = tuple(_share(share, line.unit) for share in line.shares if share.span.high)
    return Figure(name, line.span.middle, line.unit, rule, inputs, ENERGY[market].source)


def _share(share: Brought, unit: str) -> Figure:
    span = share.span
    wide = "" if span.is_known else f"; between {decimal(span.low, 3)} and {decimal(span.high, 3)} {unit}"
    rule = f"grams of it x what 100 g of it hold / finished weight{wide}"
    return Figure(f"by {share.ingredient.name}", span.middle, unit, rule, (), share.ingredient.source)
