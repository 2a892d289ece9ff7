"""Making a report, in one line: an error, a warning or a note at a place."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Place, Related, Severity


def error(name: str, place: Place, message: str, help: str = "", *related: tuple[Place, str]) -> Diagnostic:
    """Something that cannot be true: no sheet is printed for this formula."""
    return _report(Severity.ERROR, name, place, message, help, related)


def warning(name: str, place: Place, message: str, help: str = "", *related: tuple[Place, str]) -> Diagnostic:
    return _report(Severity.WARNING, name, place, message, help, related)


def note(name: str, place: Place, message: str, help: str = "", *related: tuple[Place, str]) -> Diagnostic:
    return _report(Severity.NOTE, name, place, message, help, related)


def listed(names: tuple[str, ...], last: str = "or") -> str:
    """`a, b or c`"""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"


def _report(
    severity: Severity, name: str, place: Place, message: str, help: str, related: tuple[tuple[Place, str], ...]
) -> Diagnostic:
    return Diagnostic(name, severity, message, place, help, tuple(Related(*r) for r in related))
