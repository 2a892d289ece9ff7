"""Reports as a person reads them: where, how bad, what is wrong, the line itself, what to type instead.

    breads/tern.bake:12:5: error: salt stands twice in overall [material-twice]
       12 |     salt     2.1%
          |     ^^^^
      help: keep one of the two lines
      breads/tern.bake:9:5: the first one

The same reports in one line each are `short`. Nothing of a file reaches the terminal but through `show`.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.terminal import show, width
from manchet.records import NamedTuple

WIDEST = 120
"""Columns of a quoted line; a longer one is quoted around its caret."""


_COLOUR = re.compile("\x1b\\[[0-9;]*m")
TAB = "→"
"""How a tab in a quoted line is shown: one column, so that the caret stands where it should."""


class Paint(NamedTuple):
    """The escapes put round the parts of a report; all empty where there is no colour."""

    error: str = ""
    warning: str = ""
    note: str = ""
    quiet: str = ""
    strong: str = ""
    end: str = ""


PLAIN = Paint()
COLOURED = Paint("\x1b[31m", "\x1b[33m", "\x1b[36m", "\x1b[2m", "\x1b[1m", "\x1b[0m")


def full(diagnostic: Diagnostic, paint: Paint = PLAIN, columns: int = 0) -> str:
    """One report over several lines, without a newline at its end; its sentences no wider than `columns`, if that is given."""
    lines = [
        wrap(short(diagnostic, paint), columns, "  "),
        *_quoted(diagnostic.place, paint, _colour(diagnostic.severity, paint)),
    ]
    if diagnostic.help:
        first, *more = diagnostic.help.split("\n")
        lines.append(wrap(f"  {paint.strong}help:{paint.end} {show(first)}", columns, " " * 8))
        lines += [wrap(f"        {show(line)}", columns, " " * 8) for line in more]
    for related in diagnostic.related:
        lines.append(wrap(f"  {_where(related.place)}: {show(related.message)}", columns, " " * 4))
        lines += _quoted(related.place, paint, paint.quiet)
    return "\n".join(lines)


def short(diagnostic: Diagnostic, paint: Paint = PLAIN) -> str:
    """One report on one line: `path:line:column: severity: message [name]`."""
    severity = f"{_colour(diagnostic.severity, paint)}{diagnostic.severity.value}{paint.end}"
    name = f"{paint.quiet}[{diagnostic.name}]{paint.end}"
    return f"{_where(diagnostic.place)}: {severity}: {show(diagnostic.message)} {name}"


def summary(diagnostics: Iterable[Diagnostic], formulas: int, files: int) -> str:
    """The last line: `2 errors, 1 note; 3 formulas in 2 files`."""
    counts: dict[Severity, int] = dict.fromkeys(Severity, 0)
    for diagnostic in diagnostics:
        counts[diagnostic.severity] += 1
    found = ", ".join(count_of(number, severity.value) for severity, number in counts.items() if number)
    return f"{found or 'nothing to report'}; {count_of(formulas, 'formula')} in {count_of(files, 'file')}"


def count_of(number: int, noun: str) -> str:
    """`1 file`, `2 files`"""
    return f"{number:,} {noun}" if number == 1 else f"{number:,} {noun}s"


def wrap(text: str, columns: int, margin: str) -> str:
    """`text` (already shown) in lines of at most `columns`, broken at spaces alone; all but the first begin with `margin`.

    0 columns leave it as it is. What is longer than a line (a name in brackets, a path) is never broken.
    """
    if not columns or _columns(text) <= columns:
        return text
    start = len(text) - len(text.lstrip(" "))
    lines, line = [], text[:start]
    for word in text[start:].split(" "):
        longer = f"{line} {word}" if line.strip() else f"{line}{word}"
        if line.strip() and _columns(longer) > columns:
            lines.append(line)
            longer = f"{margin}{word}"
        line = longer
    return "\n".join([*lines, line])


def _columns(text: str) -> int:
    """How wide a text is that may have colours in it."""
    return width(_COLOUR.sub("", text))


def in_order(diagnostics: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """By file, then by place in it; what stands at one place keeps its order."""
    return tuple(sorted(diagnostics, key=lambda one: (one.place.path, one.place.line, one.place.column)))


def _where(place: Place) -> str:
    return f"{show(place.path)}:{place.line}:{place.column}"


def _colour(severity: Severity, paint: Paint) -> str:
    colours: Mapping[Severity, str] = {
        Severity.ERROR: paint.error,
        Severity.WARNING: paint.warning,
        Severity.NOTE: paint.note,
        Severity.CAUTION: paint.warning,
    }
    return colours[severity]


def _quoted(place: Place, paint: Paint, colour: str) -> list[str]:
    """The line of the file with a caret under what is meant; nothing where there is no line to show."""
    if not place.text.strip():
        return []
    start = min(max(place.column - 1, 0), len(place.text))
    end = place.end_column - 1 if place.end_line == place.line else len(place.text)
    end = min(max(end, start + 1), max(len(place.text), start + 1))
    before, marked, after = place.text[:start], place.text[start:end], place.text[end:]
    if len(place.text) > WIDEST:
        before, marked, after = _window(before, marked, after)
    before, marked, after = (show(part.replace("\t", TAB)) for part in (before, marked, after))
    number = f"{place.line:>5}"
    gutter = " " * len(number)
    carets = "^" * max(width(marked), 1)
    return [
        f"{paint.quiet}{number} |{paint.end} {before}{marked}{after}".rstrip(),
        f"{paint.quiet}{gutter} |{paint.end} {' ' * width(before)}{colour}{carets}{paint.end}",
    ]


def _window(before: str, marked: str, after: str) -> tuple[str, str, str]:
    """The part of a very long line that lies round the caret, with … where it was cut."""
    if len(marked) > WIDEST // 2:
        marked, after = marked[: WIDEST // 2], "…"
    if len(before) > WIDEST // 4:
        before = "…" + before[-WIDEST // 4 :]
    if len(after) > WIDEST // 4:
        after = after[: WIDEST // 4] + "…"
    return before, marked, after
