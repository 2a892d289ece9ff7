"""What became of each formula in the output folder: files written, files left as they were."""

from __future__ import annotations

import os
from collections.abc import Set

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.records import NamedTuple
from manchet.workspace.print_options import FORMATS, KINDS, ON_DEMAND
from manchet.workspace.rendering import Rendered
from manchet.workspace.writing import write


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
    no_card: str = ""
    """Why no timing card was made of it, where nothing that was said of it says so."""

    @property
    def unexplained(self) -> bool:
        """It was not printed, and nothing that was said of it says why."""
        return not self.bound and not any(one.severity is Severity.ERROR for one in self.diagnostics)


def write_sheets(one: Rendered, folder: str) -> Built:
    """Writes what was made of one formula or kitchen."""
    new: list[str] = []
    same: list[str] = []
    for ending, data in sorted(one.files.items()):
        path = os.path.join(folder, f"{one.slug}.{ending}")
        (new if write(path, data) else same).append(path)
    there = sheets_in(folder, one.slug)
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
        "" if any(report.name == "past-a-day" for report in one.diagnostics) else one.no_card,
    )


def sheets_in(folder: str, slug: str) -> list[str]:
    """The names of the sheets of this name that lie in the output folder."""
    return [name for name in sorted(files_in(folder)) if is_of(slug, name)]


def files_in(folder: str) -> frozenset[str]:
    """The names of what lies in the output folder, but for what is hidden; none, where it was just taken away."""
    try:
        return frozenset(name for name in os.listdir(folder) if not name.startswith("."))
    except OSError:
        return frozenset()


def of_nobody(folder: str, known: Set[str]) -> list[str]:
    """The names of the sheets in the output folder that belong to none of these."""
    return [name for name in sorted(files_in(folder)) if is_sheet(name) and name.partition(".")[0] not in known]


def is_sheet(name: str) -> bool:
    """Whether a file in the output folder is a sheet of anything, by its name."""
    return name.count(".") == 2 and is_of(name.partition(".")[0], name)


def is_of(slug: str, name: str) -> bool:
    """Whether a file in the output folder is one of the sheets of this name, in any of their formats."""
    kind, _, ending = name.removeprefix(f"{slug}.").partition(".")
    return name.startswith(f"{slug}.") and kind in (*KINDS, *ON_DEMAND) and ending in FORMATS
