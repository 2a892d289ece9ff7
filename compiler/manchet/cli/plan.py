"""Plan a day: several breads, one oven, few hands, on time.

With no name given, plans the only plan in this folder's bakery. Writes its pages (PDF and HTML), a calendar and the plan as
JSON into the output folder. If the day can't be done, nothing is written: you are told what clashes and what would help.

With --now the rest of the day is planned again, starting from the plan last written there: what has begun stays as it is, and
as little else as possible moves.
"""

from __future__ import annotations

import argparse
import os
import sys
from typing import TYPE_CHECKING

from manchet.cli.arguments import one_of, some_of
from manchet.cli.reporting import write_reports
from manchet.cli.status import ERRORS, FINE, MISSING, OUR_FAULT
from manchet.diagnostics.terminal import show
from manchet.sheets.form import Subject
from manchet.sheets.registry import forms_about
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from manchet.day.again.told import Told
    from manchet.day.found import FoundPlan
    from manchet.day.jobs.day_of import PlannedDay
    from manchet.day.model import Planned
    from manchet.workspace.open_plan import OpenedPlan
    from manchet.workspace.print_options import PrintOptions

PAGES = tuple(form.name for form in forms_about(Subject.DAY))
FORMATS = ("html", "pdf")

EXAMPLES = (
    "manchet plan",
    "manchet plan 'Saturday market' --out sheets",
    "manchet plan 'Saturday market' --now 'Fri 22:00' --late 'Gangway loaf ferment 25 min' --done 'Ebb rye divide'",
    "manchet plan 'Saturday market' --sheets",
    "manchet plan 'Saturday market' --format json",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "what", nargs="*", metavar="PLAN|FILE|FOLDER", help="the plan's name, or the file or folder it is in"
    )
    parser.add_argument("--format", type=one_of("text", "json"), default="text", help="what to show: text or json")
    parser.add_argument(
        "--out", "--output", dest="output", default="output", metavar="FOLDER", help="where to write (default: output)"
    )
    parser.add_argument(
        "--only",
        type=some_of(*PAGES, *FORMATS),
        default=(),
        metavar="LIST",
        help=f"some of {','.join((*PAGES, *FORMATS))}",
    )
    parser.add_argument("--kitchen", default="", metavar="NAME", help="the kitchen to plan in, if there are several")
    parser.add_argument("--no-solver", action="store_true", help="plan without the solver, even if it is installed")
    parser.add_argument("--paper", type=one_of("A4", "Letter"), default=None, metavar="PAPER", help="A4 or Letter")
    parser.add_argument("--units", type=one_of("metric", "US"), default=None, metavar="UNITS", help="metric or US")
    parser.add_argument("--temperature", type=one_of("C", "F"), default=None, metavar="DEGREES", help="C or F")
    parser.add_argument("--words", type=one_of("British", "American"), help="British or American")
    parser.add_argument(
        "--sheets",
        action="store_true",
        help="also print a prep sheet for each dough and a dish sheet for each dish, at the plan's size",
    )
    parser.add_argument(
        "--week",
        action="store_true",
        help="the starter pots over the plan's week: what each gives, gets back and is fed",
    )
    again = parser.add_argument_group("planning the rest of a day again")
    again.add_argument("--now", default="", metavar="WHEN", help="what time it is now: 'Fri 22:00'")
    again.add_argument(
        "--done",
        action="append",
        default=[],
        metavar="JOB",
        help="a job already done, ahead of its time: 'Ebb rye divide'",
    )
    again.add_argument(
        "--late", action="append", default=[], metavar="'JOB 25 min'", help="what is running late, and by how much"
    )


def run(options: argparse.Namespace) -> int:
    from manchet.day.finding import find_plan_soon
    from manchet.day.goals import late
    from manchet.workspace.open_plan import open_plan
    from manchet.workspace.planning import day_planned

    if (options.done or options.late) and not options.now:
        raise Unknown("--done and --late tell of a day that has begun", "say the hour it is: --now 'Fri 22:00'")
    if options.week:
        return _week(options)
    opened = open_plan(options.what, options.kitchen)
    write_reports(opened.diagnostics)
    if opened.plan is None:
        return ERRORS
    made = day_planned(opened.plan, opened.bakery)
    write_reports(made.diagnostics)
    if made.value is None:
        return ERRORS
    if options.now:
        return _again(options, opened, made.value)
    found = find_plan_soon(made.value.day, with_solver=not options.no_solver)
    _own_faults(found)
    if found.planned is not None and not late(made.value.day, found.planned.timetable):
        return _planned(options, opened, made.value, found.planned)
    return _clash(options, opened, made.value, found)


def _week(options: argparse.Namespace) -> int:
    import json

    from manchet.cli.build import now_here
    from manchet.cli.pot_text import week_lines, week_report
    from manchet.workspace.open_plan import week_asked_for
    from manchet.workspace.pot_week import pot_week, work_out

    day, bakery = week_asked_for(options.what, now_here().date(), options.kitchen)
    week = pot_week(day, bakery, lambda plan: work_out(plan, bakery, not options.no_solver))
    if options.format == "json":
        sys.stdout.write(json.dumps(week_report(week), indent=2, ensure_ascii=True) + "\n")
    else:
        sys.stdout.writelines(f"{line}\n" for line in week_lines(week))
    return ERRORS if any(pot.short for pot in week.pots) else FINE


