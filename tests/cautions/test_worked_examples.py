"""Worked examples of time, heat and acid, from rules to answers, each with its source.

W12 cooling: US Food Code 3-501.14 (57 to 21 C in 2 h, to 5 C in 6 h in all; casetext.com, Delaware 3-501.14). W13 equal heats: UK Food Standards Agency
(safeworkers.co.uk, safe cooking temperatures). W15: US Food Code 1-201.10(B), tables A and B (annandalefree.com, Tenn. 0080-04-09-.01; 25 TAC
228.2). W16 lye: BGN Brezellauge; Austrian food code B18 1.7; Regulation (EC) 1272/2008, Annex VI. W19 plants under fat: National Center for Home Food
Preservation (2015); Food Protection Trends 34:247 (2014) for the one acid step that was tested.
"""

from fractions import Fraction

import pytest
from works import bakery_of, works

from manchet.cautions.kill import kills, seconds_at
from manchet.cautions.registry import cautions_of
from manchet.diagnostics.diagnostic import Severity
from manchet.larder.acid_and_water import keeps_without_cold


def levels(text: str) -> dict[str, str]:
    found = (one for work in works(bakery_of(text)) for one in cautions_of(work))
    return {one.name: one.level for one in found if one.of == "formula"}


CUSTARD = "preparation custard\n  milk 500 g\n  egg yolks 90 g\n  heat 8 min to 85 C\n{}  good for 2 d at 4 C\n"


@pytest.mark.parametrize(
    ("to_21", "then_to_5", "level"),
    [
        ("110 min", "245 min", "limit"),  # 1:50, 5:55
        ("125 min", "200 min", "warning"),  # 2:05
        ("90 min", "260 min", "limit"),  # 1:30, 5:50, though the second leg took 4:20
        ("110 min", "255 min", "warning"),  # 6:05
    ],
)
def test_w12_cooling(to_21: str, then_to_5: str, level: str) -> None:
    cooled = CUSTARD.format(f"  cool {to_21} to 21 C\n  chill {then_to_5} to 5 C\n")
    assert levels(cooled)["cool-it-fast"] == level


@pytest.mark.parametrize(
    ("celsius", "seconds", "is_killed"),
    [
        (65, 480, False), (65, 600, True), (70, 115, False), (70, 120, True), (75, 30, True), (75, 29, False), (60, 2700, True),
        (80, 6, True), (85, 6, True), (59, 86400, False),
    ],
)  # fmt: skip
def test_w13_equal_heats(celsius: int, seconds: int, is_killed: bool) -> None:
    assert kills(Fraction(celsius), Fraction(seconds)) is is_killed


def test_w13_between_two_rows_the_logarithm_goes_by_the_degrees_and_never_outside() -> None:
    assert seconds_at(Fraction("67.5")) == 269  # the root of 600 x 120 is 268.3
    assert seconds_at(Fraction("62.5")) == 1273  # that of 2700 x 600 is 1272.8
    assert seconds_at(Fraction("59.9")) is None and seconds_at(Fraction(90)) == 6


PASTED = """preparation paste
  white flour 100 g
  water 500 g
  {heat}

formula Loaf
  kind soft
  makes 4 loaves at 500 g dough
  dough
    white flour 1200 g
    water 790 g
    salt 22 g
    instant yeast 5 g
    mix slow 8 min to 25 C
    ferment covered 60 min at 25 C
    divide
    shape round
    prove 60 min at 25 C
    bake 15 min at 200 C
    cool 2 h
    brush with paste 10 g each
"""


@pytest.mark.parametrize(
    ("heat", "is_raw"),
    [
        ("heat 8 min at 65 C", True),
        ("heat 10 min at 65 C", False),
        ("heat 3 min to 65 C", True),
        ("heat 3 min to 75 C", False),
        ("simmer 3 min", False),
    ],
)
def test_w13_flour_that_was_not_hot_for_long_enough_is_raw(heat: str, is_raw: bool) -> None:
    assert ("raw-flour-after-heat" in levels(PASTED.format(heat=heat))) is is_raw


