"""What `check --mend` types, and how it says so."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from typing import TYPE_CHECKING

from manchet.cli.differences import difference
from manchet.diagnostics.terminal import show
from manchet.diagnostics.text import count_of

if TYPE_CHECKING:
    from manchet.workspace.mending import MendedFile


def mend_what_is_asked(options: argparse.Namespace) -> bool:
    """Carries out the safe fixes of what the command asks for, or shows them; whether the check goes on. What it did is said
    beside a report that a program reads. Raises `Unknown` and `Blocked`."""
    from manchet.workspace.checking import check_selection
    from manchet.workspace.mending import mend_files, write_mended
    from manchet.workspace.selection import selections
    from manchet.workspace.trouble import Unknown

    if not options.mend:
        raise Unknown("--dry-run shows what --mend would type", "write --mend --dry-run")
    if options.swap or options.wait:
        raise Unknown("--mend types in the files, and --swap and --wait leave them as they are", "give one of them")
    files: list[MendedFile] = []
    for selection in selections(options.what):
        found = check_selection(selection, options.kitchen, options.jobs, not options.no_cache).diagnostics
        files += mend_files(selection, found, options.kitchen)
    said = sys.stdout if options.format == "text" else sys.stderr
    if options.dry_run:
        for file in files:
            sys.stdout.writelines(
                f"{line}\n"
                for line in (
                    *difference(_from_here(file.path), file.before, file.after, "mended"),
                    *_lines(file, "would mend"),
                )
            )
        sys.stdout.write(_summary(files, "would be mended"))
        return False
    written: list[MendedFile] = []
    for file in write_mended(files):
        written.append(file)
        said.writelines(f"{line}\n" for line in _lines(file, "mended"))
    left = [file for file in files if not file.done]
    said.writelines(f"{line}\n" for file in left for line in _lines(file, ""))
    said.write(_summary(written, "mended") + ("\n" if said is sys.stdout else ""))
    return True


def _lines(file: MendedFile, did: str) -> Iterator[str]:
    path = _from_here(file.path)
    if not file.done:
        yield f"{path}: left as it is, for with its fixes it would not read the same"
    for report, fix in file.done:
        place = report.place
        yield f"{path}:{place.line}:{place.column}: {did}: {show(fix.title)} [{report.name}]"


def _summary(files: list[MendedFile], did: str) -> str:
    number = sum(len(file.done) for file in files)
    if not number:
        return f"nothing {did}\n"
    return f"{count_of(number, 'mistake')} {did} in {count_of(sum(bool(file.done) for file in files), 'file')}\n"


def _from_here(path: str) -> str:
    from manchet.cli.reporting import path_from_here

    return show(path_from_here(path))
