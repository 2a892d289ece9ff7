"""How much one formula may hold, and what is said of more."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.formula.draft import Draft
from manchet.formula.model import Makes
from manchet.syntax.nodes import Entry

MOST_STAGES = 50
"""Stages of one formula, its dough among them. Our own rule: nobody makes a bread in so many bowls, and how deep one may stand
in another is bounded with it."""

MOST_BREADS = 50
"""Breads of one dough, by what the formula makes or by what is done for each. Our own rule: no bench parts one dough into more, and
each has its lines on every form."""


def stages_too_many(headings: list[Entry]) -> Diagnostic:
    message = f"this formula has {len(headings):,} stages; it can have {MOST_STAGES}"
    help = "make what is made ahead a `preparation` of its own, or part the formula in two"
    return report("stages-too-many", headings[MOST_STAGES].line.place(), message, help)


def breads_at(makes: tuple[Makes, ...], last: Draft | None) -> list[Place]:
    """Where each bread of the dough is told: among what the formula makes, or, where these are more, under the dough."""
    parted = [] if last is None else [branch.place for branch in last.branches if branch.noun]
    return max([made.place for made in makes], parted, key=len)


def breads_too_many(places: list[Place]) -> Diagnostic:
    message = f"this formula makes {len(places):,} breads of one dough; it can make {MOST_BREADS}"
    help = "part the formula in two, each with the breads that are made together"
    return report("breads-too-many", places[MOST_BREADS], message, help)
