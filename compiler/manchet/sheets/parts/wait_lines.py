"""A wait that was asked for at another time or warmth, as every form says it, and what became of the yeast."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.formula.model import Moved, Range
from manchet.sheets.page.measures import Measures


def wait_lines(moved: Iterable[Moved], m: Measures) -> tuple[str, ...]:
    """A line for each wait, to stand beside what was swapped."""
    return tuple(_line(one, m) for one in moved)


def _line(one: Moved, m: Measures) -> str:
    """`poolish: 16 h at 18 °C, written 12–14 h at 20 °C: instant yeast × 0.98, in all 0.12 % of all flour …`"""
    words = m.words
    stage = words.say("wait.of_both", one.stage) if one.together else one.stage
    now = words.say("wait.at", m.time(one.seconds or one.written), m.degrees(one.celsius or one.written_celsius))
    was = words.say("wait.at", m.time(one.written), m.degrees(one.written_celsius))
    factor = m.plain(Range(one.times, one.times), 2)
    yeast = words.say("wait.factor", one.yeast, factor)
    if one.of_stage is not None and one.of_stage != one.in_all:
        yeast = words.say("wait.in_stage", yeast, *m.percents_apart(one.of_stage * one.times, one.of_stage))
    said = words.say("wait.moved", stage, now, was, yeast, *m.percents_apart(one.in_all_now, one.in_all))
    return f"{said}. {words['wait.carries_on']}" if one.carries_on else said
