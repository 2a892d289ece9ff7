"""Which words of a line are names, and what each means: an ingredient, a stage, what a block makes, a thing of the kitchen."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from manchet.diagnostics.suggest import fold
from manchet.formula.draft import stage_key
from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.larder.names import key
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of, text_of
from manchet.source.text import Line, line_of
from manchet.syntax import nodes as n, plan_nodes as p
from manchet.syntax.block import FORMULAS, Block
from manchet.syntax.line import read_line
from manchet.syntax.nodes import Word
from manchet.syntax.openings import OPENINGS
from manchet.syntax.parser import parse
from manchet.syntax.things import THING
from manchet.syntax.vocabulary import STAGE
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw


class Name(NamedTuple):
    """A name on a line. `sort`: "material" (an ingredient, a stage or what a block makes, whichever it turns out to be), "stage",
    "made" (by a formula, preparation or assembly), "house", "variant", "thing"."""

    word: Word
    sort: str
    defines: bool = False


class NamingLine(NamedTuple):
    """A line that was read by itself: what it says, what the line above it says that it stands under, and its block."""

    line: Line
    node: Any
    under: Any
    block: Block | None

    @property
    def names(self) -> tuple[Name, ...]:
        return tuple(_names(self.node, self.under))

    def name_at(self, column: int) -> Name | None:
        """The name under a column of the file's line, counted from 1, or right before it."""
        at = column - 1 - self.line.indent
        return next((one for one in self.names if one.word.start <= at <= one.word.end), None)


class Meant(NamedTuple):
    """What a name stands for. `sort`: "ingredient", "stage" (of one formula), "shared stage", "made", "thing", "variant", "house".
    `scope` is path and line of the formula that alone knows it; ("", 0) for what all know."""

    sort: str
    key: str
    name: str
    scope: tuple[str, int] = ("", 0)


def _names(node: Any, under: Any) -> Iterator[Name]:
    if isinstance(node, n.BlockHead):
        yield Name(node.name, "made" if node.word in FORMULAS else "house", defines=True)
    elif isinstance(node, n.StageHead):
        yield Name(node.name or node.word, "stage", defines=True)
    elif isinstance(node, n.VariantHead):
        yield Name(node.name, "variant", defines=True)
    elif isinstance(node, n.EntryName):
        yield Name(node.name, "material", defines=True)
    elif isinstance(node, n.Setting):
        yield from _in_a_setting(node)
    elif isinstance(node, n.MaterialNode):
        if not (isinstance(under, n.Setting) and under.key == "per 100 g"):
            yield Name(node.name, "material")
            if node.counted_as is not None:
                yield Name(node.counted_as, "material")
    elif isinstance(node, n.Tail):
        yield from (Name(part.name, "material") for part in node.parts if isinstance(part, n.CountedAs))
    elif isinstance(node, n.HoldBack | n.Add):
        yield from (Name(part.name, "material") for part in node.items)
    elif isinstance(node, n.Swap):
        yield from (Name(node.off, "material"), Name(node.on, "material"))
    elif isinstance(node, n.StepNode | n.ClauseLine):
        for clause in node.clauses:
            if isinstance(clause, n.Where):
                yield Name(clause.place, "thing")
            elif isinstance(clause, n.AppliedClause):
                yield Name(clause.name, "material")
    elif isinstance(node, n.MakesNode):
        yield from () if node.tin is None else (Name(node.tin, "thing"),)
    elif isinstance(node, p.WantNode | p.AppointmentNode):
        yield Name(node.name, "material")
    elif isinstance(node, p.AlreadyThere):
        yield from (Name(item.name, "material") for item in node.items)
    elif isinstance(node, p.TakenNode | p.FiresNode):
        yield from () if node.name is None else (Name(node.name, "thing"),)
    elif isinstance(node, _ONE_NAME) and node.name is not None:
        yield Name(node.name, "material")


_ONE_NAME = (n.TakeAll, n.TakeLeft, n.BareName, n.Return, n.KeepNode, n.TopUp, n.LockIn, n.PourOff, n.Without)


