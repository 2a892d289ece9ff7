"""What a mix is in turns of the hook."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import ceil

from manchet.figures.figure import Figure, Given
from manchet.formula.model import Range, Step, Who
from manchet.kitchen.model import Mixer

NOTHING = Fraction(0)

SLOW, FAST = Fraction(100), Fraction(200)
"""Turns a minute of a mixer that does not say: about these for the hook of a spiral (common practice)."""

KNEAD = Fraction(2)
"""Hands take about twice the machine's fast minutes (common practice)."""

LEAST_KNEADING, MOST_KNEADING, WIDTH = Fraction(6), Fraction(20), 4
"""Minutes by hand at least, at most, and from the shorter to the longer: tired arms stop in between. Our rule."""


def by_machine(steps: Sequence[Step]) -> tuple[Step, ...]:
    return tuple(step for step in steps if step.verb == "mix" and step.who is Who.MACHINE)


def is_fast(step: Step) -> bool:
    return "fast" in step.manner or (step.speed or 1) > 1


def turns_of(step: Step, mixer: Mixer | None) -> Fraction:
    """Turns the step says, else its likely minutes at the mixer's speed; 0 where it says neither."""
    if step.turns is not None:
        return step.turns.likely
    return NOTHING if step.time is None else step.time.likely / 60 * speed(mixer, is_fast(step))


def measured_turns(mixer: Mixer) -> Fraction:
    """Turns of the mix that the kitchen measured."""
    slow, fast = mixer.warms_slow or NOTHING, mixer.warms_fast or NOTHING
    return (slow * speed(mixer, False) + fast * speed(mixer, True)) / 60


def speed(mixer: Mixer | None, fast: bool) -> Fraction:
    """Turns a minute."""
    own = None if mixer is None else mixer.fast_turns if fast else mixer.slow_turns
    return own or (FAST if fast else SLOW)


def kneading(step: Step) -> Range:
    """Seconds of kneading by hand, in goes of three minutes with rests, in place of a machine's fast mix."""
    minutes = step.time.likely / 60 if step.time is not None else Fraction(3)
    low = Fraction(ceil(min(max(minutes * KNEAD, LEAST_KNEADING), MOST_KNEADING)))
    return Range(low * 60, (low + WIDTH) * 60)


def kneading_figures(steps: Sequence[Step]) -> dict[str, Figure]:
    """How long it is to knead by hand in place of a machine's fast mixes, in minutes: an estimate."""
    fast = [step for step in by_machine(steps) if is_fast(step) and step.time is not None]
    if not fast:
        return {}
    times = [kneading(step) for step in fast]
    low, high = (sum(((end or NOTHING) / 60 for end in ends), NOTHING) for ends in zip(*times, strict=True))
    rule = (
        f"an estimate, {low} to {high} min: twice the machine's fast minutes, never under {LEAST_KNEADING}; covered rests "
        "of 5 min after every 3 beside it"
    )
    inputs = tuple(
        Given("fast", step.time.likely / 60, "min", step.place.where) for step in fast if step.time is not None
    )
    return {"kneading by hand": Figure("kneading by hand", (low + high) / 2, "min", rule, inputs, "common practice")}


def mixing_figures(steps: Sequence[Step], mixer: Mixer | None) -> dict[str, Figure]:
    """The turns of a machine's mix, of which slow-speed doughs want 700 to 800 (King Arthur Flour; Hamelman, Bread)."""
    mixing = by_machine(steps)
    turns = sum((turns_of(step, mixer) for step in mixing), NOTHING)
    if not turns:
        return {}
    inputs = tuple(_minutes(step, mixer) for step in mixing)
    rule = "minutes x turns a minute of the hook, summed; 100 slow and 200 fast where the mixer does not say"
    return {
        "mix_turns": Figure("turns of the mix", turns, "", rule, inputs, "the kitchen's mixer, else common practice")
    }


def _minutes(step: Step, mixer: Mixer | None) -> Given:
    where = step.place.where
    if step.turns is not None:
        return Given("turns", step.turns.likely, "", where)
    manner = "fast" if is_fast(step) else "slow"
    minutes = NOTHING if step.time is None else step.time.likely / 60
    return Given(f"{manner}, at {speed(mixer, is_fast(step))} turns a minute", minutes, "min", where)
