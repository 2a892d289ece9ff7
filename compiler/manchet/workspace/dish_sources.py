"""What dishes are bound from."""

from __future__ import annotations

from collections.abc import Mapping, Set

from manchet.formula.model import Formula
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.workspace.bound_formula import BoundBlock
from manchet.workspace.house import Kitchens
from manchet.workspace.top_blocks import TopBlocks


class DishSources(NamedTuple):
    """`only` are the paths whose dishes are bound, None for all; `named` is the kitchen asked for, "" for none; `bound` the
    formulas and preparations; `unread` the headings that could not be read."""

    blocks: TopBlocks
    kitchens: Kitchens
    larder: Larder
    only: frozenset[str] | None
    named: str
    bound: tuple[BoundBlock, ...]
    preparations: Mapping[str, Formula]
    """The sound ones, by key."""
    unread: Set[Line]
