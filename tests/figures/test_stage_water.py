"""The water of a preferment: the balance closes, ice is part of it, and what is hot or unsaid is left alone."""

from collections.abc import Mapping
from fractions import Fraction

import pytest
from hypothesis import given, strategies as st
from loaves import POOLISH_LOAF, vary
from run_length import FEW_EXAMPLES
from works import bakery_of, first_work, work_in

from manchet.figures.derived import figures_of
from manchet.figures.water.stage_water import StageWater, stage_waters
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.water import ice_of_stage, stage_water_note

LOAF = vary(POOLISH_LOAF, mix_by_hand="3 min{to}").replace("poolish", "{word}")
LOAF = LOAF.replace("    water                100%", "    water                100%{at}")

KITCHEN = """
kitchen House
  {air}
  flour          {flour} C
  tap            {tap} C
"""


def waters(
    flour: int = 20, tap: int = 12, air: str = "air 20 C", word: str = "poolish", to: str = " to 23 C", at: str = "",
    kitchen: bool = True,
) -> Mapping[str, StageWater]:  # fmt: skip
    text = LOAF.format(word=word, to=to, at=at)
    return stage_waters(first_work(text + (KITCHEN.format(air=air, flour=flour, tap=tap) if kitchen else "")))


@FEW_EXAMPLES
@given(flour=st.integers(5, 35), room=st.integers(5, 35), wanted=st.integers(18, 30))
def test_the_balance_closes(flour: int, room: int, wanted: int) -> None:
    water = waters(flour, air=f"air {room} C", to=f" to {wanted} C")["poolish"]
    assert water.balance.dough(water.celsius.likely).likely == wanted
    assert water.celsius.low <= water.celsius.likely <= water.celsius.high


def test_by_hand() -> None:
    """1 kg flour and 1 kg water, both heat kept: flour 1.87 kJ/kg C from 20, wetting 15.1 kJ, half a degree of hands."""
    water = waters()["poolish"]
    bowl = (1.87 + 4.18) / 10
    by_hand = ((1.87 + 4.18 + bowl) * (23 - 0.46) - 1.87 * 20 - bowl * 20 - 15.1) / 4.18
    assert float(water.celsius.likely) == pytest.approx(by_hand, abs=0.3)


def test_ice_where_the_tap_is_too_warm_is_part_of_the_water() -> None:
    water = waters(flour=32, tap=28, air="air 32 C", to=" to 22 C")["poolish"]
    assert water.ice is not None and water.ice > 0
    grams = sum(t.portion.share for t in water.balance.free) * 20 * 900 / (Fraction("1.704"))
    assert water.ice < grams
    cold = water.ice * -80 + (grams - water.ice) * 28
    assert abs(cold / grams - water.celsius.likely) < Fraction(1, 100)


def test_silent_where_nothing_is_asked() -> None:
    assert waters(to="") == {}, "the file wants no temperature"
    assert waters(at=" at 30 C") == {}, "the file gives the water its own"
    assert waters(kitchen=False) == {}, "the kitchen says nothing"
    assert waters(word="scald") == {}, "hot on purpose"


HOUSES = {"C": House(), "F": House("Letter", "US", "F", "American")}


@pytest.mark.parametrize(("degrees", "said"), [("C", "about 20\u00a0°C"), ("F", "about 69\u00a0°F")])
def test_said_in_the_house_s_degrees(degrees: str, said: str) -> None:
    house = HOUSES[degrees]
    assert stage_water_note(waters()["poolish"], Measures(house, words_of(house.words))) == said


def test_what_water_cannot_be_is_said() -> None:
    m = Measures(HOUSES["C"], words_of("British"))
    assert "water alone cannot" in stage_water_note(waters(flour=45, air="air 45 C", to=" to -30 C")["poolish"], m)
    iced = waters(flour=32, tap=28, air="air 32 C", to=" to 18 C")["poolish"]
    assert iced.ice and abs(ice_of_stage(iced, m) - iced.ice) < 5 and ice_of_stage(iced, m) % 5 == 0


def test_among_the_estimates_with_rule_and_source() -> None:
    bakery = bakery_of(LOAF.format(word="poolish", to=" to 23 C", at="")
                              + KITCHEN.format(air="air 20 C", flour=20, tap=12))  # fmt: skip
    work = work_in(bakery, bakery.formulas[0])
    figure = figures_of(work).estimates["poolish: water temperature"]
    assert (figure.value, figure.unit) == (20, "C")
    assert figure.rule.startswith("an estimate, ") and "Choi and Okos" in figure.source
