"""Specific heats against handbooks, another formula and another library."""

from fractions import Fraction
from itertools import product

import pytest
from every import every

from manchet.figures.water.heat import COMPONENTS, SIEBEL, component_heat, specific_heat
from manchet.larder.book import builtin

LARDER = builtin()

FOODS = {
    "protein": "FoodProtein",
    "fat": "FoodFat",
    "carbohydrate": "FoodCarbohydrate",
    "fibre": "FoodFiber",
    "ash": "FoodAsh",
}
"""What CoolProp calls them."""


def by_another_library(fluid: str, celsius: int) -> float:
    from CoolProp.CoolProp import PropsSI  # takes seconds, so only where it is asked

    return PropsSI("C", "T", celsius + 273.15, "P", 101_325, fluid) / 1000  # type: ignore[no-any-return]


@every(product(FOODS, (0, 20, 40, 80)), at_least=20)
def test_components_as_another_library_has_them(component: str, celsius: int) -> None:
    ours = component_heat(component, Fraction(celsius))
    assert float(ours) == pytest.approx(by_another_library(f"INCOMP::{FOODS[component]}", celsius), rel=1e-4)


@pytest.mark.parametrize("celsius", [5, 20, 40, 80])
def test_water_is_nearer_to_measured_water_than_the_variant_in_circulation(celsius: int) -> None:
    """CoolProp's water in food has 4128.9 J/kg K for its first figure, a hundredth under its own measured water (IAPWS)."""
    ours, measured = float(component_heat("water", Fraction(celsius))), by_another_library("Water", celsius)
    variant = by_another_library("INCOMP::FoodWater", celsius)
    assert ours == pytest.approx(measured, rel=0.008)
    assert abs(ours - measured) < abs(variant - measured)


@every(COMPONENTS, at_least=6)
def test_siebel_is_near(component: str) -> None:
    """One figure for all temperatures, from other measurements: up to a fifth less."""
    assert 0.78 <= float(SIEBEL[component] / component_heat(component)) <= 1.01


@every(
    [
        ("white flour", 1.84, 0.07),
        ("water", 4.185, 0.005),
        ("milk", 3.85, 0.03),
        ("skimmed milk", 4.00, 0.03),
        ("butter", 2.30, 0.04),
        ("olive oil", 2.01, 0.02),
        ("eggs", 3.18, 0.18),
        ("salt", 0.87, 0.001),
        ("sugar", 1.25, 0.28),
    ],
    at_least=9,
)
def test_ingredients_as_handbooks_have_them(name: str, printed: float, within: float) -> None:
    """Geankoplis, Transport Processes, table A.4-1 (flour 1.80 to 1.88); salt and sugar from tables of chemistry.

    Composition is a model: it does not know a crystal of sugar from starch, and its egg has more water than the table's.
    """
    found = LARDER.ingredient(name)
    assert found is not None
    assert float(specific_heat(found, LARDER)) == pytest.approx(printed, rel=within)


def test_a_culture_is_the_sum_of_its_parts() -> None:
    culture = LARDER.ingredient("ripe wheat starter") or LARDER.ingredient("ripe rye starter")
    assert culture is not None and culture.made_of
    assert 2.2 < float(specific_heat(culture, LARDER)) < 3.3
