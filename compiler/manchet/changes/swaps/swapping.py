"""A swap asked for: what is meant by its two names, which rule knows, or why none does."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from manchet.changes.swaps.cultures import culture_for_yeast, yeast_for_culture
from manchet.changes.swaps.exchange import Asking, Asks, Exchange
from manchet.changes.swaps.lines import SwapKit
from manchet.changes.swaps.liquids import within_reach
from manchet.changes.swaps.made_up import Swapping
from manchet.changes.swaps.rules import YEASTS, exchange, instead_of
from manchet.changes.swaps.toppings import touched_by, touching
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import one_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, Swapped, Way
from manchet.formula.naming import Names
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

NOTHING = Fraction(0)


class SwappedLines(NamedTuple):
    """A formula's lines after a swap, the stages it shares with others after it, and what the swap came to."""

    formula: Entry
    shared: Mapping[str, Entry]
    swapped: Swapped


def swap_ingredient(
    formula: Entry,
    shared: Mapping[str, Entry],
    before: Formula,
    swap: nodes.Swap,
    line: Line,
    bench: SwapKit,
    earlier: Sequence[Swapped] = (),
) -> Outcome[SwappedLines | None]:
    """Swap one ingredient for another. `before` is the formula as bound without it; `line` is where the swap stands;
    `earlier` are the swaps already made in it.

    None with one report where there is nothing to swap, or no rule knows how.
    """
    names = Names({}, {}, bench.larder)
    off, reports = names.look_up(swap.off, line)
    if off is None:
        return Outcome(None, reports)
    assert off.ingredient is not None
    out = off.ingredient
    share = share_of(before, out)
    if not share and not touched_by(before, out) and not _worked_in(before, out):
        took = next((made for made in earlier if made.off == out.name), None)
        return Outcome(None, (_not_there(before, swap, line) if took is None else _taken(took, swap, line),))
    on, reports = names.look_up(swap.on, line)
    if on is None:
        return Outcome(None, reports)
    assert on.ingredient is not None
    comes = on.ingredient
    if comes.name == out.name:
        return Outcome(None, (_the_same(swap, line, out),))
    if comes.class_ == "culture" and out.class_ in YEASTS:
        made, reports = culture_for_yeast(formula, before, swap, line, out, comes, bench)
    elif out.class_ == "culture" and comes.class_ in YEASTS:
        made, reports = yeast_for_culture(formula, before, swap, line, out, comes, bench)
    else:
        found = exchange(out, comes, Asking(bench.larder, bench.factors))
        if not isinstance(found, Exchange):
            return Outcome(None, (_no_rule(found, swap, line, out),))
        if not share and not _worked_in(before, out) and not found.touches:
            return Outcome(None, (_not_there(before, swap, line),))
        return _carried(formula, shared, before, swap, line, (out, comes), found, bench)
    return Outcome(None if made is None else SwappedLines(made.formula, shared, made.swapped), reports)


def _carried(
    formula: Entry,
    shared: Mapping[str, Entry],
    before: Formula,
    swap: nodes.Swap,
    line: Line,
    pair: tuple[Ingredient, Ingredient],
    found: Exchange,
    bench: SwapKit,
) -> Outcome[SwappedLines | None]:
    """The swap by an exchange: what is weighed, and what touches the bread."""
    out, comes = pair
    found = within_reach(found, before, out, bench.larder.poured)
    work = Swapping(before, swap, line, out, found, bench)
    lines, reports = work.carried(formula, shared)
    if lines is None:
        return Outcome(None, reports)
    after, drawn = lines
    touches = touched_by(before, out)
    if touches and found.touches:
        after = touching(after, out, swap.on.text, found.factor, bench)
    share = _weighed(before, out)
    moved = tuple((name, grams * share) for name, grams in found.moves if share)
    said = [found.said, *_said_of(touches, found.touches, out)]
    if _worked_in(before, out) and found.moves:
        said.append("for what is worked into a part of the dough nothing is made up")
    made = Swapped(
        out.name, comes.name, found.factor, share, moved, found.source, ", ".join(filter(None, said)), line.place()
    )
    return Outcome(SwappedLines(after, drawn, made))


