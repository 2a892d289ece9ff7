"""What is in one finished piece, ingredient by ingredient, with the way each came in."""

from __future__ import annotations

from manchet.account.mixture import Content, by_ingredient
from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.figures.figure import Figure, Given
from manchet.formula.nouns import singular

ACCOUNT = "the account of what goes into a piece: stages, preparations, cultures as they are made of, what touches it; less what is lost as it is"


def contents_figures(work: Work) -> dict[str, Figure]:
    """Grams of each ingredient in one piece, as it was put in, by a name such as `in one loaf: salt`; what has gone off of its water,
    and what it weighs finished."""
    found: dict[str, Figure] = {}
    for piece in sold_pieces(work):
        for figure in _of_piece(work, piece):
            found[figure.name] = figure
    return found


def in_what(work: Work, piece: SoldPiece) -> str:
    """`in one loaf`; of what is not made by the piece `in all of it`."""
    if not work.batch.pieces:
        return "in all of it"
    return f"in one {singular(piece.noun) or 'piece'}"


def _of_piece(work: Work, piece: SoldPiece) -> list[Figure]:
    where, mixture = in_what(work, piece), piece.mixture
    found = []
    for key, held in by_ingredient(mixture).items():
        ways = tuple(_by_way(one, work) for (name, _), one in mixture.holds.items() if name == key)
        rule = "what of it came in by each way, as it was weighed; less what was lost as it is"
        found.append(Figure(f"{where}: {held.ingredient.name}", held.grams, "g", rule, ways, ACCOUNT))
    gone = Figure(
        f"{where}: water gone", mixture.gone, "g", "what went off in the heat and as it cooled, and what was poured off", (), ACCOUNT
    )  # fmt: skip
    put_in = Given("all that was put in", mixture.put_in, "g", work.formula.place.where)
    if mixture.gone:
        found.append(gone)
    if piece.finished is not None:
        rule = "all that was put in, less the water that has gone"
        found.append(Figure(f"{where}: finished", piece.finished, "g", rule, (put_in, gone), ACCOUNT))
    return found


def _by_way(held: Content, work: Work) -> Figure:
    way = ", ".join(component.name for component in reversed(held.way))
    name = f"{held.ingredient.name} by {way}" if way else f"{held.ingredient.name} by itself"
    return Figure(
        name, held.grams, "g", "followed through its vessels", (), held.ingredient.source or work.formula.place.where
    )
