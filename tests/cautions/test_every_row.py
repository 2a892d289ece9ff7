"""Each row of the table of cautions with a case that meets it and a neighbour, the same sort of thing done so that no sentence is said.

What a file keeps to is a limit in a box, and no sentence: as a neighbour that counts as silent. Figures and sources stand in the cases, and in
`hazards.toml`.
"""

from pathlib import Path
from typing import NamedTuple

from every import every
from works import bakery_of, works

from manchet.cautions.hazards import HAZARDS
from manchet.cautions.registry import cautions_of

CASES = Path(__file__).parent / "cases"
LOUD = ("top", "warning", "note", "error")


class Row(NamedTuple):
    what: str
    hazards: tuple[str, ...]
    meets: str
    neighbour: str


ROWS = (
    Row("plants under fat", ("plants-under-fat",), "garlic-butter-in-a-room", "caraway-butter"),
    Row("plants under fat, over four days", ("plants-under-fat",), "herb-oil-for-five-days", "dried-tomatoes-in-oil"),
    Row("plants under fat, from a third of fat on", ("plants-under-fat",), "fat-of-a-third", "fat-just-under-a-third"),
    Row("plants under fat, dried and soaked", ("plants-under-fat",), "soaked-mushrooms-in-oil", "dried-tomatoes-in-oil"),
    Row("plants closed in without air", ("plants-under-fat",), "carrots-closed-in-a-jar", "carrots-in-an-open-tub"),
    Row("plants under fat, sour in the pieces", ("plants-under-fat",), "garlic-butter-hardly-sour", "garlic-butter-soured-in-the-pieces"),
    Row("plants in fat of today", ("plants-in-fat-today",), "onions-in-butter-of-today", "roast-pumpkin-with-little-oil"),
    Row("cooling", ("cool-it-fast",), "custard-cooled-too-slowly", "custard-cooled-in-time"),
    Row("cooling, no end said", ("cool-it-fast",), "custard-that-says-no-end", "custard-cold-after-five-fifty"),
    Row("cooling, of starch that is kept", ("cool-it-fast",), "porridge-left-on-the-stove", "loaf-cools-all-night"),
    Row("neither cold nor hot", ("neither-cold-nor-hot",), "gravy-warm-on-the-shelf", "gravy-hot-on-the-shelf"),
    Row("neither cold nor hot, by market", ("neither-cold-nor-hot",), "cream-at-seven-in-britain-and-the-eu", "cream-at-seven-in-britain"),
    Row("reheating", ("reheat-through",), "soup-heated-again-too-slowly", "soup-heated-again-in-time"),
    Row("egg not cooked through", ("cook-egg-through",), "custard-of-65", "custard-of-71-in-the-us"),
    Row("egg not cooked through, in a filling", ("cook-egg-through",), "almond-cream-baked-without-core", "almond-cream-baked-to-its-core"),
    Row("raw egg kept", ("raw-egg-kept",), "egg-wash-for-two-days", "egg-wash-for-a-day"),
    Row("raw egg after the last heat", ("raw-egg-after-heat",), "glaze-of-raw-egg-after-the-bake", "glaze-of-pasteurised-egg-after-the-bake"),
    Row("meat and fish through", ("cook-meat-through",), "raw-chicken-in-a-bun-to-70", "raw-chicken-in-a-bun-to-75"),
    Row("meat through, no core", ("cook-meat-through",), "raw-pork-baked-without-core", "roast-ham-baked-in"),
    Row("meat through, by market", ("cook-meat-through",), "raw-chicken-held-at-70-in-the-us", "raw-chicken-held-at-70"),
    Row("raw fish", ("raw-fish",), "salmon-frozen-without-core", "salmon-frozen-to-the-core-and-held"),
    Row("raw fish, bought", ("raw-fish",), "pickled-herring-of-unknown-freezing", "fish-paste-with-a-use-by"),
    Row("raw fish, laid on", ("raw-fish",), "salmon-on-toast-never-frozen", "smoked-salmon-that-is-ready-to-eat"),
    Row("keep cold", ("keep-filling-cold",), "cream-buns-with-a-best-before", "cream-buns-with-a-use-by"),
    Row("keep cold, of what is no butter", ("keep-filling-cold",), "ham-on-after-the-bake", "butter-on-after-the-bake"),
    Row("keep cold, served soon", ("keep-filling-cold",), "ham-served-within-six-hours", "ham-served-within-ten-minutes"),
    Row("keep cold, of what is too dry", ("keep-filling-cold",), "tomato-on-after-the-bake", "tomatoes-too-dry-for-germs"),
    Row("keep cold, a paste with its date", ("keep-filling-cold",), "fish-paste-with-a-best-before", "fish-paste-with-a-use-by"),
    Row("warm and wet", ("warm-and-wet",), "scald-stands-three-hours", "scald-used-within-two-hours"),
    Row("warm and wet, held hot", ("warm-and-wet",), "scald-cools-all-night", "scald-stands-hot"),
    Row("warm soak", ("warm-soak",), "soaker-of-sixteen-hours-in-a-room", "soaker-of-ten-hours"),
    Row("warm soak, not baked", ("warm-soak",), "oats-soaked-warm-unbaked", "soaker-in-the-fridge"),
    Row("raw flour after the last heat", ("raw-flour-after-heat",), "rye-flour-on-after-the-bake", "rye-flour-on-before-the-bake"),
    Row("raw flour, heat-treated", ("raw-flour-after-heat",), "raw-crumble-on-after-the-bake", "heat-treated-flour-on-after-the-bake"),
    Row("lye at its mixing", ("lye-mixing",), "bath-of-one-per-cent", "soda-bath"),
    Row("lye in the bath", ("lye-corrosive",), "bath-of-four-per-cent", "bath-of-soda-to-dip-in"),
    Row("weak lye in the bath", ("lye-irritant",), "bath-of-one-per-cent", "bath-of-four-in-a-thousand"),
    Row("lye too strong", ("lye-too-strong",), "bath-of-seven-per-cent", "bath-of-four-per-cent"),
    Row("lye that is kept", ("lye-kept",), "lye-bath-of-three-and-a-half", "soda-bath"),
    Row("hot fat", ("hot-oil",), "buns-fried-at-175", "buns-on-a-griddle"),
    Row("hot sugar", ("hot-sugar",), "caramel", "syrup-of-104"),
    Row("sliced warm", ("wrapped-warm",), "sliced-after-half-an-hour", "sliced-after-two-hours"),
    Row("rope", ("rope-weather",), "coarse-loaf-in-summer", "coarse-loaf-in-a-cool-room"),
)  # fmt: skip


