"""What is done in one go stands on one line: things between which nobody looks, reads or waits for long."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.formula.model import Step, Who
from manchet.records import NamedTuple

LETTERS = 105
"""So many letters of things done one after the other stand on one line."""
SHORT_REST = Fraction(30 * 60)
"""Seconds of a wait that still stands on the line of what was done before, and closes it."""


class Joinable(NamedTuple):
    """What of a step decides whether it shares a line."""

    letters: int
    waits: Fraction | None = None
    """Seconds; None for what is done by hand or machine."""
    begins: bool = False
    """It stands first on its line, as a caution above it asks."""
    stops: bool = False
    """It goes alone on its line: it has a look, a reading, a tick, a note."""
    drawn: bool = False
    """A drawing stands beside it; a line has room for one."""


def seconds_waited(step: Step) -> Fraction | None:
    """How long a step is left to itself, as far as its line is concerned; None for what is done by hand or machine."""
    if step.who is not Who.WAITING:
        return None
    return step.time.likely if step.time else SHORT_REST * 2


def run_on(text: str) -> str:
    """The same inside a line, after another: `shape round · rest covered 20 min`."""
    return text[:1].lower() + text[1:]


def lines_of(steps: Sequence[Joinable], letters: int = LETTERS) -> tuple[tuple[int, ...], ...]:
    """The numbers of the steps that share each line, in their order."""
    lines: list[list[int]] = []
    closed = True
    for at, step in enumerate(steps):
        long_wait = step.waits is not None and step.waits > SHORT_REST
        if closed or step.begins or step.stops or long_wait or not _fits([steps[n] for n in lines[-1]], step, letters):
            lines.append([at])
        else:
            lines[-1].append(at)
        closed = step.waits is not None or step.stops
    return tuple(map(tuple, lines))


def _fits(line: Sequence[Joinable], step: Joinable, letters: int) -> bool:
    short = sum(one.letters for one in line) + step.letters <= letters
    return short and not (step.drawn and any(one.drawn for one in line))
