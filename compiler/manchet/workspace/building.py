"""Building what was asked for: each formula on its own, so that one that is wrong does not hold up the others.

A formula with errors is not printed, and what was printed of it before stays. Work is spread over processes where
that pays; the files are written here, by one hand.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial

from manchet.batch.order import AS_WRITTEN
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold
from manchet.sheets.form import Subject
from manchet.syntax.block import HOUSE
from manchet.timing.when import not_on_the_clock
from manchet.workspace.bakery import Bakery
from manchet.workspace.baking import baking_of
from manchet.workspace.changes import Changes
from manchet.workspace.committed import former_overalls
from manchet.workspace.faults import kept_to
from manchet.workspace.opening import concerns, formula_blocks, has_errors, kitchen_of, not_refused
from manchet.workspace.output import Built, is_sheet, write_sheets
from manchet.workspace.posted_cards import render_posted_cards
from manchet.workspace.press import Press
from manchet.workspace.print_jobs import PrintJob, with_last
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import Rendered, render_formula
from manchet.workspace.selection import Selection
from manchet.workspace.trouble import Unknown
from manchet.workspace.workers import spread
from manchet.workspace.writing import clear_leftovers

ENOUGH_FOR_TWO = 6
"""Formulas from which a second process earns back the start of its PDF writer."""


def without_formulas(selection: Selection) -> tuple[Diagnostic, ...]:
    """What is wrong with files asked about in which no formula is found: they cannot be read, or their heading cannot. What is
    wrong with kitchens and larders is told of with the formulas, where there are any."""
    with_one = {path for path, _ in formula_blocks(selection)}
    loose = [
        file.path
        for file in selection.files
        if file.path in selection.paths - with_one
        and not (with_one and file.blocks and all(block.word in HOUSE for block in file.blocks))
    ]
    if not loose or selection.names:
        return selection.diagnostics
    reports = selection.bakery.read(loose).diagnostics
    errors = tuple(one for one in reports if one.severity is Severity.ERROR and one.place.path in loose)
    return (*selection.diagnostics, *errors)


def build_sheets(
    selection: Selection,
    jobs: Sequence[PrintJob],
    options: PrintOptions,
    folder: str,
    processes: int,
    progress: Callable[[int], None],
) -> Iterator[Built]:
    """Builds the jobs and writes their files into `folder`; what became of each, in order."""
    # The posted cards of the kitchens are made once, with the last part.
    # A swap that no formula has anything for is told of only where all of them are seen together.
    parts = _parts(with_last(jobs, folder), 1 if options.swaps or options.waits else processes)
    calls = [(selection, part, options, jobs if part is parts[-1] else ()) for part in parts]
    done = 0
    clear_leftovers(folder, is_sheet)
    for results in spread(render_all, calls, processes):
        for one in results:
            yield write_sheets(one, folder)
            done += one.is_formula
            progress(done)


def render_all(
    selection: Selection, jobs: Sequence[PrintJob], options: PrintOptions, posts: Sequence[PrintJob]
) -> list[Rendered]:
    """Makes the sheets of some formulas of one bakery, in memory."""
    return list(renderings(selection, jobs, options, posts, Press()))


def renderings(
    selection: Selection, jobs: Sequence[PrintJob], options: PrintOptions, posts: Sequence[PrintJob], press: Press
) -> Iterator[Rendered]:
    """The same, one after another. `posts`: all jobs of this run, for the posted cards to be made too; none, and they are
    not. `press`: see `rendering.render_formula`."""
    changes = Changes(options.swaps, selection.names, options.waits)
    bakery = selection.bakery.read({job.path for job in jobs}, options.kitchen, changes)
    not_refused(bakery)
    kitchen_of(bakery, options.kitchen, "")
    _on_its_clock(bakery, jobs, options)
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    compares = any(form.compares for form in options.forms(Subject.FORMULA))
    committed = {job.path: job.version.edited for job in jobs if job.version.commit and compares}
    former = former_overalls(selection, committed)
    for job in jobs:
        reports = _but_for_the_scale(one for one in bakery.diagnostics if concerns(one, job.path, job.block, selection))
        formula = formulas.get((job.path, job.block.line))
        if formula is None or has_errors(reports, job.path):
            yield Rendered(job.block.name, {}, reports, slug=job.slug, bound=False)
            continue
        version = job.version._replace(before=former.get((job.path, fold(job.block.name)), {}))
        size = options._replace(order=AS_WRITTEN) if job.own_size else options
        if size.order != AS_WRITTEN:
            reports = _but_for_its_size(reports)
        one = kept_to(
            formula.place,
            f"{formula.name} could not be printed",
            partial(render_formula, bakery, formula, size, version, press, selection.root, bool(selection.names)),
            partial(_broken_off, formula.name),
        )
        yield one._replace(diagnostics=(*reports, *one.diagnostics), slug=job.slug)
    if posts:
        yield from render_posted_cards(selection, bakery, baking_of(selection, bakery, posts, options), options, press)


def _on_its_clock(bakery: Bakery, jobs: Sequence[PrintJob], options: PrintOptions) -> None:
    """Raises `Unknown` where the day counts from a time that a kitchen's clock does not show, or shows twice."""
    if options.when is None:
        return
    for zone in dict.fromkeys(kitchen_of(bakery, options.kitchen, job.path).zone for job in jobs):
        wrong = not_on_the_clock(options.when, zone)
        if wrong is not None:
            raise Unknown(*wrong)


def _broken_off(name: str, fault: Diagnostic) -> Rendered:
    return Rendered(name, {}, (fault,))


def _but_for_its_size(reports: Sequence[Diagnostic]) -> tuple[Diagnostic, ...]:
    """What was said of the amount in the file is no matter where another is made."""
    from manchet.checks.registry import OF_SIZE

    return tuple(one for one in reports if one.name not in OF_SIZE)


def _parts(jobs: Sequence[PrintJob], processes: int) -> list[Sequence[PrintJob]]:
    """The jobs in parts of neighbours: each process reads the bakery once for a part, not once for a formula."""
    if processes < 2 or len(jobs) < ENOUGH_FOR_TWO:
        return [jobs] if jobs else []
    size = max(1, -(-len(jobs) // (processes * 4)))
    return [jobs[at : at + size] for at in range(0, len(jobs), size)]


def _but_for_the_scale(reports: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """What the scales cannot show each sheet says itself, of the amount that it is for."""
    from manchet.checks.registry import AT_THE_SCALE

    return tuple(one for one in reports if one.name not in AT_THE_SCALE)
