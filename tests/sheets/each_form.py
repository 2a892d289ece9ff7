"""A page of each form, made from the demo bakery: whatever stands in `forms` is tried without a line of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime
from functools import cache
from pathlib import Path
from typing import Any

from day.market import market
from works import work_in, works

from manchet.sheets.form import Ahead, Bakehouse, Form, HomeWork, PageSetup, Subject
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.view import View
from manchet.source.text import SourceText
from manchet.timing.when import When
from manchet.workspace.bakery import Bakery, read
from manchet.workspace.home_work import home_work
from manchet.workspace.print_options import PrintOptions

RECIPES = Path(__file__).parents[2] / "recipes"
ISSUE = Issue("Thu 26 Nov 2026", "tern-loaf.bake", "commit 4f2a91c", "9b1e07d4", "14 Nov 2026")
METRIC, US = House(), House("Letter", "US", "F", "American")


@cache
def demo() -> Bakery:
    paths = sorted(RECIPES.rglob("*.bake"))
    return read([SourceText(str(path.relative_to(RECIPES)), path.read_text(encoding="utf-8")) for path in paths])


def sample_of(form: Form, house: House = METRIC) -> View:
    """The first page of the form that the demo bakery has."""
    return next(pages_of(form, house))


def pages_of(form: Form, house: House = METRIC) -> Iterator[View]:
    """All pages of the form that the demo bakery has."""
    page = PageSetup(ISSUE, house, when=When(datetime(2026, 11, 28, 7, 0), True), benches=12)
    subjects = (
        one for one in SUBJECTS[form.about]() if form.about is not Subject.FORMULA or form.prints(one.formula, True)
    )
    views = (form.render(subject, page).value for subject in subjects)
    return (view for view in views if view is not None)


def _at_home() -> Iterator[HomeWork]:
    for formula in demo().formulas:
        home = home_work(demo(), formula, PrintOptions(), METRIC).value
        assert home is not None, formula.name
        yield home


def _bakehouses() -> Iterator[Bakehouse]:
    made = works(demo())
    return (
        Bakehouse(
            kitchen,
            tuple(work for work in made if work.kitchen == kitchen),
            ahead=tuple(Ahead(work) for work in made if work.kitchen == kitchen and work.formula.preparation),
            stock=demo().stock,
        )
        for kitchen in demo().kitchens
    )


SUBJECTS: dict[Subject, Callable[[], Iterator[Any]]] = {
    Subject.FORMULA: lambda: (work_in(demo(), formula) for formula in demo().formulas),
    Subject.HOME: _at_home,
    Subject.KITCHEN: lambda: iter(demo().kitchens),
    Subject.BAKEHOUSE: _bakehouses,
    Subject.DAY: lambda: iter([market()]),
}
"""What a form can be about, from the demo bakery."""
