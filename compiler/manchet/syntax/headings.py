"""What a file holds, told by its headings: the same whether they are read off the text or off its tree.

Which formulas there are, and which files others draw on, is asked of ten thousand files before any is parsed. A block
begins in column 0 and a variant one step deeper; so where the indentation is plain, only those lines are read. Where it
is not, indentation is a matter for the parser, and the headings are those of the tree.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from manchet.source.text import SourceText
from manchet.syntax.block import BLOCKS, HOUSE, Block, Heading

_COLUMN_0 = re.compile(r"^[^\s#].*", re.MULTILINE)
_VARIANT = re.compile(r"^  (variant\b.*)", re.MULTILINE | re.IGNORECASE)
_NOT_PLAIN = re.compile(r"^(?:(?:  )* (?=[^\s#])| *[^\S \n]| {3,}variant\b)", re.MULTILINE | re.IGNORECASE)
"""An odd number of spaces, another sort of space, or a variant that stands too deep."""
_INDENTED_FIRST = re.compile(r"(?:[ ]*(?:#.*)?\n)*[ ]+[^\s#]")
_PLAIN_HEADING = re.compile(r"([A-Za-z]+)((?: (?:[\w!$-+\--~]|(?<! ),)+)+) *")
"""A word and a name of letters, figures and plain signs with single spaces between: what the parser would make of it."""
_HOUSE = re.compile("|".join(sorted(HOUSE)), re.IGNORECASE)


def blocks(text: str) -> tuple[Block, ...]:
    """The blocks of a text, in order. What stands before the first heading belongs to none."""
    found = headings(text)
    starts, at, line = [], 0, 1
    for heading in found:
        while line < heading.line:
            at = text.index("\n", at) + 1
            line += 1
        starts.append(at)
    return tuple(
        Block(one.word, one.name, one.line, text[start:end], one.variants)
        for one, start, end in zip(found, starts, [*starts[1:], len(text)], strict=False)
    )


def holds_house(text: str) -> bool:
    """Whether a larder or a kitchen stands in it."""
    return _HOUSE.search(text) is not None and any(heading.word in HOUSE for heading in headings(text))


def headings(text: str) -> tuple[Heading, ...]:
    """The headings of a text with plain newlines, in order. They are those of its tree; see `parsed_headings`."""
    if _NOT_PLAIN.search(text) is not None or _INDENTED_FIRST.match(text) is not None:
        from manchet.syntax.parsed_headings import headings_of
        from manchet.syntax.parser import parse

        return headings_of(parse(SourceText("", text)).value.entries)
    found = []
    matches = list(_COLUMN_0.finditer(text))
    line, counted = 1, 0
    for at, match in enumerate(matches):
        line += text.count("\n", counted, match.start())
        counted = match.start()
        word, begins, name = _read_heading(match[0])
        end = matches[at + 1].start() if at + 1 < len(matches) else len(text)
        variants = tuple(_variants_in(text, match.start(), end, line)) if begins == "formula" else ()
        found.append(Heading(word, name, line, variants))
    return tuple(found)


def _read_heading(raw: str) -> tuple[str, str, str]:
    """The word of a line in column 0, the block that it begins and its name; "" and "" where it begins none."""
    plain = _PLAIN_HEADING.fullmatch(raw)
    if plain is not None and (word := plain[1].lower()) in BLOCKS:
        return word, word, plain[2][1:]
    from manchet.syntax.parsed_headings import read_block_heading

    return read_block_heading(raw)


def _variants_in(text: str, start: int, end: int, line: int) -> Iterator[tuple[str, int]]:
    for match in _VARIANT.finditer(text, start, end):
        line += text.count("\n", start, match.start())
        start = match.start()
        plain = _PLAIN_HEADING.fullmatch(match[1])
        if plain is not None:
            yield plain[2][1:], line
            continue
        from manchet.syntax.parsed_headings import read_variant_heading

        if name := read_variant_heading(match[1]):
            yield name, line
