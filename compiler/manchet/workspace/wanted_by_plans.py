"""Which files the plans of a bakery draw on, told by headings and text alone, before anything is parsed.

A plan draws on each formula that it names, on the standing orders, and on the plan that it is like. A name that only stands in
a remark counts too, which says too much and never too little.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Set

from manchet.diagnostics.suggest import fold
from manchet.syntax.block import PLANNED, Block
from manchet.workspace.raw_files import Raw

MOST_WORDS = 16
"""Of a name."""


def has_plans(file: Raw) -> bool:
    """Whether plans or orders stand in it."""
    return not PLANNED.isdisjoint(file.words)


def names_of_formulas(files: Iterable[Raw]) -> Iterator[tuple[str, str]]:
    """The name of each formula, variant and preparation, and its path."""
    return ((name, file.path) for file in files for name in file.names)


def wanted_by_plans(files: Iterable[Raw], asked: Set[str] | None) -> frozenset[str]:
    """The files that the plans and orders of those asked for draw on; none where these have no plan."""
    every = tuple(files)
    planning = [file for file in every if has_plans(file)]
    if not any(asked is None or file.path in asked for file in planning):
        return frozenset()
    known: dict[str, set[str]] = {}
    for name, path in names_of_formulas(every):
        known.setdefault(fold(name), set()).add(path)
    named = (
        path for file in planning for block in file.blocks for name in _named_in(block) for path in known.get(name, ())
    )
    return frozenset((*named, *(file.path for file in planning)))


def _named_in(block: Block) -> Iterator[str]:
    """What the lines of a plan or an order may begin with, folded."""
    if block.word in PLANNED:
        for row in block.text.split("\n")[1:]:
            words = fold(row.replace('"', " ")).split()
            for size in range(1, min(len(words), MOST_WORDS) + 1):
                yield " ".join(words[:size]).rstrip(",")


def second_kitchens(files: Iterable[Raw]) -> frozenset[tuple[str, int]]:
    """The path and line of each kitchen that holds for the plans of its file alone; see `top_blocks`."""
    with_one = (file for file in files if "kitchen" in file.words)
    kitchens = [(file, block) for file in with_one for block in file.blocks if block.word == "kitchen"]
    first: dict[str, tuple[str, int]] = {}
    for file, block in sorted(kitchens, key=lambda one: _is_planning(one[0])):
        first.setdefault(fold(block.name), (file.path, block.line))
    found: dict[tuple[str, str], tuple[str, int]] = {}
    for file, block in kitchens:
        place = file.path, block.line
        if _is_planning(file) and first[fold(block.name)] != place:
            found.setdefault((file.path, fold(block.name)), place)
    return frozenset(found.values())


def _is_planning(file: Raw) -> bool:
    return "plan" in file.words
