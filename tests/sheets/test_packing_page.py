"""Divide and pack: doughs by the clock, customers beside one another, and every piece accounted for."""

from __future__ import annotations

from fractions import Fraction

from day.market import BREADS, CUSTOMERS, market, number_of, with_starts
from sheets.each_form import ISSUE, METRIC, US

from manchet.sheets.forms.day_packing.packing_page import packing_page
from manchet.sheets.page.measures import NBSP


def test_doughs_are_divided_in_the_order_of_the_clock() -> None:
    rows = packing_page(market(), ISSUE, METRIC).divide
    assert [row.bread for row in rows] == [
        "Causeway", "Mudlark", "Tern loaf", "Slate bread", "Ebb rye", "Gangway loaf", "Lamplight tin", "Regatta plait",
    ]  # fmt: skip
    (tern,) = [row for row in rows if row.bread == "Tern loaf"]
    assert (tern.clock, tern.pieces, tern.dough) == ("11:12", (f"16 × 850{NBSP}g loaves",), f"13.60{NBSP}kg")
    assert "seam up on linen" in tern.to and tern.mix == ""
    plaits = rows[-1].pieces
    assert len(plaits) == 2 and plaits[0].endswith("plaits") and plaits[1].endswith("buns")


def test_a_dough_divided_later_says_so() -> None:
    start = market().begins(number_of(market(), "Tern loaf/divide"))
    rows = packing_page(with_starts(market(), {"Tern loaf/divide": start + 2}), ISSUE, METRIC).divide
    assert next(row.clock for row in rows if row.bread == "Tern loaf") == "11:14"


def test_every_piece_that_is_ordered_stands_under_its_customer() -> None:
    page = packing_page(market(), ISSUE, METRIC)
    assert tuple(customer.name for customer in page.customers) == CUSTOMERS
    assert {customer.leaves for customer in page.customers} == {"Sat 06:00"}
    for name, pieces, orders in BREADS:
        row = next(row for row in page.pack if row.bread == name)
        assert row.in_all == str(next(iter(pieces.values())))
        assert [cell.number for cell in row.cells] == [str(orders[who]) if who in orders else "" for who in CUSTOMERS]
    assert page.departures == ("van leaves Sat 06:00 with Quay cafe, Weir House and the stall",)


def test_what_is_spare_has_a_column_only_where_there_is_some() -> None:
    plan = market()
    assert not packing_page(plan, ISSUE, US).has_spare
    wants = tuple(
        want._replace(spare=((Fraction(2), "loaves"),)) if want.name == "Ebb rye" else want for want in plan.said.wants
    )
    page = packing_page(plan._replace(said=plan.said._replace(wants=wants)), ISSUE, METRIC)
    assert page.has_spare and [row.spare for row in page.pack if row.bread in ("Ebb rye", "Mudlark")] == ["2", ""]
