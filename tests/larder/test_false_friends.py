"""Names that mean two things are asked about, and what only looks like another thing has an entry of its own."""

from __future__ import annotations

from fractions import Fraction

import pytest
from every import every
from works import formula_of, reports_of

from manchet.larder.book import builtin
from manchet.larder.ingredient import Ingredient, Question

CUP = Fraction("236.5882365")


@every(
    ["suet", "tomato puree", "cranberries", "liquid starter", "baker's yeast", "figs", "pumpkin", "cider"], at_least=8
)
def test_a_name_of_two_things_is_asked_about(name: str) -> None:
    found = builtin().find(name)
    assert isinstance(found, Question) and len(found.choices) >= 2
    assert all(isinstance(builtin().find(choice), Ingredient) for choice in found.choices)


@pytest.mark.parametrize(
    ("name", "carries"),
    [
        ("wheat beer", {"wheat", "barley"}), ("shredded suet", {"wheat"}), ("celery salt", {"celery"}), ("parmesan", {"milk"}),
        ("pine nuts", {"pine nut"}),
    ],
)  # fmt: skip
def test_what_it_carries(name: str, carries: set[str]) -> None:
    entry = builtin().find(name)
    assert isinstance(entry, Ingredient) and carries <= set(builtin().allergens(entry) or ())


@pytest.mark.parametrize("name", ["bacon", "ham"])
def test_what_is_not_known_is_not_said_to_be_free_of_anything(name: str) -> None:
    entry = builtin().find(name)
    assert isinstance(entry, Ingredient) and entry.allergens is None


@pytest.mark.parametrize(
    ("name", "cup"),
    [("flaked almonds", 92), ("slivered almonds", 108), ("soured cream", 230), ("rapeseed oil", 218), ("eggs", 243)],
)
def test_a_cup_weighs_what_the_table_says(name: str, cup: int) -> None:
    """USDA SR28, portion weights."""
    entry = builtin().find(name)
    assert isinstance(entry, Ingredient) and entry.density is not None
    assert float(entry.density * CUP) == pytest.approx(cup, rel=0.01)


def test_celery_salt_salts_and_spirits_are_two_thirds_water() -> None:
    salt, rum, butter = (builtin().find(name) for name in ("celery salt", "rum", "apple butter"))
    assert isinstance(salt, Ingredient) and builtin().poured(salt).salt == Fraction(7, 10)
    assert isinstance(rum, Ingredient) and builtin().poured(rum).water == Fraction(666, 1000)
    assert isinstance(butter, Ingredient) and builtin().poured(butter).water == Fraction(56, 100)


LOAF = """formula Plain loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough
  bake loss 14%

  overall
    mill flour           100%
    water                 70%
    salt                   2%
    fresh yeast            1.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 1 h at 27 C
    bake 40 min at 230 C, steam, vent open after 9 min
    cool 2 h

larder House
  mill flour
    class wheat flour
{line}"""


@pytest.mark.parametrize("class_", ["wheat flour", "rye flour"])
def test_a_house_flour_carries_its_grain_by_itself(class_: str) -> None:
    flour = formula_of(LOAF.format(line="").replace("class wheat flour", f"class {class_}")).overall[0].ingredient
    assert flour is not None and flour.allergens == (class_.split()[0], "gluten")


@pytest.mark.parametrize("line", ["    no allergens\n", "    allergens rye, gluten\n"])
def test_it_cannot_be_said_to_be_free_of_it_in_silence(line: str) -> None:
    assert [one.name for one in reports_of(LOAF.format(line=line))] == ["allergens-against-class"]
