"""The files that dishes draw on: where the breads, preparations and dishes stand that their lines name."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Set

from manchet.diagnostics.suggest import fold
from manchet.syntax.block import Block
from manchet.workspace.raw_files import Raw
from manchet.workspace.wanted_by_plans import MOST_WORDS, names_of_formulas

DISH = "assembly"


def has_dishes(file: Raw) -> bool:
    return DISH in file.words


def wanted_by_dishes(files: Iterable[Raw], asked: Set[str] | None) -> frozenset[str]:
    """The files that the dishes of those asked for draw on, and the dishes in these; none where these have no dish."""
    every = tuple(files)
    serving = {file.path: file for file in every if has_dishes(file)}
    waiting = [path for path in serving if asked is None or path in asked]
    if not waiting:
        return frozenset()
    known: dict[str, set[str]] = {}
    for name, path in names_of_formulas(every):
        known.setdefault(fold(name), set()).add(path)
    found: set[str] = set()
    while waiting:
        path = waiting.pop()
        named = {
            there
            for block in serving[path].blocks
            if block.word == DISH
            for name in names_in(block)
            for there in known.get(name, ())
        }
        waiting += [there for there in named - found if there in serving]
        found |= named
    return frozenset(found)


def names_in(block: Block) -> Iterator[str]:
    """What the lines of a dish may name, folded: any words that stand together in one of them."""
    for row in block.text.split("\n")[1:]:
        words = fold(row.replace('"', " ").replace(",", " ")).split()
        for start in range(len(words)):
            for end in range(start + 1, min(len(words), start + MOST_WORDS) + 1):
                yield " ".join(words[start:end])
