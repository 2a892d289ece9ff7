"""The heat balance of a dough: it closes, it moves the right way, and it keeps to what the file says."""

from fractions import Fraction

import pytest
from hypothesis import given, strategies as st
from run_length import FEW_EXAMPLES
from works import bakery_of, first_work

from manchet.figures.water.dough_temperature import balance
from manchet.figures.water.friction import friction_of
from manchet.figures.water.heat import WETTING
from manchet.figures.water.ice import ALL_ICE, ice_in
from manchet.figures.water.water_grid import DoughWater, WaterGridRow, water_grid, water_of
from manchet.kitchen.model import Mixer

LOAF = """\
formula Tried loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough
  bake loss 14%

  overall
    white flour          100%
    water                 {water}%
    eggs                   5%
    butter                 5%
    salt                   2%
    fresh yeast            1.5%

  poolish with {poolish}% of all flour
    white flour          100%
    water                100%
    fresh yeast            0.2%
    mix by hand 3 min to 24 C
    ripen covered 10-12 h at 20 C falling to {ripe} C

  dough
    poolish
    {line}
    everything else
    mix slow {slow} min
    mix fast 3 min to {dough} C
    ferment covered 100-120 min at 25 C
    divide
    shape round
    prove covered 60-70 min at 27 C
    bake 35-40 min at 230 C to 97 C core, steam
    cool 2 h
"""

KITCHEN = """
kitchen Back room
  air            {room} C
  flour          {flour} C
  tap            {tap} C
  fridge cold
    keeps         4 C
  mixer spiral
    warms         11 C in 8 min slow, 4 min fast
"""

USUAL = {"water": 68, "poolish": 20, "ripe": 20, "line": "", "slow": 5, "dough": 25}


def water(room: int = 21, flour: int = 20, tap: int = 12, kitchen: bool = True, **formula: object) -> DoughWater | None:
    text = LOAF.format(**{**USUAL, **formula}).replace("    \n", "")
    if kitchen:
        text += KITCHEN.format(room=room, flour=flour, tap=tap)
    work = first_work(text)
    return water_of(work)


def grid(room: int, flour: int, tap: int) -> tuple[WaterGridRow, ...]:
    return water_grid(
        first_work(LOAF.format(**USUAL).replace("    \n", "") + KITCHEN.format(room=room, flour=flour, tap=tap))
    )


def likely(**asked: object) -> Fraction:
    found = water(**asked)  # type: ignore[arg-type]
    assert found is not None
    return found.celsius.likely


@FEW_EXAMPLES
@given(
    room=st.integers(5, 35),
    flour=st.integers(0, 35),
    poolish=st.integers(5, 30),
    hydration=st.integers(60, 90),
    dough=st.integers(18, 30),
)
def test_the_balance_closes(room: int, flour: int, poolish: int, hydration: int, dough: int) -> None:
    """A dough made with the water that is asked for comes out exactly as wanted."""
    found = water(room=room, flour=flour, poolish=poolish, water=hydration, dough=dough)
    assert found is not None
    assert found.balance.dough(found.celsius.likely).likely == dough
    assert found.celsius.low <= found.celsius.likely <= found.celsius.high
    assert found.base == found.celsius.likely + found.flour + found.room + (found.preferment or 0)


@given(water=st.integers(1, 50_000), tap=st.integers(1, 35), wanted=st.integers(-80, 35), below=st.integers(0, 20))
def test_ice_and_water_are_the_water(water: int, tap: int, wanted: int, below: int) -> None:
    """Ice takes water's place, and the heat of the two is that of the water wanted."""
    ice = ice_in(Fraction(water), Fraction(tap), Fraction(wanted), Fraction(below))
    assert 0 <= ice <= water
    if wanted >= tap:
        assert ice == 0
    else:
        cold = -80 - Fraction(below, 2)
        assert ice * cold + (water - ice) * tap == water * wanted


def test_all_ice_is_the_end() -> None:
    assert ice_in(Fraction(10), Fraction(20), ALL_ICE) == 10
    assert ice_in(Fraction(10), Fraction(20), ALL_ICE - 1) > 10


def test_what_is_warm_asks_for_colder_water() -> None:
    usual = likely()
    assert likely(flour=24) < usual
    assert likely(room=25) < usual
    assert likely(ripe=28) < usual
    assert likely(slow=8) < usual
    assert likely(dough=27) > usual
    assert likely(tap=5) == usual


def test_a_degree_of_flour_is_less_than_one_of_water() -> None:
    """What the trade's rule cannot know: flour holds half of what water holds."""
    assert 0 < likely(flour=20) - likely(flour=21) < 1


def test_flour_and_room_make_a_grid_with_ice_where_the_tap_is_too_warm() -> None:
    found, rows = water(room=27, flour=26, tap=18), grid(room=27, flour=26, tap=18)
    assert found is not None and found.assumed
    assert [row.flour for row in rows] == [22, 26, 30]
    assert [cell.room for cell in rows[0].cells] == [23, 27, 31]
    assert rows[1].cells[1] == found.here and rows[1].cells[1].celsius == found.celsius.likely
    for row in rows:
        for cell in row.cells:
            assert cell.can_be and cell.ice is not None
            assert (cell.ice > 0) == (cell.celsius < 18)
            assert cell.ice < found.grams
    assert found.ice


