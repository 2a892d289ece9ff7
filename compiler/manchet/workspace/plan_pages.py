"""The pages of a planned day, from the plan that was found to the bytes of its files."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence

from manchet.batch.work import Work
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.records import NamedTuple
from manchet.sheets.form import Form, PageSetup, Subject
from manchet.sheets.page.dates import printed_day
from manchet.sheets.parts.day_events import day_calendar
from manchet.sheets.registry import form_called, forms_about
from manchet.workspace.file_versions import file_versions
from manchet.workspace.made_for import made_for
from manchet.workspace.press import Press
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import house_of, in_formats, issue_of
from manchet.workspace.selection import Selection
from manchet.workspace.slugs import slugs
from manchet.workspace.unprintable import unprintable

FORMATS = ("html", "pdf")
CALENDAR = "ics"
SHEET, DISH = "sheet", "dish"


class PlanFiles(NamedTuple):
    """The files of a plan by their endings (`shift.pdf`); the reports; and what a PDF would need, or ""."""

    files: Mapping[str, bytes]
    diagnostics: tuple[Diagnostic, ...] = ()
    lacking: str = ""


def page_forms() -> tuple[Form, ...]:
    """The forms that are printed of a plan."""
    return tuple(forms_about(Subject.DAY))


def plan_files(
    plan: DayPlan, report: Mapping[str, object], options: PrintOptions, selection: Selection, sheets: bool = False
) -> PlanFiles:
    """Every page, the plan as JSON, and its calendar; with `sheets` the prep sheet of each dough and preparation, and the
    dish sheet of each dish, at the size that the plan wants of it."""
    works = works_of(plan) if sheets else {}
    printer = _Printer(plan, options, selection, [work.formula.place.path for work in works.values()])
    page = printer.page_of(plan.said.place.path)
    files: dict[str, bytes] = {"plan.json": (json.dumps(report, indent=2, ensure_ascii=True) + "\n").encode()}
    files[CALENDAR] = day_calendar(plan, page.house)
    for form in page_forms():
        if form.name in options.kinds:
            printer.add(form, plan, page, plan.said.place, form.name)
    slug_of = slugs(works)
    for name, work in works.items():
        place, kind = work.formula.place, DISH if work.formula.dish else SHEET
        own = printer.page_of(place.path)._replace(ahead=made_for(work) if work.formula.dish else ())
        printer.add(form_called(kind), work, own, place, f"{slug_of[name]}.{kind}")
    return PlanFiles(files | printer.files, tuple(printer.reports), printer.lacking)


class _Printer:
    """Prints pages of one day, and gathers their files."""

    def __init__(self, plan: DayPlan, options: PrintOptions, selection: Selection, sheets: Sequence[str]) -> None:
        """`sheets`: the files of the formulas whose sheets are printed too."""
        self.plan, self.options = plan, options
        self.versions = file_versions(selection, (plan.said.place.path, *sheets))
        self.press = Press()
        self.files: dict[str, bytes] = {}
        self.reports: list[Diagnostic] = []
        self.lacking = ""

    def page_of(self, path: str) -> PageSetup:
        """Of the plan's day, from the file at `path` as it is now."""
        issue = issue_of(self.options, self.versions[path])
        day = printed_day(self.plan.said.date)
        return PageSetup(issue._replace(date=day), house_of(self.plan.said.kitchen, self.options))

    def add(self, form: Form, about: DayPlan | Work, page: PageSetup, place: Place, ending: str) -> None:
        made = form.render(about, page)
        self.reports += made.diagnostics
        if made.value is None:
            return
        printed = in_formats(made.value, self.options.formats, self.press, (place.path, place.line, form.name))
        self.files |= {f"{ending}.{name}": content for name, content in printed.files.items()}
        self.lacking = self.lacking or printed.lacking
        self.reports += unprintable(printed.missing, made.value, place)
