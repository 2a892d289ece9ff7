"""A text of the fuzzer as a bakery."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.workspace.bakery import Bakery
from manchet.workspace.faults import OUR_FAULT
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw

PATH = "x.bake"


def bakery_at(text: str) -> Bakery:
    return OpenBakery(files=[Raw(PATH, bytes_of(text))]).read()


def bytes_of(text: str) -> bytes:
    return text.encode("utf-8", "surrogatepass")


def has_errors(reports: tuple[Diagnostic, ...]) -> bool:
    return any(one.severity is Severity.ERROR for one in reports)


def without_fault(reports: tuple[Diagnostic, ...]) -> tuple[Diagnostic, ...]:
    for report in reports:
        assert report.name != OUR_FAULT, f"{report.message}: {report.help}"
    return reports
