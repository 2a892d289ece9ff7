"""What is made, by its noun: free words of the baker, so that only what is sure is turned into the singular."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from manchet.diagnostics.suggest import fold

IRREGULAR = {
    "loaves": "loaf", "halves": "half", "knives": "knife", "leaves": "leaf", "calves": "calf",
    "brioches": "brioche", "quiches": "quiche", "sandwiches": "sandwich", "peaches": "peach",
    "pastries": "pastry", "patties": "patty", "pies": "pie", "cookies": "cookie", "brownies": "brownie",
    "smoothies": "smoothie", "calories": "calorie", "pieces": "piece",
}  # fmt: skip
"""Nouns of the bench whose plural tells nothing of their singular."""
PARTED = (" of ", " with ", " in ", " for ", " from ")
"""What follows these belongs to the noun before them: `loaves of rye`."""


def noun_for(number: Fraction, noun: str) -> str:
    """The noun as it stands after a number: `loaf` after 1, else as the file has it."""
    return singular(noun) if number == 1 else noun


def singular(noun: str) -> str:
    """`loaf` for `loaves`, `small roll` for `small rolls`; the noun as it is written where it may be no plural."""
    at = min((found for word in PARTED if (found := noun.find(word)) > 0), default=len(noun))
    head, tail = noun[:at], noun[at:]
    before, space, last = head.rpartition(" ")
    return f"{before}{space}{_one(last)}{tail}"


def _one(word: str) -> str:
    known = IRREGULAR.get(word.casefold())
    if known is not None:
        return word[0] + known[1:]
    if word.endswith(("tches", "shes", "xes", "sses")):
        return word[:-2]
    unsure = ("ies", "ves", "ches", "oes", "zes", "ss", "us", "is", "as")
    return word[:-1] if word.endswith("s") and len(word) > 3 and not word.endswith(unsure) else word


def be(name: str) -> str:
    """`are` after a name that is a plural, `Weir rolls`; `is` after any other."""
    return "is" if singular(name) == name else "are"


def pieces_of(number: int, noun: str, name: str) -> str:
    """So many of a bread, its noun said once: `20 Weir rolls`, `16 Tern loaves`, and `30 buns of Regatta plait`."""
    said = noun_for(Fraction(number), noun)
    if not noun_beside(name, noun):
        return " ".join([str(number), *name.split()[: -len(noun.split()) or None], said]).strip()
    return f"{number} {said} of {name}"


def number_beside(name: str, number: int, noun: str) -> str:
    """How many, beside the name: `14 loaves` of Ebb rye, and `20` of Weir rolls."""
    return f"{number} {noun_beside(name, noun_for(Fraction(number), noun))}".strip()


def noun_beside(name: str, noun: str) -> str:
    """The noun as it stands after a bread's name; "" where the name ends in it: `Ebb rye loaves`, and `Weir rolls`."""
    last = name.split()[-len(noun.split()) :] if noun else []
    return "" if last and same_noun(" ".join(last), noun) else noun


def same_noun(a: str, b: str) -> bool:
    """`roll` and `rolls`, `loaf` and `loaves`, `batch` and `batches` are one noun."""
    return not _stems(a).isdisjoint(_stems(b))


@lru_cache(maxsize=256)
def _stems(noun: str) -> frozenset[str]:
    """The noun as names are compared, and all that its singular may be."""
    noun = fold(noun)
    endings = (("s", ""), ("es", ""), ("ves", "f"), ("ves", "fe"), ("ies", "y"))
    turned = (noun[: -len(end)] + one for end, one in endings if noun.endswith(end) and not noun.endswith("ss"))
    return frozenset((noun, singular(noun), *turned))
