"""What a file holds, read off its headings alone, without parsing it.

Every block begins in column 0, and a variant one step deeper. That is enough to know which files a formula needs (those that hold a larder, a
kitchen, a preparation or a shared stage) and where the formula called `Tern loaf` is, in ten thousand files.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import NamedTuple

_HEADING = re.compile(rb"^[^\s#][^\n\r]*", re.MULTILINE)
_HOUSE = re.compile(rb"^(?:larder|kitchen)\b", re.MULTILINE | re.IGNORECASE)
_VARIANT = re.compile(rb"^  variant[ \t]+([^\n\r]*)", re.MULTILINE | re.IGNORECASE)
_MARK = b"\xef\xbb\xbf"


class Block(NamedTuple):
    """A heading and all that stands under it. `text` is the bytes of the block; `line` counts from 1.

    A variant is a block too, named in full and at its own line; its text is that of its formula.
    """

    word: str
    name: str
    line: int
    text: bytes
    spans: tuple[range, ...] = ()
    """The lines it follows from, where that is not all of its text."""

    @property
    def is_formula(self) -> bool:
        return self.word in ("formula", "variant")

    def holds(self, line: int) -> bool:
        """Whether it follows from a line of its file."""
        spans = self.spans or (range(self.line, self.line + self.text.count(b"\n") + 1),)
        return any(line in span for span in spans)

    def with_variants(self) -> tuple[Block, ...]:
        """The block itself, then its variants."""
        found = list(_VARIANT.finditer(self.text)) if self.word == "formula" else []
        if not found:
            return (self,)
        lines = [self.line + self.text.count(b"\n", 0, one.start()) for one in found]
        spans = [range(*two) for two in zip(lines, [*lines[1:], self.line + self.text.count(b"\n") + 1], strict=True)]
        own = range(self.line, lines[0])
        names = [_without_comment(one[1].decode("utf-8", "replace")) for one in found]
        return (
            self._replace(spans=(own,)),
            *(
                Block("variant", f"{self.name}, {' '.join(name.split())}", line, self.text, (own, span))
                for name, line, span in zip(names, lines, spans, strict=True)
            ),
        )


def blocks(data: bytes) -> tuple[Block, ...]:
    """The blocks of a file, in order. Bytes that are no UTF-8 are read as well as may be: they are reported later."""
    data = data.removeprefix(_MARK)
    found = [match.start() for match in _HEADING.finditer(data)]
    result = []
    line, counted = 1, 0
    for start, end in zip(found, [*found[1:], len(data)], strict=False):
        line += data.count(b"\n", counted, start)
        counted = start
        heading = data[start:end].split(b"\n", 1)[0].decode("utf-8", "replace")
        word, name = (*heading.split(None, 1), "", "")[:2]
        result.append(Block(word.lower(), _without_comment(name), line, data[start:end]))
    return tuple(result)


def holds_larder_or_kitchen(data: bytes) -> bool:
    return _HOUSE.search(data.removeprefix(_MARK)) is not None


def shared(found: Iterable[Block]) -> tuple[Block, ...]:
    """The blocks that formulas in other files can draw on."""
    return tuple(block for block in found if not block.is_formula)


def _without_comment(name: str) -> str:
    """A name goes to the end of the line or to a comment (`#` after a space)."""
    return re.split(r"\s#", f" {name}", maxsplit=1)[0].strip()
