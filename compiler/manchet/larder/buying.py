"""How a thing is bought: the lines of an entry that say its price, the pack it comes in and what is trimmed off it."""

from __future__ import annotations

import re
from collections.abc import Iterable
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.larder.figures import worth
from manchet.larder.ingredient import Buying, Ingredient, Price, Question
from manchet.larder.selling import money_of, share_of
from manchet.quantities.dates import is_day
from manchet.quantities.units import MASS, VOLUME, WHOLE
from manchet.syntax.nodes import Amount, Entry as Written, Setting, Word

_DATE = re.compile(r"\d{4}-\d\d-\d\d")


def buying_of(
    entry: Ingredient, below: Ingredient | Question | None, lines: Iterable[tuple[Written, Setting]]
) -> Outcome[Buying]:
    """What the lines `price`, `pack` and `loses` of an entry say, once all else of it is read. `below` is the entry of its name
    in the larder it is put on top of: what one of it weighs, and a litre, stands there where it does not stand here.
    """
    if isinstance(below, Ingredient):
        entry = entry._replace(
            class_=entry.class_ or below.class_,
            density=entry.density or below.density,
            whole=entry.whole or below.whole,
        )
    buying = Buying()
    reports: list[Diagnostic] = []
    for line, node in lines:
        if node.key == "price":
            price = _price(entry, line, node)
            reports += price.diagnostics
            if price.value is not None:
                buying = buying._replace(prices=(*buying.prices, price.value))
        elif node.key == "pack":
            pack = node.amounts[0]
            grams = grams_of(entry, pack)
            if grams is None:
                reports.append(_of_no_weight(entry, line, pack))
            buying = buying._replace(pack=grams, packed_as=_written(line, pack))
        else:
            trimming = share_of(node.amounts[0])
            if trimming is None:
                message = f"`{line.line.body}` would leave nothing of {entry.name}"
                reports.append(
                    report("larder-figure-unfit", line.line.place(), message, "write `loses 20% in trimming`")
                )
            buying = buying._replace(trimming=trimming)
    newest_first = sorted(buying.prices, key=lambda price: price.date, reverse=True)
    return Outcome(buying._replace(prices=tuple(newest_first)), tuple(reports))


def _price(entry: Ingredient, line: Written, node: Setting) -> Outcome[Price | None]:
    """`21.40 EUR for 25 kg on 2026-09-14 from Harbour Mill`; day and seller may be left out."""
    figure, bought = node.amounts
    currency, *others = node.names
    reports: list[Diagnostic] = []
    date: Word | None = None
    seller: Word | None = None
    for word in others:
        is_date = _DATE.fullmatch(word.text) is not None
        if (date if is_date else seller) is not None:
            message = f"this price of {entry.name} has two {'days' if is_date else 'sellers'}"
            help = "write a line `price` for each"
            reports.append(report("price-unreadable", line.line.place(word.start, word.end), message, help))
        date, seller = (word, seller) if is_date else (date, word)
    if date is not None and not is_day(date.text):
        there = line.line.place(date.start, date.end)
        reports.append(
            report("price-unreadable", there, f"there is no day {date.text}", "write the day as in `on 2026-09-14`")
        )
    money = money_of(figure, currency, line.line)
    reports += money.diagnostics
    grams = grams_of(entry, bought)
    if grams is None:
        reports.append(_of_no_weight(entry, line, bought))
    if money.value is None or grams is None:
        return Outcome(None, tuple(reports))
    day, whose = date.text if date else "", seller.text if seller else ""
    return Outcome(Price(*money.value, grams, day, whose, _written(line, bought), line.line.place()), tuple(reports))


def grams_of(entry: Ingredient, amount: Amount) -> Fraction | None:
    """What an amount that is bought, or counted in the store, weighs: litres by the entry's density, pieces by what one weighs.

    None where that is nothing, or not known.
    """
    weight = worth(amount, MASS)
    volume, pieces = worth(amount, VOLUME), worth(amount, WHOLE)
    density = Fraction(1) if entry.class_ == "water" else entry.density
    if weight is None and volume is not None and density is not None:
        weight = volume * density
    if weight is None and pieces is not None and entry.whole is not None:
        weight = pieces * entry.whole
    return weight if weight is not None and weight > 0 else None


def _of_no_weight(entry: Ingredient, line: Written, amount: Amount) -> Diagnostic:
    said = _written(line, amount)
    place = line.line.place(amount.start, amount.end)
    if worth(amount, VOLUME):
        message = f"nobody knows what {said} of {entry.name} weighs"
        help = "write it in kg, or add a line such as `density 1.03 kg/l`"
    elif worth(amount, WHOLE):
        message = f"nobody knows what {said} of {entry.name} weighs"
        help = "write it in kg, or add what one weighs, as in `whole 50 g`"
    else:
        message, help = (
            f"`{said}` of {entry.name} is no amount to buy",
            "write one weight, more than nothing, as in `25 kg`",
        )
    return report("price-unreadable", place, message, help)


def _written(line: Written, amount: Amount) -> str:
    return line.line.body[amount.start : amount.end]
