"""Dishes: what a slice weighs, how many loaves that is, what is over; what is refused, and in which words."""

from __future__ import annotations

from fractions import Fraction

import pytest
from day.market import demo
from dishes.bread import ALL, LOAF, PASTE, TOAST
from works import bakery_of, reports_of

from manchet.batch.order import Order
from manchet.batch.parts_needed import is_weighed, parts_needed
from manchet.batch.work import Work
from manchet.sheets.form import PageSetup
from manchet.sheets.forms.dish.dish import dish_sheet
from manchet.sheets.forms.dish.view import DishSheet
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.workspace.made_for import made_for

METRIC = House("A4", "metric", "C", "British", "mm")


def dish(text: str, name: str = "Toast", plates: int = 0) -> Work:
    bakery = bakery_of(text)
    formula = bakery.formula(name)
    assert formula is not None, [report.message for report in bakery.diagnostics]
    order = Order(pieces=((Fraction(plates), ""),)) if plates else Order()
    work = bakery.work(formula, order).value
    assert work is not None
    return work


def sheet(work: Work) -> DishSheet:
    return dish_sheet(work, PageSetup(Issue(), METRIC, ahead=made_for(work)))


def test_a_slice_is_its_part_of_the_cooled_loaf() -> None:
    """sale.md 1.1 gives the rule: cooled loaf x (1 - loss) / slices; 783 x 0.94 / 22 is 33.5 g."""
    (bread,) = (one for one in parts_needed(dish(ALL).batch) if one.part.is_bread)
    assert bread.counted is not None
    assert bread.counted.grams == Fraction(783) * 94 / 100 / 22
    assert (bread.number, bread.pieces, bread.over) == (48, 3, 18)


@pytest.mark.parametrize(("plates", "loaves", "over"), [(11, 1, 0), (12, 2, 20), (24, 3, 18), (110, 10, 0)])
def test_whole_loaves_are_cut(plates: int, loaves: int, over: int) -> None:
    (bread,) = (one for one in parts_needed(dish(ALL, plates=plates).batch) if one.part.is_bread)
    assert (bread.pieces, bread.over) == (loaves, over)


def test_a_plate_loses_in_its_heat_what_lies_on_it_then_and_no_more() -> None:
    """Two slices, a tenth of a twelfth off in the griddle; butter and paste come on after it."""
    work = dish(ALL)
    slices = 2 * Fraction(783) * 94 / 100 / 22
    assert work.batch.pieces[0].baked_grams == slices * 92 / 100 + 46


def test_twice_the_plates_is_twice_everything() -> None:
    one, two = dish(ALL), dish(ALL, plates=48)
    assert [w.grams * 2 for w in one.dough.weighed] == [w.grams for w in two.dough.weighed]
    assert two.batch.pieces[0].baked_grams == one.batch.pieces[0].baked_grams


def test_a_loaf_that_nobody_weighed_gives_slices_without_a_weight() -> None:
    unweighed = ALL.replace("  bake loss 13%\n", "")
    work = dish(unweighed)
    assert not is_weighed(work.batch)
    view = sheet(work)
    assert "weigh ten cooled loaves" in view.plate and "weigh ten cooled loaves" in view.rows[0].beside
    assert (view.rows[0].weight, view.rows[0].unit, view.rows[0].in_all) == ("2", "slices", "48")
    assert view.ahead[0].weight == "3"
    assert reports_of(unweighed) == ()


def test_one_plate_from_the_bottom_up_each_part_with_what_is_done_with_it() -> None:
    view = sheet(dish(ALL))
    rows = [(row.number, row.weight, row.name, row.in_all, row.done) for row in view.rows]
    assert rows == [
        ("1", "2", "Plain loaf", "48", "Slice into 22"),
        ("2", "", "", "", "Griddle 1\N{NO-BREAK SPACE}min a side"),
        ("3", "6", "butter", "144\N{NO-BREAK SPACE}g", "Spread"),
        ("4", "40", "bean paste", "960\N{NO-BREAK SPACE}g", "Put on"),
    ]
    assert view.amount == "24 plates" and view.limit == "Serve within 10\N{NO-BREAK SPACE}min"
    assert view.rounds == "4 rounds of 6 plates"


def test_make_ahead_says_the_total_its_batch_and_how_long_it_keeps() -> None:
    bread, paste = sheet(dish(ALL)).ahead
    assert (bread.weight, bread.unit, bread.of_what) == ("3", "loaves", "48 slices of 66, 18 over")
    assert (paste.weight, paste.unit) == ("960", "g")
    assert paste.of_what == "of a batch of 1,050\N{NO-BREAK SPACE}g" and paste.keeps.startswith(
        "good for 2\N{NO-BREAK SPACE}d"
    )


