"""Far too much or too little dough for the tin it goes in."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import partial

from manchet.batch.tins import LIDDED, TinRule, tin_rule, tins_for
from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import milder, report
from manchet.figures.limits.lookup import limit
from manchet.kitchen.model import Vessel
from manchet.quantities.printing import decimal
from manchet.syntax.things import ONE_PIECE
from manchet.syntax.vocabulary import HOLDS_PIECE

NAME = "tin-fill-odd"
ABOUT = ("kitchen vessel",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    pieces = {piece.noun: piece.grams for piece in work.batch.pieces if not piece.tin}
    for noun, steps in work.formula.ways:
        weight = pieces.get(noun)
        for step in of_verbs(steps, *HOLDS_PIECE):
            vessel = work.kitchen.vessel(step.where[1]) if step.where else None
            if vessel is None or vessel.word not in ONE_PIECE or weight is None or not vessel.millilitres:
                continue
            least, most = _limits(work, vessel)
            if least is None or most is None:
                continue
            if not least <= weight / vessel.millilitres <= most:
                yield _report(work, step.place, weight, vessel, least, most)


def too_full(work: Work, weight: Fraction, vessel: Vessel) -> bool:
    """Whether this check says that so much dough is too much for the tin: then its levels are no second mistake."""
    most = _limits(work, vessel)[1]
    return most is not None and vessel.millilitres is not None and weight > most * vessel.millilitres


def _rule(work: Work, vessel: Vessel) -> TinRule | None:
    """What the dough wants of it; None where nobody has published that: bread that is no tin loaf in a tin without a lid."""
    rule = tin_rule(work.formula, vessel)
    return rule if work.bread.tin or (rule is LIDDED and vessel.word == "tin") else None


def _limits(work: Work, vessel: Vessel) -> tuple[Fraction | None, Fraction | None]:
    rule = _rule(work, vessel)
    if rule is not None:
        return limit(f"{rule.key}-tin-least"), limit(f"{rule.key}-tin-most")
    return limit("tin-fill-least", work.kind), limit("tin-fill-most", work.kind)


def _report(work: Work, place: Place, weight: Fraction, vessel: Vessel, least: Fraction, most: Fraction) -> Diagnostic:
    assert vessel.millilitres is not None
    fill = weight / vessel.millilitres
    this = f"{grams(weight)} of dough in a {vessel.name} of {decimal(vessel.millilitres, 0)} ml"
    suits = tins_for(weight, partial(tin_rule, work.formula), work.kitchen)
    instead = (
        f"{suits[0].vessel.name} suits this weight" if suits else "weigh the water it holds before you trust a label"
    )
    rule = _rule(work, vessel)
    if rule is not None:
        far = limit("tin-fill-far") or Fraction(1)
        usual = f"such a tin takes about {grams(vessel.millilitres / rule.divisor)} ({decimal(rule.divisor)} ml a gram for {rule.dough})"
        if least / far <= fill <= most * far:
            message = f"{this} is {'much' if fill > most else 'little'}"
            return milder(report(NAME, place, message, f"{usual}; {instead}"))
    else:
        usual = f"such a {vessel.word} takes {grams(least * vessel.millilitres)} to {grams(most * vessel.millilitres)}"
    message = f"{this} {'runs over' if fill > most else 'fills no more than its floor'}"
    return report(NAME, place, message, f"{usual}; {instead}")
