"""A crusty loaf baked with no steam and no lid: its skin sets before it has grown."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Step
from manchet.syntax.vocabulary import HOLDS_PIECE

NAME = "steam-missing"
ABOUT = ("kind hearth loaf",)

HOT_BRICK = 240
"""Degrees Celsius of a floor on which a load steams itself. Our rule."""
CLOSED = ("pot", "cloche", "casserole", "dutch oven", "cocotte", "clay baker", "roasting tin", "combo cooker")
"""What has a lid, in names of places that the kitchen does not know."""
WORDS = frozenset({"lid", "lidded", "cover", "covered", "uncover", "steam", "steamed", "spray", "mist"})
"""What a baker's own words tell of it by."""


def check(work: Work) -> Iterator[Diagnostic]:
    if work.kind != "hearth loaf":
        return
    for noun, steps in work.formula.ways:
        bakes = list(of_verbs(steps, "bake"))
        if not bakes or any(step.steamed or step.lid is not None for step in bakes):
            continue
        if _dry_on_purpose(work, bakes[0]) or _covered(work, steps):
            continue
        message = f"neither steam nor a lid for {bread(noun)}"
        yield report(NAME, bakes[0].place, message, "add `, steam` to the first bake line (or `, lid on` in a pot)")


def _dry_on_purpose(work: Work, bake: Step) -> bool:
    """Durum keeps its skin soft by itself, and a full brick oven is steamed by its own loaves."""
    durum = sum((line.share for line in work.formula.overall if line.is_flour and _is_durum(line.name)), Fraction(0))
    floor = any(heat.where == "floor" and heat.celsius.likely >= HOT_BRICK for heat in bake.heats)
    fired = any("wood" in oven.heat or "brick" in oven.heat for oven in work.kitchen.ovens)
    return durum >= Fraction(1, 2) or (floor and fired)


def _is_durum(name: str) -> bool:
    return not {"durum", "semolina"}.isdisjoint(name.casefold().split())


def _covered(work: Work, steps: Sequence[Step]) -> bool:
    """Whether it bakes in a closed thing, or the words of a step tell of a lid or of steam in the baker's own way."""
    for step in steps:
        if step.where is not None and step.verb in HOLDS_PIECE | {"turn out"}:
            vessel = work.kitchen.vessel(step.where[1])
            if (vessel is not None and vessel.word == "pot") or any(word in fold(step.where[1]) for word in CLOSED):
                return True
        said = fold(" ".join((step.how, step.until, step.why, step.if_late, *step.notes))).split()
        if not WORDS.isdisjoint(said):
            return True
    return False
