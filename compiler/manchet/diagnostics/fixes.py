"""Making a fix, where the report is made: its edits stand at the place of the report, or beside it."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.diagnostics.diagnostic import Edit, Fix, Place


def instead(place: Place, text: str, title: str = "", safe: bool = False) -> Fix:
    """`text` where now stands what the report is about."""
    return Fix(title or f"write `{text}`", (Edit(place, text),), safe)


def one_of(place: Place, texts: Iterable[str]) -> tuple[Fix, ...]:
    """A choice: one of the texts where now stands what the report is about, the likeliest first."""
    return tuple(instead(place, text) for text in dict.fromkeys(texts))


def line_under(place: Place, text: str, title: str = "") -> Fix:
    """A new line under that of the report, with its indentation. (`text` itself may stand deeper.)"""
    depth = len(place.text) - len(place.text.lstrip(" "))
    end = len(place.text) + 1
    at = place._replace(column=end, end_line=place.line, end_column=end)
    return Fix(title or f"add `{text.strip()}`", (Edit(at, f"\n{' ' * depth}{text}"),))


def without_line(place: Place, title: str) -> Fix:
    """The line of the report is left out."""
    return Fix(title, (Edit(place._replace(column=1, end_line=place.line + 1, end_column=1), ""),))


def as_help(fixes: tuple[Fix, ...]) -> str:
    """The fixes as a person is told them: write `a` or `b`."""
    titles = [fix.title for fix in fixes]
    if len(titles) > 1 and all(title.startswith(_WRITE) for title in titles):
        titles[1:] = [title.removeprefix(_WRITE) for title in titles[1:]]
    return f"{', '.join(titles[:-1])} or {titles[-1]}" if len(titles) > 1 else "".join(titles)


_WRITE = "write "
