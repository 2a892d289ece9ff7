"""The class set: what a teacher weighs out for the benches of a class, and the answers that no learner's page has."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, HomeWork, PageSetup, Subject
from manchet.sheets.forms.class_set.view import ClassSet
from manchet.sheets.page.layouts import NORMAL, PageLayout

if TYPE_CHECKING:
    from manchet.sheets.page.view import View


def render(home: HomeWork, page: PageSetup) -> Outcome[View | None]:
    from manchet.sheets.forms.class_set.class_set import class_set

    return Outcome(class_set(home, page.issue, page.house, page.benches))


FORM = Form(
    name="class",
    place=6,
    about=Subject.HOME,
    view=ClassSet,
    template="forms/class_set/template.html",
    render=render,
    on_demand=True,
    layouts=(NORMAL, PageLayout("tight", 80)),
)