@pytest.mark.parametrize(
    ("ph", "activity", "packed", "keeps"),
    [
        ("3.7", "0.98", False, True), ("4.2", "0.95", False, False), ("4.6", "0.96", True, True), ("4.7", "0.96", True, False),
        ("5.6", "0.94", True, True), ("5.61", "0.94", True, False), ("7.0", "0.87", False, True), (None, "0.87", False, True),
        (None, None, False, False), (None, None, True, False), ("4.1", None, False, True), ("5.0", "0.90", False, True),
        ("5.1", "0.90", False, False), ("4.6", "0.92", False, True), ("4.7", "0.92", False, False), (None, "0.92", True, True),
    ],
)  # fmt: skip
def test_w15_acid_and_water(ph: str | None, activity: str | None, packed: bool, keeps: bool) -> None:
    def exact(said: str | None) -> Fraction | None:
        return None if said is None else Fraction(said)

    assert keeps_without_cold(exact(ph), exact(activity), packed) is keeps


BATH = "preparation bath\n  water {water} g\n  lye {lye} g\n  stir 3 min\n  good for 1 d at 18 C\n"
KNOT = """
formula Knot
  kind lye
  makes 40 knots at 90 g dough
  dough
    white flour 2200 g
    water 1200 g
    salt 44 g
    instant yeast 12 g
    mix slow 8 min to 25 C
    divide
    shape round
    prove 60 min at 25 C
    dip in bath 4 g each
    bake 15 min at 230 C
    cool 1 h
"""


@pytest.mark.parametrize(("lye", "caution"), [(40, "lye-corrosive"), (10, "lye-irritant"), (70, "lye-too-strong")])
def test_w16_lye_by_its_strength_at_the_bath(lye: int, caution: str) -> None:
    """4, 1 and 7 % of 1,000 g; dry lye burns at the mixing however weak the bath."""
    bakery = bakery_of(BATH.format(water=1000 - lye, lye=lye) + KNOT)
    found = {one.name: one.level for work in works(bakery) for one in cautions_of(work) if one.of == "formula"}
    assert caution in found and found["lye-mixing"] == "top"
    errors = {one.name for one in bakery.diagnostics if one.severity is Severity.ERROR}
    assert errors == ({"lye-bath-strong"} if lye > 60 else set())


GARLIC = "preparation garlic butter\n  butter 900 g\n  {} 100 g\n{}  mix by hand 4 min\n  good for {}\n"


@pytest.mark.parametrize(
    ("plant", "more", "kept", "level"),
    [
        ("garlic", "", "1 d at 20 C", "top"),  # kept in the warm
        ("garlic", "", "5 d at 4 C", "top"),  # over four days
        ("garlic", "", "4 d at 4 C", "top"),  # the harm is grave however well it is written
        ("garlic", "  lemon juice 60 g\n", "4 d at 4 C", "top"),  # no acid step that was tested, and nothing measured
        ("garlic powder", "", "5 d at 4 C", None),
    ],
)
def test_w19_garlic_in_butter(plant: str, more: str, kept: str, level: str | None) -> None:
    found = levels(GARLIC.format(plant, more, kept))
    assert found.get("plants-under-fat") == level


def test_w19_the_warm_and_the_old_are_told_apart() -> None:
    warm, old, good = (
        [one.message for one in (*bakery.diagnostics, *bakery.cautions)]
        for bakery in (
            bakery_of(GARLIC.format("garlic", "", kept)) for kept in ("1 d at 20 C", "5 d at 4 C", "4 d at 4 C")
        )
    )
    assert any("20 C, and the limit is 4 C" in message for message in warm)
    assert any("kept 5 d; public advice is 4 d at 4 C" in message for message in old)
    assert good == ["botulism: garlic with no air round it"]


def test_w15_what_its_acid_keeps_is_not_told_to_be_kept_cold() -> None:
    chutney = (
        "larder House\n  chutney vegetables\n    class vegetable\n    pH {}\n    no allergens\n\n"
        "preparation chutney\n  chutney vegetables 1000 g\n  sugar 300 g\n  simmer 40 min, loses 20%\n  good for 60 d at 18 C\n"
    )
    sour, not_sour = (bakery_of(chutney.format(ph)) for ph in ("3.8", "5.2"))
    assert {one.name for one in (*sour.diagnostics, *sour.cautions)}.isdisjoint(
        {"kept-too-warm", "neither-cold-nor-hot"}
    )
    assert "kept-too-warm" in {one.name for one in not_sour.diagnostics}
