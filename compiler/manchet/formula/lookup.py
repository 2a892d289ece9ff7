"""What is asked for of a formula by its name, or how much of it: what it has of that, or the report that it has none."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.model import Formula, OverallLine
from manchet.formula.nouns import same_noun


def makes_called(formula: Formula, noun: str, piece_said: bool) -> Outcome[int | None]:
    """Which of its `makes` lines makes that noun; "" is the one thing it makes. `piece_said`: what one weighs is known."""
    at = next((i for i, makes in enumerate(formula.makes) if not noun or same_noun(makes.noun, noun)), None)
    if at is None or (not noun and len(formula.makes) > 1):
        return Outcome(None, (_no_such_noun(formula, noun),))
    if formula.makes[at].number is None and not piece_said:
        help = "give a piece weight too, or the amount as dough or flour"
        message = f"{formula.name} is not made by the piece"
        return Outcome(None, (report("unknown-noun", formula.place, message, help),))
    return Outcome(at)


def _no_such_noun(formula: Formula, noun: str) -> Diagnostic:
    made = [makes.noun for makes in formula.makes if makes.noun]
    if not made:
        message = f"{formula.name} makes nothing by the piece"
        return report("unknown-noun", formula.place, message, "say the amount as dough or flour")
    message = f"{formula.name} makes no {noun}" if noun else f"{formula.name} makes more than one thing"
    help = f"it makes {' and '.join(made)}: say which, as in `24 {made[0]}`"
    return report("unknown-noun", formula.place, message, help)


def overall_called(formula: Formula, name: str) -> Outcome[tuple[OverallLine, ...]]:
    """The lines of the overall formula that are called so, as written or in the larder; none where they weigh nothing."""
    wanted = fold(name)
    lines = tuple(
        line
        for line in formula.overall
        if fold(line.name) == wanted or (line.ingredient is not None and fold(line.ingredient.name) == wanted)
    )
    if sum((line.share for line in lines), Fraction(0)):
        return Outcome(lines)
    return Outcome((), (not_in_it(formula, name, (line.name for line in formula.overall)),))


def not_in_it(formula: Formula, name: str, names: Iterable[str]) -> Diagnostic:
    """The report for a name that is none of what a formula is made of, which are `names`."""
    known = tuple(dict.fromkeys(names))
    near = nearest(fold(name), [fold(one) for one in known])
    help = f"did you mean {near}?" if near else f"it has {', '.join(known)}"
    return report("unknown-ingredient", formula.place, f"{formula.name} has no {name}", help)


def made_of_nothing(formula: Formula) -> Diagnostic:
    """The report for an amount of nothing, or of a formula that weighs nothing yet."""
    if formula.dough_share:
        return report("no-weight", formula.place, f"{formula.name} cannot be made of nothing", "ask for more than 0")
    where = "below it" if formula.preparation else "below `dough`"
    help = f"write {where} what goes in, a line each, such as `water 500 g`"
    return report("no-weight", formula.place, f"nothing is weighed into {formula.name}", help)
