"""The order list as a table for a spreadsheet, of which no cell is taken for a command."""

from __future__ import annotations

import csv
import io

from manchet.sheets.forms.order_list.view import OrderList

HEAD = (
    "seller",
    "ingredient",
    "allergens",
    "packs",
    "pack",
    "needed g",
    "in stock g",
    "left over g",
    "money",
    "currency",
)
STARTS_A_COMMAND = ("=", "+", "-", "@", "\t", "\r", "\n")
"""What a spreadsheet takes for the beginning of a formula (OWASP, CSV injection)."""


def csv_of(view: OrderList) -> str:
    """A row for each thing to buy, grams and money in plain decimals, lines ended as RFC 4180 has them."""
    written = io.StringIO()
    rows = csv.writer(written, lineterminator="\r\n")
    rows.writerow(HEAD)
    for seller in view.sellers:
        for row in seller.rows:
            money = row.money.replace(",", "")
            cells = (seller.seller, row.name, row.allergens, row.number, row.pack, row.needed_grams, row.stock_grams)
            rows.writerow([harmless(cell) for cell in (*cells, row.left_grams, money, row.currency)])
    return written.getvalue()


def harmless(cell: str) -> str:
    """The cell with a ' before it where a spreadsheet would run it."""
    runs = (
        cell.startswith(STARTS_A_COMMAND)
        or (cell != "" and ord(cell[0]) < 32)
        or cell.lstrip()[:1] in ("=", "+", "-", "@")
    )
    return f"'{cell}" if cell and runs else cell
