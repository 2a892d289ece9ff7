"""For tests: a text after a fix of one of its reports."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Fix
from manchet.source.mending import mend


def after(text: str, fix: Fix) -> str:
    """The text with the fix carried out, which it must be."""
    made = mend("test.bake", text, [fix])
    assert made.done == (0,), f"{fix.title} does not fit the text"
    return made.text


def said(reports: tuple[Diagnostic, ...]) -> list[str]:
    """What the reports say, whatever their lines: a fix may move those below it."""
    return [f"{one.name}: {one.message}" for one in reports]
