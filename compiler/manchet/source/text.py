"""The text of one file, and the places in it."""

from __future__ import annotations

from typing import NamedTuple

from manchet.diagnostics.diagnostic import Place


class SourceText(NamedTuple):
    """A file's path (as shown to the baker) and its text: newlines are `\\n`, no byte-order mark."""

    path: str
    text: str


class Line(NamedTuple):
    """One line of a file, kept whole: nothing of comment, indentation or blank space is lost.

    `number` counts from 1. `raw` is the line without its newline. `indent` is the number of leading
    spaces. `body` is what is left of it: no indentation, no comment, no trailing space; `comment` is the
    comment with its `#`, or "". A blank or comment-only line has an empty body.
    """

    path: str
    number: int
    raw: str
    indent: int
    body: str
    comment: str

    def place(self, start: int = 0, end: int | None = None) -> Place:
        """The place of `body[start:end]` in the file; by default of the whole body."""
        stop = len(self.body) if end is None else end
        return Place(self.path, self.number, self.indent + start + 1, self.number, self.indent + stop + 1, self.raw)
