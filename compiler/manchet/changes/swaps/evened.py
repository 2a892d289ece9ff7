"""Amounts that lean on what a swap has changed: so much of a stage that now weighs more or less, so much of what is soaked.

A preferment with milk powder for its milk, a butter block with oil for its butter: the stage no longer weighs what it did.
Where its user asks for an amount of it, the amount changes with it, so that the bread gets the same flour of it as before.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.changes.swaps.lines import SOAKED, times
from manchet.diagnostics.suggest import fold
from manchet.formula.draft import stage_key
from manchet.formula.model import Formula, Way
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

NOTHING = Fraction(0)


class EvenedLines(NamedTuple):
    """How many times what it was each stage now weighs, and what is soaked in it."""

    stages: Mapping[str, Fraction]
    soaked: Mapping[str, Fraction]

    def heading(self, entry: Entry) -> Entry:
        """The lines of a stage with the amounts that lean on something changed; any other line as it is."""
        if not isinstance(entry.node, nodes.StageHead):
            return entry
        base = self.soaked.get(stage_key(entry.node), Fraction(1))
        return entry._replace(children=tuple(self._line(child, base) for child in entry.children))

    def _line(self, entry: Entry, base: Fraction) -> Entry:
        node = entry.node
        if not isinstance(node, nodes.MaterialNode):
            return entry
        factor = self.stages.get(fold(node.name.text), Fraction(1))
        if node.basis == SOAKED:
            factor /= base
        return entry if factor == 1 else entry._replace(node=node._replace(amount=times(node.amount, factor)))


def even_out(before: Formula, grown: Mapping[str, tuple[Fraction, Fraction]]) -> EvenedLines:
    """`grown`: by how much each stage, and what is soaked in it, has grown by its own lines, in shares of all flour."""
    stages: dict[str, Fraction] = {}
    soaked: dict[str, Fraction] = {}
    for stage in before.stages:  # each after those it uses
        more, base_more = grown.get(stage.key, (NOTHING, NOTHING))
        base = sum((p.share for p in stage.portions if p.basis != SOAKED), NOTHING)
        total = sum((p.share for p in stage.portions), NOTHING)
        used = sum((p.share * (stages[p.stage] - 1) for p in stage.portions if p.stage in stages), NOTHING)
        if base + base_more + used > 0:
            soaked[stage.key] = (base + base_more + used) / base
        if total:
            stages[stage.key] = (total + more + used) / total
    if before.way is Way.OVERALL:
        stages = {}  # the flour of each is what its heading says, however much it weighs
    return EvenedLines(stages, soaked)
