"""Names that the law keeps for some breads: dated tables, by market, each with its source. No bread is refused for them, but its label may be.

Great Britain: the Bread and Flour Regulations 1998, reg. 6 (quoted at sustainweb.org, May 2025): `wholemeal` in the name of a bread where all its flour is
wholemeal. United States: 21 CFR 136.180 the same of `whole wheat`; 136.110 bread, rolls and buns of at least 62 % solids; 136.3 half a pound and
more is bread, less a roll or a bun. Nowhere is a food called free from something here: that depends on a test of it, and on the place it is made in
(Regulation (EU) 828/2014: 20 mg/kg of gluten; 21 CFR 101.91).
"""

from __future__ import annotations

import re
from fractions import Fraction

from manchet.account.mixture import by_ingredient
from manchet.account.piece import SoldPiece
from manchet.diagnostics.reports import list_of_words
from manchet.label.markets import BRITAIN, US
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class WholeFlourName(NamedTuple):
    """Words in the name of a bread that promise that all its flour is of the whole grain."""

    market: str
    valid_from: str
    source: str
    words: tuple[str, ...]


WHOLE_FLOUR_NAMES = (
    WholeFlourName(BRITAIN, "1998-07-01", "Bread and Flour Regulations 1998, reg. 6", ("wholemeal",)),
    WholeFlourName(US, "1978-01-01", "21 CFR 136.180", ("whole wheat",)),
)

LEAST_SOLIDS = Fraction(62, 100)
"""Of a bread, roll or bun in the United States: 21 CFR 136.110."""
HALF_A_POUND = Fraction(45359237, 200000)
"""Grams, from which on it is bread there, and below it a roll or a bun, when it is cooled: 21 CFR 136.3."""
_BREADS = ("bread", "loaf", "roll", "rolls", "bun", "buns")
_FLOURS = frozenset({"wheat flour", "rye flour", "other flour"})
_WHOLE = re.compile(r"\bwhole(?:meal|wheat|grain)?\b")


class Misnamed(NamedTuple):
    """A word of its names that may not stand there, and why."""

    word: str
    why: str
    source: str


_FREE = re.compile(r"\b\w+[- ]free\b(?!-\w|[- ]range)|\bfree[- ]from\b", re.IGNORECASE)
FREE_SOURCE = "Regulation (EU) 828/2014; 21 CFR 101.91"


def misnaming_of(piece: SoldPiece, market: str, *names: str) -> Misnamed | None:
    """What there is against the names of a bread in a market; the first word of them."""
    claim = next((found for name in names if (found := _FREE.search(name))), None)
    if claim is not None:
        why = "that depends on a test of the food and on the place it is made in, and no label of ours says it"
        return Misnamed(claim[0].casefold(), why, FREE_SOURCE)
    for rule in WHOLE_FLOUR_NAMES:
        word = next((one for one in rule.words for name in names if re.search(rf"\b{one}\b", name.casefold())), None)
        if rule.market == market and word is not None:
            others = tuple(
                one.ingredient.name
                for one in by_ingredient(piece.mixture).values()
                if one.ingredient.class_ in _FLOURS and not _is_whole(one.ingredient)
            )
            if others:
                return Misnamed(word, f"not all its flour is {word}: {list_of_words(others, 'and')}", rule.source)
    return None


def _is_whole(flour: Ingredient) -> bool:
    said = (flour.name, *(one.text for one in flour.listed_as))
    return any(_WHOLE.search(text.casefold()) for text in said)


def is_called_bread(called: str) -> bool:
    return any(word in re.findall(r"\w+", called.casefold()) for word in _BREADS)


def bread_or_roll(grams: Fraction) -> str:
    """What so many grams of it, cooled, are called in the United States: `bread`, or `roll`, which a bun is too."""
    return "bread" if grams >= HALF_A_POUND else "roll"


def solids_of(piece: SoldPiece) -> Fraction | None:
    """Grams in a piece that are no water; None where nobody knows of something how much water it has."""
    solids = NOTHING
    for one in by_ingredient(piece.mixture).values():
        if one.ingredient.class_ == "water":
            continue
        water = one.ingredient.composition.get("water")
        if water is None:
            if one.ingredient.class_ != "salt":
                return None
            water = NOTHING
        solids += one.grams * (100 - water) / 100
    return solids
