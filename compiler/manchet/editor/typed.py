"""What has been typed of a line so far, and what may stand there: its context, told by what stands above it."""

from __future__ import annotations

import re

from manchet.records import NamedTuple
from manchet.source.files import with_plain_newlines
from manchet.source.text import SourceText
from manchet.syntax.block import Block
from manchet.syntax.headings import blocks
from manchet.syntax.parser import parse

_FIGURE = re.compile(r"(?:^|(?<=[\s\-–(]))([0-9½⅓⅔¼¾⅛⅜⅝⅞][0-9.,/½⅓⅔¼¾⅛⅜⅝⅞-]*) ?([A-Za-z%]*)$")
_WORD = re.compile(r"[^\s,\"“„]*$")


class Typed(NamedTuple):
    """A line up to the cursor. `context` is what lines there are read as, "" where nothing is; `body` begins at the first
    word, which stands in column `begins` (from 1); `block` is the one around it."""

    path: str
    line: int
    begins: int
    body: str
    context: str
    block: Block | None

    @property
    def word(self) -> str:
        """The word that is being typed, "" after a space."""
        found = _WORD.search(self.body)
        return found[0] if found is not None else ""

    @property
    def before(self) -> str:
        """What stands before that word, without the space between."""
        return self.body[: len(self.body) - len(self.word)].rstrip()

    @property
    def unit(self) -> str | None:
        """What is typed of the unit of a figure, "" right behind one; None where no figure stands before the cursor."""
        found = _FIGURE.search(self.body)
        return found[2] if found is not None else None


def typed_at(path: str, text: str, line: int, column: int) -> Typed | None:
    """What stands before the cursor; None in a remark and in words for people, where nothing is to be offered."""
    rows = with_plain_newlines(text).split("\n")
    if not 1 <= line <= len(rows):
        return None
    written = rows[line - 1][: column - 1]
    body = written.lstrip(" ")
    if "#" in re.sub(r'"[^"]*"', "", body) or body.count('"') % 2:
        return None
    begins = len(written) - len(body) + 1
    rows[line - 1] = " " * (begins - 1) + "x"
    there = "\n".join(rows)
    contexts = parse(SourceText(path, there)).value.contexts
    context = contexts[line - 1] if line <= len(contexts) else ""
    block = next((one for one in reversed(blocks(there)) if one.line <= line), None)
    return Typed(path, line, begins, body, context, block)
