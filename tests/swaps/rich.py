"""A bread in several stages, every one of them with milk, butter, honey and yeast in it; in each way of writing."""

from __future__ import annotations

STEPS = """
    mix by hand 5 min
    ferment covered 2 h at 25 C
    divide
    shape round
    brush with butter 5 g each
    grease tins with butter 2 g each
    dust with white flour 10 g in all
    prove covered 60 min at 25 C
    brush with milk 3 g each
    bake 40 min at 220 C
    cool 2 h
"""
HEAD = "formula Bread\n  makes 4 loaves at 500 g dough\n"
OVERALL = """  overall
    white flour 100%
    water 45%
    milk 25%
    salt 2%
    fresh yeast 2%
    butter 6%
    honey 6%
    raisins 10%
"""
SPONGE = """  sponge with 20% of all flour
    white flour 100%
    milk 60%
    fresh yeast 0.5%
    butter 5%
    honey 3%
    mix by hand 3 min
    ripen covered 2 h at 24 C
"""
FRUIT = """  soaker fruit
    raisins 10% of all flour
    honey 2% of all flour
    milk 50% of what is soaked
    soak covered 4 h at 20 C
"""
ADDED = STEPS.replace(
    "    ferment", "    add butter in 2 additions\n    add salt\n    add water as needed\n    ferment", 1
)

EVERYTHING_ELSE = f"""{HEAD}{OVERALL}{SPONGE}{FRUIT}  dough
    sponge
    fruit
    everything else
    hold back butter and salt
    hold back water 4%{ADDED}"""

WHAT_IS_LEFT = f"""{HEAD}{OVERALL}{SPONGE}{FRUIT}  dough
    sponge
    fruit
    white flour 80% of all flour
    what is left of the milk
    what is left of the butter
    what is left of the honey
    what is left of the fresh yeast
    all of the salt
    what is left of the water{STEPS}"""

ALL_OF = f"""{HEAD}{OVERALL}  sponge with 20% of all flour
    white flour 100%
    all of the milk
    fresh yeast 0.5%
    mix by hand 3 min
    ripen covered 2 h at 24 C
  dough
    sponge
    everything else{STEPS}"""

SAID_ALOUD = f"""{HEAD}{
    OVERALL.replace("honey 6%", "honey 2.6%").replace("milk 25%", "milk 18%").replace("butter 6%", "butter 7%")
}{SPONGE}  soaker fruit
    raisins 10% of all flour
    honey 2% of all flour
    milk 6% of all flour
    soak covered 4 h at 20 C
  dough
    sponge
    fruit
    white flour 80% of all flour
    water 45% of all flour
    salt 2%
    fresh yeast 1.9%
    butter 6%
    hold back butter 3%{STEPS.replace("    ferment", "    add butter" + chr(10) + "    ferment", 1)}"""

BY_WEIGHT = f"""formula Bread
  makes 4 loaves at 500 g dough
  sponge
    white flour 200 g
    milk 120 g
    fresh yeast 5 g
    butter 10 g
    honey 6 g
    mix by hand 3 min
    ripen covered 2 h at 24 C
  soaker fruit
    raisins 100 g
    honey 20 g
    milk 50% of what is soaked
    soak covered 4 h at 20 C
  dough
    sponge 300 g
    fruit
    white flour 0.8 kg
    water 450 g
    milk 1 cup
    salt 20 g
    fresh yeast 15 g
    butter 60 g
    hold back butter 40 g{STEPS.replace("    ferment", "    add butter" + chr(10) + "    ferment", 1)}
kitchen House
  measures US
""".replace("    ripen covered 2 h", "    discard what is left\n    ripen covered 2 h")

OF_DOUGH_FLOUR = f"""formula Bread
  makes 4 loaves at 500 g dough
  written on dough flour
  levain
    white flour 100%
    water 60%
    butter 5%
    ripe wheat starter 10%
    mix by hand 3 min
    ripen covered 6 h at 24 C
  sponge
    white flour 100%
    levain 20%
    milk 60%
    fresh yeast 0.5%
    butter 5%
    honey 3%
    mix by hand 3 min
    ripen covered 2 h at 24 C
  dough
    white flour 100%
    sponge 40%
    water 60%
    milk 10%
    salt 2%
    fresh yeast 2%
    butter 6%
    honey 5%{STEPS}"""

BREADS = {
    "everything else": EVERYTHING_ELSE,
    "what is left": WHAT_IS_LEFT,
    "all of": ALL_OF,
    "said aloud": SAID_ALOUD,
    "by weight": BY_WEIGHT,
    "of dough flour": OF_DOUGH_FLOUR,
}
