"""Texts by the hundred thousand, typed in haste or in malice, each tidied and held against what was typed.

`PYTHONPATH=tests python -m normal.many_texts [NUMBER] [SEED]`. Most are a few lines of the demo and the corpora under their headings;
the fuzzer (`fuzz.run --trial tidying`) takes whole files. What goes wrong is printed with its text, and it goes on.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from fuzz.disturbed import disturbed
from fuzz.texts import any_text, with_slips
from fuzz.trials.tidying import tidying

TESTS = Path(__file__).parent.parent
PIECES = (
    "salt", "rye", "2%", "20 g", "1 1/2 lb", "½", "3-4 h", "12 min", "240°C", "at", "at least", "to", "pH", "with", "a fold", "after",
    "2 folds", "every", "in", "on", "into", "tins", "as", "slow", "covered", "speed 2", "steam", "vent open", "each", "in all", "a side",
    "6 at a time", "loses 3%", "may wait", "until", '"x"', "“y", "”", "„z”", ",", ", ", "and", "#", " # remark", "optional", "by hand",
    "floor", "core", "falling", "counted as flour", "of all flour", "to taste", "mix", "bake", "place", "add", "hold back", "keep",
    "formula", "levain", "kitchen", "tin", "per 100 g", "x", "-", "–", ".", ":", "\t", "\u00a0", "\u2028", "\x0c", "é", "0", "\n    ", "\n  ", "\n",
)  # fmt: skip


def small_text(rng: random.Random) -> str:
    how = rng.random()
    if how < 0.02:
        return any_text(rng)
    if how < 0.4:
        blocks = rng.choice(
            ("formula X\n  dough\n    ", "kitchen X\n  ", "larder X\n  rye\n    ", "preparation X\n  ", "")
        )
        return blocks + " ".join(rng.choice(PIECES) for _ in range(rng.randint(1, 12)))
    rows = rng.choice(paragraphs())
    text = "\n".join(rows)
    return with_slips(text, rng) if how < 0.7 else disturbed(text, rng)


@cache
def paragraphs() -> tuple[tuple[str, ...], ...]:
    """A few lines that stand together, under the headings over them, of every file of the demo and the corpora."""
    found: list[tuple[str, ...]] = []
    for path in sorted([*TESTS.parent.glob("recipes/**/*.bake"), *TESTS.glob("corpus/**/*.bake")]):
        rows = path.read_text(encoding="utf-8").split("\n")
        for at in range(0, len(rows), 3):
            over: list[str] = []
            deep = 99
            for row in reversed(rows[: at + 1]):
                indent = len(row) - len(row.lstrip())
                if row.strip() and row.lstrip()[0] != "#" and indent < deep:
                    over.insert(0, row)
                    deep = indent
            found.append((*over, *rows[at + 1 : at + 4]))
    return tuple(found)


def wrong(number: int, seed: int) -> Iterator[tuple[str, str]]:
    """What is wrong with the tidied text, and what was typed, of so many texts."""
    for at in range(number):
        rng = random.Random(f"{seed} {at}")
        text = small_text(rng)
        try:
            tidying(text, rng)
        except Exception as fault:
            yield f"{seed} {at}: {type(fault).__name__}: {fault}", text


if __name__ == "__main__":
    many, seed = map(int, [*sys.argv[1:], *("100000", "1")[len(sys.argv) - 1 :]])
    failures = 0
    for fault, text in wrong(many, seed):
        failures += 1
        print(fault, repr(text), sep="\n", flush=True)
    print(f"{many} texts, seed {seed}: {failures} failures")
