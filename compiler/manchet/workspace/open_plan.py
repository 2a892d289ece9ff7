"""The plan a command is about, with the bakery around it."""

from __future__ import annotations

import os
from collections.abc import Sequence
from datetime import date

from manchet.day.patterns import PlanName, plan_called
from manchet.day.said import Plan
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold, nearest
from manchet.records import NamedTuple
from manchet.workspace.bakery import Bakery
from manchet.workspace.selection import Selection, selections
from manchet.workspace.trouble import Unknown

PLAN = "plan"


class OpenedPlan(NamedTuple):
    """A plan of a bakery; None where it has a mistake, which `diagnostics` tells."""

    selection: Selection
    bakery: Bakery
    name: str
    plan: Plan | None
    diagnostics: tuple[Diagnostic, ...]


def open_plan(words: Sequence[str], kitchen: str = "") -> OpenedPlan:
    """The plan that the words name, in this folder's bakery or in that of the file or folder among them; without a name the
    only one there. Raises `Unknown`."""
    places, names = _sorted(words)
    (selection,) = selections(places)
    headings = [
        (file.path, plan_called(block.name))
        for file in selection.files
        if file.path in selection.paths or not places
        for block in file.blocks
        if block.word == PLAN and block.name
    ]
    path, called = _chosen(headings, names[0] if names else "")
    name = called.name
    bakery = selection.bakery.read(None, kitchen)
    plan = next((one for one in bakery.plans if fold(one.name) == fold(name)), None)
    reports = tuple(one for one in bakery.mistakes if one.place.path == path or one.severity is Severity.ERROR)
    if any(one.severity is Severity.ERROR and one.place.path == path for one in reports):
        plan = None  # what cannot be read of it may be a shift, or an order
    if plan is None and not any(one.severity is Severity.ERROR for one in reports):
        raise Unknown(
            f"{name} is a plan for certain weekdays, and no day",
            f"write under it `on` with a date, or a plan of its own: `plan 2026-12-05 like {name}`",
        )
    return OpenedPlan(selection, bakery, name, plan, reports)


def _sorted(words: Sequence[str]) -> tuple[list[str], list[str]]:
    """The files and folders among the words, and the names. Raises `Unknown` for more than one of either."""
    places = [word for word in words if os.path.lexists(word)]
    names = [word for word in words if word not in places]
    if len(names) > 1 or len(places) > 1:
        help = "give its name, in quotes where it has spaces: manchet plan 'Saturday market'"
        raise Unknown("one plan at a time", help)
    return places, names


def week_asked_for(words: Sequence[str], today: date, kitchen: str = "") -> tuple[date, Bakery]:
    """A day of the week that is asked for, and the bakery: of the plan that is named, else of the next that any plan is for, else
    of the last. Raises `Unknown`."""
    places, names = _sorted(words)
    if names:
        opened = open_plan(words, kitchen)
        if opened.plan is None:
            raise Unknown(f"{opened.name} has a mistake", "`manchet check` says which")
        return opened.plan.date, opened.bakery
    (selection,) = selections(places)
    bakery = selection.bakery.read(None, kitchen)
    dates = sorted(plan.date for plan in bakery.plans)
    if not dates:
        raise Unknown("no plan with a date is written here", "a plan has a line `on 2026-11-28`")
    return next((day for day in dates if day >= today), dates[-1]), bakery


def _chosen(headings: Sequence[tuple[str, PlanName]], word: str) -> tuple[str, PlanName]:
    """The plan called so; one that is like another by its date too."""
    names = [called.name for _, called in headings]
    if not names:
        raise Unknown("no plan is written here", "a plan begins with `plan Saturday market`; see the reference, `plan`")
    if word:
        found = [one for one in headings if fold(word) in _names(one[1])]
        if len(found) == 1:
            return found[0]
        if found:
            raise Unknown(f"{word} are {len(found)} plans", f"say which: {', '.join(one.name for _, one in found)}")
        near = nearest(fold(word), [fold(name) for name in names])
        meant = next((name for name in names if near and fold(name) == near), "")
        help = f"near: {meant}" if meant else f"plans here: {', '.join(names[:8])}"
        raise Unknown(f"no plan here is called {word}", help)
    if len(headings) > 1:
        raise Unknown(f"{len(headings)} plans stand here", f"say which: {', '.join(names[:8])}")
    return headings[0]


def _names(called: PlanName) -> tuple[str, ...]:
    return tuple(map(fold, (called.name, *((called.date, f"{called.date} like {called.like}") if called.date else ()))))
