"""Building what was asked for: each formula on its own, so that one that is wrong does not hold up the others.

A formula with errors is not printed, and what was printed of it before stays. Work is spread over processes where
that pays; the files are written here, by one hand.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.sheets.form import Subject
from manchet.sheets.registry import forms_about
from manchet.syntax.headings import Block
from manchet.syntax.openings import HOUSE
from manchet.workspace import cache
from manchet.workspace.bakery import Bakery, Changes
from manchet.workspace.committed import former_overalls
from manchet.workspace.opening import bakery_of_files, concerns, formula_blocks, has_errors, kitchen_of, not_refused
from manchet.workspace.posted_cards import Baking, render_posted_cards
from manchet.workspace.press import Press
from manchet.workspace.print_options import FORMATS, KINDS, ON_DEMAND, PrintOptions
from manchet.workspace.rendering import Rendered, Version, render_formula
from manchet.workspace.replacing import last_sheets
from manchet.workspace.selection import Selection
from manchet.workspace.slugs import slugs
from manchet.workspace.trouble import Unknown
from manchet.workspace.versions import versions
from manchet.workspace.workers import spread
from manchet.workspace.writing import write

ENOUGH_FOR_TWO = 6
"""Formulas from which a second process earns back the start of its PDF writer."""


class PrintJob(NamedTuple):
    """One formula to build, by the place of its heading, and the name of its files (without ending)."""

    path: str
    block: Block
    slug: str
    version: Version
    own_size: bool = False
    """It is made in the amount its file says, whatever the order says of the others."""


class Built(NamedTuple):
    """What became of one formula. `written` are the files that changed, `same` those that did not have to."""

    name: str
    written: tuple[str, ...]
    same: tuple[str, ...]
    diagnostics: tuple[Diagnostic, ...]
    lacking: str
    kept: bool
    """It has errors, and sheets of an earlier state were left as they are."""
    is_formula: bool
    older: tuple[str, ...] = ()
    """Files of it in the output folder that were not made again beside those that changed."""

    bound: bool = True

    @property
    def unexplained(self) -> bool:
        """It was not printed, and nothing that was said of it says why."""
        return not self.bound and not any(one.severity is Severity.ERROR for one in self.diagnostics)


def jobs_of(selection: Selection) -> tuple[PrintJob, ...]:
    """What there is to build, in the order of files and lines. Slugs are made over the whole bakery, so that a
    formula built alone is called as it is called when all are built."""
    everything = selection._replace(paths=frozenset(file.path for file in selection.files))
    slug_of = slugs(block.name for _, block in formula_blocks(everything))
    found = [
        (path, block)
        for path, block in formula_blocks(selection)
        if not selection.names or fold(block.name) in selection.names
    ]
    data = {file.path: file for file in selection.files}
    known = versions(selection.root, selection.prefix, {path for path, _ in found})
    result = []
    for path, block in found:
        commit, edited = known.get(path, ("", False))
        version = Version(path.removeprefix(selection.prefix), cache.digest(data[path].data)[:8], commit, edited)
        result.append(PrintJob(path, block, slug_of[block.name], version))
    return tuple(result)


def sized_jobs(jobs: Sequence[PrintJob], order: Order) -> tuple[PrintJob, ...]:
    """The jobs under an order of so much: it is for one formula with its variants, and the preparations beside it are
    left at their own amount. Raises `Unknown` where there are several formulas."""
    formulas = {(job.path, job.block.text): job.block.name for job in jobs if job.block.word != "preparation"}
    if order == AS_WRITTEN or not jobs:
        return tuple(jobs)
    if len(formulas) > 1 or (not formulas and len(jobs) > 1):
        names = [*formulas.values()] or [job.block.name for job in jobs]
        more = " …" if len(names) > 6 else ""
        raise Unknown(
            f"an amount was asked for, and {len(names)} formulas", f"say of which: {', '.join(names[:6])}{more}"
        )
    return tuple(job._replace(own_size=bool(formulas) and job.block.word == "preparation") for job in jobs)


def without_formulas(selection: Selection) -> tuple[Diagnostic, ...]:
    """What is wrong with files asked about in which no formula is found: they cannot be read, or their heading cannot."""
    with_one = {path for path, _ in formula_blocks(selection)}
    loose = [
        file.path
        for file in selection.files
        if file.path in selection.paths - with_one
        and not (file.blocks and all(block.word in HOUSE for block in file.blocks))
    ]
    if not loose or selection.names:
        return selection.diagnostics
    reports = bakery_of_files(selection, loose).diagnostics
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
    for results in spread(render_all, calls, processes):
        for one in results:
            yield write_sheets(one, folder)
            done += one.is_formula
            progress(done)


def with_last(jobs: Sequence[PrintJob], folder: str) -> list[PrintJob]:
    """The jobs, with what the sheets that lie in the output folder say of themselves."""
    kinds = tuple(form.name for form in forms_about(Subject.FORMULA))
    return [job._replace(version=job.version._replace(last=last_sheets(folder, job.slug, kinds))) for job in jobs]


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
    bakery = bakery_of_files(selection, {job.path for job in jobs}, options.kitchen, changes)
    not_refused(bakery)
    kitchen_of(bakery, options.kitchen, "")
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    compares = any(form.compares for form in options.forms(Subject.FORMULA))
    committed = {job.path: job.version.edited for job in jobs if job.version.commit and compares}
    former = former_overalls(selection, committed)
    for job in jobs:
        reports = tuple(one for one in bakery.diagnostics if concerns(one, job.path, job.block, selection))
        formula = formulas.get((job.path, job.block.line))
        if formula is None or has_errors(reports, job.path):
            yield Rendered(job.block.name, {}, reports, slug=job.slug, bound=False)
            continue
        version = job.version._replace(before=former.get((job.path, fold(job.block.name)), {}))
        size = options._replace(order=AS_WRITTEN) if job.own_size else options
        if size.order != AS_WRITTEN:
            reports = _but_for_its_size(reports)
        one = render_formula(bakery, formula, size, version, press, selection.root)
        yield one._replace(diagnostics=(*reports, *one.diagnostics), slug=job.slug)
    if posts:
        yield from render_posted_cards(
            selection, bakery, _baking(selection, bakery, jobs, posts, options), options, press
        )


def _but_for_its_size(reports: Sequence[Diagnostic]) -> tuple[Diagnostic, ...]:
    """What was said of the amount in the file is no matter where another is made."""
    from manchet.checks.registry import OF_SIZE

    return tuple(one for one in reports if one.name not in OF_SIZE)


def _baking(
    selection: Selection, bakery: Bakery, jobs: Sequence[PrintJob], posts: Sequence[PrintJob], options: PrintOptions
) -> Baking:
    """What is baked of all that this run makes, for the cards at the ovens. The bakery is read again where these jobs are
    only a part of it. A variant is baked where it was asked for by name: else it would stand beside its own formula."""
    if not any(form.fits(kitchen) for form in options.forms(Subject.BAKEHOUSE) for kitchen in bakery.kitchens):
        return Baking((), ())
    if {job.path for job in posts} != {job.path for job in jobs}:
        paths = {job.path for job in posts}
        bakery = bakery_of_files(
            selection, paths, options.kitchen, Changes(options.swaps, selection.names, options.waits)
        )
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    works: list[Work] = []
    missing: list[tuple[str, str]] = []
    for job in posts:
        if job.block.word == "variant" and not selection.names:
            continue
        reports = [one for one in bakery.diagnostics if concerns(one, job.path, job.block, selection)]
        formula = formulas.get((job.path, job.block.line))
        if formula is None or has_errors(reports, job.path):
            missing.append((job.block.name, job.path))
        else:
            work = bakery.work(formula, AS_WRITTEN if job.own_size else options.order, options.kitchen).value
            works += () if work is None else (work,)
    return Baking(tuple(works), tuple(missing))


def _parts(jobs: Sequence[PrintJob], processes: int) -> list[Sequence[PrintJob]]:
    """The jobs in parts of neighbours: each process reads the bakery once for a part, not once for a formula."""
    if processes < 2 or len(jobs) < ENOUGH_FOR_TWO:
        return [jobs] if jobs else []
    size = max(1, -(-len(jobs) // (processes * 4)))
    return [jobs[at : at + size] for at in range(0, len(jobs), size)]


def write_sheets(one: Rendered, folder: str) -> Built:
    """Writes what was made of one formula or kitchen."""
    new: list[str] = []
    same: list[str] = []
    for ending, data in sorted(one.files.items()):
        path = os.path.join(folder, f"{one.slug}.{ending}")
        (new if write(path, data) else same).append(path)
    there = [name for name in sorted(os.listdir(folder)) if is_of(one.slug, name)]
    older = [os.path.join(folder, name) for name in there if name.removeprefix(f"{one.slug}.") not in one.files]
    kept = bool(there) and not one.files
    return Built(
        one.name,
        tuple(new),
        tuple(same),
        one.diagnostics,
        one.lacking,
        kept,
        one.is_formula,
        tuple(older if new else ()),
        one.bound,
    )


def is_of(slug: str, name: str) -> bool:
    """Whether a file in the output folder is one of the sheets of this name, in any of their formats."""
    kind, _, ending = name.removeprefix(f"{slug}.").partition(".")
    return name.startswith(f"{slug}.") and kind in (*KINDS, *ON_DEMAND) and ending in FORMATS
