"""One edit for each sort of change, and all that is told of it: read aloud, each line says it to a baker."""

from __future__ import annotations

from comparison.breads import EIDER, GULL, edited
from dishes.bread import LOAF, PASTE, TOAST
from loaves import LOAF_BY_WEIGHT, LOAVES_AND_ROLLS, NUTTY_ROLLS, PLAIN_LOAF, POOLISH_LOAF

LARDER = """\
larder House
  white flour
    price         20 EUR for 25 kg
  salt
    price         10 EUR for 25 kg
  fresh yeast
    price         4 EUR for 1 kg
  water
    price         2 EUR for 1000 l
  row paste
    class         other
  salted butter
    class         fat
    per 100 g
      water         16 g
      fat           80 g
      salt          1.5 g
    allergens     milk

"""

WASH = """\

preparation wash
  eggs                   500 g
  milk                   100 g
  whisk 2 min
  good for 1 d at 4 C
"""

WASHED = edited(PLAIN_LOAF, ("    prove", "    brush with wash 6 g each\n    prove")) + WASH

SOAKED = edited(
    LOAF_BY_WEIGHT,
    ("  dough\n", "  soaker seeds\n    linseed              100 g\n    water                150 g\n    soak covered 8 h at 20 C\n    discard what is left\n\n  dough\n    seeds                200 g\n"),
)  # fmt: skip

LATER = "      may wait 20 min\n"

DISH = TOAST + LOAF + PASTE

Case = tuple[str, str, list[str]]


def case(bread: str, *edits: tuple[str, str], told: list[str]) -> Case:
    return bread, edited(bread, *edits), told


