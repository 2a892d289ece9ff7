"""Directive 76/211/EEC, Annex I, 2.4: tolerable negative errors; the 400 g loaf with its limits 388 and 376 g is the worked case of the
British guidance on the Packaged Goods Regulations 2006. The last band is from memory."""

from fractions import Fraction

import pytest
from works import bakery_of

from manchet.label.net_weight import shortfall, tolerable_error


@pytest.mark.parametrize(
    ("declared", "error"),
    [(45, "4.1"), (50, "4.5"), (100, "4.5"), (110, "5"), (200, "9"), (250, "9"), (300, "9"), (400, "12"), (500, "15"), (800, "15"),
     (1000, "15"), (1600, "24")],
)  # fmt: skip
def test_tolerable_error(declared: int, error: str) -> None:
    assert tolerable_error(Fraction(declared)) == Fraction(error)


def test_the_400_g_loaf() -> None:
    error = tolerable_error(Fraction(400))
    assert (400 - error, 400 - 2 * error) == (388, 376)


@pytest.mark.parametrize(
    ("declared", "weighs", "errors"),
    [
        (45, "40.9", 0), (45, "40.8", 1), (45, "36.8", 1), (45, "36.7", 2), (110, "105.0", 0), (110, "104.9", 1), (110, "100.0", 1),
        (110, "99.9", 2), (250, "241", 0), (250, "232", 1), (250, "231.9", 2), (400, "388", 0), (400, "376", 1), (400, "375.9", 2),
        (800, "785", 0), (800, "770", 1), (1600, "1576", 0), (1600, "1552", 1), (1600, "1551.9", 2),
    ],
)  # fmt: skip
def test_w9_over_one_error_and_over_two(declared: int, weighs: str, errors: int) -> None:
    """The limits T1 and T2 of the British guidance (nibusinessinfo.co.uk, rules for bakers): 388 and 376 g of the 400 g loaf."""
    found = shortfall(Fraction(declared), Fraction(weighs))
    assert found is not None and found.errors == errors
    assert found.grams == declared - Fraction(weighs)


def test_w9_what_is_no_lighter_is_not_short() -> None:
    assert shortfall(Fraction(400), Fraction(400)) is None


LOAF = """kitchen Quay
  sells in Britain

formula Loaf
  kind hearth loaf
  bake loss 10%
  makes 10 loaves at {dough} g dough
  sold prepacked at 400 g net
  dough
    white flour 3000 g
    water 2000 g
    salt 60 g
    instant yeast 20 g
    mix slow 8 min to 25 C
    divide
    bake 30 min at 230 C
    cool 2 h
"""


@pytest.mark.parametrize(
    ("dough", "said"), [(440, "one in forty may be, by up to 12 g"), (425, "over the 12 g"), (410, "over 24 g")]
)
def test_w9_the_400_g_loaf_is_told_how_short_it_is(dough: int, said: str) -> None:
    """396, 382.5 and 369 g when they are cooled."""
    (one,) = (one for one in bakery_of(LOAF.format(dough=dough)).diagnostics if one.name == "net-weight-short")
    assert said in one.message
