"""How a nutrition declaration is worked out, rounded and allowed to err, by market: dated tables, each with its source.

EU and Britain: Regulation (EU) 1169/2011, Annex I (protein is nitrogen x 6.25, salt is sodium x 2.5, carbohydrate is without fibre),
Annex XIV (factors), Annex XV (order); rounding and tolerances by the Commission's guidance of December 2012, which is no law (its
table from memory). United States: 21 CFR 101.9(c).
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.label.markets import BRITAIN, EU, US
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple

NITROGEN = Fraction("6.25")
SALT_OF_SODIUM = Fraction("2.5")
SODIUM_OF_TABLE_SALT = Fraction("39.34") / 100
"""Of sodium chloride, 22.990 in 58.443 by its formula weights: 100 g of table salt are 98.3 g of `salt` by the law's factor."""

PARTS = ("fat", "saturates", "carbohydrate", "sugars", "fibre", "protein", "salt")
"""The lines of a panel below energy, in the order of Annex XV."""


class EnergyFactors(NamedTuple):
    """What a gram is worth, in kilojoules and in kilocalories: two sums, neither worked out from the other."""

    market: str
    valid_from: str
    source: str
    kj: Mapping[str, Fraction]
    kcal: Mapping[str, Fraction]


_EU_KJ = {
    "carbohydrate": Fraction(17), "protein": Fraction(17), "fat": Fraction(37), "fibre": Fraction(8), "alcohol": Fraction(29),
    "acid": Fraction(13), "polyols": Fraction(10),
}  # fmt: skip
_EU_KCAL = {
    "carbohydrate": Fraction(4), "protein": Fraction(4), "fat": Fraction(9), "fibre": Fraction(2), "alcohol": Fraction(7),
    "acid": Fraction(3), "polyols": Fraction(24, 10),
}  # fmt: skip
_US_KCAL = {**_EU_KCAL, "fibre": Fraction(4)}
"""4-4-9, on all carbohydrate with its fibre: 21 CFR 101.9(c)(1)(i)(B)."""

ENERGY = {
    EU: EnergyFactors(EU, "2014-12-13", "Regulation (EU) 1169/2011, Annex XIV", _EU_KJ, _EU_KCAL),
    BRITAIN: EnergyFactors(
        BRITAIN, "2021-01-01", "Regulation (EU) 1169/2011 as kept in Great Britain, Annex XIV", _EU_KJ, _EU_KCAL
    ),
    US: EnergyFactors(
        US, "2016-07-26", "21 CFR 101.9(c)(1)(i)(B): 4, 4 and 9", {**_EU_KJ, "fibre": Fraction(17)}, _US_KCAL
    ),
}


# ---- rounding ---------------------------------------------------------------------------------------


def eu_text(line: str, value: Fraction) -> str:
    """A figure per 100 g as the guidance of December 2012 rounds it, halves up. A threshold is of the figure as it is, before it is
    rounded: 9.95 g prints `10.0`."""
    if not value:
        return "0"
    if line == "energy":
        return _fixed(value, 0)
    if line == "salt":
        if value <= Fraction("0.0125"):
            return "<0.01"
        return _fixed(value, 1 if value >= 1 else 2)
    least = Fraction(1, 10) if line == "saturates" else Fraction(1, 2)
    if value <= least:
        return f"<{'0.1' if line == 'saturates' else '0.5'}"
    return _fixed(value, 0 if value >= 10 else 1)


def us_text(line: str, value: Fraction) -> str:
    """A figure per serving as 21 CFR 101.9(c) rounds it: calories, grams, of sodium and cholesterol milligrams."""
    match line:
        case "calories":
            return "0" if value < 5 else _to_nearest(value, 5 if value <= 50 else 10)
        case "fat" | "saturates":
            if value < Fraction(1, 2):
                return "0"
            return _fixed(_nearest(value, Fraction(1, 2)), 1).removesuffix(".0") if value < 5 else _to_nearest(value, 1)
        case "sodium":
            return "0" if value < 5 else _to_nearest(value, 5 if value <= 140 else 10)
        case "cholesterol":
            if value < 2:
                return "0"
            return "less than 5 mg" if value <= 5 else _to_nearest(value, 5)
        case _:
            if value < Fraction(1, 2):
                return "0"
            return "less than 1 g" if value < 1 else _to_nearest(value, 1)


def _to_nearest(value: Fraction, step: int) -> str:
    return _fixed(_nearest(value, Fraction(step)), 0)


def _nearest(value: Fraction, step: Fraction) -> Fraction:
    return round_to(value / step, 0) * step


def _fixed(value: Fraction, places: int) -> str:
    near = round_to(value, places)
    whole, rest = divmod(near, 1)
    return f"{whole}.{str(int(rest * 10**places)).rjust(places, '0')}" if places else str(whole)


# ---- tolerances -------------------------------------------------------------------------------------


class Tolerance(NamedTuple):
    """From `at` grams per 100 g on a printed figure may be `grams` off, or this `share` of itself."""

    at: Fraction
    grams: Fraction | None
    share: Fraction | None = None


def _steps(*rows: tuple[str, str, str]) -> tuple[Tolerance, ...]:
    return tuple(
        Tolerance(Fraction(at), Fraction(grams) if grams else None, Fraction(share) if share else None)
        for at, grams, share in rows
    )


_MOST = _steps(("0", "2", ""), ("10", "", "0.2"), ("40", "8", ""))
TOLERANCES = {
    "carbohydrate": _MOST,
    "sugars": _MOST,
    "protein": _MOST,
    "fibre": _MOST,
    "fat": _steps(("0", "1.5", ""), ("10", "", "0.2"), ("40", "8", "")),
    "saturates": _steps(("0", "0.8", ""), ("4", "", "0.2")),
    "salt": _steps(("0", "0.375", ""), ("1.25", "", "0.2")),
}
"""Valid from December 2012: guidance of the Commission, no law; from memory."""

ENERGY_WIDTH = Fraction(2, 100)
"""Of itself the energy may lie between two ends, and its middle is printed. Our rule."""
WIDTH_OF_TOLERANCE = Fraction(1, 4)
"""Of the tolerance half a span may be, and its middle is printed. Our rule."""


def tolerance_of(line: str, value: Fraction) -> Fraction:
    """Grams by which a printed figure per 100 g may be off."""
    row = [one for one in TOLERANCES[line] if one.at <= value][-1]
    return row.grams if row.grams is not None else value * (row.share or 0)
