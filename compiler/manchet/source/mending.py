"""Fixes carried out on the text of a file: whole fixes, each character changed by one at most.

The rest of the file stays as it is to the byte: its ends of lines, its byte-order mark, its tabs.
"""

from __future__ import annotations

from bisect import bisect, insort
from collections.abc import Sequence
from itertools import pairwise

from manchet.diagnostics.diagnostic import Edit, Fix
from manchet.records import NamedTuple
from manchet.source.text import END_OF_LINE


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
    taken: list[_Span] = []
    done = []
    for number, fix in enumerate(fixes):
        wanted = [lines.span(edit) for edit in fix.edits if edit.place.path == path]
        spans = sorted(span for span in wanted if span is not None)
        if spans and len(spans) == len(fix.edits) and _are_apart(spans) and all(_fits(taken, span) for span in spans):
            for span in spans:
                insort(taken, span)
            done.append(number)
    parts, at = [], 0
    for start, end, instead in taken:
        parts += [text[at:start], instead]
        at = end
    return Mended("".join((*parts, text[at:])), tuple(done))


_Span = tuple[int, int, str]


def _are_apart(spans: Sequence[_Span]) -> bool:
    """No stretch meets the next; two texts that come in at one point would have no order, so they meet."""
    return all(one[1] <= two[0] and one[:2] != two[:2] for one, two in pairwise(spans))


def _fits(taken: list[_Span], span: _Span) -> bool:
    """Whether a stretch meets none of those taken, which are in order and apart."""
    at = bisect(taken, span)
    return _are_apart((*taken[max(at - 1, 0) : at], span, *taken[at : at + 1]))


class _Lines:
    """Where each line of a text begins and ends."""

    def __init__(self, text: str) -> None:
        ends = list(END_OF_LINE.finditer(text))
        self.text = text
        self.newline = ends[0][0] if ends else "\n"
        self.starts = [0, *(end.end() for end in ends)]
        self.stops = [*(end.start() for end in ends), len(text)]

    def span(self, edit: Edit) -> _Span | None:
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
