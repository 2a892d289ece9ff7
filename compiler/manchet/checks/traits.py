"""What a formula has, in the words the registry of checks goes by."""

from __future__ import annotations

from typing import TYPE_CHECKING

from manchet.batch.work import Work
from manchet.checks.looking import ingredients, portions
from manchet.formula.model import Way
from manchet.syntax.vocabulary import BY_YEAST, CHILLS, FERMENTS, HOLDS_WATER, IN_OVEN, IN_POT

if TYPE_CHECKING:
    from manchet.larder.selling import Contact

RAISING = frozenset({"class yeast", "class sweet-dough yeast", "class culture", "class raising agent"})
VERBS = {"chills": CHILLS, "ferments": FERMENTS, "in the oven": IN_OVEN, "in the pot": IN_POT}
"""Traits of a formula that does one of these."""


def traits_of(work: Work) -> frozenset[str]:
    """`class …` of its ingredients, `verb …` of its steps, `stage …`, `kind …`, `kitchen …`, and what the vocabulary says of
    them."""
    formula, kitchen, bread = work.formula, work.kitchen, work.bread
    found = {f"kind {formula.kind}"}
    found |= {f"class {ingredient.class_}" for ingredient in ingredients(formula)}
    found |= {f"stage {stage.word}" for stage in formula.stages}
    verbs = {step.verb for step in formula.steps}
    found |= {f"verb {verb}" for verb in verbs}
    found |= {trait for trait, column in VERBS.items() if not column.isdisjoint(verbs)}
    for step in formula.steps:
        if step.applied is not None:
            found.add("applied")
        if step.loses is not None:
            found.add("loses")
        if step.speed is not None and step.speed > 2:
            found.add("a third speed")
        for reach in step.reaches:
            found.add("level" if reach.what in ("below rim", "volume") else reach.what)
    if any(portion.celsius is not None for portion in portions(formula)) or "in the pot" in found:
        found.add("warm")
    if any(stage.keeps for stage in formula.stages):
        found.add("keep")
    if RAISING.isdisjoint(found):
        found.add("unraised")
    found |= {
        word
        for word, true in (
            ("a loaf", bread.loaf),
            ("a hearth loaf", bread.hearth),
            ("a tin loaf", bread.tin),
            ("a rye loaf", bread.flour == "rye"),
            ("named after a step", bread.done_by),
            ("a yeast preferment", any(stage.word in BY_YEAST for stage in formula.stages)),
            ("holds water", any(stage.word in HOLDS_WATER for stage in formula.stages)),
            ("by weight", formula.way is Way.BY_WEIGHT and not formula.preparation),
            ("unsalted", "class salt" not in found),
            ("unbaked", "verb bake" not in found),
            ("without steps", any(not stage.steps for stage in formula.stages)),
            ("undivided", "verb divide" not in found),
            ("bake loss", formula.bake_loss is not None or "loses" in found),
            ("dough loss", formula.dough_loss > 0),
            ("good for", formula.good_for is not None),
            ("preparation", formula.preparation),
            ("sold", formula.sale is not None or any(branch.sale is not None for branch in formula.branches)),
            ("kept apart", any(one.apart for one in _contacts(work))),
            ("kitchen mixer", kitchen.mixers),
            ("kitchen oven", kitchen.ovens),
            ("kitchen vessel", kitchen.vessels),
            ("kitchen", kitchen.place is not None),
            ("kitchen cold", kitchen.colds),
            ("kitchen air", kitchen.air is not None),
        )
        if true
    }
    return frozenset(found)


def _contacts(work: Work) -> tuple[Contact, ...]:
    sales = (work.formula.sale, *(branch.sale for branch in work.formula.branches))
    own = (contact for sale in sales if sale is not None for contact in sale.contacts)
    return (*own, *work.kitchen.selling.contacts)
