"""What `check` says of a file, as it is typed."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.names import REPORTS
from manchet.editor.documents import place_of, root_of
from manchet.formula.picture import Picture
from manchet.formula.pictured import pictures_named
from manchet.workspace.collecting import without_collecting
from manchet.workspace.open_bakery import OpenBakery


@without_collecting()
def reports_on(bakery: OpenBakery, path: str) -> tuple[Diagnostic, ...]:
    """Every report and caution at a line of the file, in the order of the lines: what `check` of all the bakery says there."""
    read = bakery.read([path])
    found = [one for one in (*read.diagnostics, *read.cautions) if one.place.path == path]
    pictures = [one for formula in read.formulas for one in pictures_named(formula) if one.place.path == path]
    if pictures and bakery.premises is not None:
        found += _not_shown(pictures, root_of(bakery))
    return tuple(sorted(dict.fromkeys(found), key=lambda one: (one.place.line, one.place.column)))


def _not_shown(pictures: list[Picture], root: str) -> Iterator[Diagnostic]:
    """Of the pictures that a file names, those that cannot be shown; they are looked for from where the file lies."""
    from manchet.workspace.pictures import not_shown  # it looks at the files, which few formulas ask for

    path = pictures[0].place.path
    there = place_of(root, path)
    for one in not_shown([Picture(name, place._replace(path=there)) for name, place in pictures], root):
        yield one._replace(place=one.place._replace(path=path))


def worth_saying(diagnostic: Diagnostic) -> str:
    """The words of a report: what is wrong, and what to type."""
    return f"{diagnostic.message}\n{diagnostic.help}" if diagnostic.help else diagnostic.message


def may_be_allowed(diagnostic: Diagnostic) -> bool:
    """Whether a formula may say that it is meant so: an error cannot be true, what can hurt is nobody's to allow, and how a line
    is spelt is no matter of craft."""
    craft = diagnostic.severity in (Severity.WARNING, Severity.NOTE) and diagnostic.name in REPORTS
    return craft and REPORTS[diagnostic.name][1].startswith(_OF_CRAFT)


_OF_CRAFT = ("checks/baking", "checks/composition", "checks/fermentation", "checks/keeping", "checks/mixing",
             "checks/pieces", "checks/preferments", "checks/selling", "checks/temperature", "formula/")  # fmt: skip
"""Folders of the reports that look at a formula in its kitchen, or bind it."""
