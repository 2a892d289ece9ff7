"""More pieces than the kitchen has tins, baskets, trays or couches to put them in."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import breads, of_verbs
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Vessel
from manchet.syntax.things import ONE_PIECE

NAME = "vessels-too-few"
ABOUT = ("kitchen vessel",)
OF_SIZE = True


def check(work: Work) -> Iterator[Diagnostic]:
    for noun, names in _wanted(work):
        number = next((piece.number for piece in work.batch.pieces if piece.noun == noun), None)
        for name, place in names.items():
            vessel = work.kitchen.vessel(name)
            each = None if vessel is None else _takes(vessel, noun)
            if vessel is None or number is None or each is None or not vessel.number or number <= each * vessel.number:
                continue
            wants = "a" if each == 1 else f"{-(-number // each)} of the"
            on = "" if each == 1 else f", {each} on each"
            message = f"{number} {noun} want {wants} {vessel.name}{on}; {work.kitchen.name} has {vessel.number}"
            yield report(NAME, place, message, "make fewer, or correct `count` in the kitchen")


def _wanted(work: Work) -> Iterator[tuple[str, dict[str, Place]]]:
    """For each bread the vessels it is put in, by folded name, and where the file says so first."""
    tins = {makes.noun: (fold(makes.tin), makes.place) for makes in work.formula.makes if makes.tin}
    for noun, steps in breads(work.formula):
        names = {fold(step.where[1]): step.place for step in reversed(tuple(of_verbs(steps, "place"))) if step.where}
        if noun in tins:
            names.setdefault(*tins[noun])
        yield noun, names


def _takes(vessel: Vessel, noun: str) -> Fraction | None:
    """How many of them one takes; None where nobody says."""
    said = next((number for number, of in vessel.holds if same_noun(of, noun)), None)
    if said is None and not vessel.holds and vessel.word in ONE_PIECE:
        return Fraction(1)
    return None if said is None else Fraction(said)
