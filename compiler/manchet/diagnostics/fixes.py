"""Making a fix, where the report is made: its edits stand at the place of the report, or beside it."""

from __future__ import annotations

import re
from collections.abc import Iterable

from manchet.diagnostics.diagnostic import Edit, Fix, Place


def instead(place: Place, text: str, title: str = "", safe: bool = False) -> Fix:
    """`text` where now stands what the report is about."""
    return Fix(title or f"write `{text}`", (Edit(place, text),), safe)


def one_of(place: Place, texts: Iterable[str]) -> tuple[Fix, ...]:
    """A choice: one of the texts where now stands what the report is about, the likeliest first."""
    return tuple(instead(place, text) for text in dict.fromkeys(texts))


def stretch(place: Place, start: int, end: int) -> Place:
    """From column `start` to `end` of what the place marks, counted from 0."""
    return place._replace(column=place.column + start, end_line=place.line, end_column=place.column + end)


def at_the_end(place: Place, text: str, title: str = "") -> Fix:
    """`text` behind what the report is about."""
    return instead(
        place._replace(line=place.end_line, column=place.end_column), text, title or f"write `{text.strip(' ,')}`"
    )


def where_said(place: Place, words: str) -> Place | None:
    """Where these words stand in what the place marks, whatever its capitals and spaces; None unless they stand there once."""
    marked = place.text[place.column - 1 : place.end_column - 1]
    pattern = r"\s+".join(map(re.escape, words.split()))
    found = list(re.finditer(rf"(?<!\w){pattern}(?!\w)", marked, re.IGNORECASE)) if pattern else []
    return stretch(place, *found[0].span()) if len(found) == 1 else None


def exchange_of(place: Place, words: str, *texts: str) -> tuple[Fix, ...]:
    """A choice of texts where these words stand in what the place marks; none where they do not stand there once."""
    found = where_said(place, words)
    return () if found is None else one_of(found, texts)


def line_under(place: Place, text: str, title: str = "") -> Fix:
    """A new line under that of the report, with its indentation. (`text` itself may stand deeper.)"""
    depth = len(place.text) - len(place.text.lstrip(" "))
    end = len(place.text) + 1
    at = place._replace(column=end, end_line=place.line, end_column=end)
    return Fix(title or f"add `{text.strip()}`", (Edit(at, f"\n{' ' * depth}{text}"),))


def without_line(place: Place, title: str) -> Fix:
    """The line of the report is left out."""
    return Fix(title, (Edit(place._replace(column=1, end_line=place.line + 1, end_column=1), ""),))


def as_help(fixes: Iterable[str]) -> str:
    """The titles of fixes as a person is told them: write `a` or `b`."""
    titles = list(fixes)
    if len(titles) > 1 and all(title.startswith(_WRITE) for title in titles):
        titles[1:] = [title.removeprefix(_WRITE) for title in titles[1:]]
    return f"{', '.join(titles[:-1])} or {titles[-1]}" if len(titles) > 1 else "".join(titles)


_WRITE = "write "
