"""What a piece weighs when it is baked, as it is said on a sheet: by the file's bake loss, else as an estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.losses import about_baked
from manchet.formula.crust import bake_loss_range, to_tens, to_weigh_off
from manchet.formula.model import Formula, PieceBatch
from manchet.sheets.measures import Measures


def about_baked_of(piece: PieceBatch, formula: Formula) -> tuple[Fraction | None, bool]:
    """Grams of the baked piece, and whether that is an estimate; None for kinds nobody has weighed."""
    if piece.baked_grams is not None:
        return piece.baked_grams, False
    if piece.baked_wanted is not None:
        return piece.baked_wanted, True
    loss = bake_loss_range(formula, piece)
    return (None, True) if loss is None else (about_baked(piece.grams, loss), True)


def after_the_dough(piece: PieceBatch, formula: Formula, m: Measures) -> str:
    """`, about 730 g baked`, to stand after what the dough weighs; "" if that is not known."""
    grams, estimate = about_baked_of(piece, formula)
    if grams is None:
        return ""
    return m.words.say("head.about_baked_estimate" if estimate else "head.about_baked", m.about(grams))


def in_the_list(piece: PieceBatch, formula: Formula, m: Measures) -> str:
    """The divide list's cell under "baked, about"."""
    grams, estimate = about_baked_of(piece, formula)
    if grams is None:
        return ""
    return m.words.say("divide.estimate", m.about(grams)) if estimate else m.about(grams)


def weigh_off(piece: PieceBatch, formula: Formula, m: Measures) -> str:
    """Between what the dough for a wanted baked weight lies, where the file gives no bake loss; else ""."""
    loss = bake_loss_range(formula, piece)
    if piece.baked_wanted is None or loss is None:
        return ""
    low, high = (to_tens(end or Fraction(0)) for end in to_weigh_off(piece.baked_wanted, loss))
    least, most = m.each(low), m.each(high)
    return m.words.say("divide.weigh_off", piece.noun, least, most, m.about(piece.baked_wanted), most)
