"""No figure of the demo or of a sound bread lies outside the range that its own rule gives."""

from __future__ import annotations

import re
from pathlib import Path

from works import bakery_of

from manchet.figures.derived import figures_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import Bakery, read

ROOT = Path(__file__).parents[2]
RANGE = re.compile(r"an estimate, ([\d., ]+?) to ([\d., ]+?) ")


def outside(bakery: Bakery) -> tuple[int, list[str]]:
    """How many figures give a range, and those that lie outside it."""
    told, found = 0, []
    for formula in bakery.formulas:
        work = bakery.work(formula).value
        figures = None if work is None else figures_of(work)
        for name, figure in {} if figures is None else {**figures.totals, **figures.estimates}.items():
            if match := RANGE.search(figure.rule):
                told += 1
                low, high = (float(end.replace(",", "").replace(" ", "")) for end in match.groups())
                if not low <= float(figure.value) <= high:
                    found.append(f"{formula.name}: {name} {float(figure.value)} {figure.unit}, {figure.rule[:60]}")
    return told, found


def test_every_figure_lies_in_the_range_it_gives() -> None:
    demo = sorted((ROOT / "recipes").rglob("*.bake"))
    bakeries = [read([SourceText(str(path), path.read_text(encoding="utf-8")) for path in demo])]
    bakeries += [bakery_of(path.read_text(encoding="utf-8")) for path in (ROOT / "tests/corpus/quiet").glob("*.bake")]
    results = [outside(bakery) for bakery in bakeries]
    assert sum(told for told, _ in results) > 1000
    assert [one for _, found in results for one in found] == []
