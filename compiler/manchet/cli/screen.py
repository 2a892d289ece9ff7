"""What is written where, and in which colours."""

from __future__ import annotations

import os
import sys
from typing import TextIO

from manchet.diagnostics.text import COLOURED, PLAIN, Paint

NARROWEST = 40
"""A terminal that is narrower, or does not know its width, is written to as if it were so wide."""


def paint(stream: TextIO) -> Paint:
    """Colours for a terminal and for nothing else.

    `NO_COLOR` with any value forbids them (no-color.org); `FORCE_COLOR` asks for them where there is no terminal;
    a terminal that calls itself dumb gets none.
    """
    if os.environ.get("NO_COLOR"):
        return PLAIN
    if os.environ.get("FORCE_COLOR", "") not in ("", "0"):
        return COLOURED
    if os.environ.get("TERM") == "dumb" or not stream.isatty():
        return PLAIN
    return COLOURED


def columns(stream: TextIO) -> int:
    """How wide a line may be: the terminal's width, and 0 (as wide as it comes) for whatever is no terminal."""
    try:
        return max(os.get_terminal_size(stream.fileno()).columns, NARROWEST) if stream.isatty() else 0
    except (OSError, ValueError):
        return 0


class Progress:
    """One line on the terminal that says how far a long job is; silent where there is no terminal."""

    def __init__(self, doing: str, total: int) -> None:
        self.doing = doing
        self.total = total
        self.shown = total > 3 and sys.stderr.isatty() and os.environ.get("TERM") != "dumb"

    def done(self, number: int) -> None:
        if self.shown:
            sys.stderr.write(f"\r{self.doing} {number} of {self.total}\x1b[K")
            sys.stderr.flush()

    def close(self) -> None:
        if self.shown:
            sys.stderr.write("\r\x1b[K")
            sys.stderr.flush()
