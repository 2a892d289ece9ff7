"""Where a position stands: its line, what that belongs to, and the word under it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes as n
from manchet.syntax.block import FORMULAS
from manchet.syntax.nodes import Amount, Entry, File, Word


class LineAt(NamedTuple):
    """`entries` are the line's own, last, and those that it stands under, from the block down; `at` is the column in the body of
    the line, from 0."""

    line: Line
    entries: tuple[Entry, ...]
    at: int

    @property
    def node(self) -> Any:
        return self.entries[-1].node

    @property
    def word(self) -> Word | None:
        """The name or word under the position, or right before it."""
        around = [word for word in words_in(self.node) if word.start <= self.at <= word.end]
        return max(around, key=lambda word: word.start, default=None)


def line_at(file: File, line: int, column: int) -> LineAt | None:
    """None for a line that says nothing, or that belongs to nothing that could be read."""
    entries = entries_at(file.entries, line)
    if not entries or entries[-1].line.number != line:
        return None
    written = entries[-1].line
    return LineAt(written, entries, column - 1 - written.indent)


def entries_at(entries: tuple[Entry, ...], line: int) -> tuple[Entry, ...]:
    """The entries that a line belongs to, from the block down: each the last that does not begin below it."""
    found: list[Entry] = []
    while entries:
        entry = next((one for one in reversed(entries) if one.line.number <= line), None)
        if entry is None:
            break
        found.append(entry)
        entries = entry.children
    return tuple(found)


def last_line(entry: Entry) -> Line:
    """The last line that stands under an entry, or its own."""
    while entry.children:
        entry = entry.children[-1]
    return entry.line


def block_around(file: File, line: int) -> Entry | None:
    """The formula, preparation or assembly that a line belongs to; of a variant's lines, the variant."""
    entries = entries_at(file.entries, line)
    if not entries or not (isinstance(entries[0].node, n.BlockHead) and entries[0].node.word in FORMULAS):
        return None
    variant = next((one for one in entries[1:2] if isinstance(one.node, n.VariantHead)), None)
    return entries[0] if variant is None or line > last_line(variant).number else variant


def words_in(node: object) -> Iterator[Word]:
    """Every word of a node, in the order of its fields."""
    if isinstance(node, Word):
        yield node
    elif isinstance(node, tuple) and not isinstance(node, Amount):
        for part in node:
            yield from words_in(part)
