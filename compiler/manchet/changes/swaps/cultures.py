"""Yeast for a culture by the flour in it, and back: `swap fresh yeast for ripe wheat starter with 20% of all flour`.

How much sour does the work of how much yeast depends on the sour, its ripeness and the hours, and no table holds it. So
the file gives the share: of all flour inside the culture, or the yeast's own. The culture's flour and water are taken
from the formula's, and the water that fresh yeast holds is made up, so flour and water in all stay.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.totals import totals_of
from manchet.changes.rewriting import take_out
from manchet.changes.swaps.fallen import (
    DoughUnits,
    dough_units,
    preferments_living_by,
    rebase,
    takes,
    with_more,
    without_stages,
)
from manchet.changes.swaps.lines import (
    PERCENT,
    SwapKit,
    figure_of,
    in_grams,
    join_lines,
    largest,
    line_of,
    replace_line,
    with_figure,
)
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.block import is_dough
from manchet.formula.model import Booking, Formula, Stage, Swapped, Way
from manchet.formula.percents import percent
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

SOURCE = "the share the swap gives; flour and water of the culture are part of the formula's"


class LeavenedLines(NamedTuple):
    """A formula's lines after the swap, and what it came to."""

    formula: Entry
    swapped: Swapped


def culture_for_yeast(
    formula: Entry,
    before: Formula,
    swap: nodes.Swap,
    line: Line,
    yeast: Ingredient,
    culture: Ingredient,
    bench: SwapKit,
) -> Outcome[LeavenedLines | None]:
    """Take the yeast out, and put as much culture into the dough as holds the share of flour the swap gives."""
    poured = bench.larder.poured(culture)
    if swap.share is None or not poured.flour:
        return _asks(swap, line, "20%", "so much of the flour is then in the culture")
    flour = (swap.share.low or Fraction(0)) / 100
    if not 0 < flour < 1:
        return _no_share(swap, line, flour, "20%", "so much of the flour is then in the culture")
    share = flour / poured.flour
    off_share = _there(before, yeast)
    of_yeast = off_share * bench.larder.poured(yeast).water
    water = share * poured.water - of_yeast
    flours = _booked(before, culture, share, bench)
    if flours is None:
        return _by_hand(swap, line, _lacking(before, culture, share, bench))
    gone = preferments_living_by(before, yeast)
    children = without_stages(formula.children, gone, before, yeast, bench)
    children = take_out(children, bench.key(yeast.name), bench.key)
    at = next(n for n, child in enumerate(children) if is_dough(child))
    counted = flours[0][0] if bench.key(flours[0][0]) != bench.key(poured.flours[0].name) else ""
    how = dough_units(before)
    lines = _taken_off(list(children[at].children), (*flours, ("water", water)), how, bench)
    if isinstance(lines, str):
        return _by_hand(swap, line, lines)
    lines = [_counted(line_of(children[at], swap.on.text, share * how.of_one, how.unit, how.basis), counted), *lines]
    children[at] = rebase(children[at]._replace(children=tuple(lines)), before, bench)
    children = _in_overall(children, of_yeast, bench)
    moved = (*((name, -less) for name, less in flours), ("water", -water))
    said = _said(gone, yeast)
    made = Swapped(
        yeast.name, culture.name, share / off_share, off_share, moved, SOURCE, said, line.place(), flour, True
    )
    return Outcome(LeavenedLines(formula._replace(children=tuple(children)), made))


