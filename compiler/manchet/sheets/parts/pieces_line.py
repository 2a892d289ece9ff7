"""What a work makes, a line for each sort of piece: `2 loaves × 850 g → about 730 g baked`."""

from __future__ import annotations

from manchet.batch.model import PieceBatch
from manchet.batch.pieces import added_after_dividing
from manchet.batch.work import Work
from manchet.formula.model import Formula
from manchet.formula.nouns import noun_for
from manchet.quantities.printing import round_to
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.baked_weight import about_baked_phrase
from manchet.sheets.parts.wording import single


def made_lines(work: Work, m: Measures) -> tuple[str, ...]:
    """What it makes; where nothing is counted, how much of it there is."""
    lines = tuple(pieces_line(piece, work.formula, m) for piece in work.batch.pieces)
    if lines:
        return lines
    whole = m.with_ounces(work.batch.dough)
    return (whole if work.formula.preparation else m.words.say("head.whole_dough", whole),)


def divided_line(p: PieceBatch, formula: Formula, m: Measures) -> str:
    """A sort of piece as it is weighed off: without what is worked into it after dividing."""
    added = added_after_dividing(formula, p.noun)
    number, grams = m.plain(single(p.number), 1), round_to(p.grams / (1 + added), 0) if added else p.grams
    said = m.words.say("head.pieces", number, noun_for(p.number, p.noun), m.with_ounces(grams))
    return f"{said}, {m.words.say('divide.with_added', m.mass(p.grams))}" if added else said


def pieces_line(p: PieceBatch, formula: Formula, m: Measures) -> str:
    """`2 loaves × 850 g → about 730 g baked`"""
    number, weight = m.plain(single(p.number), 1), m.with_ounces(p.grams)
    if formula.dish:
        said = f"{number} {noun_for(p.number, p.noun)}"
        return said if p.baked_grams is None else m.words.say("head.plates", said, m.about(p.baked_grams))
    if not p.noun:
        return m.words.say("head.whole_dough", weight)
    return m.words.say("head.pieces", number, noun_for(p.number, p.noun), weight) + about_baked_phrase(p, formula, m)
