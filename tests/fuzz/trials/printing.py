from __future__ import annotations

import random

from fuzz.asked import any_amount, any_looks, print_options
from fuzz.read import bakery_at, has_errors, without_fault

from manchet.batch.order import AS_WRITTEN
from manchet.workspace.bakery import Bakery
from manchet.workspace.file_versions import Version
from manchet.workspace.press import Press
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import Rendered, render_formula


def printing(text: str, rng: random.Random) -> None:
    """What check finds sound is printed; what is asked for is printed or refused in words; the same again is the same bytes."""
    bakery = bakery_at(text)
    sound = not has_errors(bakery.diagnostics)
    for at, formula in enumerate(bakery.formulas[:3]):
        words = [*any_looks(rng), *rng.choice(([], any_amount(formula, rng)))]
        options = print_options(words)
        if options is None or (formula.preparation and not rng.random() < 0.2):
            continue
        made = _printed(bakery, at, options)
        refused = options.order != AS_WRITTEN and has_errors(made.diagnostics)
        if sound and not refused and "sheet" in options.kinds and not formula.preparation:
            assert made.files, f"{formula.name} is sound, and nothing is printed of {words}"
            assert not has_errors(made.diagnostics), f"{formula.name} is sound, and {made.diagnostics}"
        assert made.files == _printed(bakery_at(text), at, options).files, f"not the same again: {words}"


def _printed(bakery: Bakery, at: int, options: PrintOptions) -> Rendered:
    made = render_formula(bakery, bakery.formulas[at], options, Version("x.bake", "0"), Press())
    without_fault(made.diagnostics)
    return made
