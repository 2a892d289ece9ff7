"""What 1 g of an ingredient brings to a dough."""

from __future__ import annotations

from fractions import Fraction

from every import every
from hypothesis import given, strategies as st
from larder.house_texts import ingredient_called
from run_length import FEW_EXAMPLES

from manchet.larder.book import builtin
from manchet.larder.ingredient import Blend, Ingredient, Poured
from manchet.larder.stock import built_in_entries

LARDER = builtin()


def one_gram_of(name: str) -> Poured:
    return LARDER.poured(ingredient_called(LARDER, name))


@every(
    [
        ("water", "1"), ("milk", "0.8813"), ("eggs", "0.7615"), ("butter", "0.16"), ("fresh yeast", "0.69"),
        ("honey", "0.171"), ("malt syrup", "0.211"), ("olive oil", "0"), ("beer", "0.9196"), ("lemon juice", "0.9231"),
        ("ripe rye starter", "1/2"), ("stiff starter", "1/3"), ("liquid levain starter", "5/9"),
        ("pumpkin puree", "0.8997"), ("passata", "0.8788"),
        # not the moisture of flours and dry goods, nor whole fruit and vegetables
        ("white flour", "0"), ("rye chops", "0"), ("raisins", "0"), ("apples", "0"), ("boiled potatoes", "0"),
        ("celeriac", "0"), ("sugar", "0"), ("milk powder", "0"), ("instant yeast", "0"), ("cheddar", "0"), ("salt", "0"),
        ("maize starch", "0"), ("diastatic malt", "0"), ("old bread", "0"), ("hazelnuts", "0"),
    ],
    at_least=30,
)  # fmt: skip
def test_water(name: str, grams: str) -> None:
    assert one_gram_of(name).water == Fraction(grams)


def test_water_in_all_of_a_milk_sponge() -> None:
    """Milk 52.5 + egg 114 + butter 33.6 + yeast 10.5 on 300 g flour are 70.2 % when milk has .875, egg .76, butter .16,
    fresh yeast .70 g water in a gram (worked out for a brioche after Gisslen); with the figures here, within a point."""
    grams = {"milk": 60, "fresh yeast": 15, "eggs": 150, "butter": 210}
    water = sum(one_gram_of(name).water * weight for name, weight in grams.items())
    assert abs(water / 300 - Fraction("0.702")) < Fraction(1, 100)


@every(
    [("salt", "1"), ("salted butter", "0.016075"), ("butter", "0"), ("milk", "0"), ("white flour", "0"),
     ("bicarbonate of soda", "0"), ("cheddar", "0.016325")],
    at_least=7,
)  # fmt: skip
def test_salt_is_what_is_tasted(name: str, salt: str) -> None:
    assert one_gram_of(name).salt == Fraction(salt)


def test_sugar_and_fat_are_what_is_free_in_the_dough() -> None:
    assert one_gram_of("sugar").sugar == Fraction("0.9998")
    assert one_gram_of("honey").sugar == Fraction("0.8212")
    assert one_gram_of("raisins").sugar == 0
    assert one_gram_of("milk").sugar == 0
    assert one_gram_of("olive oil").fat == 1
    assert one_gram_of("egg yolks").fat == Fraction("0.2654")
    assert one_gram_of("walnuts").fat == 0
    assert one_gram_of("white flour").fat == 0


def test_a_culture_brings_the_flour_it_is_fed_with() -> None:
    assert one_gram_of("ripe rye starter").flour == Fraction(1, 2)
    assert one_gram_of("ripe rye starter").flours == (Blend("medium rye flour", Fraction(1, 2)),)


def test_a_blend_that_counts_as_flour_is_flour_as_a_whole() -> None:
    malted = one_gram_of("malted flour")
    assert malted.flour == 1
    assert malted.flours == (Blend("malted flour", Fraction(1)),)


def test_old_bread_made_of_flour_is_no_flour() -> None:
    larder, reports = builtin().with_entries(
        [
            Ingredient(
                "Tuesday's loaf",
                "bread",
                made_of=(Blend("white flour", Fraction(6, 10)), Blend("water", Fraction(4, 10))),
            )
        ]
    )
    assert reports == ()
    assert larder.poured(ingredient_called(larder, "Tuesday's loaf")).flour == 0


def test_everything_built_in_brings_no_more_than_itself() -> None:
    for entry in built_in_entries():
        if isinstance(entry, Ingredient):
            brings = LARDER.poured(entry)
            assert all(0 <= figure <= 1 for figure in brings[:5]), entry.name
            assert brings.flour + brings.water <= 1, entry.name
            assert brings.flour == sum(flour.share for flour in brings.flours)


NAMES = ["white flour", "medium rye flour", "water", "milk", "salt", "butter", "honey", "ripe rye starter", "rye chops"]
PARTS = st.lists(st.tuples(st.sampled_from(NAMES), st.integers(1, 1000)), min_size=1, max_size=5)


def blend(name: str, parts: list[tuple[str, int]]) -> Ingredient:
    total = sum(weight for _part, weight in parts)
    return Ingredient(name, "culture", made_of=tuple(Blend(part, Fraction(weight, total)) for part, weight in parts))


@FEW_EXAMPLES
@given(inner=PARTS, outer=PARTS, share=st.integers(1, 1000))
def test_a_blend_of_blends_is_the_sum_of_its_parts(
    inner: list[tuple[str, int]], outer: list[tuple[str, int]], share: int
) -> None:
    first = blend("inner blend", inner)
    second = blend("outer blend", [*outer, ("inner blend", share)])
    larder, reports = builtin().with_entries([second, first])
    assert reports == ()
    brings = larder.poured(ingredient_called(larder, "outer blend"))
    total = sum(weight for _name, weight in outer) + share
    inside = larder.poured(ingredient_called(larder, "inner blend"))
    for figure in ("flour", "water", "salt", "sugar", "fat"):
        expected = (
            sum(getattr(one_gram_of(name), figure) * weight for name, weight in outer) + getattr(inside, figure) * share
        )
        assert getattr(brings, figure) == expected / total
    assert sum(flour.share for flour in brings.flours) == brings.flour
    assert brings.flour + brings.water <= 1


@FEW_EXAMPLES
@given(flour=st.integers(1, 500), water=st.integers(0, 500))
def test_flour_and_water_of_a_culture_are_all_of_it(flour: int, water: int) -> None:
    parts = [("white flour", flour)] + ([("water", water)] if water else [])
    larder, _reports = builtin().with_entries([blend("house pot", parts)])
    brings = larder.poured(ingredient_called(larder, "house pot"))
    assert brings.flour + brings.water == 1


def test_allergens_are_those_of_the_parts() -> None:
    larder, _reports = builtin().with_entries([blend("house pot", [("white flour", 1), ("medium rye flour", 1)])])
    assert larder.allergens(ingredient_called(larder, "house pot")) == ("wheat", "gluten", "rye")
    larder, _reports = builtin().with_entries([blend("house pot", [("white flour", 1), ("old bread", 1)])])
    assert larder.allergens(ingredient_called(larder, "house pot")) is None
