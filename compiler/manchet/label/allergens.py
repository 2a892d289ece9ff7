"""Three answers for each allergen of a food: it has it, it has it not, nobody knows. Never worked out from what is handled beside it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from enum import Enum
from fractions import Fraction

from manchet.account.mixture import Content, Mixture
from manchet.account.piece import SoldPiece
from manchet.label.markets import MOST_SULPHITES, US, allergen_list, sulphite_limit
from manchet.larder.allergens import ALLERGENS
from manchet.larder.ingredient import Ingredient
from manchet.larder.joining import OF_CLASS
from manchet.larder.sources import allergens_of_source, is_lecithin
from manchet.records import NamedTuple

NOTHING = Fraction(0)
MILLION = 1_000_000


class AllergenAnswer(Enum):
    HAS = "has"
    HAS_NOT = "has not"
    NOT_KNOWN = "not known"


class CarriedBy(NamedTuple):
    """An ingredient that decides an answer, and why nobody knows, "" where it simply has it."""

    ingredient: Ingredient
    why: str = ""


class AllergenFinding(NamedTuple):
    """One allergen of one food. `because` are the ingredients that have it, or of which nobody knows."""

    allergen: str
    answer: AllergenAnswer
    because: tuple[CarriedBy, ...] = ()


def answer_of(ingredient: Ingredient, allergen: str) -> tuple[AllergenAnswer, str]:
    """What its larder entry says of one allergen, and why nobody knows."""
    if allergen in (ingredient.allergens or ()) or allergen in OF_CLASS.get(ingredient.class_, ()):
        return AllergenAnswer.HAS, ""
    if allergen == "sulphites" and ingredient.sulphites:
        return AllergenAnswer.HAS, ""
    if allergen in ingredient.has_not:
        return AllergenAnswer.HAS_NOT, ""
    if ingredient.allergens is None and allergen in allergens_of_source(ingredient):
        return AllergenAnswer.HAS, ""
    for word, why in ingredient.asked:
        if word == allergen:
            return AllergenAnswer.NOT_KNOWN, why
    is_told = ingredient.allergens is not None or ingredient.asked or ingredient.class_ == "packaging"
    if is_told or (ingredient.made_from and is_lecithin(ingredient)):
        return AllergenAnswer.HAS_NOT, ""
    return AllergenAnswer.NOT_KNOWN, "its entry says nothing of allergens"


def findings(piece: SoldPiece, market: str) -> tuple[AllergenFinding, ...]:
    """An answer for each allergen that a market has declared, in the order of the law."""
    return tuple(_finding(piece, word, market) for word in allergen_list(market).words)


def contains(piece: SoldPiece, market: str) -> tuple[str, ...]:
    """The allergens for a line `Contains …`, as the market names them; not those of which nobody knows."""
    names = allergen_list(market)
    has = (one for one in findings(piece, market) if one.answer is AllergenAnswer.HAS)
    return tuple(f"{names.name(one.allergen)}{_by_species(one) if market == US else ''}" for one in has)


def _by_species(finding: AllergenFinding) -> str:
    """`fish (sardines)`: the species is named there, FD&C Act 403(w)(2); where an ingredient's class says that it is one."""
    species = (one.ingredient for one in finding.because if finding.allergen == one.ingredient.class_ == "fish")
    named = dict.fromkeys(_NO_SPECIES.sub("", one.name) for one in species)
    return f" ({', '.join(named)})" if named else ""


_NO_SPECIES = re.compile(r"\b(?:tinned|canned|smoked|pickled|salted|fresh|frozen|raw) ")


def not_known(piece: SoldPiece) -> tuple[Ingredient, ...]:
    """The ingredients of which some allergen is not known, in the order of the work."""
    found = (
        because.ingredient
        for one in all_findings(piece)
        if one.answer is AllergenAnswer.NOT_KNOWN
        for because in one.because
    )
    return tuple({one.name: one for one in found}.values())


def all_findings(piece: SoldPiece) -> tuple[AllergenFinding, ...]:
    """As `findings`, of every allergen that any market lists. Sulphites count from the stricter limit on."""
    return tuple(_finding(piece, word, "") for word in ALLERGENS if word != "gluten")


