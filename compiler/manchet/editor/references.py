"""Where something is named: where it is made or entered, and every place that draws on it."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.suggest import fold
from manchet.editor.names import (
    KnownNames,
    Meant,
    Name,
    NamingLine,
    known_names,
    made_blocks,
    meaning,
    meant_at,
    naming_lines,
    own_stages,
    pattern_of,
    shared_stages,
)
from manchet.larder.ingredient import Ingredient
from manchet.larder.names import key
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of
from manchet.source.text import line_of
from manchet.syntax.block import Block
from manchet.syntax.nodes import Word
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw


class Occurrence(NamedTuple):
    """A place where something is named, with the name as it stands there."""

    there: NamingLine
    name: Name

    @property
    def place(self) -> Place:
        return self.there.line.place(self.name.word.start, self.name.word.end)


def definition(bakery: OpenBakery, path: str, line: int, column: int) -> Place | None:
    """Where what is named at a position is made or entered; None for what the built-in larder has."""
    found = meant_at(bakery, path, line, column)
    return None if found is None else place_of_definition(bakery, found[2])


def place_of_definition(bakery: OpenBakery, meant: Meant) -> Place | None:
    """Where it is made or entered in a file of the house."""
    if meant.sort == "ingredient":
        known = bakery.read([]).larder.find(meant.key)
        return known.place if isinstance(known, Ingredient) else None
    if meant.sort in ("made", "shared stage"):
        blocks = made_blocks(bakery) if meant.sort == "made" else shared_stages(bakery)
        return _head(bakery, *blocks[meant.key]) if meant.key in blocks else None
    if meant.sort == "stage":
        path, line = meant.scope
        file = next(file for file in bakery.files if file.path == path)
        block = next(block for block in file.blocks if block.line == line)
        return _line(file, own_stages(block)[meant.key])
    return next((one.place for one in occurrences(bakery, meant) if one.name.defines), None)


def references(bakery: OpenBakery, path: str, line: int, column: int, with_definition: bool) -> tuple[Place, ...]:
    """Every place in the bakery where that is named which is named at a position."""
    found = meant_at(bakery, path, line, column)
    if found is None:
        return ()
    places = (one for one in occurrences(bakery, found[2]) if with_definition or not one.name.defines)
    return tuple(dict.fromkeys(one.place for one in places))


def occurrences(bakery: OpenBakery, meant: Meant) -> Iterator[Occurrence]:
    """Every place where it is named, file by file."""
    known = known_names(bakery)
    if meant.sort == "variant":
        yield from _called_after_its_formula(bakery, known, meant)
    spelt = _spellings(known, meant)
    wanted, keys = pattern_of(spelt), [key(name) for name in spelt]
    path, first = meant.scope
    for file in bakery.files:
        if path and file.path != path:
            continue
        for there in naming_lines(file, wanted):
            if path and (there.block is None or there.block.line != first):
                continue
            for name in there.names:
                if _may_mean(name, meant, keys) and _same(meaning(known, there, name), meant):
                    yield Occurrence(there, name)


def _called_after_its_formula(bakery: OpenBakery, known: KnownNames, meant: Meant) -> Iterator[Occurrence]:
    """A variant where plans and dishes name it: `Plain loaf, by hand`."""
    formula = next((name for name, (path, block) in known.made.items() if (path, block.line) == meant.scope), "")
    for file in bakery.files:
        for there in naming_lines(file, pattern_of([formula])):
            for name in there.names:
                text = name.word.text
                if fold(text) == f"{formula}, {meant.key}":
                    own = text.split(", ", 1)[1]
                    start = there.line.body.rfind(own, 0, name.word.end)
                    if start >= 0:
                        yield Occurrence(there, Name(Word(own, start, start + len(own)), "variant"))


def _may_mean(name: Name, meant: Meant, keys: list[str]) -> bool:
    """Whether it is worth asking: a name in words that describe (`cold water`) holds the name."""
    alike = (name.sort == "thing") == (meant.sort == "thing") and (name.sort == "variant") == (meant.sort == "variant")
    said = key(name.word.text) if alike else ""
    return alike and any(one in said for one in keys)


def _same(one: Meant | None, other: Meant) -> bool:
    return one is not None and (one.sort, one.key, one.scope) == (other.sort, other.key, other.scope)


def _spellings(known: KnownNames, meant: Meant) -> list[str]:
    """The names under which it goes."""
    if meant.sort != "ingredient":
        return [meant.key]
    found = known.larder.find(meant.key)
    return [found.name, *found.aliases] if isinstance(found, Ingredient) else [meant.key]


def _head(bakery: OpenBakery, path: str, block: Block) -> Place:
    return _line(next(file for file in bakery.files if file.path == path), block.line)


def _line(file: Raw, number: int) -> Place:
    return line_of(file.path, number, rough_text_of(file.data).split("\n")[number - 1]).place()
