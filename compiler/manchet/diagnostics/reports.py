"""Making a report, in one line. How grave it is, its case alone says."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Fix, Place, Related, Severity
from manchet.diagnostics.fixes import as_help
from manchet.diagnostics.names import REPORTS
from manchet.diagnostics.terminal import in_brief


def report(
    name: str,
    place: Place,
    message: str,
    help: str = "",
    *related: tuple[Place, str],
    fixes: tuple[Fix, ...] = (),
) -> Diagnostic:
    """The report of that name. `related` are further places that belong to it, each with a few words on why. Without a help
    of its own it tells its fixes."""
    severity, _ = REPORTS[name]
    also = tuple(Related(where, in_brief(why)) for where, why in related)
    told = in_brief(help or as_help(fix.title for fix in fixes))
    brief = tuple(fix._replace(title=in_brief(fix.title)) for fix in fixes)
    return Diagnostic(name, Severity(severity), in_brief(message), place, told, also, brief)


def caution_report(name: str, place: Place, message: str, help: str = "") -> Diagnostic:
    """A caution of that name, told at the line that causes it: a kind of its own, beside the reports."""
    return Diagnostic(name, Severity.CAUTION, in_brief(message), place, in_brief(help))


def graver(diagnostic: Diagnostic) -> Diagnostic:
    """The warning as an error: what is usually a remark on craft cannot be true here, or cannot be done."""
    assert diagnostic.severity is Severity.WARNING
    return diagnostic._replace(severity=Severity.ERROR)


def milder(diagnostic: Diagnostic) -> Diagnostic:
    """The warning as a note: here it is hardly worth a word."""
    assert diagnostic.severity is Severity.WARNING
    return diagnostic._replace(severity=Severity.NOTE)


def remarks_of(*packages: str) -> frozenset[str]:
    """The reports of these packages that are no errors: whoever means what is written may leave it so."""
    folders = {f"{package}/reports" for package in packages}
    return frozenset(
        name for name, (severity, folder) in REPORTS.items() if severity != Severity.ERROR.value and folder in folders
    )


def list_of_words(names: tuple[str, ...], last: str = "or") -> str:
    """`a, b or c`"""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"