def _in_a_setting(node: n.Setting) -> Iterator[Name]:
    if node.key in THING and node.names:
        yield Name(node.names[0], "thing", defines=True)
    elif node.key == "also called":
        yield from (Name(word, "material", defines=True) for word in node.names)
    elif node.key == "could be":
        yield from (Name(word, "material") for word in node.names)


# ---- lines, each read by itself -------------------------------------------------------------------

_NOT_PLAIN = re.compile(r"^(?:(?:  )* (?=[^\s#])|[^\S\n]*[^\S \n])", re.MULTILINE)
"""An odd number of spaces, or another sort of space: then only the parser knows what stands under what."""


def naming_lines(file: Raw, wanted: re.Pattern[str]) -> Iterator[NamingLine]:
    """The lines of a file in which a pattern is found, each with what it stands under. The others are not read."""
    text = rough_text_of(file.data)
    if wanted.search(text) is None:
        return
    rows = text.split("\n")
    contexts = None
    if _NOT_PLAIN.search(text) is not None:
        source = text_of(file.path, file.data).value
        contexts = parse(source).value.contexts if source is not None else ()
    for number, row in enumerate(rows, 1):
        if wanted.search(row) is not None:
            found = _read_line_of(file, rows, number, contexts)
            if found is not None:
                yield found


def naming_line(file: Raw, number: int) -> NamingLine | None:
    """The line of that number."""
    text = rough_text_of(file.data)
    rows = text.split("\n")
    if not 1 <= number <= len(rows):
        return None
    source = text_of(file.path, file.data).value
    return None if source is None else _read_line_of(file, rows, number, parse(source).value.contexts)


def _read_line_of(file: Raw, rows: list[str], number: int, contexts: tuple[str, ...] | None) -> NamingLine | None:
    line = line_of(file.path, number, rows[number - 1])
    if not line.body:
        return None
    if line.body[0].isspace():  # indented with tabs
        blank = len(line.raw) - len(line.raw.lstrip())
        line = line._replace(indent=blank, body=line.body.lstrip())
    above = _above(file.path, rows, line)
    under, context = None, "top"
    for one in above:
        if contexts is not None:
            context = contexts[one.number - 1] if one.number <= len(contexts) else ""
        if context not in OPENINGS:
            return None  # what stands above it could not be read
        read = read_line(one.body, context)
        under, context = read.node, read.opens
    if contexts is not None:
        context = contexts[number - 1] if number <= len(contexts) else ""
    if context not in OPENINGS:
        return None
    block = next((one for one in reversed(file.blocks) if one.line <= number), None)
    return NamingLine(line, read_line(line.body, context).node, under, block)


def _above(path: str, rows: list[str], line: Line) -> list[Line]:
    """The lines that a line stands under, from the block down."""
    found: list[Line] = []
    depth = line.indent
    for at in range(line.number - 2, -1, -1):
        if not depth:
            break
        row = rows[at]
        indent = len(row) - len(row.lstrip(" "))
        if indent < depth and row.strip() and row[indent] != "#":
            found.append(line_of(path, at + 1, row))
            depth = indent
    return found[::-1]


# ---- what a name means ----------------------------------------------------------------------------


class KnownNames(NamedTuple):
    """What names of a bakery can mean beside the stages of a formula: its shared stages by key, what its blocks make by folded
    name, each with its path, and the larder."""

    shared: Mapping[str, tuple[str, Block]]
    made: Mapping[str, tuple[str, Block]]
    larder: Larder


def known_names(bakery: OpenBakery) -> KnownNames:
    """Put together once for a question, however many names it looks at."""
    return KnownNames(shared_stages(bakery), made_blocks(bakery), bakery.read([]).larder)


def meant_at(bakery: OpenBakery, path: str, line: int, column: int) -> tuple[NamingLine, Name, Meant] | None:
    """The name at a position and what it stands for; None where there is none that is known."""
    file = next((one for one in bakery.files if one.path == path), None)
    found = naming_line(file, line) if file is not None else None
    name = found.name_at(column) if found is not None else None
    if found is None or name is None:
        return None
    meant = thing_called(bakery, name.word.text) if name.sort == "thing" else meaning(known_names(bakery), found, name)
    return None if meant is None else (found, name, meant)


