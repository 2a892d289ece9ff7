"""The batch that makes what is wanted today."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.batching import batch_of
from manchet.batch.model import Batch
from manchet.batch.order import Order
from manchet.batch.pieces import PieceWeights
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.lookup import made_of_nothing, makes_called, overall_called
from manchet.formula.model import Formula, Makes, Way
from manchet.formula.nouns import singular
from manchet.kitchen.model import Kitchen
from manchet.larder.densities import weight_of_one
from manchet.quantities.printing import mass_text
from manchet.records import NamedTuple

NOTHING = Fraction(0)


def size_batch(formula: Formula, order: Order, kitchen: Kitchen) -> Outcome[Batch | None]:
    """The batch for an order; None, with the reason, where it cannot be made.

    By pieces, piece weight, dough, flour, tins, or what there is of one ingredient.
    """
    if formula.dish and (order.flour is not None or order.piece_grams is not None or order.tin):
        message = f"{formula.name} is a dish: it is made by the {singular(formula.makes[0].noun)}"
        return Outcome(None, (report("made-by-the-plate", formula.place, message, "say how many with `--pieces 12`"),))
    sizing = _Sizing(PieceWeights(formula, kitchen), order)
    makes, reports = sizing.makes()
    if makes is None:
        return Outcome(None, reports)
    flour, reports = sizing.flour(makes)
    if flour is None:
        return Outcome(None, reports)
    if flour <= 0:
        return Outcome(None, (made_of_nothing(formula),))
    if order.is_whole:
        written, makes = makes, sizing.as_many_as_it_gives(makes, flour)
        if not formula.preparation and makes and not any(one.number is None or one.number for one in makes):
            return Outcome(None, (sizing.makes_no_piece(written[0], flour),))
    return Outcome(batch_of(formula, flour, kitchen, makes))


class _Sizing(NamedTuple):
    """An order, and the pieces it is for."""

    weights: PieceWeights
    order: Order

    def makes(self) -> Outcome[tuple[Makes, ...] | None]:
        """The file's `makes` lines with what the order says instead."""
        formula, order = self.weights.formula, self.order
        makes = list(formula.makes)
        for number, noun in order.pieces:
            at, reports = makes_called(formula, noun, order.piece_grams is not None)
            if at is None:
                return Outcome(None, reports)
            makes[at] = makes[at]._replace(number=number)
        if order.tin and makes:
            makes[0] = makes[0]._replace(tin=order.tin, state="tin", grams=None, written=None)
        if order.piece_grams is not None and makes:
            grams = order.piece_grams if order.piece_state == "dough" else None
            makes[0] = makes[0]._replace(
                number=makes[0].number or Fraction(1), grams=grams, state=order.piece_state, written=order.piece_grams
            )
        return Outcome(tuple(makes))

    def flour(self, makes: tuple[Makes, ...]) -> Outcome[Fraction | None]:
        """Grams of all flour for the order; or why nobody can say."""
        formula, order, weights = self.weights.formula, self.order, self.weights
        if not formula.dough_share:
            return Outcome(None, (made_of_nothing(formula),))
        if order.flour is not None:
            own = sum((line.share for line in formula.overall if line.is_flour), NOTHING)
            return Outcome(order.flour / own if formula.preparation and own else order.flour)
        if order.dough is not None:
            return Outcome(order.dough / formula.dough_share)
        if order.have is not None and formula.dish:
            from manchet.batch.dish_uses import dish_of_all  # few orders are of a dish by what there is

            return dish_of_all(formula, *order.have, order.have_whole)
        if order.have is not None:
            return _least(formula, *order.have, order.have_whole)
        written, reports = weights.written_flour()
        if reports or (makes == formula.makes and written is not None):
            return Outcome(written, reports)
        flour, reports = weights.flour(makes)
        if reports:
            return Outcome(None, reports)
        if flour is None:
            tin = next(m.tin for m in makes if m.state == "tin")
            return Outcome(None, (unknown_tin(tin, makes[0], weights.kitchen),))
        if formula.way is Way.BY_WEIGHT and written is not None:
            # By weight a file may weigh a little more than its pieces take: four times the pieces is four times that.
            taken = weights.flour(formula.makes).value
            if taken:
                return Outcome(written * flour / taken)
        return Outcome(flour)

    def as_many_as_it_gives(self, makes: tuple[Makes, ...], flour: Fraction) -> tuple[Makes, ...]:
        """How many whole pieces a given dough makes: of one sort as many as it gives, of several in the file's proportion."""
        own = self.weights.formula.own_flour
        is_dish = (
            self.weights.formula.dish
        )  # a plate has its share of what is laid down, whatever that loses in the pan
        dough, written = (flour, own) if is_dish else (self._divided(flour), self.weights.dough(makes).value)
        if not written:
            return makes
        return tuple(
            m if m.number is None else m._replace(number=Fraction((m.number * dough / written).__floor__()))
            for m in makes
        )

    def _divided(self, flour: Fraction) -> Fraction:
        """Grams of dough that come to the scale."""
        formula = self.weights.formula
        return flour * formula.dough_share * (1 - formula.dough_loss)

    def makes_no_piece(self, makes: Makes, flour: Fraction) -> Diagnostic:
        """The report for a dough that is less than one of its pieces."""
        one = self.weights.of_one(makes)
        takes = "" if one is None else f": one takes {mass_text(one)}"
        divided = mass_text(self._divided(flour))
        message = f"{divided} of dough to divide makes no whole {singular(makes.noun) or 'piece'}{takes}"
        return report(
            "makes-no-piece", makes.place, message, "ask for more, or for a smaller one with `--piece-weight`"
        )


def unknown_tin(tin: str, makes: Makes, kitchen: Kitchen) -> Diagnostic:
    """The report for a tin that no kitchen has, or whose volume it does not say."""
    there = [v.name for v in kitchen.vessels if v.word == "tin"]
    near = nearest(fold(tin), [fold(t) for t in there])
    known = any(fold(t) == fold(tin) for t in there)
    what = f"the kitchen does not say what a {tin} holds" if known else f"no tin is called {tin}"
    help = f"did you mean `{near}`? " if near and not known else ""
    help = f"{help}write in the kitchen `tin {tin}` and below it `volume 1900 ml` (weigh the water it holds)"
    fixes = exchange_of(makes.place, tin, next(t for t in there if fold(t) == near)) if near and not known else ()
    return report("unknown-tin", makes.place, what, help, fixes=fixes)


def _least(formula: Formula, name: str, amount: Fraction, whole: bool) -> Outcome[Fraction | None]:
    """Grams of all flour with which so much of an ingredient is used up, in grams or (`whole`) by count."""
    lines, reports = overall_called(formula, name)
    share = sum((line.share for line in lines), NOTHING)
    if reports or not whole:
        return Outcome(None if reports else amount / share, reports)
    ingredient = next((line.ingredient for line in lines if line.ingredient is not None), None)
    one, reports = weight_of_one(ingredient, name, formula.place, f"give the weight of all there is: `{name} 500 g`")
    return Outcome(None if one is None else amount * one / share, reports)
