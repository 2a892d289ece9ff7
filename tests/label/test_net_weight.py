"""Directive 76/211/EEC, Annex I, 2.4: tolerable negative errors; the 400 g loaf with its limits 388 and 376 g is the worked case of the
British guidance on the Packaged Goods Regulations 2006. The last band is from memory."""

from fractions import Fraction

import pytest

from manchet.label.net_weight import tolerable_error


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
