"""Two temperatures that have changed places: each is nonsense at its own step and right at the other's."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import combinations

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.checks.saying import celsius
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import COLD, IN_OVEN, RISES_WARM, SETS_WARMTH

NAME = "temperatures-exchanged"
ABOUT = ()
EXPLAINS = (
    "cold-too-warm", "dough-temperature-implausible", "fermentation-too-cold", "fermentation-too-hot", "mix-too-hot-for-yeast", "mix-warm-for-yeast",
    "oven-fahrenheit-for-celsius", "oven-too-cold", "retard-too-warm", "water-misses-the-dough", "yeast-against-time",
    "hours-for-minutes", "water-hotter-than-the-tap", "ice-not-enough", "ice-past-a-third", "nothing-sets-the-dough",
)  # fmt: skip

ROOM = Fraction(15)
"""Celsius under which a step that rises warm is meant to be a cold one, where a cold one has its warmth. Our rule."""


class Warmth(NamedTuple):
    """A temperature that a step says, and from where to where such a step's lies."""

    step: Step
    celsius: Fraction
    least: Fraction
    most: Fraction

    def suits(self, other: Fraction) -> bool:
        return self.least <= other <= self.most


def check(work: Work) -> Iterator[Diagnostic]:
    for _, steps in breads(work.formula):
        odd = [one for one in _warmths(work, steps) if not one.suits(one.celsius)]
        for first, second in combinations(odd, 2):
            if first.suits(second.celsius) and second.suits(first.celsius):
                a, b = celsius(first.celsius), celsius(second.celsius)
                message = f"`{first.step.verb}` at {a} and `{second.step.verb}` at {b}: they have changed places"
                yield report(NAME, first.step.place, message, f"write {b} here and {a} there")
                return


def _warmths(work: Work, steps: Sequence[Step]) -> Iterator[Warmth]:
    names = ("fermentation-most", "retard-most", "oven-least", "oven-most", "dough-temperature-most")
    rises, cold, coolest, hottest, mixed = (limit(name, work.kind) for name in names)
    if rises is None or cold is None or hottest is None or mixed is None:
        return
    for step in steps:
        reach = next((r.value.likely for r in step.reaches if r.what == "temperature"), None)
        if step.verb in SETS_WARMTH and reach is not None:
            yield Warmth(step, reach, ROOM, mixed)
        if not step.heats or step.ramp is not None:
            continue
        heat = step.heats[0].celsius.likely
        if step.verb in RISES_WARM:
            yield Warmth(step, heat, ROOM, rises)
        elif step.verb in COLD:
            yield Warmth(step, heat, Fraction(-40), cold)
        elif step.verb in IN_OVEN and coolest is not None:
            yield Warmth(step, heat, coolest, hottest)
