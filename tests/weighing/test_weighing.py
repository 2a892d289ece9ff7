"""What the scales read, and that the lines add up."""

from __future__ import annotations

from fractions import Fraction

import pytest
from every import every
from hypothesis import assume, given, strategies as st
from weighing.kneading import FLOUR, SALT, SEEDS, STARTER, WATER, YEAST, ingredient, stage, weighed

from manchet.batch.dilution import Dilution, dilution_of
from manchet.batch.mixes import Making
from manchet.batch.model import Weighed
from manchet.batch.scales import COARSELY, FINELY, OUNCE, System, reading_of, row_reading
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weigh
from manchet.diagnostics.diagnostic import Severity
from manchet.kitchen.model import PLAIN, Kitchen, Scale
from manchet.larder.ingredient import Ingredient

BENCH = Scale("bench", Fraction(5), Fraction(30000))
FINE = Scale("fine", Fraction(1, 10), Fraction(500))
BAKEHOUSE = PLAIN._replace(scales=(BENCH, FINE))
COARSE = PLAIN._replace(scales=(BENCH,))


def making(*lines: Weighed) -> Making:
    made = stage("dough", lines)
    return Making(made, 1, tuple(lines), made.into, Fraction(0))


def readings(table: Table) -> dict[str, Fraction]:
    return {line.weighed.portion.name: line.reading.grams for line in table.lines}


def test_each_line_has_the_scale_that_suits_it() -> None:
    assert reading_of(Fraction("6203.2"), BAKEHOUSE)[:3] == (6205, 5, "bench")
    assert reading_of(Fraction("130.46"), BAKEHOUSE)[:3] == (Fraction("130.5"), Fraction(1, 10), "fine")


def test_more_than_a_scale_holds_is_weighed_in_goes() -> None:
    assert reading_of(Fraction(71002), BAKEHOUSE) == (71000, 5, "bench", 3)


def test_without_a_scale_one_is_assumed_and_said() -> None:
    assert reading_of(Fraction("432.6"), PLAIN)[:3] == (433, 1, "")
    assert reading_of(Fraction("12.34"), PLAIN)[:2] == (Fraction("12.3"), Fraction(1, 10))
    assert weigh(making(weighed(FLOUR, 100)), PLAIN).value.assumed
    assert not weigh(making(weighed(FLOUR, 100)), BAKEHOUSE).value.assumed


def test_the_sum_closes_on_the_flour() -> None:
    lines = weighed(FLOUR, "1002"), weighed(WATER, "702"), weighed(SEEDS, "702"), weighed(SALT, "21.04")
    table = weigh(making(*lines), BAKEHOUSE).value
    # 1000 + 700 + 700 + 21.0 is 6.04 g short of 2427.04, more than the 5 g that the bench reads: one reading more of the
    # flour leaves the hydration nearer to 70.06 % than one more of the water
    assert readings(table) == {
        "white flour": 1005,
        "water": 700,
        "sunflower seeds": 700,
        "salt": 21,
    }
    assert table.total == 2426
    assert [line.closes for line in table.lines] == [True, False, False, False]
    assert table.fine == 5


def test_it_never_closes_on_a_culture_or_a_stage() -> None:
    table = weigh(making(weighed(STARTER, "804"), weighed("sour", "3003"), weighed(WATER, "402")), COARSE).value
    assert readings(table) == {"ripe rye starter": 805, "sour": 3005, "water": 400}


def test_with_neither_flour_nor_water_nothing_moves() -> None:
    table = weigh(making(weighed(SEEDS, 402), weighed(SALT, 402)), COARSE).value
    assert (readings(table), table.total) == ({"sunflower seeds": 400, "salt": 400}, 800)
    assert not any(line.closes for line in table.lines)


def test_a_line_moved_by_more_than_five_in_a_hundred_is_noted() -> None:
    outcome = weigh(making(weighed(FLOUR, 5000), weighed(SALT, "47.4")), COARSE)
    (note,) = outcome.diagnostics
    assert (note.name, note.severity) == ("moved-by-rounding", Severity.NOTE)
    assert note.message == "salt is 47.4 g and the scale shows 45 g: 5% less"
    assert outcome.value.lines[1].moved == Fraction(24, 474)


