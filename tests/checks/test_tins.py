"""Dough for a tin: what is published for it is quiet, what lies far from that is told, and a level that sinks is told once."""

from __future__ import annotations

import pytest
from every import every
from works import reports_of

LOAF = """formula Tin loaf
  kind {kind}
  makes 4 loaves at {grams} g dough
  bake loss 11%

  overall
{flours}
    water                 {water}%
    salt                   2%
    instant yeast          1%

  dough
    everything else
    mix by hand 10 min to 26 C
    ferment covered 90 min at 26 C
    divide
    shape as tin roll
    place in our tin
    prove covered 60 min at 26 C{level}
    bake 40-50 min at 210 C to 97 C core{lid}
    turn out
    cool {cool}

kitchen House
  tin our tin
    {tin}
"""
WHITE, HALF, WHOLE, RYE = (
    {"white flour": 100},
    {"white flour": 50, "wholemeal flour": 50},
    {"wholemeal flour": 100},
    {"whole rye flour": 100},
)


def reports(
    flours: dict[str, int], grams: float, tin: str, lid: bool = False, level: str = ""
) -> list[tuple[str, str, str]]:
    """Name, severity and message of what is said about the tin and the level in it."""
    rye = "whole rye flour" in flours
    text = LOAF.format(
        kind="rye tin loaf" if rye else "tin loaf", grams=grams, tin=f"{tin}\n    lidded" if lid else tin, lid=", lid on" if lid else "",
        flours="\n".join(f"    {name}  {share}%" for name, share in flours.items()), water=78 if rye else 64,
        cool="24 h" if rye else "2 h", level=f" to {level}" if level else "",
    )  # fmt: skip
    found = reports_of(text)
    return [(d.name, d.severity.name.lower(), d.message) for d in found if "tin" in d.name or "level" in d.name]


def ml(volume: float) -> str:
    return f"volume {volume} ml"


@every(
    [
        (WHITE, 842.7, 1500, False), (WHITE, 1011, 1800, False),  # Risen Flour, 1.78
        (HALF, 877, 1500, False), (WHOLE, 904, 1500, False),  # the same, 1.71 and 1.66
        (WHITE, 454, 1993, False), (WHITE, 454, 1444, False),  # US pans, wholesale and retail: 4.39 and 3.18 ml a gram
        (WHITE, 765, 3155, False), (WHITE, 610, 1891, False),  # US Armed Forces Recipe Service, 4.12 and 3.10
        (WHITE, 794, 3011, False), (WHITE, 709, 1825, False),  # the same, 3.79 and 2.58
        (WHITE, 450, 1376, False), (WHITE, 771, 2360, False),  # wholegrain100.com
        (WHITE, 1040, 3408, True), (WHITE, 1144, 3408, True), (WHITE, 1248, 3408, True),  # toolntricks.com
        (RYE, 1714, 2400, False), (RYE, 1714, 2400, True),  # 1.40: common practice
    ],
    at_least=17,
)  # fmt: skip
def test_what_is_published_is_quiet(flours: dict[str, int], grams: float, volume: float, lid: bool) -> None:
    assert reports(flours, grams, ml(volume), lid) == []


@every(
    [
        (RYE, 1136, 2400, False, "note", "little"), (RYE, 800, 2400, False, "warning", "floor"),
        (RYE, 2600, 2400, False, "warning", "runs over"), (RYE, 2300, 2400, False, "note", "much"),
        (WHITE, 1100, 1600, False, "note", "much"), (WHITE, 900, 1100, False, "warning", "runs over"),
        (WHITE, 400, 1900, False, "note", "little"), (WHITE, 300, 1900, False, "warning", "floor"),
        (HALF, 700, 1900, False, "note", "little"), (WHOLE, 700, 1900, False, "note", "little"),
        (WHITE, 1350, 3408, True, "note", "much"), (WHITE, 1800, 3408, True, "warning", "runs over"),
        (WHITE, 900, 3408, True, "note", "little"),
        # 8 % more and 28 % less than each takes; of white in open tins much less than is usual is in print
        (WHITE, 910, 1500, False, "note", "much"), (HALF, 948, 1500, False, "note", "much"),
        (WHOLE, 977, 1500, False, "note", "much"), (RYE, 1852, 2400, False, "note", "much"),
        (HALF, 631, 1500, False, "note", "little"), (WHOLE, 650, 1500, False, "note", "little"),
        (RYE, 1234, 2400, False, "note", "little"), (WHITE, 824, 3408, True, "note", "little"),
    ],
    at_least=21,
)  # fmt: skip
def test_what_lies_far_from_it_is_told_once(
    flours: dict[str, int], grams: float, volume: float, lid: bool, severity: str, words: str
) -> None:
    ((name, how, message),) = reports(flours, grams, ml(volume), lid)
    assert (name, how) == ("tin-fill-odd", severity) and words in message


BOX = "inside 230 x 110 x 90 mm"
"""2277 ml: 900 g of dough stand 33 mm high."""


@pytest.mark.parametrize(
    "level", ["20 mm below the rim", "10-15 mm below the rim", "50 mm below the rim", "1.8 times its volume", "0 mm below the rim"]
)  # fmt: skip
def test_a_level_that_rises_is_quiet(level: str) -> None:
    assert reports(WHITE, 900, BOX, level=level) == []


@pytest.mark.parametrize(
    ("level", "says"),
    [
        ("150 mm below the rim", "90 mm deep"),
        ("90 mm below the rim", "90 mm deep"),
        ("70 mm below the rim", "about 35 mm high"),
        ("0.7 times its volume", "less than it was"),
    ],
)
def test_a_level_that_sinks_is_told_once(level: str, says: str) -> None:
    ((name, how, message),) = reports(WHITE, 900, BOX, level=level)
    assert (name, how) == ("level-too-low", "warning") and says in message


def test_a_tin_that_is_too_full_is_one_mistake() -> None:
    assert [name for name, *_ in reports(WHITE, 1900, BOX, level="40 mm below the rim")] == ["tin-fill-odd"]


def test_of_a_tin_that_nobody_measured_nothing_is_said() -> None:
    assert reports(WHITE, 900, ml(2277), level="70 mm below the rim") == []
