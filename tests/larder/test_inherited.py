"""What a house does not say of a built-in ingredient stays, scaled to the dry matter that it leaves; allergens never, where it says any."""

from fractions import Fraction

import pytest
from works import bakery_of

from manchet.larder.book import builtin
from manchet.larder.ingredient import Ingredient
from manchet.larder.stock import built_in_entries


def entry(text: str, name: str = "medium rye flour") -> Ingredient:
    bakery = bakery_of(f"larder House\n  {name}\n{text}\n")
    found = bakery.larder.ingredient(name)
    assert found is not None, bakery.diagnostics
    return found


BELOW = builtin().ingredient("medium rye flour")
assert BELOW is not None


def test_by_dry_matter() -> None:
    assert BELOW is not None
    own = entry("    per 100 g\n      water 13 g\n      protein 8.9 g")
    below = BELOW.composition
    ratio = (100 - 13 - Fraction("8.9")) / (100 - below["water"] - below["protein"])
    assert own.composition["water"] == 13
    assert own.composition["protein"] == Fraction("8.9")
    for name in ("fat", "saturates", "carbohydrate", "sugars", "fibre"):
        assert own.composition[name] == below[name] * ratio, name
    assert "USDA" in own.source
    assert own.protein_factor == Fraction("6.25")


def test_a_part_goes_with_its_whole() -> None:
    assert BELOW is not None
    own = entry(f"    per 100 g\n      fat {2 * float(BELOW.composition['fat'])} g")
    assert own.composition["saturates"] == 2 * BELOW.composition["saturates"]


def test_nothing_else_known() -> None:
    own = entry("    per 100 g\n      water 13 g\n    nothing else known")
    assert own.composition == {"water": 13}


def test_a_price_alone_leaves_all_as_it_is() -> None:
    assert BELOW is not None
    own = entry("    price 20 EUR for 25 kg")
    assert own.composition == BELOW.composition
    assert own.protein_factor == BELOW.protein_factor
    assert own.source == BELOW.source


def test_repeating_the_built_in_figures_changes_nothing() -> None:
    for built_in in built_in_entries():
        if not isinstance(built_in, Ingredient) or len(built_in.composition) < 4:
            continue
        some = dict(list(built_in.composition.items())[::2])
        lines = "".join(f"      {name} {float(figure):.6f} g\n" for name, figure in some.items())
        own = entry("    per 100 g\n" + lines, built_in.name)
        assert own.composition == built_in.composition, built_in.name


@pytest.mark.parametrize(
    ("line", "allergens"),
    [("", ("rye", "gluten")), ("    allergens rye, gluten, wheat\n", ("rye", "gluten", "wheat"))],
)
def test_allergens_are_inherited_only_where_the_house_says_none(line: str, allergens: tuple[str, ...]) -> None:
    assert entry(line + "    density 0.5 kg/l").allergens == allergens


def test_class_against_allergen_is_an_error() -> None:
    text = "larder House\n  goat curd\n    class dairy\n    per 100 g\n      water 80 g\n    no allergens\n"
    (found,) = bakery_of(text).diagnostics
    assert (found.name, found.severity.value) == ("allergens-against-class", "error")
