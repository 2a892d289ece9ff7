"""What a step lacks by itself, whatever else is wrong with its formula: a time, a heat, room for its folds."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report
from manchet.formula.bake_events import STEAM
from manchet.formula.model import Step
from manchet.syntax.vocabulary import VERB


def step_faults(step: Step) -> Iterator[Diagnostic]:
    """The errors of one step."""
    verb = VERB[step.verb]
    if verb.needs_time and step.time is None and step.turns is None:
        help = f"give one, a range if you like (`{step.verb} {verb.needs_time}`); the cue after `until` outranks it"
        number = step.where[1].rpartition(" ")[2] if step.where else ""
        fixes = exchange_of(step.place, number, f"{number} min", f"{number} h") if number.isdecimal() else ()
        if fixes:  # `rest on bench 20`
            named = f"if {number} belongs to the name of the place, the time comes before it"
            help = f"write `{number} min` or `{number} h`; {named}: `{step.verb} {verb.needs_time} {' '.join(step.where or ())}`"
        yield report("step-time-missing", step.place, f"`{step.verb}` has no time", help, fixes=fixes)
    if step.verb == "mix" and (step.time or step.turns) is not None and _HOW.isdisjoint(step.manner):
        ways = ("mix by hand", "mix slow", "mix fast") if step.turns is None else ("mix slow", "mix fast")
        fixes = exchange_of(step.place, "mix", *ways)
        help = f"write {', '.join(f'`{way} …`' for way in ways[:-1])} or `{ways[-1]} …`"
        which = "by hand, or on a machine, slow or fast?" if step.turns is None else "slow or fast?"
        message = f"`mix`, and no word of how: {which}"
        yield report("mixed-how", step.place, message, help, fixes=fixes)
    if verb.needs_heat and not step.heats and step.ramp is None and not step.by_fire:
        help = f"say how hot it is around it, as in `{step.verb} … at {verb.needs_heat}`"
        yield report("heat-missing", step.place, f"`{step.verb}` has no temperature", help)
    if any(folds.number > MOST_FOLDS for folds in step.folds):
        most = max(step.folds, key=lambda folds: folds.number)
        message = f"{most.number:,} {most.work}s in one `{step.verb}`; it can have {MOST_FOLDS}"
        yield report("folds-too-many", step.place, message, f"write fewer {most.work}s, further apart")
    elif step.folds and step.time is not None and step.time.high is not None:
        yield from _folds_too_many(step)
    if (step.events or step.turn_after is not None) and step.time is not None and step.time.high is not None:
        yield from _too_late(step, step.time.high)
    yield from _no_change(step)


_HOW = frozenset({"by hand", "hands-on", "waiting", "slow", "fast", "speed"})
"""What a mix may be, in the words of the language: it is hands that do it, or a mixer at one of its speeds."""

MOST_FOLDS = 100
"""Folds, turns or stirs in one wait: each has its line on the card. Our own rule."""


def _too_late(step: Step, lasts: Fraction) -> Iterator[Diagnostic]:
    """The last of steam, vent and turn that would come when the step is over."""
    late = [(event.after, event.what) for event in step.events]
    late += [] if step.turn_after is None else [(step.turn_after, "turn")]
    after, what = max(late)
    if after <= lasts:
        return
    from manchet.formula.durations import duration, span  # a sound file has no need of them

    assert step.time is not None
    message = f"`{what}` would come after {duration(after)}, and `{step.verb}` lasts {span(step.time)}"
    help = f"an earlier `{what}`, or a longer `{step.verb}`; the minutes count from the beginning of this step"
    yield report("later-than-the-bake", step.place, message, help)


def _no_change(step: Step) -> Iterator[Diagnostic]:
    """The vent is opened when it is open, or shut when it is shut, with no steam between, which would tell that it was not."""
    for before, event in pairwise(step.events):
        if before.what == event.what != STEAM:
            from manchet.formula.durations import duration  # a sound file has no need of it

            said = event.what.removeprefix("vent ")
            begun = f"after {duration(before.after)}" if before.after else "from the beginning"
            message = f"`{event.what}` after {duration(event.after)}, but the vent is {said} already, {begun}"
            yield report("vent-moved-twice", step.place, message, f"keep one `{event.what}`")
            return


def _folds_too_many(step: Step) -> Iterator[Diagnostic]:
    """More folds, turns or stirs than fit into the wait they are in."""
    from manchet.formula.durations import duration, span  # a sound file has no need of them

    assert step.time is not None and step.time.high is not None
    for folds in step.folds:
        last = folds.number * folds.seconds
        if last > step.time.high:
            message = (
                f"the last {folds.work} would come after {duration(last)}, and `{step.verb}` lasts {span(step.time)}"
            )
            help = f"fewer {folds.work}s, or closer together, or a longer `{step.verb}`"
            yield report("folds-longer-than-rest", step.place, message, help)
