"""What stands in a kitchen, read from a file."""

from __future__ import annotations

from fractions import Fraction

import pytest
from larder.reading_help import house

from manchet.larder.kitchen import Cold, Kitchen, Mixer, Oven, Scale, Vessel

KITCHEN = """\
kitchen House
  air           70 F
  flour         20 C
  tap           12 C
  hands          2
  yeast         fresh
  words         American
  mixer spiral
    takes       6-45 kg dough
    slow        110 turns a minute
    fast        210 turns a minute
    warms       20 F in 8 min slow, 4 min fast
  oven mother
    heat        wood, falling
    hottest     330 C
    holds       24 loaves, or 6 rounds
    recovers    4 min
    heats in    90 min
    steam       by pan
  fridge cold room
    keeps       4 C
    holds       6 trays
  tin long tin
    volume      2 pt
    count       24
  scale bench
    reads       5 g
    up to       30 kg
  shape         20 s each
  measures      imperial
  always allow salt-missing because "saltless by tradition"
"""


def test_every_line_is_read() -> None:
    _larder, kitchen, reports = house(KITCHEN)
    assert reports == []
    assert kitchen._replace(place=None) == Kitchen(
        name="House",
        air=Fraction(190, 9),
        flour=Fraction(20),
        tap=Fraction(12),
        hands=2,
        measures="imperial",
        words="American",
        yeast="fresh",
        mixers=(
            Mixer(
                "spiral",
                Fraction(6000),
                Fraction(45000),
                Fraction(110),
                Fraction(210),
                Fraction(100, 9),
                Fraction(480),
                Fraction(240),
            ),
        ),
        ovens=(
            Oven(
                "mother",
                "wood, falling",
                Fraction(330),
                ((24, "loaves"), (6, "rounds")),
                Fraction(240),
                Fraction(5400),
                "pan",
            ),
        ),
        colds=(Cold("fridge", "cold room", Fraction(4), ((6, "trays"),)),),
        vessels=(Vessel("tin", "long tin", 2 * Fraction("568.26125"), 24),),
        scales=(Scale("bench", Fraction(5), Fraction(30000)),),
        minutes=(("shape", Fraction(20)),),
        always_allow=("salt-missing",),
    )


def test_warms_is_a_difference_and_no_reading() -> None:
    _larder, kitchen, _reports = house("kitchen K\n  mixer m\n    warms 20 F in 6 min slow\n")
    assert kitchen.mixers[0].warms == Fraction(100, 9)  # 11.1 C; as a reading 20 F would be -6.7 C
    assert kitchen.mixers[0].warms_fast is None


@pytest.mark.parametrize(
    ("lines", "name"),
    [
        ("  air 2200 C", "kitchen-figure-unfit"),
        ("  mixer m\n    warms 11 C in 8 min slow, 4 min slow", "kitchen-figure-unfit"),
        ("  mixer m\n    warms 11 C in 8 min quickly", "kitchen-figure-unfit"),
        ("  scale bench\n    up to 30 kg", "scale-reads-missing"),
        ("  scale bench\n    reads 5 g\n    up to 2 g", "kitchen-figure-unfit"),
        ("  tin a\n    count 2.5", "kitchen-figure-unfit"),
        ("  tin a\n    volume 2 pt", "kitchen-figure-unfit"),
        ("  oven a\n  oven a", "kitchen-line-twice"),
        ("  oven a\n    keeps 4 C", "no-kitchen-line"),
        ("  measures Swiss", "kitchen-word-unknown"),
        ("  shape round", "kitchen-time-missing"),
        ("  hands 0", "kitchen-figure-unfit"),
    ],
)
def test_mistakes(lines: str, name: str) -> None:
    _larder, _kitchen, reports = house(f"kitchen House\n{lines}\n")
    assert [report.name for report in reports] == [name], [report.message for report in reports]


def test_the_sound_part_is_kept() -> None:
    _larder, kitchen, reports = house("kitchen House\n  air 2200 C\n  hands 3\n  scale fine\n    reads 0.1 g\n")
    assert len(reports) == 1
    assert kitchen.hands == 3
    assert kitchen.air is None
    assert kitchen.scales == (Scale("fine", Fraction(1, 10)),)
