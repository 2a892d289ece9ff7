"""What a kitchen says for a day with several breads, read from a file."""

from __future__ import annotations

from fractions import Fraction

from every import every
from larder.house_texts import house

from manchet.kitchen.model import Cold, Mouth

KITCHEN = """\
kitchen House
  weigh         25 s each
  load          10 s each
  take out      5 s each
  place         4 s each
  dust          2 s each
  packs         loaves after 2 h
  packs         buns, plaits and rolls after 40 min
  busy          20%
  mixer spiral
    count       2
    wash        6 min
    wash after  lye, gluten 15 min
  oven deck
    decks       2
    loads within 6 min
    climbs      9 F a minute
    sinks       1 C a minute
  oven mother
    heats in    90 min
    cooks at the mouth from 60 min until 5 min before the fire is out
  fridge cold room
    holds       40 loaves, or 130 rolls
    count       2
  rack wall rack
    holds       60 loaves
  tub blue tub
    count       12
"""


def test_every_line_is_read() -> None:
    _larder, kitchen, reports = house(KITCHEN)
    assert reports == []
    seconds = {"weigh": 25, "load": 10, "take out": 5, "place": 4, "dust": 2}
    assert dict(kitchen.minutes) == {verb: Fraction(each) for verb, each in seconds.items()}
    assert kitchen.packs == (("loaves", 7200), ("buns", 2400), ("plaits", 2400), ("rolls", 2400))
    assert kitchen.busy == Fraction(1, 5)
    (mixer,) = kitchen.mixers
    assert (mixer.number, mixer.wash, mixer.wash_after) == (2, 360, (("lye", 900), ("gluten", 900)))
    deck, mother = kitchen.ovens
    assert (deck.decks, deck.loads_within, deck.climbs, deck.sinks) == (2, 360, 5, 1)
    assert mother.mouth == Mouth(Fraction(3600), Fraction(300))
    assert kitchen.colds == (Cold("fridge", "cold room", None, ((40, "loaves"), (130, "rolls")), 2),)
    assert [(one.word, one.holds, one.number) for one in kitchen.vessels] == [
        ("rack", ((60, "loaves"),), None),
        ("tub", (), 12),
    ]


ODD = [
    ("  load 10 min each", "kitchen-figure-odd"),
    ("  packs loaves after 3 d", "kitchen-figure-odd"),
    ("  busy 95%", "kitchen-figure-odd"),
    ("  busy 100%", "kitchen-figure-unfit"),
    ("  busy 10-20%", "kitchen-figure-unfit"),
    ("  packs loaves after 2-3 h", "kitchen-figure-unfit"),
    ("  packs loaves after 2 h\n  packs rolls, loaves after 1 h", "kitchen-line-twice"),
    ("  load 10 s each\n  load 12 s each", "kitchen-line-twice"),
    ("  oven deck\n    decks 30", "kitchen-figure-odd"),
    ("  oven deck\n    decks 1.5", "kitchen-figure-unfit"),
    ("  oven deck\n    climbs 50 C a minute", "kitchen-figure-odd"),
    ("  oven deck\n    sinks 0 C a minute", "kitchen-figure-unfit"),
    ("  oven deck\n    loads within 2 h", "kitchen-figure-odd"),
    ("  oven deck\n    wash 6 min", "no-kitchen-line"),
    ("  oven deck\n    falls 12 C an hour from 300 C\n    climbs 2 C a minute", "oven-falls-and-is-set"),
    ("  oven deck\n    cooks at the mouth from 5 min until 60 min before the fire is out", "kitchen-figure-unfit"),
    (
        "  oven deck\n    heats in 40 min\n    cooks at the mouth from 60 min until 5 min before the fire is out",
        "mouth-before-the-fire",
    ),
    ("  mixer spiral\n    wash after lye 15 h", "kitchen-figure-odd"),
]


@every(ODD, at_least=15)
def test_what_cannot_be_or_hardly_is_said_at_its_line(lines: str, name: str) -> None:
    _larder, _kitchen, reports = house(f"kitchen House\n{lines}\n")
    assert [one.name for one in reports] == [name]
    assert reports[0].place.line == lines.count("\n") + 2
