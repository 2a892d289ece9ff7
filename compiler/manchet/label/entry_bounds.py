"""What 100 g of an ingredient hold, as a label counts it: each figure known, or between two.

Unknown is no nought and no end: it lies between nothing and what the known figures leave of 100 g, and closer where the built-in
entries of its class are known: between the least and the most of them, a quarter wider. The span only bounds; it is never printed.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import cache

from manchet.label.conventions import ENERGY, NITROGEN, SALT_OF_SODIUM, SODIUM_OF_TABLE_SALT
from manchet.label.span import NONE_OF_IT, LowHigh, exactly
from manchet.larder.ingredient import Ingredient, names_of
from manchet.larder.names import key
from manchet.records import NamedTuple

NOTHING = Fraction(0)
HUNDRED = Fraction(100)

WHOLES = ("water", "protein", "fat", "carbohydrate", "fibre", "ash", "alcohol", "acid", "polyols")
PARTS_OF = {"saturates": "fat", "sugars": "carbohydrate"}
HELD = ("protein", "fat", "saturates", "carbohydrate", "sugars", "fibre", "sodium", "alcohol", "acid", "polyols")
"""What a panel needs of an entry, grams in 100 g."""

WIDER = Fraction(1, 4)
NOT_FOOD = frozenset({"water", "salt", "lye", "packaging"})
"""Classes of which nothing is unknown but what their entries give: there is no fat in salt."""
RARE = frozenset({"alcohol", "acid", "polyols"})
"""Said where there is some; an entry that says nothing of them has none to speak of. Our rule."""
MOST_SODIUM = Fraction(SODIUM_OF_TABLE_SALT * 100)
FACTORS = LowHigh(Fraction("5.7"), NITROGEN)
"""LowHigh these lies a nitrogen factor that a table of plants and dairy does not give."""


class Bounds(NamedTuple):
    """Of 100 g. `held` has a span for each of HELD, protein and carbohydrate as the table has them."""

    held: Mapping[str, LowHigh]
    factor: LowHigh
    """By what the protein of the table was worked out from its nitrogen."""
    missing: tuple[str, ...]
    """The figures that the entry does not give."""
    left: LowHigh
    """Grams that no known figure accounts for: what all that is missing can be together."""

    @property
    def protein_by_nitrogen(self) -> LowHigh:
        """Protein as nitrogen x 6.25."""
        protein = self.held["protein"]
        return LowHigh(protein.low * NITROGEN / self.factor.high, protein.high * NITROGEN / self.factor.low)

    @property
    def carbohydrate_by_difference(self) -> LowHigh:
        """Carbohydrate, no less than its sugars, less what protein by 6.25 is more than the table's: the table's is what all else leaves of 100 g."""
        protein, carbohydrate = self.held["protein"], self.held["carbohydrate"]
        more = LowHigh(protein.low * (NITROGEN / self.factor.high - 1), protein.high * (NITROGEN / self.factor.low - 1))
        sugars = self.held["sugars"]  # of which they are a part
        return LowHigh(max(carbohydrate.low - more.high, sugars.low), max(carbohydrate.high - more.low, sugars.high))


@cache
def _by_class(class_: str) -> Mapping[str, LowHigh]:
    """Of the built-in entries of a class that are known, least and most, a quarter wider."""
    found: dict[str, list[Fraction]] = {}
    for entry in _built_in(class_):
        for name, figure in _known(entry).items():
            if name == "sodium" and _is_raised(entry):  # its soda bounds no flour that is only ground
                continue
            found.setdefault(name, []).append(figure)
    return {name: _wider(LowHigh(min(known), max(known))) for name, known in found.items() if len(known) > 1}


def _is_raised(entry: Ingredient) -> bool:
    return any(key(name).startswith(("self raising", "self rising")) for name in names_of(entry))


def _wider(span: LowHigh) -> LowHigh:
    more = span.width * WIDER / 2
    return LowHigh(max(span.low - more, NOTHING), min(span.high + more, HUNDRED))


def _known(entry: Ingredient) -> dict[str, Fraction]:
    """The figures that it gives, grams in 100 g; salt as its sodium, which is in table salt and salted things by another rule."""
    known = {name: entry.composition[name] for name in (*WHOLES, *PARTS_OF) if name in entry.composition}
    sodium = entry.composition.get("sodium")
    salt = entry.composition.get("salt")
    if sodium is not None or salt is not None:
        as_salt = (
            NOTHING
            if salt is None
            else salt * SODIUM_OF_TABLE_SALT
            if entry.class_ == "salt"
            else salt / SALT_OF_SODIUM
        )
        known["sodium"] = max(sodium or NOTHING, as_salt)
    if (
        "carbohydrate" in known and "sugars" in known
    ):  # milk's by difference is a little less than the sugars measured in it
        known["carbohydrate"] = max(known["carbohydrate"], known["sugars"])
    if "starch" in entry.composition and "carbohydrate" not in known and "sugars" in known:
        known["carbohydrate"] = known["sugars"] + entry.composition["starch"]
    return known


def bounds_of(entry: Ingredient) -> Bounds:
    """See the module."""
    known = _known(entry)
    class_ = _by_class(entry.class_)
    nothing_more = entry.class_ in NOT_FOOD
    accounted = sum((known[name] for name in WHOLES if name in known), NOTHING)
    if entry.class_ in ("salt", "lye"):
        accounted = HUNDRED
    rest = max(HUNDRED - accounted, NOTHING)
    held: dict[str, LowHigh] = {}
    missing: list[str] = []
    for name in HELD:
        if name in known:
            held[name] = exactly(known[name])
        elif name in RARE or (nothing_more and name != "sodium") or entry.class_ == "water":
            held[name] = NONE_OF_IT
        else:
            missing.append(name)
            most = held[PARTS_OF[name]].high if name in PARTS_OF else MOST_SODIUM if name == "sodium" else rest
            span = LowHigh(NOTHING, most)
            bounded = name in class_ and not (name == "sodium" and _is_raised(entry))
            held[name] = class_[name].within(span) if bounded else span
    unknown_wholes = [name for name in WHOLES if name not in known and name not in RARE and name != "ash"]
    left = LowHigh(NOTHING, rest) if unknown_wholes and not nothing_more else NONE_OF_IT
    factor = FACTORS if entry.protein_factor is None else exactly(entry.protein_factor)
    return Bounds(held, factor, tuple(missing), left)


def energy_of(entry: Ingredient, market: str, unit: str) -> LowHigh:
    """What 100 g are worth in `kj` or `kcal`, bounded for the entry as a whole and not by the worst of each of its figures: what is
    known at its factors, and between nothing and fat for each gram of what is not; closer by its class.

    Protein and carbohydrate are worth the same, so that no nitrogen factor moves it.
    """
    worth, left = _known_energy(entry, market, unit)
    if not left:
        return exactly(worth)
    span = LowHigh(worth, worth + left * factors_of(market, unit)["fat"])
    of_class = _class_energy(entry.class_, market, unit)
    return span if of_class is None else of_class.within(span)


def factors_of(market: str, unit: str) -> Mapping[str, Fraction]:
    return ENERGY[market].kj if unit == "kj" else ENERGY[market].kcal


def _known_energy(entry: Ingredient, market: str, unit: str) -> tuple[Fraction, Fraction]:
    """What its known figures are worth, and grams of which nobody knows what they are."""
    known = _known(entry)
    worth = sum((known[name] * factor for name, factor in factors_of(market, unit).items() if name in known), NOTHING)
    return worth, bounds_of(entry).left.high


@cache
def _class_energy(class_: str, market: str, unit: str) -> LowHigh | None:
    """Of the built-in entries of a class that leave nothing open, the least and the most, a quarter wider."""
    found = [
        worth
        for entry in _built_in(class_)
        for worth, left in [_known_energy(entry, market, unit)]
        if not left and entry.composition
    ]
    if len(found) < 2:
        return None
    span = LowHigh(min(found), max(found))
    more = span.width * WIDER / 2
    return LowHigh(max(span.low - more, NOTHING), span.high + more)


def _built_in(class_: str) -> list[Ingredient]:
    from manchet.larder.stock import built_in_entries

    entries = (entry for entry in built_in_entries() if isinstance(entry, Ingredient))
    return [entry for entry in entries if entry.class_ == class_ and not entry.made_of]
