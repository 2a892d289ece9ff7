"""What a file holds, told by its headings: the same whether they are read off the text or off its tree.

Which formulas there are, and which files others draw on, is asked of ten thousand files before any is parsed. A block
begins in column 0 and a variant one step deeper; so where the indentation is plain, only those lines are read. Where it
is not, indentation is a matter for the parser, and the headings are those of the tree.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from manchet.records import NamedTuple
from manchet.source.text import Line, SourceText, line_of
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.openings import BLOCKS, HOUSE, OPENINGS, opening_of
from manchet.syntax.tokens import pieces

_COLUMN_0 = re.compile(r"^[^\s#].*", re.MULTILINE)
_VARIANT = re.compile(r"^  (variant\b.*)", re.MULTILINE | re.IGNORECASE)
_NOT_PLAIN = re.compile(r"^(?:(?:  )* (?=[^\s#])| *[^\S \n]| {3,}variant\b)", re.MULTILINE | re.IGNORECASE)
"""An odd number of spaces, another sort of space, or a variant that stands too deep."""
_INDENTED_FIRST = re.compile(r"(?:[ ]*(?:#.*)?\n)*[ ]+[^\s#]")
_PLAIN_HEADING = re.compile(r"([A-Za-z]+)((?: (?:[\w!$-+\--~]|(?<! ),)+)+) *")
"""A word and a name of letters, figures and plain signs with single spaces between: what the parser would make of it."""
_HOUSE = re.compile("|".join(sorted(HOUSE)), re.IGNORECASE)


class Heading(NamedTuple):
    """`word` opens the line: `formula`, `larder`, a stage's word; "" where no such word does.

    `name` is that of a formula, preparation, larder or kitchen, or of what was probably meant to be one; else "". `line`
    counts from 1.
    """

    word: str
    name: str
    line: int
    variants: tuple[tuple[str, int], ...] = ()
    """The variants of a formula: the name of each and its line."""


class Block(NamedTuple):
    """A heading and all that stands under it, `text`. A variant is a block too, named in full and at its own line; its
    text is that of its formula."""

    word: str
    name: str
    line: int
    text: str
    variants: tuple[tuple[str, int], ...] = ()
    spans: tuple[range, ...] = ()
    """The lines it follows from, where that is not all of its text."""

    @property
    def is_formula(self) -> bool:
        return self.word in ("formula", "variant")

    @property
    def end(self) -> int:
        """The line behind its last."""
        return self.line + self.text.count("\n") + (not self.text.endswith("\n"))

    def holds(self, line: int) -> bool:
        """Whether it follows from a line of its file."""
        return any(line in span for span in self.spans or (range(self.line, self.end),))

    def with_variants(self) -> tuple[Block, ...]:
        """The block itself, then its variants."""
        if not self.variants:
            return (self,)
        lines = [line for _, line in self.variants]
        own = range(self.line, lines[0])
        spans = [range(*two) for two in zip(lines, [*lines[1:], self.end], strict=True)]
        return (
            self._replace(spans=(own,)),
            *(
                Block("variant", f"{self.name}, {name}", line, self.text, (), (own, span))
                for (name, line), span in zip(self.variants, spans, strict=True)
            ),
        )


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
    """The headings of a text with plain newlines, in order. They are those of its tree; see `headings_of`."""
    if _NOT_PLAIN.search(text) is not None or _INDENTED_FIRST.match(text) is not None:
        from manchet.syntax.parser import parse

        return headings_of(parse(SourceText("", text)).value.entries)
    found = []
    matches = list(_COLUMN_0.finditer(text))
    line, counted = 1, 0
    for at, match in enumerate(matches):
        line += text.count("\n", counted, match.start())
        counted = match.start()
        word, head = _read_heading(match[0])
        end = matches[at + 1].start() if at + 1 < len(matches) else len(text)
        is_formula = head is not None and head.word == "formula"
        variants = tuple(_variants_in(text, match.start(), end, line)) if is_formula else ()
        found.append(Heading(word, head.name.text if head is not None else "", line, variants))
    return tuple(found)


def headings_of(entries: Iterable[Entry]) -> tuple[Heading, ...]:
    """The headings of a file's tree."""
    return tuple(map(_heading_of, map(block_meant, entries)))


def _heading_of(entry: Entry) -> Heading:
    node, line = entry.node, entry.line
    if not isinstance(node, nodes.BlockHead):
        return Heading(_word(line.body), "", line.number)
    under = ((child.line.number, child.node) for child in entry.children) if node.word == "formula" else ()
    variants = tuple((one.name.text, number) for number, one in under if isinstance(one, nodes.VariantHead))
    return Heading(_word(line.body), node.name.text, line.number, variants)


def block_meant(entry: Entry) -> Entry:
    """A block whose heading could not be read, as the one that was meant; any other as it is.

    So the mistakes under it are reported along with the heading's, and what draws on it is not told that it is missing.
    """
    node = entry.node
    if isinstance(node, nodes.Unread) and node.opens in BLOCKS and node.name:
        return entry._replace(node=nodes.BlockHead(node.opens, node.name))
    return entry


def name_of(entry: Entry) -> str:
    """What a block or a stage is called."""
    node = entry.node
    if isinstance(node, nodes.StageHead):
        return (node.name or node.word).text
    assert isinstance(node, nodes.BlockHead)
    return node.name.text


def _read_heading(raw: str) -> tuple[str, nodes.BlockHead | None]:
    """The word of a line in column 0, and the block that it begins."""
    plain = _PLAIN_HEADING.fullmatch(raw)
    if plain is not None and (word := plain[1].lower()) in BLOCKS:
        return word, nodes.BlockHead(word, nodes.Word(plain[2][1:], 0, 0))
    line = line_of("", 1, raw)
    word = _word(line.body)
    if word and word not in BLOCKS:
        return word, None
    node = block_meant(Entry(line, _node(line, "top"))).node
    return word, node if isinstance(node, nodes.BlockHead) else None


def _variants_in(text: str, start: int, end: int, line: int) -> Iterator[tuple[str, int]]:
    for match in _VARIANT.finditer(text, start, end):
        line += text.count("\n", start, match.start())
        start = match.start()
        plain = _PLAIN_HEADING.fullmatch(match[1])
        if plain is not None:
            yield plain[2][1:], line
        elif isinstance(node := _node(line_of("", 1, match[1]), "formula"), nodes.VariantHead):
            yield node.name.text, line


def _word(body: str) -> str:
    """The words that open a line in column 0, as the language calls them."""
    from manchet.syntax.mistakes.characters import plain

    raws = pieces(plain(body)[0])
    found = opening_of(OPENINGS["top"], raws) if raws else None
    return found[0].words if found is not None else ""


def _node(line: Line, context: str) -> nodes.Node | nodes.Unread:
    from manchet.syntax.line import read_line  # the parser's tables, which a plain heading has no need of

    found = read_line(line.body, context)
    if found.trouble is not None:
        from manchet.syntax.mistakes.recovery import unread_node

        return unread_node(found.trouble)
    node: nodes.Node | nodes.Unread = found.node
    return node
