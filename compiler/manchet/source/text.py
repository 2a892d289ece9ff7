"""The text of one file, and the places in it."""

from __future__ import annotations

import re

from manchet.diagnostics.diagnostic import Place
from manchet.records import NamedTuple

END_OF_LINE = re.compile(r"\r\n|\r|\n")
"""No other character ends a line."""


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


def lines_of(source: SourceText) -> tuple[Line, ...]:
    """Every line of the text, in order, in time linear in its length. A last newline begins no line."""
    path = source.path
    rows = source.text.split("\n")
    if rows[-1] == "":
        rows.pop()
    return tuple(line_of(path, number, raw) for number, raw in enumerate(rows, 1))


def line_of(path: str, number: int, raw: str) -> Line:
    """A line without its newline, told into indentation, body and comment."""
    rest = raw.lstrip(" ")
    indent = len(raw) - len(rest)
    comment = ""
    if "#" in rest:
        start = _comment_start(rest)
        rest, comment = rest[:start], rest[start:]
    return Line(path, number, raw, indent, rest.rstrip(), comment)


QUOTES = {'"': '"', "“": "”", "„": "“”"}
"""The marks that open words for people, and those that close them. Phones write the curly ones."""

_MARK = re.compile(r'["“”„#]')


def _comment_start(text: str) -> int:
    """Where the comment begins: a `#` at the start or after a space, outside quotes; else the end of the text."""
    closing = ""
    for mark in _MARK.finditer(text):
        character, at = mark[0], mark.start()
        if closing:
            if character in closing:
                closing = ""
        elif character == "#":
            if at == 0 or text[at - 1].isspace():
                return at
        else:
            closing = QUOTES.get(character, "")
    return len(text)
