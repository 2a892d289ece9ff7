"""What a larder, a kitchen and a formula say alike of selling: money, markets, names on a label, what may get into a food."""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.fixes import one_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.larder.allergens import allergens_of
from manchet.larder.ingredient import ListedAs
from manchet.quantities.money import CURRENCIES, SIGNS, Money
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax.nodes import Amount, Setting, Word

MARKETS = {"eu": "EU", "europe": "EU", "britain": "Britain", "gb": "Britain", "uk": "Britain", "us": "US", "usa": "US"}
"""Whose law a label keeps, by the spellings that are read."""


class Contact(NamedTuple):
    """What an operator has judged of things that are not meant to be in a food: it may be there all the same, or is kept apart."""

    apart: bool
    allergens: tuple[str, ...]
    because: str
    place: Place


def market_of(word: Word, line: Line) -> Outcome[str]:
    """The market that a word names, "" with a report for a word that names none."""
    market = MARKETS.get(fold(word.text))
    if market is not None:
        return Outcome(market)
    known = tuple(dict.fromkeys(MARKETS.values()))
    near = nearest(fold(word.text), MARKETS)
    place = line.place(word.start, word.end)
    message = f"`{word.text}` is not a market that labels are made for"
    help = f"write {list_of_words(known)}"
    fixes = one_of(place, [MARKETS[near]] if near else known)
    return Outcome("", (report("market-unknown", place, message, help, fixes=fixes),))


def listed_as(node: Setting, line: Line) -> Outcome[ListedAs]:
    """`listed as "wheat flour" in Britain`"""
    text, *market = node.names
    found = market_of(market[0], line) if market else Outcome("")
    return Outcome(ListedAs(text.text, found.value, line.place()), found.diagnostics)


def contact_of(node: Setting, line: Line) -> Outcome[Contact]:
    """`may contain hazelnut because "same mixer"`, `kept apart from sesame because "own bench"`"""
    found = allergens_of(node.names, line)
    because = node.because.text if node.because else ""
    return Outcome(Contact(node.key == "kept apart from", found.value, because, line.place()), found.diagnostics)


def money_of(amount: Amount, currency: Word, line: Line) -> Outcome[Money | None]:
    """`7.20 EUR`; None with a report where nobody knows how much of what money it is."""
    place = line.place(amount.start, currency.end)
    written = line.body[amount.start : currency.end]
    said = currency.text
    if said.upper() not in CURRENCIES:
        meant = SIGNS.get(fold(said)) or tuple(filter(None, [nearest(said.upper(), CURRENCIES)]))
        there = line.place(currency.start, currency.end)
        message = f"`{said}` is not a currency by its three letters"
        help = f"write {list_of_words(meant)}" if meant else "write its three letters (ISO 4217), as in `7.20 EUR`"
        return Outcome(None, (report("currency-unknown", there, message, help, fixes=one_of(there, meant)),))
    if amount.low is None or amount.low != amount.high:
        message, help = f"`{written}` is no one amount of money", "write one figure, as in `7.20 EUR`"
        return Outcome(None, (report("money-unclear", place, message, help),))
    if amount.low <= 0:
        message = f"`{written}` is no money: nothing would be said to cost nothing"
        help = "write what it costs, or leave the line out"
        return Outcome(None, (report("money-unclear", place, message, help),))
    return Outcome(Money(amount.low, said.upper()))


def share_of(amount: Amount) -> Fraction | None:
    """A per cent as a share of 1; None for a range, for less than nothing, and from 100 % on."""
    if amount.low is None or amount.low != amount.high or not 0 <= amount.low < 100:
        return None
    return amount.low / 100