def yeast_for_culture(
    formula: Entry,
    before: Formula,
    swap: nodes.Swap,
    line: Line,
    culture: Ingredient,
    yeast: Ingredient,
    bench: SwapKit,
) -> Outcome[LeavenedLines | None]:
    """Take a culture out of the dough, give its flour and water back to the formula's, and put in the share of yeast."""
    if swap.share is None:
        return _asks(swap, line, "1%", f"so much {yeast.name} of all flour")
    share = (swap.share.low or Fraction(0)) / 100
    if not 0 < share < 1:
        return _no_share(swap, line, share, "1%", f"so much {yeast.name} of all flour")
    gone = preferments_living_by(before, culture)
    children = without_stages(formula.children, gone, before, culture, bench)
    children = take_out(children, bench.key(culture.name), bench.key)
    poured = bench.larder.poured(culture)
    counted = [
        (p, stage.reaching * p.share)
        for stage in before.stages
        for p in stage.portions
        if p.ingredient is not None and p.ingredient.name == culture.name and p.booking is Booking.COUNTED
    ]
    much = sum((grams for _, grams in counted), Fraction(0))
    made_up = _there(before, culture) * poured.water - share * bench.larder.poured(yeast).water
    made_up -= _with_flour_apart(before, culture, bench)
    given_back = [
        (name, each * grams)
        for p, grams in counted
        for name, each in (
            [(p.counted_as, poured.flour)] if p.counted_as else [(f.name, f.share) for f in poured.flours]
        )
    ]
    given_back.append(("water", much * poured.water + made_up))
    children = [_given_back(child, given_back, before, bench) for child in children]
    if not all(_can_be(child) for child in children):
        return _by_hand(swap, line, f"the dough itself weighs too little water to take that of the {yeast.name} from")
    children = _in_overall(children, made_up, bench)
    if before.way is Way.OVERALL:
        children = [_with_yeast(child, swap.on.text, share * 100) for child in children]
    else:
        how = dough_units(before)
        children = [_on_top(child, line_of(child, swap.on.text, share * how.of_one, how.unit)) for child in children]
    children = [rebase(_joined(child, bench), before, bench) for child in children]
    gains = (("flour", much * poured.flour), ("water", much * poured.water + made_up))
    moved = tuple((name, grams) for name, grams in gains if grams)
    taken = sum(
        (
            stage.reaching * portion.share
            for stage in before.stages
            for portion in stage.portions
            if portion.ingredient is not None and portion.ingredient.name == culture.name
        ),
        Fraction(0),
    )
    said = _said(gone, culture)
    made = Swapped(culture.name, yeast.name, share / taken, taken, moved, SOURCE, said, line.place(), share)
    return Outcome(LeavenedLines(formula._replace(children=tuple(children)), made))


def _there(before: Formula, leaven: Ingredient) -> Fraction:
    """What overall has of it as a line of its own: a yeast, a culture that is counted apart."""
    return sum((o.share for o in before.overall if o.ingredient and o.ingredient.name == leaven.name), Fraction(0))


def _with_flour_apart(before: Formula, culture: Ingredient, bench: SwapKit) -> Fraction:
    """Water that goes with the flour in a culture counted apart, which leaves the bread with it: so water in all stays."""
    totals = totals_of(before, bench.larder)
    flour = _there(before, culture) * bench.larder.poured(culture).flour
    return totals.water_in_all * flour


def _in_overall(children: Sequence[Entry], more: Fraction, bench: SwapKit) -> list[Entry]:
    """The lines with so much more water in overall, a share of all flour; as they are where nothing is written there."""
    found = []
    for child in children:
        if isinstance(child.node, nodes.OverallHead) and more:
            lines = _changed(list(child.children), "water", more * 100, bench)
            if lines is None and more > 0:
                lines = [*child.children, line_of(child, "water", more * 100, PERCENT)]
            child = child if lines is None else child._replace(children=tuple(lines))
        found.append(child)
    return found


def _can_be(entry: Entry) -> bool:
    """Whether no line of the dough has come to weigh less than nothing."""
    lines = entry.children if is_dough(entry) else ()
    return all(figure_of(line) >= 0 for line in lines if isinstance(line.node, nodes.MaterialNode))


def _said(gone: Sequence[Stage], leaven: Ingredient) -> str:
    """What falls away, and that the waits are still the other leaven's: no rule turns hours into hours."""
    names = " and ".join(stage.name or stage.word for stage in gone)
    one = len(gone) == 1
    falls = f"the {names} fall{'s' if one else ''} away, what was in {'it' if one else 'them'} goes into the dough; "
    return f"{falls if gone else ''}the waits are those written for {leaven.name}: go by the look"


def _with_yeast(entry: Entry, name: str, percent: Fraction) -> Entry:
    """Overall with the yeast; the dough with all of it, unless it takes everything else."""
    if isinstance(entry.node, nodes.OverallHead):
        return entry._replace(children=(*entry.children, line_of(entry, name, percent, PERCENT)))
    if is_dough(entry) and not any(isinstance(child.node, nodes.EverythingElse) for child in entry.children):
        taken = Entry(entry.line, nodes.TakeAll(nodes.Word(name, 0, len(entry.line.body))))
        return entry._replace(children=(taken, *entry.children))
    return entry


def _joined(entry: Entry, bench: SwapKit) -> Entry:
    """Overall or the dough with the yeast that was there already and what has come as one line; any other line as it is."""
    if not isinstance(entry.node, nodes.OverallHead) and not is_dough(entry):
        return entry
    return entry._replace(children=tuple(join_lines(entry.children, bench)))


def _on_top(entry: Entry, line: Entry) -> Entry:
    """The dough with one line more; any other line as it is."""
    return entry._replace(children=(line, *entry.children)) if is_dough(entry) else entry


