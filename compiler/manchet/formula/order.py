"""What is wanted today, and the batch that makes it."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.batching import batch_of, piece_grams
from manchet.formula.crust import dough_for_baked
from manchet.formula.model import Batch, Branch, Formula, Makes, Portion, Way
from manchet.formula.nouns import same_noun
from manchet.larder.kitchen import PLAIN, Kitchen
from manchet.outcome import Outcome

NOTHING = Fraction(0)
ONE = Fraction(1)


class Order(NamedTuple):
    """What is wanted. Nothing said: what the file says. At most one of dough, flour and have."""

    pieces: tuple[tuple[Fraction, str], ...] = ()
    """How many of which noun; a noun of "" means the only (or the first) thing the formula makes."""
    piece_grams: Fraction | None = None
    piece_state: str = "dough"
    """"dough" or "baked"."""
    dough: Fraction | None = None
    """Grams of dough in all, as mixed and finished."""
    flour: Fraction | None = None
    """Grams of all flour."""
    tin: str = ""
    have: tuple[str, Fraction] | None = None
    """The ingredient there is least of, and grams of it, or how many."""
    have_whole: bool = False
    """It is counted, and the larder says what one weighs."""


AS_WRITTEN = Order()


def sized(formula: Formula, order: Order, kitchen: Kitchen) -> Outcome[Batch | None]:
    """The batch for an order; None, with the reason, where it cannot be made.

    By pieces, piece weight, dough, flour, tins, or what there is of one ingredient.
    """
    makes = _wanted(formula, order)
    if isinstance(makes, Diagnostic):
        return Outcome(None, (makes,))
    flour = _flour(formula, order, makes, kitchen)
    if isinstance(flour, Diagnostic):
        return Outcome(None, (flour,))
    if flour <= 0:
        return Outcome(None, (_nothing(formula),))
    whole_order = order.dough is not None or order.flour is not None or order.have is not None
    if whole_order:
        makes = _as_many_as_it_gives(formula, makes, flour, kitchen)
    return Outcome(batch_of(formula, flour, kitchen, makes))


def dough_for_makes(
    formula: Formula, makes: tuple[Makes, ...], kitchen: Kitchen = PLAIN
) -> Fraction | Diagnostic | None:
    """Grams of divided dough that pieces take; None where a tin's volume is not known here.

    What a branch adds after dividing is part of its pieces' weight, not of the dough.
    """
    dough = NOTHING
    for line in makes:
        grams = piece_grams(line, formula, kitchen)
        if grams is None and line.state == "baked":
            return error(
                "no-bake-loss-for-baked-weight", line.place,
                f"{line.noun or 'the bread'}: a baked weight, but the head has no bake loss, and {_what(formula, line)} has "
                "none that could be taken instead",
                "add a line such as `bake loss 13%`, or give the weight as dough",
            )  # fmt: skip
        if grams is None:
            return None
        dough += (ONE if line.number is None else line.number) * grams / (1 + added_after_dividing(formula, line.noun))
    return dough


def _what(formula: Formula, line: Makes) -> str:
    if line.number is None:
        return "bread that is not made by the piece"
    return (
        f"{'an' if formula.kind[:1] in 'aeiou' else 'a'} {formula.kind}" if formula.kind else "a formula without a kind"
    )


def flour_for_makes(
    formula: Formula, makes: tuple[Makes, ...], kitchen: Kitchen = PLAIN
) -> Fraction | Diagnostic | None:
    """Grams of all flour for the pieces a file asks for, its losses made up: divided / (1 - dough loss) / dough share."""
    dough = dough_for_makes(formula, makes, kitchen)
    if dough is None or isinstance(dough, Diagnostic):
        return dough
    return dough / (1 - formula.dough_loss) / formula.dough_share


def dough_span(formula: Formula, makes: tuple[Makes, ...]) -> tuple[Fraction, Fraction] | None:
    """Grams of divided dough that pieces take, least and most; apart only where a baked weight is told by an estimate."""
    spans = [dough_for_baked(formula, line) if line.state == "baked" else None for line in makes]
    ends = []
    for end in range(2):
        dough = dough_for_makes(
            formula,
            tuple(
                line if span is None else line._replace(grams=span[end])
                for line, span in zip(makes, spans, strict=True)
            ),
        )
        if not isinstance(dough, Fraction):
            return None
        ends.append(dough)
    return ends[0], ends[1]


def left_at_the_scale(batch: Batch) -> Fraction:
    """Grams of divided dough beyond what the pieces take; 0 where the batch is not made by the piece."""
    if not batch.pieces:
        return NOTHING
    return batch.divided - sum(
        (p.number * p.grams / (1 + added_after_dividing(batch.formula, p.noun)) for p in batch.pieces), NOTHING
    )


def branch_for(formula: Formula, noun: str) -> Branch | None:
    return next((b for b in formula.branches if not b.noun or same_noun(b.noun, noun)), None)


def added_after_dividing(formula: Formula, noun: str) -> Fraction:
    """What a branch adds to its dough, per gram of it."""
    branch = branch_for(formula, noun)
    return sum((p.share for p in branch.added), NOTHING) if branch else NOTHING


def worked_in(branch: Branch, batch: Batch) -> list[tuple[Portion, Fraction]]:
    """What one sort gets of its own, and grams of it: of the dough alone, for a piece is weighed with it."""
    pieces = sum((p.number * p.grams for p in batch.pieces if same_noun(p.noun, branch.noun)), NOTHING)
    dough = pieces / (1 + sum((portion.share for portion in branch.added), NOTHING))
    return [(portion, portion.share * dough) for portion in branch.added]


def _wanted(formula: Formula, order: Order) -> tuple[Makes, ...] | Diagnostic:
    """The file's `makes` lines with what the order says instead."""
    makes = list(formula.makes)
    for number, noun in order.pieces:
        at = next((i for i, m in enumerate(makes) if not noun or same_noun(m.noun, noun)), None)
        if at is None or (not noun and len(makes) > 1):
            return _which(formula, noun)
        if makes[at].number is None and order.piece_grams is None:
            return error(
                "unknown-noun", formula.place, f"{formula.name} is not made by the piece",
                "give a piece weight too, or the amount as dough or flour",
            )  # fmt: skip
        makes[at] = makes[at]._replace(number=number)
    if order.tin and makes:
        makes[0] = makes[0]._replace(tin=order.tin, state="tin", grams=None, written=None)
    if order.piece_grams is not None and makes:
        grams = order.piece_grams if order.piece_state == "dough" else None
        makes[0] = makes[0]._replace(
            number=makes[0].number or Fraction(1), grams=grams, state=order.piece_state, written=order.piece_grams
        )
    return tuple(makes)


