"""Turns of the hook, and what a mixer takes of a stiff dough, against the figures of makers of mixers."""

from fractions import Fraction

import pytest

from manchet.batch.mixes import mixer_load
from manchet.figures.mixing.turns import measured_turns, speed
from manchet.kitchen.model import Mixer


@pytest.mark.parametrize(
    ("stated", "water", "printed"),
    [("5.7", "0.60", "5.7"), ("5.7", "0.55", "3.4"), ("11.3", "0.60", "11.3"), ("11.3", "0.55", "6.8")],
)
def test_loads_of_planetary_mixers_of_ten_and_twenty_litres(stated: str, water: str, printed: str) -> None:
    """Metcalfe manuals. Their 60 litre figures, 26 kg and then 30 of the stiffer dough, cannot both be right."""
    found = mixer_load(Mixer("m", most_grams=Fraction(stated)), Fraction(water))
    assert found is not None and abs(found - Fraction(printed)) < Fraction(5, 100)


def test_a_stiffer_dough_never_gets_a_larger_load() -> None:
    mixer = Mixer("m", most_grams=Fraction(1000))
    loads = [mixer_load(mixer, Fraction(water, 100)) or Fraction(0) for water in range(40, 90)]
    assert loads == sorted(loads) and loads[0] == 600 and loads[-1] == 1000
    assert mixer_load(Mixer("m"), Fraction(1, 2)) is None


def test_a_mixer_that_says_nothing_turns_like_a_spiral() -> None:
    assert (speed(None, False), speed(Mixer("m"), True)) == (100, 200)
    measured = Mixer(
        "m", slow_turns=Fraction(110), fast_turns=Fraction(210), warms_slow=Fraction(480), warms_fast=Fraction(240)
    )
    assert measured_turns(measured) == 8 * 110 + 4 * 210
