"""How fast baker's yeast, and the yeasts and bacteria of a sour, work at a temperature: the one model of warmth there is.

The cardinal temperature model with inflection (L. Rosso, J. R. Lobry, J. P. Flandrois, 1993; the form from memory):

    mu = mu_opt (T - Tmax)(T - Tmin)^2 / ((Topt - Tmin)((Topt - Tmin)(T - Topt) - (Topt - Tmax)(Topt + Tmin - 2T)))

It is a fraction of polynomials, so what it says is exact here; what it says of a dough is an estimate all the same.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple

NOTHING = Fraction(0)


class Leaven(NamedTuple):
    """What lives in a dough: three temperatures (Celsius) at which it stands still, does best, stands still again."""

    name: str
    least: Fraction
    best: Fraction
    most: Fraction
    per_hour: Fraction
    """Growth an hour at its best, in natural logarithms."""
    holds: tuple[Fraction, Fraction]
    """Celsius from where to where a wait may be told by it. Nearer its ends a half degree decides, and in a fridge the
    dough's own slow cooling does: there it is silent. Our bounds."""
    source: str


BAKERS = Leaven(
    "baker's yeast",
    Fraction("2.84"), Fraction("32.27"), Fraction("45.39"), Fraction("0.368"), (Fraction(14), Fraction(40)),
    "cardinal temperature model (Rosso 1993), an average of strains of S. cerevisiae: Salvado et al., Appl. Environ. "
    "Microbiol. 77 (2011) 2292, quoted at second hand",
)  # fmt: skip
SOUR_YEAST = Leaven(
    "the yeast of a sour",
    Fraction(8), Fraction(27), Fraction("35.9"), Fraction("0.42"), (Fraction(15), Fraction(32)),
    "cardinal temperature model (Rosso 1993) for C. milleri: Gaenzle et al., Appl. Environ. Microbiol. 64 (1998) 2616, "
    "quoted at second hand",
)  # fmt: skip
SOUR_BACTERIA = Leaven(
    "the bacteria of a sour",
    Fraction("4.5"), Fraction("32.5"), Fraction(41), Fraction("0.71"), (Fraction(15), Fraction(35)),
    "cardinal temperature model (Rosso 1993) for L. sanfranciscensis: Gaenzle et al., Appl. Environ. Microbiol. 64 "
    "(1998) 2616, quoted at second hand",
)  # fmt: skip

THUMB = Fraction(11, 10)
THUMB_SOURCE = "rule of thumb: gas comes a tenth faster for each degree near a dough's own warmth (baking trade press)"


def pace(leaven: Leaven, celsius: Fraction) -> Fraction:
    """How fast it works, as a share of its best; 0 where it stands still."""
    least, best, most = leaven.least, leaven.best, leaven.most
    if not least < celsius < most:
        return NOTHING
    span = best - least
    above = (celsius - most) * (celsius - least) ** 2
    return above / (span * (span * (celsius - best) - (best - most) * (best + least - 2 * celsius)))


NEVER_SLOWER_TO = Fraction(33)
"""Celsius up to which a warmer dough never takes longer. A full sour is ripe in 4, 3.5 and 3 h at 28, 30 and 32 C in print,
though the yeast in it does best at 27: the dough is judged by all that works in it. Our rule."""


def rising_pace(leaven: Leaven, celsius: Fraction) -> Fraction:
    """How fast a dough of it comes on: its pace, but at its best from there up to where every dough still gains by warmth."""
    return Fraction(1) if leaven.best < celsius <= NEVER_SLOWER_TO else pace(leaven, celsius)


def holds(leaven: Leaven, celsius: Fraction) -> bool:
    """Whether a wait at that temperature may be told by the model."""
    return leaven.holds[0] <= celsius <= leaven.holds[1]


def longer(leaven: Leaven, written: Fraction, celsius: Fraction) -> Fraction | None:
    """By what a time at `written` is multiplied at `celsius`; None where the model does not hold for both."""
    if not (holds(leaven, written) and holds(leaven, celsius)):
        return None
    return pace(leaven, written) / pace(leaven, celsius)


def longer_by_thumb(written: Fraction, celsius: Fraction) -> Fraction:
    """The same by the trade's rule of thumb, a straight line between whole degrees. It knows no best and no end."""
    whole, part = divmod(abs(celsius - written), 1)
    times = THUMB**whole * (1 + part * (THUMB - 1))
    return 1 / times if celsius > written else times
