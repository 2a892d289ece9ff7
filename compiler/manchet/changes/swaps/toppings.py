"""What touches the bread, swapped too: what is brushed, spread, dusted or greased with.

It is no part of the 100 %, so nothing is made up for it; the weight in the step goes by the same factor.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.changes.rewriting import with_name
from manchet.changes.swaps.lines import SwapKit, times
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, Step
from manchet.larder.ingredient import Ingredient
from manchet.syntax import nodes
from manchet.syntax.clauses import Clause
from manchet.syntax.nodes import Entry


def touched_by(formula: Formula, ingredient: Ingredient) -> tuple[str, ...]:
    """The verbs of the steps in which it touches the bread: `brush`, `grease`."""
    return tuple(dict.fromkeys(step.verb for step in formula.steps if _is_it(step, ingredient)))


def _is_it(step: Step, ingredient: Ingredient) -> bool:
    applied = step.applied
    return applied is not None and applied.ingredient is not None and applied.ingredient.name == ingredient.name


def touching(entry: Entry, out: Ingredient, new: str, factor: Fraction, bench: SwapKit) -> Entry:
    """The lines with the steps that use it written for the other ingredient."""
    off = fold(out.name)

    def exchange_of(clause: Clause) -> Clause:
        if not isinstance(clause, nodes.AppliedClause) or bench.key(clause.name.text) != off:
            return clause
        amount = None if clause.amount is None else times(clause.amount, factor)
        return clause._replace(name=with_name(clause.name, new), amount=amount)

    children = tuple(touching(child, out, new, factor, bench) for child in entry.children)
    node = entry.node
    if isinstance(node, nodes.StepNode | nodes.ClauseLine):
        node = node._replace(clauses=tuple(exchange_of(clause) for clause in node.clauses))
    return entry._replace(node=node, children=children)
