"""What a baker does to a bread of an afternoon, and what is told of it: the cause, in a baker's terms, and not what follows from it."""

from __future__ import annotations

import pytest
from comparison.breads import EIDER, GULL, Edits, edited, lines

TWELVE: dict[str, tuple[str, Edits, list[str]]] = {
    "salt down": (GULL, (("2.1%", "1.9%"),), ["salt 2.1 → 1.9 %: 156 g → 141 g today"]),
    "wetter": (GULL, (("78%", "82%"),), ["water 78 → 82 %: 5,674 g → 5,965 g today"]),
    "size only": (GULL, (("16 loaves", "24 loaves"),), ["makes 16 loaves of 850 g → 24 loaves of 850 g"]),
    "butter for malt": (
        EIDER,
        (("malt syrup             2%", "butter                 2%"),),
        [
            "now contains MILK (from butter)",
            "no longer contains BARLEY (was from malt syrup)",
            "butter 2 %, new: 135 g today",
            "without malt syrup (was 2 %)",
            "sugar 1.43 → 0 %",
            "fat 0 → 1.62 %",
        ],
    ),
    "poolish renamed, moved, more of it": (
        GULL,
        (
            ("  poolish with 20% of all flour", "  sponge overnight sponge with 24% of all flour"),
            ("12-14 h at 20 C", "14-16 h at 18 C"),
            ("    poolish\n", "    overnight sponge\n"),
        ),
        [
            "overnight sponge with 20 → 24 % of all flour (prefermented 32.9 → 36.9 %)",
            "overnight sponge: ripen 12–14 h, at 20 °C → 14–16 h, at 18 °C",
            "from first job to ready 32 h 7 min → 34 h 7 min",
            "poolish is called overnight sponge now, and is a sponge",
        ],
    ),
    "levain share": (
        GULL,
        (("levain with 12%", "levain with 16%"),),
        ["levain with 12 → 16 % of all flour (prefermented 32.9 → 37.2 %)"],
    ),
    "dough warmer, bulk shorter, a fold more": (
        GULL,
        (
            ("to 25 C until", "to 27 C until"),
            ("2 h at 25 C with 2 folds every 40 min", "90 min at 27 C with 3 folds every 25 min"),
        ),
        [
            "dough: mix fast to 25 °C → to 27 °C",
            "dough: ferment 2 h, at 25 °C, 2 folds every 40 min → 90 min, at 27 °C, 3 folds every 25 min",
            "from first job to ready 32 h 7 min → 31 h 37 min",
        ],
    ),
    "salt later: a step moved": (
        EIDER,
        (
            (
                "    add salt and seeds\n    mix fast 2 min to 28 C\n",
                "    mix fast 2 min to 28 C\n    add salt and seeds\n    mix slow 1 min\n",
            ),
        ),
        ["dough: add salt, seeds comes after mix fast now", "dough: mix slow 1 min, new"],
    ),
    "flour exchanged, same per cent": (
        GULL,
        (("emmer flour", "spelt flour"),),
        ["spelt flour 20 % for emmer flour: 1,486 g today"],
    ),
    "bake phases": (
        EIDER,
        (("35-40 min at 230 C falling to 205 C to 97 C", "30-34 min at 235 C falling to 205 C to 98 C"),),
        [
            "dough: bake 35–40 min, at 230 °C falling to 205 °C, to 97 °C core → "
            "30–34 min, at 235 °C falling to 205 °C, to 98 °C core",
            "from first job to ready 26 h 34 min → 26 h 29 min",
        ],
    ),
    "only words and remarks": (
        EIDER,
        (
            ("small cracks show", "cracks as wide as a straw"),
            ("# The crack is the sign", "# Look: the crack is the sign"),
        ),
        ["dough: prove “small cracks show” → “cracks as wide as a straw”"],
    ),
    "twelve edits at once": (
        GULL,
        (
            ("16 loaves at 850", "20 loaves at 800"),
            ("78%", "80%"),
            ("2.1%", "1.8%"),
            ("millet                 8%", "millet                10%"),
            ("poolish with 20", "poolish with 25"),
            ("levain with 12", "levain with 10"),
            ("fast 2 min to 25 C", "fast 3 min to 24 C"),
            ("rest covered 20 min", "rest covered 30 min"),
            ("shape long", "shape oval"),
            ("rice flour 6 g", "rice flour 8 g"),
            ("simmer 15 min", "simmer 20 min"),
            ("bake 12 min at 255", "bake 14 min at 250"),
        ),
        [
            "makes 16 loaves of 850 g → 20 loaves of 800 g",
            "water 78 → 80 %: 6,715 g → 6,888 g today",
            "salt 2.1 → 1.8 %: 181 g → 155 g today",
            "poolish with 20 → 25 % of all flour",
            "levain with 12 → 10 % of all flour",
            "prefermented flour 32.9 → 35.8 %",
            "millet 8 → 10 %: 689 g → 861 g today",
            "dough: mix fast 2 min, to 25 °C → 3 min, to 24 °C",
            "millet porridge: simmer 15 min → 20 min",
            "and 5 more (--all)",
        ],
    ),
}


@pytest.mark.parametrize("title", TWELVE)
def test_what_is_told(title: str) -> None:
    bread, edits, told = TWELVE[title]
    assert lines(bread, edited(bread, *edits)) == told


@pytest.mark.parametrize("title", TWELVE)
def test_nothing_is_left_out_when_all_is_asked_for(title: str) -> None:
    bread, edits, told = TWELVE[title]
    everything = lines(bread, edited(bread, *edits), everything=True)
    head = told[:-1] if told[-1].startswith("and ") else told
    assert everything[: len(head)] == head
    assert len(everything) == (len(told) if head == told else len(head) + int(told[-1].split()[1]))


@pytest.mark.parametrize("title", TWELVE)
def test_an_edited_bread_with_itself_is_the_same(title: str) -> None:
    bread, edits, _ = TWELVE[title]
    after = edited(bread, *edits)
    assert lines(after, after) == []
