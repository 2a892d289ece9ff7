"""What a mix is in turns of the hook, and how much of a stiff dough a mixer takes."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.figure import Figure, Given
from manchet.formula.model import Step, Work
from manchet.larder.kitchen import Mixer

NOTHING = Fraction(0)

SLOW, FAST = Fraction(100), Fraction(200)
"""Turns a minute of a mixer that does not say: about these for the hook of a spiral (common practice)."""

SOFT, STIFF = Fraction(60, 100), Fraction(55, 100)
"""Water on flour of the dough a mixer's load is stated for, and of a stiff one (Metcalfe, manuals of their mixers)."""

STIFF_LOAD = Fraction(3, 5)
"""Of the stated load, what is taken of a stiff dough: 3.4 of 5.7 kg, 6.8 of 11.3 kg (Metcalfe)."""


def by_machine(steps: Sequence[Step]) -> tuple[Step, ...]:
    return tuple(step for step in steps if step.verb == "mix" and step.work is Work.MACHINE)


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


def load(mixer: Mixer, water: Fraction) -> Fraction | None:
    """Grams of dough with so much water (a share of all flour) that the mixer takes at most; between the two doughs in
    print, in proportion. None where the kitchen does not say what it takes."""
    if mixer.most_grams is None:
        return None
    soft = min(max((water - STIFF) / (SOFT - STIFF), NOTHING), Fraction(1))
    return mixer.most_grams * (STIFF_LOAD + (1 - STIFF_LOAD) * soft)


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
    where = f"{step.place.path}:{step.place.line}"
    if step.turns is not None:
        return Given("turns", step.turns.likely, "", where)
    manner = "fast" if is_fast(step) else "slow"
    minutes = NOTHING if step.time is None else step.time.likely / 60
    return Given(f"{manner}, at {speed(mixer, is_fast(step))} turns a minute", minutes, "min", where)
