"""What is made ahead for a bread, a preparation or a dish: totalled over all pieces, its share of a batch, how long it keeps."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.parts_needed import PartNeeded
from manchet.figures.ahead import Ahead
from manchet.figures.baths import Because
from manchet.formula.nouns import noun_for
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.good_for import good_for
from manchet.sheets.parts.views import AheadItem, Box
from manchet.sheets.parts.wording import single


def make_ahead(ahead: Sequence[Ahead], m: Measures) -> tuple[AheadItem, ...]:
    """An item for each, in the order it is made."""
    return tuple(
        _bread(each, each.part, m) if _is_bread(each) and each.part else _preparation(each, m) for each in ahead
    )


def _is_bread(each: Ahead) -> bool:
    return each.part is not None and each.part.part.is_bread


def _preparation(each: Ahead, m: Measures) -> AheadItem:
    counted = None if each.part is None else each.part.counted
    weight, unit = ("", "") if not each.wanted else _parted(m.mass(each.wanted))
    if counted is not None and each.part is not None:
        number = each.part.number or Fraction(0)
        weight, unit = _number(number, m), noun_for(number, each.part.part.noun)
    return AheadItem(
        name=each.work.formula.name,
        weight=weight,
        unit=unit,
        of_what=_of_batch(each, m),
        keeps=_keeps(each, m),
        taken_up=each.dipped and bool(each.wanted),
        boxes=(Box(m.words["ahead.made"]),),
    )


def _keeps(each: Ahead, m: Measures) -> str:
    said = good_for(each.work, m)
    return m.words.say("ahead.keeps", said) if said else ""


def _of_batch(each: Ahead, m: Measures) -> str:
    """`of a batch of 602 g`; "" where nobody says how much a batch is."""
    batch = each.batch
    if batch is None or not each.wanted:
        return ""
    if each.because in (Because.FILE, Because.USUAL):
        return m.words.say("ahead.make_least", m.mass(each.work.batch.dough))
    if each.wanted == batch:
        return m.words["ahead.a_batch"]
    return m.words.say("ahead.of_batch" if each.wanted < batch else "ahead.more_than_batch", m.mass(batch))


def _bread(each: Ahead, needed: PartNeeded, m: Measures) -> AheadItem:
    part, pieces = needed.part, needed.pieces
    age = each.work.formula.sold
    keeps = m.words["ahead.cold"] if age is None else m.words.say("ahead.old", m.time(age))
    if pieces is None:
        weight, unit = _parted(m.mass(needed.grams))
        of_what = m.words.say("ahead.unknown", part.noun) if part.noun else ""
    else:
        weight, unit = _number(Fraction(pieces), m), noun_for(Fraction(pieces), part.noun)
        of_what = _of_pieces(needed, pieces, m)
    return AheadItem(part.name, weight, unit, of_what, keeps, boxes=(Box(m.words["ahead.baked"]),))


def _of_pieces(needed: PartNeeded, pieces: int, m: Measures) -> str:
    counted = needed.counted
    if counted is None or needed.number is None:
        return m.mass(needed.grams)
    if counted.unit != "slices":
        return ""
    in_all = _number(Fraction(pieces * counted.a_piece), m)
    said = [_number(needed.number, m), in_all, *([_number(needed.over, m)] if needed.over else [])]
    return m.words.say("ahead.slices_over" if needed.over else "ahead.slices", *said)


def _number(number: Fraction, m: Measures) -> str:
    return m.plain(single(number), 1)


def _parted(mass: str) -> tuple[str, str]:
    figure, _, unit = mass.rpartition(NBSP)
    return figure, unit
