"""Labels of breads and pastes as shops print them: list, allergens and what withholds them, for three markets.

Lists: Regulation (EU) 1169/2011, articles 18, 21 and 22, Annexes II, VII and VIII; food packed for direct sale by article 44, in England as amended in
2019; 21 CFR 101.4 and FD&C Act 403(w) in the United States, with the tree nuts, sesame and species of FDA's Q&A of January 2025. The formulas
are common practice, and the order of each list follows from them by hand.
"""

from __future__ import annotations

import pytest
from works import bakery_of, work_in

from manchet.account.piece import sold_pieces
from manchet.label.declaration import Declaration, declarations
from manchet.label.markets import BRITAIN, EU, US

KITCHEN = 'kitchen Quay\n  sells in EU, Britain, US\n  name and address "Quay Bakery, Port Avel"\n\n'
BAKED = "    mix slow 8 min to 24 C\n    divide\n    {}bake 20 min at 200 C\n    cool 1 h\n    {}"


def label_of(market: str, called: str, lines: str, before: str = "", after: str = "", more: str = "") -> Declaration:
    head = (
        f"formula Food\n  kind soft\n  makes 10 pieces at 100 g dough\n  bake loss 10%\n  sold prepacked for direct sale\n"
        f'  called "{called}"\n  dough\n'
    )
    weighed = "".join(f"    {line.strip()}\n" for line in lines.split(","))
    before, after = (f"{one}\n    " if one else "" for one in (before, after))
    bakery = bakery_of(KITCHEN + more + head + weighed + BAKED.format(before, after).rstrip() + "\n")
    formula = bakery.formula("Food")
    assert formula is not None, bakery.diagnostics
    work = work_in(bakery, formula)
    return next(one for one in declarations(work, sold_pieces(work)[0]) if one.market == market)


BRIOCHE = "white flour 500 g, eggs 190 g, salted butter 175 g, milk 60 g, sugar 50 g, fresh yeast 18 g, salt 7 g"
SODA = "buttermilk 420 g, wholemeal flour 350 g, white flour 150 g, rolled oats 50 g, honey 15 g, bicarbonate of soda 8 g, salt 7 g"
INK = "white flour 520 g, water 360 g, malted wheat flakes 60 g, lupin flour 30 g, squid ink 15 g, salt 11 g, instant yeast 4 g"
STRAWS = (
    "white flour 450 g, butter 250 g, cheddar 200 g, eggs 80 g, dried buttermilk 10 g, salt 6 g, mustard powder 4 g"
)
NUTS = "white flour 500 g, water 340 g, walnuts 60 g, pine nuts 50 g, chestnut flour 40 g, salt 10 g"
RYE = "whole rye flour 600 g, water 380 g, barley malt extract 10 g, salt 10 g"


@pytest.mark.parametrize(
    ("called", "lines", "before", "listed", "contains"),
    [
        (
            "Salted butter brioche", BRIOCHE, "brush with eggs 4 g each",
            {
                EU: "WHEAT flour, EGG, butter (MILK, salt) (19 %), MILK, sugar, yeast, salt",
                US: "WHEAT flour, EGG, butter (MILK, salt), MILK, sugar, yeast, salt",
            },
            {EU: ("wheat", "egg", "milk"), US: ("wheat", "egg", "milk")},
        ),
        (
            "Soda bread with honey", SODA, "",
            {
                EU: "buttermilk (MILK), wholemeal WHEAT flour, WHEAT flour, rolled OATS, honey (1.7 %), raising agent (sodium carbonates), salt",
                US: "buttermilk (MILK), wholemeal WHEAT flour, WHEAT flour, rolled oats, honey, raising agent (sodium carbonates), salt",
            },
            {EU: ("wheat", "oats", "milk"), US: ("wheat", "milk")},
        ),
        (
            "Black rolls with sesame", INK, "sprinkle with sesame seeds 4 g each",
            {
                EU: "WHEAT flour, water, malted WHEAT flakes (BARLEY), SESAME seeds (4.3 %), LUPIN flour, squid ink (MOLLUSCS), salt, yeast",
                US: "WHEAT flour, water, malted WHEAT flakes, SESAME seeds, lupin flour, squid ink, salt, yeast",
            },
            {EU: ("wheat", "barley", "sesame", "lupin", "molluscs"), US: ("wheat", "sesame")},
        ),
        (
            "Cheese straws", STRAWS, "",
            {EU: "WHEAT flour, butter (MILK), cheddar (MILK) (22 %), EGG, buttermilk powder (MILK), salt, MUSTARD seed"},
            {EU: ("wheat", "egg", "milk", "mustard"), US: ("wheat", "egg", "milk")},
        ),
        (
            "Nut bread", NUTS, "",
            {
                EU: "WHEAT flour, water, WALNUTS (6.7 %), pine nuts (5.6 %), chestnut flour, salt",
                US: "WHEAT flour, water, WALNUTS, PINE NUTS, chestnut flour, salt",
            },
            {EU: ("wheat", "walnut"), US: ("wheat", "walnut", "pine nut")},
        ),
        (
            "Rye bread", RYE, "",
            {EU: "wholemeal RYE flour (67 %), water, BARLEY malt extract, salt", US: "wholemeal rye flour, water, barley malt extract, salt"},
            {EU: ("rye", "barley"), US: ()},
        ),
    ],
)  # fmt: skip
def test_a_list_and_its_allergens(
    called: str, lines: str, before: str, listed: dict[str, str], contains: dict[str, tuple[str, ...]]
) -> None:
    for market, text in listed.items():
        label = label_of(market, called, lines, before)
        assert label.ingredients.text == text, market
        assert not label.is_withheld
    for market, allergens in contains.items():
        assert label_of(market, called, lines, before).contains == allergens, market


