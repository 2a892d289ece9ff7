"""What bread loses, against loaves that were weighed."""

from fractions import Fraction

import pytest
from hypothesis import given, strategies as st
from sheets.work import sheet

from manchet.bakery import read, written_batch
from manchet.figures.losses import (
    bake_loss_of,
    bake_loss_range,
    baked,
    half_the_water,
    kept,
    loss_figures,
    moisture,
    to_weigh_off,
)
from manchet.formula.model import Batch, Formula, Range
from manchet.larder.book import builtin
from manchet.source.text import SourceText

BREAD = """
formula Bread
  kind {kind}
  makes {makes}

  overall
    bread flour          100%
    water                 {water}%
    fresh yeast            1%
    salt                   2%

  dough
    everything else
    mix slow 4 min to 26 C
    ferment 2 h at 26 C
    divide
    shape {shape}
    prove 1 h at 26 C
    bake 40 min at 230 C{lid}
    cool 2 h
"""


def formula(makes: str, kind: str = "hearth loaf", water: int = 62, shape: str = "round", lid: str = "") -> Formula:
    bakery = read([SourceText("test.bake", BREAD.format(kind=kind, makes=makes, water=water, shape=shape, lid=lid))])
    assert len(bakery.formulas) == 1, bakery.diagnostics
    return bakery.formulas[0]


def batch(of: Formula) -> Batch:
    from manchet.larder.kitchen import PLAIN

    made = written_batch(of, PLAIN).value
    assert made is not None
    return made


OUNCE = Fraction("28.349523125")


@pytest.mark.parametrize(
    ("kind", "makes", "before", "after"),
    [
        ("rolls", "12 rolls at 84 g dough", 84, 75),  # a baker's scale
        ("hearth loaf", "2 loaves at 314 g dough", 314, 267),  # a baker's scale
        ("hearth loaf", "4 baguettes at 335 g dough", 335, 255),  # a television check, 2023: "up to 80 g"
        ("rye hearth loaf", "1 loaf at 1134 g dough", 160, 139),  # Rumford 1794: a loaf of 2.5 lb loses 21/160
        ("hearth loaf", "1 loaf at 2268 g dough", 80, Fraction("69.5")),  # Accum 1821: 5 lb give 4 lb 5.5 oz
        ("hearth loaf", "18 loaves at 2217 g dough", 88, Fraction("74.5")),  # Accum 1821: brown bread
        ("hearth loaf", "2 loaves at 500 g dough", 100, 90),  # Gisslen: 10 % …
        ("tin loaf", "2 loaves at 500 g dough", 100, 87),  # … to 13 %
    ],
)
def test_what_was_weighed_lies_within_the_estimate(kind: str, makes: str, before: int, after: Fraction) -> None:
    bread = formula(makes, kind)
    span = bake_loss_range(bread, bread.makes[0])
    figure = bake_loss_of(bread, bread.makes[0])
    assert span is not None and span.low is not None and span.high is not None and figure is not None
    assert span.low <= 1 - Fraction(after) / before <= span.high
    assert figure.value == span.likely * 100
    assert "estimate" in figure.rule and figure.source


def test_shape_size_tin_and_lid_each_count() -> None:
    def likely(makes: str, kind: str = "hearth loaf", lid: str = "") -> Fraction:
        bread = formula(makes, kind, lid=lid)
        figure = bake_loss_of(bread, bread.makes[0])
        assert figure is not None
        return figure.value

    lidded = likely("2 loaves at 900 g dough", "tin loaf", ", lid on")
    tin, loaf = likely("2 loaves at 900 g dough", "tin loaf"), likely("2 loaves at 900 g dough")
    assert lidded < tin < loaf < likely("2 loaves at 300 g dough") < likely("2 baguettes at 300 g dough")


