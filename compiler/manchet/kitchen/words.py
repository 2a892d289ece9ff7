"""The closed words of a kitchen: what stands in it, which lines each thing has, and what may be chosen from."""

from __future__ import annotations

from manchet.diagnostics.suggest import fold
from manchet.larder.yeast_factors import FACTORS
from manchet.quantities.units import MEASURES

COLD_WORDS = ("fridge", "freezer", "prover")
VESSEL_WORDS = ("tin", "tray", "basket", "couche", "griddle", "pot", "bench")
THINGS = ("mixer", "oven", "scale", *COLD_WORDS, *VESSEL_WORDS)

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
    "yeast factors": {fold(name): name for name in FACTORS},
}
SHOWN = {
    "measures": tuple(MEASURES),
    "words": ("British", "American"),
    "yeast": ("fresh", "active dry", "instant"),
    "yeast factors": tuple(FACTORS),
}
OWN_LINES = ("air", "flour", "tap", "hands", *WORD_SETS)

LINES = {
    "mixer": ("takes", "stiff dough up to", "slow", "fast", "warms"),
    "oven": (
        "heat",
        "hottest",
        "holds",
        "recovers",
        "heats in",
        "steam",
        "floor",
        "round floor",
        "door",
        "falls",
        "each load takes",
    ),
    "scale": ("reads", "up to"),
    **dict.fromkeys(COLD_WORDS, ("keeps", "holds")),
    **dict.fromkeys(VESSEL_WORDS, ("volume", "count", "holds")),
    **dict.fromkeys(
        ("tin", "pot"), ("volume", "holds water", "inside", "top", "bottom", "round", "deep", "count", "holds")
    ),
}
