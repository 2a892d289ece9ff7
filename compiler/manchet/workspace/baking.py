"""What a run bakes, for the cards at the ovens."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.batch.order import AS_WRITTEN
from manchet.batch.work import Work
from manchet.records import NamedTuple
from manchet.sheets.form import Subject
from manchet.workspace.bakery import Bakery
from manchet.workspace.changes import Changes
from manchet.workspace.opening import concerns, has_errors
from manchet.workspace.print_jobs import PrintJob
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.selection import Selection


class Baking(NamedTuple):
    """Each formula at its size; and the names and files of those that have mistakes."""

    works: tuple[Work, ...] = ()
    missing: tuple[tuple[str, str], ...] = ()


def baking_of(selection: Selection, bakery: Bakery, posts: Sequence[PrintJob], options: PrintOptions) -> Baking:
    """What is baked of all that this run makes, for the cards at the ovens: read, and not checked. A variant is baked where it was asked for by name: else it would stand beside its own formula."""
    if not any(form.fits(kitchen) for form in options.forms(Subject.BAKEHOUSE) for kitchen in bakery.kitchens):
        return Baking()
    changes = Changes(options.swaps, selection.names, options.waits)
    bakery = selection.bakery.read({job.path for job in posts}, options.kitchen, changes)
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    works: list[Work] = []
    missing: list[tuple[str, str]] = []
    for job in posts:
        if job.block.word == "variant" and not selection.names:
            continue
        reports = [one for one in bakery.mistakes if concerns(one, job.path, job.block, selection)]
        formula = formulas.get((job.path, job.block.line))
        if formula is None or has_errors(reports, job.path):
            missing.append((job.block.name, job.path))
        else:
            work = bakery.work(formula, AS_WRITTEN if job.own_size else options.order, options.kitchen).value
            works += () if work is None else (work,)
    return Baking(tuple(works), tuple(missing))
