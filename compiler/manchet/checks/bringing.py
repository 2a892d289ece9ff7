"""Which line of a formula brings an ingredient into what is sold, be it by a starter or a preparation."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.label.allergens import every_content


def line_that_brings(work: Work, piece: SoldPiece, ingredient: str) -> Place:
    """Its own line, else that of what it came in with, the innermost first; else where the formula begins."""
    places = dict(reversed(list(_lines(work.formula))))
    wanted = fold(ingredient)
    if wanted in places:
        return places[wanted]
    for content in every_content(piece.mixture):
        if fold(content.ingredient.name) == wanted:
            for component in reversed(content.way):
                if fold(component.name) in places:
                    return places[fold(component.name)]
    return work.formula.place


def _lines(formula: Formula) -> Iterator[tuple[str, Place]]:
    """Names, folded, with the line that each stands in, in the order of the work."""
    for stage in formula.stages:
        for portion in stage.portions:
            yield fold(portion.ingredient.name if portion.ingredient else portion.name), portion.place
            yield fold(portion.name), portion.place
    for branch in formula.branches:
        for portion in branch.added:
            yield fold(portion.ingredient.name if portion.ingredient else portion.name), portion.place
    for step in formula.steps:
        if step.applied is not None:
            ingredient = step.applied.ingredient
            yield fold(ingredient.name if ingredient else step.applied.name), step.place
            yield fold(step.applied.name), step.place
