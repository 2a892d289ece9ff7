"""Worked examples of lists, quantities and panels, from rules to figures.

The rules are those of Regulation (EU) 1169/2011 (Annexes VII, VIII, XIV, XV), of the Commission's guidance on rounding of December 2012
(its table from memory) and of 21 CFR 101.9(c); the arithmetic is done by hand. The compositions of W5 are made up to be added.
"""

from fractions import Fraction

import pytest
from works import bakery_of, work_in

from manchet.account.piece import SoldPiece, sold_pieces
from manchet.label.absent import absent_from
from manchet.label.allergens import AllergenAnswer, contains, findings
from manchet.label.bread_names import LEAST_SOLIDS, bread_or_roll, misnaming_of, solids_of
from manchet.label.conventions import eu_text, us_text
from manchet.label.ingredients import ListLine, how_much, ingredient_list
from manchet.label.markets import BRITAIN, EU, US
from manchet.label.named import named_lines
from manchet.label.nutrition import panel_of

HOUSE = """
larder Test
  test flour
    class         wheat flour
    per 100 g
      water         12.8 g
      fat           1.4 g
      saturates     0.2 g
      carbohydrate  71 g
      sugars        1.5 g
      fibre         3.1 g
      protein       11.5 g
      sodium        0 g
      ash           0.2 g
    allergens     wheat, gluten
  test yeast
    class         yeast
    per 100 g
      water         74.97 g
      fat           1 g
      saturates     0.1 g
      carbohydrate  6 g
      sugars        0.5 g
      fibre         6 g
      protein       12 g
      sodium        0.03 g
    no allergens
"""


def piece_of(formula: str, house: str = HOUSE, at: int = 0) -> SoldPiece:
    bakery = bakery_of(house + "\n" + formula)
    bread = next((one for one in bakery.formulas if not one.preparation), None)
    assert bread is not None, bakery.diagnostics
    return sold_pieces(work_in(bakery, bread))[at]


def baked(lines: str, grams: str, loss: str) -> str:
    return f"""\
formula Food
  kind rolls
  makes 1 piece at {grams} dough
  bake loss {loss}

  dough
{lines}
    mix slow 5 min to 25 C
    divide
    bake 30 min at 230 C
"""


LOAF = baked(
    "    test flour 1000 g\n    water 680 g\n    salt 20 g\n    test yeast 10 g\n    lines".replace(
        "    lines", ""
    ).rstrip(),
    "1710 g",
    "12%",
)


def test_w1_water_is_what_is_left_of_it() -> None:
    piece = piece_of(LOAF)
    assert piece.finished == Fraction("1504.8")
    found = ingredient_list(piece, EU)
    assert [line.name for line in found.lines] == ["test flour", "water", "salt", "test yeast"]
    water = found.lines[1]
    assert water.grams == Fraction("474.8")
    assert round(float(water.share or 0) * 100, 2) == 31.55
    shares = {line.name: float(line.share or 0) * 100 for line in found.lines}
    assert round(shares["salt"], 2) == 1.33
    assert round(shares["test yeast"], 2) == 0.66


def test_w2_to_w4_how_much_of_it() -> None:
    biscuit = piece_of(baked("    test flour 750 g\n    butter 300 g", "1050 g", "14.285714%"))
    butter = next(line for line in ingredient_list(biscuit, EU).lines if line.name.startswith("butter"))
    assert round(float(how_much(butter, biscuit) or 0), 1) == 33.3
    crisps = piece_of(baked("    tomatoes 1500 g\n    sunflower oil 100 g\n    salt 10 g", "1610 g", "68.944099%"))
    lines = ingredient_list(crisps, EU, called="Tomatoes").lines
    tomato = next(line for line in lines if line.name.startswith("tomato"))
    assert round(float(how_much(tomato, crisps) or 0)) == 300
    assert tomato.how_much == "300 g per 100 g"
    raisin = piece_of(
        baked(
            "    test flour 1000 g\n    water 640 g\n    salt 20 g\n    test yeast 10 g\n    raisins 350 g",
            "2020 g",
            "11%",
        )
    )
    assert raisin.finished == Fraction("1797.8")
    raisins = next(line for line in ingredient_list(raisin, EU).lines if line.name == "raisins")
    assert round(float(how_much(raisins, raisin) or 0), 1) == 19.5


