"""More yeast than this kind of bread is ever given: often a fresh-yeast figure typed for dry yeast."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.checks.limits import limit
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.checks.subject import Subject
from manchet.checks.yeast import fresh_equivalent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "yeast-high"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most = limit("yeast-most", subject.kind)
    if most is None or subject.formula.preparation:
        return
    fresh = sum((fresh_equivalent(yeast, share) for yeast, share in subject.totals.yeasts), Fraction(0))
    if fresh <= most:
        return
    names = " and ".join(f"{percent(share)} {yeast.name}" for yeast, share in subject.totals.yeasts)
    plain = all(fresh_equivalent(yeast, share) == share for yeast, share in subject.totals.yeasts)
    strength = names if plain else f"{names} raises like {percent(fresh)} fresh yeast"
    yield warning(
        NAME,
        place_of_class(subject.formula, "yeast", "sweet-dough yeast"),
        f"{strength}; over {percent(most)} fresh is beyond such a bread",
        "1 g of instant yeast does the work of 3 g fresh; look at the kind of yeast and the decimal point",
    )
