"""What can be wrong with a line, as data: a name, where in the line, and the words that fill its message."""

from __future__ import annotations

from typing import NamedTuple

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.source.text import Line
from manchet.syntax.messages import MESSAGES


class Fault(NamedTuple):
    """A mistake at body[start:end]. `words` fill the message and the help of its name."""

    name: str
    start: int
    end: int
    words: dict[str, str]


REMARKS = frozenset(name for name, (severity, _, _) in MESSAGES.items() if severity != "error")
"""Faults with which a line can still be read."""


def reported(fault: Fault, line: Line) -> Diagnostic:
    """The report of a fault of a line."""
    severity, message, help_ = MESSAGES[fault.name]
    return Diagnostic(
        fault.name,
        Severity(severity),
        message.format(**fault.words),
        line.place(fault.start, max(fault.end, fault.start + 1)),
        help_.format(**fault.words),
    )