def test_what_a_fine_scale_moves_is_told_with_a_digit_more_than_it_shows() -> None:
    (note,) = weigh(making(weighed(FLOUR, 100), weighed(YEAST, "0.186")), PLAIN).diagnostics
    assert note.message.startswith("instant yeast is 0.186 g and the scale shows 0.2 g: 8% more")


def test_eight_ounces_are_for_the_bench_scale() -> None:
    table = weigh(making(weighed(FLOUR, 2000), weighed(SALT, "226.796185")), PLAIN, System.US).value
    assert [line.reading.step for line in table.lines] == [OUNCE / 4, OUNCE / 4]


def test_a_line_moved_by_less_is_not() -> None:
    assert weigh(making(weighed(FLOUR, 5000), weighed(SALT, 109)), COARSE).diagnostics == ()


def test_an_amount_too_small_is_dissolved_in_the_stages_water() -> None:
    gram = PLAIN._replace(scales=(Scale("home", Fraction(1), Fraction(5000)),))
    outcome = weigh(making(weighed(FLOUR, 400), weighed(WATER, 400), weighed(YEAST, "0.4")), gram)
    yeast = outcome.value.lines[2]
    assert yeast.dilution == Dilution(Fraction(10), Fraction(490), "water", Fraction(20), Fraction(2, 5))
    assert readings(outcome.value) == {"white flour": 400, "water": 380, "instant yeast": 20}
    assert outcome.value.total == 800
    (report,) = outcome.diagnostics
    assert (report.name, report.severity) == ("too-small-to-weigh", Severity.WARNING)
    assert report.message == "0.4 g of instant yeast in dough is too little for a scale that reads 1 g"
    assert report.help.startswith("stir 10 g into 490 g of water and use 20 g of that")


def test_of_a_dear_spice_little_is_stirred_up() -> None:
    saffron = ingredient("saffron", "spice")
    gram = PLAIN._replace(scales=(Scale("home", Fraction(1), Fraction(5000)),))
    table = weigh(making(weighed(FLOUR, 400), weighed(saffron, "0.25")), gram).value
    assert table.lines[1].dilution == Dilution(Fraction(2), Fraction(198), "white flour", Fraction(25), Fraction(1, 4))


def test_where_the_water_is_too_little_the_flour_carries() -> None:
    saffron = ingredient("saffron", "spice")
    gram = PLAIN._replace(scales=(Scale("home", Fraction(1), Fraction(5000)),))
    table = weigh(making(weighed(FLOUR, 400), weighed(WATER, 10), weighed(saffron, "0.25")), gram).value
    assert table.lines[2].dilution == Dilution(Fraction(2), Fraction(198), "white flour", Fraction(25), Fraction(1, 4))


@pytest.mark.parametrize("kind", ["lye", "culture", "fat"])
def test_what_may_not_be_diluted_has_no_way_out(kind: str) -> None:
    lines = weighed(FLOUR, 4000), weighed(WATER, 4000), weighed(ingredient("thing", kind), 1)
    (report,) = weigh(making(*lines), COARSE).diagnostics
    assert (report.name, report.severity) == ("too-small-to-weigh", Severity.ERROR)
    assert report.message == "1 g of thing in dough is too little for a scale that reads 5 g"


def test_a_dilution_needs_enough_of_its_carrier() -> None:
    assert dilution_of(Fraction("0.4"), Fraction(1), "water", Fraction(19)) is None
    assert dilution_of(Fraction("0.4"), Fraction(1), "water", Fraction(20)) is not None


@given(st.fractions(min_value=Fraction(1, 50), max_value=Fraction(1, 2)))
def test_a_dilution_brings_what_is_asked_and_can_be_weighed(grams: Fraction) -> None:
    found = dilution_of(grams, Fraction(1), "water", Fraction(10**6))
    assume(found is not None)
    assert found is not None
    assert abs(found.brings - grams) <= grams / 50
    assert found.brings == found.use * found.dissolve / (found.dissolve + found.into)
    assert all(amount.denominator == 1 for amount in (found.use, found.dissolve, found.into))
    assert found.carried + found.brings == found.use


