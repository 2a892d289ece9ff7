"""What cannot be printed: signs that the sheets' font does not have (on the PDF an empty box stands for each), labels without room."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Protocol

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report


class Page(Protocol):
    """Any view: a tuple of texts and further tuples, with a title and the name of its form."""

    @property
    def title(self) -> str: ...
    @property
    def form(self) -> str: ...


LONGEST = 60
"""Letters of the text that is quoted."""


def unprintable(missing: tuple[str, ...], view: Page, place: Place) -> tuple[Diagnostic, ...]:
    """A warning for each such sign, with the first text of the page in which it stands."""
    return tuple(
        report(
            "sign-not-in-font",
            place,
            f"the {view.form} of {view.title} cannot print {_name(sign)}{_where(sign, view)}",
            "write it with letters that are printed, or take the HTML page, whose letters are the reader's own",
        )
        for sign in missing
    )


def no_room(crowded: bool, view: Page, place: Place) -> tuple[Diagnostic, ...]:
    """A warning for a page that says more than the places of its paper hold; it is not printed, and never set smaller than may be."""
    if not crowded:
        return ()
    message = f"the {view.form} of {view.title} says more than has room in a place of that size, so none is printed"
    help = "in the kitchen, write a larger one, as in `labels 2 across, 4 down on A4`, or `labels 62 mm roll`"
    return (report("label-too-small", place, message, help),)


def _name(sign: str) -> str:
    """`“☃” (snowman, U+2603)`: what cannot be printed may not show on a screen either."""
    import unicodedata

    code = " ".join(f"U+{ord(one):04X}" for one in sign)
    name = unicodedata.name(sign, "").lower() if len(sign) == 1 else ""
    return f"“{sign}” ({name}, {code})" if name else f"“{sign}” ({code})"


def _where(sign: str, view: Page) -> str:
    text = next((text for text in _texts(view) if sign in text), "")
    if not text:
        return ""
    at = max(0, text.index(sign) - LONGEST // 2)
    return f", in “{text[at : at + LONGEST].strip()}”"


def _texts(value: object) -> Iterator[str]:
    """Every text of a view, in its order."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, tuple):
        for part in value:
            yield from _texts(part)
