"""Two phases of a bake in each other's place: the vent is open or the lid off first, and the steam or the lid comes after."""

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.bake_events import OPEN, STEAM
from manchet.formula.model import Step

NAME = "bake-phases-exchanged"
ABOUT = ("verb bake",)
EXPLAINS = ("steam-while-vent-open",)


def check(work: Work) -> Iterator[Diagnostic]:
    said = set()
    for _, steps in breads(work.formula):
        for first, second in pairwise(steps):
            if first.verb != "bake" or second.verb != "bake" or first.place in said:
                continue
            what = _exchanged(first, second)
            if what:
                said.add(first.place)
                message = f"this phase has {what[0]}, and the next one {what[1]}: they have changed places"
                yield report(NAME, first.place, message, f"put `{second.place.text.strip()}` first")


def _exchanged(first: Step, second: Step) -> Sequence[str]:
    """What the first phase has and what the second, where that can only be the other way round."""
    steamed = _begins_with(second, STEAM)
    if _begins_with(first, OPEN) and not first.steamed and steamed:
        return "the vent open", "the steam"
    if steamed and not first.steamed and _heat(second) > _heat(first) > 0:
        return "no steam", "the steam and more heat"
    if first.lid is False and second.lid:
        return "the lid off", "the lid on"
    return ()


def _begins_with(step: Step, what: str) -> bool:
    return any(event.what == what and not event.after for event in step.events)


def _heat(step: Step) -> Fraction:
    return step.heats[0].celsius.likely if step.heats else Fraction(0)
