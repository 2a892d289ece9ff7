"""Whose law a label keeps, and what that law lists: dated tables, each with its source. Another year is another row.

Read through secondary pages where the source says so; laws move, and differ by place.
"""

from __future__ import annotations

from manchet.kitchen.model import Kitchen
from manchet.larder.allergens import ALLERGENS
from manchet.records import NamedTuple

EU, BRITAIN, US = "EU", "Britain", "US"
MARKETS = (EU, BRITAIN, US)


def markets_of(kitchen: Kitchen) -> tuple[str, ...]:
    """The markets that a kitchen sells in; the EU's where it does not say."""
    return kitchen.selling.markets or (EU,)


class AllergenList(NamedTuple):
    """The allergens that a market has declared, by the larder's words, and what some of them are called there."""

    market: str
    valid_from: str
    source: str
    words: tuple[str, ...]
    called: tuple[tuple[str, str], ...] = ()

    def name(self, word: str) -> str:
        return dict(self.called).get(word, word)


_FOURTEEN = tuple(word for word in ALLERGENS if word not in ("gluten", "pine nut"))
"""`gluten` is no name of its own: the cereal is named. Pine nuts are a tree nut in the United States only."""

_US_WORDS = (
    "wheat", "crustaceans", "egg", "fish", "peanut", "soya", "milk", "almond", "hazelnut", "walnut", "cashew", "pecan",
    "brazil nut", "pistachio", "macadamia", "pine nut", "sesame", "sulphites",
)  # fmt: skip

ALLERGEN_LISTS = (
    AllergenList(EU, "2014-12-13", "Regulation (EU) 1169/2011, Annex II", _FOURTEEN),
    AllergenList(BRITAIN, "2021-01-01", "Regulation (EU) 1169/2011 as kept in Great Britain, Annex II", _FOURTEEN),
    AllergenList(
        US,
        "2025-01-06",
        "FD&C Act 201(qq), sesame by the FASTER Act from 2023-01-01; tree nuts as FDA, Q&A on food allergens, edition 5, "
        "January 2025; sulphites 21 CFR 130.9",
        _US_WORDS,
        (("soya", "soy"), ("sulphites", "sulfites"), ("crustaceans", "crustacean shellfish")),
    ),
)
"""Of a market the last row is in force. Barley, rye, oats, celery, mustard, lupin and molluscs are none in the United States;
coconut and chestnut are in neither list."""


class SulphiteLimit(NamedTuple):
    """Milligrams of sulphur dioxide in a kilogram of the food as it is sold, from which sulphites are declared."""

    market: str
    valid_from: str
    source: str
    milligrams: int
    at_the_limit: bool
    """Declared at the limit too, and not only above it."""


SULPHITE_LIMITS = (
    SulphiteLimit(EU, "2014-12-13", "Regulation (EU) 1169/2011, Annex II, no. 12: above 10 mg/kg", 10, False),
    SulphiteLimit(
        BRITAIN, "2021-01-01", "Regulation (EU) 1169/2011 as kept in Great Britain, Annex II, no. 12", 10, False
    ),
    SulphiteLimit(US, "1987-01-09", "21 CFR 130.9: 10 ppm or more", 10, True),
)

MOST_SULPHITES = 2000
"""Milligrams in a kilogram that nothing sold to a bakery may pass: dried apricots, peaches, grapes, prunes and figs (Regulation (EC)
1333/2008, Annex II, 04.2.1; from memory)."""


def allergen_list(market: str) -> AllergenList:
    return [row for row in ALLERGEN_LISTS if row.market == market][-1]


def sulphite_limit(market: str) -> SulphiteLimit:
    return [row for row in SULPHITE_LIMITS if row.market == market][-1]
