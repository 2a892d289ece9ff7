"""What can be wrong with a line, as data: a name, where in the line, and the words that fill its message."""

from __future__ import annotations

from typing import NamedTuple

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.source.text import Line
from manchet.syntax.tokens import Raw


class Fault(NamedTuple):
    """A mistake at body[start:end]. `words` fill the message and the help of its name."""

    name: str
    start: int
    end: int
    words: dict[str, str]


class Trouble(NamedTuple):
    """A line that could not be read: its text, its pieces, where it stands, the rule it was read by and where that
    stopped (`at` counts pieces of `spans`)."""

    body: str
    raws: tuple[Raw, ...]
    context: str
    rule: str
    spans: tuple[tuple[int, int], ...]
    at: int
    expected: tuple[str, ...]


REMARKS = frozenset({"no-break-space", "odd-dash", "unit-long-form", "reserved-word", "too-many-mistakes"})
"""Faults with which a line can still be read: those of MESSAGES that are no errors (the messages are loaded later)."""


def reported(fault: Fault, line: Line) -> Diagnostic:
    """The report of a fault of a line."""
    from manchet.syntax.mistakes.messages import MESSAGES  # a sound file has no need of them

    severity, message, help_ = MESSAGES[fault.name]
    return Diagnostic(
        fault.name,
        Severity(severity),
        message.format(**fault.words),
        line.place(fault.start, max(fault.end, fault.start + 1)),
        help_.format(**fault.words),
    )
