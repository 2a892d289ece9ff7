"""An oven that holds so many trays, and a tray that holds so many buns: loads are counted by trays."""

from datetime import datetime
from itertools import pairwise

from works import first_work

from manchet.timing.card.card import card_of
from manchet.timing.when import When

BUNS = """\
formula Buns
  kind soft
  makes 144 buns at 60 g dough
  overall
    white flour          100%
    water                 60%
    salt                   2%
    fresh yeast            3%
  dough
    everything else
    mix by hand 10 min to 26 C
    ferment covered 60 min at 26 C
    divide
    shape round 20 min
    place on black tray
    prove covered 45-60 min at 28 C
    bake 15 min at 220 C
    cool 30 min

kitchen House
  oven deck
    heat electric
    holds {} trays
    recovers 5 min
  tray black tray
    holds 12 buns
    count 12
"""


def test_loads_are_counted_by_trays() -> None:
    for trays, loads in ((4, 3), (6, 2), (12, 1)):
        card = card_of(first_work(BUNS.format(trays)), When(datetime(2026, 11, 28, 5, 0), is_ready=False))
        bakes = [row for row in card.rows if row.job == "step" and row.step and row.step.verb == "bake"]
        assert [row.pieces for row in bakes] == [144 // loads] * loads
        assert all(later.start >= one.end for one, later in pairwise(bakes))
        assert not card.clashes
