"""From a sound formula to the bytes of its sheets: sized, split into mixes, weighed, laid out, printed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from manchet.bakery import Bakery, batch_for
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.formula.mixes import mixes_of
from manchet.formula.model import Batch, Formula
from manchet.formula.weighing import System, weigh
from manchet.figures.totals import totals_of
from manchet.larder.kitchen import Kitchen
from manchet.sheets.views import House, Issue, Sheet
from manchet.workspace.wish import Wish


class Version(NamedTuple):
    """Which state of its file a sheet was printed from. `commit` is "" outside of a git checkout."""

    file: str
    digest: str
    commit: str = ""
    edited: bool = False


class Made(NamedTuple):
    """The files of one formula, by their endings (`sheet.html`); the reports; and what a PDF would need, or ""."""

    name: str
    files: Mapping[str, bytes]
    diagnostics: tuple[Diagnostic, ...]
    lacking: str = ""


def made(bakery: Bakery, formula: Formula, kitchen: Kitchen, wish: Wish, version: Version) -> Made:
    """Everything that was wished for. No file at all where the size asked for cannot be made."""
    batch = batch_for(formula, wish.order, kitchen)
    if batch.value is None:
        return Made(formula.name, {}, batch.diagnostics)
    house = house_of(kitchen, wish)
    views, reports = _views(bakery, batch.value, kitchen, house, wish, version)
    files: dict[str, bytes] = {}
    lacking = ""
    for kind, view in views.items():
        for form in wish.forms:
            data, lacks = _printed(view, form)
            lacking = lacking or lacks
            if data is not None:
                files[f"{kind}.{form}"] = data
    return Made(formula.name, files, (*batch.diagnostics, *reports), lacking)


def house_of(kitchen: Kitchen, wish: Wish) -> House:
    """How this house prints: as asked for, else as the kitchen says, else A4, metric, Celsius, British."""
    words = wish.words or kitchen.words or "British"
    return House(wish.paper or "A4", wish.units or "metric", wish.degrees or "C", words)


def _views(
    bakery: Bakery, batch: Batch, kitchen: Kitchen, house: House, wish: Wish, version: Version
) -> tuple[Mapping[str, Sheet], tuple[Diagnostic, ...]]:
    from manchet.sheets.prep_view import Prepared, prep_sheet

    mixes = mixes_of(batch, kitchen)
    system = System.US if house.units == "US" else System.METRIC
    tables = [weigh(making, kitchen, system) for making in mixes.makings]
    issue = Issue(
        date=wish.today, file=version.file, version=version.commit, digest=version.digest, edited=version.edited
    )
    views: dict[str, Sheet] = {}
    reports = tuple(report for table in tables for report in table.diagnostics)
    if "sheet" in wish.kinds:
        work = Prepared(
            batch, mixes, tuple(table.value for table in tables), totals_of(batch.formula, bakery.larder), kitchen
        )
        views["sheet"] = prep_sheet(work, issue, house)
    return views, reports


def _printed(view: Sheet, form: str) -> tuple[bytes | None, str]:
    """The bytes of one form, or what a PDF would need."""
    from manchet.sheets.html import html_of

    if form == "html":
        return html_of(view).encode(), ""
    if form == "pdf":
        from manchet.sheets.pdf import NoPdf, pdf_of

        pdf = pdf_of(html_of(view))
        return (None, f"{pdf.reason}; {pdf.install}") if isinstance(pdf, NoPdf) else (pdf.content, "")
    return None, ""


def stops(diagnostics: tuple[Diagnostic, ...]) -> bool:
    return any(one.severity is Severity.ERROR for one in diagnostics)
