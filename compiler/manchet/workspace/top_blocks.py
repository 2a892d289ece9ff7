"""The blocks of a bakery, sorted by what they are, and those that claim one name."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from manchet.changes.variants import full_name, variants_of
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry, File, Word
from manchet.syntax.parsed_headings import block_meant, is_nameless, name_of


class TopBlocks(NamedTuple):
    """The blocks of column 0, in the order of files and lines."""

    formulas: tuple[Entry, ...] = ()
    preparations: tuple[Entry, ...] = ()
    larders: tuple[Entry, ...] = ()
    kitchens: tuple[Entry, ...] = ()
    stages: tuple[Entry, ...] = ()


def blocks_of(file: File) -> TopBlocks:
    """The blocks of one file."""
    sorts: dict[str, list[Entry]] = {"formula": [], "preparation": [], "larder": [], "kitchen": [], "stage": []}
    for entry in map(block_meant, file.entries):
        match entry.node:
            case nodes.BlockHead(word, _):
                sorts[word].append(entry)
            case nodes.StageHead():
                sorts["stage"].append(entry)
            case _:
                pass
    return TopBlocks(*map(tuple, sorts.values()))


def put_together(parts: Iterable[TopBlocks]) -> TopBlocks:
    """The blocks of several files."""
    columns = zip(*parts, strict=True)
    return TopBlocks(*(tuple(entry for part in column for entry in part) for column in columns))


def clashing_names(blocks: TopBlocks) -> Iterator[Diagnostic]:
    """A report for each block whose name another of its sort has before it."""
    yield from _same_names((*blocks.formulas, *_named_variants(blocks.formulas), *blocks.preparations))
    yield from _same_names(blocks.stages)
    yield from _same_names(blocks.kitchens)


def _named_variants(formulas: Iterable[Entry]) -> Iterable[Entry]:
    """The variants of some formulas under their full names."""
    for formula in formulas:
        for variant in variants_of(formula):
            yield Entry(variant.line, nodes.BlockHead("formula", Word(full_name(formula, variant), 0, 0)))


def _same_names(entries: tuple[Entry, ...]) -> Iterator[Diagnostic]:
    first: dict[str, Entry] = {}
    for entry in entries:
        if is_nameless(entry):
            continue
        key = fold(name_of(entry))
        there = first.setdefault(key, entry)
        if there is entry:
            continue
        where = there.line.path if there.line.path != entry.line.path else f"line {there.line.number}"
        message = f"{name_of(entry)} is there already, in {where}"
        help = f"if {entry.line.path} is a copy, remove it; else give one of the two another name"
        also = (there.line.place(), "the first is here")
        yield report("two-blocks-one-name", entry.line.place(), message, help, also)
