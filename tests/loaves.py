"""Plain breads and kitchens for tests that want a sound one and do not mind which; `vary` writes a line of one otherwise."""

from __future__ import annotations

import re

PLAIN_LOAF = """\
formula Plain loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough

  overall
    white flour          100%
    water                 70%
    salt                   2%
    fresh yeast            1.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 1 h at 27 C
    bake 40 min at 230 C
    cool 2 h
"""
"""Straight, with fresh yeast, by per cent."""

POOLISH_LOAF = """\
formula Poolish loaf
  kind hearth loaf
  makes 20 loaves at 900 g dough

  overall
    white flour          100%
    water                 68%
    salt                   2%
    instant yeast          0.4%

  poolish with 30% of all flour
    white flour          100%
    water                100%
    instant yeast          0.1%
    mix by hand 3 min to 23 C
    ripen covered 12-14 h at 20 C

  dough
    poolish
    everything else
    mix slow 8 min to 25 C
    ferment covered 90 min at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C to 97 C core, steam
    cool 2 h
"""

HOUSE_POOLISH = """\
poolish House poolish
  white flour          100%
  water                100%
  instant yeast          0.1%
  mix by hand 3 min to 23 C
  ripen covered 12-14 h at 20 C
"""

LOAF_OF_HOUSE_POOLISH = """\
formula Poolish loaf
  kind hearth loaf
  makes 20 loaves at 900 g dough
  bake loss 14%

  overall
    white flour          100%
    water                 68%
    salt                   2%
    instant yeast          0.4%

  poolish House poolish with 30% of all flour

  dough
    House poolish
    everything else
    mix slow 8 min to 25 C
    ferment covered 90 min at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C to 97 C core, steam, vent open after 10 min
    cool 2 h
"""
"""The same bread, of a poolish that stands for itself."""

LOAVES_AND_ROLLS = """\
formula Loaves and rolls
  kind hearth loaf
  makes 10 loaves at 900 g dough
  makes 24 rolls at 110 g dough

  overall
    white flour          100%
    water                 66%
    salt                   2%
    fresh yeast            1.5%

  dough
    everything else
    mix slow 8 min to 26 C
    ferment covered 2 h at 26 C
    divide
    for the loaves
      shape round
      prove covered 60 min at 28 C
      bake 40 min at 230 C to 97 C core, steam
      cool 2 h
    for the rolls
      shape round
      prove covered 40 min at 28 C
      bake 16 min at 230 C, steam
      cool 1 h
"""
"""One dough divided into two sorts, each baked its own way."""

NUTTY_ROLLS = LOAVES_AND_ROLLS.replace("for the rolls\n", "for the rolls\n      add hazelnuts 12% of the dough\n")
"""With something worked into the rolls after dividing."""

LOAF_BY_WEIGHT = """\
formula Quay loaf
  kind hearth loaf
  makes 2 loaves at 860 g dough

  dough
    white flour         1000 g
    water                700 g
    salt                  20 g
    instant yeast         10 g
    mix by hand 8 min to 25 C
    ferment covered 90 min at 25 C
    divide
    shape round
    prove covered 60 min at 26 C
    bake 40 min at 225 C, steam, vent open after 20 min
    cool 2 h
"""

KITCHEN = """
kitchen House
  air            21 C
  flour          20 C
  tap            12 C
"""


def vary(text: str, **lines: str) -> str:
    """The text with some of its lines written otherwise: `vary(PLAIN_LOAF, makes="2 loaves at 500 g dough")`.

    A line is named by the words it begins with (`mix_slow`), and one line begins so. What is given stands after them.
    """
    rows = text.split("\n")
    for words, rest in lines.items():
        opening = re.compile(rf" *{words.replace('_', ' ')}\b *")
        found = [(at, opened[0]) for at, row in enumerate(rows) if (opened := opening.match(row))]
        assert len(found) == 1, f"{len(found)} lines begin with {words.replace('_', ' ')}"
        ((at, begun),) = found
        rows[at] = begun + rest
    return "\n".join(rows)
