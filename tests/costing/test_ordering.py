"""What has to be bought: whole packs upward, less what was counted; and a table that no spreadsheet runs."""

from __future__ import annotations

import csv
import io

from costing.test_cost import BREAD, LARDER
from every import every
from works import bakery_of, reports_of, works

from manchet.costing.ordering import Ordering, ordering
from manchet.sheets.form import Bakehouse, PageSetup
from manchet.sheets.forms.order_list.order import order_list
from manchet.sheets.forms.order_list.table import csv_of, harmless
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue

STOCK = """
stock counted 2026-11-28
  white flour              1 kg
  butter                   1 packs
  salt
"""


def ordered(text: str) -> Ordering:
    bakery = bakery_of(text)
    assert bakery.stock is not None
    return ordering(works(bakery), bakery.stock)


def test_whole_packs_less_what_is_there() -> None:
    """6,000 g of flour less 1,000 g counted are 5,000 g: one sack of 25 kg, of which 20 kg stay."""
    order = ordered(LARDER + BREAD + STOCK)
    (flour,) = order.bought
    assert (flour.wanted.ingredient.name, flour.packs, flour.packed_as, flour.money) == ("white flour", 1, "25 kg", 20)
    assert flour.left == 20000
    assert flour.seller == "Mill"


def test_what_nobody_counted_is_not_taken_for_none() -> None:
    order = ordered(LARDER + BREAD + STOCK)
    assert [one.ingredient.name for one in order.unsaid] == ["salt"]
    assert [one.ingredient.name for one in order.enough] == ["butter"]


def test_an_order_is_never_less_than_what_is_lacking() -> None:
    for pack in ("pack 300 g", "pack 4999 g", "pack 25 kg", "pack 7 kg"):
        text = LARDER.replace("  white flour\n", f"  white flour\n    {pack}\n") + BREAD + STOCK
        (flour,) = ordered(text).bought
        assert flour.pack is not None and flour.left is not None
        assert flour.packs * flour.pack >= flour.wanted.lacking > (flour.packs - 1) * flour.pack
        assert flour.left >= 0


def test_the_newest_stocktake_counts() -> None:
    older = STOCK.replace("2026-11-28", "2026-10-01").replace("1 kg", "100 kg")
    assert len(ordered(LARDER + BREAD + STOCK + older).bought) == 1
    assert not ordered(LARDER + BREAD + older).bought


def test_stock_lines_that_cannot_be_counted_are_told() -> None:
    text = LARDER + BREAD + "\nstock counted 2026-02-30\n  whit flour 1 kg\n  salt 1 kg\n  salt 2 kg\n  eggs 2 packs\n"
    assert [one.name for one in reports_of(text) if one.name.startswith("stock")] == [
        "stock-of-no-day", "stock-of-unknown", "stock-line-twice", "stock-not-weighed",
    ]  # fmt: skip


@every(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1+1", "\x01x"], at_least=8)
def test_no_cell_is_run(cell: str) -> None:
    """OWASP, CSV injection: a cell that begins with = + - @, a tab or a return gets a ' before it."""
    assert harmless(cell) == f"'{cell}"


def test_a_plain_cell_stays_as_it_is() -> None:
    assert [harmless(cell) for cell in ("", "rye", "25 kg", "1,2", "a=b")] == ["", "rye", "25 kg", "1,2", "a=b"]


def test_the_table_reads_back_and_holds_no_command() -> None:
    text = LARDER.replace("from Mill", "from =cmd") + BREAD + STOCK
    bakery = bakery_of(text)
    assert bakery.stock is not None
    made = works(bakery)
    view = order_list(Bakehouse(made[0].kitchen, made, stock=bakery.stock), bakery.stock, PageSetup(Issue(), House()))
    head, *rows = csv.reader(io.StringIO(csv_of(view)))
    assert head[0] == "seller" and len(rows) == 1
    assert dict(zip(head, rows[0], strict=True)) == {
        "seller": "'=cmd", "ingredient": "white flour", "allergens": "WHEAT", "packs": "1", "pack": "25 kg",
        "needed g": "6000", "in stock g": "1000", "left over g": "20000", "money": "20.00", "currency": "EUR",
    }  # fmt: skip
