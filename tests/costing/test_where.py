"""Where something is used is told by what is bound, through cultures and dishes; the account of a piece says how much."""

from __future__ import annotations

from fractions import Fraction

from costing.test_cost import BREAD, LARDER, LEVAIN
from works import bakery_of, works

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
