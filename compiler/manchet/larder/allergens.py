"""The words for allergens that the larder takes, and the spellings it takes for them.

The fourteen groups of Regulation (EU) 1169/2011, Annex II, each cereal and nut by its own name; and pine nuts, which
are a tree nut in the United States only (FDA, guidance on food allergens, edition 5, January 2025). `gluten` may stand
beside a cereal; it does not replace it.
"""

from __future__ import annotations

from collections.abc import Iterable

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import one_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import nearest
from manchet.larder.names import key
from manchet.source.text import Line
from manchet.syntax.nodes import Word

_WORDS = {
    "wheat": ("spelt", "khorasan", "durum"),
    "rye": (),
    "barley": (),
    "oats": (),
    "gluten": (),
    "crustaceans": ("crustacean shellfish", "shrimps", "prawns"),
    "egg": (),
    "fish": (),
    "peanut": ("groundnut",),
    "soya": ("soy", "soybean", "soya bean"),
    "milk": ("lactose", "dairy"),
    "almond": (),
    "hazelnut": ("filbert",),
    "walnut": (),
    "cashew": ("cashew nut",),
    "pecan": ("pecan nut",),
    "brazil nut": (),
    "pistachio": ("pistachio nut",),
    "macadamia": ("macadamia nut", "queensland nut"),
    "pine nut": ("pine kernel",),
    "celery": ("celeriac",),
    "mustard": (),
    "sesame": ("sesame seed",),
    "sulphites": ("sulfites", "sulphur dioxide", "sulfur dioxide"),
    "lupin": ("lupine",),
    "molluscs": ("mollusks",),
}

ALLERGENS = tuple(_WORDS)

_SPELLINGS = {key(spelling): word for word, others in _WORDS.items() for spelling in (word, *others)}


def allergen(name: str) -> str | None:
    """The larder's word for an allergen as someone wrote it; None if it is none of the listed ones."""
    return _SPELLINGS.get(key(name))


def allergens_of(words: Iterable[Word], line: Line) -> Outcome[tuple[str, ...]]:
    """The allergens that some words name, each once; a word that names none is kept as it stands, with a report."""
    found: dict[str, None] = {}
    reports: list[Diagnostic] = []
    for word in words:
        known = allergen(word.text)
        if known is None:
            near = nearest(word.text, ALLERGENS)
            place = line.place(word.start, word.end)
            message = f"`{word.text}` is not one of the listed allergens"
            help = (f"did you mean `{near}`? " if near else "") + f"they are {list_of_words(ALLERGENS, 'and')}"
            fixes = one_of(place, [near] if near else ())
            reports.append(report("allergen-unknown", place, message, help, fixes=fixes))
        found[known or word.text] = None
    return Outcome(tuple(found), tuple(reports))
