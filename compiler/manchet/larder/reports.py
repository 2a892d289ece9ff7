"""Reports of the larder and the kitchen, in one line each."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Diagnostic, Place, Related, Severity


def error(name: str, place: Place, message: str, help: str = "", related: tuple[Related, ...] = ()) -> Diagnostic:
    return Diagnostic(name, Severity.ERROR, message, place, help, related)


def warning(name: str, place: Place, message: str, help: str = "") -> Diagnostic:
    return Diagnostic(name, Severity.WARNING, message, place, help)


def note(name: str, place: Place, message: str, help: str = "") -> Diagnostic:
    return Diagnostic(name, Severity.NOTE, message, place, help)


def listed(names: tuple[str, ...], last: str = "or") -> str:
    """`a, b or c`"""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"
