"""The built-in larder: what is in it, where its figures are from, and what it asks about."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from pathlib import Path

import pytest
from every import every
from larder.house_texts import ingredient_called

import manchet.larder
from manchet.larder.allergens import ALLERGENS
from manchet.larder.book import Larder, builtin
from manchet.larder.compile import entries_of
from manchet.larder.ingredient import CLASSES, FLOUR_CLASSES, Ingredient, Question, names_of
from manchet.larder.names import key
from manchet.larder.stock import built_in_entries, entry_of, line_of
from manchet.source.text import SourceText

INGREDIENTS = [entry for entry in built_in_entries() if isinstance(entry, Ingredient)]
QUESTIONS = [entry for entry in built_in_entries() if isinstance(entry, Question)]


def test_it_is_what_the_compiler_makes_of_the_file() -> None:
    text = (Path(manchet.larder.__file__).parent / "builtin.bake").read_text(encoding="utf-8")
    assert entries_of(SourceText("builtin.bake", text)).diagnostics == ()


def test_nothing_in_it_is_unsound() -> None:
    _larder, diagnostics = Larder(below=lambda wanted: None).with_entries(built_in_entries())
    assert [(report.name, report.message) for report in diagnostics] == []


def test_an_entry_comes_out_of_its_line_as_it_went_in() -> None:
    for entry in built_in_entries():
        assert entry_of(line_of(entry)) == entry


def test_there_is_enough_in_it() -> None:
    assert len(INGREDIENTS) >= 150
    for class_ in CLASSES - {"packaging"}:  # a bag is a house's own
        assert any(entry.class_ == class_ for entry in INGREDIENTS), class_


@every(INGREDIENTS, at_least=400)
def test_each_says_class_and_source(entry: Ingredient) -> None:
    assert entry.class_ in CLASSES
    assert "USDA" in entry.source or "common practice" in entry.source or "from memory" in entry.source or (
        "Regulation" in entry.source or "taken as" in entry.source or "household" in entry.source
        or "dextrose" in entry.source or "sodium" in entry.source
    ), entry.source  # fmt: skip
    assert all(allergen in ALLERGENS for allergen in entry.allergens or ())
    if entry.composition and "USDA" not in entry.source and "taken as" not in entry.source:
        assert "from memory" in entry.source or "common practice" in entry.source or "parts" in entry.source


def test_every_name_leads_to_one_entry() -> None:
    keys = Counter(key(name) for entry in built_in_entries() for name in names_of(entry))
    assert [name for name, number in keys.items() if number > 1] == []


def test_names_hold_nothing_that_a_list_cannot() -> None:
    for entry in built_in_entries():
        for name in names_of(entry):
            assert not set(name) & set(",#\t\"'“”%") - {"'"}, name


# Figures of USDA SR28 (grams in 100 g), each looked up by its NDB number, and of FDC Foundation by its id.
@every(
    [
        ("bread flour", "20129", "protein", "11.98"),
        ("white flour", "20481", "water", "11.92"),
        ("whole wheat flour", "20080", "fibre", "10.7"),
        ("whole wheat flour", "20080", "carbohydrate", "61.27"),  # 71.97 by difference less 10.7 of fibre
        ("high-gluten flour", "20646", "protein", "15.33"),
        ("medium rye flour", "20064", "water", "10.97"),
        ("dark rye flour", "20063", "protein", "15.91"),
        ("light rye flour", "20065", "fibre", "8"),
        ("vital wheat gluten", "48052", "protein", "75.16"),
        ("wheat bran", "20077", "fibre", "42.8"),
        ("rolled oats", "08120", "fat", "6.52"),
        ("buckwheat flour", "20011", "protein", "12.62"),
        ("rice flour", "20061", "water", "11.89"),
        ("milk", "01211", "water", "88.13"),
        ("milk", "01211", "fat", "3.27"),
        ("buttermilk", "01088", "water", "90.13"),
        ("milk powder", "01091", "protein", "36.16"),
        ("salted butter", "01001", "water", "15.87"),
        ("salted butter", "01001", "salt", "1.6075"),  # 643 mg of sodium, 2.5 times
        ("butter", "01145", "fat", "81.11"),
        ("eggs", "01123", "water", "76.15"),
        ("egg yolks", "01125", "fat", "26.54"),
        ("egg whites", "01124", "water", "87.57"),
        ("honey", "19296", "water", "17.1"),
        ("malt syrup", "19352", "water", "21.1"),
        ("molasses", "19304", "sugars", "74.72"),
        ("fresh yeast", "18374", "water", "69"),
        ("active dry yeast", "18375", "water", "5.08"),
        ("olive oil", "04053", "saturates", "13.808"),
        ("lard", "04002", "fat", "100"),
        ("sunflower seeds", "12036", "fat", "51.46"),
        ("sesame seeds", "12023", "fibre", "11.8"),
        ("flaxseed", "12220", "fibre", "27.3"),
        ("walnuts", "12155", "fat", "65.21"),
        ("raisins", "09298", "sugars", "59.19"),
        ("lemon juice", "09152", "water", "92.31"),
        ("cheddar", "01009", "salt", "1.6325"),
        ("olives", "09193", "salt", "1.8375"),
        ("cocoa", "19165", "fat", "13.7"),
        ("beer", "14003", "alcohol", "3.9"),
        ("caraway", "02005", "water", "9.87"),
    ],
    at_least=41,
)
def test_its_figures_are_those_of_the_source(name: str, ndb: str, figure: str, grams: str) -> None:
    ingredient = ingredient_called(builtin(), name)
    assert f"USDA SR28 NDB {ndb}" in ingredient.source
    assert ingredient.composition[figure] == Fraction(grams)


@pytest.mark.parametrize(
    ("name", "grams"),
    [("eggs", 50), ("egg yolks", 17), ("egg whites", 33)],  # USDA SR28, one large: NDB 01123, 01125, 01124
)
def test_what_one_weighs(name: str, grams: int) -> None:
    assert ingredient_called(builtin(), name).whole == grams


@every(
    [
        "cornflour", "corn flour", "yeast", "dried yeast", "dry yeast", "fast-action yeast", "malt", "malt powder",
        "barley malt", "treacle", "brown flour", "flour", "rye flour", "cream", "soda", "bicarbonate", "oil", "starter",
        "sourdough", "stick of butter", "syrup", "oats", "bran", "starch", "lecithin", "vinegar", "nuts", "seeds",
        "condensed milk", "cheese", "powdered milk", "glucose",
    ],
    at_least=32,
)  # fmt: skip
def test_false_friends_are_asked_about(name: str) -> None:
    """False friends of the trade: a guess would change water, flour, yeast, salt or allergens."""
    found = builtin().find(name)
    assert isinstance(found, Question)
    assert len(found.choices) > 1
    assert found.why
    for choice in found.choices:
        ingredient_called(builtin(), choice)


def test_every_question_offers_ingredients_and_says_why() -> None:
    assert len(QUESTIONS) >= 30
    for question in QUESTIONS:
        assert question.why, question.name
        for choice in question.choices:
            ingredient_called(builtin(), choice)


@every(
    [
        ("wholemeal flour", "whole wheat flour"),
        ("strong white flour", "bread flour"),
        ("plain flour", "all-purpose flour"),
        ("yoghurt", "yogurt"),
        ("soured cream", "sour cream"),
        ("bicarbonate of soda", "baking soda"),
        ("caster sugar", "superfine sugar"),
        ("icing sugar", "powdered sugar"),
        ("skimmed milk powder", "nonfat dry milk"),
        ("linseed", "flaxseed"),
        ("soya flour", "soy flour"),
        ("sultanas", "golden raisins"),
        ("rapeseed oil", "canola oil"),
        ("single cream", "light cream"),
        ("egg yolks", "yolk"),
        ("fresh yeast", "compressed yeast"),
        ("maize starch", "cornstarch"),
        ("chilli", "chili"),
    ],
    at_least=18,
)
def test_both_englishes_find_the_same(british: str, american: str) -> None:
    assert ingredient_called(builtin(), british) is ingredient_called(builtin(), american)


@pytest.mark.parametrize(("one", "other"), [("double cream", "heavy cream"), ("black treacle", "golden syrup"),
                                            ("semolina", "durum flour"), ("cornmeal", "maize starch")])  # fmt: skip
def test_what_only_looks_alike_stays_apart(one: str, other: str) -> None:
    assert ingredient_called(builtin(), one) is not ingredient_called(builtin(), other)


@pytest.mark.parametrize(
    "spelling", ["Sunflower Seeds", "sunflower seed", "sunflower-seeds", "SUNFLOWER  SEEDS", "sunflower\u2011seed"]
)
def test_case_hyphens_plurals_and_spaces_do_not_matter(spelling: str) -> None:
    assert ingredient_called(builtin(), spelling).name == "sunflower seeds"


@pytest.mark.parametrize("name", ["crème fraîche", "creme fraiche", "pumpkin purée", "pumpkin puree", "baker’s flour"])
def test_accents_and_apostrophes_do_not_matter(name: str) -> None:
    ingredient_called(builtin(), name)


@every(
    [
        ("white flour", True), ("medium rye flour", True), ("rice flour", True), ("maize starch", True),
        ("vital wheat gluten", False), ("wheat bran", False), ("rye chops", False), ("rolled oats", False),
        ("cocoa", False), ("diastatic malt", False), ("old bread", False), ("psyllium husk", False),
        ("soya flour", False), ("ground almonds", False),
    ],
    at_least=14,
)  # fmt: skip
def test_what_counts_as_flour(name: str, counts: bool) -> None:
    assert ingredient_called(builtin(), name).counts_as_flour is counts


def test_flours_of_bread_carry_their_allergens() -> None:
    for entry in INGREDIENTS:
        if entry.class_ == "wheat flour":
            assert "wheat" in (entry.allergens or ()), entry.name
        if entry.class_ == "rye flour":
            assert "rye" in (entry.allergens or ()), entry.name
        if entry.class_ == "egg":
            assert entry.allergens == ("egg",), entry.name
        if entry.class_ == "dairy":
            assert "milk" in (entry.allergens or ()), entry.name


def test_cultures_say_what_they_are_made_of() -> None:
    cultures = [entry for entry in INGREDIENTS if entry.class_ == "culture"]
    assert len(cultures) >= 8
    for culture in cultures:
        assert sum(part.share for part in culture.made_of) == 1
        assert any(ingredient_called(builtin(), part.name).class_ in FLOUR_CLASSES for part in culture.made_of)


def test_only_malt_that_works_on_starch_is_of_class_malt() -> None:
    assert ingredient_called(builtin(), "diastatic malt").class_ == "malt"
    for name in ("malt syrup", "roasted malt", "red rye malt", "non-diastatic malt powder"):
        assert ingredient_called(builtin(), name).class_ != "malt"


def test_unknown_is_none() -> None:
    assert builtin().find("moon dust") is None
    assert builtin().find("") is None
