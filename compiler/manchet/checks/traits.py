"""What a formula has, in the words the registry of checks goes by."""

from __future__ import annotations

from manchet.batch.work import Work
from manchet.checks.looking import LOAVES, all_steps, ingredients, portions
from manchet.formula.model import Way

RAISING = frozenset({"class yeast", "class sweet-dough yeast", "class culture", "class raising agent"})
COOKING = frozenset({"verb simmer", "verb boil", "verb heat"})


def traits_of(work: Work) -> frozenset[str]:
    """`class …` of its ingredients, `verb …` of its steps, `stage …`, `kind …`, `kitchen …`, and single words."""
    formula, kitchen = work.formula, work.kitchen
    found = {f"kind {formula.kind}"}
    found |= {f"class {ingredient.class_}" for ingredient in ingredients(formula)}
    found |= {f"stage {stage.word}" for stage in formula.stages}
    for step in all_steps(formula):
        found.add(f"verb {step.verb}")
        if step.applied is not None:
            found.add("applied")
        for reach in step.reaches:
            found.add("level" if reach.what in ("below rim", "volume") else reach.what)
    if any(portion.celsius is not None for portion in portions(formula)) or not COOKING.isdisjoint(found):
        found.add("warm")
    if any(stage.keeps for stage in formula.stages):
        found.add("keep")
    if RAISING.isdisjoint(found):
        found.add("unraised")
    found |= {
        word
        for word, true in (
            ("a loaf", formula.kind in LOAVES),
            ("by weight", formula.way is Way.BY_WEIGHT and not formula.preparation),
            ("unsalted", "class salt" not in found),
            ("unbaked", "verb bake" not in found),
            ("undivided", "verb divide" not in found),
            ("bake loss", formula.bake_loss is not None),
            ("dough loss", formula.dough_loss > 0),
            ("good for", formula.good_for is not None),
            ("preparation", formula.preparation),
            ("kitchen mixer", kitchen.mixers),
            ("kitchen oven", kitchen.ovens),
            ("kitchen vessel", kitchen.vessels),
            ("kitchen air", kitchen.air is not None),
        )
        if true
    }
    return frozenset(found)
