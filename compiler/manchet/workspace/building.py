"""Building what was asked for: each formula on its own, so that one that is wrong does not hold up the others.

A formula with errors is not printed, and what was printed of it before stays. Work is spread over processes where
that pays; the files are written here, by one hand.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence
from typing import NamedTuple

from manchet import cache
from manchet.bakery import Bakery, Swaps
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold
from manchet.workspace.asked import Asked
from manchet.workspace.former import former_overalls
from manchet.workspace.headings import Block
from manchet.workspace.making import Made, Pages, Version, made, posted
from manchet.workspace.opening import bakery_of_files, concerns, formula_blocks, kitchen_of
from manchet.workspace.replacing import last_sheets
from manchet.workspace.slugs import slugs
from manchet.workspace.versions import versions
from manchet.workspace.wish import Wish
from manchet.workspace.workers import spread
from manchet.workspace.writing import write

ENOUGH_FOR_TWO = 6
"""Formulas from which a second process earns back the start of its PDF writer."""


class Job(NamedTuple):
    """One formula to build, by the place of its heading, and the name of its files (without ending)."""

    path: str
    block: Block
    slug: str
    version: Version


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


def jobs_of(asked: Asked) -> tuple[Job, ...]:
    """What there is to build, in the order of files and lines. Slugs are made over the whole bakery, so that a
    formula built alone is called as it is called when all are built."""
    everything = asked._replace(paths=frozenset(file.path for file in asked.files))
    slug_of = slugs(block.name for _, block in formula_blocks(everything))
    found = [
        (path, block) for path, block in formula_blocks(asked) if not asked.names or fold(block.name) in asked.names
    ]
    data = {file.path: file for file in asked.files}
    known = versions(asked.root, asked.prefix, {path for path, _ in found})
    result = []
    for path, block in found:
        commit, edited = known.get(path, ("", False))
        version = Version(path, cache.digest(data[path].data)[:8], commit, edited)
        result.append(Job(path, block, slug_of[block.name], version))
    return tuple(result)


def built(
    asked: Asked, jobs: Sequence[Job], wish: Wish, folder: str, processes: int, progress: Callable[[int], None]
) -> Iterator[Built]:
    """Builds the jobs and writes their files into `folder`; what became of each, in order."""
    # The posted cards of the kitchens are made once, with the last part.
    # A swap that no formula has anything for is told of only where all of them are seen together.
    parts = _parts(with_last(jobs, folder), 1 if wish.swaps else processes)
    calls = [(asked, part, wish, part is parts[-1]) for part in parts]
    done = 0
    for results in spread(make, calls, processes):
        for one in results:
            yield written(one, folder)
            done += one.is_formula
            progress(done)


def with_last(jobs: Sequence[Job], folder: str) -> list[Job]:
    """The jobs, with what the sheets that lie in the output folder say of themselves."""
    return [
        job._replace(version=job.version._replace(last=last_sheets(folder, job.slug, ("sheet", "card"))))
        for job in jobs
    ]


def make(asked: Asked, jobs: Sequence[Job], wish: Wish, posts: bool) -> list[Made]:
    """Makes the sheets of some formulas of one bakery, in memory."""
    return list(making(asked, jobs, wish, posts, {}))


def making(asked: Asked, jobs: Sequence[Job], wish: Wish, posts: bool, pages: Pages) -> Iterator[Made]:
    """The same, one after another. `posts`: the posted cards too. `pages`: see `making.made`."""
    bakery = bakery_of_files(asked, {job.path for job in jobs}, wish.kitchen, Swaps(wish.swaps, asked.names))
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    committed = {job.path: job.version.edited for job in jobs if job.version.commit and "sheet" in wish.kinds}
    former = former_overalls(asked, committed)
    for job in jobs:
        reports = tuple(one for one in bakery.diagnostics if concerns(one, job.path, job.block, asked))
        formula = formulas.get((job.path, job.block.line))
        if formula is None or any(one.severity is Severity.ERROR and one.place.path == job.path for one in reports):
            yield Made(job.block.name, {}, reports, slug=job.slug)
            continue
        kitchen = kitchen_of(bakery, wish.kitchen, job.path)
        version = job.version._replace(before=former.get((job.path, fold(job.block.name)), {}))
        one = made(bakery, formula, kitchen, wish, version, pages, asked.root)
        yield one._replace(diagnostics=(*reports, *one.diagnostics), slug=job.slug)
    if posts and "house" in wish.kinds:
        yield from _posted(asked, bakery, wish, pages)


def _posted(asked: Asked, bakery: Bakery, wish: Wish, pages: Pages) -> Iterator[Made]:
    """The card of each kitchen that the bakery has; of a plain one where it has none."""
    data = {file.path: file.data for file in asked.files}
    kitchens = [kitchen_of(bakery, wish.kitchen, "")] if wish.kitchen or not bakery.kitchens else bakery.kitchens
    slug_of = slugs(kitchen.name for kitchen in kitchens)
    known = versions(asked.root, asked.prefix, {kitchen.place.path for kitchen in kitchens if kitchen.place})
    for kitchen in kitchens:
        path = kitchen.place.path if kitchen.place else ""
        commit, edited = known.get(path, ("", False))
        version = Version(path, cache.digest(data.get(path, b""))[:8], commit, edited)
        yield posted(kitchen, wish, version, slug_of[kitchen.name] if kitchen.name else "kitchen", pages)


def _parts(jobs: Sequence[Job], processes: int) -> list[Sequence[Job]]:
    """The jobs in parts of neighbours: each process reads the bakery once for a part, not once for a formula."""
    if processes < 2 or len(jobs) < ENOUGH_FOR_TWO:
        return [jobs] if jobs else []
    size = max(1, -(-len(jobs) // (processes * 4)))
    return [jobs[at : at + size] for at in range(0, len(jobs), size)]


def written(one: Made, folder: str) -> Built:
    """Writes what was made of one formula or kitchen."""
    new: list[str] = []
    same: list[str] = []
    for ending, data in one.files.items():
        path = os.path.join(folder, f"{one.slug}.{ending}")
        (new if write(path, data) else same).append(path)
    kept = not one.files and any(name.startswith(f"{one.slug}.") for name in os.listdir(folder))
    return Built(one.name, tuple(new), tuple(same), one.diagnostics, one.lacking, kept, one.is_formula)
