"""A price without the amount it is for, and money whose sign is of several countries."""

from __future__ import annotations

import re

from manchet.diagnostics.reports import list_of_words
from manchet.quantities.money import SIGNS
from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.loose.rules import any_of
from manchet.syntax.mistakes.faults import Fault, LineTrouble, choices

_OF_SEVERAL = {sign: currencies for sign, currencies in SIGNS.items() if len(currencies) > 1 and not sign.isalpha()}
_SIGN_FIRST = re.compile(rf"(?P<sign>{any_of(_OF_SEVERAL)}) ?(?P<figure>[0-9]+(?:\.[0-9]+)?)")
_PRICE = re.compile(r"price (?P<money>[0-9.]+ ?(?:[A-Z]{3}|[^\w\s]))")


def whose_money(t: LineTrouble) -> Fault | None:
    """`price $21.40 for 25 kg`: there are several dollars."""
    found = _SIGN_FIRST.search(t.body) if t.rule in _OF_MONEY and len(t.body) < LONGEST else None
    if found is None:
        return None
    ways = tuple(f"{found['figure']} {currency}" for currency in _OF_SEVERAL[found["sign"]])
    words = {"text": found[0], "form": f"write {list_of_words(tuple(f'`{way}`' for way in ways))}"}
    return Fault("unreadable-line", *found.span(), words, choices(*found.span(), *ways))


_OF_MONEY = ("setting", "sale", "bare_name")


def price_of_how_much(t: LineTrouble) -> Fault | None:
    """`price 21.40 EUR`: for how much?"""
    found = _PRICE.fullmatch(t.body) if t.context == "entry" and len(t.body) < LONGEST else None
    if found is None:
        return None
    form = f"write for how much, as in `price {found['money']} for 25 kg`"
    return Fault("line-unfinished", 0, len(t.body), {"text": t.body, "form": form})
