"""Each hazard of a preparation or a filling: a text that meets it beside its neighbour that does not.

Limits: US Food Code 3-401.11, 3-402.11, 3-403.11, 3-501.14 and -16; UK Food Standards Agency (71 C for two minutes, 75 C);
National Center for Home Food Preservation (2015) for plants under fat.
"""

from every import every
from works import bakery_of, works

from manchet.cautions.registry import cautions_of

LARDER = """larder House
  minced pork
    class other
    no allergens
  cooked ham
    class other
    no allergens
  salmon
    class other
    allergens fish
  pasteurised egg
    class egg
    per 100 g
      water 76 g
    allergens egg

"""

LOAF = """formula Loaf
  kind hearth loaf
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
{end}"""


def prep(*lines: str) -> str:
    return "\n".join(["preparation thing", *(f"  {line}" for line in lines), ""])


def loaf(*end: str) -> str:
    return LOAF.format(end="".join(f"    {line}\n" for line in end))


BAKE, COLD = "bake 30 min at 230 C to 97 C core", "good for 2 d at 4 C"
GARLIC = ("butter 1000 g", "garlic 120 g", "mix by hand 4 min")
CUSTARD = ("milk 1000 g", "egg yolks 200 g", "sugar 150 g")

CASES = (
    # text, and each caution of the formula with its level
    *(
        (prep("olive oil 900 g", f"{plant} 200 g", "stir 2 min", "pack in jars", COLD), {"plants-under-fat": "top"})
        for plant in ("basil", "rosemary", "chilli", "mushrooms", "ginger", "celeriac", "onions", "potatoes", "pumpkin puree")
    ),
    *(
        (prep("olive oil 900 g", f"{plant} 200 g", "stir 2 min", "pack in jars", COLD), {})
        for plant in ("dried basil", "dried tomatoes", "chilli flakes", "tomato paste", "olives", "fennel seeds")
    ),
    (prep("olive oil 900 g", "water 50 g", "dried tomatoes 200 g", "stir 2 min", COLD), {"plants-under-fat": "top"}),
    (prep(*GARLIC, "good for 1 d at 20 C"), {"plants-under-fat": "top"}),
    (prep(*GARLIC, "rest 10 min to pH 3.7", COLD), {"plants-under-fat": "limit"}),
    (prep("olive oil 300 g", "basil 100 g", "blend 2 min", COLD), {"plants-under-fat": "top"}),
    (prep("olive oil 300 g", "fresh basil 100 g", "blend 2 min", COLD), {"plants-under-fat": "top"}),
    (prep("olive oil 300 g", "dried basil 100 g", "blend 2 min", COLD), {}),
    (prep("olive oil 300 g", "jalapenos 100 g", "blend 2 min", COLD), {"plants-under-fat": "top"}),
    (prep("olive oil 300 g", "chilli flakes 10 g", "blend 2 min", COLD), {}),
    (prep("olive oil 300 g", "mushrooms 100 g", "blend 2 min", COLD), {"plants-under-fat": "top"}),
    (prep("olive oil 300 g", "fresh ginger 100 g", "blend 2 min", COLD), {"plants-under-fat": "top"}),
    (prep("olive oil 300 g", "ground ginger 10 g", "blend 2 min", COLD), {}),
    (prep("olive oil 300 g", "dried onions 50 g", "blend 2 min", COLD), {}),
    (prep("olive oil 300 g", "dried onions 50 g", "water 100 g", "soak 20 min", COLD), {"plants-under-fat": "top"}),
    (prep("butter 500 g", "caraway 20 g", "mix by hand 3 min", COLD), {}),
    (prep("onions 1000 g", "butter 600 g", "simmer 20 min"), {"plants-in-fat-today": "note"}),
    (prep("heavy cream 500 g", "sugar 40 g", "whisk 4 min", "good for 1 d at 15 C"), {"neither-cold-nor-hot": "warning"}),
    (prep("heavy cream 500 g", "sugar 40 g", "whisk 4 min", "good for 1 d"), {"neither-cold-nor-hot": "warning"}),
    (prep("heavy cream 500 g", "sugar 40 g", "whisk 4 min", "good for 1 d at 4 C"), {}),
    (prep("butter 40 g", "milk 500 g", "simmer 3 min", "good for 2 h at 63 C"), {}),
    (prep("eggs 500 g", "whisk 2 min", "good for 1 d at 4 C"), {"raw-egg-kept": "limit"}),
    (prep("eggs 500 g", "whisk 2 min", "good for 2 d at 4 C"), {"raw-egg-kept": "warning"}),
    (prep("eggs 500 g", "whisk 2 min", "good for 1 d at 12 C"), {"raw-egg-kept": "warning"}),
    (prep("pasteurised egg 500 g", "whisk 2 min", "good for 1 d at 4 C"), {}),
    (prep(*CUSTARD, "heat 8 min to 65 C"), {"cook-egg-through": "warning"}),
    (prep(*CUSTARD, "heat 8 min to 85 C"), {"cook-egg-through": "limit"}),
    (
        prep("milk 500 g", "heat 5 min to 85 C", "chill 2 h to 4 C", "heat 20 min to 60 C"),
        {"cool-it-fast": "limit", "reheat-through": "warning"},
    ),
    (
        prep("milk 500 g", "heat 5 min to 85 C", "chill 2 h to 4 C", "heat 20 min to 75 C"),
        {"cool-it-fast": "limit", "reheat-through": "limit"},
    ),
    (loaf("fill with minced pork 60 g each", "bake 25 min at 200 C"), {"cook-meat-through": "warning"}),
    (loaf("fill with minced pork 60 g each", "bake 25 min at 200 C to 70 C core"), {"cook-meat-through": "warning"}),
    (loaf("fill with minced pork 60 g each", "bake 25 min at 200 C to 75 C core"), {"cook-meat-through": "limit"}),
    (loaf("fill with cooked ham 60 g each", "bake 25 min at 200 C"), {}),
    (loaf(BAKE, "spread with cooked ham 60 g each"), {"keep-filling-cold": "warning"}),
    (prep("salmon 1000 g", "salt 60 g", "freeze 24 h at -20 C", "chill 24 h at 4 C"), {"raw-fish": "warning"}),
    (prep("salmon 1000 g", "salt 60 g", "freeze 24 h at -22 C to -20 C core", "chill 24 h at 4 C"), {"raw-fish": "warning"}),
    (
        prep("salmon 1000 g", "salt 60 g", "freeze 9 h at -25 C to -20 C core", "freeze 24 h at -22 C", "chill 24 h at 4 C"),
        {"raw-fish": "limit"},
    ),
    (prep("salmon 1000 g", "salt 20 g", "roast 20 min at 180 C to 75 C core"), {"cook-meat-through": "limit"}),
    (loaf(BAKE, "brush with eggs 5 g each"), {"raw-egg-after-heat": "warning"}),
    (loaf(BAKE, "brush with pasteurised egg 5 g each"), {"keep-filling-cold": "warning"}),
    (loaf("brush with eggs 5 g each", BAKE), {"raw-egg-kept": "limit"}),
    (loaf(BAKE, "dust with whole rye flour 4 g each"), {"raw-flour-after-heat": "warning"}),
    (loaf("dust with whole rye flour 4 g each", BAKE), {}),
    (prep("rolled oats 400 g", "water 500 g", "soak covered 16 h at 22 C", "good for 1 d at 4 C"), {"warm-soak": "warning"}),
    (prep("rolled oats 400 g", "water 500 g", "soak covered 16 h at 5 C", "good for 1 d at 4 C"), {}),
    (prep("water 5000 g", "bicarbonate of soda 200 g", "heat 20 min to 95 C"), {}),
    (prep("sugar 800 g", "water 200 g", "heat 15 min to 118 C"), {"hot-sugar": "top"}),
)  # fmt: skip


