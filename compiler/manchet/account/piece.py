"""What is in one finished piece, and what it weighs: the account that list, panel, slice and cost go by."""

from __future__ import annotations

from fractions import Fraction

from manchet.account.mixture import Mixture, put_together
from manchet.account.source import Makings, Stores
from manchet.batch.pieces import branch_for
from manchet.batch.way_of_piece import Lost, way_of_piece
from manchet.batch.work import Work, once
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class SoldPiece(NamedTuple):
    """One piece as it is sold; of what is not made by the piece, all of it."""

    noun: str
    number: Fraction
    mixture: Mixture
    """Grams of one."""
    is_weighed: bool
    """The file says what it loses in its heat, or it goes through none: only then is its finished weight known."""

    @property
    def finished(self) -> Fraction | None:
        """Grams of one when it is cooled; None where nobody has weighed what the heat takes."""
        return self.mixture.weight if self.is_weighed else None


@once
def sold_pieces(work: Work) -> tuple[SoldPiece, ...]:
    """What a work makes, a piece of each sort, in the order of its file."""
    batch, formula = work.batch, work.formula
    makings = makings_of(work)
    dough = makings.dough
    if not batch.pieces:
        grams = batch.dough if formula.preparation else batch.divided
        mixture = makings.finished("", dough.amount(grams), ())
        return (SoldPiece("", Fraction(1), mixture, _is_weighed(work, "")),)
    found = []
    for piece in batch.pieces:
        branch = branch_for(formula, piece.noun)
        added = () if branch is None else branch.added
        alone = piece.grams * (1 - formula.loss_in_its_pot) / (1 + sum((portion.share for portion in added), NOTHING))
        worked_in = [makings.of_portion(portion).times(alone) for portion in added]
        whole = put_together([dough.amount(alone), *worked_in])
        mixture = makings.finished(piece.noun, whole, batch.pieces)
        found.append(SoldPiece(piece.noun, piece.number, mixture, _is_weighed(work, piece.noun)))
    return tuple(found)


def slices_of(work: Work, noun: str) -> int | None:
    """Into how many slices its own file cuts one piece of a noun; None where it does not. A dish that cuts it says so itself."""
    if work.formula.dish:
        return None
    cut = (step.slices for step in work.formula.way_of(noun))
    return next((number for number in cut if number is not None), None)


@once
def makings_of(work: Work) -> Makings:
    return Makings(work.formula, Stores(work.larder, work.preparations))


def _is_weighed(work: Work, noun: str) -> bool:
    way = way_of_piece(work.formula, noun, work.batch.pieces)
    return not any(isinstance(event, Lost) and not event.said for event in way)
