"""What a baker adds up, looks for and reads at a distance."""

from __future__ import annotations

from fractions import Fraction

from loaves import LOAF_BY_WEIGHT, PLAIN_LOAF, vary
from sheets.card_text import notes_of
from sheets.test_prep_view import FERRY, block, figure, row, weight
from sheets.work import card, lines_of, parts_of, prepared, sheet

from manchet.batch.order import Order
from manchet.batch.weighing import weighings
from manchet.formula.model import Range
from manchet.sheets.forms.prep_sheet.view import DivideList, PrepSheet
from manchet.sheets.page.house import House
from manchet.sheets.page.html import blank, places
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.views import WeighRow
from manchet.sheets.registry import html_of

METRIC = Measures(House(), words_of("British"))
US = Measures(House("Letter", "US", "F", "American"), words_of("American"))

POOLISH = FERRY.replace(
    """  levain with 20% of all flour
    white flour           100%
    water                 100%
    ripe wheat starter     10%, counted as white flour
    mix by hand 3 min to 26 C
    ripen covered 8-10 h at 24 C until "domed"
    keep 60 g as ripe wheat starter
""",
    """  poolish with 20% of all flour
    made for each mix
    white flour           100%
    water                 100%
    ripe wheat starter      1.3%, counted as white flour
    mix by hand 3 min to 26 C
    ripen covered 8-10 h at 24 C until "domed"
""",
).replace("    levain\n", "    poolish\n")


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def test_a_stage_that_goes_whole_is_read_as_its_tub() -> None:
    for pieces in range(8, 24):
        view = sheet(POOLISH.replace("makes 10 loaves", f"makes {pieces} loaves"))
        poolish, dough = block(view, "poolish"), block(view, "dough")
        tub = sum(figure(r.weight) for r in poolish.rows)
        used = row(dough.rows, "poolish")
        assert used.notes == ("all of it",)
        assert abs(figure(used.weight) - tub) <= Fraction(5, 2)
        assert poolish.tub is not None
        (goes,) = poolish.tub.goes
        assert (goes.to, plain(goes.weight)) == ("dough", f"{used.weight} g"), "one figure on both sides of the arrow"
        assert poolish.tub.weight == goes.weight
        assert abs(weight(dough.tub) - sum(figure(r.weight) for r in dough.rows)) <= Fraction(1, 2)


def test_one_unit_in_a_range() -> None:
    assert plain(METRIC.time(Range(Fraction(6000), Fraction(7800)))) == "100–130 min"
    assert plain(METRIC.time(Range(Fraction(6000), Fraction(12000)))) == "100–200 min"


def test_a_step_that_may_be_left_out_has_no_stray_comma() -> None:
    text = FERRY.replace("      shape round\n      prove 60", "      shape round, optional\n      prove 60")
    said = [line.text for line in lines_of(sheet(text))]
    assert "Shape round (optional)" in said


def test_points_stand_under_one_another() -> None:
    rows = tuple(
        WeighRow(name, weight, "g") for name, weight in (("flour", "1,485"), ("yeast", "1.5"), ("salt", "24.30"))
    )
    assert places(rows) == 2
    assert [r.weight + blank(r.weight, places(rows)) for r in rows] == ["1,485.00", "1.50", "24.30"]
    assert places((*rows, WeighRow("milk", "4¼", "oz"))) == 0 and blank("1,485", 0) == ""


def test_what_is_weighed_now_and_added_later_is_said_aloud() -> None:
    page = html_of(sheet(FERRY))
    assert '<th scope="rowgroup" colspan="4" class="group">weighed now, added later</th>' in page


def test_prepared_tables_keep_their_totals() -> None:
    for table in weighings(prepared(POOLISH)).value:
        assert table.total == sum(line.reading.grams for line in table.lines)


def test_what_is_left_at_the_scale_is_said() -> None:
    rests = [
        [plain(part.rest) for part in divided(sheet(vary(LOAF_BY_WEIGHT, makes=f"2 loaves at {grams} g dough")))]
        for grams in (853, 865)
    ]
    assert rests == [["24 g of dough is left over"], [""]]


def test_an_amount_far_from_the_written_one_is_said_at_the_bake_and_the_proof() -> None:
    as_written = html_of(sheet(FERRY))
    other = html_of(sheet(FERRY, order=Order(piece_grams=Fraction(1900))))
    assert "written for" not in as_written
    assert other.count("bake to the core, not the clock") == 1
    assert other.count("go by the look, not the clock") >= 1


def test_the_card_says_it_once_too() -> None:
    assert not any("written for" in note for note in notes_of(card(FERRY)))
    notes = notes_of(card(FERRY, order=Order(piece_grams=Fraction(1900))))
    assert sum("bake to the core" in note for note in notes) == 1
    assert sum("go by the look, not the clock" in note for note in notes) == 1


def test_a_dough_three_times_the_written_one_keeps_its_warmth() -> None:
    flour = prepared(FERRY).batch.flour
    assert "it will keep its warmth" in html_of(sheet(FERRY, order=Order(flour=flour * 4)))
    assert "it will keep its warmth" not in html_of(sheet(FERRY, order=Order(flour=flour * 2)))


def divided(view: PrepSheet) -> list[DivideList]:
    return [part for part in parts_of(view) if isinstance(part, DivideList)]


def test_pieces_are_weighed_off_without_what_is_added_to_them_afterwards() -> None:
    """24 rolls of 110 g with 12 % of hazelnuts worked in after dividing are 98.2 g of dough each."""
    rolls = next(sort for part in divided(sheet(FERRY)) for sort in part.sorts if sort.noun == "rolls")
    assert (rolls.weight, plain(rolls.beside)) == ("98", "110 g with what is added below")


def test_dough_that_is_missing_for_its_pieces_is_said_where_they_are_weighed_off() -> None:
    assert [plain(part.rest) for part in divided(sheet(vary(LOAF_BY_WEIGHT, makes="2 loaves at 1035 g dough")))] == [
        "340 g of dough short: fewer, or lighter"
    ]
    assert "short" not in divided(sheet(vary(LOAF_BY_WEIGHT, makes="1 loaf at 1035 g dough")))[0].rest


def test_nobody_is_asked_for_the_warmth_of_water_where_none_goes_in() -> None:
    texts = {liquid: PLAIN_LOAF.replace("water ", f"{liquid} ") for liquid in ("eggs", "water")}
    boxes = {liquid: [box.label for box in sheet(text).readings] for liquid, text in texts.items()}
    assert "water" not in boxes["eggs"] and "water" in boxes["water"]
