"""What the editor can type for a report: its own fixes, all safe ones of a file, and that it is meant so."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Place
from manchet.editor.differences import edits_between
from manchet.editor.reports import may_be_allowed, reports_on
from manchet.editor.standing import block_around, last_line
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of
from manchet.syntax import nodes as n
from manchet.syntax.nodes import File
from manchet.workspace.folder import Premises
from manchet.workspace.mending import mend_files
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.selection import Selection


class Repair(NamedTuple):
    """Something to type because of a report."""

    title: str
    edits: tuple[Edit, ...]
    report: Diagnostic
    is_first: bool = False
    """The likeliest of several choices, or the only one."""
    cursor: Place | None = None
    """Where one types on afterwards."""


def repairs(file: File, reports: Iterable[Diagnostic], first: int, last: int) -> Iterator[Repair]:
    """What can be typed for the reports that stand in these lines, or that begin above them and end in them."""
    for report in reports:
        if report.place.line <= last and report.place.end_line >= first:
            for number, fix in enumerate(report.fixes):
                yield Repair(fix.title, fix.edits, report, is_first=not number)
            if may_be_allowed(report):
                yield from _allow(file, report)


def safe_edits(bakery: OpenBakery, path: str) -> tuple[Edit, ...]:
    """All safe fixes of a file carried out, one after another, each proved by reading the file again; as `check --mend` does."""
    apart = bakery.part(bakery.needed(frozenset({path})))
    asked = Selection(apart, Premises("", whole=True), "", frozenset({path}), frozenset(), ())
    edits: list[Edit] = []
    for mended in mend_files(asked, reports_on(bakery, path)):
        edits += edits_between(path, rough_text_of(mended.before), rough_text_of(mended.after))
    return tuple(edits)


def _allow(file: File, report: Diagnostic) -> Iterator[Repair]:
    """`allow … because "…"` at the end of the head of the formula or variant that the report is about."""
    block = block_around(file, report.place.line)
    if block is None:
        return
    anchor = block.line
    for child in block.children:
        if not isinstance(child.node, _OF_THE_HEAD):
            break
        anchor = last_line(child)
    begins = f'allow {report.name} because "'
    spaces = " " * (block.line.indent + 2)
    at = anchor.place()._replace(column=len(anchor.raw) + 1, end_column=len(anchor.raw) + 1)
    line, column = anchor.number + 1, len(spaces) + len(begins) + 1
    cursor = Place(report.place.path, line, column, line, column, f'{spaces}{begins}"')
    yield Repair(f'allow {report.name} because "…"', (Edit(at, f'\n{spaces}{begins}"'),), report, cursor=cursor)


_OF_THE_HEAD = (n.About, n.KindNode, n.MakesNode, n.FromFlour, n.Sold, n.Loss, n.OnDoughFlour, n.Status, n.Allow)
