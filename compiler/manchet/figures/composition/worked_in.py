"""What is worked into a part of the dough after it was divided: nuts, fruit, seeds for one sort of piece."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch
from manchet.batch.pieces import branch_additions
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Branch
from manchet.formula.nouns import same_noun

SOURCE = "arithmetic of the formula: a piece's weight is with what is worked into it"


def worked_in_figures(batch: Batch) -> dict[str, Figure]:
    """One for each thing and sort, by the name `hazelnuts, into the rolls`; and what each piece is weighed off at before."""
    found: dict[str, Figure] = {}
    for branch in batch.formula.branches:
        mine = [piece for piece in batch.pieces if same_noun(piece.noun, branch.noun)]
        added = sum((portion.share for portion in branch.added), Fraction(0))
        if not mine or not added:
            continue
        for portion, grams in branch_additions(branch, batch):
            name = f"{portion.name}, into the {branch.noun}"
            share = Given(f"{portion.name}, of the dough", portion.share * 100, "%", portion.place.where)
            rule = "per cent of the dough divided for them x that dough; that dough = pieces x piece / (1 + all that is added)"
            found[name] = Figure(name, grams, "g", rule, (share, *_pieces(mine, branch)), SOURCE)
        name = f"dough for one of the {branch.noun}, before anything is added"
        one = Given(f"one of the {branch.noun}", mine[0].grams, "g", batch.formula.place.where)
        all_added = Given("all that is added, of the dough", added * 100, "%", branch.added[0].place.where)
        rule = "weight of a piece / (1 + all that is added / 100)"
        found[name] = Figure(name, mine[0].grams / (1 + added), "g", rule, (one, all_added), SOURCE)
    return found


def _pieces(mine: list[PieceBatch], branch: Branch) -> tuple[Given, ...]:
    where = "the order, or the file's `makes`"
    numbers = tuple(Given(branch.noun, piece.number, "", where) for piece in mine)
    return numbers + tuple(Given(f"one of the {branch.noun}", piece.grams, "g", where) for piece in mine)
