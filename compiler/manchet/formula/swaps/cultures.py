"""Yeast for a culture by the flour in it, and back: `swap fresh yeast for ripe wheat starter with 20% of all flour`.

How much sour does the work of how much yeast depends on the sour, its ripeness and the hours, and no table holds it. So
the file gives the share: of all flour inside the culture, or the yeast's own. The culture's flour and water are taken
from the formula's, so flour and water in all stay.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error
from manchet.formula.model import Booking, Formula, Portion, Swapped, Way
from manchet.formula.rewriting import taken_out
from manchet.formula.swaps.lines import (
    ALL_FLOUR,
    GRAMS,
    PERCENT,
    Bench,
    figure_of,
    grams_of,
    is_dough,
    largest,
    line_of,
    replaced,
    with_figure,
)
from manchet.larder.ingredient import Ingredient
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry

SOURCE = "the share the swap gives; flour and water of the culture are part of the formula's"
Made = tuple[Entry, Swapped] | Diagnostic


def culture_for_yeast(
    formula: Entry, before: Formula, swap: nodes.Swap, line: Line, yeast: Ingredient, culture: Ingredient, bench: Bench
) -> Made:
    """Take the yeast out, and put as much culture into the dough as holds the share of flour the swap gives."""
    if swap.share is None:
        return _asks(swap, line, "20%", "so much of the flour is then in the culture")
    if before.way is Way.DOUGH_FLOUR:
        return _by_hand(swap, line, "percentages of dough flour change with the flour in a culture")
    poured = bench.larder.poured(culture)
    flour = (swap.share.low or Fraction(0)) / 100
    if not poured.flour or not 0 < flour < 1:
        return _asks(swap, line, "20%", "so much of the flour is then in the culture")
    share, water = flour / poured.flour, flour / poured.flour * poured.water
    flours = _booked(before, culture, share, bench)
    if flours is None:
        return _by_hand(swap, line, f"{before.name} has not so much of the flour that is in it")
    children = taken_out(formula.children, bench.key(yeast.name), bench.key)
    at = next(n for n, child in enumerate(children) if is_dough(child))
    lines = list(children[at].children)
    counted = flours[0][0] if bench.key(flours[0][0]) != bench.key(poured.flours[0].name) else ""
    if before.way is Way.OVERALL:
        if not any(isinstance(child.node, nodes.EverythingElse) for child in lines):
            return _by_hand(
                swap, line, "the dough does not take `everything else`, so its flour and water would not come down"
            )
        lines.insert(0, _counted(line_of(children[at], swap.on.text, share * 100, PERCENT, ALL_FLOUR), counted))
    else:
        grams = before.written_flour or Fraction(0)
        for name, less in (*flours, ("water", water)):
            taken = _changed(lines, name, -less * grams, bench)
            if taken is None:
                return _by_hand(swap, line, f"the dough itself weighs too little {name} to take the culture's from")
            lines = taken
        lines.insert(0, _counted(line_of(children[at], swap.on.text, share * grams, GRAMS), counted))
    children[at] = children[at]._replace(children=tuple(lines))
    off_share = sum((o.share for o in before.overall if o.ingredient and o.ingredient.name == yeast.name), Fraction(0))
    moved = (*((name, -less) for name, less in flours), ("water", -water))
    made = Swapped(yeast.name, culture.name, share / off_share, off_share, moved, SOURCE, "", line.place())
    return formula._replace(children=tuple(children)), made


def yeast_for_culture(
    formula: Entry, before: Formula, swap: nodes.Swap, line: Line, culture: Ingredient, yeast: Ingredient, bench: Bench
) -> Made:
    """Take a culture out of the dough, give its flour and water back to the formula's, and put in the share of yeast."""
    if swap.share is None:
        return _asks(swap, line, "1%", f"so much {yeast.name} of all flour")
    found = [(s, p) for s in before.stages for p in s.portions if p.ingredient and p.ingredient.name == culture.name]
    if len(found) != 1 or found[0][0].key != "dough" or found[0][1].booking is not Booking.COUNTED:
        return _by_hand(swap, line, f"{culture.name} does not go straight into the dough")
    if before.way is Way.DOUGH_FLOUR:
        return _by_hand(swap, line, "percentages of dough flour change with the flour in a culture")
    portion = found[0][1]
    share = (swap.share.low or Fraction(0)) / 100
    children = taken_out(formula.children, bench.key(culture.name), bench.key)
    if before.way is Way.OVERALL:
        children = [_with_yeast(child, swap.on.text, share * 100) for child in children]
    else:
        given = _given_back(children, portion, before, swap.on.text, share, bench)
        if given is None:
            return _by_hand(swap, line, "the dough itself weighs no such flour, or no water, to give the culture's to")
        children = given
    poured = bench.larder.poured(culture)
    moved = (("flour", portion.share * poured.flour), ("water", portion.share * poured.water))
    made = Swapped(culture.name, yeast.name, share / portion.share, portion.share, moved, SOURCE, "", line.place())
    return formula._replace(children=tuple(children)), made