def test_w5_a_panel() -> None:
    panel = panel_of(piece_of(LOAF), EU)
    figures = {line.name: line.span.middle for line in panel.lines}
    assert all(line.span.is_known for line in panel.lines)
    expected = {
        "energy kj": "985.52", "energy kcal": "232.41", "fat": "0.937", "saturates": "0.1336", "carbohydrate": "47.222",
        "sugars": "1.0001", "fibre": "2.0999", "protein": "7.722", "salt": "1.3076",
    }  # fmt: skip
    for name, printed in expected.items():
        places = len(printed.partition(".")[2])
        assert round(float(figures[name]), places) == float(printed), name
    assert [line.text for line in panel.lines] == ["986", "232", "0.9", "0.1", "47", "1.0", "2.1", "7.7", "1.3"]


@pytest.mark.parametrize(
    ("line", "value", "text"),
    [
        ("fat", "0.5", "<0.5"), ("fat", "0.51", "0.5"), ("fat", "9.94", "9.9"), ("fat", "9.95", "10.0"),
        ("saturates", "0.10", "<0.1"), ("salt", "0.0125", "<0.01"), ("salt", "0.013", "0.01"), ("salt", "0.995", "1.00"),
        ("salt", "1.25", "1.3"), ("fat", "10", "10"), ("protein", "10.5", "11"), ("fat", "0", "0"), ("energy", "985.5", "986"),
    ],
)  # fmt: skip
def test_w6_rounding_in_the_eu(line: str, value: str, text: str) -> None:
    assert eu_text(line, Fraction(value)) == text


@pytest.mark.parametrize(
    ("line", "value", "text"),
    [
        ("calories", "4.9", "0"), ("calories", "47", "45"), ("calories", "48", "50"), ("calories", "52", "50"),
        ("calories", "127", "130"), ("fat", "0.49", "0"), ("fat", "2.3", "2.5"), ("fat", "4.8", "5"), ("fat", "5.4", "5"),
        ("sodium", "4", "0"), ("sodium", "138", "140"), ("sodium", "143", "140"), ("sodium", "266", "270"),
        ("fibre", "0.7", "less than 1 g"), ("cholesterol", "3", "less than 5 mg"),
    ],
)  # fmt: skip
def test_w7_rounding_in_the_united_states(line: str, value: str, text: str) -> None:
    assert us_text(line, Fraction(value)) == text


def test_w8_salt_of_soda() -> None:
    cake = piece_of(baked("    test flour 1000 g\n    bicarbonate of soda 5 g", "1005 g", "0.497512%"))
    soda = next(s for s in panel_of(cake, EU).line("salt").shares if s.ingredient.name == "bicarbonate of soda")
    assert round(float(soda.span.middle), 2) == 0.34


SULPHITED = """
  test apricots
    class         fruit
    allergens     sulphites
    sulphites     {figure} mg/kg
"""


@pytest.mark.parametrize(
    ("grams", "figure", "answer"),
    [
        (120, 2000, AllergenAnswer.HAS),
        (30, 100, AllergenAnswer.HAS_NOT),
        (5, 2000, AllergenAnswer.HAS_NOT),
        (6, 2000, AllergenAnswer.HAS),
        (100, 100, AllergenAnswer.HAS_NOT),
    ],
)
def test_w14_sulphites_above_ten_in_the_eu(grams: int, figure: int, answer: AllergenAnswer) -> None:
    house = HOUSE.rstrip() + SULPHITED.format(figure=figure)
    text = baked(f"    test flour {1000 - grams} g\n    test apricots {grams} g", "1000 g", "0%").replace(
        "  bake loss 0%\n", ""
    )
    food = piece_of(text.replace("    bake 30 min at 230 C\n", "    press\n"), house)
    found = {one.allergen: one.answer for one in findings(food, EU)}
    assert found["sulphites"] is answer
    if grams * figure == 10_000:  # ten in a million: declared in the United States, not in the EU
        assert {one.allergen: one.answer for one in findings(food, US)}["sulphites"] is AllergenAnswer.HAS


