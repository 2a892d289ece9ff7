"""What the cost sheet says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running


class CostRow(NamedTuple):
    """An ingredient: what it costs in all, what is weighed of it, at what price of which day; "" where that is not known."""

    money: str
    name: str
    weight: str
    price: str
    dated: str
    seller: str
    note: str


class MoneyRow(NamedTuple):
    """A sum of money and what it is for."""

    money: str
    name: str
    weight: str = ""


class PieceMoney(NamedTuple):
    """What one piece costs: its ingredients, hands and oven, which add up to the whole; 100 g of its ingredients; what it is sold
    at, and what that leaves."""

    name: str
    """`per loaf`"""
    ingredients: str
    hands: str
    oven: str
    whole: str
    """"" where there is nothing to add up."""
    hundred_grams: str
    slice: str
    """Of one, where its file cuts it: what slicing loses is spread over all slices."""
    sold: str
    taxed: str
    """`incl. 10 % tax`"""
    leaves: str


class PriceRow(NamedTuple):
    """The prices of a piece that leave so much each, with tax, and without it where there is one."""

    name: str
    prices: tuple[str, ...]
    net: tuple[str, ...]


class CostSheet(NamedTuple):
    """Money is in `currency`; ingredients are without tax, as they are bought."""

    title: str
    made: str
    language: str
    paper: str
    running: Running
    currency: str
    all: str
    """`for all 14`"""
    pieces: tuple[PieceMoney, ...]
    rows: tuple[CostRow, ...]
    total: str
    total_weight: str
    at_least: str
    """What the total is without; "" where it is whole."""
    said: tuple[str, ...]
    stages: tuple[MoneyRow, ...]
    spare: tuple[MoneyRow, ...]
    besides: tuple[MoneyRow, ...]
    """Hands and oven, for all."""
    not_in_it: tuple[str, ...]
    moves: tuple[MoneyRow, ...]
    moves_of: str
    margins: tuple[str, ...]
    prices: tuple[PriceRow, ...]
    over: str
    form: Literal["cost"] = "cost"