def test_a_house_without_temperatures_gets_a_base_and_no_figure() -> None:
    found = water(kitchen=False)
    assert found is not None and not found.assumed and not found.known
    assert found.readings == 4 and found.here is None and found.ice is None
    assert water_grid(first_work(LOAF.format(**USUAL).replace("    \n", ""))) == ()
    assert 60 < found.base < 110


def test_given_water_is_judged_and_not_asked_for() -> None:
    assert water(line="what is left of the water at 30 C") is None


def test_water_that_is_too_little_to_set_the_dough_is_not_asked_for() -> None:
    assert water(water=60, poolish=50) is None


def test_milk_is_asked_for_where_there_is_no_water() -> None:
    text = """\
formula Milk loaf
  kind tin loaf
  makes 10 loaves at 900 g dough
  overall
    white flour          100%
    milk                  64%
    salt                   2%
    fresh yeast            2%
  dough
    everything else
    mix by hand 10 min to 26 C
    ferment covered 1 h at 26 C
"""
    work = first_work(text + KITCHEN.format(room=20, flour=20, tap=10))
    asked = water_of(work)
    assert asked is not None and asked.liquid == "milk" and asked.tap is None and asked.readings == 3
    assert 22 < asked.celsius.likely < 34
    assert all(cell.ice is None for row in water_grid(work) for cell in row.cells)


@pytest.mark.parametrize(
    ("water_line", "liquid"), [("10%", "milk and water"), ("40%", "water"), ("10% at 40 C", "milk")]
)
def test_milk_is_asked_for_where_there_is_too_little_water(water_line: str, liquid: str) -> None:
    """10 % of water hold a tenth of the heat; with 45 % of milk they set it, tempered together. Water keeps what the file
    gives it."""
    text = """\
formula Bun dough
  kind soft
  makes 40 rolls at 60 g dough
  overall
    white flour          100%
    milk                  45%
    water                 {share}
    butter                10%
    sugar                 10%
    salt                   1.8%
    fresh yeast            4%
  dough
    {warm}
    everything else
    mix by hand 10 min to 26 C
    ferment covered 1 h at 26 C
"""
    share, _, warm = water_line.partition(" at ")
    lines = text.format(share=share, warm=f"what is left of the water at {warm}" if warm else "")
    work = first_work(lines.replace("    \n", "") + KITCHEN.format(room=20, flour=20, tap=10))
    asked = water_of(work)
    assert asked is not None and asked.liquid == liquid
    assert asked.balance.dough(asked.celsius.likely).likely == 26


@pytest.mark.parametrize(("slow", "fast", "share"), [(8, 4, 1), (4, 2, Fraction(1, 2)), (0, 8, 1), (16, 0, 1)])
def test_a_measured_mix_is_shared_out_by_turns(slow: int, fast: int, share: Fraction) -> None:
    """With twice the turns on fast, 8 min slow and 4 min fast are 16 min slow, or 8 min fast."""
    mixer = Mixer("m", None, None, Fraction(100), Fraction(200), Fraction(11), Fraction(480), Fraction(240))
    text = LOAF.format(**{**USUAL, "slow": slow or 1}).replace("fast 3 min", f"fast {fast or 1} min")
    bakery = bakery_of(text)
    steps = [s for s in bakery.formulas[0].stages[-1].steps if s.verb == "mix"]
    steps = [s for s, minutes in zip(steps, (slow, fast), strict=True) if minutes]
    whole = friction_of(steps, mixer, WETTING)
    assert 7 < whole.likely / share < 8, "11 C less what wetting gives"
    assert whole.low < whole.likely < whole.high


MEASURED = """\
formula Plain dough
  makes 20 kg dough
  overall
    white flour          100%
    water                 60%
    salt                   2%
    fresh yeast            2%
  dough
    everything else
    mix slow 8 min
    mix fast 4 min to 31 C
    ferment covered 1 h at 26 C

kitchen Back room
  air            20 C
  flour          20 C
  tap            20 C
  fridge cold
    keeps        20 C
  mixer spiral
    warms         {} C in 8 min slow, 4 min fast
"""


@pytest.mark.parametrize("warms", [2, 5, 11, 14])
def test_a_measured_mix_gives_itself_back(warms: int) -> None:
    """All at 20 C and the kitchen's own mix: so much warmer it comes out, the bowl and the wetting counted once each."""
    work = first_work(MEASURED.format(warms).replace("31 C", f"{20 + warms} C"))
    asked = water_of(work)
    assert asked is not None and abs(asked.celsius.likely - 20) < Fraction(1, 2)
    assert asked.celsius.low <= 20 <= asked.celsius.high
    met = balance(work, work.dough.stage)
    assert met is not None and abs(met.dough(Fraction(20)).likely - (20 + warms)) < Fraction(1, 4)


def test_a_mixer_nobody_measured_is_a_wider_guess() -> None:
    bakery = bakery_of(LOAF.format(**USUAL))
    steps = bakery.formulas[0].stages[-1].steps
    guess = friction_of(steps, None, WETTING)
    assert (guess.low, guess.high) == (8 * Fraction(5, 9), 8 * Fraction(10, 9))
    assert friction_of(bakery.formulas[0].stages[0].steps, None, WETTING).high < 1


ALL_HELD_BACK = """\
formula New loaf
  dough
    water 10 g
    hold back water
    mix fast 6 min to 26 C
    add water

kitchen Back room
  air 21 C
"""


def test_a_mix_of_nothing_yet_has_no_balance() -> None:
    work = first_work(ALL_HELD_BACK)
    assert balance(work, work.formula.stages[0]) is None
    assert bakery_of(ALL_HELD_BACK).diagnostics == ()
