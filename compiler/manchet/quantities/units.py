"""The units of the kitchen, what they are worth exactly, and how a figure with its unit is read.

Base units: gram, millilitre, second, millimetre, degree Celsius, gram per millilitre. All factors are exact
fractions. Sources: the international pound and inch (1959); the US gallon of 231 cubic inches; the imperial gallon of
4.54609 l (UK Units of Measurement Regulations 1995); metric cup, tablespoon and teaspoon of 250, 15 and 5 ml (common
practice).
"""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Unit(NamedTuple):
    """`factor` turns one of it into the base unit of its dimension; 0 where a country must say (cup, gal: `factor`)."""

    name: str
    dimension: str
    factor: Fraction
    offset: Fraction = Fraction(0)
    """Degrees of this unit at 0 C (32 for F). A reading is (figure - offset) x factor."""


MASS, VOLUME, TIME, TEMPERATURE, LENGTH = "mass", "volume", "time", "temperature", "length"
PERCENT, WHOLE, SLICES, TURNS, DENSITY, CONTENT = "percent", "whole", "slices", "turns", "density", "content"

POUND = Fraction(45359237, 100000)
INCH = Fraction(254, 10)
_GALLONS = {"US": Fraction(3785411784, 10**6), "imperial": Fraction(454609, 100)}

UNITS: dict[str, Unit] = {
    unit.name: unit
    for unit in (
        Unit("g", MASS, Fraction(1)),
        Unit("kg", MASS, Fraction(1000)),
        Unit("mg", MASS, Fraction(1, 1000)),
        Unit("lb", MASS, POUND),
        Unit("oz", MASS, POUND / 16),
        Unit("ml", VOLUME, Fraction(1)),
        Unit("cl", VOLUME, Fraction(10)),
        Unit("dl", VOLUME, Fraction(100)),
        Unit("l", VOLUME, Fraction(1000)),
        Unit("gal", VOLUME, Fraction(0)),
        Unit("qt", VOLUME, Fraction(0)),
        Unit("pt", VOLUME, Fraction(0)),
        Unit("cup", VOLUME, Fraction(0)),
        Unit("floz", VOLUME, Fraction(0)),
        Unit("tbsp", VOLUME, Fraction(0)),
        Unit("tsp", VOLUME, Fraction(0)),
        Unit("d", TIME, Fraction(86400)),
        Unit("h", TIME, Fraction(3600)),
        Unit("min", TIME, Fraction(60)),
        Unit("s", TIME, Fraction(1)),
        Unit("C", TEMPERATURE, Fraction(1)),
        Unit("F", TEMPERATURE, Fraction(5, 9), Fraction(32)),
        Unit("cm", LENGTH, Fraction(10)),
        Unit("mm", LENGTH, Fraction(1)),
        Unit("inch", LENGTH, INCH),
        Unit("%", PERCENT, Fraction(1, 100)),
        Unit("whole", WHOLE, Fraction(1)),
        Unit("slices", SLICES, Fraction(1)),
        Unit("turns", TURNS, Fraction(1)),
        Unit("kg/l", DENSITY, Fraction(1)),
        Unit("g/ml", DENSITY, Fraction(1)),
        Unit("g/l", DENSITY, Fraction(1, 1000)),
        Unit("mg/kg", CONTENT, Fraction(1, 10**6)),
        Unit("g/kg", CONTENT, Fraction(1, 1000)),
    )
}

_PARTS = {
    "US": {"gal": 1, "qt": 4, "pt": 8, "cup": 16, "floz": 128, "tbsp": 256, "tsp": 768},
    "imperial": {"gal": 1, "qt": 4, "pt": 8, "floz": 160},
}
"""How many of each make a gallon. A fluid ounce is a sixteenth of an American pint and a twentieth of an imperial one."""

MEASURES: dict[str, dict[str, Fraction]] = {
    "US": {u: _GALLONS["US"] / n for u, n in _PARTS["US"].items()},
    "imperial": {u: _GALLONS["imperial"] / n for u, n in _PARTS["imperial"].items()},
    "metric": {"cup": Fraction(250), "tbsp": Fraction(15), "tsp": Fraction(5)},
}
"""Millilitres of the measures that differ from country to country. A measure a country does not have is absent:
the imperial cup and spoons were never fixed, and there is no metric gallon."""

