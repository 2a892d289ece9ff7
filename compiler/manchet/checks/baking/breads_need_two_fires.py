"""Two breads of one dough that no one fire can bake: when the one is ready to go in, the floor is past the heat of the other."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.oven.curve import Window, floor_heat, oven_of, window
from manchet.formula.durations import duration
from manchet.formula.model import Branch, Step, Who
from manchet.kitchen.model import Oven
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN

NAME = "breads-need-two-fires"
ABOUT = ("kitchen oven",)

HOUR = 3600
NOTHING = Fraction(0)


class _WayToOven(NamedTuple):
    """Hours from dividing to the oven, at least and at most; None for an open end."""

    noun: str
    bake: Step
    least: Fraction
    most: Fraction | None
    fits: Window
    """Hours down the oven's curve between which it may go in."""


def check(work: Work) -> Iterator[Diagnostic]:
    for oven in work.kitchen.ovens:
        if not oven.falls:
            continue
        ways = [way for branch in work.formula.branches for way in _ways(branch, oven, work)]
        for one, other in combinations(ways, 2):
            first, last = (one, other) if _later(other, one) else (other, one)
            if _later(last, first) and not _meet(first, last):
                yield _said(work, oven, first, last)
                return


def _ways(branch: Branch, oven: Oven, work: Work) -> Iterator[_WayToOven]:
    least, most = NOTHING, NOTHING
    open_end = False
    for step in branch.steps:
        if step.verb in IN_OVEN:
            heat = floor_heat(step)
            fits = window(oven.falls, heat) if heat is not None else None
            if fits is not None and oven_of(step, work.kitchen) == oven:
                yield _WayToOven(branch.noun, step, least / HOUR, None if open_end else most / HOUR, fits)
            return
        if step.time is not None and step.who is Who.WAITING:
            least += step.time.low or NOTHING
            more = step.may_wait.seconds.high or NOTHING if step.may_wait is not None else NOTHING
            open_end = open_end or step.time.high is None
            most += (step.time.high or NOTHING) + more


def _later(one: _WayToOven, other: _WayToOven) -> bool:
    """The one goes in after the other whatever is done."""
    return other.most is not None and one.least > other.most


def _meet(first: _WayToOven, last: _WayToOven) -> bool:
    """So much later as the last is ready at the least, some hour of one fire has the heat of both."""
    assert first.most is not None
    soonest = last.least - first.most
    return last.fits.closes - first.fits.opens >= soonest


def _said(work: Work, oven: Oven, first: _WayToOven, last: _WayToOven) -> Diagnostic:
    assert first.most is not None
    name = oven.name or "the oven"
    heat = floor_heat(last.bake)
    assert heat is not None
    apart = duration((last.least - first.most) * HOUR)
    message = (
        f"the {last.noun} go in {apart} after the {first.noun} or later, "
        f"and by then one fire of {name} is under the {degrees(work.kitchen, heat.likely)} they want"
    )
    help = f"plan two fires, or bake the {first.noun} in another oven; if you do, `allow {NAME} because …`"
    return report(NAME, last.bake.place, message, help)
