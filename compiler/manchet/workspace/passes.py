"""The way through, written once: what is done with some texts, in this order, until a bakery is read, and then checked.

Each pass takes what the passes before it found and adds to it. `python -m manchet.workspace.passes` prints them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, TypeVar

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.formula.changed import OPTION
from manchet.formula.model import Formula
from manchet.larder.book import Larder, builtin
from manchet.records import NamedTuple
from manchet.source.merge_marks import UNMERGED
from manchet.source.text import Line, SourceText
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry, File
from manchet.syntax.parser import parse
from manchet.workspace.bound_formula import BoundBlock, bind_block, known_preparations
from manchet.workspace.changes import NO_CHANGES, Changes
from manchet.workspace.dish_sources import DishSources
from manchet.workspace.faults import kept_to
from manchet.workspace.house import (
    Around,
    Kitchens,
    kitchens_of,
    larder_of,
    mistakes_in_shared,
    offered_by,
)
from manchet.workspace.memory import Memory
from manchet.workspace.top_blocks import TopBlocks, blocks_of, clashing_names, put_together

if TYPE_CHECKING:
    from manchet.changes.waits import Refused
    from manchet.day.said import Plan
    from manchet.larder.stocktake import Stock
    from manchet.workspace.plans import PlanSources

T = TypeVar("T")


class ReadSoFar(NamedTuple):
    """A bakery on its way: what is asked, and what the passes so far have found.

    `only` names the paths whose formulas are bound; the others serve with their larders, kitchens, shared stages and
    preparations. `kitchen` is the one to judge by, the nearest if "". `changes` are carried out in every formula bound.
    """

    sources: tuple[SourceText, ...]
    larder: Larder
    only: frozenset[str] | None = None
    kitchen: str = ""
    changes: Changes = NO_CHANGES
    parsed: tuple[ParsedFile, ...] = ()
    blocks: TopBlocks = TopBlocks()
    kitchens: Kitchens = Kitchens()
    stock: Stock | None = None
    bound: tuple[BoundBlock, ...] = ()
    plans: tuple[Plan, ...] = ()
    names: frozenset[str] = frozenset()
    """Of all formulas, those in files that are not read too: one of them may be meant by a plan."""
    reports: tuple[Diagnostic, ...] = ()

    def reporting(self, reports: Iterable[Diagnostic]) -> ReadSoFar:
        return self._replace(reports=(*self.reports, *reports))

    def formulas(self) -> Iterator[Formula]:
        """The sound ones, preparations too."""
        for block in self.bound:
            for one in block.formulas:
                if one.is_sound and one.formula is not None:
                    yield one.formula

    def refused(self) -> tuple[Refused, ...]:
        """Waits asked for that no formula could be given, and why: no mistake of a file."""
        if not self.changes.names and any(formula.moved for formula in self.formulas()):
            return ()  # a wait that one of several formulas has was not asked of the others
        return tuple(refused for block in self.bound for one in block.formulas for refused in one.refused)


class ParsedFile(NamedTuple):
    """The tree of a file, its blocks, and what is wrong with its lines."""

    file: File
    blocks: TopBlocks
    unread: frozenset[Line]
    """The headings that could not be read; of a half-finished merge, all of them."""
    reports: tuple[Diagnostic, ...]


def parse_texts(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """Each text becomes lines, each line is read by itself, and indentation makes a tree of them."""
    parsed = tuple(parsed_file(source, memory) for source in reading.sources)
    return reading._replace(parsed=parsed).reporting(one for each in parsed for one in each.reports)


def sort_blocks(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """The blocks are sorted by what they are, and names that two of them claim are reported."""
    blocks = put_together(each.blocks for each in reading.parsed)
    return reading._replace(blocks=blocks).reporting(clashing_names(blocks))


def fill_larder(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """The house's own ingredients go on top of the built-in larder."""
    entries = reading.blocks.larders
    larder, reports = memory.answer(
        "larder", entries, lambda: _shared(entries, "larder", lambda: larder_of(entries), builtin())
    )
    return reading._replace(larder=larder).reporting(reports)


