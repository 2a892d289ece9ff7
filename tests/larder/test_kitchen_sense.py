"""What a kitchen says of itself and cannot be, or hardly: reported once, at its line, with what to type."""

from __future__ import annotations

from every import every
from larder.house_texts import house


def reports_of(lines: str) -> list[tuple[str, str]]:
    _larder, _kitchen, reports = house(f"kitchen House\n{lines}\n")
    return [(one.name, one.help) for one in reports]


ODD, IMPOSSIBLE = "kitchen-temperature-odd", "kitchen-temperature-impossible"


@every(
    [
        ("  tap 140 C", IMPOSSIBLE, "did you mean `tap 14 C` or `tap 140 F`?"),
        ("  tap 11 F", IMPOSSIBLE, "did you mean `tap 11 C`?"),
        ("  tap 80 C", ODD, "did you mean `tap 8 C` or `tap 80 F`?"),
        ("  tap 212 F", ODD, "write what a thermometer shows, as in `tap 54 F`"),
        (
            "  oven a\n    falls 36 F an hour from 600 F\n    falls 54 F an hour from 464 F",
            "oven-falls-faster-when-colder",
            "check both: have the two changed places? `falls 54 F an hour from 600 F`, `falls 36 F an hour from 464 F`",
        ),
        ("  air 170 C", IMPOSSIBLE, "did you mean `air 17 C`?"),
        ("  air 70 C", ODD, "did you mean `air 7 C` or `air 70 F`?"),
        ("  air 17 F", ODD, "did you mean `air 17 C`? If it is so, write `air -8.33 C`"),
        ("  flour -40 C", ODD, "did you mean `flour -4 C` or `flour 40 C`?"),
        ("  fridge\n    keeps 30 C", ODD, "did you mean `keeps 3 C` or `keeps 30 F`?"),
        ("  fridge\n    keeps 40 C", ODD, "did you mean `keeps 4 C` or `keeps 40 F`?"),
        ("  freezer\n    keeps 5 C", ODD, "did you mean `keeps -5 C`?"),
        ("  freezer\n    keeps 18 C", ODD, "did you mean `keeps -18 C`?"),
        ("  prover\n    keeps 5 C", ODD, "write what a thermometer shows, as in `keeps 28 C`"),
        ("  prover\n    keeps 80 C", ODD, "did you mean `keeps 8 C` or `keeps 80 F`?"),
        ("  oven a\n    hottest 25 C", ODD, "write what a thermometer shows, as in `hottest 250 C`"),
        (
            "  oven a\n    hottest 200 C\n    falls 20 C an hour from 320 C",
            "oven-falls-from-over-hottest",
            "write `hottest 320 C`, or begin the fall at 200 C",
        ),
        (
            "  oven a\n    falls 20 C an hour from 320 C\n    falls 30 C an hour from 240 C",
            "oven-falls-faster-when-colder",
            "check both: have the two changed places? `falls 30 C an hour from 320 C`, `falls 20 C an hour from 240 C`",
        ),
        ("  oven a\n    holds 0 loaves", "kitchen-figure-unfit", "write `holds 24 loaves, or 6 rounds`"),
        (
            "  tin a\n    round 180 mm\n    bottom 200 mm\n    deep 80 mm",
            "tin-wider-below",
            "exchange the figures of the rim and of `bottom`, or measure again",
        ),
    ],
    at_least=20,
)
def test_each_once_with_what_to_type(lines: str, name: str, help: str) -> None:
    assert reports_of(lines) == [(name, help)]


@every(
    [
        "  air 50 C", "  air -10 C", "  air 35 F", "  air 14 C", "  flour -30 C", "  tap 70 C", "  tap 0 C", "  tap 33 F",
        "  fridge\n    keeps 18 C", "  fridge\n    keeps 39 F", "  freezer\n    keeps -5 C", "  prover\n    keeps 8 C",
        "  oven a\n    hottest 320 C\n    falls 20 C an hour from 320 C",
        "  oven a\n    falls 20 C an hour from 320 C\n    falls 24 C an hour from 240 C",
        "  oven a\n    falls 18-22 C an hour from 320 C\n    falls 26-30 C an hour from 240 C",
        "  tin a\n    top 229 x 114 mm\n    bottom 96 x 210 mm\n    deep 70 mm",
        "  pot a\n    round 180 mm\n    bottom 200 mm\n    deep 80 mm",
        '  always allow kitchen-temperature-odd because "a cave in the ice"\n  air -20 C',
    ],
    at_least=18,
)  # fmt: skip
def test_what_can_be_is_left_alone(lines: str) -> None:
    assert reports_of(lines) == []


def test_what_cannot_be_is_not_reckoned_with() -> None:
    _larder, kitchen, _reports = house("kitchen House\n  tap 140 C\n  air 80 C\n  flour 60 C\n")
    assert (kitchen.tap, kitchen.air, kitchen.flour) == (None, None, 60)


def test_two_causes_are_two_reports() -> None:
    lines = "  oven a\n    hottest 200 C\n    falls 20 C an hour from 320 C\n    falls 30 C an hour from 240 C"
    assert {name for name, _ in reports_of(lines)} == {"oven-falls-faster-when-colder", "oven-falls-from-over-hottest"}
