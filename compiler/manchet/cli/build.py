"""Write prep sheets and timing cards.

With no name given, prints every formula in this folder's bakery. HTML, PDF and JSON go into the output folder; a file that
would come out the same is left alone. A formula with errors is not printed, and its last good sheet stays.

An amount (--pieces, --flour …) applies to one formula and its variants, so name the formula. The preparations it needs keep
their own amounts. Forms left out by --only are not made again; if older ones are still in the output folder, they are listed.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

from manchet.cli import sizing
from manchet.cli.arguments import one_of, processes, some_of, whole_number
from manchet.cli.reporting import UNEXPLAINED, write_reports
from manchet.cli.screen import Progress
from manchet.cli.status import ERRORS, FINE, MISSING
from manchet.diagnostics.terminal import in_brief, show
from manchet.sheets.form import Form, OfPreparations, Subject
from manchet.sheets.registry import FORMS
from manchet.workspace.print_options import FORMATS, KINDS, ON_DEMAND, PrintOptions
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from datetime import datetime

    from manchet.timing.when import When
    from manchet.workspace.output import Built
    from manchet.workspace.print_jobs import PrintJob
    from manchet.workspace.selection import Selection

MOST_NAMED = 6
"""Files that are named; of more it is said how many."""

EXAMPLES = (
    "manchet build",
    "manchet build 'Tern loaf' --pieces 24 --ready 'Sat 07:00'",
    "manchet build 'Tern loaf' --swap 'fresh yeast for instant yeast'",
    "manchet build recipes --out sheets --only sheet,pdf --paper Letter --units US --temperature F",
)

_AT_HOME = {"blanks": "handout", "benches": "class"}
"""Options that one form alone has, and that form: of a class both are printed."""

NAMED = (*KINDS, *ON_DEMAND, *FORMATS)
"""What can stand after `--only`."""


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("what", nargs="*", metavar="FILE|FOLDER|FORMULA", help="what to print (default: this folder)")
    printing(parser)
    sizing.arguments(parser)
    sizing.swapping(parser)
    parser.add_argument("--strict", action="store_true", help="exit with status 1 for warnings too")
    parser.add_argument(
        "--against",
        metavar="REV",
        help="write nothing; say what has changed since a commit in ingredients, allergens, nutrition, weight, price and cost",
    )
    processes(parser)


def printing(parser: argparse.ArgumentParser) -> None:
    """The options that `watch` has too."""
    parser.add_argument(
        "--out", "--output", dest="output", default="output", metavar="FOLDER", help="where to write (default: output)"
    )
    parser.add_argument(
        "--only",
        type=some_of(*NAMED),
        default=(),
        metavar="LIST",
        help=f"some of {','.join(NAMED)}",
    )
    parser.add_argument("--paper", type=one_of("A4", "Letter"), default=None, metavar="PAPER", help="A4 or Letter")
    parser.add_argument("--units", type=one_of("metric", "US"), default=None, metavar="UNITS", help="metric or US")
    parser.add_argument("--temperature", type=one_of("C", "F"), default=None, metavar="DEGREES", help="C or F")
    parser.add_argument("--words", type=one_of("British", "American"), help="British or American")
    parser.add_argument(
        "--no-pictures", action="store_true", help="leave the drawings and pictures off sheet and handout"
    )
    home = parser.add_argument_group("for hands and one oven at home (--only handout), and for a class (--only class)")
    home.add_argument(
        "--benches", type=whole_number(1, 200), default=0, metavar="N", help="for this many benches: the teacher's side"
    )
    home.add_argument("--blanks", action="store_true", help="leave the percentages blank on the handout")
    when = parser.add_argument_group("the timing card's clock (default: from six in the morning)")
    when.add_argument("--start", metavar="WHEN", help="when the work starts: 'Fri 20:00', 2026-11-27T20:00")
    when.add_argument("--ready", metavar="WHEN", help="when the bread must be ready")


def run(options: argparse.Namespace) -> int:
    from manchet.cli.check import status_of
    from manchet.workspace.building import build_sheets, without_formulas
    from manchet.workspace.print_jobs import jobs_of, sized_jobs
    from manchet.workspace.selection import never_two_of_a_name, selections
    from manchet.workspace.writing import output_folder

    print_options = print_options_of(options)
    asked = selections(options.what)
    if options.against:
        from manchet.cli.against import differences_against

        for selection in asked:
            for line in differences_against(selection, options.against, print_options.kitchen):
                print(line)
        return FINE
    for selection in asked:
        never_two_of_a_name(selection)
    bakeries = [(selection, jobs_of(selection)) for selection in asked]
    sized = sized_jobs([job for _, jobs in bakeries for job in jobs], print_options.order)
    own_size = {(job.path, job.block.line) for job in sized if job.own_size}
    bakeries = [
        (selection, tuple(job._replace(own_size=(job.path, job.block.line) in own_size) for job in jobs))
        for selection, jobs in bakeries
    ]
    folder = output_folder(options.output)
    progress = Progress("formula", sum(len(jobs) for _, jobs in bakeries))
    results = [
        one
        for selection, jobs in bakeries
        for one in build_sheets(selection, jobs, print_options, folder, options.jobs, progress.done)
    ]
    progress.close()
    loose = [report for selection, _ in bakeries for report in without_formulas(selection)]
    reports = tuple(dict.fromkeys([report for one in results for report in one.diagnostics] + loose))
    write_reports(reports)
    for _, jobs in bakeries:
        _left_at_their_own(jobs)
    for one in results:
        for path in one.written:
            print(show(os.path.relpath(path)))
        if one.kept:
            print(f"{show(one.name)}: the last good sheet was left as it is", file=sys.stderr)
        if one.unexplained:
            print(f"{show(one.name)} was not printed: {UNEXPLAINED}", file=sys.stderr)
        if one.no_card:
            print(f"{show(one.name)}: no timing card was made: {show(one.no_card)}", file=sys.stderr)
        if one.older:
            older = ", ".join(os.path.relpath(path) for path in one.older)
            print(f"not rebuilt, and perhaps of another size: {show(older)}", file=sys.stderr)
    _left_behind(bakeries, folder)
    _summary(results)
    if not any(one.is_formula for one in results):
        print(f"no formula was found in {in_brief(show(', '.join(options.what) or 'this folder'))}", file=sys.stderr)
        if not all(os.path.isdir(word) for word in options.what):
            return ERRORS
    if any(one.unexplained for one in results):
        return ERRORS
    lacking = next((one.lacking for one in results if one.lacking), "")
    unmade = [form for form in _with_a_reason(options.only) if not lacking and not _made_of(form, results)]
    for form in unmade:
        print(form.none_made, file=sys.stderr)
    if unmade or _breads_alone(options.only, [job for _, jobs in bakeries for job in jobs]):
        return ERRORS
    if lacking:
        print(f"no PDF was written: {lacking}", file=sys.stderr)
    status = status_of(reports, options.strict)
    return MISSING if status == FINE and lacking else status


def _with_a_reason(only: Sequence[str]) -> list[Form]:
    """The forms that were asked for by name and may have nothing to say."""
    return [form for form in FORMS if form.none_made and form.name in only]


def _breads_alone(only: Sequence[str], jobs: Sequence[PrintJob]) -> bool:
    """Whether nothing was asked for but preparations, and no form but such as they have not; then that is said. A dish has a form
    of its own."""
    forms = [form for form in FORMS if form.name in only]
    bread = any(job.block.word != "preparation" for job in jobs)
    if (
        bread
        or not jobs
        or not forms
        or any(form.about is not Subject.FORMULA or form.preparations is not OfPreparations.NEVER for form in forms)
    ):
        return False
    names = ", ".join(form.name for form in forms)
    print(f"no {names} was made: a preparation has none; write --only preparations", file=sys.stderr)
    return True


def _made_of(form: Form, results: Sequence[Built]) -> bool:
    files = (os.path.basename(path) for one in results for path in (*one.written, *one.same))
    return any(f".{form.name}." in file for file in files)


def _left_at_their_own(jobs: Sequence[PrintJob]) -> None:
    names = [show(job.block.name) for job in jobs if job.own_size]
    if names:
        print(f"kept at their own amount, as preparations are: {', '.join(names)}", file=sys.stderr)


def print_options_of(options: argparse.Namespace) -> PrintOptions:
    """What is asked for with options. Raises `Unknown`."""
    kinds = tuple(kind for kind in (*KINDS, *ON_DEMAND) if kind in options.only) or _kinds(options)
    for option, form in _AT_HOME.items():
        if getattr(options, option, 0) and form not in kinds:
            raise Unknown(f"--{option} is for the {form} form, and --only leaves it out", f"write --only {form}")
    formats = tuple(name for name in FORMATS if name in options.only) or FORMATS
    now = now_here()
    return PrintOptions(
        order=sizing.order_of(options) if hasattr(options, "pieces") else PrintOptions().order,
        kitchen=options.kitchen,
        kinds=kinds,
        formats=formats,
        paper=options.paper or "",
        units=options.units or "",
        degrees=options.temperature or "",
        words=options.words or "",
        when=_when(options, now),
        dated=bool(options.start or options.ready),
        made=now.date(),
        swaps=tuple(getattr(options, "swap", ())),
        pictures=not options.no_pictures,
        waits=tuple(getattr(options, "wait", ())),
        benches=getattr(options, "benches", 0),
        blanks=getattr(options, "blanks", False),
    )


def _kinds(options: argparse.Namespace) -> tuple[str, ...]:
    """What is printed where nobody says: the sheets; of a class the handout of the learners and the teacher's side."""
    return tuple(_AT_HOME.values()) if any(getattr(options, option, 0) for option in _AT_HOME) else KINDS


