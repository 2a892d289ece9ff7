"""Spoons, cups and oven marks beside the figures, for a kitchen without a fine scale or a probe."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.formula.model import Range
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import decimal, round_to
from manchet.quantities.units import MEASURES, in_fahrenheit
from manchet.records import NamedTuple
from manchet.sheets.page.measures import NBSP, Measures

FAN_LESS = Fraction(20)
"""Degrees Celsius less in an oven with a fan (common practice)."""

FAN_LESS_OF = {"C": FAN_LESS, "F": Fraction(25)}
"""The same as each dial has it: 20 C, 25 F (common practice)."""

HOTTEST = Fraction(250)
"""Where most domestic ovens end (common practice)."""

_FIRST_MARK, _MARK = Fraction(275), Fraction(25)
"""Gas mark 1 is 275 F, and each mark 25 F more (British domestic ovens; common practice)."""

_EIGHTHS = {0: "", 1: "⅛", 2: "¼", 3: "⅜", 4: "½", 5: "⅝", 6: "¾", 7: "⅞"}


class OvenMarks(NamedTuple):
    """One heat as four ovens say it: in the degrees of the house without and with a fan, in the other, in gas marks."""

    oven: str
    fan: str
    other: str
    gas: str


class Spoons(NamedTuple):
    """`3¾ cups`, and with which density that was reckoned, "" for what is counted."""

    said: str
    density: str = ""


NO_SPOONS = Spoons("")


def spoons(grams: Fraction, ingredient: Ingredient | None, m: Measures, country: str) -> Spoons:
    """`3¾ cups`, `2` of what is counted; nothing where the larder has no density."""
    if ingredient is not None and ingredient.whole:
        halves = round_to(grams / ingredient.whole * 2, 0)
        whole, half = divmod(int(halves), 2)
        return Spoons(m.words.say("handout.whole", f"{whole or ''}{'½' if half else ''}")) if halves else NO_SPOONS
    density = _density(ingredient)
    measures = MEASURES.get(country, {})
    if density is None or "tsp" not in measures or grams <= 0:
        return NO_SPOONS
    millilitres = grams / density
    unit, step = "cup", Fraction(1, 4)
    if millilitres < measures["cup"] / 4:
        unit, step = ("tbsp", Fraction(1, 2)) if millilitres >= measures["tbsp"] else ("tsp", Fraction(1, 8))
    number = round_to(millilitres / measures[unit] / step, 0) * step
    said = m.words.say("handout.density", decimal(density, 2))
    if not number:
        return Spoons(m.words["handout.pinch"], said)
    whole, part = divmod(number, 1)
    name = m.words["handout.cups" if unit == "cup" and number > 1 else "handout." + unit]
    return Spoons(f"{whole or ''}{_EIGHTHS[int(part * 8)]}{NBSP}{name}", said)


def _density(ingredient: Ingredient | None) -> Fraction | None:
    if ingredient is None:
        return None
    return Fraction(1) if ingredient.class_ == "water" else ingredient.density


def oven_marks(celsius: Range, m: Measures) -> OvenMarks:
    """The heat of a bake for ovens with and without a fan, the degrees of the house first, and gas marks."""
    own = m.house.degrees
    other = {"C": "F", "F": "C"}[own]
    return OvenMarks(
        _dial(celsius, own, m),
        _dial(celsius, own, m, FAN_LESS_OF[own]),
        _dial(celsius, other, m),
        gas_mark(celsius.likely),
    )


def _dial(celsius: Range, degrees: str, m: Measures, less: Fraction = Fraction(0)) -> str:
    """As a dial is set: to the nearest five, without its unit."""
    turned = _each(celsius, lambda c: _five((in_fahrenheit(c) if degrees == "F" else c) - less))
    return m.plain(turned, 0)


def gas_mark(celsius: Fraction) -> str:
    """The nearest gas mark: 230 C is 8, 180 C is 4, 120 C is ½."""
    mark = int(round_to((in_fahrenheit(celsius) - _FIRST_MARK) / _MARK, 0)) + 1
    if mark >= 1:
        return str(min(mark, 10))
    return "½" if mark == 0 else "¼"


def _five(degrees: Fraction) -> Fraction:
    return round_to(degrees / 5, 0) * 5


def _each(ends: Range, turn: Callable[[Fraction], Fraction]) -> Range:
    return Range(*(None if end is None else turn(end) for end in ends))
