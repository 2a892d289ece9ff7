"""What each piece of a line is, for its colour: told by the tokens and the tree by which the line was read."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.editor.names import NamingLine
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes as n
from manchet.syntax.line import read_line, tokens_of
from manchet.syntax.mistakes.characters import plain
from manchet.syntax.nodes import Amount, Entry, File
from manchet.syntax.tokens import pieces

SORTS = ("keyword", "function", "variable", "class", "number", "string", "comment")
"""Words of the language, verbs, what is weighed, what is named by a heading, figures, words for people, remarks."""


class Coloured(NamedTuple):
    """A piece of a line: its number, the column where it begins and where it ends, from 1, and what it is."""

    line: int
    start: int
    end: int
    sort: str


def colours(file: File) -> tuple[Coloured, ...]:
    """The pieces of a file that have a colour, in order. What cannot be read has none, but for its remark."""
    under = dict(_under(file.entries, None))
    found: list[Coloured] = []
    for line, context in zip(file.lines, file.contexts, strict=True):
        if line.body and context:
            found += _of_line(line, context, under.get(line.number))
        if line.comment:
            start = len(line.raw) - len(line.comment)
            found.append(Coloured(line.number, start + 1, start + len(line.comment) + 1, "comment"))
    return tuple(found)


def _under(entries: tuple[Entry, ...], above: object) -> Iterator[tuple[int, object]]:
    for entry in entries:
        yield entry.line.number, above
        yield from _under(entry.children, entry.node)


def _of_line(line: Line, context: str, under: object) -> Iterator[Coloured]:
    body = line.body.lstrip()
    read = read_line(body, context)
    if read.trouble is not None:
        return
    before = len(line.raw) - len(line.raw.lstrip())
    names = {one.word.start: one for one in NamingLine(line, read.node, under, None).names}
    plainly = plain(body)[0]
    tokens = tokens_of(plainly, pieces(plainly), context).tokens
    end = 0
    for kind, value in zip(tokens.types, tokens.values, strict=True):
        if value is None or value.start < end or kind == "_COMMA":
            continue
        end = value.end
        if isinstance(value, Amount):
            sort = "number"
        elif kind in ("QUOTED", "PROSE_TEXT"):
            sort = "string"
        elif kind == "DATE":
            sort = "number"
        elif kind == "NAME":
            name = names.get(value.start)
            sort = "class" if (name is not None and name.defines) or context == "top" else "variable"
        else:
            sort = "function" if isinstance(read.node, n.StepNode) and not value.start else "keyword"
        if kind == "STAGE" and isinstance(read.node, n.StageHead) and read.node.name is None:
            sort = "class"
        yield Coloured(line.number, before + value.start + 1, before + value.end + 1, sort)
