"""A bread that usually has salt has none, in the dough or in anything made before it."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import has_leaven
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "salt-missing"
ABOUT = ("unsalted",)


def check(work: Work) -> Iterator[Diagnostic]:
    usual = limit("salt-usual", work.kind)
    if usual is None or work.totals.salt > 0 or _plain(work):
        return
    help = 'add a line such as `salt 2%`, or write `allow salt-missing because "…"`'
    yield report(NAME, work.formula.place, f"{work.formula.name} has no salt, and nothing in it brings any", help)


def _plain(work: Work) -> bool:
    """Flour and water that nothing raises, as in roti, lavash, tortillas of maize and matzo: many are made without salt."""
    return work.kind == "flatbread" and not has_leaven(work.formula)
