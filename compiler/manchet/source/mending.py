"""Fixes carried out on the text of a file: whole fixes, each character changed by one at most.

The rest of the file stays as it is to the byte: its ends of lines, its byte-order mark, its tabs.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from manchet.diagnostics.diagnostic import Edit, Fix
from manchet.records import NamedTuple

_END_OF_LINE = re.compile(r"\r\n|\r|\n")
"""As `source/text.py` tells lines: no other character ends one."""


class Mended(NamedTuple):
    """A text after some fixes, and the numbers of those that were carried out."""

    text: str
    done: tuple[int, ...]


def mend(path: str, text: str, fixes: Sequence[Fix]) -> Mended:
    """The text of the file `path`, as it was read (with its own ends of lines), after as many of the fixes as go together.

    Left out is a fix that meets an earlier one, that changes another file too, or whose lines are no longer those it was
    made for. All places are those in `text`: the fixes do not move each other.
    """
    lines = _Lines(text)
    taken: list[tuple[int, int, str]] = []
    done = []
    for number, fix in enumerate(fixes):
        wanted = [lines.span(edit) for edit in fix.edits if edit.place.path == path]
        spans = [span for span in wanted if span is not None]
        if spans and len(spans) == len(fix.edits) and _are_apart([*taken, *spans]):
            taken += spans
            done.append(number)
    for start, end, instead in sorted(taken, reverse=True):
        text = text[:start] + instead + text[end:]
    return Mended(text, tuple(done))


def _are_apart(spans: list[tuple[int, int, str]]) -> bool:
    """No stretch meets another; two texts that come in at one point would have no order, so they meet."""
    ordered = sorted(spans)
    return all(one[1] <= two[0] and one[:2] != two[:2] for one, two in pairwise(ordered))


class _Lines:
    """Where each line of a text begins and ends."""

    def __init__(self, text: str) -> None:
        ends = list(_END_OF_LINE.finditer(text))
        self.text = text
        self.newline = ends[0][0] if ends else "\n"
        self.starts = [0, *(end.end() for end in ends)]
        self.stops = [*(end.start() for end in ends), len(text)]

    def span(self, edit: Edit) -> tuple[int, int, str] | None:
        """The edit as offsets; None where the text has no such place, or the line is another than it was."""
        place = edit.place
        if not 1 <= place.line <= len(self.starts):
            return None
        written = self.text[self.starts[place.line - 1] : self.stops[place.line - 1]]
        if written != place.text:
            return None
        start, end = self._offset(place.line, place.column), self._offset(place.end_line, place.end_column)
        return None if start > end else (start, end, edit.text.replace("\n", self.newline))

    def _offset(self, line: int, column: int) -> int:
        """Within its line; after the last line the end of the text."""
        if line > len(self.starts):
            return len(self.text)
        return max(min(self.starts[line - 1] + column - 1, self.stops[line - 1]), 0)
