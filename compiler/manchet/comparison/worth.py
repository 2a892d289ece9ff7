"""What one costs and how long all of it takes, on both sides at the newer one's size."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.piece import sold_pieces
from manchet.batch.work import Work
from manchet.comparison.pieces import paired_pieces
from manchet.comparison.values import CostChange, HoursChange
from manchet.costing.cost import cost_of, cost_of_one
from manchet.timing.card.card import course_of

A_HUNDREDTH = Fraction(1, 100)
"""A cost that moves by less than this part of itself is no news. Our own rule."""
FIVE_MINUTES = Fraction(300)


def cost_changes(before: Work, after: Work) -> Iterator[CostChange]:
    """Of the ingredients of one, where both sides have a price for all of them, in one currency."""
    cost_then, cost_now = cost_of(before).value, cost_of(after).value
    if cost_then is None or cost_now is None or cost_then.currency != cost_now.currency:
        return
    for old, piece in paired_pieces(sold_pieces(before), sold_pieces(after)):
        if old is None or piece is None:
            continue
        was, new = cost_of_one(cost_then, old.noun), cost_of_one(cost_now, piece.noun)
        if was is not None and new is not None and abs(was - new) > max(was, new) * A_HUNDREDTH:
            yield CostChange(piece.noun, was, new, cost_now.currency)


def hours_change(before: Work, after: Work) -> Iterator[HoursChange]:
    """From five minutes on."""
    was, now = course_of(before).total, course_of(after).total
    if abs(was - now) >= FIVE_MINUTES:
        yield HoursChange(was, now)
