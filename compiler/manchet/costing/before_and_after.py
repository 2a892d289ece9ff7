"""What of a bread is otherwise than it was: its ingredients in their order, allergens, finished weight, price and cost."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.mixture import by_ingredient
from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.costing.cost import cost_of
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class PieceState(NamedTuple):
    """One piece at one time. `ingredients` by their names, the most first, as they were put in; weights in grams."""

    ingredients: tuple[str, ...]
    allergens: tuple[str, ...]
    unknown: tuple[str, ...]
    """Ingredients of which nobody knows their allergens."""
    finished: Fraction | None
    cost: Fraction | None
    """Of the ingredients of one; None where a price is missing, or prices do not add."""
    currency: str
    sold: tuple[Fraction, str] | None


class Difference(NamedTuple):
    """A piece before and after; None on the side where there is none."""

    name: str
    noun: str
    before: PieceState | None
    after: PieceState | None

    @property
    def is_same(self) -> bool:
        return self.before == self.after


def differences(name: str, before: Work | None, after: Work | None) -> Iterator[Difference]:
    """Each piece that a formula makes, or made."""
    then = () if before is None else sold_pieces(before)
    now = () if after is None else sold_pieces(after)
    for piece in now:
        old = next((one for one in then if one.noun == piece.noun or same_noun(one.noun, piece.noun)), None)
        yield Difference(
            name,
            piece.noun,
            None if old is None or before is None else side_of(before, old),
            None if after is None else side_of(after, piece),
        )
    for piece in then:
        if before is not None and not any(one.noun == piece.noun or same_noun(one.noun, piece.noun) for one in now):
            yield Difference(name, piece.noun, side_of(before, piece), None)


def side_of(work: Work, piece: SoldPiece) -> PieceState:
    held = sorted(by_ingredient(piece.mixture).values(), key=lambda one: (-one.grams, one.ingredient.name))
    allergens = {one for content in held for one in content.ingredient.allergens or ()}
    cost = cost_of(work).value
    own = None
    if cost is not None and cost.is_whole:
        each = next((one for one in cost.pieces if one.piece.noun == piece.noun), None)
        own = cost.ingredients if each is None else each.money
    sells = work.formula.sale.sells_at if work.formula.sale is not None else None
    return PieceState(
        tuple(content.ingredient.name for content in held),
        tuple(sorted(allergens)),
        tuple(content.ingredient.name for content in held if content.ingredient.allergens is None),
        piece.finished,
        own,
        cost.currency if cost is not None else "",
        None if sells is None else (sells.price.amount, sells.price.currency),
    )
