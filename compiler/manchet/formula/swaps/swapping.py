"""A swap carried out in the lines of a formula: what comes in, what goes out, what is made up and where.

Total flour, water in all and salt stay as they are, unless the rule says otherwise. What is made up goes into the water (or
salt) of the stage the swapped line stands in; where the dough takes what is left, overall alone has to change.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import NamedTuple

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, Swapped
from manchet.formula.naming import Names
from manchet.formula.rewriting import called, renamed, taken_out
from manchet.formula.swaps.cultures import culture_for_yeast, yeast_for_culture
from manchet.formula.swaps.exchange import Asking, Asks, Exchange
from manchet.formula.swaps.lines import (
    ALL_FLOUR,
    GRAMS,
    PERCENT,
    Bench,
    figure_of,
    grams_of,
    is_dough,
    joined,
    largest,
    line_of,
    replaced,
    times,
    with_figure,
)
from manchet.formula.swaps.rules import YEASTS, exchange, instead_of
from manchet.larder.ingredient import Ingredient
from manchet.outcome import Outcome
from manchet.quantities.printing import decimal
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

NOTHING = Fraction(0)


class Carried(NamedTuple):
    """A formula's lines after a swap, the stages it shares with others after it, and what the swap came to."""

    formula: Entry
    shared: Mapping[str, Entry]
    swapped: Swapped


def swapped(
    formula: Entry, shared: Mapping[str, Entry], before: Formula, swap: nodes.Swap, line: Line, bench: Bench
) -> Outcome[Carried | None]:
    """Swap one ingredient for another. `before` is the formula as bound without it; `line` is where the swap stands.

    None with one report where there is nothing to swap, or no rule knows how.
    """
    names = Names({}, {}, bench.larder)
    off, on = names.look_up(swap.off, line), names.look_up(swap.on, line)
    if isinstance(off, Diagnostic):
        return Outcome(None, (off,))
    if isinstance(on, Diagnostic):
        return Outcome(None, (on,))
    assert off.ingredient is not None and on.ingredient is not None
    out, comes = off.ingredient, on.ingredient
    share = share_of(before, out)
    if not share:
        return Outcome(None, (_not_there(before, swap, line),))
    if comes.class_ == "culture" and out.class_ in YEASTS:
        made = culture_for_yeast(formula, before, swap, line, out, comes, bench)
    elif out.class_ == "culture" and comes.class_ in YEASTS:
        made = yeast_for_culture(formula, before, swap, line, out, comes, bench)
    else:
        found = exchange(out, comes, Asking(bench.larder, bench.factors))
        if not isinstance(found, Exchange):
            return Outcome(None, (_no_rule(found, swap, line, out),))
        work = _Swapping(formula, shared, before, swap, line, out, comes, found, bench)
        return work.carried(share)
    if isinstance(made, Diagnostic):
        return Outcome(None, (made,))
    return Outcome(Carried(made[0], shared, made[1]))


def share_of(formula: Formula, ingredient: Ingredient) -> Fraction:
    """Grams of it per gram of all flour, in all stages; a counted culture too."""
    in_overall = sum(
        (x.share for x in formula.overall if x.ingredient and x.ingredient.name == ingredient.name), NOTHING
    )
    if in_overall or ingredient.class_ != "culture":
        return in_overall
    portions = (p for stage in formula.stages for p in stage.portions)
    return sum((p.share for p in portions if p.ingredient and p.ingredient.name == ingredient.name), NOTHING)


def _not_there(before: Formula, swap: nodes.Swap, line: Line) -> Diagnostic:
    can = [o.name for o in before.overall if o.ingredient is not None and instead_of(o.ingredient)]
    offer = f"what can be swapped here: {', '.join(can)}" if can else "nothing in it can be swapped by a rule"
    place = line.place(swap.off.start, swap.off.end)
    return error("swap-not-there", place, f"there is no {swap.off.text} in {before.name} to swap", offer)


def _no_rule(found: Asks | None, swap: nodes.Swap, line: Line, out: Ingredient) -> Diagnostic:
    if found is not None:
        return error("swap-asks", line.place(), found.lacks, found.instead)
    can = instead_of(out)
    offer = f"{out.name} can be swapped for {', '.join(can)}; " if can else ""
    place = line.place(swap.on.start, swap.on.end)
    message = f"no rule says how much {swap.on.text} takes the place of {swap.off.text}"
    return error("swap-unknown", place, message, f"{offer}else write the lines that differ in a `variant`")


