"""What it takes to warm a thing: specific heats from composition, the heat of wetting, the cold in ice.

Heats are kJ for 1 kg and 1 C, and so also J for 1 g; temperatures Celsius. All of it is a model: what is made from it is
rounded and called an estimate.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import round_to

CHOI_OKOS = "Choi and Okos 1986: specific heat from composition"

COMPONENTS = {
    "water": (Fraction("4176.2"), Fraction("-0.090864"), Fraction("0.0054731")),
    "protein": (Fraction("2008.2"), Fraction("1.2089"), Fraction("-0.0013129")),
    "fat": (Fraction("1984.2"), Fraction("1.4733"), Fraction("-0.0048008")),
    "carbohydrate": (Fraction("1548.8"), Fraction("1.9625"), Fraction("-0.0059399")),
    "fibre": (Fraction("1845.9"), Fraction("1.8306"), Fraction("-0.0046509")),
    "ash": (Fraction("1092.6"), Fraction("1.8896"), Fraction("-0.0036817")),
}
"""J/kg K as a + b t + c t^2 (Choi and Okos 1986). Copies disagree on water and fat: 4128.9 for water's first figure, found
in some, lies 1 % under measured water; 1.4373 and 0.14733 for fat's second are misprints."""

FIXED = {"salt": Fraction("0.87"), "alcohol": Fraction("2.44")}
"""kJ/kg K of what that model leaves out: tables of chemistry, from memory."""

SIEBEL = {
    "water": Fraction("4.18"), "protein": Fraction("1.711"), "fat": Fraction("1.928"),
    "carbohydrate": Fraction("1.547"), "fibre": Fraction("1.547"), "ash": Fraction("0.908"),
}  # fmt: skip
"""kJ/kg K at no stated temperature, of Siebel's kind as Heldman prints it: to compare with."""

BENCH = Fraction(20)
"""Celsius at which specific heats are taken: they move by 3 % at most between ice water and a warm proof."""

DRY = Fraction("1.84")
"""kJ/kg K of a dry good of unknown composition: flour is 1.80 to 1.88 (Geankoplis, Transport Processes, table A.4-1)."""

PASTE = Fraction("2.8")
"""kJ/kg K of something mixed of unknown composition: dough of 60 to 70 % water is 2.7 to 2.8 by the mixing rule."""

WETTING = Fraction("15.1")
"""kJ that 1 kg of flour of 11 to 12 % moisture gives off as it is wetted: 6.5 BTU a pound (bakingbusiness.com, bakers'
dictionary, heat of hydration)."""

WETTING_MOST = Fraction("22.5")
"""kJ for 1 kg of flour by the other figure in print: 15 kJ for 1 kg of a dough of two flour and one water (Cengel and
Boles, Thermodynamics, problem 5-157)."""

BOWL = Fraction(1, 10)
"""Heat a bowl and hook take, against that of a full load of dough: 0.6 kg of steel a kg at 0.5 kJ/kg K, from the measures
of a common bowl. Our rule."""

PLAIN_WATER = Fraction(3, 5)
"""Water for 1 g of flour in the plain dough that a measured mix is taken to have been."""

LATENT = Fraction(80)
"""How many degrees its own weight of water is cooled by melting ice: 334.6 / 4.186 kJ. In Fahrenheit 144 (BTU a pound)."""

ICE = Fraction(1, 2)
"""Specific heat of ice against water: 1.96 to 2.1 over 4.19 (Geankoplis, table A.4-1)."""


def component_heat(component: str, celsius: Fraction = BENCH) -> Fraction:
    """kJ/kg K of one component between 0 and 100 C."""
    if component in FIXED:
        return FIXED[component]
    a, b, c = COMPONENTS[component]
    return (a + b * celsius + c * celsius**2) / 1000


_AT_BENCH = {name: round_to(component_heat(name), 4) for name in (*COMPONENTS, *FIXED)}

WATER = round_to(_AT_BENCH["water"], 3)


def specific_heat(ingredient: Ingredient, larder: Larder) -> Fraction:
    """kJ/kg K of an ingredient at the bench's temperature, to three decimals.

    What its composition does not account for is taken as carbohydrate. Of a blend, the sum of its parts.
    """
    return larder.remembered(_specific_heat, ingredient)


def _specific_heat(ingredient: Ingredient, larder: Larder) -> Fraction:
    if ingredient.made_of:
        parts = ((part.share, larder.ingredient(part.name)) for part in ingredient.made_of)
        heat = sum(
            (share * (DRY if known is None else specific_heat(known, larder)) for share, known in parts), Fraction()
        )
        return round_to(heat, 3)
    known = {name: grams for name, grams in ingredient.composition.items() if name in _AT_BENCH}
    if not known:
        return WATER if ingredient.class_ == "water" else DRY
    rest = max(100 - sum(known.values()), Fraction())
    heat = sum((grams * _AT_BENCH[name] for name, grams in known.items()), rest * _AT_BENCH["carbohydrate"])
    return round_to(heat / 100, 3)