def _finding(piece: SoldPiece, allergen: str, market: str) -> AllergenFinding:
    if allergen == "sulphites":
        return _sulphites(piece, market)
    has: list[CarriedBy] = []
    unknown: list[CarriedBy] = []
    for content in every_content(piece.mixture):
        answer, why = answer_in_its_way(content, allergen)
        if answer is AllergenAnswer.HAS:
            has.append(CarriedBy(content.ingredient))
        elif answer is AllergenAnswer.NOT_KNOWN:
            unknown.append(CarriedBy(content.ingredient, why))
    return _of(allergen, has, unknown)


def _of(allergen: str, has: list[CarriedBy], unknown: list[CarriedBy]) -> AllergenFinding:
    if has:
        return AllergenFinding(allergen, AllergenAnswer.HAS, _once(has))
    return AllergenFinding(allergen, AllergenAnswer.NOT_KNOWN if unknown else AllergenAnswer.HAS_NOT, _once(unknown))


def _once(because: Iterable[CarriedBy]) -> tuple[CarriedBy, ...]:
    return tuple({one.ingredient.name: one for one in because}.values())


def answer_in_its_way(content: Content, allergen: str) -> tuple[AllergenAnswer, str]:
    """An ingredient's answer; what a blend or culture that it came in with states of itself answers what is not known of it."""
    answer, why = answer_of(content.ingredient, allergen)
    stated = [component.allergens for component in content.way if component.allergens is not None]
    if answer is not AllergenAnswer.HAS and any(allergen in words for words in stated):
        return AllergenAnswer.HAS, ""
    return (AllergenAnswer.HAS_NOT, "") if stated and answer is AllergenAnswer.NOT_KNOWN else (answer, why)


def every_content(mixture: Mixture) -> Iterator[Content]:
    """All that is in it, and all that it takes up of a bath."""
    yield from mixture.holds.values()
    for taken in mixture.taken_up:
        yield from taken.mixture.holds.values()


def _sulphites(piece: SoldPiece, market: str) -> AllergenFinding:
    """By how much there is in the food as it is sold, where that can be said."""
    least = most = NOTHING
    has: list[CarriedBy] = []
    unknown: list[CarriedBy] = []
    for content in every_content(piece.mixture):
        entry = content.ingredient
        answer, why = answer_in_its_way(content, "sulphites")
        if answer is AllergenAnswer.HAS:
            figure = entry.sulphites
            least += content.grams * (Fraction(MOST_SULPHITES, MILLION) if figure is None else figure)
            has.append(CarriedBy(entry))
        elif answer is AllergenAnswer.NOT_KNOWN:
            most += content.grams * Fraction(MOST_SULPHITES, MILLION)
            unknown.append(CarriedBy(entry, why))
    weight = piece.mixture.weight
    if not weight:
        return _of("sulphites", has, unknown)
    if _is_declared(least / weight * MILLION, market):
        return AllergenFinding("sulphites", AllergenAnswer.HAS, _once(has))
    if _is_declared((least + most) / weight * MILLION, market):
        return AllergenFinding("sulphites", AllergenAnswer.NOT_KNOWN, _once(unknown))
    return AllergenFinding("sulphites", AllergenAnswer.HAS_NOT)


class SulphitesBrought(NamedTuple):
    """What an ingredient can bring at the most: its share of the food, and milligrams in a kilogram of that."""

    share: Fraction
    milligrams: Fraction


def sulphites_at_most(piece: SoldPiece, name: str) -> SulphitesBrought:
    """Of an ingredient by its name, where nobody knows how much it has."""
    grams = sum((one.grams for one in every_content(piece.mixture) if one.ingredient.name == name), NOTHING)
    share = grams / piece.mixture.weight
    return SulphitesBrought(share, share * MOST_SULPHITES)


def _is_declared(milligrams: Fraction, market: str) -> bool:
    if not market:
        return milligrams >= 10
    limit = sulphite_limit(market)
    return milligrams > limit.milligrams or (limit.at_the_limit and milligrams == limit.milligrams)