def _said_of(verbs: tuple[str, ...], follows: bool, out: Ingredient) -> list[str]:
    """What becomes of that which is brushed, spread or dusted on: the same exchange, or it stays."""
    if not verbs:
        return []
    how = " and ".join(f"to {verb}" for verb in verbs)
    return [f"also {how}" if follows else f"{how} it stays {out.name}"]


def share_of(formula: Formula, ingredient: Ingredient) -> Fraction:
    """Grams of it per gram of all flour, in all stages; a counted culture too."""
    in_overall = sum(
        (x.share for x in formula.overall if x.ingredient and x.ingredient.name == ingredient.name), NOTHING
    )
    if in_overall or ingredient.class_ != "culture":
        return in_overall
    portions = (p for stage in formula.stages for p in stage.portions)
    return sum((p.share for p in portions if p.ingredient and p.ingredient.name == ingredient.name), NOTHING)


def _weighed(formula: Formula, ingredient: Ingredient) -> Fraction:
    """Grams of it per gram of all flour that lines of overall weigh, or those of the stages where there is no overall: a
    culture brings flour and water that a swap of flours leaves in the pot."""
    if formula.way is Way.OVERALL:
        return share_of(formula, ingredient)
    portions = ((stage.reaching, p) for stage in formula.stages for p in stage.portions)
    return sum(
        (reaching * p.share for reaching, p in portions if p.ingredient and p.ingredient.name == ingredient.name),
        NOTHING,
    )


def _worked_in(formula: Formula, ingredient: Ingredient) -> bool:
    """Whether a part of the dough gets some of it after it was divided."""
    added = (portion for branch in formula.branches for portion in branch.added)
    return any(p.ingredient is not None and p.ingredient.name == ingredient.name for p in added)


def _not_there(before: Formula, swap: nodes.Swap, line: Line) -> Diagnostic:
    can = [o.name for o in before.overall if o.ingredient is not None and instead_of(o.ingredient)]
    offer = f"what can be swapped here: {', '.join(can)}" if can else "nothing in it can be swapped by a rule"
    place = line.place(swap.off.start, swap.off.end)
    message = f"there is no {swap.off.text} in {before.name} to swap"
    wanted = fold(swap.on.text)
    by_rule = [o.name for o in before.overall if o.ingredient and wanted in map(fold, instead_of(o.ingredient))]
    return report("swap-not-there", place, message, offer, fixes=one_of(place, by_rule))


def _taken(took: Swapped, swap: nodes.Swap, line: Line) -> Diagnostic:
    place = line.place(swap.off.start, swap.off.end)
    message = f"there is no {took.off} left to swap: `swap {took.off} for {took.on}` before it took all of it"
    help = f"keep one of the two, or go on from it: `swap {took.on} for …`"
    return report("swap-taken-before", place, message, help, fixes=one_of(place, [took.on]))


def _the_same(swap: nodes.Swap, line: Line, out: Ingredient) -> Diagnostic:
    place = line.place(swap.on.start, swap.on.end)
    other = "" if swap.on.text == swap.off.text else f" (in the larder both are {out.name})"
    message = f"{swap.on.text} is the same as {swap.off.text}{other}: nothing would be swapped"
    can = instead_of(out)
    offer = f"{out.name} can be swapped for {', '.join(can)}" if can else "leave the swap out"
    return report("swap-unknown", place, message, offer, fixes=one_of(place, can))


def _no_rule(found: Asks | None, swap: nodes.Swap, line: Line, out: Ingredient) -> Diagnostic:
    if found is not None:
        return report("swap-asks", line.place(), found.lacks, found.instead)
    can = instead_of(out)
    offer = f"{out.name} can be swapped for {', '.join(can)}; " if can else ""
    place = line.place(swap.on.start, swap.on.end)
    message = f"no rule says how much {swap.on.text} takes the place of {swap.off.text}"
    help = f"{offer}else write the lines that differ in a `variant`"
    return report("swap-unknown", place, message, help, fixes=one_of(place, can))
