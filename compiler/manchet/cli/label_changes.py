"""How a label, a panel and a cost sheet are otherwise than they were: a line for each thing that changed, in the words of the label."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from manchet.diagnostics.terminal import show
from manchet.quantities.printing import decimal

if TYPE_CHECKING:
    from manchet.costing.piece_state import MarketState, PanelFigure, PieceState

ARROW = " → "


def changes(before: PieceState, after: PieceState, of_one: str) -> Iterator[str]:
    """`of_one`: what the cost is of, `a loaf`. What several markets say alike is told once."""
    old = {one.market: one for one in before.markets}
    told: dict[tuple[str, ...], list[str]] = {}
    for market in after.markets:
        if market.market in old:
            lines = _of_market(old[market.market], market, bool(before.unknown), bool(after.unknown))
            told.setdefault(tuple(lines), []).append(market.market)
    for same, markets in told.items():
        if same and len(told) > 1:
            yield f"in {' and '.join(markets)}"
        yield from same
    yield from _change("sold in", _list(tuple(old)), _list(tuple(one.market for one in after.markets)))
    yield from _change("allergens", _unknown(before), _unknown(after))
    yield from _change("finished", _grams(before.finished), _grams(after.finished))
    yield from _change("sold at", _sold(before.sold), _sold(after.sold))
    cost = _money(before.cost, before.currency), _money(after.cost, after.currency)
    yield from _change(f"ingredients of {of_one}", *cost)
    if before.slices or after.slices:
        yield from _change("a slice", _grams(before.slice_grams), _grams(after.slice_grams))
        cost = _money(before.slice_cost, before.currency), _money(after.slice_cost, after.currency)
        yield from _change("ingredients of a slice", *cost)


def _change(what: str, before: str, after: str) -> Iterator[str]:
    """Nothing where it is printed the same."""
    if before != after:
        yield f"{what} {before}{ARROW}{after}"


def _of_market(before: MarketState, after: MarketState, was_unknown: bool, is_unknown: bool) -> Iterator[str]:
    if before.contains != after.contains:
        yield from _change("contains", _contains(before, was_unknown), _contains(after, is_unknown))
    if before.ingredients != after.ingredients:
        yield f"list {show(before.ingredients) or 'of nothing'}"
        yield f"   → {show(after.ingredients) or 'of nothing'}"
    then = {figure.name: figure for figure in before.panel}
    now = {figure.name: figure for figure in after.panel}
    both = [(then.get(name), now.get(name)) for name in dict.fromkeys((*then, *now))]
    hundred = [_figures(was, one, "per_100_g") for was, one in both]
    sliced = [_figures(was, one, "per_slice") for was, one in both]
    for head, changed in (("per 100 g", hundred), ("in a slice", sliced)):
        if any(changed):
            yield f"{head} {', '.join(filter(None, changed))}"


def _figures(before: PanelFigure | None, after: PanelFigure | None, of: str) -> str:
    """`fat 0.9 → 0.6 g`, "" where it is printed the same."""
    one = before or after
    if one is None:
        return ""
    was, now = ("" if side is None else getattr(side, of) for side in (before, after))
    if was and now:
        said = "" if was == now else f"{was}{ARROW}{now} {one.unit}"
    else:
        sides = [_open(side, figure, of) for side, figure in ((before, was), (after, now))]
        said = "" if sides[0] == sides[1] else ARROW.join(sides)
    name = "" if one.unit == "kcal" else f"{one.name.split(' ')[0]} "
    return f"{name}{said}" if said else ""


def _open(figure: PanelFigure | None, said: str, of: str) -> str:
    if figure is None:
        return "not known"
    if said:
        return f"{said} {figure.unit}"
    return f"not known ({figure.between})" if figure.between and of == "per_100_g" else "not known"


def state_data(state: PieceState) -> dict[str, Any]:
    """The same of one side as data; weights in grams, money in its currency."""
    return {
        "markets": [
            {
                "market": one.market,
                "ingredients": one.ingredients,
                "contains": list(one.contains),
                "per_100_g": {
                    figure.name: f"{figure.per_100_g} {figure.unit}" for figure in one.panel if figure.per_100_g
                },
                "between": {figure.name: figure.between for figure in one.panel if figure.between},
                "in_a_slice": {
                    figure.name: f"{figure.per_slice} {figure.unit}" for figure in one.panel if figure.per_slice
                },
            }
            for one in state.markets
        ],
        "allergens_not_known_of": list(state.unknown),
        "finished_grams": _float(state.finished),
        "slice_grams": _float(state.slice_grams),
        "ingredients_cost": _float(state.cost, 4),
        "ingredients_cost_of_a_slice": _float(state.slice_cost, 4),
        "currency": state.currency,
    }


def _float(value: Fraction | None, places: int = 3) -> float | None:
    return None if value is None else float(round(value, places))


def _list(words: Sequence[str]) -> str:
    return show(", ".join(words)) or "none listed"


def _contains(state: MarketState, some_unknown: bool) -> str:
    """What is not known of an ingredient is not none."""
    return show(", ".join(state.contains)).upper() or ("none that is known" if some_unknown else "none listed")


def _unknown(state: PieceState) -> str:
    return f"not known of {show(', '.join(state.unknown))}" if state.unknown else "known of all that is in it"


def _grams(grams: Fraction | None) -> str:
    return "not known" if grams is None else f"{decimal(grams, 1)} g"


def _money(amount: Fraction | None, currency: str) -> str:
    from manchet.sheets.parts.money import money_text

    if amount is None:
        return "not known in full"
    return f"{money_text(amount, currency, 1)} {currency}"  # a tenth of a cent is a euro on a thousand loaves


def _sold(sold: tuple[Fraction, str] | None) -> str:
    from manchet.sheets.parts.money import money_text

    return "no price" if sold is None else f"{money_text(*sold)} {sold[1]}"
