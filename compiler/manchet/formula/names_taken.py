"""What the lines of a block name, before anything is looked up."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.suggest import fold
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry


def names_taken(block: Entry) -> Iterator[str]:
    """The folded names on the lines of a dish or a formula, and each without its last words: `causeway` of `causeway rolls`."""
    for entry in all_lines(block):
        node = entry.node
        for one in node.clauses if isinstance(node, nodes.StepNode) else (node,):
            if isinstance(one, nodes.MaterialNode | nodes.AppliedClause):
                words = fold(one.name.text).split(" ")
                yield from (" ".join(words[:end]) for end in range(len(words), 0, -1))


def all_lines(block: Entry) -> Iterator[Entry]:
    """Every line under a heading, in the order of the file."""
    for entry in block.children:
        yield entry
        yield from all_lines(entry)