def test_w16_what_a_knot_holds_of_its_bath() -> None:
    bath = "\npreparation bath\n  water 960 g\n  lye 40 g\n  stir 3 min\n  good for 1 d at 18 C\n"
    text = baked("    test flour 1000 g", "100 g", "8%").replace("    bake", "    dip in bath 8.7 g each\n    bake")
    knot = piece_of(text + bath)
    lye = next(s for s in panel_of(knot, EU).line("salt").shares if s.ingredient.name == "lye")
    # 8.7 g of a 4 % bath on what weighs 100.004 g baked: 0.2 g of Na a 100 g, 0.5 g of salt; the rule is 0.5748 x 2.5 of the lye.
    assert (
        lye.span.middle == Fraction("8.7") * 4 / 100 * Fraction("0.5748") * Fraction("2.5") / (knot.finished or 1) * 100
    )


def test_w18_old_bread_is_what_it_was_made_of() -> None:
    house = (
        HOUSE.rstrip()
        + """
  rye crumbs
    class         bread
    made of
      white flour     60%
      medium rye flour 35%
      sesame seeds     5%
"""
    )
    loaf = piece_of(baked("    medium rye flour 1000 g\n    water 700 g\n    rye crumbs 80 g", "1780 g", "12%"), house)
    assert contains(loaf, EU) == ("wheat", "rye", "sesame")
    text = ingredient_list(loaf, EU).text
    assert "WHEAT" in text
    assert "RYE" in text
    assert "SESAME" in text


def test_a_pine_nut_is_a_tree_nut_in_the_united_states_alone() -> None:
    text = baked("    test flour 1000 g\n    pine nuts 100 g\n    medium rye flour 50 g", "1150 g", "10%")
    loaf = piece_of(text)
    assert contains(loaf, US) == ("wheat", "pine nut")
    assert contains(loaf, EU) == contains(loaf, BRITAIN) == ("wheat", "rye")


@pytest.mark.parametrize(
    ("called", "named"),
    [
        ("Wheat bread", {"wheat flour", "wholemeal wheat flour"}),
        ("Wholemeal bread", {"wholemeal wheat flour"}),
        ("Wholemeal wheat bread with oats", {"wholemeal wheat flour", "rolled oats"}),
        ("Rolls with coarse salt", {"coarse salt"}),
        ("Salted butter brioche", {"butter (milk)"}),
        ("Fruit loaf", {"raisins", "dried pears"}),
        ("Raisin bread", {"raisins"}),
        ("Seeded loaf", {"sunflower seeds", "flaxseed"}),
        ("Bread with sunflower seeds", {"sunflower seeds"}),
        ("Cheese scone", {"cheddar (milk)"}),
        ("Country loaf", set()),
    ],
)
def test_a_name_asks_how_much_of_what_it_names(called: str, named: set[str]) -> None:
    """Regulation (EU) 1169/2011, article 22(1)(a): an ingredient, or a category of ingredients, in the name of the food."""
    flours = {"wheat flour": "wheat flour", "wholemeal wheat flour": "wheat flour"}
    classes = {
        **flours, "rolled oats": "grain", "salt": "salt", "coarse salt": "salt", "butter (milk)": "dairy", "raisins": "fruit",
        "dried pears": "fruit", "sunflower seeds": "seed", "flaxseed": "seed", "cheddar (milk)": "dairy", "wheat gluten": "other",
    }  # fmt: skip
    lines = [ListLine(name, (), Fraction(1), None, classes=frozenset({class_})) for name, class_ in classes.items()]
    assert named_lines(lines, called) == named


# ---- names that the law keeps -----------------------------------------------------------------------

MOIST = """
larder Test
  test flour
    class         wheat flour
    per 100 g
      water         14 g
    allergens     wheat, gluten
  test yeast
    class         yeast
    per 100 g
      water         70 g
    no allergens
"""


def test_w10_solids_of_a_bread_in_the_united_states() -> None:
    """21 CFR 136.110: at least 62 % solids. 860 + 20 + 3 g of W1 in 1,504.8 g."""
    loaf = piece_of(LOAF, MOIST)
    assert solids_of(loaf) == 883
    assert round(float(883 / (loaf.finished or 1)) * 100, 1) == 58.7
    assert round(float(883 / LEAST_SOLIDS), 1) == 1424.2


