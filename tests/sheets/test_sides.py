"""How much paper the forms of a home, a class and a house take, over the demo and the corpus; and how small their type is."""

from __future__ import annotations

import io
from collections.abc import Iterator
from pathlib import Path

import pytest
from pypdf import PdfReader
from run_length import at_length, turn_of
from sheets.each_form import METRIC, US, demo
from sheets.work import ISSUE
from works import works

from manchet.batch.order import Order
from manchet.batch.work import Work, work_of
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.sheets.form import Bakehouse, HomeWork, PageSetup
from manchet.sheets.page.house import House
from manchet.sheets.page.pdf import NoPdf, Pdf, engine, pdf_of
from manchet.sheets.page.view import View
from manchet.sheets.registry import form_called, html_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import Bakery, read
from manchet.workspace.bound_formula import known_preparations
from manchet.workspace.home_work import home_work
from manchet.workspace.made_ahead import made_ahead
from manchet.workspace.print_options import PrintOptions

QUIET = Path(__file__).parents[1] / "corpus" / "quiet"
HOUSES = {
    "A4, metric": METRIC,
    "Letter, metric": House("Letter"),
    "A4, US": House("A4", "US", "F", "American"),
    "Letter, US": US,
}
HEAVIEST = ("Regatta plait", "Tern loaf", "Pilot rye", "Hawser knots", "Copper wreath", "Slate bread")
"""Breads of the demo that take the most, or are turned where it tells: those of the short run."""

MOST = {"handout": 2, "class": 2, "preparations": 6, "house": 1}
"""Sides of each form at most: a class set of six benches is one for all but the bread with three preparations; the
preparations are all eleven of the demo."""


def sides(view: View) -> int:
    made = pdf_of(html_of(view), form_called(view.form).layouts)
    assert isinstance(made, Pdf) and made.faults == () and made.missing == (), view.title
    return len(PdfReader(io.BytesIO(made.content)).pages)


def at_home(bakery: Bakery, formula: Formula, house: House) -> HomeWork:
    home = home_work(bakery, formula, PrintOptions(), house).value
    assert home is not None, formula.name
    return home


def render(name: str, what: object, house: House) -> View:
    view = form_called(name).render(what, PageSetup(ISSUE, house, benches=6)).value
    assert view is not None
    return view


def of_the_demo() -> list[Formula]:
    return [formula for formula in demo().formulas if at_length(1, 0) or formula.name in HEAVIEST]


def of_the_corpus(house: House) -> Iterator[tuple[Bakery, Formula]]:
    """Each in one house, in turn."""
    files = turn_of(house, HOUSES.values(), sorted(QUIET.glob("*.bake")))
    for file in files[:: at_length(1, 3)]:
        bakery = read([SourceText(file.name, file.read_text(encoding="utf-8"))])
        yield from ((bakery, formula) for formula in bakery.formulas)


@pytest.mark.parametrize("house", HOUSES.values(), ids=HOUSES)
@pytest.mark.parametrize("form", ["handout", "class"])
def test_a_bread_at_home_and_in_class(form: str, house: House) -> None:
    table = {
        formula.name: sides(render(form, at_home(bakery, formula, house), house))
        for bakery, formula in [*((demo(), formula) for formula in of_the_demo()), *of_the_corpus(house)]
    }
    assert len(table) >= at_length(40, 10)
    assert {name: number for name, number in table.items() if number > MOST[form]} == {}
    one = sum(number == 1 for number in table.values())
    assert one >= len(table) * (9 if form == "class" else 1) // 12, table


def all_ahead(kitchen: Kitchen) -> Bakehouse:
    bakery = demo()
    breads = [work for work in works(bakery) if work.kitchen == kitchen and not work.formula.preparation]
    known = known_preparations(bakery.formulas)

    def sized(formula: Formula, grams: object) -> Work | None:
        return work_of(formula, Order(dough=grams), kitchen, bakery.larder).value  # type: ignore[arg-type]

    return Bakehouse(kitchen, ahead=made_ahead(breads, known, sized, at_home=False, more=known))


@pytest.mark.parametrize("house", HOUSES.values(), ids=HOUSES)
def test_the_preparations_and_the_safety_card(house: House) -> None:
    row = demo().kitchens[0]
    bakehouse = all_ahead(row)
    assert len(bakehouse.ahead) == 11
    assert sides(render("preparations", bakehouse, house)) <= MOST["preparations"]
    for each in bakehouse.ahead:
        assert sides(render("preparations", Bakehouse(row, ahead=(each,)), house)) == 1
    for kitchen in demo().kitchens:
        assert sides(render("house", kitchen, house)) == MOST["house"]


def smallest_type(view: View) -> float:
    """Points of the smallest text that stands on the page, in its tightest layout."""
    started = engine()
    assert not isinstance(started, NoPdf), started
    html = html_of(view).replace(f'class="{view.form} ', f'class="tight {view.form} ', 1)
    laid = started.weasyprint.HTML(string=html, url_fetcher=started.fetch)
    pages = laid.render(stylesheets=[started.style], font_config=started.fonts).pages
    boxes = [box for page in pages for box in page._page_box.descendants() if getattr(box, "text", "").strip()]
    assert len(boxes) > 30
    return min(float(box.style["font_size"]) * 72 / 96 for box in boxes)


@pytest.mark.parametrize("form", MOST)
def test_no_type_is_smaller_than_eight_points(form: str) -> None:
    whats: dict[str, object] = {"house": demo().kitchens[0], "preparations": all_ahead(demo().kitchens[0])}
    formula = next(formula for formula in demo().formulas if formula.name == "Hawser knots")
    what = whats.get(form) or at_home(demo(), formula, METRIC)
    assert smallest_type(render(form, what, METRIC)) >= 7.99


@pytest.mark.parametrize("house", [METRIC, US], ids=["A4", "Letter"])
def test_a_preparation_is_half_a_page_at_most_but_for_its_warnings(house: House) -> None:
    """Of the demo all but the two with warnings of first aid are; those are parted by no page either."""
    started = engine()
    assert not isinstance(started, NoPdf), started
    high = {}
    for each in all_ahead(demo().kitchens[0]).ahead:
        html = html_of(render("preparations", Bakehouse(demo().kitchens[0], ahead=(each,)), house))
        (page,) = (
            started.weasyprint.HTML(string=html, url_fetcher=started.fetch)
            .render(stylesheets=[started.style], font_config=started.fonts)
            .pages
        )
        (block,) = [
            b
            for b in page._page_box.descendants()
            if b.element_tag == "section" and "preparation" in (b.element.get("class") or "")
        ]
        high[each.work.formula.name] = block.border_height() / page._page_box.height
    over = {name for name, share in high.items() if share > 0.5}
    assert over <= {"bean patties", "celeriac under oil", "lye bath"}, high
