"""A bread sold in the United States that is moister than the standard of bread there, or is called bread and is no heavier than a roll."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.checks.saying import grams, percent
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.label.bread_names import HALF_A_POUND, LEAST_SOLIDS, bread_or_roll, is_called_bread, solids_of
from manchet.label.declaration import labelled_pieces
from manchet.label.markets import US
from manchet.quantities.printing import decimal

NAME = "bread-moist-for-us"
ABOUT = ("sold",)


def check(work: Work) -> Iterator[Diagnostic]:
    for piece, labels in labelled_pieces(work):
        label = next((one for one in labels if one.market == US), None)
        weighs = piece.finished
        if work.formula.dish or label is None or not weighs or not is_called_bread(label.called):
            continue
        place = label.way.place
        yield from _moist(work, piece, weighs, place)
        if "bread" in label.called.casefold().split() and bread_or_roll(weighs) == "roll":
            message = (
                f"{label.called} weighs {grams(weighs)} when cooled: under {decimal(HALF_A_POUND, 1)} g (half a pound) it is a roll or a bun in"
                " the United States (21 CFR 136.3)"
            )
            yield report(NAME, place, message, "call it a roll or a bun there")


def _moist(work: Work, piece: SoldPiece, weighs: Fraction, place: Place) -> Iterator[Diagnostic]:
    solids = solids_of(piece)
    if solids is None or solids / weighs >= LEAST_SOLIDS:
        return
    most = solids / LEAST_SOLIDS
    message = (
        f"{work.formula.name} is {percent(1 - solids / weighs)} water when cooled; in the United States what is called bread, roll or bun has"
        f" {percent(1 - LEAST_SOLIDS)} at most (21 CFR 136.110)"
    )
    help = f"bake it down from {decimal(weighs, 1)} g to {decimal(most, 1)} g, or give it another name there"
    yield report(NAME, place, message, help)
