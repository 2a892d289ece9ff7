"""The safe fixes of what was asked for, carried out: whole files or none, and none that then reads otherwise.

A fix calls itself safe where what is meant cannot change by it. Here that is not believed: the mended text is read again
beside the old one, and where their trees differ, or a report has come that was not there, the file is left as it is.
"""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from manchet.diagnostics.diagnostic import Diagnostic, Fix
from manchet.records import NamedTuple
from manchet.source.files import text_of, text_with_its_newlines
from manchet.source.mending import mend
from manchet.syntax.sameness import reads_same
from manchet.workspace.checking import wanted_of
from manchet.workspace.rewriting import write_anew
from manchet.workspace.selection import Selection

MOST_ROUNDS = 100
"""A fix can bring to light another that stood behind it: a file tells its first mistakes alone, and a line its first."""


class CarriedOut(NamedTuple):
    """One fix that was carried out, and the report that it was of, at the place where that stood."""

    report: Diagnostic
    fix: Fix


class MendedFile(NamedTuple):
    """A file with its safe fixes carried out. `place` is where it lies on the disk; `done` is empty for one that was left
    as it is, since with its fixes it would not read the same."""

    path: str
    place: str
    before: bytes
    after: bytes
    done: tuple[CarriedOut, ...]


def mend_files(selection: Selection, reports: Iterable[Diagnostic], kitchen: str = "") -> tuple[MendedFile, ...]:
    """What the safe fixes of these reports make of the files that were asked for. Nothing is written."""
    paths = {one.place.path for one in reports if _safe(one) is not None} & selection.paths
    return tuple(_mended(selection, path, kitchen) for path in sorted(paths))


def write_mended(files: Sequence[MendedFile]) -> Iterator[MendedFile]:
    """Writes each file that was mended, and gives it when it is written. Raises `Blocked`, before any is written."""
    return write_anew([file for file in files if file.done])


def _mended(selection: Selection, path: str, kitchen: str) -> MendedFile:
    before = next(file.data for file in selection.files if file.path == path)
    place = os.path.join(selection.root, path.removeprefix(selection.prefix))
    mark, text = text_with_its_newlines(before)
    reports = _reports(selection, path, kitchen)
    known = _known(reports)
    done: list[CarriedOut] = []
    after = before
    try:
        for _ in range(MOST_ROUNDS):
            offered = [
                CarriedOut(one, fix) for one in reports if one.place.path == path and (fix := _safe(one)) is not None
            ]
            made = mend(path, text, [one.fix for one in offered])
            if not made.done:
                break
            text = made.text
            done += (offered[number] for number in made.done)
            after = mark + text.encode("utf-8")
            selection.bakery.update(path, after)
            reports = _reports(selection, path, kitchen)
    finally:
        selection.bakery.update(path, None)
    one, other = text_of(path, before).value, text_of(path, after).value
    same = one is not None and other is not None and reads_same(one, other)
    if not same or _known(reports) - known:
        return MendedFile(path, place, before, before, ())
    return MendedFile(path, place, before, after, tuple(done))


def _reports(selection: Selection, path: str, kitchen: str) -> tuple[Diagnostic, ...]:
    files = {file.path: file for file in selection.files}
    return tuple(wanted_of(selection.bakery.read([path], kitchen).diagnostics, selection, files, kitchen))


def _safe(report: Diagnostic) -> Fix | None:
    return next((fix for fix in report.fixes if fix.safe), None)


def _known(reports: Iterable[Diagnostic]) -> Counter[str]:
    """How often each report is made, wherever it stands and whatever it quotes."""
    return Counter(one.name for one in reports)
