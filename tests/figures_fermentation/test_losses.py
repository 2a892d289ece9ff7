"""What bread loses, against loaves that were weighed."""

from fractions import Fraction

import pytest
from every import every
from hypothesis import given, strategies as st
from loaves import LOAF_BY_WEIGHT, PLAIN_LOAF, vary
from run_length import FEW_EXAMPLES
from sheets.work import sheet
from works import bakery_of, by_hand, formula_of, reports_of

from manchet.batch.model import Batch
from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.sizing import size_batch
from manchet.batch.usual_bake_loss import bake_loss_range, to_weigh_off
from manchet.batch.work import Work, work_of
from manchet.figures.losses.bake_loss import (
    bake_loss_of,
    baked_weight,
    half_the_water,
    loss_figures,
    moisture,
    more_skin,
    shelf_loss,
)
from manchet.formula.model import Formula, Range
from manchet.kitchen.model import PLAIN
from manchet.larder.book import builtin
from manchet.sheets.forms.prep_sheet.view import DivideList

BREAD = vary(
    PLAIN_LOAF,
    kind="{kind}",
    makes="{makes}",
    water="{water}%",
    fresh_yeast="1%",
    shape="{shape}",
    bake="40 min at 230 C{lid}",
)


def formula(makes: str, kind: str = "hearth loaf", water: int = 62, shape: str = "round", lid: str = "") -> Formula:
    return formula_of(BREAD.format(kind=kind, makes=makes, water=water, shape=shape, lid=lid))


def plain(of: Formula) -> Work:
    made = work_of(of, AS_WRITTEN, PLAIN, builtin())
    assert made.value is not None
    return made.value


def batch(of: Formula) -> Batch:
    return plain(of).batch


OUNCE = Fraction("28.349523125")