def test_w10_is_told_as_a_note_with_the_weight_that_would_do() -> None:
    sold = "kitchen Quay\n  sells in US\n\n" + MOIST + "\n"
    named = LOAF.replace("  kind rolls\n", '  kind rolls\n  sold prepacked at 1500 g net\n  called "Wheat bread"\n')
    (one,) = (one for one in bakery_of(sold + named).diagnostics if one.name == "bread-moist-for-us")
    assert "is 41.3% water" in one.message and "1424.2 g" in one.help
    drier = named.replace("bake loss 12%", "bake loss 17%").replace("1500 g net", "1400 g net")
    assert not [one for one in bakery_of(sold + drier).diagnostics if one.name == "bread-moist-for-us"]


@pytest.mark.parametrize(("grams", "name"), [("226.7", "roll"), ("226.8", "bread")])
def test_w11_half_a_pound_is_bread(grams: str, name: str) -> None:
    """21 CFR 136.3; half a pound is 226.796185 g."""
    assert bread_or_roll(Fraction(grams)) == name


@pytest.mark.parametrize(
    ("market", "called", "white", "word"),
    [
        (BRITAIN, "Half-and-half wholemeal loaf", 500, "wholemeal"), (BRITAIN, "Wholemeal loaf", 0, None),
        (BRITAIN, "Half-and-half loaf", 500, None), (EU, "Half-and-half wholemeal loaf", 500, None),
        (US, "Whole wheat bread", 500, "whole wheat"), (US, "Whole wheat bread", 0, None),
        (US, "Half-and-half wholemeal loaf", 500, None),
    ],
)  # fmt: skip
def test_w17_wholemeal_is_all_wholemeal(market: str, called: str, white: int, word: str | None) -> None:
    """Bread and Flour Regulations 1998, reg. 6; 21 CFR 136.180."""
    flours = f"    wholemeal flour {1000 - white} g\n" + (f"    white flour {white} g\n" if white else "")
    loaf = piece_of(baked(f"{flours}    water 680 g", "1680 g", "12%"))
    found = misnaming_of(loaf, market, called)
    assert (None if found is None else found.word) == word
    assert found is None or found.why.endswith(": white flour")


@pytest.mark.parametrize(
    ("called", "word"),
    [
        ("Gluten-free seed bread", "gluten-free"), ("Dairy free bun", "dairy free"), ("Free from nuts", "free from"),
        ("Brioche with free-range eggs", None), ("Our free-form hearth loaf", None), ("Seed bread", None),
    ],
)  # fmt: skip
def test_no_label_says_that_a_food_is_free_from_anything(called: str, word: str | None) -> None:
    """Regulation (EU) 828/2014; 21 CFR 101.91: by a test, which no formula is."""
    found = misnaming_of(piece_of(LOAF), EU, called)
    assert (None if found is None else found.word) == word


NAMED = "    {grain} 1000 g\n    water 650 g\n{more}"


@pytest.mark.parametrize(
    ("grain", "more", "called", "absent"),
    [
        ("white flour", "", "Butter bread with walnuts", ("butter", "walnuts")),
        ("white flour", "", "Rye bread", ("rye",)), ("medium rye flour", "", "Rye bread", ()), ("rye chops", "", "Rye bread", ()),
        ("spelt flour", "", "Wheat bread with rye", ("rye",)), ("white flour", "", "Spelt loaf", ("spelt",)),
        ("white flour", "    butter 50 g\n", "Butter bread", ()), ("white flour", "    butter 50 g\n", "Milk loaf", ("milk",)),
        ("white flour", "    peanut butter 50 g\n", "Peanut butter roll", ()), ("white flour", "    oat drink 50 g\n", "Oat milk bread", ()),
        ("white flour", "    walnuts 50 g\n", "Nut bread", ()), ("white flour", "    millet 50 g\n", "Seeded plait", ()),
        ("white flour", "    sultanas 50 g\n", "Raisin loaf", ()), ("white flour", "    feta 50 g\n", "Cheese bread", ()),
        ("white flour", "", "Country hearth plait", ()), ("white flour", "", "Butterbean bread", ()),
        ("white flour", "", "Butter bean loaf", ()), ("white flour", "", "Bread without butter", ()), ("white flour", "", "Honey-coloured loaf", ()),
    ],
)  # fmt: skip
def test_a_name_tells_of_nothing_that_is_not_in_the_food(
    grain: str, more: str, called: str, absent: tuple[str, ...]
) -> None:
    """Regulation (EU) 1169/2011, article 7(1)."""
    loaf = piece_of(baked(NAMED.format(grain=grain, more=more), "1650 g", "12%"))
    assert absent_from(loaf, called) == absent
