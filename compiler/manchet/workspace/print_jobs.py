"""What there is to print: formulas by the place of their headings, each under the name of its files."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.batch.order import AS_WRITTEN, Order
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.sheets.form import Subject
from manchet.sheets.registry import forms_about
from manchet.syntax.block import Block
from manchet.workspace.file_versions import Version, file_versions
from manchet.workspace.opening import formula_blocks
from manchet.workspace.replacing import last_sheets
from manchet.workspace.selection import Selection
from manchet.workspace.slugs import slugs
from manchet.workspace.trouble import Unknown


class PrintJob(NamedTuple):
    """One formula to build, by the place of its heading, and the name of its files (without ending)."""

    path: str
    block: Block
    slug: str
    version: Version
    own_size: bool = False
    """It is made in the amount its file says, whatever the order says of the others."""


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
    version_of = file_versions(selection, [path for path, _ in found])
    return tuple(PrintJob(path, block, slug_of[block.name], version_of[path]) for path, block in found)


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


def with_last(jobs: Sequence[PrintJob], folder: str) -> list[PrintJob]:
    """The jobs, with what the sheets that lie in the output folder say of themselves."""
    kinds = tuple(form.name for form in forms_about(Subject.FORMULA))
    return [job._replace(version=job.version._replace(last=last_sheets(folder, job.slug, kinds))) for job in jobs]
