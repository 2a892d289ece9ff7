"""What no day holds is counted and told, whatever the slip in `makes`: no card, and no more work than for a few loads."""

from __future__ import annotations

from fractions import Fraction

from benchmarks.growing import FAMILIES, bread, loads, mixes
from every import every
from growth.work_done import PAGE, calls, look_over
from works import bakery_of, first_work

from manchet.batch.order import Order
from manchet.figures.oven.bakes import Loads
from manchet.figures.past_a_day import past_a_day_at_home
from manchet.sheets.form import Subject
from manchet.sheets.registry import forms_about


def _told(files: dict[str, str]) -> list[str]:
    bakery = bakery_of("\n".join(files.values()))
    return [report.message for report in bakery.diagnostics if report.name == "past-a-day"]


def _forms(files: dict[str, str]) -> list[str]:
    bakery = bakery_of("\n".join(files.values()))
    work = bakery.work(bakery.formulas[0]).value
    assert work is not None
    return [form.name for form in forms_about(Subject.FORMULA) if form.render(work, PAGE).value is not None]


def test_a_day_of_loads_has_a_card_and_one_more_has_none() -> None:
    """40 minutes and 4 for the oven to come back: the 33rd load is out after 33 x 40 + 32 x 4 = 1,448 minutes, eight too late."""
    assert _told(loads(32)) == []
    assert "card" in _forms(loads(32))
    assert _told(loads(33)) == ["33 loads of 20 loaves in stone take 24.1 h one after another; a day has 24 h"]
    assert _forms(loads(33)) == ["sheet"]


def test_mixes_are_counted_as_loads_are() -> None:
    assert _told(mixes(100)) == []
    (told,) = _told(mixes(1000))
    assert told.endswith("one after another; a day has 24 h")
    assert "mixes in spiral take" in told


@every(("loads", "mixes"), at_least=2)
def test_four_noughts_too_many_are_no_more_work(name: str) -> None:
    family = FAMILIES[name]
    look_over(family, 1_000)
    some = calls(lambda: look_over(family, 1_000))
    assert calls(lambda: look_over(family, 10_000_000)) < some * 1.1


def test_at_home_a_load_is_what_the_oven_holds_or_a_tray() -> None:
    """Two loaves of 900 g lie on a tray: in 24 h 36 bakes of 40 minutes are done. 20 in an oven that needs 4 minutes more between
    two are 32, as in the bakery."""

    def told(text: str, pieces: int) -> list[str]:
        work = first_work(text, Order(pieces=((Fraction(pieces), "loaves"),)))
        return [past.said for past in past_a_day_at_home(work)]

    assert told(bread(), 72) == []
    assert told(bread(), 74) == [
        "37 loads of 2 loaves in an oven at home take 24.7 h one after another; a day has 24 h"
    ]
    assert told("\n".join(loads(1).values()), 640) == []
    assert told("\n".join(loads(1).values()), 641)[0].startswith("33 loads of 20 loaves in stone take 24.1 h")


def test_loads_are_counted_not_listed() -> None:
    counted = Loads(Fraction(20 * 10**9 + 5), 20)
    assert (len(counted), counted[0], counted[-1]) == (10**9 + 1, 20, 5)
    assert [*Loads(Fraction(45), 20)] == [20, 20, 5]
    assert [*Loads(Fraction(40), 20)] == [20, 20]
    assert [*Loads(Fraction(0), 20)] == [0]
    assert [*Loads(Fraction(45), None)] == [45]


@every(("stage chain", "stages abreast"), at_least=2)
def test_more_stages_than_a_kitchen_has_bowls_are_refused(name: str) -> None:
    """However deep one stands in another, no limit of the interpreter is reached."""
    (told,) = bakery_of("\n".join(FAMILIES[name].files(1_000).values())).diagnostics
    assert (told.name, told.message) == ("stages-too-many", "this formula has 1,001 stages; it can have 50")


def test_a_slip_in_the_folds_lists_none_of_them() -> None:
    (told,) = bakery_of("\n".join(FAMILIES["folds"].files(900_000_000).values())).diagnostics
    assert (told.name, told.message) == ("folds-too-many", "900,000,000 folds in one `ferment`; it can have 100")


def test_more_breads_of_one_dough_than_a_bench_parts_are_refused() -> None:
    assert bakery_of("\n".join(FAMILIES["branches"].files(50).values())).formulas
    (told,) = bakery_of("\n".join(FAMILIES["branches"].files(1_000).values())).diagnostics
    message = "this formula makes 1,000 breads of one dough; it can make 50"
    assert (told.name, told.message, told.place.line) == ("breads-too-many", message, 53)
