"""The order list: what has to be bought for what this run makes, in whole packs, by seller, less what was counted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.diagnostics.outcome import Outcome
from manchet.sheets.form import Bakehouse, Form, OfPreparations, PageSetup, Subject
from manchet.sheets.forms.order_list.view import OrderList
from manchet.sheets.page.layouts import PageLayout

if TYPE_CHECKING:
    from manchet.sheets.page.view import View


def render(bakehouse: Bakehouse, page: PageSetup) -> Outcome[View | None]:
    """None where nothing was counted, or nothing is made."""
    if bakehouse.stock is None or not (bakehouse.works or bakehouse.ahead):
        return Outcome(None)
    from manchet.sheets.forms.order_list.order import order_list

    return Outcome(order_list(bakehouse, bakehouse.stock, page))


def table(view: OrderList) -> str:
    from manchet.sheets.forms.order_list.table import csv_of

    return csv_of(view)


FORM = Form(
    name="order",
    place=21,
    about=Subject.BAKEHOUSE,
    view=OrderList,
    template="forms/order_list/template.html",
    render=render,
    layouts=(PageLayout("normal"), PageLayout("tight", 80)),
    preparations=OfPreparations.NEVER,
    table=table,
    none_made=(
        "no order list was made: nothing was counted; write what is in the store under a line `stock counted 2026-11-28`, "
        "as in `white flour 140 kg` or `butter 6 packs`"
    ),
)
