"""More salt than bread of this kind can carry, salt of every ingredient counted in."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "salt-high"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most = limit("salt-most", subject.kind)
    salt = subject.totals.salt
    if most is None or subject.formula.preparation or salt <= most:
        return
    tenth = salt / 10
    help = (
        f"was {percent(tenth)} meant? look at the decimal point and the unit"
        if salt >= most * 2
        else 'lower it, or say `allow salt-high because "…"`'
    )
    yield warning(
        NAME,
        place_of_class(subject.formula, "salt"),
        f"salt is {percent(salt)} of the flour in all; more than {percent(most)} is hard to eat and slows the yeast",
        help,
    )
