"""The line of temperatures of a vessel: how long what is in it stands how warm, a leg for each step.

Every caution about heat and time is a question to this line; none reads steps on its own. What is not said is the worse:
a temperature is that of the room, an end is not reached, the surface of a baked thing says nothing of its middle. How long a
thing takes has two ends: germs grow as long as it may take, and are killed in the time that it takes at least.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from manchet.cautions.at import CautionPlace, Done
from manchet.formula.model import Range, Step
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BOILS, CHILLS, COOKS, COOLS, IN_POT

ROOM = Fraction(20)
"""Degrees Celsius where nothing is said."""
BOILING = Fraction(100)
NOT_SAID = Range(None, None)


class Leg(NamedTuple):
    """One step of the line. Seconds, and degrees Celsius."""

    at: CautionPlace
    step: Step
    most: Fraction
    """So long it takes at most; 0 where the file does not say."""
    least: Fraction
    start: Fraction
    """As warm as the thing may be when it begins."""
    end: Range
    """What the thing is said to reach; without ends where that is not said: then it is not reached."""
    in_middle: bool
    """The end is that of its middle."""
    around: Fraction
    """As warm as it may be around it."""
    is_said: bool
    """The surroundings are said by the file, and not those of a room."""

    @property
    def heats(self) -> bool:
        return self.step.verb in COOKS

    @property
    def boils(self) -> bool:
        return self.step.verb in BOILS

    def is_down_to(self, celsius: Fraction) -> bool:
        """Whether it is said to end no warmer than this."""
        return self.end.high is not None and self.end.high <= celsius

    def is_up_to(self, celsius: Fraction) -> bool:
        """Whether it is said to end no cooler than this."""
        return self.end.low is not None and self.end.low >= celsius


def line_of(done: Sequence[Done], start: Fraction = ROOM) -> tuple[Leg, ...]:
    """The line of what is done, one thing after another, to something that is so warm at its start."""
    legs: list[Leg] = []
    warmth = start
    for at, step in done:
        leg = _leg(at, step, warmth)
        legs.append(leg)
        warmth = _warmth_after(leg)
    return tuple(legs)


def _leg(at: CautionPlace, step: Step, start: Fraction) -> Leg:
    least, most = _seconds(step)
    reach = next((r for r in step.reaches if r.what in ("core", "temperature")), None)
    reach = next((r for r in step.reaches if r.what == "core"), reach)
    end = NOT_SAID if reach is None else reach.value
    around, is_said = _around(step, end)
    return Leg(at, step, most, least, start, end, reach is not None and reach.what == "core", around, is_said)


def _seconds(step: Step) -> tuple[Fraction, Fraction]:
    if step.time is None:
        return Fraction(0), Fraction(0)
    low, high = step.time
    sides = 2 if step.per == "side" else 1
    return (low or Fraction(0)) * sides, (high if high is not None else low or Fraction(0)) * sides


def _around(step: Step, end: Range) -> tuple[Fraction, bool]:
    """As warm as it may be around it: a range counts by its warm end, and in a pot that boils it is a hundred degrees."""
    if step.heats:
        return max(_warmest(heat.celsius) for heat in step.heats), True
    if step.verb in BOILS:
        return BOILING, True
    if step.verb in COOKS:
        return max(BOILING, _warmest(end)), False
    return ROOM, False


def _warmest(celsius: Range) -> Fraction:
    return celsius.high if celsius.high is not None else celsius.low if celsius.low is not None else ROOM


def _warmth_after(leg: Leg) -> Fraction:
    """As warm as it may be then: what grows cold without a word of how cold has not grown cold."""
    if leg.end.high is not None:
        return leg.end.high
    return max(leg.start, min(leg.around, BOILING))


# ---- questions --------------------------------------------------------------------------------------


def was_boiled(legs: Iterable[Leg]) -> bool:
    return any(leg.boils for leg in legs)


def was_heated(legs: Iterable[Leg]) -> bool:
    """Whether it was heated at all, through or not."""
    return any(leg.heats for leg in legs)


def comes_to(legs: Iterable[Leg], celsius: Fraction, in_middle: bool = False) -> bool:
    """Whether it is said to come to this heat at least; `in_middle`: the file says so of its middle."""
    return any(leg.heats and leg.is_up_to(celsius) and (leg.in_middle or not in_middle) for leg in legs)


def stays_at(legs: Sequence[Leg], celsius: Fraction, seconds: Fraction, in_middle: bool = False) -> bool:
    """Whether it is said to be so hot for so long: in a pot of that heat, or in such surroundings once it has come to it."""
    is_there = False
    for leg in legs:
        stands_so = leg.is_said and _coolest_around(leg.step) >= celsius and leg.least >= seconds
        if stands_so and (is_there or (leg.step.verb in IN_POT and not leg.boils and not in_middle)):
            return True
        if leg.end.low is not None:
            is_there = leg.is_up_to(celsius) and (leg.in_middle or not in_middle)
        elif not leg.is_said or _coolest_around(leg.step) < celsius:
            is_there = False
    return False


def _coolest_around(step: Step) -> Fraction:
    return min((h.celsius.low if h.celsius.low is not None else h.celsius.likely for h in step.heats), default=ROOM)


def out_of_the_cold(legs: Iterable[Leg], cold: Fraction) -> Fraction:
    """Seconds at most that it stands warmer around than this, the time over a fire not counted."""
    return sum((leg.most for leg in legs if not leg.heats and leg.around > cold), Fraction(0))


class CoolingDown(NamedTuple):
    """How what was cooked grows cold. Seconds from the fire; None for what is not said to be reached."""

    at: CautionPlace | None
    """The first step that cools it."""
    warm: Fraction | None
    cold: Fraction | None
    to_fridge: Fraction | None
    """Until it is in the cold."""


def coolings(legs: Sequence[Leg], hot: Fraction, warm: Fraction, cold: Fraction) -> tuple[CoolingDown, ...]:
    """Each cooling of the line: from a heat to the next, or to the end. What is held no cooler than `hot` has not begun to cool.

    `warm` and `cold` are the degrees it has to come down to. The last is there where nothing cools it, too.
    """
    runs: list[list[Leg]] = []
    for leg in legs:
        if leg.heats:
            runs.append([])
        elif runs:
            runs[-1].append(leg)
    found = [_cooling(run, hot, warm, cold) for run in runs]
    return tuple(one for number, one in enumerate(found, 1) if one.at is not None or number == len(found))


def _cooling(legs: Sequence[Leg], hot: Fraction, warm: Fraction, cold: Fraction) -> CoolingDown:
    taken = Fraction(0)
    at = to_fridge = warm_at = cold_at = None
    for leg in legs:
        if at is None and leg.is_said and _coolest_around(leg.step) >= hot:
            taken = Fraction(0)
            continue
        if at is None and leg.step.verb in COOLS:
            at = leg.at
        if to_fridge is None and (leg.step.verb in CHILLS or (leg.is_said and leg.around <= cold)):
            to_fridge = taken
        taken += leg.most
        if warm_at is None and leg.is_down_to(warm):
            warm_at = taken
        if cold_at is None and leg.is_down_to(cold):
            cold_at = taken
            to_fridge = taken if to_fridge is None else to_fridge
    return CoolingDown(at, warm_at, cold_at, to_fridge)
