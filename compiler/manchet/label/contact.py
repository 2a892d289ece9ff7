"""What may get into a food beside what is in it: as the operator states it, never worked out from what else is made in the house."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.formula.nouns import same_noun
from manchet.label.allergens import AllergenAnswer, all_findings, every_content
from manchet.larder.allergens import ALLERGENS
from manchet.larder.selling import Contact
from manchet.records import NamedTuple


class Judged(NamedTuple):
    """An allergen that may be in a food, or is kept apart from it, and why; `because` is "" of an ingredient's own packet."""

    allergen: str
    because: str


def may_contain(work: Work, piece: SoldPiece) -> tuple[Judged, ...]:
    """What may be in it: as the formula or its kitchen states, and as the packets of its ingredients do. Nothing that is in it."""
    there = _in_it(piece)
    found = {one.allergen: one.because for one in may_by_packet(piece)} | _stated(work, piece, apart=False)
    return _in_order({allergen: because for allergen, because in found.items() if allergen not in there})


def may_by_packet(piece: SoldPiece) -> tuple[Judged, ...]:
    """What may be in it because it may be in one of its ingredients, as their packets state, or in a part of it, as its own head does."""
    there = _in_it(piece)
    found: dict[str, str] = {}
    for content in every_content(piece.mixture):
        for component in content.way:
            for one in component.contacts:
                for allergen in () if one.apart else one.allergens:
                    if allergen not in there:
                        found.setdefault(allergen, f"{component.name}: {one.because}")
        for allergen in content.ingredient.may_contain:
            if allergen not in there:
                found.setdefault(allergen, f"it may be in the {content.ingredient.name}")
    return _in_order(found)


def kept_apart(work: Work, piece: SoldPiece) -> tuple[Judged, ...]:
    """What it is kept apart from, as is stated: not what is in it, or may be, or nobody knows of one of its ingredients."""
    open_ones = {one.allergen for one in all_findings(piece) if one.answer is AllergenAnswer.NOT_KNOWN}
    others = _in_it(piece) | {one.allergen for one in may_contain(work, piece)} | open_ones
    found = _stated(work, piece, apart=True)
    return _in_order({allergen: because for allergen, because in found.items() if allergen not in others})


class Fallen(NamedTuple):
    """A statement `kept apart from …` that does not hold of a food, and is printed nowhere: its own packets or lines say otherwise."""

    contact: Contact
    of_kitchen: bool
    allergen: str
    brought_by: str
    """The ingredient that has it, or of which nobody knows whether it does; "" where it may be in it, as is stated."""
    why: str


def fallen(work: Work, piece: SoldPiece) -> Iterator[Fallen]:
    answers = {one.allergen: one for one in all_findings(piece)}
    may = {one.allergen: one for one in may_contain(work, piece)}
    of_kitchen = {one.place for one in work.kitchen.selling.contacts}
    told: set[str] = set()
    for contact in _contacts(work, piece):
        for allergen in contact.allergens if contact.apart else ():
            if allergen in told or allergen not in answers:
                continue
            told.add(allergen)
            finding = answers[allergen]
            brought_by, why = "", ""
            if finding.answer is AllergenAnswer.HAS:
                brought_by = finding.because[0].ingredient.name
                why = f"{brought_by} brings it in"
            elif allergen in may:
                why = f"it may be in it: {may[allergen].because}"
            elif finding.answer is AllergenAnswer.NOT_KNOWN:
                brought_by = finding.because[0].ingredient.name
                why = f"nobody knows whether {brought_by} has it"
            if why:
                yield Fallen(contact, contact.place in of_kitchen, allergen, brought_by, why)


def _stated(work: Work, piece: SoldPiece, apart: bool) -> dict[str, str]:
    """By allergen; what is said of a sort of piece before what is said of the formula, and that before the kitchen's."""
    found: dict[str, str] = {}
    for one in _contacts(work, piece):
        if one.apart is apart:
            for allergen in one.allergens:
                found.setdefault(allergen, one.because)
    return found


def _contacts(work: Work, piece: SoldPiece) -> list[Contact]:
    formula = work.formula
    branch = next((one for one in formula.branches if one.noun and same_noun(one.noun, piece.noun)), None)
    sales = (None if branch is None else branch.sale, formula.sale)
    contacts = [one for sale in sales if sale is not None for one in sale.contacts]
    return contacts + list(work.kitchen.selling.contacts)


def _in_it(piece: SoldPiece) -> frozenset[str]:
    return frozenset(one.allergen for one in all_findings(piece) if one.answer is AllergenAnswer.HAS)


def _in_order(found: dict[str, str]) -> tuple[Judged, ...]:
    return tuple(Judged(word, found[word]) for word in ALLERGENS if word in found)