def test_the_flour_of_a_british_mill_is_a_compound() -> None:
    """Bread and Flour Regulations 1998, schedule 1 (calcium carbonate, iron, niacin, thiamin); wessexmill.co.uk shows the list."""
    mill = 'larder Quay\n  white flour\n    listed as "wheat flour (wheat flour, calcium carbonate, iron, niacin, thiamin)" in Britain\n\n'
    lines = "white flour 600 g, water 390 g, salt 10 g"
    british = label_of(BRITAIN, "Wheat bread", lines, more=mill)
    assert british.ingredients.text == (
        "WHEAT flour (WHEAT flour, calcium carbonate, iron, niacin, thiamin) (67 %), water, salt"
    )
    assert label_of(EU, "Wheat bread", lines, more=mill).ingredients.text == "WHEAT flour (67 %), water, salt"


def test_a_bun_of_dried_fruit_waits_for_its_packets() -> None:
    """Sulphites above 10 mg/kg are declared: Annex II, no. 12."""
    fruit = "white flour 450 g, milk 230 g, sultanas 150 g, butter 60 g, sugar 50 g, candied peel 40 g, salt 8 g, fresh yeast 12 g"
    label = label_of(EU, "Fruit buns", fruit)
    assert label.is_withheld and [one.allergen for one in label.unknown] == ["sulphites"]
    packets = "larder Quay\n  sultanas\n    sulphites 50 mg/kg\n  candied peel\n    no sulphites\n\n"
    told = label_of(EU, "Fruit buns", fruit, more=packets)  # 150 of 900 g at 50 mg/kg: 8.3 mg/kg
    assert not told.is_withheld and "sulphites" not in told.contains
    more = label_of(EU, "Fruit buns", fruit, more=packets.replace("50 mg", "70 mg"))  # 11.7 mg/kg
    assert "sultanas (SULPHITES) (17 %)" in more.ingredients.text and "sulphites" in more.contains


def test_a_lye_roll_lists_what_it_takes_up_by_its_class_of_additive() -> None:
    """Annex VII, part C. 4 g of a 4 % bath are 0.16 g on a roll of about 94 g."""
    bath = "preparation bath\n  water 960 g\n  lye 40 g\n  stir 3 min\n  good for 1 d at 18 C\n\n"
    label = label_of(
        EU, "Lye rolls with coarse salt", "white flour 600 g, water 360 g, lard 25 g, salt 15 g", "dip in bath 4 g each\n    sprinkle with coarse salt 1.2 g each", more=bath
    )  # fmt: skip
    assert label.ingredients.text == (
        "WHEAT flour, water, lard, salt, coarse salt (1.3 %), acidity regulator (sodium hydroxide)"
    )


def test_a_fish_is_named_by_its_kind_in_the_united_states() -> None:
    """FD&C Act 403(w)(2): the species of fish; article 22 asks how much of it the name names."""
    lines = "white flour 500 g, water 300 g, tinned sardines 190 g, salt 10 g"
    assert label_of(US, "Sardine rolls", lines).contains == ("wheat", "fish (sardines)")
    european = label_of(EU, "Sardine rolls", lines)
    assert european.contains == ("wheat", "fish")
    assert "tinned sardines (FISH) (21 %)" in european.ingredients.text


@pytest.mark.parametrize("line", ["margarine 60 g", "shortening 60 g", "bread improver 10 g"])
def test_what_comes_from_nobody_knows_where_withholds_the_label(line: str) -> None:
    """Annex VII, part A, nos 8 and 9, and part E."""
    label = label_of(EU, "Wheat buns", f"white flour 600 g, water 330 g, {line}, salt 10 g")
    assert label.is_withheld and [one.name for one in label.sourceless] == [line.rsplit(" ", 2)[0]]


SANDWICH = """\
kitchen Quay
  sells in Britain

larder Quay
  white flour
    listed as "fortified wheat flour (wheat flour, calcium carbonate, iron, niacin, thiamin)" in Britain

formula Tin loaf
  kind tin loaf
  makes 4 loaves at 900 g dough
  bake loss 10%
  listed as "white bread"
  dough
    white flour 2100 g
    water 1380 g
    salt 42 g
    butter 60 g
    instant yeast 18 g
    mix slow 8 min to 25 C
    divide
    bake 35 min at 220 C
    cool 3 h

assembly Sandwich
  makes 10 sandwiches
  sold prepacked for direct sale
  called "Cheddar sandwich on white bread"
  use by 1 d at 4 C
  Tin loaf 2 slices each
  slice into 18 slices, loses 6%
  spread with butter 10 g each
  top with cheddar 80 g each
  top with lettuce 10.4 g each
"""


def test_a_bread_in_a_sandwich_is_a_compound_by_its_weight_when_it_is_baked() -> None:
    """Annex VII, part E, and Annex VIII: its overall weight as it was used. Two of 18 slices of 810 g less 6 % are 84.6 g of 185 g, 46 %, where the dough
    of it would be 51 %; England has all of it listed on what is packed for direct sale."""
    bakery = bakery_of(SANDWICH)
    formula = bakery.formula("Sandwich")
    assert formula is not None, bakery.diagnostics
    work = work_in(bakery, formula)
    (piece,) = sold_pieces(work)
    (label,) = declarations(work, piece)
    assert piece.finished == 185
    assert label.ingredients.text == (
        "white bread (46 %) (fortified WHEAT flour (WHEAT flour, calcium carbonate, iron, niacin, thiamin), water, butter (MILK), salt, yeast),"
        " cheddar (MILK) (43 %), lettuce, butter (MILK)"
    )
    assert label.contains == ("wheat", "milk") and not label.is_withheld