def test_a_formula_that_makes_several_things_is_asked_which() -> None:
    rolls = LOAF.replace("  bake loss", "  makes 24 rolls at 90 g dough\n  bake loss")
    text = rolls + "assembly Bun\n  makes 4 plates\n  Plain loaf 1 whole each\n"
    (report,) = reports_of(text)
    assert report.name == "ambiguous-ingredient" and "Plain loaf rolls" in report.help
    work = dish(text.replace("Plain loaf 1", "Plain loaf rolls 1"), "Bun")
    assert work.batch.pieces[0].baked_grams == Fraction(90) * 87 / 100


def test_a_preparation_by_the_piece_is_weighed_raw_and_counted_ready() -> None:
    patties = """preparation patties
  makes 10 patties at 50 g raw
  mushrooms             500 g
  fry 3 min a side at 170 C, loses 12%
  good for 1 d at 4 C

"""
    on = "assembly Bun\n  makes 5 plates\n  patties 2 whole each\n"
    (part,) = parts_needed(dish(patties + on, "Bun").batch)
    assert part.counted is not None and part.counted.grams == 44
    ready = patties.replace("50 g raw", "44 g ready")
    (part,) = parts_needed(dish(ready + on, "Bun").batch)
    assert part.counted is not None and part.counted.grams == 44


def test_a_stage_of_a_dish_is_used_up_or_said_to_be_left() -> None:
    salad = (
        TOAST.replace("  serve", "  top with salad 20 g each\n  serve")
        + "\n  stage salad\n    chives {} in all\n    stir 1 min\n"
    )
    assert reports_of(LOAF + PASTE + salad.format("480 g")) == ()
    assert [one.name for one in reports_of(LOAF + PASTE + salad.format("500 g"))] == ["leftover"]
    assert [one.name for one in reports_of(LOAF + PASTE + salad.format("400 g"))] == ["takes-more-than-there-is"]


@pytest.mark.parametrize(
    ("line", "name", "words"),
    [
        ("  lay butter 3 g each", "unknown-word", "top with butter 3 g each"),
        ("  garnish with chives 1 g each", "unknown-word", "top with chives 1 g each"),
        ("  put chives on top", "unknown-word", "top with"),
        ("  top with chives 1 g", "each-or-in-all", "chives 1 g each"),
        ("  top with chives", "touching-without-weight", "each"),
        ("  serve", "unreadable-line", "serve within 10 min"),
        ("  chives 1 g each", "weighed-after-a-step", "top with chives"),
        ("  top with Plane loaf 1 slice each", "unknown-ingredient", "Plain loaf"),
    ],
)
def test_a_mistake_is_answered_once_with_what_to_type(line: str, name: str, words: str) -> None:
    (report,) = reports_of(LOAF + PASTE + TOAST.replace("  spread with", f"{line}\n  spread with"))
    fixes = " ".join(edit.text for fix in report.fixes for edit in fix.edits)
    assert report.name == name and words in f"{report.help} {fixes}"


def test_a_bread_with_mistakes_holds_up_its_dish_and_says_so() -> None:
    found = reports_of(ALL.replace("white flour          100%", "white flour           90%"))
    assert [(one.name, one.severity.value) for one in found] == [
        ("flours-not-100", "error"),
        ("part-has-mistakes", "error"),
    ]


def test_a_dish_in_a_dish_is_made_ahead_and_never_in_a_circle() -> None:
    double = "\nassembly Double\n  makes 6 plates\n  Toast 2 whole each\n"
    work = dish(ALL + double, "Double")
    assert work.batch.pieces[0].baked_grams == 2 * (dish(ALL).batch.pieces[0].baked_grams or 0)
    circle = ALL.replace("  spread with", "  top with Double 1 whole each\n  spread with") + double
    assert [one.name for one in reports_of(circle)] == ["dishes-in-a-circle"]


def test_names_of_slices_elsewhere_stay_nouns() -> None:
    tray = LOAF.replace("10 loaves at", "10 slices at")
    assert reports_of(tray) == ()


@pytest.mark.parametrize(
    ("have", "whole", "plates"),
    [
        (("celeriac under oil", 2000), False, 50),
        (("butter", 72), False, 12),
        (("Ebb rye", 2), True, 22),  # 22 slices a loaf, two to a plate
        (("pickled herring", 899), False, 14),
    ],
)
def test_a_dish_is_made_of_what_there_is_of_a_topping(have: tuple[str, int], whole: bool, plates: int) -> None:
    herring = next(one for one in demo().formulas if one.name == "Herring on rye")
    order = Order(have=(have[0], Fraction(have[1])), have_whole=whole)
    work = demo().work(herring, order).value
    assert work is not None and work.batch.pieces[0].number == plates


def test_less_than_a_plate_takes_is_told() -> None:
    herring = next(one for one in demo().formulas if one.name == "Herring on rye")
    made = demo().work(herring, Order(have=("butter", Fraction(5))))
    assert made.value is None and "5 g of butter is not enough for one plate, which takes 6 g" in str(made.diagnostics)
