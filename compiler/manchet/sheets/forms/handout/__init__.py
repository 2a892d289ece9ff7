"""The handout: a formula to take home, for hands and one domestic oven."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Form, HomeWork, PageSetup, Subject
from manchet.sheets.forms.handout.view import Handout
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.sheets.page.view import View


def render(home: HomeWork, page: PageSetup) -> Outcome[View | None]:
    from manchet.batch.weighing import weighings
    from manchet.sheets.forms.handout.handout import handout

    view = handout(home, page.issue, page.house, page.pictures, page.blanks)
    reports = weighings(home.work).diagnostics
    return Outcome(view, tuple(report for report in reports if report.severity is not Severity.NOTE))


FORM = Form(
    name="handout",
    place=5,
    about=Subject.HOME,
    view=Handout,
    template="forms/handout/template.html",
    render=render,
    on_demand=True,
    illustrated=True,
    layouts=(PageLayout("parted"), PageLayout("flowing"), PageLayout("tight", 80)),
)
