"""The closed words of a kitchen: what it says of itself, and what may be chosen from."""

from __future__ import annotations

from manchet.quantities.units import MEASURES
from manchet.syntax.openings import LINES

WORD_SETS = {
    "measures": {"us": "US", "american": "US", "metric": "metric", "imperial": "imperial", "british": "imperial"},
    "words": {"british": "British", "uk": "British", "english": "British", "american": "American", "us": "American"},
    "yeast": {
        "fresh": "fresh",
        "fresh yeast": "fresh",
        "active dry": "active dry",
        "active dry yeast": "active dry",
        "instant": "instant",
        "instant yeast": "instant",
    },
}
SHOWN = {
    "measures": tuple(MEASURES),
    "words": ("British", "American"),
    "yeast": ("fresh", "active dry", "instant"),
}
SALE_LINES = (
    "sells in", "name and address", "also handles", "may contain", "kept apart from", "work", "prices are old after", "tax", "margin", "labels",
)  # fmt: skip
"""What a kitchen says of selling."""
SEVERAL = frozenset({"packs", "may contain", "kept apart from"})
"""Lines that a kitchen may have more than one of."""
OWN_LINES = tuple(
    line.words
    for line in LINES
    if "kitchen" in line.under and line.reading.rule == "setting" and line.words not in SALE_LINES
)
"""What else a kitchen says of itself."""
