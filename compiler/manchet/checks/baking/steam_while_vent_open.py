"""Steam with the vent open: it goes up the chimney."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import at_the_end
from manchet.diagnostics.reports import report
from manchet.formula.bake_events import OPEN, STEAM, BakeEvent
from manchet.formula.durations import duration
from manchet.formula.model import Step
from manchet.syntax.vocabulary import IN_OVEN

NAME = "steam-while-vent-open"
ABOUT = ("verb bake",)


def check(work: Work) -> Iterator[Diagnostic]:
    said = set()
    for _, steps in breads(work.formula):
        is_open = False
        for step in steps:
            if step.verb not in IN_OVEN:
                is_open = False  # another bake, and the oven was shut for it
                continue
            steam = _lost(step, is_open)
            is_open = _open_after(step, is_open)
            if steam is not None and step.place not in said:
                said.add(step.place)
                yield _told(step, steam)


def _lost(step: Step, is_open: bool) -> BakeEvent | None:
    """The first steam that goes out by the vent. At one moment the vent opens after the steam, and stays open for it."""
    for event in step.events:
        if event.what == STEAM:
            if is_open or BakeEvent(OPEN, event.after) in step.events:
                return event
        else:
            is_open = event.what == OPEN
    return None


def _open_after(step: Step, is_open: bool) -> bool:
    moved = [event.what == OPEN for event in step.events if event.what != STEAM]
    return moved[-1] if moved else is_open


def _told(step: Step, steam: BakeEvent) -> Diagnostic:
    when = f" after {duration(steam.after)}" if steam.after else ""
    if BakeEvent(OPEN, steam.after) in step.events:
        message = f"steam{when}, and the vent open at the same moment: it goes up the chimney"
        help = "say when it opens" if not step.time else f"say when it opens, as in `vent open after {_later(step)}`"
        return report(NAME, step.place, message, help)
    message = f"steam{when}, and the vent is open then: it goes up the chimney"
    shut = f"vent closed{when}"
    fix = at_the_end(step.place, f", {shut}", f"shut it first: write `{shut}` too")
    return report(NAME, step.place, message, fixes=(fix,))


def _later(step: Step) -> str:
    """Two thirds of the bake, as bakers open it. Our rule."""
    assert step.time is not None
    return f"{int(step.time.likely * Fraction(2, 3) // 60)} min"
