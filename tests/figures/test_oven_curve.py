"""A falling oven: its curve, when a bread goes in, and in what order. Straight from the published tables."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, strategies as st
from loaves import PLAIN_LOAF, vary
from works import bakery_of, first_work, work_in, works

from manchet.figures.derived import figures_of
from manchet.figures.oven.curve import heat_after, hours_to, wanted_heats, window
from manchet.formula.model import Range
from manchet.kitchen.model import Fall
from manchet.workspace import bakery


def falls(*stretches: tuple[str, int]) -> tuple[Fall, ...]:
    return tuple(Fall(Fraction(an_hour), Fraction(start)) for an_hour, start in stretches)


def heat(low: int, high: int | None = None) -> Range:
    return Range(Fraction(low), Fraction(low if high is None else high))


SLOW = falls(("10", 250), ("8", 200), ("5", 150), ("3", 100))
FAST = falls(("13", 250), ("10", 200), ("6", 150), ("4", 100))
"""breadnz.com, "oven heat": one New Zealand oven loses 10-13 C an hour from 250 C, 8-10 from 200, 5-6 from 150 and 3-4
from 100 to 70."""


@pytest.mark.parametrize(
    ("celsius", "slow", "fast"),
    [(250, 0, 0), (200, 5, 3.85), (150, 11.25, 8.85), (100, 21.25, 17.18), (70, 31.25, 24.68)],
)
def test_the_oven_of_new_zealand(celsius: int, slow: float, fast: float) -> None:
    for curve, hours in ((SLOW, slow), (FAST, fast)):
        found = hours_to(curve, Fraction(celsius))
        assert found is not None and float(found) == pytest.approx(hours, abs=0.01)
        assert heat_after(curve, Fraction(250), found) == celsius


def test_what_that_oven_bakes_when() -> None:
    """Its own windows: bread at 190-250 C, cakes at 180-200 C, meringue at 90-100 C."""
    bread, cakes, meringue = (window(SLOW, heat(*span)) for span in ((190, 250), (180, 200), (90, 100)))
    assert bread == (0, Fraction(25, 4))
    assert cakes == (5, Fraction(15, 2))
    assert meringue is not None and meringue.opens == Fraction("21.25")


def test_a_heavily_insulated_oven() -> None:
    """Above 300 C for 10 h, then above 200 C for 6 h (traditionaloven.com, 9 inches of brick), here from 350 C."""
    curve = falls(("5", 350), ("50/3", 300))
    assert (hours_to(curve, Fraction(300)), hours_to(curve, Fraction(200))) == (10, 16)


def test_what_nobody_measured_is_not_said() -> None:
    assert hours_to(SLOW, Fraction(260)) is None
    assert heat_after(SLOW, Fraction(260), Fraction(1)) is None
    assert window(SLOW, heat(260, 270)) is None
    assert hours_to((), Fraction(200)) is None
    assert window(SLOW, heat(240, 270)) == (0, 1)  # hot enough from the first moment we know of


def test_of_an_oven_that_was_fired_no_further() -> None:
    """The cakes of New Zealand alone, and the meringue after them: from 200 C to 100 is 10 h at 5 C and 6 h 15 at 8."""
    cakes, meringue = heat(180, 200), heat(90, 100)
    assert window(SLOW, cakes, Fraction(200)) == (0, Fraction(20, 8))
    assert window(SLOW, cakes, Fraction(190)) == (0, Fraction(10, 8))
    after = window(SLOW, meringue, Fraction(200))
    assert after is not None and after.opens == Fraction(50, 8) + 10
    assert window(SLOW, cakes, Fraction(170)) is None


def test_a_single_heat_leaves_ten_degrees() -> None:
    assert wanted_heats(heat(230)) == (220, 240)
    assert wanted_heats(heat(230, 250)) == (230, 250)
    assert wanted_heats(Range(Fraction(230), None)) == (230, 240)


@given(st.integers(71, 250), st.integers(0, 40))
def test_time_and_heat_invert(start: int, hours: int) -> None:
    later = heat_after(SLOW, Fraction(start), Fraction(hours))
    assert later is not None and later <= start
    begun, ended = hours_to(SLOW, Fraction(start)), hours_to(SLOW, later)
    assert begun is not None and ended is not None and ended - begun == hours


HOUSE = """\
kitchen House
  oven mother
    heat wood, falling
    floor 120 x 90 cm
    falls 12 C an hour from 250 C
    falls 9 C an hour from 200 C
  oven deck
"""


def loaf(name: str, heat: str, shape: str) -> str:
    return vary(PLAIN_LOAF, formula=name, mix="slow 5 min", shape=shape, bake=f"40 min at {heat}")


def house(*breads: tuple[str, str, str]) -> bakery.Bakery:
    loaves = [loaf(*bread) for bread in breads]
    return bakery_of("\n".join([*loaves, HOUSE]))


def test_it_is_among_the_figures() -> None:
    found = house(("Lean", "230-240 C", "round"), ("Late", "230 C in deck", "round"))
    lean, late = (figures_of(work_in(found, formula)).estimates for formula in found.formulas)
    assert lean["goes into mother, from"].value == Fraction(10, 12)
    assert lean["goes into mother, until"].value == Fraction(20, 12)
    assert "hours after mother had 250 C" in lean["goes into mother, until"].rule
    assert not any("goes into" in name for name in late)


@pytest.mark.parametrize(("shape", "number"), [("round", 20), ("oval", 15), ("as stick", 10)])
def test_how_many_lie_on_the_floor(shape: str, number: int) -> None:
    """900 g: round 193 mm across, so 5 in a row 213 mm apart, four rows; oval 153 x 306, two rows of
    seven lengthways, but five rows of three lying across; a stick 96 x 768, ten side by side."""
    found = house(("Lean", "230-240 C", shape))
    work = work_in(found, found.formulas[0])
    estimates = figures_of(work).estimates
    assert estimates["loaves in one load of mother, estimate"].value == number


def test_the_turn_is_among_the_figures() -> None:
    found = house(("Soft", "190 C", "round"), ("Flat", "250 C", "flat"), ("Lean", "230-240 C", "round"))
    turns = []
    for formula in found.formulas:
        work = work_in(found, formula)
        figure = figures_of(work, works(found)).estimates["turn in mother"]
        turns.append((formula.name, figure.value, [given.name for given in figure.inputs]))
    order = ["Flat", "Lean", "Soft"]
    assert turns == [("Soft", 3, order), ("Flat", 1, order), ("Lean", 2, order)]


def test_a_range_gives_a_range_of_hours() -> None:
    """breadnz.com again, as it is printed: 10-13 C an hour from 250 C, 8-10 from 200. Bread until 190 C."""
    ranges = HOUSE.replace("falls 12 C", "falls 10-13 C").replace("falls 9 C", "falls 8-10 C")
    work = first_work(loaf("Lean", "190-250 C", "round") + ranges)
    until = figures_of(work).estimates["goes into mother, until"]
    assert until.rule.endswith("; 4.8 to 6.3 h by the ends of its ranges")
    assert until.value == 50 / Fraction("11.5") + 10 / Fraction(9)