@every(CASES, at_least=40)
def test_a_hazard_is_met_and_its_neighbour_is_let_be(text: str, expected: dict[str, str]) -> None:
    found = {
        c.name: c.level for work in works(bakery_of(LARDER + text)) for c in cautions_of(work) if c.of == "formula"
    }
    assert found == expected, f"{found} in {text}"


def test_acid_leaves_a_limit_and_a_box_under_fat() -> None:
    """It is never silent: how sour the pieces are has to be measured."""
    (work,) = works(bakery_of(prep(*GARLIC, "rest 10 min to pH 3.7", COLD)))
    (found,) = (c for c in cautions_of(work) if c.name == "plants-under-fat")
    assert found.level == "limit" and found.hazard.british.limit and found.hazard.british.boxes


def test_honey_is_told_to_whoever_eats_it_and_not_to_the_crew() -> None:
    text = LOAF.format(end=f"    {BAKE}\n").replace("    salt 22 g\n", "    salt 22 g\n    honey 20 g\n")
    (work,) = works(bakery_of(text))
    assert [c.of for c in cautions_of(work) if c.name == "honey"] == ["eater"]


def test_a_hazard_stands_in_full_once_and_lye_wherever_hands_meet_it() -> None:
    parted = LOAF.format(end="").replace(
        "4 loaves at 500 g dough", "2 loaves at 500 g dough\n  makes 4 rolls at 100 g dough"
    )
    branch = "    for the {}\n      {}\n      brush with eggs 5 g each\n      bake 20 min at 230 C\n"
    text = parted.replace("    shape round\n    prove 60 min at 25 C\n", "")
    text += branch.format("loaves", "dip in lye bath 4 g each") + branch.format("rolls", "dip in lye bath 4 g each")
    bath = "\npreparation lye bath\n  water 965 g\n  lye 35 g\n  stir 1 min\n"
    work = works(bakery_of(text + bath))[0]
    found = [(c.name, c.at.branch, c.level) for c in cautions_of(work) if c.of == "formula"]
    assert sorted(found) == [
        ("lye-corrosive", 0, "top"), ("lye-corrosive", 1, "top"), ("raw-egg-kept", 0, "limit"), ("raw-egg-kept", 1, "limit"),
    ]  # fmt: skip
