"""What was found once is found no more: each text is given to every trial again."""

from __future__ import annotations

import random
from fractions import Fraction
from pathlib import Path

from every import every
from fuzz.run import TRIALS
from works import bakery_of

from manchet.batch.order import Order

OF_NOTHING = "formula New loaf\n  makes 4 loaves at 900 g dough\n\n  dough\n    mix fast 6 min to 26 C\n"
FOUND = [path.read_text(encoding="utf-8") for path in sorted((Path(__file__).parent / "found").glob("*.bake"))]
OF_NOTHING_TOO = (
    OF_NOTHING,
    OF_NOTHING.replace("  makes 4 loaves at 900 g dough\n", ""),
    OF_NOTHING.replace("\n\n", "\n  overall\n\n"),
    OF_NOTHING.replace("\n\n", "\n  written on dough flour\n\n"),
    "preparation Paste\n",
)


def test_so_much_dough_of_nothing_is_refused() -> None:
    bakery = bakery_of(OF_NOTHING)
    for order in (Order(dough=Fraction(1000)), Order(flour=Fraction(1000)), Order()):
        made = bakery.work(bakery.formulas[0], order)
        assert made.value is None and [one.name for one in made.diagnostics] == ["no-weight"]


@every([(name, text) for name in TRIALS for text in (*FOUND, *OF_NOTHING_TOO)], at_least=60)
def test_what_was_found_holds(name: str, text: str) -> None:
    for chance in range(3):
        TRIALS[name](text, random.Random(chance))
