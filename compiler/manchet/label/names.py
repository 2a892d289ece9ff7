"""What a thing is called in a list of ingredients, and which part of that is set off because it names an allergen."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import TYPE_CHECKING

from manchet.label.markets import allergen_list
from manchet.records import NamedTuple

if TYPE_CHECKING:
    from manchet.larder.ingredient import ListedAs


class Run(NamedTuple):
    """A part of a printed text. `strong`: it names an allergen, and is set in capitals and bold."""

    text: str
    strong: bool = False


Runs = tuple[Run, ...]


def plain(runs: Iterable[Run]) -> str:
    """In capitals where it is set off, as it survives a printer without bold."""
    return "".join(run.text.upper() if run.strong else run.text for run in runs)


def listed_name(name: str, listed_as: Iterable[ListedAs], market: str) -> str:
    """The name for a market, else for every market, else its own."""
    by_market = {one.market: one.text for one in listed_as}
    return by_market.get(market) or by_market.get("") or name


_SHOWN_BY = {
    "oats": ("oat", "oats"),
    "soya": ("soya", "soy"),
    "egg": ("egg", "eggs"),
    "crustaceans": ("crustacean", "crustaceans"),
    "molluscs": ("mollusc", "molluscs"),
    "sulphites": ("sulphite", "sulphites", "sulfite", "sulfites"),
}
"""The words that name an allergen as the law does. Spelt and khorasan are wheat, celeriac is celery: it is written after them."""


def set_off(name: str, allergens: Iterable[str], market: str) -> Runs:
    """The name with every word that names one of its allergens set off; those that no word names stand after it in brackets."""
    runs: list[Run] = [Run(name)]
    missing: list[str] = []
    names = allergen_list(market)
    for allergen in allergens:
        if allergen not in names.words:
            continue
        parted = [part for run in runs for part in _parted(run, _pattern(allergen))]
        if parted == runs and not any(run.strong and _pattern(allergen).fullmatch(run.text) for run in runs):
            missing.append(names.name(allergen))
        runs = parted
    if missing:
        runs.append(Run(" ("))
        for n, word in enumerate(missing):
            runs += [Run(", ")] if n else []
            runs.append(Run(word, True))
        runs.append(Run(")"))
    return tuple(runs)


def _pattern(allergen: str) -> re.Pattern[str]:
    words = _SHOWN_BY.get(allergen, (allergen, f"{allergen}s"))
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, sorted(words, key=len, reverse=True)))})\b", re.IGNORECASE)


def _parted(run: Run, pattern: re.Pattern[str]) -> list[Run]:
    if run.strong:
        return [run]
    found: list[Run] = []
    at = 0
    for match in pattern.finditer(run.text):
        found += [Run(run.text[at : match.start()])] if match.start() > at else []
        found.append(Run(match[0], True))
        at = match.end()
    return [*found, Run(run.text[at:])] if at < len(run.text) else found