def _with_yeast(entry: Entry, name: str, percent: Fraction) -> Entry:
    """Overall with the yeast; the dough with all of it, unless it takes everything else."""
    if isinstance(entry.node, nodes.OverallHead):
        return entry._replace(children=(*entry.children, line_of(entry, name, percent, PERCENT)))
    if is_dough(entry) and not any(isinstance(child.node, nodes.EverythingElse) for child in entry.children):
        taken = Entry(entry.line, nodes.TakeAll(nodes.Word(name, 0, len(entry.line.body))))
        return entry._replace(children=(taken, *entry.children))
    return entry


def _given_back(
    children: list[Entry], portion: Portion, before: Formula, name: str, share: Fraction, bench: Bench
) -> list[Entry] | None:
    assert portion.ingredient is not None
    grams = before.written_flour or Fraction(0)
    poured = bench.larder.poured(portion.ingredient)
    at = next(n for n, child in enumerate(children) if is_dough(child))
    lines: list[Entry] | None = list(children[at].children)
    flours = [(portion.counted_as, poured.flour)] if portion.counted_as else [(f.name, f.share) for f in poured.flours]
    for what, each in (*flours, ("water", poured.water)):
        lines = None if lines is None else _changed(lines, what, each * portion.share * grams, bench)
    if lines is None:
        return None
    lines.insert(0, line_of(children[at], name, share * grams, GRAMS))
    return [*children[:at], children[at]._replace(children=tuple(lines)), *children[at + 1 :]]


def _changed(lines: list[Entry], name: str, more: Fraction, bench: Bench) -> list[Entry] | None:
    """The lines with so many more grams in the largest line of an ingredient; None where it has none, or too few."""
    target = largest(lines, lambda node: bench.key(node.name.text) == bench.key(name))
    if target is None:
        return None
    assert isinstance(target.node, nodes.Material)
    amount = grams_of(target.node.amount, bench.larder.ingredient(name), target, bench)
    weighed = target._replace(node=target.node._replace(amount=amount))
    left = figure_of(weighed) + more
    return None if left < 0 else replaced(lines, target, with_figure(weighed, left))


def _booked(before: Formula, culture: Ingredient, share: Fraction, bench: Bench) -> list[tuple[str, Fraction]] | None:
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


def _counted(entry: Entry, flour: str) -> Entry:
    """The culture's line, its flour counted as another of the formula's ("" for as it is)."""
    assert isinstance(entry.node, nodes.Material)
    if not flour:
        return entry
    word = nodes.Word(flour, 0, len(entry.line.body))
    return entry._replace(node=entry.node._replace(booking="as", counted_as=word))


def _asks(swap: nodes.Swap, line: Line, figure: str, meaning: str) -> Diagnostic:
    return error(
        "swap-asks", line.place(),
        f"no rule says how much {swap.on.text} does the work of {swap.off.text}: it depends on the hours",
        f"say how much: `swap {swap.off.text} for {swap.on.text} with {figure} of all flour`; {meaning}",
    )  # fmt: skip


def _by_hand(swap: nodes.Swap, line: Line, why: str) -> Diagnostic:
    return error(
        "swap-by-hand", line.place(), f"{swap.off.text} cannot be swapped for {swap.on.text} by rule: {why}",
        "write the stages that differ in the `variant`, whole, under their headings",
    )  # fmt: skip
