"""What stands in a kitchen, read from a file."""

from __future__ import annotations

from fractions import Fraction

import pytest
from every import every
from larder.house_texts import house

from manchet.kitchen.model import Cold, Fall, Floor, Kitchen, LoadTakes, Mixer, Oven, Scale, Vessel

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
        degrees="F",
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


SIZES = """\
kitchen House
  oven mother
    round floor 110 cm
    door        18 inch
    falls       16 F an hour from 392 F
    falls       12 C an hour from 250 C
  oven square
    floor       120 x 90 cm
  tin box
    inside      230 x 110 x 95 mm
  tin of the cereal chemists
    top         229 x 114 mm
    bottom      210 x 96 mm
    deep        70 mm
  tin round
    round       200 mm
    deep        80 mm
  tin of inches
    inside      9 × 4 1/2 by 2.75 inch
  tin of water
    holds water 1996 g
"""


def test_tins_and_ovens_by_their_measures() -> None:
    """The cereal chemists' 1 lb pan (AACC 10-10.03) holds 1615 ml."""
    _larder, kitchen, reports = house(SIZES)
    assert reports == []
    tins = {vessel.name: vessel for vessel in kitchen.vessels}
    held = {name: round(tin.millilitres or 0) for name, tin in tins.items()}
    assert held == {"box": 2404, "of the cereal chemists": 1615, "round": 2513, "of inches": 1825, "of water": 2000}
    assert tins["of the cereal chemists"].rim == (229, 114)
    assert tins["round"].rim == (200, 200)
    mother, square = kitchen.ovens
    assert (mother.floor, mother.door) == (Floor(Fraction(1100), Fraction(1100), True), Fraction("457.2"))
    assert square.floor == Floor(Fraction(1200), Fraction(900))


def test_a_fall_is_a_difference_and_its_start_a_reading() -> None:
    _larder, kitchen, _reports = house(SIZES)
    assert kitchen.ovens[0].falls == (
        Fall(Fraction(12), Fraction(250)),
        Fall(Fraction(80, 9), Fraction(200)),
    )  # the hottest first, in whatever order they stand


def test_a_fall_may_be_a_range() -> None:
    _larder, kitchen, reports = house("kitchen K\n  oven a\n    falls 18-23.4 F an hour from 250 C\n")
    (fall,) = kitchen.ovens[0].falls
    assert (reports, fall) == ([], Fall(Fraction("11.5"), Fraction(250), Fraction(10), Fraction(13)))


@pytest.mark.parametrize(
    ("line", "takes"),
    [
        ("15 C", LoadTakes(Fraction(15))),
        ("27 F", LoadTakes(Fraction(15))),
        ("15 C for 20 kg dough", LoadTakes(Fraction(15), Fraction(20_000))),
        ("15 C for 20 kg", LoadTakes(Fraction(15), Fraction(20_000))),
    ],
)
def test_what_a_load_takes_is_a_difference(line: str, takes: LoadTakes) -> None:
    _larder, kitchen, reports = house(f"kitchen K\n  oven a\n    each load cools it {line}\n")
    assert (reports, kitchen.ovens[0].load_takes) == ([], takes)


def test_a_volume_that_is_said_counts_before_what_is_measured() -> None:
    _larder, kitchen, reports = house("kitchen K\n  tin a\n    inside 230 x 110 x 95 mm\n    volume 2.3 l\n")
    assert (reports, kitchen.vessels[0].millilitres) == ([], 2300)


def test_warms_is_a_difference_and_no_reading() -> None:
    _larder, kitchen, _reports = house("kitchen K\n  mixer m\n    warms 20 F in 6 min slow\n")
    assert kitchen.mixers[0].warms == Fraction(100, 9)  # 11.1 C; as a reading 20 F would be -6.7 C
    assert kitchen.mixers[0].warms_fast is None


@every(
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
        ("  tin a\n    inside 230 x 110 mm", "kitchen-figure-unfit"),
        ("  tin a\n    inside 230 x 110 x 95", "kitchen-figure-unfit"),
        ("  tin a\n    inside 230 x 110 x 95 m", "unreadable-line"),
        ("  tin a\n    round 200 g\n    deep 80 mm", "unreadable-line"),
        ("  tin a\n    round 200 x 200 mm\n    deep 80 mm", "kitchen-figure-unfit"),
        ("  tin a\n    top 229 x 114 mm\n    deep 0 mm", "kitchen-figure-unfit"),
        ("  tin a\n    top 229 x 114 mm\n    bottom 210 x 96 mm", "tin-size-unclear"),
        ("  tin a\n    round 200 mm\n    bottom 210 x 96 mm\n    deep 80 mm", "tin-size-unclear"),
        ("  tin a\n    holds water 1900 ml", "unreadable-line"),
        ("  fridge\n    inside 230 x 110 x 95 mm", "no-kitchen-line"),
        ("  oven a\n    floor 120 cm", "kitchen-figure-unfit"),
        ("  oven a\n    round floor 120 x 90 cm", "kitchen-figure-unfit"),
        ("  oven a\n    door 45", "kitchen-figure-unfit"),
        ("  oven a\n    falls 12 C an hour", "line-unfinished"),
        ("  oven a\n    falls 12 C from 250 C", "unreadable-line"),
        ("  oven a\n    falls at least 8 C an hour from 250 C", "kitchen-figure-unfit"),
        ("  oven a\n    falls 0-8 C an hour from 250 C", "kitchen-figure-unfit"),
        ("  oven a\n    falls 8 C an hour from 200-250 C", "kitchen-figure-unfit"),
        ("  oven a\n    falls 0 C an hour from 250 C", "kitchen-figure-unfit"),
        ("  oven a\n    falls 12 C an hour from 2500 C", "kitchen-figure-unfit"),
        ("  oven a\n    falls 12 C an hour from 250 C\n    falls 9 C an hour from 250 C", "kitchen-line-twice"),
        ("  oven a\n    floor 120 x 90 cm\n    round floor 110 cm", "kitchen-line-twice"),
        ("  oven a\n    round floor 110 cm\n    floor 120 x 90 cm", "kitchen-line-twice"),
        ("  oven a\n    holds 24 loaves, or 20 loaves", "kitchen-line-twice"),
        ("  shape 18 s each\n  shape 20 s each", "kitchen-line-twice"),
        ("  oven a\n    each load cools it 0 C", "kitchen-figure-unfit"),
        ("  oven a\n    each load cools it 15-20 C", "kitchen-figure-unfit"),
        ("  oven a\n    each load cools it 15 C for 0 kg dough", "kitchen-figure-unfit"),
        ("  oven a\n    each load cools it 20 kg", "unreadable-line"),
        ("  mixer a\n    each load cools it 15 C", "no-kitchen-line"),
    ],
    at_least=42,
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


@pytest.mark.parametrize(
    ("lines", "degrees"),
    [
        ("  oven a\n    falls 20 F an hour from 500 F\n", "F"),
        ("  oven a\n    falls 12 C an hour from 250 C\n", "C"),
        ("  air 21 C\n  oven a\n    falls 20 F an hour from 500 F\n", "C"),
        ("  oven a\n    falls 20 F an hour\n", ""),
    ],
)
def test_an_oven_read_in_fahrenheit_makes_a_house_of_fahrenheit(lines: str, degrees: str) -> None:
    _larder, kitchen, _reports = house(f"kitchen K\n{lines}")
    assert kitchen.degrees == degrees