def _which(formula: Formula, noun: str) -> Diagnostic:
    made = [m.noun for m in formula.makes if m.noun]
    if not made:
        return error(
            "unknown-noun",
            formula.place,
            f"{formula.name} makes nothing by the piece",
            "say the amount as dough or flour",
        )
    what = f"{formula.name} makes no {noun}" if noun else f"{formula.name} makes more than one thing"
    return error("unknown-noun", formula.place, what, f"it makes {' and '.join(made)}: say which, as in `24 {made[0]}`")


def _flour(formula: Formula, order: Order, makes: tuple[Makes, ...], kitchen: Kitchen) -> Fraction | Diagnostic:
    if order.flour is not None:
        return order.flour
    if order.dough is not None:
        return order.dough / formula.dough_share
    if order.have is not None:
        return _least(formula, *order.have, order.have_whole)
    if makes == formula.makes and formula.written_flour is not None:
        return formula.written_flour
    flour = flour_for_makes(formula, makes, kitchen)
    if isinstance(flour, Diagnostic):
        return flour
    if formula.way is Way.BY_WEIGHT and flour is not None and formula.written_flour is not None:
        # By weight a file may weigh a little more than its pieces take: four times the pieces is four times that.
        written = flour_for_makes(formula, formula.makes, kitchen)
        if isinstance(written, Fraction) and written:
            return formula.written_flour * flour / written
    if flour is None:
        tin = next(m.tin for m in makes if m.state == "tin")
        return unknown_tin(formula, tin, makes[0], kitchen)
    return flour


def unknown_tin(formula: Formula, tin: str, makes: Makes, kitchen: Kitchen) -> Diagnostic:
    """The report for a tin that no kitchen has, or whose volume it does not say."""
    there = [v.name for v in kitchen.vessels if v.word == "tin"]
    near = nearest(fold(tin), [fold(t) for t in there])
    known = any(fold(t) == fold(tin) for t in there)
    what = f"the kitchen does not say what a {tin} holds" if known else f"no tin is called {tin}"
    help = f"did you mean `{near}`? " if near and not known else ""
    return error(
        "unknown-tin", makes.place, what,
        f"{help}write in the kitchen `tin {tin}` and below it `volume 1900 ml` (weigh the water it holds)",
    )  # fmt: skip


def _least(formula: Formula, name: str, amount: Fraction, whole: bool) -> Fraction | Diagnostic:
    wanted = fold(name)
    lines = [
        line
        for line in formula.overall
        if fold(line.name) == wanted or (line.ingredient is not None and fold(line.ingredient.name) == wanted)
    ]
    share = sum((line.share for line in lines), NOTHING)
    if not share:
        near = nearest(wanted, [fold(line.name) for line in formula.overall])
        return error(
            "unknown-ingredient", formula.place, f"{formula.name} has no {name}",
            f"did you mean {near}?" if near else f"it has {', '.join(dict.fromkeys(line.name for line in formula.overall))}",
        )  # fmt: skip
    if not whole:
        return amount / share
    one = next((line.ingredient.whole for line in lines if line.ingredient is not None), None)
    if one is None:
        return error(
            "weight-of-one-unknown", formula.place, f"the larder does not say what one of {name} weighs",
            f"give the weight of all there is: `{name} 500 g`",
        )  # fmt: skip
    return amount * one / share


def _as_many_as_it_gives(
    formula: Formula, makes: tuple[Makes, ...], flour: Fraction, kitchen: Kitchen
) -> tuple[Makes, ...]:
    """How many whole pieces a given dough makes: of one sort as many as it gives, of several in the file's proportion."""
    dough = flour * formula.dough_share * (1 - formula.dough_loss)
    written = dough_for_makes(formula, makes, kitchen)
    if not isinstance(written, Fraction) or not written:
        return makes
    return tuple(
        m if m.number is None else m._replace(number=Fraction((m.number * dough / written).__floor__())) for m in makes
    )


def _nothing(formula: Formula) -> Diagnostic:
    return error("no-weight", formula.place, f"{formula.name} cannot be made of nothing", "ask for more than 0")
