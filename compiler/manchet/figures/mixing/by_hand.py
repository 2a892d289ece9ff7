"""What hands do in place of a machine's mix, and how long that takes."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum
from fractions import Fraction

from manchet.figures.mixing.turns import is_fast, kneading
from manchet.formula.model import Range, Step, Who

MINUTE = Fraction(60)
TOGETHER = 3 * MINUTE
"""Seconds until no dry flour is left, or what is added is even (common practice)."""
DRINKS = 20 * MINUTE
"""Seconds of rest after bringing together where the file gives none: flour that drinks needs less kneading (common practice)."""
GO, REST = 3 * MINUTE, 5 * MINUTE
"""Seconds of one go of kneading, and of the covered rest after it (common practice)."""


class Handwork(Enum):
    """What a machine's mix is by hand."""

    STIR = "stir"
    BRING_TOGETHER = "bring_together"
    BRING_TOGETHER_AND_REST = "bring_together_and_rest"
    WORK_IN = "work_in"
    KNEAD = "knead"


def is_machine_mix(step: Step) -> bool:
    return step.verb == "mix" and step.who is Who.MACHINE


def handwork(step: Step, stirred: bool, first: bool, after: Step | None) -> Handwork:
    """Of a machine's mix. `stirred`: kneading gains nothing; `first`: nothing was mixed in this stage before; `after`: the
    step that follows."""
    if stirred:
        return Handwork.STIR if first else Handwork.WORK_IN
    if is_fast(step):
        return Handwork.KNEAD
    if not first:
        return Handwork.WORK_IN
    # Where the file rests it anyway, once is enough.
    rests = after is not None and after.verb == "rest"
    return Handwork.BRING_TOGETHER if rests else Handwork.BRING_TOGETHER_AND_REST


def seconds_by_hand(step: Step, work: Handwork) -> Range:
    """With the rests that belong to it."""
    if work is Handwork.KNEAD:
        return Range(*(None if end is None else end + _rests(end) for end in kneading(step)))
    taken = TOGETHER + DRINKS if work is Handwork.BRING_TOGETHER_AND_REST else TOGETHER
    return Range(taken, taken)


def _rests(kneaded: Fraction) -> Fraction:
    """After every go but the last."""
    return max(-(-kneaded // GO) - 1, 0) * REST


def times_by_hand(steps: Sequence[Step], stirred: bool) -> dict[int, Range]:
    """By their number in the stage, the machine's mixes and how long each is by hand, in seconds."""
    found: dict[int, Range] = {}
    mixed = False
    for at, step in enumerate(steps):
        if is_machine_mix(step):
            after = steps[at + 1] if at + 1 < len(steps) else None
            found[at] = seconds_by_hand(step, handwork(step, stirred, not mixed, after))
        mixed = mixed or step.verb == "mix"
    return found
