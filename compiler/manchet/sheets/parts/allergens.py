"""The allergens of what is made, in one line: `CONTAINS WHEAT, RYE · ? SULPHITES (dried pears) · MAY CONTAIN ALMOND`.

What is not known is said; what is not in it is not: an empty place says only that it is in no ingredient.
"""

from __future__ import annotations

from collections.abc import Iterable

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.label.allergens import AllergenAnswer, AllergenFinding, all_findings
from manchet.label.contact import may_by_packet, may_contain
from manchet.label.markets import allergen_list, markets_of
from manchet.larder.ingredient import Ingredient
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.views import AllergenLine, AlsoContains


def listed_words(work: Work) -> tuple[str, ...]:
    """The allergens that the markets of a kitchen have declared, those of the first of them first."""
    markets = markets_of(work.kitchen)
    return tuple(dict.fromkeys(word for market in markets for word in allergen_list(market).words))


def called_in(work: Work, word: str) -> str:
    """What an allergen is called in the first market of a kitchen."""
    return allergen_list(markets_of(work.kitchen)[0]).name(word)


def allergen_line(work: Work, m: Measures, stated: bool = True) -> AllergenLine:
    """Of all sorts that a work makes. `stated`: with what the house states of contact in its own rooms; at home that is no matter."""
    pieces = sold_pieces(work)
    words = listed_words(work)
    each = [(piece, _has(piece, words)) for piece in pieces]
    common = [word for word in words if all(word in has for _, has in each)]
    also = tuple(
        AlsoContains(piece.noun, tuple(called_in(work, word) for word in has if word not in common))
        for piece, has in each
        if len(has) > len(common)
    )
    may = {
        one.allergen: None
        for piece in pieces
        for one in (may_contain(work, piece) if stated else may_by_packet(piece))
        if one.allergen in words
    }
    unknown = tuple(dict.fromkeys(said for piece in pieces for said in unknown_words(work, piece, m)))
    in_all = tuple(called_in(work, word) for word in common)
    return AllergenLine(in_all, also, unknown, tuple(called_in(work, word) for word in may))


def allergens_of_piece(work: Work, piece: SoldPiece, m: Measures) -> AllergenLine:
    """Of one sort of piece alone, with what the house states of contact."""
    words = listed_words(work)
    has = tuple(called_in(work, word) for word in _has(piece, words))
    may = tuple(called_in(work, one.allergen) for one in may_contain(work, piece) if one.allergen in words)
    return AllergenLine(has, (), unknown_words(work, piece, m), may)


def _has(piece: SoldPiece, words: Iterable[str]) -> list[str]:
    found = {one.allergen for one in all_findings(piece) if one.answer is AllergenAnswer.HAS}
    return [word for word in words if word in found]


def unknown_words(work: Work, piece: SoldPiece, m: Measures) -> tuple[str, ...]:
    """`sulphites (dried pears)`; of what nothing is known the ingredient alone."""
    words = listed_words(work)
    open_ones = [one for one in all_findings(piece) if one.answer is AllergenAnswer.NOT_KNOWN and one.allergen in words]
    nothing = wholly_unknown(open_ones)
    said = list(nothing)
    for one in open_ones:
        names = [because.ingredient.name for because in one.because if because.ingredient.name not in nothing]
        if names:
            said.append(m.words.say("contains.unknown_in", called_in(work, one.allergen), ", ".join(names)))
    return tuple(said)


def wholly_unknown(findings: Iterable[AllergenFinding]) -> tuple[str, ...]:
    """The names of ingredients of whose allergens nothing is known at all."""
    found: dict[str, Ingredient] = {}
    for one in findings:
        for because in one.because:
            entry = because.ingredient
            if entry.allergens is None and not entry.asked:
                found[entry.name] = entry
    return tuple(found)
