"""Where an ingredient, a preparation, a bread or a place is used: told by what is bound, not by text (`butter` is no `butter block`).

Of what is eaten, with its share of the finished piece, by whatever way it came in; and what would be otherwise without it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.account.mixture import Component, Content
from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.work import Work
from manchet.costing.charges import charges_of
from manchet.costing.cost import cost_of
from manchet.costing.piece_state import PieceState, is_of, state_of, state_without
from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.suggest import fold
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class UseWay(NamedTuple):
    """One way by which it gets into a piece: what it came in with, the outermost first; () by itself. `grams` of a piece."""

    through: tuple[str, ...]
    grams: Fraction


class UsedIn(NamedTuple):
    """A piece that holds it: grams of it as it was put in, and its share of the finished piece, None where nobody has weighed that.
    `left` are the grams that share is of: what goes in the heat goes from the water, as the account has it.

    `allergens` are those that the piece has by it alone, `money` what it costs of the ingredients of all of them, as a share; `now` is what
    label and cost sheet say of the piece, and `without` what they would say without it, None where nothing else is in it.
    """

    name: str
    noun: str
    grams: Fraction
    left: Fraction
    share: Fraction | None
    ways: tuple[UseWay, ...]
    allergens: tuple[str, ...]
    money: Fraction | None
    unpriced: tuple[str, ...]
    """What of all the ingredients has no price, where this or another has one: then its part of the cost is not known."""
    weighed: Fraction
    """Grams weighed for the written size, of all pieces: of an ingredient alone, else 0."""
    now: PieceState
    without: PieceState | None
    place: Place


class PlacedIn(NamedTuple):
    """A step, or a line of the head, that names a tin or a place."""

    name: str
    stage: str
    place: Place


def used_in(works: Iterable[Work], wanted: str) -> tuple[UsedIn, ...]:
    """Each piece that holds what is called so, an ingredient of the larder or something made, in the order of the works."""
    found: list[UsedIn] = []
    for work in works:
        key = _key(work, wanted)
        for piece in sold_pieces(work):
            one = _in_piece(work, piece, key)
            if one is not None:
                found.append(one)
    return tuple(found)


def _key(work: Work, wanted: str) -> str:
    """The folded name of the larder, where it is an ingredient by any of its names."""
    entry = work.larder.find(wanted)
    return fold(entry.name) if isinstance(entry, Ingredient) else fold(wanted)


def _in_piece(work: Work, piece: SoldPiece, key: str) -> UsedIn | None:
    if fold(work.formula.name) == key:
        return None
    mine = [held for held in piece.mixture.holds.values() if is_of(held, key)]
    grams = sum((held.grams for held in mine), NOTHING)
    if not grams:
        return None
    now, without = state_of(work, piece), state_without(work, piece, key)
    had = {one for market in now.markets for one in market.contains}
    kept = set() if without is None else {one for market in without.markets for one in market.contains}
    ways: dict[tuple[str, ...], Fraction] = {}
    for held in mine:
        through = _through(held.way, key)
        ways[through] = ways.get(through, NOTHING) + held.grams
    finished = piece.finished
    left = grams - _gone(piece, mine)
    weighed = [line.grams for line in charges_of(work).lines if fold(line.ingredient.name) == key]
    money, unpriced = _money(work, key)
    return UsedIn(
        name=work.formula.name,
        noun=piece.noun,
        grams=grams,
        left=left,
        share=left / finished if finished else None,
        ways=tuple(UseWay(through, part) for through, part in ways.items()),
        allergens=tuple(sorted(had - kept)),
        money=money,
        unpriced=unpriced,
        weighed=sum(weighed, NOTHING),
        now=now,
        without=without,
        place=work.formula.place,
    )


def _through(way: tuple[Component, ...], key: str) -> tuple[str, ...]:
    """What it came in with, up to the thing itself."""
    names = [component.name for component in way]
    own = next((at for at, name in enumerate(names) if fold(name) == key), len(names))
    return tuple(names[:own])


def _gone(piece: SoldPiece, mine: Iterable[Content]) -> Fraction:
    """Grams of some of what a piece holds that went with the water."""
    all_water = sum((held.grams for held in piece.mixture.holds.values() if held.ingredient.class_ == "water"), NOTHING)
    if not all_water:
        return NOTHING
    water = sum((held.grams for held in mine if held.ingredient.class_ == "water"), NOTHING)
    return water * min(piece.mixture.gone / all_water, Fraction(1))


def _money(work: Work, key: str) -> tuple[Fraction | None, tuple[str, ...]]:
    """Its share of what the ingredients cost; None, and what has no price, where that is not known in full."""
    cost = cost_of(work).value
    if cost is None or not cost.ingredients:
        return None, ()
    line = next((line for line in cost.lines if fold(line.ingredient.name) == key), None)
    made = next((share.money for share in cost.by_stage if fold(share.name) == key), None)
    if not cost.is_whole:
        is_charged = made is not None or (line is not None and line.ingredient.class_ != "water")
        return None, cost.without if is_charged else ()
    money = made if line is None else line.money
    return None if money is None else money / cost.ingredients, ()


def placed_in(works: Iterable[Work], wanted: str) -> Iterator[PlacedIn]:
    """Each step that is done at a place of that name, and each line that makes something in a tin of it."""
    key = fold(wanted)
    for work in works:
        formula = work.formula
        for made in formula.makes:
            if fold(made.tin) == key:
                yield PlacedIn(formula.name, made.noun, made.place)
        for stage in formula.stages:
            for step in stage.steps:
                if step.where is not None and fold(step.where[1]) == key:
                    yield PlacedIn(formula.name, stage.name, step.place)
        for branch in formula.branches:
            for step in branch.steps:
                if step.where is not None and fold(step.where[1]) == key:
                    yield PlacedIn(formula.name, branch.noun, step.place)
