"""Headings as the parser reads them: off a tree, or off a line that is not plainly written."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.source.text import Line, line_of
from manchet.syntax import nodes
from manchet.syntax.block import BLOCKS, Heading
from manchet.syntax.line import read_line
from manchet.syntax.mistakes.characters import plain
from manchet.syntax.mistakes.recovery import unread_node
from manchet.syntax.nodes import Entry
from manchet.syntax.openings import OPENINGS, opening_of
from manchet.syntax.tokens import pieces


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
    if isinstance(node, nodes.Unread) and node.opens in BLOCKS:
        return entry._replace(node=nodes.BlockHead(node.opens, node.name or _nameless(node.opens)))
    return entry


def _nameless(block: str) -> nodes.Word:
    """What is said in place of a name that is missing."""
    return nodes.Word(f"this {block}", 0, 0)


def is_nameless(entry: Entry) -> bool:
    """Whether a block has no name, which is reported at its heading."""
    return isinstance(entry.node, nodes.BlockHead) and entry.node.name == _nameless(entry.node.word)


def name_of(entry: Entry) -> str:
    """What a block or a stage is called."""
    node = entry.node
    if isinstance(node, nodes.StageHead):
        return (node.name or node.word).text
    assert isinstance(node, nodes.BlockHead)
    return node.name.text


def read_block_heading(raw: str) -> tuple[str, str, str]:
    """The word of a line in column 0, the block that it begins or was meant to, and its name; "" and "" for none."""
    line = line_of("", 1, raw)
    word = _word(line.body)
    if word and word not in BLOCKS:
        return word, "", ""
    node = block_meant(Entry(line, _node(line, "top"))).node
    return (word, node.word, node.name.text) if isinstance(node, nodes.BlockHead) else (word, "", "")


def read_variant_heading(raw: str) -> str:
    """The name of a variant whose heading stands in a line; "" where it is none."""
    node = _node(line_of("", 1, raw), "formula")
    return node.name.text if isinstance(node, nodes.VariantHead) else ""


def _word(body: str) -> str:
    """The words that open a line in column 0, as the language calls them."""
    raws = pieces(plain(body)[0])
    found = opening_of(OPENINGS["top"], raws) if raws else None
    return found[0].words if found is not None else ""


def _node(line: Line, context: str) -> nodes.Node | nodes.Unread:
    found = read_line(line.body, context)
    if found.trouble is not None:
        return unread_node(found.trouble)
    node: nodes.Node | nodes.Unread = found.node
    return node
