"""What is kept for next time is a weight like any other: every form says it as the scale shows it."""

import pytest
from works import first_work

from manchet.batch.scales import System
from manchet.batch.weighing import weighings
from manchet.timing.card.before import before_you_go

LOAF = """\
kitchen Bench
  scale bench
    reads {reads} g

formula Sour loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough

  overall
    white flour           80%
    whole rye flour       20%
    water                 72%
    salt                   2%

  sour with 10% of all flour
    whole rye flour      100%
    water                100%
    ripe rye starter      10%
    mix by hand 3 min to 26 C
    ripen covered 6-8 h at 26 C
    {keep}

  dough
    sour
    everything else
    mix slow 8 min to 26 C
    ferment covered 2 h at 26 C
    divide
    shape round
    prove covered 60 min at 26 C
    bake 40 min at 230 C, steam, vent open after 20 min
    cool 2 h
"""


@pytest.mark.parametrize(
    ("reads", "keep", "shown"),
    [
        ("1", "keep 48.5 g as ripe rye starter", 49),
        ("1", "keep 48.4 g as ripe rye starter", 48),
        ("5", "keep 48.5 g as ripe rye starter", 50),
        ("0.1", "keep 48.5 g as ripe rye starter", 48.5),
        ("1", "keep 0.2 g as ripe rye starter", 0.2),
    ],
)
def test_kept_as_the_scale_shows(reads: str, keep: str, shown: float) -> None:
    work = first_work(LOAF.format(reads=reads, keep=keep))
    sour = weighings(work).value[0]
    ((name, grams),) = sour.kept
    assert (name, float(grams)) == ("ripe rye starter", shown)


@pytest.mark.parametrize("reads", ["1", "2", "5"])
def test_keep_enough_is_as_much_as_stands_in_the_row(reads: str) -> None:
    work = first_work(LOAF.format(reads=reads, keep="keep enough as ripe rye starter"))
    sour = weighings(work).value[0]
    (row,) = (line for line in sour.lines if line.weighed.portion.name == "ripe rye starter")
    assert [grams for _, grams in sour.kept] == [row.reading.grams]
    (away,) = (one for one in before_you_go(work, (), System.METRIC) if one.what == "put away")
    assert away.grams == row.reading.grams
