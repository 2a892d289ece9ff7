"""When two ways of writing a name mean the same ingredient."""

from __future__ import annotations

import unicodedata

from manchet.diagnostics.suggest import fold

_ALIKE = str.maketrans({"-": " ", "‐": " ", "‑": " ", "–": " ", "'": "", "’": ""})


def key(name: str) -> str:
    """The name as the larder looks it up: without case, accents, hyphens, apostrophes and plurals.

    `Sunflower-Seeds` and `sunflower seed`, `purée` and `puree`, `baker's flour` and `bakers flour` have one key.
    A key is for comparison only and never printed.
    """
    text = fold(name)
    if not text.isascii():
        text = "".join(sign for sign in unicodedata.normalize("NFD", text) if not unicodedata.combining(sign))
    return " ".join(map(_singular, text.translate(_ALIKE).split()))


def _singular(word: str) -> str:
    """The word without its plural ending; applied to both sides of a comparison, so it need not be good English."""
    if len(word) < 4 or not word.endswith("s") or word.endswith(("ss", "us", "is")):
        return word
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    return word[:-2] if word.endswith("oes") else word[:-1]
