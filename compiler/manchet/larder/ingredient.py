"""What the larder knows of one ingredient."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.records import NamedTuple

FLOUR_CLASSES = frozenset({"wheat flour", "rye flour", "other flour", "starch"})
"""Classes that count towards the 100 % unless an entry or a line overrules it."""

POURED_CLASSES = frozenset(
    {"water", "liquid", "dairy", "egg", "fat", "sweetener", "yeast", "sweet-dough yeast", "culture"}
)
"""Classes whose water goes into the dough as water: all that is poured, dairy, egg, fat, syrup, yeast, culture."""

DRY_CLASSES = frozenset(
    {
        "grain", "seed", "nut", "fruit", "vegetable", "fish", "meat", "salt", "malt", "spice", "raising agent", "lye", "bread",
        "packaging", "other",
    }
)  # fmt: skip
"""Classes whose own moisture is not poured, and so is not counted as water unless they say `gives its water`.

`malt` is malt that still works on starch; roasted malts, whose enzymes are dead, are `other`, malt syrups `sweetener`.
"""

CLASSES = FLOUR_CLASSES | POURED_CLASSES | DRY_CLASSES


FACTS = ("fresh", "dried", "pasteurised", "heat-treated", "ready to eat")
"""What may be said of a thing that decides which cautions it needs."""


class Blend(NamedTuple):
    """One part of what an ingredient is made of: a name and its share of the whole by weight (exact, sums to 1)."""

    name: str
    share: Fraction
    place: Place | None = None


class Takes(NamedTuple):
    """Water that a flour takes for a dough of the usual feel, in grams per gram: one figure of the mill or the house, or
    an estimate between two."""

    low: Fraction
    high: Fraction

    @property
    def likely(self) -> Fraction:
        return (self.low + self.high) / 2


class ListedAs(NamedTuple):
    """The name in a list of ingredients. `market` is "EU", "Britain" or "US", "" for every market without a line of its own."""

    text: str
    market: str
    place: Place


class Price(NamedTuple):
    """So much money for so many grams, `date` as `2026-09-14`; "" where the day or the seller is not said."""

    amount: Fraction
    currency: str
    grams: Fraction
    date: str
    seller: str = ""
    bought: str = ""
    """The amount as the file says it: `25 kg`, `30 whole`."""
    place: Place | None = None


class Buying(NamedTuple):
    """How a thing is bought."""

    prices: tuple[Price, ...] = ()
    """The newest first; one without a day is the oldest."""
    pack: Fraction | None = None
    """Grams of the pack that it is bought in, where the price is for another amount."""
    packed_as: str = ""
    """The pack as the file says it: `25 kg`."""
    trimming: Fraction | None = None
    """The share of what is bought that is cut off before it reaches the scale."""

    @property
    def price(self) -> Price | None:
        """The one that counts."""
        return self.prices[0] if self.prices else None


NOT_BOUGHT = Buying()


class Ingredient(NamedTuple):
    """A larder entry. Composition is in grams per 100 g; a figure the larder does not have is absent, never 0."""

    name: str
    class_: str
    aliases: tuple[str, ...] = ()
    composition: Mapping[str, Fraction] = {}
    """Keys: water, protein, fat, saturates, carbohydrate, sugars, fibre, starch, salt, sodium, ash, alcohol."""
    made_of: tuple[Blend, ...] = ()
    flour: bool | None = None
    """What the entry says of counting as flour; None leaves it to the class."""
    gives_water: bool = False
    allergens: tuple[str, ...] | None = None
    """None: the larder does not know. (): none of the listed ones."""
    may_contain: tuple[str, ...] = ()
    density: Fraction | None = None
    """Grams per millilitre."""
    density_span: tuple[Fraction, Fraction] | None = None
    """Between what it lies, of a thing whose grain decides: then nobody can say what a spoon of it weighs."""
    whole: Fraction | None = None
    """Grams of one (an egg, without its shell)."""
    kept_at: Fraction | None = None
    """Degrees Celsius."""
    good_for: Fraction | None = None
    """Seconds."""
    source: str = ""
    place: Place | None = None
    takes_water: Takes | None = None
    """Of a flour."""
    buying: Buying = NOT_BOUGHT
    asked: tuple[tuple[str, str], ...] = ()
    """Allergens that nobody can tell of it without its packet, each with the reason, "" for none."""
    has_not: tuple[str, ...] = ()
    """Allergens that the entry says it does not have: `no sulphites` answers what is asked."""
    sulphites: Fraction | None = None
    """Grams per gram."""
    protein_factor: Fraction | None = None
    """By what the nitrogen in it was multiplied to give its protein; None where the entry does not say (then 6.25)."""
    listed_as: tuple[ListedAs, ...] = ()
    made_from: str = ""
    """What a lecithin, a fat or an improver comes from: `from soya`."""
    facts: frozenset[str] = frozenset()
    """Of FACTS, those that the entry states. What is not said is the worse."""
    ph: Fraction | None = None
    water_activity: Fraction | None = None
    nothing_else_known: bool = False
    """Figures that the entry does not give are not those of the built-in entry of its name."""

    @property
    def counts_as_flour(self) -> bool:
        return self.class_ in FLOUR_CLASSES if self.flour is None else self.flour


class Question(NamedTuple):
    """A name that means more than one thing: the larder asks instead of guessing."""

    name: str
    choices: tuple[str, ...]
    why: str = ""
    place: Place | None = None
    asked: Place | None = None
    """The line that names the choices."""


class Poured(NamedTuple):
    """What 1 g of an ingredient brings, in grams: flour, water (as poured), salt, sugar, fat, all exact.

    `flours` names the flours inside (a culture's, a blend's) and how much of each.
    """

    flour: Fraction
    water: Fraction
    salt: Fraction
    sugar: Fraction
    fat: Fraction
    flours: tuple[Blend, ...] = ()


NOWHERE = Place("", 0, 0, 0, 0)
"""The place of an entry that stands in no file."""


def names_of(entry: Ingredient | Question) -> tuple[str, ...]:
    """Every name an entry is found by."""
    return (entry.name, *entry.aliases) if isinstance(entry, Ingredient) else (entry.name,)


def place_of(entry: Ingredient | Question) -> Place:
    return entry.place or NOWHERE
