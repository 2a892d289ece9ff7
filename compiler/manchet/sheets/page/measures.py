"""Figures in the house's own units, as text: weights as its scale shows them, times, temperatures, lengths, per cent."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from fractions import Fraction

from manchet.batch.scales import System
from manchet.formula.model import Range
from manchet.quantities import printing
from manchet.quantities.units import INCH, POUND, in_fahrenheit
from manchet.records import NamedTuple
from manchet.sheets.page.house import House
from manchet.sheets.page.words import Words

OUNCE = POUND / 16
LIGHT = 8 * OUNCE
"""Below this a quarter of an ounce is too much of a weight to round it to."""
BOTH = "both"
"""Units of a handout for a house of ounces: the grams, and the ounces beside them."""
FLUID_OUNCE = Fraction(295735295625, 10**10)
"""Millilitres of a US one, exact: 128 of them are a gallon of 231 cubic inches (NIST Handbook 44, appendix C)."""
HOUR, DAY = 3600, 86400
NBSP = "\N{NO-BREAK SPACE}"
"""Between a figure and its unit: they never part at the end of a line."""
MINUS = "\N{MINUS SIGN}"
_QUARTERS = {0: "", 1: "¼", 2: "½", 3: "¾"}
_EIGHTHS = ("", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞")
_SPOONS = {"US": Fraction(492892, 100000), "metric": Fraction(5)}
"""Millilitres of a teaspoon: a sixth of a US fluid ounce (rounded), and the metric one."""


class Weight(NamedTuple):
    figure: str
    unit: str

    def __str__(self) -> str:
        return f"{self.figure}{NBSP}{self.unit}"


class Measures(NamedTuple):
    """The printers of one house. Every method takes exact figures in base units and gives text."""

    house: House
    words: Words

    @property
    def system(self) -> System:
        return self.house.system

    @property
    def in_inches(self) -> bool:
        return self.house.units in ("US", BOTH) or self.house.lengths == "inch"

    # ---- weights

    def weight(self, grams: Fraction, step: Fraction = Fraction(1), in_kg: bool = False) -> Weight:
        """A weight with the digits that a scale reading to `step` grams shows, and no more."""
        if self.house.units == "US":
            return self._pounds(grams, step)
        if in_kg:
            return Weight(_figure(grams / 1000, _places(step / 1000), fixed=True), self.words["units.kg"])
        return self.in_grams(grams, step)

    def in_grams(self, grams: Fraction, step: Fraction) -> Weight:
        """The same in grams in any house, as a fine scale shows it: `156 g`, `22.4 g`, `1.5 g`."""
        return Weight(_figure(grams, printing.telling(grams, _places(step)), fixed=True), self.words["units.g"])

    def _pounds(self, grams: Fraction, step: Fraction) -> Weight:
        if step < OUNCE / 4:
            return Weight(_figure(grams / OUNCE, 2, fixed=True), self.words["units.oz"])
        quarters = int(printing.round_to(grams / OUNCE * 4, 0))
        pounds, left = divmod(quarters, 64)
        whole, quarter = divmod(left, 4)
        ounces = f"{whole if whole or not quarter else ''}{_QUARTERS[quarter]}"
        if not pounds:
            return Weight(ounces, self.words["units.oz"])
        if not left:
            return Weight(f"{pounds:,}", self.words["units.lb"])
        return Weight(f"{pounds:,}{NBSP}{self.words['units.lb']} {ounces}", self.words["units.oz"])

    def mass(self, grams: Fraction) -> str:
        """A weight that is spoken of, not weighed: `900 g`, `12.79 kg`, `28 lb 3 oz`."""
        if self.house.units == "US":
            return str(self._pounds(grams, OUNCE / 4 if grams >= OUNCE else OUNCE / 100))
        if grams >= 10000:
            return f"{_figure(grams / 1000, 2)}{NBSP}{self.words['units.kg']}"
        return f"{_figure(grams, printing.telling(grams, 0 if grams >= 100 else 1))}{NBSP}{self.words['units.g']}"

    def about(self, grams: Fraction) -> str:
        """A weight that can only be about right, such as a baked loaf's: to 5 g from 100 g up, to 10 g from 500 g."""
        if grams < 20 or self.house.units == "US":
            return self.mass(grams)
        step = 10 if grams >= 500 else 5 if grams >= 100 else 1
        return self.mass(printing.round_to(grams / step, 0) * step)

    def grams(self, grams: Fraction) -> str:
        """Grams in any house: beside spoons, in a dilution."""
        return f"{_figure(grams, printing.telling(grams, 0 if grams >= 100 else 1))}{NBSP}{self.words['units.g']}"

    def ounces(self, grams: Fraction) -> str:
        """`1 lb 4¼ oz`, to stand beside grams where both are asked for; else "", and for less than an ounce, which is spooned."""
        return str(self._pounds(grams, OUNCE / 4)) if self.house.units == BOTH and grams >= OUNCE else ""

    def with_ounces(self, grams: Fraction) -> str:
        """`850 g`, and where ounces are asked for too `850 g (1 lb 14 oz)`."""
        beside = self.ounces(grams)
        return f"{self.mass(grams)} ({beside})" if beside else self.mass(grams)

    def small_grams(self, grams: Fraction, step: Fraction) -> str:
        """Grams in any house, with the digits of `step`: `0.44 g`, `1.20 g`."""
        return f"{_figure(grams, _places(step), fixed=True)}{NBSP}{self.words['units.g']}"

    def flour(self, grams: Fraction) -> str:
        """Flour in whole grams, or ounces: `1,483 g`."""
        return str(self.weight(grams, OUNCE / 4 if self.house.units == "US" else Fraction(1)))

    def piece(self, grams: Fraction) -> Weight:
        """What a piece is weighed off at; under half a pound in grams, as on a fine scale, with the ounces beside."""
        if self.house.units == "US" and grams < LIGHT:
            figure, _, unit = self.grams(grams).rpartition(NBSP)
            return Weight(figure, self.words.say("units.with_ounces", unit, str(self.weight(grams, OUNCE / 100))))
        step = Fraction(1) if grams >= 50 else Fraction(1, 10)
        return self.weight(grams, OUNCE / 4 if self.house.units == "US" else step)

    def each(self, grams: Fraction) -> str:
        """The weight of one piece, spoken of: as it is weighed off where ounces are too coarse, else like any weight."""
        light = self.house.units == "US" and grams < LIGHT
        return str(self.piece(grams)) if light else self.mass(grams)

    def volume(self, millilitres: Fraction) -> str:
        """What a tin holds, spoken of: to 10 ml."""
        return f"{_figure(printing.round_to(millilitres / 10, 0) * 10, 0)}{NBSP}{self.words['units.ml']}"

    def poured(self, millilitres: Fraction) -> str:
        """Water poured out of a jug: to a millilitre, in a house of ounces to a quarter of a fluid one."""
        if self.house.units != "US":
            return f"{_figure(millilitres, 0)}{NBSP}{self.words['units.ml']}"
        whole, quarter = divmod(int(printing.round_to(millilitres / FLUID_OUNCE * 4, 0)), 4)
        return f"{whole if whole or not quarter else ''}{_QUARTERS[quarter]}{NBSP}{self.words['units.fl_oz']}"

    def weight_unit(self) -> str:
        """The unit alone, for a box."""
        return self.words["units.oz" if self.house.units == "US" else "units.g"]

    def spoons(self, grams: Fraction, density: Fraction | None, country: str) -> str:
        """About how many spoons that is, to the quarter; "" where the larder or the kitchen does not say, or for a cupful."""
        if density is None or country not in _SPOONS:
            return ""
        quarters = int(printing.round_to(grams / density / _SPOONS[country] * 4, 0))
        if not 0 < quarters <= 36:
            return ""
        whole, quarter = divmod(quarters, 4)
        unit = "tsp"
        if quarters >= 12 and quarters % 6 == 0:
            halves = quarters // 6
            whole, quarter, unit = halves // 2, 2 * (halves % 2), "tbsp"
        return self.words.say("units.spoons", f"{whole or ''}{_QUARTERS[quarter]}{NBSP}{self.words['units.' + unit]}")

    def percent(self, share: Fraction) -> str:
        """A share of 1 as per cent: two decimals at most, three below a tenth of one."""
        figure = share * 100
        places = printing.telling(figure, 2 if figure >= Fraction(1, 10) else 3)
        return f"{_figure(figure, places)}{NBSP}{self.words['units.percent']}"

    def per_cents(self, shares: Range) -> str:
        """A share of 1, or from one to another, in whole per cents: `75 %`, `70–80 %`."""
        return self._range(shares, lambda share: share * 100, self.words["units.percent"], 0)

    def percents_apart(self, share: Fraction, other: Fraction) -> tuple[str, str]:
        """Two shares side by side, with as many more decimals as it takes to tell them apart."""
        first, second = self.percent(share), self.percent(other)
        places = 3
        while share != other and first == second and places <= printing.FINEST:
            first, second = (f"{_figure(s * 100, places)}{NBSP}{self.words['units.percent']}" for s in (share, other))
            places += 1
        return first, second

    def worked_out(self, share: Fraction) -> str:
        """A per cent that nobody wrote, but follows: to a tenth from ten up, where more would only look exact."""
        return self.percent(printing.round_to(share, 3)) if share >= Fraction(1, 10) else self.percent(share)

    def part(self, share: Fraction) -> str:
        """Of how much one thing is in a preparation, to tell by: whole per cents from ten up, a tenth below (lye 3.5 %)."""
        places = 2 if share >= Fraction(1, 10) else 3 if share >= Fraction(1, 1000) else 5
        return self.percent(printing.round_to(share, places))

    # ---- times

    def time(self, seconds: Range) -> str:
        """`3 min`, `12–15 h`, `60–90 min`, `at least 24 h`: the unit a baker would say it in."""
        ends = [end for end in seconds if end is not None]
        if all(end % DAY == 0 and end >= 2 * DAY for end in ends):
            return self._range(seconds, lambda x: x / DAY, self.words["units.d"])
        if all(end % HOUR == 0 for end in ends) and max(ends) >= 2 * HOUR:
            return self._range(seconds, lambda x: x / HOUR, self.words["units.h"])
        one_unit = len(set(ends)) > 1 and min(ends) < 2 * HOUR
        if all(end % 60 == 0 for end in ends) and (one_unit or max(ends) <= 2 * HOUR):
            return self._range(seconds, lambda x: x / 60, self.words["units.min"])
        if max(ends) < 120:
            return self._range(seconds, lambda x: x, self.words["units.s"])
        return self._ends(seconds, self.duration)

    def hours(self, seconds: Range) -> str:
        """`1 h 50 min`, `2–3 h`: beside times of two hours and more, where `110 min` would be another notation."""
        if all(end is None or end % HOUR == 0 for end in seconds):
            return self._range(seconds, lambda x: x / HOUR, self.words["units.h"])
        return self._ends(seconds, lambda end: self._hours_and_minutes(end, HOUR))

    def duration(self, seconds: Fraction) -> str:
        """`1 h 20 min`, `40 min`, `2 min 30 s`, `90 s`."""
        if seconds < 120 and seconds % 60:
            return f"{_figure(seconds, 0)}{NBSP}{self.words['units.s']}"
        return self._hours_and_minutes(seconds, 2 * HOUR)

    def _hours_and_minutes(self, seconds: Fraction, from_here: int) -> str:
        """In hours from so many seconds on."""
        minutes, over = divmod(seconds, 60)
        hours = minutes // 60 if seconds >= from_here else 0
        parts = [(Fraction(hours), "h"), (Fraction(minutes - hours * 60), "min"), (over * (not hours), "s")]
        said = [f"{_figure(n, 0)}{NBSP}{self.words['units.' + u]}" for n, u in parts if n]
        return " ".join(said) or f"0{NBSP}{self.words['units.min']}"

    def clock(self, moment: datetime) -> str:
        return f"{moment:%H:%M}"

    def day(self, moment: datetime) -> str:
        """`Thursday 26 Nov`: weekday and date, without asking the machine's locale."""
        days, months = self.words.several("days.names"), self.words.several("days.months")
        return f"{days[moment.weekday()]} {moment.day} {months[moment.month - 1]}"

    # ---- temperatures, lengths and plain figures

    def degrees(self, celsius: Range) -> str:
        if self.house.degrees == "F":
            return self._range(celsius, in_fahrenheit, self.words["units.F"], 0)
        return self._range(celsius, _whole_if_converted, self.words["units.C"], 1)

    def oven(self, celsius: Range) -> str:
        """As an oven is set: in Fahrenheit to the nearest 5, from 250 up; in Celsius too, where the file says Fahrenheit."""
        hot = min(end for end in celsius if end is not None) >= 121
        if (
            self.house.degrees != "F"
            and hot
            and any(end != _whole_if_converted(end) for end in celsius if end is not None)
        ):
            return self.degrees(Range(*(None if end is None else _nearest_five(end) for end in celsius)))
        if self.house.degrees == "F" and hot:
            fives = Range(*(None if end is None else _nearest_five(in_fahrenheit(end)) for end in celsius))
            return self._range(fives, lambda x: x, self.words["units.F"], 0)
        return self.degrees(celsius)

    def reading(self, celsius: Fraction) -> Fraction:
        """A temperature as the house's thermometer has it, exact."""
        return in_fahrenheit(celsius) if self.house.degrees == "F" else celsius

    def degree(self) -> str:
        """The unit alone, for a box."""
        return self.words["units." + self.house.degrees]

    def length(self, millimetres: Range) -> str:
        if self.in_inches:
            return f"{self._ends(millimetres, lambda x: _eighths(x / INCH))}{NBSP}{self.words['units.inch']}"
        ends = [end for end in millimetres if end is not None]
        return self._range(millimetres, lambda x: x, self.words["units.mm"], 0 if min(ends) >= 10 else 1)

    def plain(self, figure: Range, places: int = 2) -> str:
        return self._range(figure, lambda x: x, "", places)

    # ---- ranges

    def _range(self, ends: Range, turn: Callable[[Fraction], Fraction], unit: str, places: int = 1) -> str:
        said = self._ends(ends, lambda x: _figure(turn(x), places))
        return f"{said}{NBSP}{unit}" if unit else said

    def _ends(self, ends: Range, say: Callable[[Fraction], str]) -> str:
        low, high = ends
        if low is None:
            return self.words.say("units.at_most", say(high)) if high is not None else ""
        if high is None:
            return self.words.say("units.at_least", say(low))
        first, last = say(low), say(high)
        return first if first == last else self.words.say("units.range", first, last)


