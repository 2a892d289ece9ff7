"""The dishes of a bakery: in which order they are bound, and on what."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from manchet.batch.finished import parts_of, unsound_part
from manchet.batch.pieces import PieceWeights
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.formula.names_taken import names_taken
from manchet.formula.order_of_work import circle, users_last
from manchet.formula.parts import DishPart, Parts
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.parsed_headings import name_of
from manchet.workspace.bound_formula import BoundBlock, bind_block
from manchet.workspace.changes import NO_CHANGES
from manchet.workspace.dish_sources import DishSources
from manchet.workspace.house import Around, offered_by
from manchet.workspace.memory import Memory
from manchet.workspace.top_blocks import TopBlocks


def bind_dishes_of(sources: DishSources, memory: Memory) -> Outcome[tuple[BoundBlock, ...]]:
    """The dishes that are asked for and those they are built on, each after what it takes. One that is built on itself is
    reported, and none of its circle is bound."""
    dishes = {fold(name_of(block)): block for block in _wanted(sources.blocks, sources.only)}
    uses = {key: tuple(one for one in names_taken(block) if one in dishes) for key, block in dishes.items()}
    reports = []
    while (order := users_last(uses)) is None:
        going_round = circle(uses)[:-1]
        reports.append(_circle(dishes[going_round[0]], [name_of(dishes[key]) for key in going_round]))
        uses = {
            key: tuple(u for u in used if u not in going_round) for key, used in uses.items() if key not in going_round
        }
    made = {part.key: (part, formula) for block in sources.bound for part, formula in _parts_of_block(block)}
    bound: list[BoundBlock] = []
    for key in order:
        dish = _bind(dishes[key], sources, made, memory)
        bound.append(dish)
        made |= {part.key: (part, formula) for part, formula in _parts_of_block(dish)}
    return Outcome(tuple(bound), tuple(reports))


def _bind(
    block: Entry, sources: DishSources, made: Mapping[str, tuple[DishPart, Formula | None]], memory: Memory
) -> BoundBlock:
    path = block.line.path
    kitchen = sources.kitchens.nearest(path, sources.named)
    named = set(names_taken(block))
    taken = [(part, formula) for part, formula in made.values() if part.key in named or part.formula in named]
    own = Parts(tuple(part for part, _ in taken))
    known = {**sources.preparations, **{part.key: formula for part, formula in taken if formula is not None}}
    offered = offered_by(sources.blocks, sources.larder, kitchen.measures)._replace(parts=own)
    is_unread = block.line in sources.unread
    around = Around(kitchen, offered, known, own)
    return memory.answer(
        ("dish", path, block.line.number),
        (block, is_unread, kitchen, sources.larder, offered, tuple(known.values())),
        lambda: bind_block(block, around, NO_CHANGES, is_unread),
    )


def drawn_on_by_dishes(blocks: TopBlocks, only: frozenset[str]) -> frozenset[tuple[str, int]]:
    """Path and line of the formulas that the dishes in some files are built on."""
    named = {name for dish in _wanted(blocks, only) for name in names_taken(dish)}
    drawn = (block.line for block in blocks.formulas if any(name in named for name in _names_of(block)))
    return frozenset((line.path, line.number) for line in drawn)


def _names_of(block: Entry) -> Iterator[str]:
    from manchet.changes.variants import full_name, variants_of

    yield fold(name_of(block))
    yield from (fold(full_name(block, variant)) for variant in variants_of(block))


def _wanted(blocks: TopBlocks, only: frozenset[str] | None) -> tuple[Entry, ...]:
    """The dishes in some files, and those that they are built on."""
    known = {fold(name_of(block)): block for block in reversed(blocks.assemblies)}
    waiting = [key for key, block in known.items() if only is None or block.line.path in only]
    found: dict[str, Entry] = {}
    while waiting:
        key = waiting.pop()
        if key not in found:
            found[key] = known[key]
            waiting += [name for name in names_taken(known[key]) if name in known]
    return tuple(block for block in blocks.assemblies if found.get(fold(name_of(block))) is block)


def _parts_of_block(block: BoundBlock) -> Iterator[tuple[DishPart, Formula | None]]:
    """What a block and its variants offer to a dish, and the formula of each; None of one with mistakes."""
    for one in block.formulas:
        if one.formula is not None and one.is_sound:
            yield from ((part, one.formula) for part in parts_of(PieceWeights(one.formula, one.around.kitchen)))
        else:
            head = one.written.block.node
            is_bread = isinstance(head, nodes.BlockHead) and head.word == "formula"
            yield unsound_part(name_of(one.written.block), is_bread), None


def _circle(block: Entry, names: list[str]) -> Diagnostic:
    if len(names) == 1:
        message = f"{names[0]} is built on itself"
    else:
        message = f"these dishes go round in a circle: {' is built on '.join((*names, names[0]))}"
    return report("dishes-in-a-circle", block.line.place(), message, "leave out one of the lines")
