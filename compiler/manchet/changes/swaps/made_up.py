"""An exchange carried out in the lines of a formula: what comes in, what goes out, what is made up and where.

Total flour, water in all and salt stay as they are, unless the rule says otherwise. What is made up goes into the water (or
salt) of the stage the swapped line stands in, and else into the dough's; where the dough takes what is left, overall alone
has to change.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from manchet.changes.rewriting import rename, take_out, with_name
from manchet.changes.swaps.evened import even_out
from manchet.changes.swaps.exchange import Exchange
from manchet.changes.swaps.lines import (
    ALL_FLOUR,
    GRAMS,
    PERCENT,
    SOAKED,
    SwapKit,
    figure_of,
    grams_of,
    in_grams,
    join_lines,
    largest,
    line_of,
    of_all,
    replace_line,
    times,
    with_figure,
)
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.block import is_dough
from manchet.formula.draft import stage_key
from manchet.formula.model import Booking, Formula, Stage, Way
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import decimal
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

NOTHING = Fraction(0)
LITTLE = Fraction(5, 1000)
"""Of all flour, that a line may come out under nothing and still be none: a powder's milk was rounded there and back."""
WET = Fraction(1, 2)
"""Who takes out a gram and has this much water made up took out a liquid: its stage gets that water, though it weighs none."""

Lines = tuple[Entry, Mapping[str, Entry]]


