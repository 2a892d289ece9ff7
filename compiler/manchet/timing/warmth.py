"""The dough came out warmer or cooler than it should: about how long the bulk is then.

An estimate for doughs raised by baker's yeast, by the cardinal temperature model with inflection of L. Rosso, J. R.
Lobry and J. P. Flandrois (1993; the form from memory) with the strain average for Saccharomyces cerevisiae of
Z. Salvado et al., Applied and Environmental Microbiology 77 (2011), doi 10.1128/AEM.01861-10 (quoted at second hand).
"""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.model import Batch, Range, Step
from manchet.timing.card_values import Warmth

COLDEST, BEST, HOTTEST = Fraction("2.84"), Fraction("32.27"), Fraction("45.39")
"""Degrees Celsius at which the yeast stands still, does best, stands still again."""

AROUND = (-4, -2, 0, 2)
"""Degrees from the written dough temperature for which the card has a line."""

SAME_WARMTH = 4
"""If the dough ferments more than so many degrees from its own temperature, the model has nothing to say."""


def activity(celsius: Fraction) -> Fraction:
    """How fast the yeast works, as a share of its best; 0 outside its limits. Exact for what the model says."""
    if not COLDEST < celsius < HOTTEST:
        return Fraction(0)
    above = (celsius - HOTTEST) * (celsius - COLDEST) ** 2
    span = BEST - COLDEST
    below = span * (span * (celsius - BEST) - (BEST - HOTTEST) * (BEST + COLDEST - 2 * celsius))
    return above / below


def came_out_at(batch: Batch) -> tuple[Warmth, ...]:
    """The bulk for a dough that came out at other temperatures, in seconds; () where the model does not hold.

    It needs a dough temperature (`mix fast 2 min to 28 C`), a ferment with a time after it, near that temperature, and
    baker's yeast in the formula.
    """
    if not any(line.ingredient is not None and "yeast" in line.ingredient.class_ for line in batch.formula.overall):
        return ()
    written, bulk = _dough_temperature_and_bulk(batch.stages[-1].stage.steps)
    if written is None or bulk is None or bulk.time is None:
        return ()
    around = bulk.heats[0].celsius.likely if bulk.heats else written
    if abs(around - written) > SAME_WARMTH:
        return ()
    return tuple(_line(bulk.time, written, written + degrees) for degrees in AROUND if activity(written + degrees))


def _line(bulk: Range, written: Fraction, celsius: Fraction) -> Warmth:
    slower = activity(written) / activity(celsius)
    low = bulk.low if bulk.low is not None else bulk.likely
    return Warmth(celsius, low * slower, None if bulk.high is None else bulk.high * slower)


def _dough_temperature_and_bulk(steps: tuple[Step, ...]) -> tuple[Fraction | None, Step | None]:
    """The last temperature a mix is to reach before the dough ferments, and that ferment."""
    written: Fraction | None = None
    for step in steps:
        if step.verb == "ferment":
            return written, step
        for reach in step.reaches:
            if step.verb in ("mix", "fold", "stir") and reach.what == "temperature":
                written = reach.value.likely
    return None, None
