"""What a kitchen says of selling: where, in whose name, what its work and its fire cost, what its labels are printed on."""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.kitchen.model import Kitchen, LabelStock, RunningCost, Selling
from manchet.larder.allergens import allergens_of
from manchet.larder.figures import worth
from manchet.larder.selling import contact_of, market_of, money_of, share_of
from manchet.quantities.units import LENGTH, TIME
from manchet.source.text import Line
from manchet.syntax.nodes import Amount, Setting

PAPERS = {"a4": "A4", "letter": "Letter"}
MOST_LABELS = 40
"""Labels side by side, or one under another, on one sheet. Our rule: more is a slip of the hand."""


def with_sale_line(kitchen: Kitchen, node: Setting, line: Line) -> Outcome[Kitchen]:
    """The kitchen with what one of its lines says of selling."""
    selling = _with_line(kitchen.selling, node, line)
    return Outcome(kitchen._replace(selling=selling.value), selling.diagnostics)


def running_of(node: Setting, line: Line) -> Outcome[RunningCost | None]:
    """`costs 14 EUR a firing`, `work 24 EUR an hour`"""
    currency, per = node.names
    money = money_of(node.amounts[0], currency, line)
    reports = money.diagnostics
    if node.key == "work" and per.text != "an hour":
        reports = (*reports, _unfit(node, line, "24 EUR an hour"))
    if money.value is None or reports:
        return Outcome(None, reports)
    return Outcome(RunningCost(money.value, per.text == "an hour"))


def _with_line(selling: Selling, node: Setting, line: Line) -> Outcome[Selling]:
    reports: tuple[Diagnostic, ...] = ()
    match node.key:
        case "sells in":
            markets = [market_of(word, line) for word in node.names]
            reports = tuple(one for market in markets for one in market.diagnostics)
            said = tuple(dict.fromkeys(market.value for market in markets if market.value))
            selling = selling._replace(markets=said)
        case "name and address":
            selling = selling._replace(address=node.names[0].text)
        case "also handles":
            handles = allergens_of(node.names, line)
            selling, reports = selling._replace(handles=handles.value), handles.diagnostics
        case "may contain" | "kept apart from":
            contact = contact_of(node, line)
            selling = selling._replace(contacts=(*selling.contacts, contact.value))
            reports = contact.diagnostics
        case "work":
            work = running_of(node, line)
            selling = selling._replace(work=work.value and work.value.money)
            reports = work.diagnostics
        case "prices are old after":
            seconds = worth(node.amounts[0], TIME)
            if not seconds:
                reports = (_unfit(node, line, "90 d"),)
            selling = selling._replace(prices_old_after=seconds or None)
        case "tax" | "margin":
            share = share_of(node.amounts[0])
            if share is None:
                reports = (_unfit(node, line, "10% in the price" if node.key == "tax" else "65%"),)
            selling = selling._replace(tax=share) if node.key == "tax" else selling._replace(margin=share)
        case _:
            labels = _labels(node, line)
            selling, reports = selling._replace(labels=labels.value), labels.diagnostics
    return Outcome(selling, reports)


def _labels(node: Setting, line: Line) -> Outcome[LabelStock | None]:
    if not node.names:
        width = worth(node.amounts[0], LENGTH)
        return Outcome(LabelStock(roll=width)) if width else Outcome(None, (_unfit(node, line, "62 mm roll"),))
    example = "3 across, 6 down on A4"
    across, down = map(_count, node.amounts)
    paper = PAPERS.get(fold(node.names[0].text))
    if across is None or down is None or paper is None:
        return Outcome(None, (_unfit(node, line, example),))
    return Outcome(LabelStock(across=across, down=down, paper=paper))


def _count(amount: Amount) -> int | None:
    figure: Fraction | None = amount.low if amount.low == amount.high else None
    return int(figure) if figure is not None and figure.denominator == 1 and 1 <= figure <= MOST_LABELS else None


def _unfit(node: Setting, line: Line, example: str) -> Diagnostic:
    message = f"`{line.body}` is not a figure that fits `{node.key}`"
    return report("kitchen-figure-unfit", line.place(), message, f"write `{node.key} {example}`")
