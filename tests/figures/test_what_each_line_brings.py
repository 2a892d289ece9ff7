"""Water in all as it stands in the bowl, one basis for every starter, flour by the line; and what each line brings of it."""

from __future__ import annotations

from fractions import Fraction

import pytest
from loaves import LOAF_BY_WEIGHT
from works import first_work

from manchet.figures.derived import figures_of
from manchet.figures.figure import Figure

SCALD = """formula Scald loaf
  kind tin loaf
  makes 10 loaves at 900 g dough

  overall
    white flour          100%
    water                 66%
    salt                   2%
    fresh yeast            2%

  scald with 5% of all flour
    white flour          100%
    water                500%
    heat 5-7 min to 65 C, loses 10%
    cool 1-2 h to 26 C

  dough
    scald
    everything else
    mix slow 8 min to 26 C
    ferment covered 75 min at 26 C
    divide
    shape long
    place in long tin
    prove 60 min at 30 C
    bake 35 min at 210 C to 96 C core
    turn out
    cool 2 h
"""


def figures(text: str) -> dict[str, Figure]:
    return figures_of(first_work(text)).totals


def test_what_boils_off_is_not_in_the_bowl() -> None:
    found = figures(SCALD)
    in_all, weighed = found["hydration_percent"].value, found["water_weighed_in_percent"].value
    assert weighed == 66 + 2 * Fraction(figures(SCALD)["hydration_percent"].inputs[0].inputs[-1].inputs[1].value) / 100
    assert in_all == weighed - 3, "a tenth of 30% of all flour"


def test_what_is_topped_up_is_there_again() -> None:
    topped = SCALD.replace("    cool 1-2 h", "    top up with water\n    cool 1-2 h")
    found = figures(topped)
    assert "water_weighed_in_percent" not in found
    assert found["hydration_percent"].value == figures(SCALD)["water_weighed_in_percent"].value


def test_what_is_trimmed_off_takes_flour_and_water_alike() -> None:
    trimmed = SCALD.replace(", loses 10%", "").replace("    ferment", "    trim, loses 5%\n    ferment")
    assert figures(trimmed)["hydration_percent"].value == figures(SCALD)["water_weighed_in_percent"].value


LEVAIN = """formula Levain loaf
  kind hearth loaf
  makes 2 loaves at 860 g dough

  levain
    white flour          100 g
    water                100 g
    ripe wheat starter    40 g{booked}
    mix by hand 2 min
    ripen covered 8-10 h at 22 C

  dough
    white flour          880 g
    water                600 g
    levain
    salt                  20 g
    mix by hand 4 min to 25 C
    ferment covered 4 h at 24 C
    divide
    shape round
    prove covered 2 h at 24 C
    bake 40 min at 230 C
    cool 2 h
"""


def test_a_dough_is_as_wet_however_its_starter_is_booked() -> None:
    counted, apart = (figures(LEVAIN.format(booked=booked))["hydration_percent"] for booked in ("", ", counted apart"))
    assert counted.value == apart.value == 72
    assert any(given.name == "flour in what is counted apart" for given in apart.inputs)


def test_not_counted_as_flour_is_of_its_line() -> None:
    text = LEVAIN.format(booked="").replace(
        "    water                600 g",
        "    white flour           50 g, not counted as flour\n    water                600 g",
    )
    work = first_work(text.replace("white flour          880 g", "strong white flour   880 g"))
    flours = [(line.name, line.is_flour, line.share) for line in work.formula.overall if "white flour" in line.name]
    assert work.batch.flour == 1000, "880 g, 100 g in the levain and 20 g in its starter"
    assert sum(share for _, is_flour, share in flours if is_flour) == 1
    assert [share for _, is_flour, share in flours if not is_flour] == [Fraction(5, 100)]


@pytest.mark.parametrize(("what", "brings"), [("fat_percent", {"butter", "milk"}), ("salt_percent", {"salt"})])
def test_each_line_says_what_it_brings_and_no_other_stands_there(what: str, brings: set[str]) -> None:
    text = LOAF_BY_WEIGHT.replace(
        "    salt                  20 g",
        "    salt                  20 g\n    milk                 100 g\n    butter                50 g\n    sunflower seeds       80 g",
    )
    figure = figures(text)[what]
    assert {given.name.split(" from ")[-1] for given in figure.inputs} == brings
    assert sum(given.value for given in figure.inputs) == figure.value
    for given in figure.inputs:
        assert isinstance(given, Figure)
        share, in_100_g = given.inputs
        assert given.value == share.value * in_100_g.value / 100
