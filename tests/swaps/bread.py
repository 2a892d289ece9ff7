"""A bread to swap in, written in each of the three ways, and what a swap makes of it."""

from __future__ import annotations

from fractions import Fraction

from works import bakery_of

from manchet.formula.model import Formula
from manchet.workspace.bakery import Bakery
from manchet.workspace.changes import Changes

STEPS = """
    mix by hand 5 min
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 220 C
    cool 2 h
"""

MATERIALS = {
    "white flour": "100", "water": "58", "salt": "2", "fresh yeast": "2", "milk": "10", "butter": "6", "honey": "4",
}  # fmt: skip


def bread(way: str, **percents: str) -> str:
    """The bread by "overall", by "explicit" stages under overall, by "weight" or on "dough flour"."""
    materials = {**MATERIALS, **{name.replace("_", " "): figure for name, figure in percents.items()}}
    rows = [(name, figure) for name, figure in materials.items() if figure]
    lines = "".join(f"    {name} {figure}%\n" for name, figure in rows)
    head = "formula Bread\n  makes 4 loaves at 500 g dough\n"
    sponge = "  sponge with 20% of all flour\n    white flour 100%\n    water 60%\n    fresh yeast 0.5%\n"
    sponge += "    mix by hand 3 min\n    ripen covered 2 h at 24 C\n"
    match way:
        case "overall":
            return f"{head}  overall\n{lines}{sponge}  dough\n    sponge\n    everything else{STEPS}"
        case "explicit":
            every = lines.replace("%", "% of all flour")
            return f"{head}  overall\n{lines}  dough\n{every.rstrip()}{STEPS}"
        case "weight":
            weights = "".join(f"    {name} {figure if '.' in figure else f'{figure}0'} g\n" for name, figure in rows)
            return f"formula Bread\n  makes 1 loaf at 500 g dough\n  dough\n{weights.rstrip()}{STEPS}"
        case _:
            return f"{head}  written on dough flour\n  dough\n{lines.rstrip()}{STEPS}"


WAYS = ("overall", "explicit", "weight", "dough flour")


def with_swaps(text: str, *swaps: str) -> Bakery:
    return bakery_of(text, changes=Changes(swaps, frozenset({"bread"})))


def sound_formula(bakery: Bakery) -> Formula:
    errors = [d.message for d in bakery.diagnostics if d.severity.value == "error"]
    assert not errors, errors
    (formula,) = bakery.formulas
    return formula


def shares(formula: Formula) -> dict[tuple[str, str], Fraction]:
    """Everything weighed, by stage and name: grams per gram of all flour."""
    found = {
        ("overall", line.ingredient.name if line.ingredient else line.stage): line.share for line in formula.overall
    }
    return found | {(stage.key, p.key): p.share for stage in formula.stages for p in stage.portions}


def share(formula: Formula, name: str) -> Fraction:
    return shares(formula).get(("overall", name), Fraction(0))


def water_of_powders(formula: Formula) -> Fraction:
    """What powdered milk brings of its own: no water in the dough's sense, and a part of the milk that it stands for."""
    return sum(
        (
            line.share * line.ingredient.composition["water"] / 100
            for line in formula.overall
            if line.ingredient is not None and line.ingredient.name.endswith(("milk powder", "whey powder"))
        ),
        Fraction(0),
    )