def _given_back(entry: Entry, back: Sequence[tuple[str, Fraction]], before: Formula, bench: SwapKit) -> Entry:
    """The dough with a culture's flour and water in its own lines; any other line as it is."""
    if not is_dough(entry):
        return entry
    lines = list(entry.children)
    for name, share in back:
        lines = with_more(lines, entry, name, share, dough_units(before), bench)
    return entry._replace(children=tuple(lines))


def _taken_off(
    lines: list[Entry], less: Sequence[tuple[str, Fraction]], how: DoughUnits, bench: SwapKit
) -> list[Entry] | str:
    """The dough's lines without what a culture brings, where they do not take what is left; why not, where they cannot."""
    for name, share in less:
        if any(takes(line, bench.key(name), bench) for line in lines):
            continue
        taken = _changed(lines, name, -share * how.of_one, bench)
        if taken is None:
            return f"the dough itself weighs too little {name} to take the culture's from"
        lines = taken
    return lines


def _changed(lines: list[Entry], name: str, more: Fraction, bench: SwapKit) -> list[Entry] | None:
    """The lines with so much more in the largest line of an ingredient; None where it has none, or too little."""
    target = largest(lines, lambda node: bench.key(node.name.text) == bench.key(name))
    if target is None:
        return None
    weighed = in_grams(target, bench)
    left = figure_of(weighed) + more
    return None if left < 0 else replace_line(lines, target, with_figure(weighed, left))


def _booked(before: Formula, culture: Ingredient, share: Fraction, bench: SwapKit) -> list[tuple[str, Fraction]] | None:
    """Of which of the formula's flours the culture's own are a part, and how much of each; None where it has not so much.

    Of the same flour; else, for a culture on one flour, of the formula's largest of that class.
    """
    there = {bench.key(o.ingredient.name): o for o in before.overall if o.is_flour and o.ingredient is not None}
    inside = [(flour.name, flour.share * share) for flour in bench.larder.poured(culture).flours]
    if all(bench.key(name) in there and there[bench.key(name)].share >= much for name, much in inside):
        return inside
    known = bench.larder.ingredient(inside[0][0])
    alike = [o for o in there.values() if o.ingredient and known and o.ingredient.class_ == known.class_]
    main = max(alike, key=lambda o: o.share, default=None)
    if len(inside) > 1 or main is None or main.share < inside[0][1]:
        return None
    return [(main.name, inside[0][1])]


def _lacking(before: Formula, culture: Ingredient, share: Fraction, bench: SwapKit) -> str:
    """Which flour of the culture the formula has not, or not so much of."""
    there = {bench.key(o.ingredient.name): o.share for o in before.overall if o.is_flour and o.ingredient is not None}
    name, wanted = next(
        (flour.name, flour.share * share)
        for flour in bench.larder.poured(culture).flours
        if there.get(bench.key(flour.name), 0) < flour.share * share
    )
    has = there.get(bench.key(name))
    said = "none of it" if has is None else f"only {percent(has)} of it"
    return f"it would bring {percent(wanted)} {name}, and {before.name} has {said}"


def _counted(entry: Entry, flour: str) -> Entry:
    """The culture's line, its flour counted as another of the formula's ("" for as it is)."""
    assert isinstance(entry.node, nodes.MaterialNode)
    if not flour:
        return entry
    word = nodes.Word(flour, 0, len(entry.line.body))
    return entry._replace(node=entry.node._replace(booking="as", counted_as=word))


def _asks(swap: nodes.Swap, line: Line, figure: str, meaning: str) -> Outcome[LeavenedLines | None]:
    message = f"no rule says how much {swap.on.text} does the work of {swap.off.text}: it depends on the hours"
    help = f"say how much: `swap {swap.off.text} for {swap.on.text} with {figure} of all flour`; {meaning}"
    return Outcome(None, (report("swap-asks", line.place(), message, help),))


def _no_share(
    swap: nodes.Swap, line: Line, share: Fraction, figure: str, meaning: str
) -> Outcome[LeavenedLines | None]:
    assert swap.share is not None
    message = f"{percent(share)} is not a share of all flour that can be {swap.on.text}: it has to be more than 0% and less than 100%"
    help = f"say how much: `swap {swap.off.text} for {swap.on.text} with {figure} of all flour`; {meaning}"
    place = line.place(swap.share.start, swap.share.end)
    return Outcome(None, (report("swap-asks", place, message, help),))


def _by_hand(swap: nodes.Swap, line: Line, why: str) -> Outcome[LeavenedLines | None]:
    message = f"{swap.off.text} cannot be swapped for {swap.on.text} by rule: {why}"
    help = "write the stages that differ in the `variant`, whole, under their headings"
    return Outcome(None, (report("swap-by-hand", line.place(), message, help),))
