"""The pages of a planned day, from the plan that was found to the bytes of its files."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import datetime, time

from manchet.day.pages.day_plan import DayPlan
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.records import NamedTuple
from manchet.sheets.form import Form, PageSetup, Subject
from manchet.sheets.parts.day_events import day_calendar
from manchet.sheets.registry import forms_about
from manchet.workspace import cache
from manchet.workspace.press import Press
from manchet.workspace.print_options import PrintOptions, printed_day
from manchet.workspace.rendering import Version, house_of, in_formats, issue_of
from manchet.workspace.selection import Selection
from manchet.workspace.unprintable import unprintable
from manchet.workspace.versions import versions

FORMATS = ("html", "pdf")
CALENDAR = "ics"


class PlanFiles(NamedTuple):
    """The files of a plan by their endings (`shift.pdf`); the reports; and what a PDF would need, or ""."""

    files: Mapping[str, bytes]
    diagnostics: tuple[Diagnostic, ...] = ()
    lacking: str = ""


def page_forms() -> tuple[Form, ...]:
    """The forms that are printed of a plan."""
    return tuple(forms_about(Subject.DAY))


def plan_files(plan: DayPlan, report: Mapping[str, object], options: PrintOptions, selection: Selection) -> PlanFiles:
    """Every page, the plan as JSON, and its calendar."""
    version = _version(selection, plan.said.place.path)
    issue = issue_of(options, version)._replace(date=printed_day(datetime.combine(plan.said.date, time())))
    page = PageSetup(issue, house_of(plan.said.kitchen, options))
    press = Press()
    files: dict[str, bytes] = {"plan.json": (json.dumps(report, indent=2, ensure_ascii=True) + "\n").encode()}
    files[CALENDAR] = day_calendar(plan, page.house)
    reports: list[Diagnostic] = []
    lacking = ""
    for form in page_forms():
        if form.name not in options.kinds:
            continue
        made = form.render(plan, page)
        reports += made.diagnostics
        if made.value is None:
            continue
        printed = in_formats(
            made.value, options.formats, press, (plan.said.place.path, plan.said.place.line, form.name)
        )
        files |= {f"{form.name}.{name}": content for name, content in printed.files.items()}
        lacking = lacking or printed.lacking
        reports += unprintable(printed.missing, made.value, plan.said.place)
    return PlanFiles(files, tuple(reports), lacking)


def _version(selection: Selection, path: str) -> Version:
    data = next((file.data for file in selection.files if file.path == path), b"")
    commit, edited = versions(selection.root, selection.prefix, {path}).get(path, ("", False))
    return Version(path.removeprefix(selection.prefix), cache.digest(data)[:8], commit, edited)
