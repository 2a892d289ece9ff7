"""What a label and a cost sheet say of one piece at one time: its list, its panel, what it costs, and a slice of it where a slice is
stated. Two of these show what a change does."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from manchet.account.mixture import Content, Mixture
from manchet.account.piece import SoldPiece, slices_of
from manchet.batch.work import Work
from manchet.costing.charges import Charge
from manchet.costing.cost import Cost, cost_of, cost_of_one, cost_without
from manchet.diagnostics.suggest import fold
from manchet.formula.sale import Sale
from manchet.label.allergens import contains, not_known
from manchet.label.how_sold import sale_of_noun
from manchet.label.ingredients import ingredient_list
from manchet.label.markets import markets_of
from manchet.label.nutrition import PanelLine, figure_in, panel_of
from manchet.records import NamedTuple


class PanelFigure(NamedTuple):
    """One line of a panel as it is printed for 100 g, and for a slice where one is stated; "" where it cannot be said."""

    name: str
    unit: str
    per_100_g: str
    per_slice: str
    between: str
    """`3.1 to 9.0 g`, in 100 g, where it cannot be said; else ""."""


class MarketState(NamedTuple):
    """What a label says for one market. `panel` is empty where nobody has weighed the finished piece."""

    market: str
    ingredients: str
    """The list as it is printed: water by what is left of it, allergens in capitals, how much of what its name asks for."""
    contains: tuple[str, ...]
    panel: tuple[PanelFigure, ...]


class PieceState(NamedTuple):
    """One piece at one time; weights in grams."""

    markets: tuple[MarketState, ...]
    unknown: tuple[str, ...]
    """Ingredients of which some allergen is not known."""
    finished: Fraction | None
    slices: int | None
    """Slices of one, as its file cuts it."""
    cost: Fraction | None
    """Of the ingredients of one; None where a price is missing, or prices do not add."""
    currency: str
    sold: tuple[Fraction, str] | None

    @property
    def slice_grams(self) -> Fraction | None:
        return None if self.finished is None or self.slices is None else self.finished / self.slices

    @property
    def slice_cost(self) -> Fraction | None:
        """What is lost in slicing is spread over all slices."""
        return None if self.cost is None or self.slices is None else self.cost / self.slices


def state_of(work: Work, piece: SoldPiece) -> PieceState:
    return _state(work, piece, cost_of(work).value)


def state_without(work: Work, piece: SoldPiece, name: str) -> PieceState | None:
    """The same, had an ingredient, or something made, been left out and nothing come in its place, whatever it came in with; None where
    nothing else is in it. `name` is folded. What is left loses the same share of its weight in the heat."""
    mixture = piece.mixture
    holds = {key: held for key, held in mixture.holds.items() if not is_of(held, name)}
    left = sum((held.grams for held in holds.values()), Fraction(0))
    if not left:
        return None
    taken = tuple(one for one in mixture.taken_up if fold(one.name) != name)
    without = Mixture(holds, mixture.gone * left / mixture.put_in, taken)
    return _state(work, piece._replace(mixture=without), cost_without(work, _charged_for(name)).value)


def is_of(held: Content, name: str) -> bool:
    """It is what is called so, or came in with it. `name` is folded."""
    return fold(held.ingredient.name) == name or any(fold(one.name) == name for one in held.way)


def _charged_for(name: str) -> Callable[[Charge], bool]:
    return lambda charge: name in (fold(charge.ingredient.name), fold(charge.where))


def _state(work: Work, piece: SoldPiece, cost: Cost | None) -> PieceState:
    sale = sale_of_noun(work.formula, piece.noun)
    slices = slices_of(work, piece.noun)
    grams = None if piece.finished is None or slices is None else piece.finished / slices
    return PieceState(
        tuple(_of_market(piece, market, sale, grams) for market in markets_of(work.kitchen)),
        tuple(ingredient.name for ingredient in not_known(piece)),
        piece.finished,
        slices,
        None if cost is None else cost_of_one(cost, piece.noun),
        cost.currency if cost is not None else "",
        None if sale.sells_at is None else (sale.sells_at.price.amount, sale.sells_at.price.currency),
    )


def _of_market(piece: SoldPiece, market: str, sale: Sale, slice_grams: Fraction | None) -> MarketState:
    called = sale.called.text if sale.called else ""
    more = tuple(name.text for name in sale.how_much_of)
    lines = panel_of(piece, market).lines
    return MarketState(
        market,
        ingredient_list(piece, market, called, more).text,
        contains(piece, market),
        tuple(_figure(line, market, slice_grams) for line in lines),
    )


def _figure(line: PanelLine, market: str, slice_grams: Fraction | None) -> PanelFigure:
    part = "" if slice_grams is None or not line.is_known else figure_in(line, market, slice_grams)
    return PanelFigure(line.name, line.unit, line.text, part, "" if line.is_known else line.between)