@every([(0, 0), (12, 0), (13, 1), (37, 1), (38, 2), (62, 2), (63, 3), (87, 3), (88, 4), (99, 4)], at_least=10)
def test_ounces_round_to_quarters(hundredths: int, quarters: int) -> None:
    """US Armed Forces Recipe Service, TM 10-412, card A-1: .00-.12 is 0; .13-.37 is 1/4; .38-.62 is 1/2; …"""
    whole = 100 * OUNCE
    assert reading_of(whole + OUNCE * hundredths / 100, PLAIN, System.US).grams == whole + OUNCE * quarters / 4


@every([("1.485", "1.5"), ("12.34", "12.3"), ("43.4", "43"), ("156.34", "156"), ("0.06", "0.1")], at_least=5)
def test_under_half_a_pound_a_house_of_pounds_weighs_in_grams_as_any_other(grams: str, reads: str) -> None:
    for kitchen in (
        PLAIN,
        PLAIN._replace(scales=(Scale("home", Fraction(1)), Scale("fine", Fraction(1, 10), Fraction(20)))),
    ):
        pounds, metric = (
            row_reading(Fraction(grams), kitchen, system, FINELY) for system in (System.US, System.METRIC)
        )
        assert pounds == metric
        assert pounds.grams == Fraction(reads)


@every(["1", "5", "10", "20"], at_least=4)
def test_one_scale_reads_light_rows_in_grams_and_the_others_in_ounces(reads: str) -> None:
    """What it shows in ounces is no finer than in grams: a quarter, a half, a whole one."""
    one = PLAIN._replace(scales=(Scale("home", Fraction(reads), Fraction(5000)),))
    ounces = {"1": OUNCE / 4, "5": OUNCE / 4, "10": OUNCE / 2, "20": OUNCE}[reads]
    assert reading_of(Fraction(4000), one, System.US).step == ounces
    assert reading_of(Fraction(3), one, System.US).step == Fraction(reads)


def test_a_scale_in_grams_shows_the_next_coarser_ounces() -> None:
    assert reading_of(Fraction(6000), BAKEHOUSE, System.US).step == OUNCE / 4
    assert reading_of(Fraction(100), BAKEHOUSE, System.US).step == Fraction(1, 10)


def test_a_report_of_a_light_row_is_in_grams_in_a_house_of_pounds_too() -> None:
    (note,) = weigh(making(weighed(FLOUR, 1000), weighed(YEAST, "0.186")), PLAIN, System.US).diagnostics
    assert note.message.startswith("instant yeast is 0.186 g and the scale shows 0.2 g: 8% more")


amounts = st.fractions(min_value=Fraction(1, 3), max_value=40000, max_denominator=1000)
kitchens = st.sampled_from([PLAIN, BAKEHOUSE, COARSE, PLAIN._replace(scales=(FINE,))])
others = st.lists(st.tuples(st.sampled_from([SALT, YEAST, SEEDS, STARTER]), amounts), max_size=6)


@given(amounts, amounts, others, kitchens, st.sampled_from(System))
def test_rows_add_up_and_each_is_rounded_by_itself(
    flour: Fraction, water: Fraction, more: list[tuple[Ingredient, Fraction]], kitchen: Kitchen, system: System
) -> None:
    """Only flour and water may stand higher than their own rounding, and only where the rows would fall short."""
    lines = weighed(FLOUR, flour), weighed(WATER, water), *(weighed(i, grams) for i, grams in more)
    table = weigh(making(*lines), kitchen, system).value
    assert table.total == sum(line.reading.grams for line in table.lines)
    for line in table.lines:
        assert (line.reading.grams / line.reading.step).denominator == 1
        part = FINELY if line.weighed.portion.name in ("salt", "instant yeast") else COARSELY
        alone = row_reading(line.wanted, kitchen, system, part)
        if line.weighed.portion.name in ("white flour", "water"):
            assert line.closes == (line.reading.grams > alone.grams)
            assert line.reading.grams >= alone.grams
        elif line.dilution is None:
            assert line.reading == alone
            assert abs(line.reading.grams - line.weighed.grams) <= line.reading.step / 2
            assert not line.closes