def _again(options: argparse.Namespace, opened: OpenedPlan, of: PlannedDay) -> int:
    from manchet.cli.plan_again import SaidNews, in_the_way, moved_lines, planned_again
    from manchet.workspace.plan_record import digests

    said = SaidNews(options.now, tuple(options.done), tuple(options.late))
    made_from = digests(opened.selection.files)
    record = os.path.join(options.output, f"{_slug(opened)}.plan.json")
    again = planned_again(of, said, record, made_from, not options.no_solver)
    if again is not None:
        _own_faults(again.found)
        if again.found.planned is None and again.found.refused:
            return OUR_FAULT
    if again is None or again.found.planned is None:
        print(f"no plan was found for the rest of {show(opened.name)}", file=sys.stderr)
        for line in () if again is None else in_the_way(again.of, again.again):
            print(f"  {show(line)}", file=sys.stderr)
        return ERRORS
    if options.format == "text":
        sys.stdout.writelines(f"{line}\n" for line in moved_lines(again.of, again.again, again.found.planned))
    return _planned(options, opened, again.of, again.found.planned, again.told)


def _slug(opened: OpenedPlan) -> str:
    from manchet.workspace.slugs import slugs

    return slugs([opened.name])[opened.name]


def _planned(
    options: argparse.Namespace, opened: OpenedPlan, of: PlannedDay, planned: Planned, told: Told | None = None
) -> int:
    """Shows the plan, and writes its pages: all of them are made before the first is written."""
    import json

    from manchet.cli.plan_text import plan_lines
    from manchet.day.again.told import NOTHING_TOLD
    from manchet.day.pages.day_plan import DayPlan
    from manchet.day.pages.slip import slips
    from manchet.day.report import report_of
    from manchet.workspace.plan_pages import plan_files
    from manchet.workspace.plan_record import digests
    from manchet.workspace.pot_evenings import pots_fed
    from manchet.workspace.writing import output_folder, write

    assert opened.plan is not None
    made_from = digests(opened.selection.files)
    latest = [
        start + late for start, late in zip(planned.timetable.starts, slips(of.day, planned.timetable), strict=True)
    ]
    report = report_of(
        opened.name, opened.plan.date.isoformat(), of, planned, latest, digests=made_from, told=told or NOTHING_TOLD
    )
    plan = DayPlan(opened.plan, of, planned, pots_fed(opened.plan, of, planned, opened.bakery))
    pages = plan_files(plan, report, _print_options(options), opened.selection, options.sheets)
    write_reports(pages.diagnostics)
    folder = output_folder(options.output)
    written = [
        path
        for ending, data in sorted(pages.files.items())
        if write(path := os.path.join(folder, f"{_slug(opened)}.{ending}"), data)
    ]
    if options.format == "json":
        sys.stdout.write(json.dumps(report, indent=2, ensure_ascii=True) + "\n")
    elif not options.now:
        sys.stdout.writelines(f"{line}\n" for line in plan_lines(opened.name, plan))
        if not opened.plan.shifts:
            print("  the plan has no line `hands`: somebody is taken to be there all the time")
    for path in written:
        print(show(os.path.relpath(path)), file=sys.stderr)
    if pages.lacking:
        print(f"no PDF was written: {pages.lacking}", file=sys.stderr)
        return MISSING
    return FINE


def _print_options(options: argparse.Namespace) -> PrintOptions:
    from manchet.workspace.print_options import PrintOptions

    return PrintOptions(
        kinds=tuple(name for name in PAGES if name in options.only) or PAGES,
        formats=tuple(name for name in FORMATS if name in options.only) or FORMATS,
        paper=options.paper or "",
        units=options.units or "",
        degrees=options.temperature or "",
        words=options.words or "",
    )


def _clash(options: argparse.Namespace, opened: OpenedPlan, of: PlannedDay, found: FoundPlan) -> int:
    """Nothing is written: what lies there from before stays."""
    import json
    import time

    from manchet.cli.plan_text import clash_lines, hour
    from manchet.day.clashes.asking import ask_by_hand, ask_the_solver
    from manchet.day.clashes.find import clashes_of
    from manchet.day.finding import has_solver
    from manchet.day.report import clash_report

    if found.planned is None and found.refused:
        return OUR_FAULT
    begun = time.monotonic()
    ask = ask_the_solver if has_solver() and not options.no_solver else ask_by_hand
    clashes = clashes_of(of.day, ask, lambda minute: hour(of.clock.at(minute)), lambda: int(time.monotonic() - begun))
    assert opened.plan is not None
    if options.format == "json":
        report = clash_report(opened.name, opened.plan.date.isoformat(), of, found.planned, clashes)
        sys.stdout.write(json.dumps(report, indent=2, ensure_ascii=True) + "\n")
    else:
        sys.stdout.writelines(f"{line}\n" for line in clash_lines(opened.name, of, found.planned, clashes))
    return ERRORS


def _own_faults(found: FoundPlan) -> None:
    """A plan of ours that breaks a rule is never shown; that it was made is said."""
    for refusal in found.refused[:3]:
        print(f"a plan was found that breaks a rule, and was left out: {refusal.words}", file=sys.stderr)
