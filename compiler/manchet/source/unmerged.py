"""A merge that git left half done: two versions of some lines between its marks, and nobody has said yet which counts.

The marks, and that a third part may stand between them (the version both come from), are git's: `git help merge`, "How
conflicts are presented".
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place
from manchet.diagnostics.reports import report
from manchet.diagnostics.text import count_of
from manchet.records import NamedTuple
from manchet.source.merge_marks import UNMERGED
from manchet.source.text import Line

_MARK = r"(<{7}|\|{7}|={7}|>{7})(?: (.*))?$"
_TOLD = 60
"""Letters of a version's lines that its fix repeats."""


class Unmerged(NamedTuple):
    """Two versions of some lines. Each is lines[start:end] of the file, counted from 0, without the marks around it."""

    first: int
    """The line of the first mark; `last`, of the last."""
    last: int
    ours: tuple[int, int]
    theirs: tuple[int, int]
    our_name: str
    their_name: str


def unmerged_of(lines: Sequence[Line]) -> tuple[Unmerged, ...]:
    """Every place with all its marks, in order."""
    return tuple(_places(lines))


def ours_of(lines: Sequence[Line]) -> tuple[Line, ...]:
    """The file in our version: marks and their lines are blank, so that every other line keeps its number."""
    out = {
        at
        for place in unmerged_of(lines)
        for at in range(place.first, place.last + 1)
        if not place.ours[0] <= at < place.ours[1]
    }
    out |= {at for at, line in enumerate(lines) if re.match(_MARK, line.raw)}
    return tuple(
        line._replace(raw="", indent=0, body="", comment="") if at in out else line for at, line in enumerate(lines)
    )


def reports_of_unmerged(lines: Sequence[Line]) -> tuple[Diagnostic, ...]:
    """One report for each place, with the two ways out of it; and one for each mark that is left by itself."""
    places = unmerged_of(lines)
    inside = {at for place in places for at in range(place.first, place.last + 1)}
    reports = [_of_place(place, lines) for place in places]
    reports += [
        _of_mark(line, lines) for at, line in enumerate(lines) if at not in inside and re.match(_MARK, line.raw)
    ]
    return tuple(sorted(reports, key=lambda one: one.place.line))


def _places(lines: Sequence[Line]) -> Iterator[Unmerged]:
    marks: list[tuple[str, int, str]] = []
    for at, line in enumerate(lines):
        found = re.match(_MARK, line.raw)
        if found is None:
            continue
        sign, name = found[1][0], found[2] or ""
        if sign == "<":
            marks = []
        marks.append((sign, at, name))
        if sign == ">":
            signs = "".join(mark[0] for mark in marks)
            if signs in ("<=>", "<|=>"):
                (_, first, ours), (_, second, _) = marks[:2]
                middle = marks[-2][1]
                yield Unmerged(first, at, (first + 1, second), (middle + 1, at), ours or "ours", name or "theirs")
            marks = []


def _of_place(place: Unmerged, lines: Sequence[Line]) -> Diagnostic:
    most = max(end - start for start, end in (place.ours, place.theirs))
    return report(
        UNMERGED,
        lines[place.first].place(),
        f"two versions of {count_of(most, 'line')} meet here and were not joined",
        fixes=(
            _taking(place, lines, place.ours, "ours", place.our_name),
            _taking(place, lines, place.theirs, "theirs", place.their_name),
        ),
    )


def _taking(place: Unmerged, lines: Sequence[Line], kept: tuple[int, int], whose: str, name: str) -> Fix:
    start, end = kept
    said = "; ".join(" ".join(line.body.split()) for line in lines[start:end] if line.body)
    told = f"`{said if len(said) <= _TOLD else said[:_TOLD].rstrip() + ' …'}`" if said else "nothing"
    named = "" if name == whose else f" ({name})"
    out = [(place.first, start), (end, place.last + 1)]
    return Fix(f"take {whose}{named}: {told}", tuple(Edit(_stretch(lines, *one), "") for one in out))


def _of_mark(line: Line, lines: Sequence[Line]) -> Diagnostic:
    return report(
        UNMERGED,
        line.place(),
        f"`{line.raw}` is a mark that a merge has left, and the others that belong to it are gone",
        fixes=(Fix("leave the line out", (Edit(_stretch(lines, line.number - 1, line.number), ""),)),),
    )


def _stretch(lines: Sequence[Line], start: int, end: int) -> Place:
    """lines[start:end], whole."""
    first = lines[start]
    return Place(first.path, first.number, 1, first.number + end - start, 1, first.raw)
