"""A bread that dishes of the tests are built on: 900 g of dough, 783 g when it is cold, 3.6 g of dust baked with it aside."""

from __future__ import annotations

LOAF = """formula Plain loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough
  bake loss 13%

  overall
    white flour          100%
    water                 68%
    salt                   2%
    instant yeast          0.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C to 97 C core, steam, vent open after 10 min
    cool 2 h

"""
PASTE = """preparation bean paste
  makes 1 kg at least
  peas                  500 g
  water                1000 g
  simmer 40 min, loses 30%
  cool 90 min to 4 C
  good for 2 d at 4 C

larder here
  peas
    class vegetable
    no allergens

"""
TOAST = """assembly Toast
  makes 24 plates
  Plain loaf 2 slices each
  slice into 22 slices, loses 6%
  griddle 60 s a side at 200 C, 12 at a time, loses 8%
  spread with butter 6 g each
  top with bean paste 40 g each
  serve within 10 min
"""
ALL = LOAF + PASTE + TOAST
