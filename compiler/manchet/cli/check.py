"""Check formulas and report mistakes.

With no name given, checks every formula in this folder's bakery. An error is something that cannot be true; a warning or a
note is about craft, and does not stop a sheet. Files that have not changed since the last check are not checked again.

With --mend it first makes the corrections that cannot change what you mean: a unit's short form, a plain hyphen, spaces for a
tab. Each file is rewritten whole or not at all, and means the same afterwards.
"""

from __future__ import annotations

import argparse
import sys

from manchet.cli import sizing
from manchet.cli.arguments import one_of, processes
from manchet.cli.screen import columns, paint
from manchet.cli.status import ERRORS, FINE
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.workspace.collecting import without_collecting

EXAMPLES = (
    "manchet check",
    "manchet check recipes/tern-loaf.bake",
    "manchet check 'Tern loaf' --strict",
    "manchet check recipes --format sarif > report.sarif",
    "manchet check --mend --dry-run",
)


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("what", nargs="*", metavar="FILE|FOLDER|FORMULA", help="what to check (default: this folder)")
    parser.add_argument(
        "--format",
        type=one_of("text", "short", "json", "sarif"),
        default="text",
        help="text, short (one line each), json or sarif",
    )
    parser.add_argument("--strict", action="store_true", help="exit with status 1 for warnings too")
    parser.add_argument(
        "--kitchen", default="", metavar="NAME", help="which kitchen to check against, if there are several"
    )
    processes(parser)
    sizing.swapping(parser)
    parser.add_argument(
        "--mend", action="store_true", help="make the corrections that cannot change what you mean, then check"
    )
    parser.add_argument("--dry-run", action="store_true", help="with --mend: show the corrections without writing them")
    parser.add_argument("--no-cache", action="store_true", help="check everything, changed or not")


@without_collecting()
def run(options: argparse.Namespace) -> int:
    from manchet.cli.reporting import from_here
    from manchet.workspace.checking import check_selection, check_with_changes
    from manchet.workspace.selection import selections

    swaps, waits = tuple(options.swap), tuple(options.wait)
    if options.mend or options.dry_run:
        from manchet.cli.mending import mend_what_is_asked

        if not mend_what_is_asked(options):
            return FINE
    done = [
        check_with_changes(selection, options.kitchen, swaps, waits)
        if swaps or waits
        else check_selection(selection, options.kitchen, options.jobs, not options.no_cache)
        for selection in selections(options.what)
    ]
    diagnostics = from_here(one for each in done for one in each.diagnostics)
    sys.stdout.write(
        _document(options.format, diagnostics, sum(each.formulas for each in done), sum(each.files for each in done))
    )
    return status_of(diagnostics, options.strict)


def status_of(diagnostics: tuple[Diagnostic, ...], strict: bool) -> int:
    bad = (Severity.ERROR, Severity.WARNING) if strict else (Severity.ERROR,)
    return ERRORS if any(one.severity in bad for one in diagnostics) else FINE


def _document(form: str, diagnostics: tuple[Diagnostic, ...], formulas: int, files: int) -> str:
    if form == "json":
        from manchet.diagnostics.json_form import document

        return document(diagnostics, formulas, files)
    if form == "sarif":
        from manchet import __version__
        from manchet.cli.explain import rule_for
        from manchet.diagnostics import sarif

        return sarif.document(diagnostics, __version__, rule_for)
    from manchet.diagnostics.text import full, short, summary

    colours = paint(sys.stdout)
    if form == "short":
        return "".join(short(one, colours) + "\n" for one in diagnostics)
    reports = "".join(full(one, colours, columns(sys.stdout)) + "\n\n" for one in diagnostics)
    safe = sum(any(fix.safe for fix in one.fixes) for one in diagnostics)
    mend = f"; manchet check --mend puts {safe} right" if safe else ""
    return f"{reports}{summary(diagnostics, formulas, files)}{mend}\n"
