"""The batch that makes what is wanted today."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from manchet.batch.batching import batch_of
from manchet.batch.model import Batch
from manchet.batch.order import Order
from manchet.batch.pieces import PieceWeights
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import error
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.model import Formula, Makes, Way
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen

NOTHING = Fraction(0)


def sized(formula: Formula, order: Order, kitchen: Kitchen) -> Outcome[Batch | None]:
    """The batch for an order; None, with the reason, where it cannot be made.

    By pieces, piece weight, dough, flour, tins, or what there is of one ingredient.
    """
    sizing = _Sizing(PieceWeights(formula, kitchen), order)
    makes = sizing.makes()
    if isinstance(makes, Diagnostic):
        return Outcome(None, (makes,))
    flour = sizing.flour(makes)
    if isinstance(flour, Diagnostic):
        return Outcome(None, (flour,))
    if flour <= 0:
        return Outcome(None, (_nothing(formula),))
    if order.is_whole:
        makes = sizing.as_many_as_it_gives(makes, flour)
    return Outcome(batch_of(formula, flour, kitchen, makes))


class _Sizing(NamedTuple):
    """An order, and the pieces it is for."""

    weights: PieceWeights
    order: Order

    def makes(self) -> tuple[Makes, ...] | Diagnostic:
        """The file's `makes` lines with what the order says instead."""
        formula, order = self.weights.formula, self.order
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

    def flour(self, makes: tuple[Makes, ...]) -> Fraction | Diagnostic:
        """Grams of all flour for the order; or why nobody can say."""
        formula, order, weights = self.weights.formula, self.order, self.weights
        if order.flour is not None:
            return order.flour
        if order.dough is not None:
            return order.dough / formula.dough_share
        if order.have is not None:
            return _least(formula, *order.have, order.have_whole)
        written = weights.written_flour()
        if isinstance(written, Diagnostic) or (makes == formula.makes and written is not None):
            return written
        flour = weights.flour(makes)
        if isinstance(flour, Diagnostic):
            return flour
        if flour is None:
            tin = next(m.tin for m in makes if m.state == "tin")
            return unknown_tin(tin, makes[0], weights.kitchen)
        if formula.way is Way.BY_WEIGHT and written is not None:
            # By weight a file may weigh a little more than its pieces take: four times the pieces is four times that.
            taken = weights.flour(formula.makes)
            if isinstance(taken, Fraction) and taken:
                return written * flour / taken
        return flour

    def as_many_as_it_gives(self, makes: tuple[Makes, ...], flour: Fraction) -> tuple[Makes, ...]:
        """How many whole pieces a given dough makes: of one sort as many as it gives, of several in the file's proportion."""
        formula = self.weights.formula
        dough = flour * formula.dough_share * (1 - formula.dough_loss)
        written = self.weights.dough(makes)
        if not isinstance(written, Fraction) or not written:
            return makes
        return tuple(
            m if m.number is None else m._replace(number=Fraction((m.number * dough / written).__floor__()))
            for m in makes
        )


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


def unknown_tin(tin: str, makes: Makes, kitchen: Kitchen) -> Diagnostic:
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


def _nothing(formula: Formula) -> Diagnostic:
    return error("no-weight", formula.place, f"{formula.name} cannot be made of nothing", "ask for more than 0")