def count_stock(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """The stocktakes are read; the newest counts."""
    blocks = reading.blocks.stocks
    if not blocks:
        return reading

    def counted() -> Outcome[Stock | None]:
        from manchet.larder.stocktake import newest_stock  # few bakeries have one

        return newest_stock(blocks, reading.larder)

    stock, reports = memory.answer("stock", (blocks, reading.larder), lambda: _shared(blocks, "stock", counted, None))
    return reading._replace(stock=stock).reporting(reports)


def equip_kitchens(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """The kitchens are read, with their ovens, mixers and tins."""
    entries = reading.blocks.kitchens
    over = reading.blocks.for_plans
    kitchens, reports = memory.answer(
        "kitchens", (entries, over), lambda: _shared(entries, "kitchen", lambda: kitchens_of(entries, over), Kitchens())
    )
    return reading._replace(kitchens=kitchens).reporting(reports)


def judge_shared_stages(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """Each stage that stands by itself is judged once, before any formula draws on it."""
    stages = reading.blocks.stages
    measures = reading.kitchens.nearest("", reading.kitchen).measures
    offered = offered_by(reading.blocks, reading.larder, measures)
    inputs = (stages, reading.larder, offered.preparations, measures)

    def mistakes() -> Outcome[None]:
        return Outcome(None, tuple(mistakes_in_shared(stages, offered)))

    return reading.reporting(
        memory.answer("stages", inputs, lambda: _shared(stages, "stage", mistakes, None)).diagnostics
    )


def bind_formulas(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """Variants are rewritten, swaps and waits carried out, names bound, shares resolved, the balance closed."""
    offered = offered_by(reading.blocks, reading.larder, "")
    unread = {line for each in reading.parsed for line in each.unread}
    names = {key: entry.node for key, entry in offered.shared.items()}
    made_by = (reading.blocks.preparations, reading.kitchens.all)
    preparations: dict[str, Formula] = {}
    bound = []
    numbers: dict[str, int] = {}
    drawn = _drawn_by_dishes(reading)
    for block in reading.blocks.formulas + reading.blocks.preparations:
        path = block.line.path
        numbers[path] = number = numbers.get(path, 0) + 1
        is_preparation = isinstance(block.node, nodes.BlockHead) and block.node.word == "preparation"
        if not (reading.only is None or path in reading.only or is_preparation or (path, block.line.number) in drawn):
            continue
        kitchen = reading.kitchens.nearest(path, reading.kitchen)
        around = Around(kitchen, offered._replace(measures=kitchen.measures), preparations, made_by)
        is_unread = block.line in unread
        bound.append(
            memory.answer(
                ("formula", path, number),
                (block, is_unread, kitchen, reading.larder, names, offered.preparations, reading.changes),
                lambda block=block, around=around, is_unread=is_unread: bind_block(  # type: ignore[misc]
                    block, around, reading.changes, is_unread
                ),
                lambda made: (
                    made.made_by in (None, made_by)
                    and all(offered.shared.get(key) == entry for key, entry in made.drawn.items())
                ),
            )
        )
    reading = reading._replace(bound=tuple(bound))
    preparations |= known_preparations(reading.formulas())
    return reading.reporting(one for block in bound for one in block.reading())


def bind_dishes(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """Dishes are bound, each after what it is built on: slices and pieces get their weights."""
    if not reading.blocks.assemblies:
        return reading
    from manchet.workspace.dishes import bind_dishes_of  # few bakeries have one

    sources = DishSources(
        reading.blocks,
        reading.kitchens,
        reading.larder,
        reading.only,
        reading.kitchen,
        reading.bound,
        known_preparations(reading.formulas()),
        frozenset(line for each in reading.parsed for line in each.unread),
    )
    bound, reports = bind_dishes_of(sources, memory)
    reading = reading._replace(bound=(*reading.bound, *bound)).reporting(reports)
    return reading.reporting(one for block in bound for one in block.reading())


def _drawn_by_dishes(reading: ReadSoFar) -> frozenset[tuple[str, int]]:
    """Path and line of the formulas in files that are not asked for and that dishes in those asked for are built on."""
    if reading.only is None or not reading.blocks.assemblies:
        return frozenset()
    from manchet.workspace.dishes import drawn_on_by_dishes  # few bakeries have one

    return drawn_on_by_dishes(reading.blocks, reading.only)


def look_for_swaps(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """A swap asked for of all formulas, of which none had anything, is reported."""
    changes = reading.changes
    if not changes.swaps or changes.names:
        return reading
    from manchet.changes.swaps import binding as swaps

    made = [one.place for formula in reading.formulas() for one in formula.swapped]
    done = {fold(place.text) for place in [*made, *(one.place for one in reading.reports)] if place.path == OPTION}
    asked = (swaps.swap_asked_for(text) for text in changes.swaps)
    return reading.reporting(swaps.nowhere(one) for one in asked if one is not None and fold(one.line.raw) not in done)


def read_plans(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """Plans and orders are read, each plan in its kitchen and for its day."""
    telling = (*reading.blocks.plans, *reading.blocks.orders)
    asked = [one for one in telling if reading.only is None or one.line.path in reading.only]
    if not asked:
        return reading
    from manchet.workspace.plans import plans_of  # few bakeries have one

    sources = plan_sources(reading)
    first = asked[0].line.place()
    broke_off = "the plans and orders could not be read to the end"
    plans, reports = kept_to(
        first, broke_off, lambda: plans_of(sources), lambda fault: Outcome(tuple[Plan, ...](), (fault,))
    )
    return reading._replace(plans=plans).reporting(reports)


def plan_sources(reading: ReadSoFar) -> PlanSources:
    """What plans are read from."""
    from manchet.workspace.plans import PlanSources

    return PlanSources(reading.blocks, reading.kitchens, reading.larder, reading.only, reading.kitchen, reading.names)


def check_formulas(reading: ReadSoFar, memory: Memory) -> ReadSoFar:
    """Each sound formula is sized as its file says, and the checks look it over in its kitchen."""
    return reading.reporting(one for block in reading.bound for one in block.checking())


Pass = Callable[[ReadSoFar, Memory], ReadSoFar]

READING: tuple[Pass, ...] = (
    parse_texts,
    sort_blocks,
    fill_larder,
    count_stock,
    equip_kitchens,
    judge_shared_stages,
    bind_formulas,
    bind_dishes,
    look_for_swaps,
    read_plans,
)
"""From texts to formulas and plans. Figures, turns at an oven and posted cards need no more."""

CHECKING: tuple[Pass, ...] = (check_formulas,)
"""From formulas to what a baker would look over."""


def run_passes(reading: ReadSoFar, passes: Iterable[Pass], memory: Memory) -> ReadSoFar:
    for one in passes:
        reading = one(reading, memory)
    return reading


def _shared(entries: Sequence[Entry], what: str, read: Callable[[], Outcome[T]], nothing: T) -> Outcome[T]:
    """What `read` makes of the larders, kitchens or stages that all formulas share; `nothing`, where it breaks off."""
    if not entries:
        return read()
    broke_off = f"this {what} and others could not be read to the end"
    return kept_to(entries[0].line.place(), broke_off, read, lambda fault: Outcome(nothing, (fault,)))


def parsed_file(source: SourceText, memory: Memory) -> ParsedFile:
    """A text as it is parsed, once for the same text."""
    return memory.answer(("file", source.path), source, lambda: _parse(source))


def _parse(source: SourceText) -> ParsedFile:
    broke_off = "this file could not be read to the end"
    place = Place(source.path, 1, 1, 1, 1)
    nothing = ParsedFile(File(source.path, (), ()), TopBlocks(), frozenset(), ())
    return kept_to(place, broke_off, lambda: _parsed(source), lambda fault: nothing._replace(reports=(fault,)))


def _parsed(source: SourceText) -> ParsedFile:
    file, reports = parse(source)
    unmerged = any(one.name == UNMERGED for one in reports)
    unread = frozenset(entry.line for entry in file.entries if unmerged or isinstance(entry.node, nodes.Unread))
    return ParsedFile(file, blocks_of(file), unread, reports)


def list_of_passes() -> str:
    """The passes, a line each."""
    every = [
        *((one, "reading") for one in READING),
        *((one, "checking") for one in CHECKING),
    ]
    return "\n".join(f"{kind:<9} {one.__name__:<20} {one.__doc__}" for one, kind in every)


if __name__ == "__main__":
    print(list_of_passes())
