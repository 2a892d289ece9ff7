"""The demo bakery is in order: no error, no warning, and everything it names is there."""

from __future__ import annotations

from collections import Counter
from functools import cache
from pathlib import Path

from works import work_in

from manchet.diagnostics.diagnostic import Severity
from manchet.diagnostics.suggest import fold
from manchet.diagnostics.text import short
from manchet.formula.model import Formula
from manchet.source.text import SourceText
from manchet.workspace.bakery import Bakery, read

RECIPES = Path(__file__).parents[2] / "recipes"

HONEST_NOTES: frozenset[str] = frozenset({"moved-by-rounding", "label-not-approved", "label-figure-unknown"})
"""Notes that the demo keeps, by name: each is there because it is true of the bread."""


@cache
def _demo() -> Bakery:
    paths = sorted(RECIPES.rglob("*.bake"))
    return read(tuple(SourceText(str(p.relative_to(RECIPES)), p.read_text(encoding="utf-8")) for p in paths))


def test_no_error_and_no_warning() -> None:
    assert [short(d) for d in _demo().diagnostics if d.severity is not Severity.NOTE] == []


def test_only_honest_notes() -> None:
    notes = [d for d in _demo().diagnostics if d.severity is Severity.NOTE]
    assert [short(d) for d in notes if d.name not in HONEST_NOTES] == []
    assert {d.name for d in notes} == HONEST_NOTES


def test_ten_formulas_three_preparations_three_kitchens_five_plans() -> None:
    demo = _demo()
    formulas = [formula for formula in demo.formulas if not formula.preparation]
    assert len(formulas) >= 10
    assert len(demo.formulas) - len(formulas) >= 3
    assert len(demo.kitchens) == 3
    assert len(demo.plans) == 5
    assert len({formula.kind for formula in formulas}) >= 10
    assert {formula.way for formula in formulas} == set(type(formulas[0].way))


def test_every_culture_carries_on() -> None:
    """What a bread takes out of a pot it puts back into it, or more."""
    demo = _demo()
    assert len(demo.formulas) >= 27
    missing = {formula.name: _missing_from_its_pots(formula, demo) for formula in demo.formulas}
    assert {name: pots for name, pots in missing.items() if pots} == {}


def _missing_from_its_pots(formula: Formula, demo: Bakery) -> dict[str, float]:
    """Grams that a bread takes out of a pot and does not put back, by the pot's name."""
    batch = work_in(demo, formula).batch
    pots: Counter[str] = Counter()
    for made in batch.stages:
        for line in made.weighed:
            if line.portion.ingredient is not None and line.portion.ingredient.class_ == "culture":
                pots[fold(line.portion.name)] -= line.grams
        for pot, grams in (*made.kept, *made.returned):
            pots[fold(pot)] += grams
        for keep in made.stage.keeps:
            if keep.how == "left":
                pots[fold(keep.name)] += made.left
    return {pot: -float(grams) for pot, grams in pots.items() if grams < 0}


def test_pictures_are_there_and_are_drawings_without_addresses() -> None:
    for path in RECIPES.rglob("*.bake"):
        for line in path.read_text(encoding="utf-8").splitlines():
            if line.strip().startswith("picture"):
                picture = path.parent / line.split('"')[1]
                drawing = picture.read_text(encoding="utf-8")
                assert "<title>" in drawing
                assert "href" not in drawing and "<script" not in drawing


def test_figures_are_said_to_be_invented() -> None:
    assert "Every figure in this folder is invented" in (RECIPES / "bakehouse.bake").read_text(encoding="utf-8")
