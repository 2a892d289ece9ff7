"""How a thing is sold, as its head says: in what way, by what name, at what price, how long it keeps, what was judged of it.

Masses are grams, times seconds, temperatures degrees Celsius. Nothing here is worked out: all of it is what the baker states.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.measures import celsius
from manchet.formula.ranges import Range
from manchet.larder.figures import worth
from manchet.larder.ingredient import ListedAs
from manchet.larder.selling import Contact, contact_of, listed_as, money_of, share_of
from manchet.quantities.dates import is_day
from manchet.quantities.money import Money
from manchet.quantities.units import MASS, TIME
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax.nodes import Entry, Setting

LOOSE, PREPACKED, DIRECT = "loose", "prepacked", "prepacked for direct sale"
"""Ways of selling, as Regulation (EU) 1169/2011 tells them apart (articles 2 and 44)."""


class SoldAs(NamedTuple):
    """`sold loose`, `sold prepacked at 740 g net`. `net` is the weight declared on the label: the baker's own figure."""

    way: str
    net: Fraction | None
    place: Place


class SellsAt(NamedTuple):
    """`sells at 7.20 EUR each, tax 10% in it`"""

    price: Money
    grams: Fraction | None
    """What is sold at that price; None where it is one piece."""
    tax: Fraction | None
    """A share of the price without it; None where the line leaves it to the kitchen."""
    place: Place


class DateMark(NamedTuple):
    """`best before 6 d`, or `use by 2 d at 5 C`."""

    word: str
    seconds: Fraction
    celsius: Range | None
    place: Place


class SaleText(NamedTuple):
    """Words of the file, and where they stand."""

    text: str
    place: Place


class Approval(NamedTuple):
    """`label approved 2026-11-20 by Ada as cdvgjptn`"""

    date: str
    by: str
    labels: tuple[str, ...]
    """The marks of the labels that were approved: another label has another. Empty where the line does not say."""
    place: Place


class Sale(NamedTuple):
    ways: tuple[SoldAs, ...] = ()
    called: SaleText | None = None
    """The name of the food."""
    sells_at: SellsAt | None = None
    date_mark: DateMark | None = None
    store: SaleText | None = None
    opened: SaleText | None = None
    how_much_of: tuple[SaleText, ...] = ()
    """Ingredients whose share is told beyond what the name already asks for."""
    listed_as: tuple[ListedAs, ...] = ()
    contacts: tuple[Contact, ...] = ()
    approved: Approval | None = None


def sale_of(entries: Iterable[Entry]) -> Outcome[Sale | None]:
    """What the lines of a head, or those under `for the …`, say of selling; None where none does."""
    lines = [(entry, entry.node) for entry in entries if isinstance(entry.node, Setting)]
    if not lines:
        return Outcome(None)
    sale = Sale()
    reports: list[Diagnostic] = []
    first: dict[str, Place] = {}
    for entry, node in lines:
        key = _said_once(node)
        if key in first:
            reports.append(_twice(entry, key, first[key]))
            continue
        first.setdefault(key, entry.line.place())
        read = _with_line(sale, node, entry.line)
        sale = read.value
        reports += read.diagnostics
    reports += _two_judgements(sale)
    return Outcome(sale, tuple(reports))


def _said_once(node: Setting) -> str:
    """What a line says that may be said only once; each market has its own name for a food, each allergen its own line."""
    if node.key in ("listed as", "may contain", "kept apart from"):
        return f"{node.key} {' '.join(word.text for word in node.names[node.key == 'listed as' :])}"
    if node.key in ("best before", "use by"):
        return "best before"
    return PREPACKED_LINES.get(node.key, node.key)


PREPACKED_LINES = {"sold prepacked at": "sold prepacked"}


def _twice(entry: Entry, key: str, there: Place) -> Diagnostic:
    assert isinstance(entry.node, Setting)
    place = entry.line.place()
    fixes = () if entry.children else (without_line(place, "leave out this line"),)
    also = (there, "the first is here")
    if key == "best before":
        message, help = (
            "a food carries one date: `best before`, or `use by` where it can make ill",
            "keep one of the two lines",
        )
    else:
        message, help = f"`{entry.node.key}` is written twice", "keep one of the two lines"
    return report("said-twice", place, message, help, also, fixes=fixes)


