"""A warmer dough never takes longer below 33 C, yeast leads where there is any, and card and trace tell one range."""

from __future__ import annotations

from fractions import Fraction

import pytest
from every import every
from hypothesis import given, strategies as st
from weighing.kneading import step
from works import first_work

from manchet.figures.derived import figures_of
from manchet.figures.fermentation.another_warmth import Waiting
from manchet.figures.fermentation.yeast_rate import BAKERS, SOUR_BACTERIA, SOUR_YEAST, Leaven
from manchet.formula.model import Heat, Range
from manchet.timing.card.warmth import came_out_at

SOURS = ((SOUR_YEAST,), (SOUR_YEAST, SOUR_BACTERIA), (BAKERS, SOUR_YEAST), (BAKERS,))


def wait(celsius: Fraction, leavens: tuple[Leaven, ...]) -> Waiting:
    time = Range(Fraction(1800), Fraction(2400))
    return Waiting("dough", step("ferment")._replace(time=time, heats=(Heat(Range(celsius, celsius)),)), time, leavens)


@pytest.mark.parametrize("leavens", SOURS)
@given(at=st.integers(15, 32).map(Fraction), warmer=st.integers(0, 17))
def test_it_never_takes_longer(leavens: tuple[Leaven, ...], at: Fraction, warmer: int) -> None:
    there = wait(at, leavens).at(min(at + warmer, Fraction(32)))
    assert there is not None and there.seconds.low is not None and there.seconds.high is not None
    assert there.seconds.low <= 1800 and there.seconds.high <= 2400


def test_bakers_yeast_leads() -> None:
    assert wait(Fraction(26), (BAKERS, SOUR_YEAST)).at(Fraction(22)) == wait(Fraction(26), (BAKERS,)).at(Fraction(22))


RYE = """formula Rye
  kind rye hearth loaf
  makes 10 loaves at 900 g dough

  overall
    medium rye flour     100%
    water                 78%
    salt                   2%

  sour with 35% of all flour
    medium rye flour     100%
    water                100%
    ripe rye starter      10%
    mix by hand 3 min to 28 C
    ripen covered 4 h at 28 C
    keep enough as ripe rye starter

  dough
    sour
    everything else
    mix slow 8 min to {warmth} C
    ferment covered 30-40 min at {warmth} C
    divide
    shape round
    prove covered 60 min at {warmth} C
    bake 55 min at 230 C
    cool 24 h
"""


@every([28, 30], at_least=2)
def test_the_card_and_trace_tell_one_range(warmth: int) -> None:
    work = first_work(RYE.format(warmth=warmth))
    estimates = figures_of(work).estimates
    lines = [line for line in came_out_at(work.batch) if line.celsius != warmth]
    assert len(lines) >= 3
    for line in lines:
        told = estimates[f"dough, ferment at {line.celsius} C"]
        assert line.high is not None
        ends = [
            str(round(float(end) / 60 / 5) * 5) if end >= 1800 else str(round(float(end) / 60))
            for end in (line.low, line.high)
        ]
        assert f"an estimate, {' to '.join(dict.fromkeys(ends))} min" in told.rule