def _figure(value: Fraction, places: int, fixed: bool = False) -> str:
    """A figure with at most (or exactly) so many decimals, a comma at the thousands, and a minus sign that is no hyphen."""
    whole, dot, rest = printing.decimal(value, places, places if fixed else 0).partition(".")
    sign, digits = (MINUS, whole[1:]) if whole.startswith("-") else ("", whole)
    return f"{sign}{int(digits):,}{dot}{rest}"


def _eighths(inches: Fraction) -> str:
    """`2⅜`, as a ruler has them; two decimals of what is too thin for a ruler."""
    whole, part = divmod(int(printing.round_to(inches * 8, 0)), 8)
    return f"{whole or ''}{_EIGHTHS[part]}" if whole or part else _figure(inches, 2)


def _whole_if_converted(celsius: Fraction) -> Fraction:
    """A figure with a tenth at most as it is written; what only comes out of Fahrenheit to the whole degree."""
    return celsius if (celsius * 10).denominator == 1 else printing.round_to(celsius, 0)


def _nearest_five(figure: Fraction) -> Fraction:
    return printing.round_to(figure / 5, 0) * 5


def _places(step: Fraction) -> int:
    """How many decimals a scale that reads to `step` shows."""
    places = 0
    while places < 4 and (step * 10**places) % 1:
        places += 1
    return places
