"""The yeast for another time and warmth: as written it is the written one, and it moves the way bakers know."""

import re
from fractions import Fraction

import pytest
from hypothesis import given, strategies as st
from loaves import LOAVES_AND_ROLLS, POOLISH_LOAF, vary
from run_length import FEW_EXAMPLES
from works import bakery_of, formula_of, work_in

from manchet.batch.order import AS_WRITTEN
from manchet.batch.scales import reading_of
from manchet.batch.work import Work, work_of
from manchet.figures.derived import figures_of
from manchet.figures.fermentation.yeast_grid import (
    FURTHEST,
    YeastGrid,
    YeastWait,
    ends_of,
    hours_to_say,
    why_not,
    yeast_grids,
    yeast_waits,
)
from manchet.figures.fermentation.yeast_rate import BAKERS, pace
from manchet.formula.model import Formula
from manchet.kitchen.model import PLAIN
from manchet.larder.book import builtin
from manchet.sheets.forms.prep_sheet.other_waits import other_waits
from manchet.sheets.forms.prep_sheet.view import OtherWaits
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of

POOLISH = vary(POOLISH_LOAF, ripen="covered {ripe}")

METRIC = House()

STRAIGHT = vary(LOAVES_AND_ROLLS, formula="Straight loaf", ferment="covered {bulk}")


def formula(text: str, **more: str) -> Formula:
    return formula_of(text.format(**{"ripe": "12-14 h at 20 C", "bulk": "2 h at 26 C", **more}))


def plain(of: Formula) -> Work:
    made = work_of(of, AS_WRITTEN, PLAIN, builtin())
    assert made.value is not None
    return made.value


def grid(text: str, step: Fraction = Fraction(2), **more: str) -> YeastGrid:
    (found,) = yeast_grids(plain(formula(text, **more)), step)
    return found


def test_a_poolish_moves_and_the_dough_it_goes_into_does_not() -> None:
    (wait,) = yeast_waits(formula(POOLISH))
    assert (wait.stage.name, wait.likely / 3600, wait.mean) == ("poolish", 13, 20)


def test_the_grid_of_a_poolish() -> None:
    found = grid(POOLISH)
    assert [c.likely for c in found.celsius] == [16, 18, 20, 22, 24]
    assert [row.seconds.likely / 3600 for row in found.rows] == [7, 10, 13, 16, 20]
    (written,) = [cell for row in found.rows for cell in row.cells if cell.written]
    assert written.times == 1


def test_by_hand() -> None:
    """13 h at 20 C (0.2198 an hour) to 16 h at 18 C (0.1820 an hour, by the same equation): 0.98 of the work, and its square."""
    (wait,) = yeast_waits(formula(POOLISH))
    times = wait.times(Fraction(16 * 3600), Fraction(18))
    assert times is not None and float(times) == pytest.approx((13 * 0.2198 / (16 * 0.1820)) ** 2, abs=0.01)


def test_bulk_and_proof_of_a_straight_dough_are_taken_together() -> None:
    """2 h at 26 C and 1 h at 28 C; the first sort of pieces is meant, and said."""
    (wait,) = yeast_waits(formula(STRAIGHT))
    assert (wait.likely / 3600, wait.branch, [w.step.verb for w in wait.waits]) == (3, "loaves", ["ferment", "prove"])
    work = 2 * pace(BAKERS, Fraction(26)) + pace(BAKERS, Fraction(28))
    assert wait.times(Fraction(5 * 3600), Fraction(24)) == (work / (5 * pace(BAKERS, Fraction(24)))) ** 2
    assert wait.times(wait.likely) == 1
    assert [(c.low, c.high) for c in grid(STRAIGHT).celsius] == [(23, 23), (25, 25), (26, 28), (29, 29), (31, 31)]


@pytest.mark.parametrize(
    ("text", "more", "why"),
    [
        (STRAIGHT.replace("divide\n", "retard covered 12 h at 4 C\n    divide\n", 1), {}, "cold"),
        (STRAIGHT, {"bulk": "2 h"}, "no time or no temperature"),
        (STRAIGHT, {"bulk": "8 h at 10 C"}, "silent"),
        (STRAIGHT.replace("fresh yeast            1.5%", "fresh yeast 1%\n    instant yeast 0.2%"), {}, "two sorts"),
        (STRAIGHT.replace("    fresh yeast            1.5%\n", ""), {}, "no yeast"),
        (POOLISH, {}, "brings yeast of its own"),
    ],
)  # fmt: skip
def test_silent_and_why(text: str, more: dict[str, str], why: str) -> None:
    bread = formula(text, **more)
    dough = bread.stages[-1]
    assert why in why_not(dough, bread)
    assert not [w for w in yeast_waits(bread) if w.stage is dough]


def test_silent_where_a_culture_works() -> None:
    bread = formula(
        POOLISH.replace("poolish", "levain").replace("instant yeast          0.1%", "ripe wheat starter 10%")
    )
    assert yeast_waits(bread) == () and "culture" in why_not(bread.stages[0], bread)