class Swapping:
    """One swap by an exchange, under way."""

    def __init__(
        self, before: Formula, swap: nodes.Swap, line: Line, out: Ingredient, found: Exchange, bench: SwapKit
    ) -> None:
        self.before, self.swap, self.line = before, swap, line
        self.out, self.found, self.bench = out, found, bench
        self.off = fold(out.name)
        self.by_overall = before.way is Way.OVERALL
        self.stages = {stage.key: stage for stage in before.stages}
        self.asked: dict[str, Fraction] = {}
        """What overall moves, by name, in per cent of all flour."""
        self.placed: dict[str, Fraction] = {}
        """What of that the stages' own lines have taken."""
        self.put: dict[str, Fraction] = {}
        """What the lines of each stage have taken, water and salt together, in shares of all flour."""
        self.base: dict[str, Fraction] = {}
        """By how much what is soaked grows in each stage, in shares of all flour."""
        self.spilled: dict[str, Fraction] = {}
        """What no line of its stage could take and the bread gets, by name, in shares of all flour: the dough's."""
        self.emptied: list[str] = []
        self.short: Diagnostic | None = None

    def carried(self, formula: Entry, shared: Mapping[str, Entry]) -> Outcome[Lines | None]:
        """The formula and the stages it shares, after the swap; a report where more is taken off than there is."""
        children = [self._heading(child) for child in formula.children]
        drawn = {stage.key for stage in self.before.stages if stage.shared}
        after = {key: self._heading(entry) if key in drawn else entry for key, entry in shared.items()}
        for name in self.asked:
            children = self._settle(children, after, name)
        for name, share in self.spilled.items():
            children = [self._into_dough(child, name, share) for child in children]
        for name in self.emptied:
            children = take_out(children, self.bench.key(name), self.bench.key)
        if self.short is not None:
            return Outcome(None, (self.short,))
        grown = {key: (self._grown(stage), self.base.get(key, NOTHING)) for key, stage in self.stages.items()}
        even = even_out(self.before, grown)
        lines = formula._replace(children=tuple(even.heading(child) for child in children))
        return Outcome((lines, {key: even.heading(entry) if key in drawn else entry for key, entry in after.items()}))

    def _grown(self, stage: Stage) -> Fraction:
        """By how much what is weighed into a stage grows, in shares of all flour."""
        return self._share_in(stage.key) * (self.found.factor - 1) + self.put.get(stage.key, NOTHING)

    def _share_in(self, key: str) -> Fraction:
        """What a stage weighs of what is swapped out."""
        return self._shares(key, soaked=True) + self._shares(key, soaked=False)

    def _shares(self, key: str, soaked: bool) -> Fraction:
        stage = self.stages.get(key)
        portions = () if stage is None else stage.portions
        return sum((p.share for p in portions if self._is_out(p.ingredient) and (p.basis == SOAKED) is soaked), NOTHING)

    def _is_out(self, ingredient: Ingredient | None) -> bool:
        return ingredient is not None and ingredient.name == self.out.name

    # ---- lines -----------------------------------------------------------------------------------

    def _heading(self, entry: Entry) -> Entry:
        """The lines under `overall` or a stage, rewritten; any other line as it is."""
        if not isinstance(entry.node, nodes.OverallHead | nodes.StageHead):
            return entry
        there = [in_grams(child, self.bench) for child in entry.children if self._is_off(child)]
        children = tuple(self._booked(child) for child in entry.children)
        lines = list(rename(children, self.off, self.bench.key, self._material, self._part, self.swap.on.text))
        lines = join_lines(lines, self.bench)
        if isinstance(entry.node, nodes.OverallHead):
            for name, per_gram in self.found.moves:
                for line in there:
                    lines = self._made_up_in_overall(lines, line, name, figure_of(line) * per_gram)
            return entry._replace(children=tuple(lines))
        key = stage_key(entry.node)
        self.base[key] = self._shares(key, soaked=False) * (self.found.factor - 1)
        for name, per_gram in self.found.moves:
            for line, share in self._weighed(entry, key, there):
                lines = self._made_up(lines, line, name, per_gram, share, entry)
        return entry._replace(children=tuple(lines))

    def _weighed(self, entry: Entry, key: str, there: Sequence[Entry]) -> Iterator[tuple[Entry, Fraction]]:
        """The lines that weigh what is swapped out, each with its share of all flour.

        `all of the milk` and `what is left of the milk` stand as the per cent of all flour that they come to.
        """
        takes = [
            child
            for child in entry.children
            if isinstance(child.node, nodes.TakeAll | nodes.TakeLeft) and self._names_out(child.node.name)
        ]
        share = self._share_in(key)
        if takes and share:
            yield line_of(takes[0], self.out.name, share * 100, PERCENT, ALL_FLOUR), share
            return
        figures = sum((figure_of(line) for line in there), NOTHING)
        for line in there:
            yield line, share * figure_of(line) / figures if figures else NOTHING

    def _names_out(self, word: nodes.Word) -> bool:
        return self.bench.key(word.text) == self.off

    def _is_off(self, entry: Entry) -> bool:
        return isinstance(entry.node, nodes.MaterialNode) and self._names_out(entry.node.name)

    def _material(self, entry: Entry) -> Entry:
        weighed = in_grams(entry, self.bench).node
        assert isinstance(weighed, nodes.MaterialNode)
        name = with_name(weighed.name, self.swap.on.text)
        return entry._replace(node=weighed._replace(name=name, amount=times(weighed.amount, self.found.factor)))

    def _part(self, part: nodes.Part) -> nodes.Part:
        name = with_name(part.name, self.swap.on.text)
        if part.amount is None:
            return part._replace(name=name)
        here = Entry(self.line, nodes.BareName(part.name))
        amount = grams_of(part.amount, self.out, here, self.bench)
        return part._replace(name=name, amount=times(amount, self.found.factor))

    def _booked(self, entry: Entry) -> Entry:
        """A culture's line: where its flour is a part of the flour that goes, it is now counted under the one that comes."""
        node = entry.node
        if not self.out.counts_as_flour or not isinstance(node, nodes.MaterialNode):
            return entry
        culture = self.bench.larder.ingredient(node.name.text)
        if culture is None or culture.class_ != "culture" or node.booking == "apart":
            return entry
        flours = [flour.name for flour in self.bench.larder.poured(culture).flours]
        under = [node.counted_as.text] if node.counted_as else flours
        stage = (
            p for s in self.before.stages for p in s.portions if p.ingredient and p.ingredient.name == culture.name
        )
        counted = any(p.booking is Booking.COUNTED for p in stage)
        if not counted or len(under) != 1 or self.bench.key(under[0]) != self.off:
            return entry
        word = nodes.Word(self.swap.on.text, 0, len(entry.line.body))
        return entry._replace(node=node._replace(booking="as", counted_as=word))

    # ---- what is made up ---------------------------------------------------------------------------

    def _made_up_in_overall(self, lines: list[Entry], off: Entry, name: str, more: Fraction) -> list[Entry]:
        """Overall with `more` per cent of water or salt."""
        node = off.node
        assert isinstance(node, nodes.MaterialNode)
        self.asked[name] = self.asked.get(name, NOTHING) + more
        target = self._target(lines, name, node.amount.unit, node.basis)
        if target is not None:
            return self._changed(lines, target, name, more, True)
        if more < 0:
            self._falls_short(name, -more, PERCENT)
            return lines
        return _below(lines, off, line_of(off, name, more, node.amount.unit, node.basis))

    def _made_up(
        self, lines: list[Entry], off: Entry, name: str, per_gram: Fraction, share: Fraction, heading: Entry
    ) -> list[Entry]:
        """The lines of a stage with so much water or salt for each gram taken out, in the unit and of the base of the line
        swapped. `share` is that line's of all flour."""
        node = off.node
        assert isinstance(node, nodes.MaterialNode) and isinstance(heading.node, nodes.StageHead)
        more, part = figure_of(off) * per_gram, share * per_gram
        own = self._own_share(heading)
        target = self._target(lines, name, node.amount.unit, node.basis)
        whole = NOTHING
        if target is not None:
            assert isinstance(target.node, nodes.MaterialNode)
            whole = of_all(target.node.basis, own)
            if not whole:
                return lines  # a stage of no flour
            changed = more * of_all(node.basis, own) / whole
            left = figure_of(in_grams(target, self.bench)) + changed
            if left >= 0 or self._is_little(name, -left, target.node.amount.unit):
                self._took(heading, name, node.basis, more, part)
                return self._changed(lines, target, name, changed, False)
        if self.by_overall and any(self._takes_the_rest(line, name) for line in lines):
            return lines
        if more > 0 and (per_gram >= WET or (is_dough(heading) and not self.by_overall)):
            self._took(heading, name, node.basis, more, part)
            return _below(lines, off, line_of(off, name, more, node.amount.unit, node.basis))
        if not self.by_overall:
            reaching = self.stages[stage_key(heading.node)].reaching
            self.spilled[name] = self.spilled.get(name, NOTHING) + part * reaching
        return lines

    def _took(self, heading: Entry, name: str, basis: str, more: Fraction, part: Fraction) -> None:
        """Note what the lines of a stage have taken of what is made up."""
        assert isinstance(heading.node, nodes.StageHead)
        key = stage_key(heading.node)
        self.put[key] = self.put.get(key, NOTHING) + part
        if basis != SOAKED:
            self.base[key] = self.base.get(key, NOTHING) + part
        if self.by_overall:
            taken = part * 100 if basis == SOAKED else more * of_all(basis, self._own_share(heading))
            self.placed[name] = self.placed.get(name, NOTHING) + taken

    def _changed(self, lines: list[Entry], target: Entry, name: str, more: Fraction, in_overall: bool) -> list[Entry]:
        weighed = in_grams(target, self.bench)
        assert isinstance(weighed.node, nodes.MaterialNode)
        left = figure_of(weighed) + more
        if left < 0 and self._is_little(name, -left, weighed.node.amount.unit):
            left = NOTHING
        if left < 0:
            self._falls_short(name, -more, weighed.node.amount.unit)
        if left == 0 and in_overall:
            self.emptied.append(name)
        return replace_line(lines, target, with_figure(weighed, left) if left > 0 else None)

    def _target(self, lines: Sequence[Entry], name: str, unit: str, basis: str) -> Entry | None:
        def fits(node: nodes.MaterialNode) -> bool:
            known = self.bench.larder.ingredient(node.name.text)
            same_unit = (node.amount.unit == PERCENT) == (unit == PERCENT)
            same_basis = node.basis == basis or (self.by_overall and {node.basis, basis} <= {"", ALL_FLOUR})
            return known is not None and name in (known.class_, known.name) and same_unit and same_basis

        return largest(lines, fits)

    def _own_share(self, heading: Entry) -> Fraction | None:
        """The share of all flour that a stage's heading gives, where per cents are of it."""
        if not self.by_overall:
            return None
        share = heading.node.share if isinstance(heading.node, nodes.StageHead) else None
        return None if share is None else (share.low or NOTHING) / 100

    # ---- what no line of a stage has taken -----------------------------------------------------------

    def _settle(self, children: list[Entry], shared: Mapping[str, Entry], name: str) -> list[Entry]:
        """Where no stage takes what is left of overall, the dough's own line takes what no stage has taken yet."""
        left = self.asked[name] - self.placed.get(name, NOTHING)
        headings = [*children, *shared.values()]
        if not left or any(self._takes_the_rest(line, name) for entry in headings for line in entry.children):
            return children
        return [self._into_dough(child, name, left / 100) for child in children]

    def _into_dough(self, entry: Entry, name: str, share: Fraction) -> Entry:
        """The dough with so much more of it, a share of all flour; any other line as it is."""
        if not is_dough(entry) or not share:
            return entry
        unit, figure = self._in_dough(share)
        basis = ALL_FLOUR if self.by_overall else ""
        lines = list(entry.children)
        target = self._target(lines, name, unit, basis)
        if target is None:
            if share < 0:
                self._falls_short(name, -figure, unit)
            return entry._replace(children=(line_of(entry, name, figure, unit, basis), *lines))
        assert isinstance(target.node, nodes.MaterialNode)
        own = self._own_share(entry)
        self.put["dough"] = self.put.get("dough", NOTHING) + share
        lines = self._changed(lines, target, name, figure / of_all(target.node.basis, own), False)
        return entry._replace(children=tuple(lines))

    def _in_dough(self, share: Fraction) -> tuple[str, Fraction]:
        """A share of all flour as the dough's own lines write it."""
        if self.before.way is Way.BY_WEIGHT:
            return GRAMS, share * (self.before.own_flour or NOTHING)
        if self.before.way is Way.OVERALL:
            return PERCENT, share * 100
        own = sum((p.share for p in self.before.dough.portions if p.is_flour and not p.stage), NOTHING)
        return PERCENT, share * 100 / own

    def _takes_the_rest(self, entry: Entry, name: str) -> bool:
        match entry.node:
            case nodes.EverythingElse():
                return True
            case nodes.TakeAll(word, _) | nodes.TakeLeft(word, _):
                known = self.bench.larder.ingredient(word.text)
                return known is not None and name in (known.class_, known.name)
            case _:
                return False

    def _is_little(self, name: str, short: Fraction, unit: str) -> bool:
        """Whether so much less than no water is only what rounding has left over: then none is weighed."""
        flour = self.before.own_flour
        if name != "water":
            return False
        return short < LITTLE * 100 if unit == PERCENT else bool(flour) and short < LITTLE * (flour or NOTHING)

    def _falls_short(self, name: str, wanted: Fraction, unit: str) -> None:
        figure = f"{decimal(wanted, 2)} {PERCENT}" if unit == PERCENT else f"{decimal(wanted, 1)} {GRAMS}"
        off, on = self.swap.off.text, self.swap.on.text
        message = f"{on} for {off} takes {figure} of {name} off, and there is not so much"
        help = f"in a `variant` write the lines that differ: less {on}, or more {name}"
        self.short = report("swap-short", self.line.place(), message, help)


def _below(lines: Sequence[Entry], off: Entry, new: Entry) -> list[Entry]:
    """The lines with a new one under the line that was swapped."""
    at = next((n for n, line in enumerate(lines) if line.line is off.line), len(lines) - 1)
    return [*lines[: at + 1], new, *lines[at + 1 :]]
