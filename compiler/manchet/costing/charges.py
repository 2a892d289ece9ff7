"""What is weighed for a batch and has to be paid for, ingredient by ingredient, with where each goes in.

What comes out of a pot was paid for when it was mixed, so it is not charged again; what is mixed for the pot is charged here,
since the stage that feeds it is weighed so much larger. What is lost, trimmed or left over has been weighed, and is charged.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.order import Order
from manchet.batch.parts_needed import PartNeeded, parts_needed
from manchet.batch.pieces import branch_additions
from manchet.batch.preparations_needed import preparations_needed, touching
from manchet.batch.work import Work, work_of
from manchet.diagnostics.suggest import fold
from manchet.figures.baths import amount_of, boiled_in, dipped_into
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple

NOTHING = Fraction(0)
TOUCHING = "touching"
"""Where what touches the pieces goes, and is no dough."""


class Charge(NamedTuple):
    """So many grams of one ingredient, as weighed. `where` is the name of the stage or preparation it goes into, or TOUCHING."""

    ingredient: Ingredient
    where: str
    grams: Fraction
    noun: str = ""
    """The pieces it is for, where it is for one sort alone."""


class Spare(NamedTuple):
    """Of what is charged, so much becomes no bread: `what` is made and is left over, grams of it and the share of its cost."""

    what: str
    grams: Fraction
    """Finished, as it is left: of a bread its slices. 0 where nobody knows what one weighs."""
    share: Fraction


class Charges(NamedTuple):
    lines: tuple[Charge, ...]
    from_pot: Fraction = NOTHING
    """Grams of culture that come from a pot, and are not charged."""
    spare: tuple[Spare, ...] = ()
    """What is left of baths, made larger than the bread takes up."""


def own_charges(work: Work) -> Charges:
    """What is weighed in the stages of a work and onto its pieces, preparations left out."""
    lines: list[Charge] = []
    pot = NOTHING
    for made in work.batch.stages:
        for weighed in made.weighed:
            ingredient = weighed.portion.ingredient
            if ingredient is None:
                continue
            if ingredient.class_ == "culture":
                pot += weighed.grams
            else:
                lines.append(Charge(ingredient, made.stage.name, weighed.grams))
    for branch in work.formula.branches:
        for portion, grams in branch_additions(branch, work.batch):
            if portion.ingredient is not None:
                lines.append(Charge(portion.ingredient, work.dough.stage.name, grams, branch.noun))
    for applied, grams in touching(work.batch):
        if applied.ingredient is not None and not applied.stage:
            lines.append(Charge(applied.ingredient, TOUCHING, grams))
    return Charges(tuple(line for line in lines if line.grams), pot)


def charges_of(work: Work) -> Charges:
    """The same with the preparations it draws on, in the amount that it takes of them; of a bath, all that has to be made."""
    return _with_preparations(work, frozenset({fold(work.formula.name)}))


def _with_preparations(work: Work, above: frozenset[str]) -> Charges:
    own = own_charges(work)
    lines, pot, spare = [*own.lines], own.from_pot, [*own.spare]
    for name, made, over in (*baked_for(work, above), *_prepared(work, above)):
        inside = _with_preparations(made, above | {fold(name)})
        lines += (line._replace(where=name, noun="") for line in inside.lines)
        pot += inside.from_pot
        if over.share:
            spare.append(over)
        spare += inside.spare
    return Charges(tuple(lines), pot, tuple(spare))


def baked_for(work: Work, above: frozenset[str] = frozenset()) -> Iterator[tuple[str, Work, Spare]]:
    """Each bread or dish that a dish is built on, in whole pieces; and what of them is over: slices of the last loaf."""
    for one in parts_needed(work.batch):
        formula = work.preparations.get(one.part.key)
        if formula is None or formula.preparation or one.pieces is None or one.part.formula in above:
            continue
        pieces = Fraction(one.pieces)
        order = Order(pieces=((pieces, one.part.noun),))
        sized = work_of(formula, order, work.kitchen, work.larder, work.preparations).value
        if sized is not None:
            in_all = pieces * (one.counted.a_piece if one.counted is not None else one.part.grams or 1)
            taken = one.number if one.number is not None else one.grams
            yield formula.name, sized, Spare(formula.name, _over(one, pieces), 1 - taken / in_all)


def _over(needed: PartNeeded, pieces: Fraction) -> Fraction:
    """Grams of finished bread that are over; 0 where nobody knows what one weighs."""
    if needed.counted is not None:
        return needed.over * needed.counted.grams if needed.counted.known else NOTHING
    return NOTHING if needed.part.grams is None else pieces * needed.part.grams - needed.grams


def _prepared(work: Work, above: frozenset[str]) -> Iterator[tuple[str, Work, Spare]]:
    """Each preparation that a work draws on, at the size that is made of it for this work alone; and what of it is left
    over."""
    dipped, boiled = dipped_into(work.batch), boiled_in(work.batch)
    for key, wanted in preparations_needed(work.batch).items():
        formula = work.preparations.get(key)
        if formula is None or not formula.preparation or key in above:
            continue
        written = work_of(formula, Order(), work.kitchen, work.larder, work.preparations).value
        kettle = written.batch.dough if written is not None and key in boiled else NOTHING
        made = amount_of(formula, wanted, key in dipped, kettle)
        sized = work_of(formula, Order(dough=made.grams), work.kitchen, work.larder, work.preparations).value
        if sized is not None and made.grams:
            share = max(1 - wanted / sized.batch.dough, NOTHING)
            yield formula.name, sized, Spare(formula.name, sized.batch.dough * share, share)
