"""A bread is the same bread in whichever of the three ways it is written."""

from __future__ import annotations

from fractions import Fraction

from benchmarks.generate import by_weight, in_overall, on_dough_flour, recipe
from hypothesis import given, strategies as st
from reference.reading import bakery_of

from manchet.batch.totals import totals_of

RANDOMS = st.randoms(use_true_random=False)


def shares_and_totals(text: str) -> tuple[dict[str, Fraction], dict[str, object]]:
    bakery = bakery_of(text)
    (formula,) = bakery.formulas
    totals = totals_of(formula, bakery.larder)._asdict()
    named = ("water_added", "water_in_all", "salt", "sugar", "fat", "prefermented", "rye", "bound_water", "yeasts")
    shares: dict[str, Fraction] = {}
    for line in formula.overall:
        shares[line.name] = shares.get(line.name, Fraction(0)) + line.share
    return shares, {name: totals[name] for name in named}


@given(random=RANDOMS, flour=st.integers(1, 9).map(lambda kilos: Fraction(1000 * kilos)))
def test_percentages_to_weights_and_back(random: object, flour: Fraction) -> None:
    bread = recipe(random, 1)  # type: ignore[arg-type]
    assert shares_and_totals(by_weight(bread, flour)) == shares_and_totals(in_overall(bread))


@given(random=RANDOMS)
def test_dough_flour_and_overall_agree(random: object) -> None:
    bread = recipe(random, 1)  # type: ignore[arg-type]
    assert shares_and_totals(on_dough_flour(bread)) == shares_and_totals(in_overall(bread))