def _when(options: argparse.Namespace, now: datetime) -> When:
    from manchet.timing.when import When, ready_at, start_at

    if options.start and options.ready:
        raise Unknown("--start and --ready each fix the day", "give one of them")
    if not (options.start or options.ready):
        # Nobody said when: a card that begins at six this morning can be read off as well as any other.
        return When(now.replace(hour=6, minute=0), is_ready=False, assumed=True)
    when = start_at(options.start, now) if options.start else ready_at(options.ready, now)
    if isinstance(when, str):
        raise Unknown(when)
    return when


def now_here() -> datetime:
    """The bakehouse's clock; SOURCE_DATE_EPOCH (reproducible-builds.org) holds it still."""
    from datetime import UTC, datetime

    held = os.environ.get("SOURCE_DATE_EPOCH", "")
    if not held:
        return datetime.now().replace(second=0, microsecond=0)
    if held.isascii() and held.isdigit() and len(held) <= 10:
        return datetime.fromtimestamp(int(held), UTC).replace(tzinfo=None)
    raise Unknown(f"SOURCE_DATE_EPOCH is {held}, which is not a time", "give the seconds since 1970, or unset it")


def _left_behind(bakeries: Sequence[tuple[Selection, Sequence[PrintJob]]], folder: str) -> None:
    """Names the sheets that belong to no formula and no kitchen, where all there is was built."""
    from manchet.workspace.output import of_nobody
    from manchet.workspace.slugs import kitchen_slugs

    if not all(selection.is_everything for selection, _ in bakeries):
        return
    known = {job.slug for _, jobs in bakeries for job in jobs} | {
        one for selection, _ in bakeries for one in kitchen_slugs(selection.files)
    }
    left = of_nobody(folder, known)
    if left:
        more = f" and {len(left) - MOST_NAMED:,} more" if len(left) > MOST_NAMED else ""
        print(f"of no formula here any more: {', '.join(map(show, left[:MOST_NAMED]))}{more}", file=sys.stderr)


def _summary(results: Sequence[Built]) -> None:
    from manchet.diagnostics.text import count_of

    written = sum(len(one.written) for one in results)
    same = sum(len(one.same) for one in results)
    parts = [f"{count_of(written, 'file')} written"]
    if same:
        parts.append(f"{same:,} as before")
    print("; ".join([*parts, count_of(sum(one.is_formula for one in results), "formula")]), file=sys.stderr)
