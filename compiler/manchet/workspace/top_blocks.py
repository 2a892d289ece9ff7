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
    plans: tuple[Entry, ...] = ()
    orders: tuple[Entry, ...] = ()
    assemblies: tuple[Entry, ...] = ()
    stocks: tuple[Entry, ...] = ()
    for_plans: tuple[Entry, ...] = ()
    """Second blocks of a kitchen's name in files with a plan: they hold for the plans of their file alone."""


def blocks_of(file: File) -> TopBlocks:
    """The blocks of one file."""
    sorts: dict[str, list[Entry]] = {
        word: []
        for word in ("formula", "preparation", "larder", "kitchen", "stage", "plan", "order", "assembly", "stock")
    }
    for entry in map(block_meant, file.entries):
        match entry.node:
            case nodes.BlockHead(word, _):
                sorts[word].append(entry)
            case nodes.StageHead():
                sorts["stage"].append(entry)
            case nodes.StockHead():
                sorts["stock"].append(entry)
            case _:
                pass
    return TopBlocks(*map(tuple, sorts.values()))


def put_together(parts: Iterable[TopBlocks]) -> TopBlocks:
    """The blocks of several files."""
    columns = zip(*parts, strict=True)
    return _second_kitchens_apart(TopBlocks(*(tuple(entry for part in column for entry in part) for column in columns)))


def _second_kitchens_apart(blocks: TopBlocks) -> TopBlocks:
    """The kitchens, and apart from them one second block of each name in a file with a plan."""
    planning = {plan.line.path for plan in blocks.plans}
    first: dict[str, Entry] = {}
    for entry in sorted(blocks.kitchens, key=lambda entry: entry.line.path in planning):
        first.setdefault(fold(name_of(entry)), entry)
    second: dict[tuple[str, str], Entry] = {}
    for entry in blocks.kitchens:
        path, name = entry.line.path, fold(name_of(entry))
        if path in planning and first[name] is not entry:
            second.setdefault((path, name), entry)
    apart = tuple(second.values())
    return blocks._replace(kitchens=tuple(one for one in blocks.kitchens if one not in apart), for_plans=apart)


def clashing_names(blocks: TopBlocks) -> Iterator[Diagnostic]:
    """A report for each block whose name another of its sort has before it."""
    yield from _same_names(
        (*blocks.formulas, *_named_variants(blocks.formulas), *blocks.preparations, *blocks.assemblies)
    )
    yield from _same_names(blocks.stages)
    yield from _same_names(blocks.kitchens)
    yield from _same_names(blocks.plans)


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
