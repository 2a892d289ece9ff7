"""How fast a tub of dough grows cold in the fridge: the middle of it, an estimate between a still and a blowing fridge.

The dough is taken as a cube. Heat leaves it through its own body and then through the air at its skin, one resistance
after the other, so that its distance from the fridge's temperature shrinks by the same share each minute. The share a
slab needs for its own body is 4/pi^2 of thickness^2 / conductivity (Incropera, Fundamentals of Heat and Mass Transfer,
from memory). The heat the yeast makes is left out.
"""

from __future__ import annotations

from bisect import bisect_left
from fractions import Fraction
from typing import NamedTuple

from manchet.figures.figure import Figure, Given
from manchet.figures.yeast_rate import NOTHING, Leaven, pace
from manchet.formula.mixes import Mixes
from manchet.formula.model import Batch, Step
from manchet.quantities.printing import decimal, rounded

SPECIFIC = Fraction("2.8")
"""kJ/kg K, a dough of 65 % water: from flour 1.8 and water 4.19 (Geankoplis, appendix A.4)."""
CONDUCTS = Fraction("0.4")
"""W/m K of dough, from memory; published figures run from 0.3 to 0.5."""
DENSITY = Fraction(1100)
"""kg/m3 of dough that has not risen. Common practice."""
STILL, BLOWING = Fraction(5), Fraction(12)
"""W/m2 K at the skin: in a still fridge, and before a fan. From memory, natural and light forced convection."""
STEP = Fraction(600)
"""Seconds of one step of the reckoning."""
LONGEST = 48 * 6
"""Steps after which a dough counts as cold."""


class Cooling(NamedTuple):
    """The middle of the dough at each step of ten minutes, Celsius: fastest and slowest."""

    fast: tuple[Fraction, ...]
    slow: tuple[Fraction, ...]

    def seconds_to(self, celsius: Fraction) -> tuple[Fraction, Fraction | None] | None:
        """From when to when the middle is as cold as that. None: not within two days (second: not if slow)."""
        soon, late = (next((n * STEP for n, t in enumerate(c) if t <= celsius), None) for c in (self.fast, self.slow))
        return None if soon is None else (soon, late)

    def work(self, leaven: Leaven, seconds: Fraction) -> tuple[Fraction, Fraction]:
        """What the leaven does in the first so many seconds, as seconds at the temperature the dough came with."""
        steps = int(seconds / STEP)
        least, most = (sum((pace(leaven, t) for t in c[:steps]), NOTHING) for c in (self.fast, self.slow))
        full = pace(leaven, self.fast[0])
        return (least * STEP / full, most * STEP / full) if full else (NOTHING, NOTHING)


def cooling(grams: Fraction, start: Fraction, fridge: Fraction) -> Cooling:
    """A tub of so many grams of dough, put into the fridge at `start`."""
    return Cooling(_curve(grams, start, fridge, BLOWING), _curve(grams, start, fridge, STILL))


def seconds_of_lag(grams: Fraction, skin: Fraction) -> Fraction:
    """The time in which the distance from the fridge's temperature would be gone, were it lost as fast as at first."""
    volume = grams / DENSITY * 1_000_000
    half = Fraction(bisect_left(range(10_000), volume, key=lambda mm: Fraction(mm**3)), 2000)
    return SPECIFIC * 1000 * DENSITY * half / 3 * (1 / skin + Fraction("0.405") * half / CONDUCTS)


def _curve(grams: Fraction, start: Fraction, fridge: Fraction, skin: Fraction) -> tuple[Fraction, ...]:
    share = min(STEP / seconds_of_lag(grams, skin), Fraction(1))
    found = [start]
    for _ in range(LONGEST):
        found.append(rounded(found[-1] + (fridge - found[-1]) * share, 3))
    return tuple(found)


COLD = Fraction(8)
"""Celsius: warmer is no fridge; and the middle counts as cold two degrees above its fridge's temperature. Our rules."""
NEAR = Fraction(2)


def tub_figures(batch: Batch, mixes: Mixes) -> dict[str, Figure]:
    """For each retard, about how long the middle of what stands there takes to grow cold, in hours.

    What stands there is the dough of one bowl before it is divided, one piece after; its warmth what it last reached.
    """
    dough = batch.stages[-1].stage
    found: dict[str, Figure | None] = {}
    ways = [(dough.name, dough.steps)]
    ways += [(branch.noun, (*dough.steps, *branch.steps)) for branch in batch.formula.branches]
    for where, steps in ways:
        grams, warmth = batch.dough / mixes.number, None
        for step in steps:
            if step.verb in ("retard", "chill") and step.heats and step.heats[0].celsius.likely <= COLD and warmth:
                found.setdefault(f"{where}, {step.verb}: cold after", _cold_after(step, grams, warmth))
                warmth = None
            elif step.verb == "divide":
                grams = next((p.grams for p in batch.pieces if p.noun == where or len(batch.pieces) == 1), grams)
            warmth = _warmth(step, warmth)
    return {name: figure for name, figure in found.items() if figure is not None}


def _warmth(step: Step, before: Fraction | None) -> Fraction | None:
    """How warm the dough is after a step, as far as the file says."""
    reached = next((r.value.likely for r in step.reaches if r.what == "temperature"), None)
    if reached is not None:
        return reached
    if step.verb in ("ferment", "prove") and step.heats:
        return step.heats[0].celsius.likely
    return before


def _cold_after(step: Step, grams: Fraction, warmth: Fraction) -> Figure | None:
    fridge = step.heats[0].celsius.likely
    hours = cooling(grams, warmth, fridge).seconds_to(fridge + NEAR)
    if hours is None or hours[1] is None:
        return None
    soon, late = (rounded(seconds / 1800, 0) / 2 for seconds in hours if seconds is not None)
    place = f"{step.place.path}:{step.place.line}"
    return Figure(
        "cold after", rounded(soon + late, 0) / 2, "h",
        f"an estimate, {decimal(soon)} to {decimal(late)} h (a fan, still air) until the middle is within "
        f"{decimal(NEAR)} C of the fridge: a cube of dough that loses heat through itself and its skin",
        (Given("dough in one piece", grams, "g", place), Given("as warm as", warmth, "C", place),
         Given("the fridge", fridge, "C", place)),
        "specific heat: Geankoplis, Transport Processes, A.4; conduction and air: Incropera, from memory",
    )  # fmt: skip
