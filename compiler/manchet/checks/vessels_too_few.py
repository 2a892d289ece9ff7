"""More pieces than the kitchen has tins or baskets to put them in."""

from collections.abc import Iterator

from manchet.checks.looking import breads, of_verbs
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning
from manchet.diagnostics.suggest import fold

NAME = "vessels-too-few"


def check(subject: Subject) -> Iterator[Diagnostic]:
    vessels = {fold(v.name): v for v in subject.kitchen.vessels if v.word in ("tin", "basket") and v.number}
    if not vessels:
        return
    for noun, steps in breads(subject.formula):
        number = next((piece.number for piece in subject.batch.pieces if piece.noun == noun), None)
        for step in of_verbs(steps, "place"):
            vessel = vessels.get(fold(step.where[1])) if step.where else None
            if vessel is None or number is None or not vessel.number or number <= vessel.number:
                continue
            yield warning(
                NAME,
                step.place,
                f"{number} {noun} want a {vessel.name}; {subject.kitchen.name} has {vessel.number}",
                "make fewer, or correct `count` in the kitchen",
            )
