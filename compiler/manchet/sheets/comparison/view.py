"""What a comparison says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running


class ChangedLine(NamedTuple):
    """One thing that is otherwise. `text` is all of it in a line; the other fields are the same in parts, for a page.

    `what` it is of, `now` and `was`, and the same in weights for the size of the newer file (`weight`, `was_weight`). What has no figures
    stands in `what` alone.
    """

    text: str
    what: str
    now: str = ""
    was: str = ""
    weight: str = ""
    was_weight: str = ""
    aside: str = ""
    """In brackets behind it."""
    grave: bool = False
    """It is about an allergen."""


class ComparedBread(NamedTuple):
    """One bread on both sides. `note` is a sentence in the place of lines, where one side has none of it or cannot be read."""

    title: str
    sides: str
    """`HEAD~2 → working copy`"""
    lines: tuple[ChangedLine, ...]
    note: str = ""
    more: str = ""
    """How many lines are left out."""


class ComparisonPage(NamedTuple):
    """All that was compared and is otherwise."""

    title: str
    language: str
    paper: str
    running: Running
    breads: tuple[ComparedBread, ...]
    as_they_were: str
    """How many are the same on both sides."""
    form: Literal["comparison"] = "comparison"