EVERY_CHANGE: dict[str, Case] = {
    "an ingredient of which nobody knows": case(
        LARDER + PLAIN_LOAF, ("    salt    ", "    row paste              2%\n    salt    "), told=['nothing is known of the allergens of row paste', 'row paste 2 %, new: 103 g today']
    ),
    "what may be in it": case(
        PLAIN_LOAF, ("  makes", '  may contain hazelnut because "same bench"\n  makes'), told=['may contain HAZELNUT now (same bench)']
    ),
    "what was in it and is not known now": case(
        LARDER + edited(PLAIN_LOAF, ("    salt    ", "    salted butter          2%\n    salt    ")),
        ("    salted butter          2%", "    row paste              2%"),
        told=['contained MILK; not known now (row paste)', 'nothing is known of the allergens of row paste', 'row paste 2 %, new: 103 g today', 'without salted butter (was 2 %)', 'fat 1.6 → 0 %'],
    ),
    "another dough for the same pieces": case(
        LOAF_BY_WEIGHT, ("1000 g", "2000 g"), ("700 g", "1400 g"), (" 20 g", " 40 g"), (" 10 g", " 20 g"), told=['flour 1,000 → 2,000 g']
    ),
    "twice the bread by weight": case(
        LOAF_BY_WEIGHT, ("1000 g", "2000 g"), ("700 g", "1400 g"), (" 20 g", " 40 g"), (" 10 g", " 20 g"), ("2 loaves", "4 loaves"), told=['makes 2 loaves of 860 g → 4 loaves of 860 g']
    ),
    "losses of the head": case(GULL, ("dough loss 1%", "dough loss 2%"), ("  bake loss 14%\n", ""), told=['dough loss 1 → 2 %', 'bake loss 14 %, no longer said']),
    "a wetter poolish": case(POOLISH_LOAF, ("    water                100%", "    water                110%"), told=['poolish: water 100 → 110 %']),
    "a stage more": case(
        PLAIN_LOAF,
        ("  dough\n", "  poolish with 20% of all flour\n    white flour          100%\n    water                100%\n    fresh yeast            0.2%\n    mix by hand 3 min\n    ripen covered 12 h at 20 C\n\n  dough\n    poolish\n"),
        told=['poolish with 20 % of all flour, new', 'prefermented flour 0 → 20 %', 'from first job to ready 5 h 56 min → 18 h 1 min'],
    ),
    "salt out of another ingredient": case(
        LARDER + PLAIN_LOAF, ("    salt    ", "    salted butter         10%\n    salt    "), told=['now contains MILK (from salted butter)', 'water in all 71 → 72.6 %', 'salt in all 2 → 2.21 %', 'salted butter 10 %, new: 490 g today', 'fat 0 → 8 %']
    ),
    "what may be left out": case(
        edited(PLAIN_LOAF, ("    salt    ", "    walnuts               10%\n    salt    ")),
        ("    walnuts               10%", "    walnuts               10%, optional"),
        told=['walnuts may be left out now'],
    ),
    "water as the flour asks": case(PLAIN_LOAF, ("70%", "68-72%, as the flour asks"), told=['water 70 → 68–72 %']),
    "more kept": case(GULL, ("keep 180 g", "keep 240 g"), told=['levain: keep as ripe rye starter 180 → 240 g']),
    "nothing kept": case(GULL, ("    keep 180 g as ripe rye starter\n", ""), told=['levain: keep as ripe rye starter 180 g → nothing']),
    "more thrown away": case(SOAKED, ("linseed              100 g\n    water                150 g", "linseed              120 g\n    water                180 g"), told=['seeds: weighed in 250 → 300 g today']),
    "another wash": case(WASHED, ("milk                   100 g", "milk                   200 g"), told=['wash is made differently now']),
    "a dearer flour": case(LARDER + PLAIN_LOAF, ("20 EUR for 25 kg", "24 EUR for 25 kg"), told=['ingredients of one loaf cost 0.451 → 0.534 EUR']),
    "hotter scalding water": case(EIDER, ("at 98 C", "at 100 C"), told=['scald: water at 98 → 100 °C']),
    "a stage called otherwise": case(GULL, ("soaker millet porridge", "soaker porridge"), ("add millet porridge", "add porridge"), told=['millet porridge is called porridge now']),
    "a stage elsewhere in its file": case(
        EIDER,
        (EIDER[EIDER.index("  soaker seeds"):EIDER.index("  dough\n")], ""),
        ("  sour with", EIDER[EIDER.index("  soaker seeds"):EIDER.index("  dough\n")] + "  sour with"),
        told=[],
    ),
    "another sort of stage": case(GULL, ("  poolish with", "  sponge poolish with"), told=['poolish is a sponge now, and was a poolish']),
    "one yeast for another": case(PLAIN_LOAF, ("fresh yeast            1.5%", "instant yeast          0.5%"), told=['instant yeast 0.5 % instead of fresh yeast 1.5 %: 26 g today', 'water in all 71 → 70 %']),
    "one nut for another that a step adds": case(NUTTY_ROLLS, ("add hazelnuts 12%", "add walnuts 12%"), told=['rolls: now contains WALNUT (from walnuts)', 'rolls: no longer contains HAZELNUT (was from hazelnuts)', 'rolls: walnuts 12 %, new', 'rolls: without hazelnuts (was 12 %)']),
    "another share in the rolls": case(NUTTY_ROLLS, ("add hazelnuts 12%", "add hazelnuts 15%"), told=['rolls: hazelnuts 12 → 15 %']),
    "only the rolls are otherwise": case(LOAVES_AND_ROLLS, ("bake 16 min at 230 C, steam", "bake 14 min at 235 C"), told=['rolls: bake 16 min, at 230 °C, steam → 14 min, at 235 °C']),
    "no rolls any more": case(
        LOAVES_AND_ROLLS,
        ("  makes 24 rolls at 110 g dough\n", ""),
        (LOAVES_AND_ROLLS[LOAVES_AND_ROLLS.index("    for the rolls"):], ""),
        ("    for the loaves\n", ""), ("      shape", "    shape"), ("      prove", "    prove"), ("      bake", "    bake"), ("      cool", "    cool"),
        told=['no more rolls (were 24 rolls of 110 g)'],
    ),
    "what no longer waits": case(GULL, (LATER, ""), told=['dough: ferment: no longer may wait 20 min']),
    "a step done later and longer": case(
        GULL, ("    rest covered 20 min\n    shape long\n", "    shape long\n    rest covered 30 min\n"), told=['dough: rest comes after shape long now, 20 min → 30 min', 'from first job to ready 32 h 7 min → 32 h 17 min']
    ),
    "steps left out and put in": case(
        GULL, ("    rest covered 20 min\n", ""), ('    score "two long cuts"\n', "    dock\n"), told=['from first job to ready 32 h 7 min → 31 h 47 min', 'dough: rest covered 20 min, left out', 'dough: dock, new', 'dough: score: two long cuts, left out']
    ),
    "how it is sold": case(
        edited(GULL, ("  bake loss 14%\n", '  bake loss 14%\n  sells at 6.40 EUR each\n  best before 4 d\n  called "Wheat bread"\n')),
        ("6.40", "6.80"), ("  best before 4 d\n", "  best before 5 d\n  sold prepacked at 700 g net\n"), ("Wheat bread", "Emmer bread"),
        told=['sells at 6.40 → 6.80 EUR', 'best before 4 → 5 d', 'sold prepacked now', 'called “Wheat bread” → “Emmer bread”'],
    ),
    "more held back": case(
        edited(PLAIN_LOAF, ("    mix slow 8", "    hold back water 4%\n    mix slow 4 min\n    add water\n    mix slow 8")),
        ("hold back water 4%", "hold back water 6%"),
        told=["dough: water held back 4 → 6 %"],
    ),
    "a plate with a slice more": case(
        DISH, ("2 slices each", "3 slices each"), ("24 plates", "30 plates"),
        told=["makes 24 plates → 30 plates", "Plain loaf 2 → 3 slices a plate", "from first job to ready 19 → 25 min"],
    ),
    "the bread of a dish": case(DISH, ("water                 68%", "water                 70%"), told=["Plain loaf is made differently now"]),
    "the bread of a dish by another name": case(DISH, ("Plain loaf", "Quay loaf"), told=["Plain loaf is called Quay loaf now"]),
    "words": case(GULL, ("Wheat and emmer with", "Emmer and wheat with"), ('"two long cuts"', '"three cuts"'), told=['dough: score “two long cuts” → “three cuts”', 'about “Wheat and emmer with a poolish, a firm levain and cooked millet.” → “Emmer and wheat with a poolish, a firm levain and cooked millet.”']),
}  # fmt: skip
