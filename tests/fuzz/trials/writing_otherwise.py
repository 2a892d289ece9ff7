from __future__ import annotations

import json
import random
from collections.abc import Callable
from typing import Any

from fuzz.read import bakery_at
from fuzz.same_bread import permuted, with_remarks

from manchet.diagnostics.suggest import fold
from manchet.figures.derived import figures_of
from manchet.figures.report import report_of
from manchet.workspace.bakery import Bakery


def remarks(text: str, rng: random.Random) -> None:
    """Remarks and blank lines change no figure."""
    same_figures(text, with_remarks, rng)


def permuting(text: str, rng: random.Random) -> None:
    """The order in which the ingredients of a stage are written changes no figure."""
    same_figures(text, permuted, rng)


def same_figures(text: str, otherwise: Callable[[str, random.Random], str], rng: random.Random) -> None:
    other = otherwise(text, rng)
    before, after = _figures(bakery_at(text)), _figures(bakery_at(other))
    assert before.keys() == after.keys(), f"other formulas\n{other}"
    for name in before:
        for key in before[name].keys() | after[name].keys():
            was, becomes = before[name].get(key), after[name].get(key)
            assert was == becomes, f"{name}: {key} is {was} and {becomes}\n{other}"


def _figures(bakery: Bakery) -> dict[str, dict[str, Any]]:
    """The figures of each formula by name, without where they come from."""
    found = {}
    for formula in bakery.formulas:
        work = bakery.work(formula).value
        if work is not None:
            report = report_of(figures_of(work))
            materials = [*report["overall"], *(one for stage in report["stages"] for one in stage["materials"])]
            shares = sorted(json.dumps([one["name"], _bare(one["grams"]), _bare(one["percent"])]) for one in materials)
            named = report["totals"] | report["estimates"]
            found[fold(formula.name)] = {name: _bare(figure) for name, figure in named.items()} | {"lines": shares}
    return found


def _bare(figure: Any) -> Any:
    return None if figure is None else (figure["rounded"], figure["unit"])
