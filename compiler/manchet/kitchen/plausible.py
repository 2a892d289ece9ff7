"""Whether what a kitchen says of itself can be so: no tap runs at 140 C, and no freezer keeps 5 C.

Our own limits of 2026-11-25, drawn wide, with what they rest on beside them; what lies outside was most likely typed wrong.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import exchange_of, instead
from manchet.diagnostics.reports import report
from manchet.kitchen.model import Fall, Oven
from manchet.larder.figures import show_figure
from manchet.quantities.units import UNITS
from manchet.records import NamedTuple
from manchet.syntax.nodes import Amount
from manchet.syntax.things import HEATS


class Span(NamedTuple):
    """Degrees Celsius between which something usually lies, and between which it can lie at all."""

    what: str
    """As in `the air of a bakehouse`."""
    usual: tuple[int, int]
    possible: tuple[int, int]
    usually: str
    """A figure to write, in Celsius."""


SPANS = {
    "air": Span("the air of a bakehouse", (-10, 50), (-60, 70), "22"),
    # The hottest air ever measured outdoors is 56.7 C (World Meteorological Organization), the coldest -89; at 50 C nobody
    # works for long, and under -10 C no dough is made in the open.
    "flour": Span("flour", (-30, 50), (-60, 100), "19"),
    # Flour from a frozen store has -18 to -25 C, from a silo in summer up to 40 C: common practice.
    "tap": Span("water from the tap", (0, 70), (0, 100), "12"),
    # Hot water is stored at 60 C and over (World Health Organization, Legionella, 2007). Ice and steam run from no tap.
    "hottest": Span("the hottest of an oven", (80, 900), (-60, 900), "250"),
    # Under 80 C nothing is baked: starch has not set by then.
    "fridge": Span("a fridge", (-6, 18), (-60, 900), "4"),
    # Cold stores 0 to 5 C; retarders up to 16 C: common practice.
    "freezer": Span("a freezer", (-60, -5), (-60, 900), "-18"),
    # Frozen food is kept at -18 C (Codex Alimentarius, CXC 8-1976); at -5 C a dough is hardly frozen.
    "prover": Span("a prover", (8, 55), (-60, 900), "28"),
    # Doughs are proved at 20 to 40 C; yeast stands still under 4 C and dies over 55 C: common practice.
}
FASTER = Fraction(6, 5)
"""So many times as fast as where it is hotter an oven may fall by its figures: what is measured differs. Our rule."""


def temperature(what: str, key: str, amount: Amount, celsius: Fraction, place: Place) -> Iterator[Diagnostic]:
    """What is odd about the temperature of `what` (a key of `SPANS`), written on a line `key`."""
    span, unit = SPANS[what], amount.unit
    said = f"{show_figure(amount.low or celsius)} {unit}"
    if _within(span.usual, celsius):
        if _frost_by_slip(what, amount, celsius):
            message = f"{said} is freezing, {show_figure(Fraction(round(celsius)))} C, for {span.what}"
            here = f"{key} {show_figure(amount.low or celsius)} C"
            help = f"did you mean `{here}`? If it is so, write `{key} {show_figure(celsius)} C`"
            fixes = exchange_of(place, said, here.removeprefix(f"{key} "), f"{show_figure(celsius)} C")
            yield report("kitchen-temperature-odd", place, message, help, fixes=fixes)
        return
    figures = tuple(_meant(span, amount))
    meant = [f"`{key} {figure}`" for figure in figures]
    fixes = exchange_of(place, said, *figures)
    usually = reading(Fraction(span.usually), unit)
    help = (
        f"did you mean {' or '.join(meant)}?" if meant else f"write what a thermometer shows, as in `{key} {usually}`"
    )
    if _within(span.possible, celsius):
        message = f"{said} is outside what {span.what} has, {_ends(span.usual, unit)}"
        yield report("kitchen-temperature-odd", place, message, help, fixes=fixes)
    else:
        message = f"{said} is not a temperature of {span.what}, {_ends(span.possible, unit)}"
        yield report("kitchen-temperature-impossible", place, message, help, fixes=fixes)


def reading(celsius: Fraction, unit: str) -> str:
    """A temperature in the scale of the line it is said of, to whole degrees."""
    return f"{round(celsius / UNITS[unit].factor + UNITS[unit].offset)} {unit}"


def _ends(span: tuple[int, int], unit: str) -> str:
    least, most = (reading(Fraction(end), unit) for end in span)
    return f"{least.split()[0]} to {most}"


def _within(span: tuple[int, int], celsius: Fraction) -> bool:
    return span[0] <= celsius <= span[1]


def _frost_by_slip(what: str, amount: Amount, celsius: Fraction) -> bool:
    """A room of 17 F can be, but who writes so mild a figure is likely to mean C."""
    return what in ("air", "flour") and amount.unit == "F" and celsius < 0 and (amount.low or 0) >= 10


def _meant(span: Span, amount: Amount) -> Iterator[str]:
    """What would be usual: the figure with its point a place further left, in the other scale, or below nothing."""
    figure = amount.low or Fraction(0)
    other = "C" if amount.unit == "F" else "F"
    for value, unit in ((figure / 10, amount.unit), (figure, other), (-figure, amount.unit)):
        if value >= 0 and span.usual[1] < 0:
            continue
        if _within(span.usual, (value - UNITS[unit].offset) * UNITS[unit].factor):
            yield f"{show_figure(value)} {unit}"


def named_by_its_heat(oven: Oven, place: Place) -> Iterator[Diagnostic]:
    """`oven gas`, with no line that says what heats it."""
    name = oven.name.lower()
    if name in HEATS and not oven.heat:
        message = f"an oven called {oven.name}: nothing says what heats it"
        help = f"write `oven`, and under it `heat {name}`"
        fix = instead(place, f"oven\n{' ' * (place.column + 1)}heat {name}", help)
        yield report("oven-called-by-its-heat", place, message, help, fixes=(fix,))


def falls(what: str, oven: Oven, lines: dict[Fraction, Place], unit: str) -> Iterator[Diagnostic]:
    """What is odd about the fall of an oven; `lines` has the place of each stretch by the heat it begins at,
    and `unit` is the scale they are written in."""
    for fall, below in pairwise(oven.falls):
        hot, cold = fall.fastest or fall.an_hour, below.slowest or below.an_hour
        if cold > hot * FASTER:
            slow, fast = _rate(fall, unit), _rate(below, unit)
            above, under = reading(fall.start, unit), reading(below.start, unit)
            message = f"{what} falls {fast} an hour from {under}, and {slow} where it is hotter; an oven loses less the colder it is"
            help = (
                f"check both: have the two changed places? `falls {fast} an hour from {above}`, "
                f"`falls {slow} an hour from {under}`"
            )
            yield report("oven-falls-faster-when-colder", lines[below.start], message, help)
            break
    if oven.falls and oven.hottest is not None and oven.falls[0].start > oven.hottest:
        start, hottest = reading(oven.falls[0].start, unit), reading(oven.hottest, unit)
        message = f"{what} falls from {start}, and its `hottest` is {hottest}"
        help = f"write `hottest {start}`, or begin the fall at {hottest}"
        yield report("oven-falls-from-over-hottest", lines[oven.falls[0].start], message, help)


def _rate(fall: Fall, unit: str) -> str:
    """A difference of temperature, and its ends where it is a range."""
    ends = (fall.slowest or fall.an_hour, fall.fastest or fall.an_hour)
    return "-".join(dict.fromkeys(show_figure(end / UNITS[unit].factor) for end in ends)) + f" {unit}"


def tin(what: str, rim: tuple[Fraction, ...], base: tuple[Fraction, ...], place: Place) -> Iterator[Diagnostic]:
    """A tin whose floor is wider than its rim holds the loaf fast. All in millimetres."""
    for below, above in zip(sorted(base), sorted(rim), strict=True):
        if below > above:
            message = f"{what} is {show_figure(below)} mm at its floor and {show_figure(above)} mm at its rim: no loaf comes out of it"
            help = "exchange the figures of the rim and of `bottom`, or measure again"
            yield report("tin-wider-below", place, message, help)
            return
