"""Preferments that fall away with their leaven: what was weighed into them goes straight into the dough.

Where yeast takes a culture's place there is nothing for a levain to do, and a poolish has no life without its yeast. Their
flour, water and all else stay in the bread.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from fractions import Fraction

from manchet.changes.rewriting import take_out
from manchet.changes.swaps.evened import even_out
from manchet.changes.swaps.lines import (
    ALL_FLOUR,
    GRAMS,
    PERCENT,
    SwapKit,
    figure_of,
    in_grams,
    largest,
    line_of,
    replace_line,
    with_figure,
)
from manchet.diagnostics.suggest import fold
from manchet.formula.block import is_dough
from manchet.formula.draft import stage_key
from manchet.formula.model import Booking, Formula, Stage, Way
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.vocabulary import PREFERMENTS

NOTHING = Fraction(0)


def preferments_living_by(before: Formula, leaven: Ingredient) -> tuple[Stage, ...]:
    """The preferments that live by it: it is weighed into them, or one that is goes into them and no other leaven does."""
    found: dict[str, Stage] = {}
    for stage in before.stages:  # each after those it uses
        if stage.word not in PREFERMENTS:
            continue
        own = any(p.ingredient is not None and p.ingredient.name == leaven.name for p in stage.portions)
        if own or any(p.stage in found for p in stage.portions):
            found[stage.key] = stage
    return tuple(found.values())


def without_stages(
    children: Sequence[Entry], gone: Sequence[Stage], before: Formula, leaven: Ingredient, bench: SwapKit
) -> list[Entry]:
    """The formula's lines without these stages and their leaven, and the dough with what else was in them."""
    keys = {stage.key for stage in gone}
    left = [e for e in children if not (isinstance(e.node, nodes.StageHead) and stage_key(e.node) in keys)]
    for stage in gone:
        left = take_out(left, stage.key, fold)
    left = [_without_return(entry, leaven, bench) for entry in left]
    lighter = {stage.key: -_taken_from(stage, keys, leaven) for stage in before.stages if stage.key not in keys}
    even = even_out(before, {key: (less, less) for key, less in lighter.items()})
    left = [even.heading(entry) for entry in left]
    return [_into_dough(entry, _loose(gone, before, leaven), before, bench) for entry in left]


def _taken_from(stage: Stage, gone: Collection[str], leaven: Ingredient) -> Fraction:
    """What a stage that stays no longer weighs."""
    portions = (p for p in stage.portions if p.stage in gone or (p.ingredient and p.ingredient.name == leaven.name))
    return sum((p.share for p in portions), NOTHING)


def _without_return(entry: Entry, leaven: Ingredient, bench: SwapKit) -> Entry:
    """Nothing of it is left to go back to the pot."""

    def gone(child: Entry) -> bool:
        return isinstance(child.node, nodes.Return) and bench.key(child.node.name.text) == fold(leaven.name)

    return entry._replace(children=tuple(child for child in entry.children if not gone(child)))


def _loose(gone: Sequence[Stage], before: Formula, leaven: Ingredient) -> dict[str, tuple[str, Fraction]]:
    """What was weighed into them, but for the leaven and one another: name and share of all flour."""
    keys = {stage.key for stage in gone}
    found: dict[str, tuple[str, Fraction]] = {}
    for stage in gone:
        for p in stage.portions:
            if p.stage in keys or p.booking is Booking.RETURNED:
                continue
            if p.ingredient is not None and p.ingredient.name == leaven.name:
                continue
            share = p.share * stage.reaching + (found[p.key][1] if p.key in found else NOTHING)
            found[p.key] = (p.name, share)
    return found


class DoughUnits(NamedTuple):
    """How the dough's own lines write something: its unit, the figure that all flour comes to, and its base."""

    unit: str
    of_one: Fraction
    basis: str


def dough_units(before: Formula) -> DoughUnits:
    """In the lines as they stood: the per cents of a dough's own flour are put right by `rebase` when all is in."""
    if before.way is Way.BY_WEIGHT:
        return DoughUnits(GRAMS, before.own_flour or NOTHING, "")
    if before.way is Way.OVERALL:
        return DoughUnits(PERCENT, Fraction(100), ALL_FLOUR)
    own = sum((p.share for p in before.dough.portions if p.is_flour and not p.stage), NOTHING)
    return DoughUnits(PERCENT, 100 / own, "")


def rebase(entry: Entry, before: Formula, bench: SwapKit) -> Entry:
    """The dough in per cent of the flour it now has, where it is written so; any other line as it is."""
    if before.way is not Way.DOUGH_FLOUR or not is_dough(entry):
        return entry
    own = [line for line in entry.children if isinstance(line.node, nodes.MaterialNode) and line.node.basis == ""]
    flour = sum((figure_of(line) for line in own if _is_flour(line, bench)), NOTHING)
    children = (with_figure(line, figure_of(line) * 100 / flour) if line in own else line for line in entry.children)
    return entry._replace(children=tuple(children))


def _is_flour(entry: Entry, bench: SwapKit) -> bool:
    assert isinstance(entry.node, nodes.MaterialNode)
    known = bench.larder.ingredient(entry.node.name.text)
    return entry.node.flour if entry.node.flour is not None else known is not None and known.counts_as_flour


def _into_dough(entry: Entry, loose: Mapping[str, tuple[str, Fraction]], before: Formula, bench: SwapKit) -> Entry:
    """The dough with these among its lines, where it does not take what is left of overall; any other line as it is."""
    if not is_dough(entry):
        return entry
    lines = list(entry.children)
    for name, share in loose.values():
        lines = with_more(lines, entry, name, share, dough_units(before), bench)
    return entry._replace(children=tuple(lines))


def with_more(
    lines: list[Entry], heading: Entry, name: str, share: Fraction, how: DoughUnits, bench: SwapKit
) -> list[Entry]:
    """The dough's lines with so much more of it: in its largest line, or a new one on top; as they are where they take
    what is left of it anyway."""
    if any(takes(line, bench.key(name), bench) for line in lines):
        return lines
    more = share * how.of_one
    target = largest(lines, lambda node: bench.key(node.name.text) == bench.key(name) and node.basis in ("", how.basis))
    if target is None:
        return [line_of(heading, name, more, how.unit, how.basis), *lines]
    weighed = in_grams(target, bench)
    return replace_line(lines, target, with_figure(weighed, figure_of(weighed) + more))


def takes(entry: Entry, key: str, bench: SwapKit) -> bool:
    """Whether a line takes what is left of it in overall."""
    match entry.node:
        case nodes.EverythingElse():
            return True
        case nodes.TakeAll(word, _) | nodes.TakeLeft(word, _):
            return bench.key(word.text) == key
        case _:
            return False
