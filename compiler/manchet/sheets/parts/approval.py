"""Who approved a formula, and whether what is printed is still that."""

from __future__ import annotations

import re

from manchet.formula.changed import OPTION
from manchet.formula.model import Formula
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.measures import Measures


def status_of(formula: Formula, m: Measures) -> str:
    """`approved 14 Nov 2026 by Ines`: its day as all days are printed."""

    def said(found: re.Match[str]) -> str:
        year, month, day = map(int, found.groups())
        return f"{day} {m.words.several('days.months')[month - 1]} {year}" if 1 <= month <= 12 else found[0]

    return _DAY.sub(said, formula.status)


_DAY = re.compile(r"\b(\d{4})-(\d\d)-(\d\d)\b")
"""A day as files have it."""


def no_longer_approved(formula: Formula, issue: Issue) -> bool:
    """What was approved is the file: not what was changed since, nor what was asked for beside it."""
    asked_for = bool(formula.moved) or any(made.place.path == OPTION for made in formula.swapped)
    return formula.status.startswith("approved") and (issue.edited or asked_for)
