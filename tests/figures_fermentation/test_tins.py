"""What a tin holds, the dough for it, and the tin for a dough."""

from fractions import Fraction
from functools import partial

import pytest
from figures_fermentation.test_losses import formula
from hypothesis import given, strategies as st

from manchet.batch.tins import dough_for_tin, tin_rule, tins_for
from manchet.formula.model import Formula
from manchet.kitchen.model import PLAIN, Kitchen, Vessel
from manchet.kitchen.tin_volume import box_volume, round_volume, tapered_volume, volume_by_water

WHITE = formula("2 loaves at 842 g dough", "tin loaf")
INCH = Fraction("25.4")


def mm(*figures: str) -> list[Fraction]:
    return [Fraction(figure) for figure in figures]


def kitchen(*volumes: int) -> Kitchen:
    return PLAIN._replace(vessels=tuple(Vessel("tin", f"tin {ml}", Fraction(ml)) for ml in volumes))


def test_pan_of_the_cereal_chemists() -> None:
    """AACC 10-10.03, 1 lb pan: top 22.9 x 11.4 cm, bottom 21 x 9.6 cm, 7 cm deep: 1615 ml."""
    top, bottom = mm("229", "114"), mm("210", "96")
    assert round(tapered_volume((top[0], top[1]), (bottom[0], bottom[1]), Fraction(70))) == 1615


def test_boxes_in_cubic_inches() -> None:
    """13 x 4 x 4 inches is 208 cubic inches, 9 x 4 x 4 is 144, 8 x 3.5 x 3 is 84."""
    for sides, inches in (((13, 4, 4), 208), ((9, 4, 4), 144), ((8, Fraction(7, 2), 3), 84)):
        assert box_volume(*(INCH * side for side in sides)) == inches * INCH**3 / 1000


def test_round_tins() -> None:
    """A cylinder of 200 mm and 80 mm: 2513 ml. A cone's frustum from 240 to 200 mm, 80 mm deep: 3049 ml."""
    assert round(round_volume(Fraction(200), Fraction(80))) == 2513
    assert round(round_volume(Fraction(240), Fraction(80), Fraction(200))) == 3049


def test_weighed_water() -> None:
    """1 l of water at 20 C weighs 998 g."""
    assert volume_by_water(Fraction(998)) == 1000


def dough(ml: int, of: Formula = WHITE) -> float:
    tin = dough_for_tin(f"tin {ml}", tin_rule(of), kitchen(ml))
    assert tin is not None
    return float(tin.grams)


@pytest.mark.parametrize(("ml", "grams"), [(1500, 842.7), (1800, 1011)])
def test_published_divisor_of_white_bread(ml: int, grams: float) -> None:
    """Risen Flour, "Calculating loaf tin capacity"."""
    assert dough(ml) == pytest.approx(grams, abs=0.5)


def test_a_lidded_tin() -> None:
    """13 x 4 x 4 inches with a lid takes 1040 to 1248 g (toolntricks.com): the rule gives the middle of it, 1144 g."""
    lidded = formula("2 loaves at 1000 g dough", "tin loaf", lid=", lid on")
    assert dough(3408, lidded) == pytest.approx(1144, abs=0.5)


def test_rye_under_a_lid_fills_its_tin_as_rye_does() -> None:
    lidded = formula("2 loaves at 1000 g dough", "rye tin loaf", lid=", lid on")
    assert dough(2400, lidded) == dough(2400, KINDS["rye"]) == pytest.approx(1714, abs=0.5)


def test_one_tin_by_another() -> None:
    """450 g in 8 x 3.5 x 3 inches are 771 g in 9 x 4 x 4, 1.71 times as much (wholegrain100.com, by its own ratio)."""
    small, large = (box_volume(*(INCH * side for side in sides)) for sides in ((8, Fraction(7, 2), 3), (9, 4, 4)))
    assert float(large / small) == pytest.approx(1.71, abs=0.005)
    assert dough(round(large)) / dough(round(small)) * 450 == pytest.approx(771, abs=1)


def test_the_best_tin_comes_first() -> None:
    found = tins_for(Fraction(842), partial(tin_rule, WHITE), kitchen(1000, 1600, 1500, 2500))
    assert [tin.vessel.name for tin in found] == ["tin 1500", "tin 1600"]
    assert float(found[0].fill) == pytest.approx(1, abs=0.01)
    assert tins_for(Fraction(842), partial(tin_rule, WHITE), PLAIN) == ()
    tray = PLAIN._replace(vessels=(Vessel("tray", "tray", Fraction(1500)),))
    assert tins_for(Fraction(842), partial(tin_rule, WHITE), tray) == ()


KINDS = {
    "white": WHITE,
    "rye": formula("2 loaves at 842 g dough", "rye tin loaf"),
    "lidded": formula("2 loaves at 842 g dough", "tin loaf", lid=", lid on"),
}


@pytest.mark.parametrize("kind", KINDS)
@given(st.integers(200, 6000))
def test_tin_and_dough_invert(kind: str, ml: int) -> None:
    bread = KINDS[kind]
    tin = dough_for_tin(f"tin {ml}", tin_rule(bread), kitchen(ml))
    assert tin is not None
    assert tin.grams * tin_rule(bread).divisor == ml
    (best,) = tins_for(tin.grams, partial(tin_rule, bread), kitchen(ml))
    assert best.fill == 1


sides = st.integers(20, 500).map(Fraction)


@given(sides, sides, sides, sides, sides)
def test_a_taper_lies_between_its_boxes(a: Fraction, b: Fraction, c: Fraction, d: Fraction, deep: Fraction) -> None:
    top, bottom = (max(a, b), max(c, d)), (min(a, b), min(c, d))
    assert box_volume(*bottom, deep) <= tapered_volume(top, bottom, deep) <= box_volume(*top, deep)
    assert tapered_volume(top, top, deep) == box_volume(*top, deep)
    assert tapered_volume(top, bottom, deep) == tapered_volume(bottom, top, deep)
