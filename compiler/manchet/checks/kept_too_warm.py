"""A preparation of egg, milk or vegetables whose keeping temperature lets germs grow."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import ingredients
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "kept-too-warm"
PERISHABLE = frozenset({"egg", "dairy", "vegetable"})


def check(subject: Subject) -> Iterator[Diagnostic]:
    most, kept = limit("kept-cold-most"), subject.formula.good_for
    if most is None or kept is None or kept[1] is None or kept[1].likely <= most:
        return
    perishable = next((i for i in ingredients(subject.formula) if i.class_ in PERISHABLE), None)
    if perishable is not None:
        yield warning(
            NAME,
            subject.formula.place,
            f"{subject.formula.name} holds {perishable.name} and is to be kept at {subject.degrees(kept[1].likely)}",
            f"keep it at {subject.degrees(most)} or colder; your own food law may ask for less",
        )
