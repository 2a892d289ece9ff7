"""What the order list says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running


class OrderRow(NamedTuple):
    """One thing to buy. The exact figures are for the table of a spreadsheet: grams, and money in decimals."""

    packs: str
    """`3 × 5 kg`; how much, where the larder knows no pack of it."""
    name: str
    allergens: str
    """In capitals; with `?` where the larder does not know."""
    why: str
    """`1,440 g wanted, none here, 60 g over`"""
    money: str
    number: str
    pack: str
    needed_grams: str
    stock_grams: str
    left_grams: str
    currency: str


class SellerOrder(NamedTuple):
    """What is bought from one seller; "" where the larder names none."""

    seller: str
    rows: tuple[OrderRow, ...]
    total: str


class OrderList(NamedTuple):
    """What is bought for a run, by seller; `enough` is what is there already, `unsaid` what nobody has counted."""

    title: str
    language: str
    paper: str
    running: Running
    total: str
    """What is told of all it costs: a sum, or why there is none."""
    makes: tuple[str, ...]
    counted: str
    sellers: tuple[SellerOrder, ...]
    enough: tuple[str, ...]
    unsaid: tuple[str, ...]
    form: Literal["order"] = "order"