def test_the_files_own_loss_decides() -> None:
    text = BREAD.format(
        kind="hearth loaf", makes="2 loaves at 900 g dough\n  bake loss 14.5%", water=62, shape="round", lid=""
    )
    bread = read([SourceText("test.bake", text)]).formulas[0]
    figure = bake_loss_of(bread, bread.makes[0])
    assert figure is not None and (figure.value, figure.source) == (Fraction("14.5"), "the file")
    assert loss_figures(batch(bread), builtin()) == {}


def test_silent_for_what_nobody_has_weighed() -> None:
    bread = formula("20 crackers at 20 g dough", "crisp", shape="flat")
    assert bake_loss_of(bread, bread.makes[0]) is None
    assert loss_figures(batch(bread), builtin()) == {}


def test_half_the_water() -> None:
    """Boutroux, 1897: dough loses in the oven half the water it took up. 100 flour and 62 water, salt, yeast: 165 (the
    yeast's own water counts). Round loaves of 2 kg then come to 125-135 from 100 of flour, as he prints."""
    bread = formula("2 loaves at 2000 g dough")
    loss = half_the_water(bread, builtin())
    assert float(loss) == pytest.approx(0.62 / 2 / 1.65, abs=0.003)
    assert 125 <= bread.dough_share * (1 - loss) * 100 <= 135


def test_a_loaf_that_is_kept() -> None:
    """A 4 lb loaf (64 oz) loses 1.25 oz in 24 h, 5 oz in 48 h, 9 oz in 70 h: Goddard, grocers' guide."""
    ounces = [
        None if (share := kept(Fraction(hours))) is None else float(share * 64) for hours in (0, 24, 36, 48, 70, 71)
    ]
    assert ounces == [0, 1.25, 3.125, 5, 9, None]


def test_pan_bread_is_as_moist_as_the_law_lets_it_be() -> None:
    """US law allows bread 38 % (21 CFR 136.110). A lean tin loaf of 60 % water, baked out, comes to about that."""
    bread = formula("2 loaves at 900 g dough", "tin loaf", water=58)
    by = {percent: moisture(bread, builtin(), Fraction(percent, 100)) for percent in (8, 13)}
    assert by[8] is not None and by[13] is not None
    assert 0.34 < by[13] < 0.38 < by[8] < 0.42
    wetter = moisture(formula("2 loaves at 900 g dough", "tin loaf", water=70), builtin(), Fraction(13, 100))
    assert wetter is not None and wetter > by[13]


def test_estimates_are_rounded_and_say_their_range() -> None:
    found = loss_figures(batch(formula("2 loaves at 850 g dough")), builtin())
    weight = found["baked weight, estimate"]
    assert (weight.value, weight.unit) == (740, "g")
    assert "714 to 765 g" in weight.rule
    assert found["bake loss, estimate"].value == 13
    assert found["moisture, estimate"].unit == "%"


shares = st.integers(0, 60).map(lambda percent: Fraction(percent, 100))


@given(st.integers(1, 5000).map(Fraction), shares, shares)
def test_dough_weighed_off_comes_out_as_wanted(wanted: Fraction, one: Fraction, other: Fraction) -> None:
    loss = Range(min(one, other), max(one, other))
    dough = to_weigh_off(wanted, loss)
    assert dough.low is not None and dough.high is not None and wanted <= dough.low <= dough.high
    assert baked(dough.high, loss).low == wanted
    assert baked(dough.low, loss).high == wanted


def test_the_sheet_says_that_it_is_an_estimate() -> None:
    text = BREAD.format(kind="hearth loaf", makes="2 loaves at 850 g dough", water=62, shape="round", lid="")
    makes = next(fact.value for fact in sheet(text).head if fact.label == "makes")
    assert makes.endswith(", about 740\u00a0g baked (estimate)")
    known = text.replace("850 g dough", "850 g dough\n  bake loss 20%")
    makes = next(fact.value for fact in sheet(known).head if fact.label == "makes")
    assert makes.endswith(", about 680\u00a0g baked")
