"""How much a mix warms its dough: the kitchen's measured mix, taken for the turns that this one gives it; else the friction
that the baker goes by.

A mix is measured from what went in to what came out, so the heat of wetting is in the figure, and so is what the bowl took.
The wetting is taken off, as a plain dough in its bowl has it, and what is left is work; every dough gets the wetting of its
own flour again, and warms its own bowl. So a plain dough that is mixed as the measured one comes out as the measured one did.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.figure import Given
from manchet.figures.mixing.turns import by_machine, measured_turns, turns_of
from manchet.figures.water.base_temperature import in_the_dough
from manchet.figures.water.heat import BOWL, DRY, PLAIN_WATER, WATER
from manchet.formula.model import Range, Step
from manchet.kitchen.model import Mixer
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple

MEASURED_WITHIN = Fraction(1)
"""Celsius by which a measured mix and today's may differ. Our rule: a hand thermometer, another flour, another load."""

A_MINUTE = Range(Fraction(5, 9), Fraction(10, 9))
"""Celsius a minute where no mix was measured: 1 to 2 F (common practice)."""

BY_HAND = Range(Fraction(0), Fraction(25, 27))
"""Celsius in all: at most 5 F in the sum of three readings (Cook's Illustrated), none in Wihlfahrt's examples."""


PLAIN_DOUGH = (DRY + PLAIN_WATER * WATER) * (1 + BOWL)
"""kJ for 1 C of what a measured mix warmed, for 1 kg of flour: a plain dough and its bowl."""


class Friction(NamedTuple):
    """Celsius that the dough gains by being worked: the likely figure and its ends, how it was found, from what."""

    likely: Fraction
    low: Fraction
    high: Fraction
    rule: str
    source: str
    inputs: tuple[Given, ...] = ()


def friction_of(steps: Sequence[Step], mixer: Mixer | None, wetting: Fraction, readings: int = 3) -> Friction:
    """What the mixing steps do to the temperature of the dough; waits between them are left out.

    `wetting` is the heat of wetting, in kJ for 1 kg of flour; `readings` is how many the trade's rule has here.
    """
    mixing = by_machine(steps)
    if not mixing:
        return _between(BY_HAND, "worked by hand", "Cook's Illustrated, and Wihlfahrt, A Treatise on Baking")
    if mixer is not None and not _is_measured(mixer) and mixer.friction is not None:
        return _as_said(mixer, wetting, readings)
    if mixer is None or mixer.warms is None or not _is_measured(mixer):
        minutes = sum((step.time.likely for step in mixing if step.time is not None), Fraction(0)) / 60
        ends = Range(minutes * _low(A_MINUTE), minutes * _high(A_MINUTE))
        return _between(ends, "minutes of mixing x 1 to 2 F; the kitchen has no measured mix", "common practice")
    turns = sum((turns_of(step, mixer) for step in mixing), Fraction(0))
    of_wetting = wetted_by(mixer, wetting, readings) / PLAIN_DOUGH
    likely = (mixer.warms - of_wetting) * turns / measured_turns(mixer)
    where = f"mixer {mixer.name}"
    inputs = (
        Given("the measured mix warms by", mixer.warms, "C", where),
        Given("of that, the heat of wetting in a plain dough", round_to(of_wetting, 1), "C", "a model"),
        Given("turns of the measured mix", measured_turns(mixer), "", where),
        Given("turns of this mix", turns, "", mixing[0].place.where),
    )
    rule = "(the measured mix - its heat of wetting) x turns of this mix / turns of the measured mix"
    low = max(likely - MEASURED_WITHIN, Fraction(0))
    return Friction(likely, low, likely + MEASURED_WITHIN, rule, "the kitchen's measured mix", inputs)


def wetted_by(mixer: Mixer | None, wetting: Fraction, readings: int = 3) -> Fraction:
    """kJ that wetting 1 kg of flour gives, in this house: `wetting` as printed, or no more than warms its mixes in all."""
    whole = None if mixer is None else warmed_in_all(mixer, readings)
    return wetting if whole is None else min(wetting, whole * PLAIN_DOUGH)


def warmed_in_all(mixer: Mixer, readings: int) -> Fraction | None:
    """Celsius by which a mix warms its dough, wetting and all, as the kitchen has it; None where it does not say."""
    if _is_measured(mixer):
        return mixer.warms
    said = mixer.friction
    if said is None:
        return None
    return in_the_dough(said.celsius, readings) if said.in_the_sum else said.celsius


def _is_measured(mixer: Mixer) -> bool:
    return mixer.warms is not None and measured_turns(mixer) > 0


def _as_said(mixer: Mixer, wetting: Fraction, readings: int) -> Friction:
    whole = warmed_in_all(mixer, readings) or Fraction(0)
    of_wetting = wetted_by(mixer, wetting, readings) / PLAIN_DOUGH
    where = f"mixer {mixer.name}"
    inputs = (
        Given("friction of the dough", whole, "C", where),
        Given("of that, the heat of wetting in a plain dough", round_to(of_wetting, 1), "C", "a model"),
    )
    likely = whole - of_wetting
    low = max(likely - MEASURED_WITHIN, Fraction(0))
    rule = "the baker's own friction of the dough - its heat of wetting"
    return Friction(likely, low, likely + MEASURED_WITHIN, rule, "the kitchen's friction", inputs)


def _between(ends: Range, rule: str, source: str) -> Friction:
    return Friction(ends.likely, _low(ends), _high(ends), rule, source)


def _low(ends: Range) -> Fraction:
    return ends.low or Fraction(0)


def _high(ends: Range) -> Fraction:
    return ends.high or Fraction(0)
