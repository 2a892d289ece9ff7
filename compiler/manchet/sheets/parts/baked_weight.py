"""What a piece weighs when it is baked, as it is said on a sheet: by the file's bake loss, else as an estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch
from manchet.batch.pieces import added_after_dividing
from manchet.batch.usual_bake_loss import bake_loss_range, to_tens, to_weigh_off
from manchet.figures.losses.bake_loss import estimated_baked_weight
from manchet.formula.model import Formula
from manchet.quantities.printing import decimal
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.wording import single


def about_baked_weight(piece: PieceBatch, formula: Formula) -> tuple[Fraction | None, bool]:
    """Grams of the baked piece, and whether that is an estimate; None for kinds nobody has weighed."""
    if piece.baked_grams is not None:
        return piece.baked_grams, False
    if piece.baked_wanted is not None:
        return piece.baked_wanted, True
    loss = bake_loss_range(formula, piece)
    return (None, True) if loss is None else (estimated_baked_weight(piece.grams, loss, piece.touching), True)


def about_baked_phrase(piece: PieceBatch, formula: Formula, m: Measures) -> str:
    """` → about 730 g baked`, to stand after what the dough weighs; "" if that is not known."""
    grams, _ = about_baked_weight(piece, formula)
    return "" if grams is None else m.words.say("baked.about", m.about(grams))


def about_baked_cell(piece: PieceBatch, formula: Formula, m: Measures) -> str:
    """About what a piece weighs baked, alone; "" if that is not known."""
    grams, _ = about_baked_weight(piece, formula)
    return "" if grams is None else m.about(grams)


def weigh_off_line(piece: PieceBatch, batch: Batch, m: Measures) -> str:
    """Between what the dough for a wanted baked weight lies, where the file gives no bake loss; else "".

    What is mixed is enough for the middle: whoever weighs off the upper end is told how much dough all of them then want.
    """
    formula = batch.formula
    loss = bake_loss_range(formula, piece)
    if piece.baked_wanted is None or loss is None:
        return ""
    low, high = (to_tens(end or Fraction(0)) for end in to_weigh_off(piece.baked_wanted, loss, piece.touching))
    least, most = m.each(low), m.each(high)
    said = m.words.say("baked.weigh_off", piece.noun, least, most, m.about(piece.baked_wanted), most)
    if high <= piece.grams:
        return said
    number = m.plain(single(piece.number), 1)
    if len(batch.pieces) > 1:
        return m.words.say("baked.wants_more", said, number, m.mass(high * piece.number))
    dough = high * piece.number / (1 + added_after_dividing(formula, piece.noun)) / (1 - formula.dough_loss)
    option = f"--piece-weight '{decimal(high, 0)} g dough'"
    return m.words.say("baked.mix_more", said, m.mass(dough), number, option)
