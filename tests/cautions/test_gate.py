"""The gate lets no formula by that has a caution to tell: asked of formulas put together at random, and of its own figures."""

from __future__ import annotations

from random import Random

from works import bakery_of, works

from manchet.cautions import gate
from manchet.cautions.limits import figure
from manchet.cautions.registry import cautions_of
from manchet.diagnostics.diagnostic import Severity

THINGS = (
    "water 60 g", "milk 60 g", "eggs 50 g", "sugar 90 g", "sugar 300 g", "butter 60 g", "sunflower oil 80 g", "salt 4 g", "salt 20 g",
    "rolled oats 40 g", "flaxseed 40 g", "maize starch 20 g", "white flour 60 g", "rye flour 60 g", "raisins 50 g", "plum pulp 50 g",
    "garlic 20 g", "celeriac 80 g", "fresh basil 20 g", "cinnamon 2 g", "walnuts 40 g", "lemon juice 10 g", "cream 60 g", "honey 20 g",
    "ripe wheat starter 20 g", "instant yeast 1 g", "pork mince 80 g", "salmon 60 g", "malt syrup 30 g", "bath lye 10 g",
    "tomatoes 40 g", "water 60 g at 90 C", "diastatic malt 2 g", "cheddar 40 g",
)  # fmt: skip
BEFORE = (
    "soak covered 14 h at 20 C", "soak covered 6 h at 20 C", "soak covered 90 min at 20 C", "rest covered 90 min", "rest 3 h",
    "soak 14 h at 4 C", "simmer 5 min", "heat 10 min to 120 C", "heat 10 min to 65 C", "cool 3 h", "cool 1-4 h to 20 C", "cool 1 h to 4 C",
    "stir 2 min", "pack in jars", "boil 3 min", "drain", "roast 20 min at 180 C", "chill 12 h at 4 C",
)  # fmt: skip
ON = ("fill with PREP 40 g each", "brush with PREP 5 g each", "top with PREP 20 g each", "spread with PREP 30 g each")
AFTER = (
    "cool 2 h",
    "cool 30 min",
    "rest 1 h",
    "slice",
    "wrap in film",
    "pack in bag",
    "dust with icing sugar 2 g each",
)
KEPT = ("good for 2 d at 4 C", "good for 5 d at 12 C", "good for 20 d", "")
PLAIN = "    white flour 1000 g\n    water 650 g\n    salt 20 g\n    fresh yeast 15 g\n"


def _some(chance: Random, among: tuple[str, ...], most: int, indent: str) -> str:
    return "".join(f"{indent}{one}\n" for one in chance.sample(among, chance.randint(1, most)))


def _text(chance: Random) -> str:
    stage = chance.random() < 0.6
    head = (
        f"preparation PREP\n{_some(chance, THINGS, 4, '  ')}{_some(chance, BEFORE, 3, '  ')}  {chance.choice(KEPT)}\n\n"
    )
    made = f"  {chance.choice(('soaker', 'scald', 'stage'))} soft\n{_some(chance, THINGS, 3, '    ')}{_some(chance, BEFORE, 2, '    ')}"
    own = "".join(f"    {one}\n" for one in chance.sample(THINGS, chance.randint(0, 2)))
    on = [f"    {chance.choice(ON)}\n" if chance.random() < 0.4 else "" for _ in range(2)]
    after = _some(chance, AFTER, 2, "    ")
    return (
        f"{head}formula A\n  kind hearth loaf\n  makes 2 loaves at 800 g dough\n{made if stage else ''}  dough\n{PLAIN}{own}"
        f"{'    soft' if stage else ''}\n    mix slow 8 min to 25 C\n    ferment covered 2 h at 25 C\n    divide\n    shape round\n{on[0]}"
        f"    prove covered 1 h at 25 C\n    bake 40 min at 230 C\n{on[1]}{after}"
    )


def test_the_gate_lets_no_caution_by() -> None:
    chance = Random(11)
    judged = told = 0
    for _ in range(400):
        text = _text(chance)
        bakery = bakery_of(text)
        if any(one.severity is Severity.ERROR for one in bakery.mistakes):
            continue
        for work in works(bakery):
            judged += 1
            found = [one for one in cautions_of(work) if one.of == "formula" and one.level != "limit"]
            told += bool(found)
            assert not found or gate.may_hurt(work), (work.formula.name, [(one.name, one.level) for one in found], text)
    assert judged > 250 and told > 100, (judged, told)


def test_its_figures_are_no_laxer_than_the_limits() -> None:
    for own, name in (
        (gate.LONG, "paste-stands"),
        (gate.SOAKED_AND_BAKED, "soaked-and-baked"),
        (gate.SOAKED_AND_EATEN, "soaked-and-eaten"),
        (gate.COLD, "cold"),
        (gate.HOT, "paste-cooks-from"),
        (gate.SUGAR_BOILS, "sugar-boils-from"),
        (gate.WARM_AIR, "rope-air"),
        (gate.KEEPS, "rope-keeps"),
    ):
        assert figure(name) >= own, name
    assert figure("cooled-to-wrap") <= gate.LONG and figure("paste-held") <= gate.HOT