def test_cells_are_empty_where_the_model_is_silent() -> None:
    """A dough at 38 C: two columns on, it is warmer than the model holds for."""
    found = grid(STRAIGHT, bulk="30 min at 38 C")
    warmest = [row.cells[-1] for row in found.rows]
    assert found.celsius[-1].likely > 31
    hot = grid(POOLISH, ripe="2 h at 38 C")
    assert [c.likely for c in hot.celsius][-1] == 42
    assert all(row.cells[-1].times is None for row in hot.rows)
    assert all(cell.times is not None for cell in warmest)


# ---- properties ---------------------------------------------------------------------------------------

hours = st.integers(2, 96).map(lambda quarters: Fraction(quarters * 900))
warmths = st.integers(15, 32).map(Fraction)


@FEW_EXAMPLES
@given(st.integers(60, 900), warmths)
def test_the_written_wait_is_the_written_yeast(minutes: int, celsius: Fraction) -> None:
    made = plain(formula(POOLISH, ripe=f"{minutes} min at {celsius} C"))
    (found,) = yeast_grids(made)
    (cell,) = [cell for row in found.rows for cell in row.cells if cell.written]
    weighed = next(w.grams for w in made.batch.stages[0].weighed if w.portion.name == "instant yeast")
    assert (cell.times, cell.grams) == (1, weighed)
    assert found.wait.times(found.wait.likely, celsius) == 1


@FEW_EXAMPLES
@given(hours, warmths, hours, warmths)
def test_there_and_back(one: Fraction, at: Fraction, other: Fraction, there: Fraction) -> None:
    def times_the_yeast(seconds: Fraction, celsius: Fraction, to: Fraction, to_celsius: Fraction) -> Fraction | None:
        text = POOLISH.format(ripe=f"{seconds / 60} min at {celsius} C")
        (wait,) = yeast_waits(formula_of(text))
        return wait.times(to, to_celsius)

    forth, back = times_the_yeast(one, at, other, there), times_the_yeast(other, there, one, at)
    assert (forth is None) == (back is None)
    assert forth is None or back is None or forth * back == 1


@FEW_EXAMPLES
@given(hours, hours, warmths, warmths)
def test_longer_or_warmer_never_wants_more_yeast(a: Fraction, b: Fraction, one: Fraction, other: Fraction) -> None:
    (wait,) = yeast_waits(formula(POOLISH))
    short, long = sorted((a, b))
    cool, warm = sorted((one, other))
    more, less = wait.times(short, cool), wait.times(long, warm)
    if more is not None and less is not None:
        assert less <= more
        assert Fraction(1, FURTHEST**2) <= less <= more <= FURTHEST**2


def test_the_armys_sponge() -> None:
    """US Army manual for bakers, 1916: half the yeast, 8 h for 5."""
    low, high = ends_of(Fraction(5, 8) ** 2)
    assert float(high) == pytest.approx(0.5, abs=0.01) and low < Fraction(5, 8) ** 2 < high
    assert ends_of(Fraction(1)) == (1, 1)


@pytest.mark.parametrize(
    ("hours", "product", "other", "other_product"),
    [(2, 11.0, 3, 8.3), (3, 8.3, 5, 5.6), (5, 5.6, 8, 4.5), (8, 4.5, 15, 2.0)],
)
def test_formulas_in_print_lie_between_the_ends(hours: int, product: float, other: int, other_product: float) -> None:
    """Yeast x hours x pace of formulas in print, of 2 to 15 h, from one to the next; to the two figures they are told in."""
    low, high = ends_of(Fraction(hours, other) ** 2)
    printed = (other_product / other) / (product / hours)
    assert float(low) * 0.97 <= printed <= float(high) * 1.03


@pytest.mark.parametrize(("wait", "told"), [("6 h", False), ("7 h", True), ("26 h", True), ("27 h", False)])
def test_no_further_than_half_and_twice(wait: str, told: bool) -> None:
    (found,) = yeast_waits(formula(POOLISH))
    assert (found.times(Fraction(wait.split()[0]) * 3600) is not None) == told


def test_yeast_does_not_live_all_night_in_the_heat() -> None:
    hot = grid(POOLISH, ripe="12 h at 33 C")
    assert all(
        cell.times is None for row in hot.rows for cell, c in zip(row.cells, hot.celsius, strict=True) if c.likely > 35
    )
    short = grid(STRAIGHT, bulk="30 min at 34 C")
    assert any(cell.times for row in short.rows for cell in row.cells)
    (wait,) = yeast_waits(formula(POOLISH, ripe="12 h at 38 C"))
    assert wait.times(wait.likely) == 1, "what is written is not doubted here"
    assert wait.times(Fraction(14 * 3600)) is None


def test_a_row_is_named_by_the_wait_it_belongs_to() -> None:
    """Of a wait that falls from 26 to 18 C, the other hours are told for just that, and not for 22 C all the time."""
    falling = plain(formula(POOLISH, ripe="12-14 h at 26 C falling to 18 C"))
    names = list(figures_of(falling).estimates)
    assert not [name for name in names if "yeast for 7 h at 22 C" in name and "18" not in name]
    (grid_,) = yeast_grids(falling)
    assert grid_.celsius[2].likely == 22
    assert "poolish: instant yeast for 12 to 14 h at 18 C" in figures_of(plain(formula(POOLISH))).estimates


