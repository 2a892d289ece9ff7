"""Lines of the head: how it is sold and kept, what it is called."""

from __future__ import annotations

from fractions import Fraction

from manchet.comparison.values import HeadChange, HeadValue
from manchet.formula.ranges import Range
from manchet.sheets.comparison.from_to import sided_line, words_line
from manchet.sheets.comparison.view import ChangedLine
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.money import money_text
from manchet.sheets.parts.wording import single

_NAMES = {
    "price": "compared.price",
    "net weight": "compared.net",
    "sold at": "compared.sold_at",
    "never under": "compared.never_under",
    "best before": "compared.best_before",
    "use by": "compared.use_by",
    "good for": "compared.good_for",
    "kind": "compared.kind",
    "about": "compared.about",
    "note": "compared.note",
    "called": "compared.called_on_label",
    "store": "compared.store",
    "opened": "compared.opened",
    "says how much of": "compared.how_much_of",
}


def head_line(change: HeadChange, m: Measures) -> ChangedLine:
    if change.what == "sold":
        return _sold(change, m)
    name = m.words[_NAMES[change.what]]
    if change.noun:
        name = m.words.say("compared.in_stage", change.noun, name)
    was, now = (None if value is None else _value(change.what, value, m) for value in (change.before, change.after))
    return sided_line(name, was, now, m)


def _sold(change: HeadChange, m: Measures) -> ChangedLine:
    now = isinstance(change.after, str)
    way = change.after if now else change.before
    said = m.words.say("compared.sold_now" if now else "compared.sold_no_longer", str(way))
    return words_line(m.words.say("compared.in_stage", change.noun, said) if change.noun else said)


def _value(what: str, value: HeadValue, m: Measures) -> str:
    match value:
        case str():
            return value if what == "kind" else m.words.say("compared.quoted", value)
        case Range():
            return m.words.say("compared.at_most_old", m.time(value))
        case Fraction():
            return m.mass(value)
        case (Fraction() as amount, str() as currency):
            return f"{money_text(amount, currency)}{NBSP}{currency}"
        case (Fraction() as seconds, Range() as celsius):
            return m.words.say("compared.good_at", m.time(single(seconds)), m.degrees(celsius))
        case (Fraction() as seconds, _):
            return m.time(single(seconds))
    raise TypeError(what)
