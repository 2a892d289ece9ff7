"""Boiling water is as hot as it leaves the kettle; of hot water it is asked."""

import pytest
from works import bakery_of, reports_of

LOAF = """\
formula Scald loaf
  kind hearth loaf
  makes 4 loaves at 800 g dough

  overall
    white flour           90%
    medium rye flour      10%
    water                 74%
    salt                   2%
    instant yeast          0.6%

  scald with 6% of all flour
    medium rye flour     100%
    {water}
    mix by hand 4 min
    cool 2-3 h to 30 C

  dough
    scald
    everything else
    mix by hand 10 min
    ferment covered 90 min at 24 C
    divide
    shape round
    prove covered 60 min at 24 C
    bake 40 min at 230 C, steam, vent open after 20 min
    cool 2 h
"""


@pytest.mark.parametrize("line", ["boiling water        200%", "boiling hot water 200%", "water 200%, boiling"])
def test_boiling_water_scalds(line: str) -> None:
    bakery = bakery_of(LOAF.format(water=line))
    (read_as,) = bakery.diagnostics
    assert (read_as.name, read_as.message) == ("read-as", "read as `water 200% at 98 C`")
    (formula,) = bakery.formulas
    assert formula.stages[0].portions[1].celsius == 98


@pytest.mark.parametrize(
    "line",
    [
        "boiling water 200% at 95 C",
        "hot water 200% at 95 C",
        "boiling water 200%\n      at 95 C",
        "hot water 200%\n      at 95 C",
    ],
)
def test_a_figure_says_more_than_the_word(line: str) -> None:
    bakery = bakery_of(LOAF.format(water=line))
    assert [r.name for r in bakery.diagnostics if r.name != "read-as"] == []
    (formula,) = bakery.formulas
    assert formula.stages[0].portions[1].celsius == 95


def test_hot_water_is_asked_for_its_temperature() -> None:
    (asked,) = reports_of(LOAF.format(water="hot water 200%"))
    assert (asked.name, asked.message) == ("how-hot", "how hot is the hot water?")
    assert "`hot water 200% at 98 C` from the kettle" in asked.help


def test_overall_does_not_say_how_hot() -> None:
    text = LOAF.format(water="water 200% at 98 C").replace("    water                 74%", "    hot water 74%")
    assert reports_of(text) == ()
