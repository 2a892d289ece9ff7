"""Show what is installed on this machine and what is missing.

One line for each thing manchet needs: whether it is there, what it is for, and what to type if it is not. Exits with
status 4 if something is missing.

`--git` is about the clone this folder is in: it shows what git has to be told so that changes and merges of formulas read well,
and writes that into this clone's own settings. Nothing of it is committed; git never takes commands from a repository.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable

from manchet.cli.status import FINE, MISSING
from manchet.records import NamedTuple

EXAMPLES = ("manchet doctor", "manchet doctor --git")


class Finding(NamedTuple):
    """`state` is "ok", "missing" or "note" (it works without)."""

    state: str
    what: str
    says: str
    help: str = ""


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--git", action="store_true", help="show and write the settings of this clone's git for .bake files"
    )


def run(options: argparse.Namespace) -> int:
    if options.git:
        return _set_git_up()
    findings = [finding for look in LOOKS for finding in look()]
    longest = max(len(finding.what) for finding in findings)
    for finding in findings:
        print(f"{finding.state:<8} {finding.what:<{longest}}  {finding.says}")
        if finding.help:
            print(f"{'':<8} {'':<{longest}}  {finding.help}")
    missing = sum(finding.state == "missing" for finding in findings)
    print("everything is there" if not missing else f"{missing} missing")
    return MISSING if missing else FINE


def _set_git_up() -> int:
    from shlex import quote
    from shutil import which

    from manchet.workspace.git_settings import ATTRIBUTES, git_settings, git_state, write_git_settings

    here = os.path.abspath(sys.argv[0])
    is_found = which("manchet") is not None or not os.access(here, os.X_OK)
    settings = git_settings("manchet" if is_found else quote(here))
    before = git_state(".", settings)
    for one in settings:
        print(f"git config {one.key} '{one.value}'")
        print(f"    {one.does}{'; set already' if one.key in before.has else ''}")
    write_git_settings(".", settings)
    print("written into this clone's own settings" if len(before.has) < len(settings) else "nothing to write")
    if not is_found:
        print("git's shell finds no command manchet, so its whole path is written; where it moves, run this again")
    if not before.attributes:
        print(
            f"\n.gitattributes does not send .bake files there yet: add this line to it, and commit it\n    {ATTRIBUTES}"
        )
    return FINE


def _python() -> list[Finding]:
    from manchet import __version__

    version = ".".join(map(str, sys.version_info[:3]))
    said = f"manchet {__version__} on Python {version}, {sys.platform}"
    return [Finding("ok", "python", said)]


def _libraries() -> list[Finding]:
    from importlib.metadata import PackageNotFoundError, version

    every = (
        ("lark", "reads formulas", ""),
        ("jinja2", "lays out pages", ""),
        ("weasyprint", "makes PDFs of them", ""),
        ("watchdog", "notices saves", ""),
        ("icalendar", "writes calendars", ""),
        ("font-source-sans-pro", "the type of the sheets", ""),
        ("ortools", "plans a day of many breads better", "plan"),
        ("pygls", "answers an editor", "editor"),
    )
    findings = []
    for name, does, extra in every:
        try:
            findings.append(Finding("ok", name, f"{version(name)}, {does}"))
        except PackageNotFoundError:
            wanted = f"'manchet[{extra}]'" if extra else name
            state = "note" if extra else "missing"
            findings.append(Finding(state, name, f"not installed; {does}", f"pip install {wanted}"))
    return findings


def _pdf() -> list[Finding]:
    try:
        from manchet.sheets.page.pdf import NoPdf, pdf_of
    except ImportError as error:
        return [Finding("missing", "pdf", f"cannot start: {error.name} is not installed")]
    # A page with a figure and a fraction in it: that needs Pango, HarfBuzz and the font to work together.
    page = '<!doctype html><html lang="en"><title>a</title><body class="doctor"><p style="font-family: \'Source Sans\'">12½ kg, 24 °C</p>'
    try:
        made = pdf_of(page)
    except OSError as error:
        return [Finding("missing", "pdf", f"cannot start: {error}")]
    if isinstance(made, NoPdf):
        help = f"{made.install}   (HTML and JSON are written all the same)"
        return [Finding("missing", "pango", f"no PDF without it: {made.reason}", help)]
    if made.missing:
        return [Finding("missing", "fonts", f"no sign in the font for {', '.join(made.missing)}")]
    return [Finding("ok", "pdf", "Pango, HarfBuzz and the fonts print a page")]


def _cache() -> list[Finding]:
    from manchet.workspace.cache_folder import cache_folder

    path = cache_folder()
    if path:
        return [Finding("ok", "cache", f"{path}, yours alone")]
    if os.environ.get("MANCHET_CACHE"):
        return [Finding("note", "cache", "switched off by MANCHET_CACHE; every check starts from scratch")]
    return [Finding("note", "cache", "no folder of your own for the cache; every check starts from scratch")]


def _saves() -> list[Finding]:
    from manchet.workspace.trouble import Trouble

    try:
        from manchet.workspace.folder import Premises
        from manchet.workspace.saves import Watch

        with Watch(Premises(os.getcwd(), whole=False)) as watch:
            how = f"polls the folder ({watch.polling})" if watch.polling else "the system says when a file is saved"
    except (ImportError, Trouble) as error:
        return [Finding("missing", "watch", f"cannot start: {error}")]
    return [Finding("ok", "watch", f"in this folder: {how}")]


def _terminal() -> list[Finding]:
    encoding = (sys.stdout.encoding or "").lower()
    if "utf" in encoding:
        return [Finding("ok", "terminal", f"writes {encoding}")]
    return [Finding("note", "terminal", f"writes {encoding or 'nothing known'}, so ½ and ° are shown as escapes")]


def _zones() -> list[Finding]:
    from manchet.timing.zones import zones_known

    known = zones_known()
    if known:
        return [Finding("ok", "zones", f"{len(known)} zones, for the nights on which clocks change")]
    help = "apt install tzdata   (or pip install tzdata)"
    return [Finding("note", "zones", "no zone data; with a kitchen's `zone` the clock is taken never to change", help)]


LOOKS: tuple[Callable[[], list[Finding]], ...] = (_python, _libraries, _pdf, _cache, _saves, _terminal, _zones)
