"""Far too much or too little dough for the tin it goes in."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import breads, of_verbs
from manchet.checks.saying import grams
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning
from manchet.diagnostics.suggest import fold
from manchet.formula.tins import tins_for
from manchet.quantities.printing import decimal

NAME = "tin-fill-odd"


def check(subject: Subject) -> Iterator[Diagnostic]:
    least, most = limit("tin-fill-least", subject.kind), limit("tin-fill-most", subject.kind)
    vessels = {fold(v.name): v for v in subject.kitchen.vessels if v.word in ("tin", "basket") and v.millilitres}
    if least is None or most is None or not vessels:
        return
    pieces = {piece.noun: piece.grams for piece in subject.batch.pieces if not piece.tin}
    for noun, steps in breads(subject.formula):
        weight = pieces.get(noun)
        for step in of_verbs(steps, "place"):
            vessel = vessels.get(fold(step.where[1])) if step.where else None
            if vessel is None or weight is None or not vessel.millilitres:
                continue
            fill = weight / vessel.millilitres
            if least <= fill <= most:
                continue
            suits = tins_for(weight, subject.formula, subject.kitchen)
            yield warning(
                NAME,
                step.place,
                f"{grams(weight)} of dough in a {vessel.name} of {decimal(vessel.millilitres, 0)} ml "
                + ("runs over" if fill > most else "fills no more than its floor"),
                f"such a {vessel.word} takes {grams(least * vessel.millilitres)} to {grams(most * vessel.millilitres)}; "
                + (
                    f"{suits[0].vessel.name} suits this weight"
                    if suits
                    else "weigh the water it holds before you trust a label"
                ),
            )