def meaning(known: KnownNames, there: NamingLine, name: Name) -> Meant | None:
    """What a name on a line stands for, as the binding of names has it: own stages first, then shared ones, then what the house
    makes, then the larder."""
    text, block = name.word.text, there.block
    if name.sort == "house":
        return None
    if name.sort == "thing":
        return Meant("thing", key(text), text)
    if name.sort == "made":
        return Meant("made", fold(text), text)
    if name.sort == "variant":
        return None if block is None else Meant("variant", fold(text), text, (there.line.path, block.line))
    wanted = fold(text)
    if block is not None and block.word in FORMULAS and wanted in own_stages(block):
        if wanted in known.shared and not _has_lines(block, wanted):
            return Meant("shared stage", wanted, text)
        return Meant("stage", wanted, text, (there.line.path, block.line))
    if name.sort == "stage" or wanted in known.shared:
        return Meant("shared stage", wanted, text)
    whole = wanted.split(", ")[0]
    if wanted in known.made or whole in known.made:
        return Meant("made", wanted if wanted in known.made else whole, text)
    found = known.larder.find(text)
    return Meant("ingredient", fold(found.name), found.name) if isinstance(found, Ingredient) else None


def made_blocks(bakery: OpenBakery) -> dict[str, tuple[str, Block]]:
    """The formulas, preparations and assemblies by their folded names, and the path of each."""
    return {
        fold(block.name): (file.path, block) for file in bakery.files for block in file.blocks if block.word in FORMULAS
    }


def shared_stages(bakery: OpenBakery) -> dict[str, tuple[str, Block]]:
    """The stages that stand by themselves, by key."""
    found: dict[str, tuple[str, Block]] = {}
    for path, block in bakery.shared:
        if block.word in STAGE and block.word not in FORMULAS:
            head = read_line(line_of(path, block.line, block.text.split("\n", 1)[0]).body, "top").node
            if isinstance(head, n.StageHead):
                found.setdefault(stage_key(head), (path, block))
    return found


def own_stages(block: Block) -> dict[str, int]:
    """The stages that a formula and its variants have headings of, by key, and the line of each."""
    found: dict[str, int] = {}
    for at, row in enumerate(block.text.split("\n")):
        body = row.lstrip(" ")
        if len(row) - len(body) in (2, 4) and body[:1].isalpha():
            line = line_of("", 0, row)
            head = read_line(line.body, block.word if len(row) - len(body) == 2 else "variant").node
            if isinstance(head, n.StageHead):
                found.setdefault(stage_key(head), block.line + at)
    return found


def _has_lines(block: Block, stage: str) -> bool:
    """Whether anything stands under the heading of a stage."""
    rows = block.text.split("\n")
    at = own_stages(block)[stage] - block.line
    depth = len(rows[at]) - len(rows[at].lstrip(" "))
    below = next((row for row in rows[at + 1 :] if row.strip() and row.strip()[0] != "#"), "")
    return len(below) - len(below.lstrip(" ")) > depth


def thing_called(bakery: OpenBakery, text: str) -> Meant | None:
    """What a kitchen of the house calls so."""
    wanted = key(text)
    for file in bakery.files:
        if any(block.word == "kitchen" for block in file.blocks):
            for there in naming_lines(file, pattern_of([text])):
                for name in there.names:
                    if name.sort == "thing" and name.defines and key(name.word.text) == wanted:
                        return Meant("thing", wanted, name.word.text)
    return None


def pattern_of(names: list[str]) -> re.Pattern[str]:
    """Finds every line that may hold one of these names, in whatever number and capitals: by how its first word begins."""
    begins = set()
    for name in names:
        plain = re.match(r"[a-z0-9]*", fold(name))
        word = plain[0] if plain is not None else ""
        begins.add(re.sub(r"(?<=..)(?:ies|oes|es|s|y|ie|o)$", "", word))
    return re.compile("" if "" in begins else rf"(?<![a-z0-9])(?:{'|'.join(sorted(begins))})", re.IGNORECASE)
