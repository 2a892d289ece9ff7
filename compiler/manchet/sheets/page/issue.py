"""Which state of a file a page is of, and what stands on every page because of it."""

from __future__ import annotations

import datetime

from manchet.records import NamedTuple


class Issue(NamedTuple):
    """Which sheet this is: all of it comes from outside, so that the same file always prints the same page."""

    date: str = ""
    """The day it is for, as it is to be printed: "Thu 26 Nov 2026"."""
    file: str = ""
    version: str = ""
    """The commit, or words that say the file was edited since."""
    digest: str = ""
    replaces: str = ""
    """The date of the sheet this one replaces, or "" if it is the first."""
    edited: bool = False
    """Changed since it was approved: then the sheet says NOT APPROVED."""
    made: datetime.date | None = None
    """The day that it is made, from which the dates of a label are counted; None where nobody says."""
    out_at: str = ""
    """When it is out of the oven, if a timing was asked for: with its weekday where that is not the page's."""


class Running(NamedTuple):
    """What stands on every page."""

    name: str
    mix: str
    date: str
    file: str
    version: str
    digest: str
    replaces: str


def running_head(name: str, mix: str, issue: Issue) -> Running:
    """What stands on every page of `name`; `mix` is what of it, "" for all."""
    return Running(name, mix, issue.date, issue.file, issue.version, issue.digest, issue.replaces)