def loud(name: str) -> set[str]:
    bakery = bakery_of((CASES / f"{name}.bake").read_text(encoding="utf-8"))
    found = (one for work in works(bakery) for one in cautions_of(work))
    return {one.name for one in found if one.level in LOUD}


@every([tuple(row) for row in ROWS], at_least=40)
def test_a_row_is_met_by_its_case_and_not_by_its_neighbour(
    what: str, hazards: tuple[str, ...], meets: str, neighbour: str
) -> None:
    assert loud(meets).issuperset(hazards), f"{what}: {meets} says nothing"
    assert loud(neighbour).isdisjoint(hazards), f"{what}: {neighbour} speaks"


def test_every_hazard_of_a_formula_has_its_row() -> None:
    told = {name for row in ROWS for name in row.hazards}
    assert {name for name, hazard in HAZARDS.items() if hazard.of == "formula"} == told


def test_every_case_that_a_row_names_says_its_source() -> None:
    for row in ROWS:
        for name in (row.meets, row.neighbour):
            assert (CASES / f"{name}.bake").read_text(encoding="utf-8").startswith("# "), name


BREAD = """formula Loaf
  kind hearth loaf
  makes 4 loaves at 500 g dough
  dough
    white flour 1200 g
    water 790 g
    salt 22 g
    {sweet} 20 g
    instant yeast 5 g
    mix slow 8 min to 25 C
    divide
    bake 30 min at 230 C to 97 C core
"""


def test_honey_is_told_to_whoever_eats_it() -> None:
    """None under twelve months, not even baked: INSPQ; FSA."""
    for sweet, says in (("honey", True), ("sugar", False)):
        (work,) = works(bakery_of(BREAD.format(sweet=sweet)))
        assert (("honey", "eater") in {(one.name, one.of) for one in cautions_of(work)}) is says