OF_A_COUNTRY = frozenset(unit for measures in MEASURES.values() for unit in measures)

COUNTED = frozenset({"slices"})
"""Units that are a word after a number only where something is laid on or cut: `makes 24 slices` names a noun."""

SPELLINGS: dict[str, str] = {name.lower(): name for name in UNITS if name not in ("C", *COUNTED)} | {"c": "C"}
SPELLINGS |= {"cups": "cup", "inches": "inch"}  # units that are words have a plural
"""Every spelling read without a word, in lower case. The small letter `c` itself is refused: cup or Celsius?"""

LONG_FORMS: dict[str, str] = {
    long: short
    for short, longs in {
        "g": "gram grams gramme grammes gr gm gms",
        "kg": "kilo kilos kilogram kilograms kilogramme kilogrammes kgs",
        "mg": "milligram milligrams",
        "lb": "lbs pound pounds",
        "oz": "ozs ounce ounces",
        "ml": "mls cc millilitre millilitres milliliter milliliters",
        "l": "litre litres liter liters ltr",
        "gal": "gallon gallons gals",
        "qt": "quart quarts qts",
        "pt": "pint pints pts",
        "tbsp": "tablespoon tablespoons tbs tbsps",
        "tsp": "teaspoon teaspoons tsps",
        "d": "day days",
        "h": "hour hours hr hrs",
        "min": "minute minutes mins",
        "s": "second seconds sec secs",
        "C": "celsius centigrade",
        "F": "fahrenheit",
        "cm": "centimetre centimetres centimeter centimeters cms",
        "mm": "millimetre millimetres millimeter millimeters mms",
        "%": "percent pct",
        "turns": "revolutions",
    }.items()
    for long in longs.split()
}
"""Long forms, read with a remark that offers the short one."""

_STEPS = {("lb", "oz"): 16, ("kg", "g"): 1000, ("gal", "qt"): 4, ("gal", "pt"): 8, ("qt", "pt"): 2, ("l", "dl"): 10}
_STEPS |= {
    ("l", "cl"): 100,
    ("l", "ml"): 1000,
    ("dl", "cl"): 10,
    ("dl", "ml"): 100,
    ("cl", "ml"): 10,
    ("g", "mg"): 1000,
}
_STEPS |= {("d", "h"): 24, ("d", "min"): 1440, ("h", "min"): 60, ("min", "s"): 60}

COMPOUNDS = {big: tuple(small for one, small in _STEPS if one == big) for big, _ in _STEPS}
"""What may follow what in one figure: `1 lb 4 oz`, `3 l 200 ml`, `3 d 4 h`, `1 h 30 min`. Grams after pounds may not: whoever
writes both gives one weight twice."""

SMALLER_MEASURES = {
    "gal": ("cup", "floz"),
    "qt": ("cup", "floz", "tbsp"),
    "pt": ("cup", "floz", "tbsp", "tsp"),
    "cup": ("floz", "tbsp", "tsp"),
    "floz": ("tbsp", "tsp"),
    "tbsp": ("tsp",),
}
"""What may follow what of the measures whose size is a matter of the country: they are summed where the country is known."""


def is_less(figure: Fraction, small: str, big: str) -> bool:
    """Whether so many of a small measure are less than one of the big one in every country that has both: `1 cup 16 tbsp` is
    the same twice."""
    return all(figure * sizes[small] < sizes[big] for sizes in MEASURES.values() if sizes.keys() >= {small, big})


def steps_between(big: str, small: str) -> int:
    """How many of the small unit make one of the big one, for a pair of `COMPOUNDS`."""
    return _STEPS[big, small]


def factor(unit: str, measures: str = "") -> Fraction | None:
    """What one of the unit is in its base unit; None for a cup, spoon, pint … of no known country."""
    return UNITS[unit].factor or MEASURES.get(measures, {}).get(unit)


def dimension(unit: str) -> str:
    """The dimension of a unit name; "" for a bare number."""
    return UNITS[unit].dimension if unit else ""


def in_fahrenheit(celsius: Fraction, readings: int = 1) -> Fraction:
    """Celsius as Fahrenheit. A sum of so many readings brings its 32 as often; a difference (0 readings) brings none."""
    return celsius * 9 / 5 + 32 * readings