class _Swapping:
    """One swap by a rule, under way."""

    def __init__(
        self, formula: Entry, shared: Mapping[str, Entry], before: Formula, swap: nodes.Swap, line: Line,
        out: Ingredient, comes: Ingredient, found: Exchange, bench: Bench,
    ) -> None:  # fmt: skip
        self.formula, self.shared, self.before, self.swap, self.line = formula, shared, before, swap, line
        self.out, self.comes, self.found, self.bench = out, comes, found, bench
        self.off = fold(out.name)
        self.by_overall = any(isinstance(child.node, nodes.OverallHead) for child in formula.children)
        self.asked: dict[str, Fraction] = {}
        """What overall moves, by name, in per cent of all flour."""
        self.placed: dict[str, Fraction] = {}
        """What of that the stages' own lines have taken."""
        self.emptied: list[str] = []
        self.short: Diagnostic | None = None

    def carried(self, share: Fraction) -> Outcome[Carried | None]:
        children = [self._heading(child) for child in self.formula.children]
        drawn = {stage.key for stage in self.before.stages if stage.shared}
        shared = {key: self._heading(entry) if key in drawn else entry for key, entry in self.shared.items()}
        for name in self.asked:
            children = self._settle(children, shared, name)
        for name in self.emptied:
            children = taken_out(children, self.bench.key(name), self.bench.key)
        if self.short is not None:
            return Outcome(None, (self.short,))
        found = self.found
        moved = tuple((name, grams * share) for name, grams in found.moves)
        place = self.line.place()
        made = Swapped(self.out.name, self.comes.name, found.factor, share, moved, found.source, found.said, place)
        return Outcome(Carried(self.formula._replace(children=tuple(children)), shared, made))

    # ---- lines -----------------------------------------------------------------------------------

    def _heading(self, entry: Entry) -> Entry:
        """The lines under `overall` or a stage, rewritten; any other line as it is."""
        if not isinstance(entry.node, nodes.OverallHead | nodes.StageHead):
            return entry
        there = [self._in_grams(child) for child in entry.children if self._is_off(child)]
        lines = renamed(entry.children, self.off, self.bench.key, self._material, self._part, self.swap.on.text)
        lines = tuple(joined(lines, self.bench))
        for name, per_gram in self.found.moves:
            for line in there:
                lines = tuple(self._made_up(list(lines), line, name, figure_of(line) * per_gram, entry))
        return entry._replace(children=lines)

    def _is_off(self, entry: Entry) -> bool:
        return isinstance(entry.node, nodes.Material) and self.bench.key(entry.node.name.text) == self.off

    def _in_grams(self, entry: Entry) -> Entry:
        assert isinstance(entry.node, nodes.Material)
        amount = grams_of(entry.node.amount, self.bench.larder.ingredient(entry.node.name.text), entry, self.bench)
        return entry._replace(node=entry.node._replace(amount=amount))

    def _material(self, entry: Entry) -> Entry:
        weighed = self._in_grams(entry).node
        assert isinstance(weighed, nodes.Material)
        name = called(weighed.name, self.swap.on.text)
        return entry._replace(node=weighed._replace(name=name, amount=times(weighed.amount, self.found.factor)))

    def _part(self, part: nodes.Part) -> nodes.Part:
        name = called(part.name, self.swap.on.text)
        if part.amount is None:
            return part._replace(name=name)
        here = Entry(self.line, nodes.BareName(part.name))
        amount = grams_of(part.amount, self.out, here, self.bench)
        return part._replace(name=name, amount=times(amount, self.found.factor))

    # ---- what is made up ---------------------------------------------------------------------------

    def _made_up(self, lines: list[Entry], off: Entry, name: str, more: Fraction, heading: Entry) -> list[Entry]:
        """The lines of a heading with `more` of water or salt, in the unit and of the base of the line swapped."""
        node = off.node
        assert isinstance(node, nodes.Material)
        unit, basis = node.amount.unit, node.basis
        in_overall = isinstance(heading.node, nodes.OverallHead)
        if in_overall:
            self.asked[name] = self.asked.get(name, NOTHING) + more
        share = self._share(heading) if self.by_overall else None
        target = self._target(lines, name, unit, basis)
        if target is None:
            if self.by_overall and not in_overall:
                return lines  # the dough, or whoever takes what is left, gets it
            if more < 0:
                self._falls_short(name, -more, unit)
                return lines
            at = next((n for n, line in enumerate(lines) if line.line is off.line), len(lines) - 1)
            return [*lines[: at + 1], line_of(off, name, more, unit, basis), *lines[at + 1 :]]
        assert isinstance(target.node, nodes.Material)
        changed = more * _of_all(basis, share) / _of_all(target.node.basis, share)
        if self.by_overall and not in_overall:
            self.placed[name] = self.placed.get(name, NOTHING) + more * _of_all(basis, share)
        return self._changed(lines, target, name, changed, in_overall)

    def _changed(self, lines: list[Entry], target: Entry, name: str, more: Fraction, in_overall: bool) -> list[Entry]:
        weighed = self._in_grams(target)
        assert isinstance(weighed.node, nodes.Material)
        left = figure_of(weighed) + more
        if left < 0:
            self._falls_short(name, -more, weighed.node.amount.unit)
        if left == 0 and in_overall:
            self.emptied.append(name)
        return replaced(lines, target, with_figure(weighed, left) if left > 0 else None)

    def _target(self, lines: list[Entry], name: str, unit: str, basis: str) -> Entry | None:
        def fits(node: nodes.Material) -> bool:
            known = self.bench.larder.ingredient(node.name.text)
            same_unit = (node.amount.unit == PERCENT) == (unit == PERCENT)
            same_basis = node.basis == basis or (self.by_overall and {node.basis, basis} <= {"", ALL_FLOUR})
            return known is not None and known.class_ == name and same_unit and same_basis

        return largest(lines, fits)

    def _share(self, heading: Entry) -> Fraction | None:
        share = heading.node.share if isinstance(heading.node, nodes.StageHead) else None
        return None if share is None else (share.low or NOTHING) / 100

    def _settle(self, children: list[Entry], shared: Mapping[str, Entry], name: str) -> list[Entry]:
        """Where no stage takes what is left of overall, the dough's own line takes what no stage has taken yet."""
        left = self.asked[name] - self.placed.get(name, NOTHING)
        headings = [*children, *shared.values()]
        if not left or any(self._takes_the_rest(line, name) for entry in headings for line in entry.children):
            return children
        for at, entry in enumerate(children):
            if is_dough(entry):
                lines = list(entry.children)
                target = self._target(lines, name, PERCENT, ALL_FLOUR)
                if target is None:
                    lines.insert(0, line_of(entry, name, left, PERCENT, ALL_FLOUR))
                    if left < 0:
                        self._falls_short(name, -left, PERCENT)
                else:
                    assert isinstance(target.node, nodes.Material)
                    more = left / _of_all(target.node.basis, self._share(entry))
                    lines = self._changed(lines, target, name, more, False)
                children[at] = entry._replace(children=tuple(lines))
        return children

    def _takes_the_rest(self, entry: Entry, name: str) -> bool:
        match entry.node:
            case nodes.EverythingElse():
                return True
            case nodes.TakeAll(word, _) | nodes.TakeLeft(word, _):
                known = self.bench.larder.ingredient(word.text)
                return known is not None and known.class_ == name
            case _:
                return False

    def _falls_short(self, name: str, wanted: Fraction, unit: str) -> None:
        figure = f"{decimal(wanted, 2)} {PERCENT}" if unit == PERCENT else f"{decimal(wanted, 1)} {GRAMS}"
        self.short = error(
            "swap-short", self.line.place(),
            f"{self.swap.on.text} for {self.swap.off.text} takes {figure} of {name} off, and there is not so much",
            "write the lines that differ in a `variant`, or swap less",
        )  # fmt: skip


def _of_all(basis: str, share: Fraction | None) -> Fraction:
    """What 1 % of a base is of all flour; a heading without a share is itself of all flour."""
    return Fraction(1) if basis == ALL_FLOUR or share is None else share
