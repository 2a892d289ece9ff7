from __future__ import annotations

import os
import random
from fractions import Fraction

from bad_input.put_together import examine, run
from run_length import at_length
from works import bakery_of

from manchet.batch.order import Order

OF_NOTHING = "formula New loaf\n  makes 4 loaves at 900 g dough\n\n  dough\n    mix fast 6 min to 26 C\n"


def test_bakeries_put_together_hold_what_is_promised() -> None:
    seconds = float(os.environ.get("MANCHET_FUZZ_SECONDS", at_length(60, 4)))
    assert run(seconds, seed=20261129) > 20


def test_so_much_dough_of_nothing_is_refused() -> None:
    bakery = bakery_of(OF_NOTHING)
    made = bakery.work(bakery.formulas[0], Order(dough=Fraction(1000)))
    assert made.value is None and [one.name for one in made.diagnostics] == ["no-weight"]


def test_a_bread_of_nothing_by_weight_is_looked_over() -> None:
    for way in ("", "  overall\n", "  written on dough flour\n"):
        examine(OF_NOTHING.replace("\n\n", f"\n{way}\n"), random.Random(1))