@given(amounts, amounts, st.lists(amounts, max_size=6), kitchens)
def test_the_total_is_never_short_by_more_than_the_coarsest_row_reads(
    flour: Fraction, water: Fraction, more: list[Fraction], kitchen: Kitchen
) -> None:
    lines = weighed(FLOUR, flour), weighed(WATER, water), *(weighed(SEEDS, grams) for grams in more)
    table = weigh(making(*lines), kitchen).value
    assume(table.lines[0].reading.grams or table.lines[1].reading.grams)
    exact = sum((line.wanted for line in table.lines), Fraction(0))
    coarsest = max(line.reading.step for line in table.lines)
    assert exact - table.total <= coarsest
    if any(line.closes for line in table.lines):
        assert exact - table.total > 0, "no more than it takes"


def test_flour_and_water_go_up_together_where_that_keeps_the_hydration() -> None:
    """Eight rows of 2 g too little each: 16 g short, 11 of them to make good, in three readings of 5 g."""
    rows = weighed(FLOUR, "1002"), weighed(WATER, "702"), *(weighed(SEEDS, "602") for _ in range(6))
    table = weigh(making(*rows), COARSE).value
    # 1010 and 705 are 69.8 %, 1005 and 710 are 70.6 %: the formula has 70.06 %
    assert [line.reading.grams for line in table.lines[:2]] == [1010, 705]
    assert [line.closes for line in table.lines] == [True, True, *[False] * 6]


def test_with_no_water_flour_alone_goes_up() -> None:
    rows = weighed(FLOUR, "1002"), *(weighed(SEEDS, "602") for _ in range(4))
    assert [line.reading.grams for line in weigh(making(*rows), COARSE).value.lines][:2] == [1005, 600]


def test_two_equal_rows_are_weighed_alike() -> None:
    """What was 1,320 g beside 1,325 g for the same amount."""
    table = weigh(making(weighed(FLOUR, "1322.4"), weighed(SEEDS, "1322.4"), weighed(WATER, "900")), COARSE).value
    assert [line.reading.grams for line in table.lines] == [1320, 1320, 900]


@pytest.mark.parametrize(
    ("of", "grams", "printed"),
    [(SALT, "156.34", 156), (SEEDS, "22.37", "22.4"), (YEAST, "1.52", "1.5"), (SALT, "99.96", 100), (SEEDS, "99.96", "100")],
)  # fmt: skip
def test_a_figure_of_the_fine_scale_has_three_digits_at_most(of: Ingredient, grams: str, printed: int | str) -> None:
    table = weigh(making(weighed(FLOUR, 9000), weighed(of, grams)), BAKEHOUSE).value
    assert table.lines[1].reading.grams == Fraction(printed)


def test_salt_and_yeast_are_read_more_finely_than_all_else() -> None:
    """150 g: on a scale of 5 g that is a thirtieth, enough for seeds; salt goes on the fine one."""
    table = weigh(making(weighed(FLOUR, 5000), weighed(SEEDS, 152), weighed(SALT, 152)), BAKEHOUSE).value
    assert [(line.reading.grams, line.reading.scale) for line in table.lines[1:]] == [(150, "bench"), (152, "fine")]
    ounces = weigh(making(weighed(FLOUR, 5000), weighed(SEEDS, 152), weighed(SALT, 152)), BAKEHOUSE, System.US).value
    assert [line.reading.step / OUNCE for line in ounces.lines[1:]] == [Fraction(1, 4), 1 / OUNCE]


@pytest.mark.parametrize(
    ("reads", "grams", "finer"),
    [("5", "1", "`reads 0.1 g`"), ("0.1", "0.04", "`reads 0.01 g`"), ("0.1", "0.03", "`reads 0.001 g`"), ("0.01", "0.002", "")],
)  # fmt: skip
def test_the_scale_to_get_is_finer_than_the_one_there_is(reads: str, grams: str, finer: str) -> None:
    scale = PLAIN._replace(scales=(Scale("home", Fraction(reads), Fraction(5000)),))
    lines = weighed(FLOUR, 400), weighed(WATER, 4), weighed(ingredient("thing", "lye"), grams)
    (report,) = [r for r in weigh(making(*lines), scale).diagnostics if r.name == "too-small-to-weigh"]
    assert report.help.endswith(finer) and report.help.startswith("make more at once")
    assert (finer == "") is ("scale fine" not in report.help)
