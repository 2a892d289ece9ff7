"""Building what was asked for: each formula on its own, so that one that is wrong does not hold up the others.

A formula with errors is not printed, and what was printed of it before stays. Work is spread over processes where
that pays; the files are written here, by one hand.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence
from typing import NamedTuple

from manchet import cache
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold
from manchet.workspace.asked import Asked
from manchet.workspace.headings import Block
from manchet.workspace.making import Made, Pages, Version, made
from manchet.workspace.opening import bakery_of_files, concerns, formula_blocks, kitchen_of
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
    end: int | None
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
        later = [other.line for other in data[path].blocks if other.line > block.line]
        commit, edited = known.get(path, ("", False))
        version = Version(path, cache.digest(data[path].data)[:8], commit, edited)
        result.append(Job(path, block, min(later, default=None), slug_of[block.name], version))
    return tuple(result)


def built(
    asked: Asked, jobs: Sequence[Job], wish: Wish, folder: str, processes: int, progress: Callable[[int], None]
) -> Iterator[Built]:
    """Builds the jobs and writes their files into `folder`; what became of each, in order."""
    parts = _parts(jobs, processes)
    done = 0
    for part, results in zip(parts, spread(make, [(asked, part, wish) for part in parts], processes), strict=True):
        for job, one in zip(part, results, strict=True):
            yield written(job, one, folder)
            done += 1
            progress(done)


def make(asked: Asked, jobs: Sequence[Job], wish: Wish) -> list[Made]:
    """Makes the sheets of some formulas of one bakery, in memory."""
    return list(making(asked, jobs, wish, {}))


def making(asked: Asked, jobs: Sequence[Job], wish: Wish, pages: Pages) -> Iterator[Made]:
    """The same, one after another. `pages`: see `making.made`."""
    bakery = bakery_of_files(asked, {job.path for job in jobs}, wish.kitchen)
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    for job in jobs:
        reports = tuple(one for one in bakery.diagnostics if concerns(one, job.path, job.block.line, job.end, asked))
        formula = formulas.get((job.path, job.block.line))
        if formula is None or any(one.severity is Severity.ERROR and one.place.path == job.path for one in reports):
            yield Made(job.block.name, {}, reports)
            continue
        kitchen = kitchen_of(bakery, wish.kitchen, job.path)
        one = made(bakery, formula, kitchen, wish, job.version, pages)
        yield one._replace(diagnostics=(*reports, *one.diagnostics))


def _parts(jobs: Sequence[Job], processes: int) -> list[Sequence[Job]]:
    """The jobs in parts of neighbours: each process reads the bakery once for a part, not once for a formula."""
    if processes < 2 or len(jobs) < ENOUGH_FOR_TWO:
        return [jobs] if jobs else []
    size = max(1, -(-len(jobs) // (processes * 4)))
    return [jobs[at : at + size] for at in range(0, len(jobs), size)]


def written(job: Job, one: Made, folder: str) -> Built:
    """Writes what was made of one formula."""
    new: list[str] = []
    same: list[str] = []
    for ending, data in one.files.items():
        path = os.path.join(folder, f"{job.slug}.{ending}")
        (new if write(path, data) else same).append(path)
    kept = not one.files and any(name.startswith(f"{job.slug}.") for name in os.listdir(folder))
    return Built(one.name, tuple(new), tuple(same), one.diagnostics, one.lacking, kept)
