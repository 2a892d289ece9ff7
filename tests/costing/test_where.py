"""Where something is used is told by what is bound, through cultures and dishes; the account of a piece says how much."""

from __future__ import annotations

from fractions import Fraction

from costing.test_cost import BREAD, LARDER, LEVAIN
from works import bakery_of, works

from manchet.cli.where import text
from manchet.costing.where_used import placed_in, used_in


def test_flour_comes_by_the_culture_too() -> None:
    """The starter is half flour; 10 % of it by the levain's flour is 5 % of flour that no line of the dough names."""
    (found,) = used_in(works(bakery_of(LARDER + LEVAIN)), "white flour")
    ways = {way.through: way.grams for way in found.ways}
    assert ("levain", "ripe wheat starter") in ways and ("levain",) in ways and () in ways
    assert sum(ways.values(), Fraction(0)) == found.grams
    assert found.share is not None and found.share > Fraction(1, 2)


def test_butter_is_not_what_only_has_its_name_in_it() -> None:
    butter = used_in(works(bakery_of(LARDER + BREAD)), "butter")
    assert [(one.name, one.grams, one.allergens) for one in butter] == [("Loaf", 5, ("milk",))]
    assert used_in(works(bakery_of(LARDER + BREAD)), "butter block") == ()


def test_what_it_costs_is_a_share_of_the_ingredients() -> None:
    (found,) = used_in(works(bakery_of(LARDER + BREAD)), "butter")
    assert found.money == Fraction("0.40") / (
        Fraction("4.80") + Fraction("0.048") + Fraction("0.00816") + Fraction("0.40")
    )


def test_a_tin_is_found_where_pieces_are_put_into_it() -> None:
    text = (LARDER + BREAD).replace("    prove 1 h", "    place in long tin\n    prove 1 h")
    assert [(one.name, one.stage) for one in placed_in(works(bakery_of(text)), "long tin")] == [("Loaf", "dough")]


SOLD = """\
kitchen Quay
  sells in EU

formula Loaf
  kind hearth loaf
  makes 10 loaves at 500 g dough
  bake loss 12%
  called "Wheat bread with sunflower seeds"

  overall
    white flour          100%
    water                 70%
    sunflower seeds       10%
    salt                   2%

  dough
    everything else
    mix slow 8 min to 25 C
    divide
    bake 40 min at 230 C
    cool 2 h
    slice into 20 slices, loses 5%

"""
PRICES = """\
larder Quay
  white flour
    price         1 EUR for 1 kg
  sunflower seeds
    price         4 EUR for 1 kg
  salt
    price         1 EUR for 1 kg

"""


def test_what_a_label_and_a_cost_sheet_would_say_without_it() -> None:
    """500 g are 182 parts, 10 of them seeds; 440 g baked, 418 g sliced. A slice is the twentieth part."""
    (found,) = used_in(works(bakery_of(PRICES + SOLD)), "sunflower seeds")
    assert found.without is not None
    (now,), (without,) = found.now.markets, found.without.markets
    assert now.ingredients == "WHEAT flour (62 %), water, sunflower seeds (6.2 %), salt"
    assert without.ingredients == "WHEAT flour (66 %), water, salt"
    assert found.now.finished == 418 and found.now.slice_grams == Fraction("20.9")
    assert found.without.finished == 418 * Fraction(172, 182)
    assert found.now.cost == Fraction(500, 182) * Fraction("0.142")  # 100 + 2 parts at 0.001, 10 at 0.004
    assert found.without.cost == Fraction(500, 182) * Fraction("0.102")
    assert found.now.slice_cost == found.now.cost / 20
    fat = next(figure for figure in now.panel if figure.name == "fat")
    less = next(figure for figure in without.panel if figure.name == "fat")
    assert float(fat.per_100_g) > float(less.per_100_g) and float(fat.per_slice) > 0
    energy = next(figure for figure in now.panel if figure.name == "energy kj")
    assert abs(float(energy.per_slice) - float(energy.per_100_g) * 0.209) < 1


def test_without_all_that_it_is_made_of_there_is_nothing() -> None:
    assert used_in(works(bakery_of("preparation bath\n  water 960 g\n  stir 3 min\n")), "water")[0].without is None


def test_what_goes_in_the_heat_goes_from_the_water() -> None:
    """440 g are left of 500 g: with the flours and the rest, the water that stays makes the whole, and no more."""
    read = works(bakery_of(SOLD.replace("    slice into 20 slices, loses 5%\n", "")))
    found = [used_in(read, name)[0] for name in ("white flour", "water", "sunflower seeds", "salt")]
    assert sum(one.share or Fraction(0) for one in found) == 1
    assert found[1].grams - found[1].left == 60


def test_a_part_of_a_cost_that_is_not_known_in_full_is_not_told() -> None:
    prices = PRICES.replace("  white flour\n    price         1 EUR for 1 kg\n", "")
    read = works(bakery_of(prices + SOLD))
    for name in ("white flour", "sunflower seeds"):
        (found,) = used_in(read, name)
        assert (found.money, found.unpriced) == (None, ("white flour",))
    assert "not known in full: no price of white flour" in text("salt", list(used_in(read, "salt")), [])


def test_an_unknown_allergen_is_not_told_as_none() -> None:
    larder = "larder Quay\n  sweet paste\n    class other\n\n"
    read = works(bakery_of(larder + SOLD.replace("    salt   ", "    sweet paste 5%\n    salt   ")))
    said = text("sweet paste", list(used_in(read, "sweet paste")), [])
    assert "allergens not known of sweet paste → known of all that is in it" in said
