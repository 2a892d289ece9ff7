"""More yeast than this kind of bread is ever given: often a fresh-yeast figure typed for dry yeast."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.fermentation.fresh_yeast import fresh_equivalent
from manchet.figures.limits.lookup import limit

NAME = "yeast-high"
ABOUT = ("class yeast", "class sweet-dough yeast")
EXPLAINS = ("hydration-high", "yeast-against-time")


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("yeast-most", work.kind)
    if most is None or work.formula.preparation or not work.formula.has_flour:
        return
    fresh = sum((fresh_equivalent(yeast, share) for yeast, share in work.totals.yeasts), Fraction(0))
    if fresh <= most:
        return
    names = " and ".join(f"{percent(share)} {yeast.name}" for yeast, share in work.totals.yeasts)
    plain = all(fresh_equivalent(yeast, share) == share for yeast, share in work.totals.yeasts)
    strength = names if plain else f"{names} raises like {percent(fresh)} fresh yeast"
    message = f"{strength}; over {percent(most)} fresh is too much for any bread of the kind"
    help = "1 g of instant yeast does the work of 3 g fresh; check the kind of yeast and the decimal point"
    yield report(NAME, place_of_class(work.formula, "yeast", "sweet-dough yeast"), message, help)
