"""A tin with a lid and a bake that says nothing of one, or a bake under a lid in a tin that has none: which dough does it want?"""

from collections.abc import Iterator

from manchet.batch.tins import dough_for_tin, lid_of_bake, tin_called, tin_rule
from manchet.batch.work import Work
from manchet.checks.looking import breads, of_verbs
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.kitchen.model import Vessel
from manchet.syntax.vocabulary import HOLDS_PIECE

NAME = "tin-lid-unclear"
ABOUT = ("kitchen vessel",)


def check(work: Work) -> Iterator[Diagnostic]:
    lid, said = lid_of_bake(work.formula), set()
    tins = {makes.noun: makes.tin for makes in work.formula.makes if makes.tin}
    for noun, steps in breads(work.formula):
        names = [step.where[1] for step in of_verbs(steps, *HOLDS_PIECE) if step.where]
        bake = next(of_verbs(steps, "bake"), None)
        for name in (*names, *((tins[noun],) if noun in tins else ())):
            vessel = tin_called(name, work.kitchen)
            if bake is None or vessel is None or vessel.word != "tin" or vessel.name in said:
                continue
            said.add(vessel.name)
            if vessel.lidded and lid is None:
                message = f"{vessel.name} has a lid, and no bake says whether it is on"
                help = f"add `, lid on` to the bake, or `, lid off`{_what_it_moves(work, vessel)}"
                yield report(NAME, bake.place, message, help)
            elif lid and not vessel.lidded:
                message = f"baked under a lid, and {work.kitchen.name or 'the kitchen'} says of no lid of {vessel.name}"
                help = f"write `lidded` under tin {vessel.name}, or take `lid on` away{_what_it_moves(work, vessel)}"
                yield report(NAME, next(s for s in of_verbs(steps, "bake") if s.lid).place, message, help)


def _what_it_moves(work: Work, vessel: Vessel) -> str:
    """What the tin takes under its lid and without: nothing of a rye, which fills both alike."""
    formula = work.formula
    open_ = formula._replace(
        stages=tuple(s._replace(steps=tuple(step._replace(lid=None) for step in s.steps)) for s in formula.stages),
        branches=tuple(b._replace(steps=tuple(step._replace(lid=None) for step in b.steps)) for b in formula.branches),
    )
    takes = [
        dough_for_tin(vessel.name, tin_rule(open_, vessel._replace(lidded=lidded)), work.kitchen)
        for lidded in (True, False)
    ]
    if takes[0] is None or takes[1] is None or takes[0].grams == takes[1].grams:
        return ""
    return f": {grams(takes[0].grams)} of dough fills it under its lid, {grams(takes[1].grams)} without"