@every(
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
    at_least=8,
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
    bread = formula_of(text)
    figure = bake_loss_of(bread, bread.makes[0])
    assert figure is not None and (figure.value, figure.source) == (Fraction("14.5"), "the file")
    found = loss_figures(plain(bread))
    assert "bake loss, estimate" not in found and "baked weight, estimate" not in found
    assert found["moisture, estimate"].inputs[0] == figure


def test_silent_for_what_nobody_has_weighed() -> None:
    bread = formula("20 crackers at 20 g dough", "crisp", shape="flat")
    assert bake_loss_of(bread, bread.makes[0]) is None
    assert loss_figures(plain(bread)) == {}


def test_half_the_water() -> None:
    """Boutroux, 1897: dough loses in the oven half the water it took up. 100 flour and 62 water, salt, yeast: 165 (the
    yeast's own water counts). Round loaves of 2 kg then come to 125-135 from 100 of flour, as he prints."""
    bread = formula("2 loaves at 2000 g dough")
    loss = half_the_water(plain(bread))
    assert float(loss) == pytest.approx(0.62 / 2 / 1.65, abs=0.003)
    assert 125 <= bread.dough_share * (1 - loss) * 100 <= 135


def test_a_loaf_that_is_kept() -> None:
    """A 4 lb loaf (64 oz) loses 1.25 oz in 24 h, 5 oz in 48 h, 9 oz in 70 h: Goddard, grocers' guide."""
    ounces = [
        None if (share := shelf_loss(Fraction(hours))) is None else float(share * 64)
        for hours in (0, 24, 36, 48, 70, 71)
    ]
    assert ounces == [0, 1.25, 3.125, 5, 9, None]


def test_pan_bread_is_as_moist_as_the_law_lets_it_be() -> None:
    """US law allows bread 38 % (21 CFR 136.110). A lean tin loaf of 60 % water, baked out, comes to about that."""
    bread = formula("2 loaves at 900 g dough", "tin loaf", water=58)
    by = {percent: moisture(plain(bread), Fraction(percent, 100)) for percent in (8, 13)}
    assert by[8] is not None and by[13] is not None
    assert 0.34 < by[13] < 0.38 < by[8] < 0.42
    wetter = moisture(plain(formula("2 loaves at 900 g dough", "tin loaf", water=70)), Fraction(13, 100))
    assert wetter is not None and wetter > by[13]


def test_estimates_are_rounded_and_say_their_range() -> None:
    found = loss_figures(plain(formula("2 loaves at 850 g dough")))
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
    assert baked_weight(dough.high, loss).low == wanted
    assert baked_weight(dough.low, loss).high == wanted


def test_the_sheet_says_about_what_it_weighs_baked() -> None:
    text = BREAD.format(kind="hearth loaf", makes="2 loaves at 850 g dough", water=62, shape="round", lid="")
    (made,) = sheet(text).amounts
    assert made.baked == "740\u00a0g"
    known = text.replace("850 g dough", "850 g dough\n  bake loss 20%")
    (made,) = sheet(known).amounts
    assert made.baked == "680\u00a0g"


# ---- by baked weight, without a bake loss in the file -------------------------------------------------


def test_a_wanted_baked_weight_is_weighed_off_by_the_estimate() -> None:
    """10 to 16 % of a hearth loaf: 889 to 952 g for 800 g, so 920 g."""
    bread = formula("12 loaves at 800 g baked")
    made = batch(bread)
    (piece,) = made.pieces
    assert (piece.grams, piece.baked_grams, piece.baked_wanted) == (920, None, 800)
    assert made.divided == 12 * 920
    figure = loss_figures(by_hand(made))["dough to weigh off, estimate"]
    assert figure.value == 920 and "889 to 952 g" in figure.rule and "Gisslen" in figure.source


@given(st.integers(50, 3000), st.sampled_from(["hearth loaf", "tin loaf", "rolls", "rye tin loaf"]))
@FEW_EXAMPLES
def test_weighing_off_inverts_the_baked_weight(wanted: int, kind: str) -> None:
    """What is weighed off for a wanted weight comes out of the oven at about that weight."""
    made = batch(formula(f"12 loaves at {wanted} g baked", kind))
    span = bake_loss_range(made.formula, made.pieces[0])
    assert span is not None
    comes_out = baked_weight(made.pieces[0].grams, span)
    assert comes_out.low is not None and comes_out.high is not None
    assert comes_out.low - 10 <= wanted <= comes_out.high + 10


def test_it_can_be_asked_for_on_the_command_line() -> None:
    from manchet.cli.sizing import piece_weight

    state, grams = piece_weight("800 g baked")
    bread = formula("12 loaves at 900 g dough")
    made = size_batch(bread, Order(pieces=((Fraction(20), ""),), piece_grams=grams, piece_state=state), PLAIN).value
    assert made is not None
    assert [(p.number, p.grams, p.baked_wanted) for p in made.pieces] == [(20, 920, 800)]


def test_the_files_loss_decides_what_is_weighed_off() -> None:
    (piece,) = batch(formula("12 loaves at 800 g baked\n  bake loss 20%")).pieces
    assert (piece.grams, piece.baked_grams, piece.baked_wanted) == (1000, 800, None)


def test_nobody_knows_what_a_cracker_loses() -> None:
    text = BREAD.format(kind="crisp", makes="20 crackers at 20 g baked", water=62, shape="flat", lid="")
    bakery = bakery_of(text)
    assert [d.name for d in bakery.diagnostics if d.severity.value == "error"] == ["no-bake-loss-for-baked-weight"]
    assert "a crisp has none" in bakery.diagnostics[0].message
    text = BREAD.format(kind="hearth loaf", makes="20 kg baked", water=62, shape="round", lid="")
    (report,) = [d for d in reports_of(text) if d.severity.value == "error"]
    assert "not made by the piece" in report.message


def test_a_loaf_placed_in_a_tin_loses_like_one() -> None:
    text = BREAD.format(kind="soft", makes="2 loaves at 900 g dough", water=62, shape="long", lid="")
    on_the_hearth = formula_of(text)
    in_a_tin = formula_of(text.replace("    prove", "    place in long tin\n    prove"))
    assert bake_loss_range(in_a_tin, in_a_tin.makes[0]) == Range(Fraction(8, 100), Fraction(13, 100))
    assert bake_loss_range(on_the_hearth, on_the_hearth.makes[0]) == Range(Fraction(10, 100), Fraction(16, 100))


BY_WEIGHT = vary(LOAF_BY_WEIGHT, makes="2 loaves at {baked} g baked", water="660 g")


@pytest.mark.parametrize(
    ("baked_grams", "reported"),
    [(720, []), (760, []), (700, []), (780, ["dough-short-of-pieces"]), (600, ["dough-left-over"])],
)
def test_weights_are_held_against_the_whole_estimate(baked_grams: int, reported: list[str]) -> None:
    """1690 g of dough make two loaves of 710 to 761 g: nothing within 10 to 16 % is reported."""
    bakery = bakery_of(BY_WEIGHT.format(baked=baked_grams))
    assert [d.name for d in bakery.diagnostics if d.name.startswith("dough-")] == reported


def test_the_sheet_says_between_what_to_weigh_off() -> None:
    text = BREAD.format(kind="hearth loaf", makes="12 loaves at 800 g baked", water=62, shape="round", lid="")
    printed = sheet(text)
    assert [(made.weight, made.baked) for made in printed.amounts] == [("920", "800\u00a0g")]
    divide = next(part for part in printed.bench if part.part == "divide")
    assert isinstance(divide, DivideList)
    assert divide.sorts[0].baked == "800\u00a0g"
    (said,) = divide.off
    assert "890\u00a0g to 950\u00a0g for about 800\u00a0g baked; never under: 950\u00a0g" in said
    assert said.endswith("mix 11.4\u00a0kg for 12: build with --piece-weight '950 g dough'")
    known = sheet(text.replace("baked\n", "baked\n  bake loss 20%\n", 1))
    divide = next(part for part in known.bench if part.part == "divide")
    assert isinstance(divide, DivideList) and (divide.sorts[0].baked, divide.off) == ("800\u00a0g", ())


# ---- on the shelf -------------------------------------------------------------------------------------


def test_a_plain_loaf_on_the_shelf() -> None:
    """Accum's quartern loaf of 5 lb dough is Goddard's of about 4 lb: after 48 h it has lost 5 oz in 64."""
    made = batch(formula("1 loaf at 2086 g dough"))
    found = loss_figures(by_hand(made))
    fresh, day, two = (
        found[name + ", estimate"].value
        for name in ("baked weight", "weight after 24 h unwrapped", "weight after 48 h unwrapped")
    )
    assert fresh == 1810
    assert float(day / fresh) == pytest.approx(1 - 1.25 / 64, abs=0.005)
    assert float(two / fresh) == pytest.approx(1 - 5 / 64, abs=0.005)
    assert "Goddard" in found["weight after 48 h unwrapped, estimate"].source


def test_a_small_loaf_dries_faster_and_a_soft_one_is_not_told() -> None:
    assert more_skin(Fraction("1814.37")) == pytest.approx(1, abs=0.001)
    assert more_skin(Fraction("1814.37") / 8) == 2
    for kind, makes in (("soft", "2 loaves at 900 g dough"), ("rolls", "20 rolls at 60 g dough")):
        assert not any("unwrapped" in name for name in loss_figures(plain(formula(makes, kind))))
    known = loss_figures(plain(formula("2 loaves at 900 g dough\n  bake loss 14%")))
    assert "weight after 24 h unwrapped, estimate" in known


def test_white_bread_is_as_moist_as_it_is_in_tables() -> None:
    """White bread of 44 to 45 % water, and rye of 46 % (Geankoplis, table A.4-1: 2.72 to 2.85 kJ/kg K): hearth bread of
    75 % water, lightly baked, comes near it; no lean loaf is moister."""
    wet, lean = formula("2 loaves at 900 g dough", water=78), formula("2 loaves at 900 g dough", water=60)
    moist, dry = (moisture(plain(bread), Fraction(10, 100)) for bread in (wet, lean))
    assert moist is not None and dry is not None
    assert 0.43 < moist < 0.46 and 0.36 < dry < 0.40


def test_what_bowl_and_bench_take_is_an_estimate_that_sizes_nothing() -> None:
    """2 % (Prejean, 2011; Rumford, 1794: 2.03 %): said beside, and the dough mixed stays what the pieces take."""
    made = batch(formula("10 loaves at 980 g dough"))
    figure = loss_figures(by_hand(made))["dough loss, estimate"]
    assert (figure.value, made.dough) == (2, 9800) and "1 to 5 %" in figure.rule
    (mixed,) = figure.inputs
    assert mixed.value == 10000
    said = batch(formula("10 loaves at 980 g dough\n  dough loss 1.5%"))
    assert "dough loss, estimate" not in loss_figures(by_hand(said))