def _with_line(sale: Sale, node: Setting, line: Line) -> Outcome[Sale]:
    place = line.place()
    match node.key:
        case "sold loose":
            return _sold(sale, SoldAs(LOOSE, None, place))
        case "sold prepacked for direct sale":
            return _sold(sale, SoldAs(DIRECT, None, place))
        case "sold prepacked":
            return _sold(sale, SoldAs(PREPACKED, None, place))
        case "sold prepacked at":
            net = worth(node.amounts[0], MASS)
            if net:
                return _sold(sale, SoldAs(PREPACKED, net, place))
            wrong = report(
                "no-weight", place, "a net weight is one weight", "write it like `sold prepacked at 740 g net`"
            )
            return Outcome(sale, (wrong,))
        case "called":
            return Outcome(sale._replace(called=_text(node, line)))
        case "store":
            return Outcome(sale._replace(store=_text(node, line)))
        case "opened":
            return Outcome(sale._replace(opened=_text(node, line)))
        case "sells at":
            sells = _sells_at(node, line)
            return Outcome(sale._replace(sells_at=sells.value), sells.diagnostics)
        case "best before" | "use by":
            mark = _date_mark(node, line)
            return Outcome(sale._replace(date_mark=mark.value), mark.diagnostics)
        case "says how much of":
            names = tuple(SaleText(word.text, line.place(word.start, word.end)) for word in node.names)
            return Outcome(sale._replace(how_much_of=names))
        case "listed as":
            listed = listed_as(node, line)
            return Outcome(sale._replace(listed_as=(*sale.listed_as, listed.value)), listed.diagnostics)
        case "may contain" | "kept apart from":
            contact = contact_of(node, line)
            return Outcome(sale._replace(contacts=(*sale.contacts, contact.value)), contact.diagnostics)
        case "label approved":
            date, by = node.names
            person, _, label = by.text.rpartition(" as ")
            marks = tuple(re.split(r" and |, *", label)) if person else ()
            approval = Approval(date.text, person or label, marks, place)
            if is_day(date.text):
                return Outcome(sale._replace(approved=approval))
            help = "write the day on which it was approved, as in `label approved 2026-11-20 by Ada as cdvgjptn`"
            there = line.place(date.start, date.end)
            return Outcome(sale, (report("no-such-day", there, f"there is no day {date.text}", help),))
        case _:
            return Outcome(sale)


def _sold(sale: Sale, way: SoldAs) -> Outcome[Sale]:
    return Outcome(sale._replace(ways=(*sale.ways, way)))


def _text(node: Setting, line: Line) -> SaleText:
    word = node.names[0]
    return SaleText(word.text, line.place(word.start, word.end))


def _sells_at(node: Setting, line: Line) -> Outcome[SellsAt | None]:
    figure, *others = node.amounts
    money = money_of(figure, node.names[0], line)
    reports = list(money.diagnostics)
    weight = next((amount for amount in others if amount.unit != "%"), None)
    taxed = next((amount for amount in others if amount.unit == "%"), None)
    grams = None if weight is None else worth(weight, MASS)
    if weight is not None and not grams:
        place = line.place(weight.start, weight.end)
        reports.append(
            report("sells-at-unclear", place, "a price is for one weight", "write it like `sells at 12 EUR for 1 kg`")
        )
    tax = None if taxed is None else share_of(taxed)
    if taxed is not None and tax is None:
        place = line.place(taxed.start, taxed.end)
        message = f"`{line.body[taxed.start : taxed.end]}` is no tax"
        reports.append(report("sells-at-unclear", place, message, "write it like `tax 10% in it`"))
    if money.value is None or reports:
        return Outcome(None, tuple(reports))
    return Outcome(SellsAt(money.value, grams, tax, line.place()))


def _date_mark(node: Setting, line: Line) -> Outcome[DateMark | None]:
    time, *at = node.amounts
    seconds = worth(time, TIME)
    if not seconds:
        message = f"`{line.body[time.start : time.end]}` does not make a date"
        help = f"write one time, as in `{node.key} 6 d`"
        return Outcome(None, (report("date-mark-unclear", line.place(time.start, time.end), message, help),))
    return Outcome(DateMark(node.key, seconds, celsius(at[0]) if at else None, line.place()))


def _two_judgements(sale: Sale) -> Iterator[Diagnostic]:
    """An allergen that is said to be kept apart, and that may be in it all the same."""
    apart = {allergen: one.place for one in sale.contacts if one.apart for allergen in one.allergens}
    for one in sale.contacts:
        for allergen in () if one.apart else one.allergens:
            if allergen in apart:
                message = f"{allergen} is kept apart by one line, and may be in it by another"
                help = "keep the line that is true: who is kept apart from it in full need not be warned of it"
                yield report("apart-and-may-contain", one.place, message, help, (apart[allergen], "kept apart here"))