@pytest.mark.parametrize(("minutes", "said"), [(20, 15), (50, 45), (135, 150), (210, 210), (585, 600)])
def test_times_that_a_baker_plans_by(minutes: int, said: int) -> None:
    assert hours_to_say(Fraction(minutes * 60)) == said * 60


# ---- as printed ---------------------------------------------------------------------------------------


def printed(work: Work, house: House = METRIC) -> OtherWaits:
    (found,) = other_waits(work, Measures(house, words_of(house.words)))
    return found


def lines(found: OtherWaits) -> list[str]:
    return [f"{one.said}, {one.time} at {one.degrees}".replace("\u00a0", " ") for one in found.waits]


def test_weighed_as_the_bench_weighs_it_today() -> None:
    work = plain(formula(POOLISH))
    (cell,) = [c for row in grid(POOLISH).rows for c in row.cells if c.written]
    assert cell.grams is not None
    found = printed(work)
    weights = [float(one.weight.split("\u00a0")[0]) for one in found.waits]
    assert (found.stage, found.yeast) == ("poolish", "instant yeast")
    assert weights[1] == float(reading_of(cell.grams, PLAIN).grams)
    assert lines(found) == [
        "colder, 12–14 h at 18 °C", "as written, 12–14 h at 20 °C", "warmer, 12–14 h at 22 °C", "longer, 16 h at 20 °C",
    ]  # fmt: skip
    assert weights[0] > weights[1] > weights[2] and weights[1] > weights[3]


def test_in_a_house_of_fahrenheit_and_ounces() -> None:
    found = printed(plain(formula(POOLISH)), House("Letter", "US", "F", "American"))
    assert [one.degrees[:2] for one in found.waits] == ["64", "68", "72", "68"]
    assert all(re.fullmatch(r"[\d.]{1,4}\u00a0g", one.weight) for one in found.waits), "three digits, and grams"
    assert len({one.weight for one in found.waits[:3]}) == 3
    metric = printed(plain(formula(POOLISH))).waits
    assert [found.waits[at].weight for at in (1, 3)] == [metric[at].weight for at in (1, 3)], "68 F are 20 C"


def test_weights_of_a_table_are_rounded_in_one_way() -> None:
    """5.4 kg of flour in the poolish take 5.4 g of yeast: on a scale of 1 g neighbours would come out alike."""
    kitchen = "\nkitchen House\n  scale bench\n    reads {} g\n    up to 30 kg\n"

    def told(reads: str) -> tuple[set[str], str]:
        bakery = bakery_of(POOLISH.format(ripe="12-14 h at 20 C") + kitchen.format(reads))
        found = printed(work_in(bakery, bakery.formulas[0]))
        return {one.weight.partition(".")[2][:-2] for one in found.waits}, " ".join(found.notes)

    assert {len(decimals) for decimals in told("1")[0]} == {1}
    assert "The scale reads 1\u00a0g: mix 10\u00a0g into 90\u00a0g of water; use 10 times" in told("1")[1]
    assert "scale" not in told("0.1")[1]


def test_for_one_bowl_of_several() -> None:
    text = STRAIGHT + "\nkitchen House\n  mixer spiral\n    takes 2-8 kg dough\n"
    bakery = bakery_of(text.format(bulk="2 h at 26 C"))
    work = work_in(bakery, bakery.formulas[0])
    (grid_of_dough,) = yeast_grids(work)
    found = printed(work)
    assert grid_of_dough.makings == 2 and "For one of 2 bowls." in found.notes
    assert "loaves" in found.stage and "bulk and proof together" in found.stage


def test_among_the_estimates_for_the_whole_batch() -> None:
    made = plain(formula(POOLISH))
    found = figures_of(made).estimates
    figure = found["poolish: instant yeast for 16 h at 18 C"]
    weighed = next(w.grams for w in made.batch.stages[0].weighed if w.portion.name == "instant yeast")
    assert float(figure.value) == pytest.approx(float(weighed) * 0.98**2, abs=0.02)
    assert figure.rule.startswith("an estimate, ") and "Salvado" in figure.source and "1916" in figure.source
    assert [given.name for given in figure.inputs] == ["instant yeast as written", "ripen as written, at 20 C"]


def test_a_yeast_wait_is_what_it_says() -> None:
    (wait,) = yeast_waits(formula(POOLISH))
    assert isinstance(wait, YeastWait) and wait.share == Fraction("0.0003")


def test_a_sponge_with_all_the_yeast_moves_its_dough_too() -> None:
    """The dough that takes it has no yeast but the sponge's: with half of it the proof is another. A poolish's share is small."""
    sponge = POOLISH.replace("instant yeast          0.4%", "instant yeast          0.03%")
    (moves,), (stays,) = yeast_waits(formula(sponge)), yeast_waits(formula(POOLISH))
    assert moves.carries_on and not stays.carries_on
    assert any("the dough changes too" in note for note in printed(plain(formula(sponge))).notes)
    assert not any("the dough changes too" in note for note in printed(plain(formula(POOLISH))).notes)
