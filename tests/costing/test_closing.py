"""Money is rounded once, half up, and the parts of a table add up to its printed total."""

from fractions import Fraction

from hypothesis import given, strategies as st

from manchet.costing.closing import closing_figures
from manchet.quantities.money import decimals
from manchet.quantities.printing import round_to
from manchet.sheets.parts.money import money_column, money_text

CENTS = st.lists(st.fractions(min_value=0, max_value=10**6, max_denominator=10**4), max_size=30)


@given(CENTS, st.integers(0, 3))
def test_a_table_closes_on_its_total(figures: list[Fraction], places: int) -> None:
    parts = closing_figures(figures, places)
    assert sum(parts) == round_to(sum(figures, Fraction(0)), places)
    assert all(abs(part - figure) < Fraction(1, 10**places) for part, figure in zip(parts, figures, strict=True))


def test_a_half_goes_up() -> None:
    assert round_to(Fraction("0.125"), 2) == Fraction("0.13")
    assert round_to(Fraction("-0.125"), 2) == Fraction("-0.13")
    assert money_text(Fraction("1234.505"), "EUR") == "1,234.51"


def test_three_thirds_of_a_cent_more_go_to_the_first() -> None:
    """Three thirds of a euro are one euro: 34 and twice 33 cents, by largest remainder (Hamilton's method)."""
    assert money_column([Fraction(1, 3)] * 3, "EUR") == ("0.34", "0.33", "0.33")


def test_decimals_by_iso_4217() -> None:
    """ISO 4217, minor units: euro 2, yen 0, Kuwaiti dinar 3."""
    assert [decimals(currency) for currency in ("EUR", "JPY", "KWD")] == [2, 0, 3]
    assert money_text(Fraction(1500), "JPY") == "1,500"
