"""Two breads to compare with themselves after an edit, and what a comparison says of that."""

from __future__ import annotations

from functools import cache

from works import bakery_of, work_in

from manchet.batch.work import Work
from manchet.comparison.compare import Comparison, comparison_of
from manchet.sheets.comparison.page import compared_bread
from manchet.sheets.page.house import House

GULL = """\
formula Gull loaf
  about "Wheat and emmer with a poolish, a firm levain and cooked millet."
  kind hearth loaf
  makes 16 loaves at 850 g dough
  dough loss 1%
  bake loss 14%

  overall
    white flour           70%
    emmer flour           20%
    whole rye flour       10%
    water                 78%
    millet                 8%
    salt                   2.1%
    instant yeast          0.12%

  poolish with 20% of all flour
    white flour          100%
    water                100%
    instant yeast          0.1%
    mix by hand 3 min to 23 C
    ripen covered 12-14 h at 20 C until "domed"

  levain with 12% of all flour
    whole rye flour       50%
    emmer flour           50%
    water                 60%
    ripe rye starter      15%, counted as whole rye flour
    mix by hand 4 min to 26 C
    ripen covered 8-10 h at 24 C
    keep 180 g as ripe rye starter

  soaker millet porridge
    all of the millet
    water                250% of what is soaked
    simmer 15 min, loses 12%
    cool 1-2 h to 30 C

  dough
    poolish
    levain
    everything else
    hold back salt and instant yeast
    mix slow 4 min
    rest covered 30 min
    add salt and instant yeast
    mix slow 4 min
    mix fast 2 min to 25 C until "a rough window"
    add millet porridge
    mix slow 2 min
    ferment covered 2 h at 25 C with 2 folds every 40 min
      may wait 20 min
    divide
    shape round
    rest covered 20 min
    shape long
    dust with rice flour 6 g each
    place seam up on linen
    retard covered 10-14 h at 5 C
    score "two long cuts"
    bake 12 min at 255 C, steam
    bake 24-28 min at 225 C to 97 C core, vent open
    cool 3 h
"""

EIDER = """\
formula Eider rye
  kind rye hearth loaf
  makes 14 loaves at 900 g dough
  dough loss 1.5%
  bake loss 13%

  overall
    white flour           60%
    medium rye flour      40%
    water                 76%
    sunflower seeds       10%
    malt syrup             2%
    salt                   1.9%
    instant yeast          0.25%

  sour with 22% of all flour
    medium rye flour     100%
    water                 80%
    ripe rye starter      10%
    mix by hand 3 min to 27 C
    ripen covered 12-15 h at 30 C falling to 24 C
    keep enough as ripe rye starter

  scald with 8% of all flour
    medium rye flour     100%
    water                250% at 98 C
    mix by hand 2 min, loses 3%
    rest covered 60-90 min
    cool 1-2 h to 32 C

  soaker seeds
    all of the sunflower seeds
    water                 80% of what is soaked
    soak covered 2-12 h at 20 C

  dough
    sour
    scald
    everything else
    hold back salt
    mix slow 5 min
    add salt and seeds
    mix fast 2 min to 28 C
    ferment covered 40-50 min at 28 C
    divide
    shape round
    dust with medium rye flour 5 g each
    place seam down in round basket
    prove 50-70 min at 28 C until "small cracks show"
    # The crack is the sign, not the clock.
    bake 15 min at 260 C floor 240 C air, steam 10 s
    bake 35-40 min at 230 C falling to 205 C to 97 C core, vent open after 2 min
    cool 8-12 h
"""

Edits = tuple[tuple[str, str], ...]


def edited(text: str, *edits: tuple[str, str]) -> str:
    """The text with each edit, which has to apply."""
    for before, after in edits:
        assert before in text, before
        text = text.replace(before, after)
    return text


@cache
def work_of_text(text: str) -> Work:
    """The first formula of a text, at its size."""
    bakery = bakery_of(text)
    assert bakery.formulas, [one.message for one in bakery.mistakes]
    return work_in(bakery, min(bakery.formulas, key=lambda formula: formula.place.line))


def compared(before: str, after: str) -> Comparison:
    return comparison_of(work_of_text(before), work_of_text(after))


def lines(before: str, after: str, everything: bool = False) -> list[str]:
    """What is told, as in a terminal."""
    bread = compared_bread(compared(before, after), ("HEAD~2", "working copy"), House(), everything)
    told = [line.text for line in bread.lines] + ([bread.more] if bread.more else [])
    return [line.replace("\N{NO-BREAK SPACE}", " ") for line in told]
