"""A house's own entries: what they say, what they leave to the built-in larder, what cannot be true."""

from __future__ import annotations

from fractions import Fraction

from larder.house_texts import house, ingredient_called, reports_on

from manchet.diagnostics.diagnostic import Severity
from manchet.larder.book import builtin
from manchet.larder.ingredient import Blend, Ingredient, Price, Question

ROW = """\
larder Saltpan Row
  medium rye flour
    class         rye flour
    also called   house rye, medium rye
    per 100 g
      water       13 g
      protein     8.9 g
    allergens     rye, gluten
    density       0.55 kg/l
    price         21.40 EUR for 25 kg on 2026-09-14
    source        "mill's own sheet, August 2026"
  ripe rye starter
    class         culture
    made of
      medium rye flour   100%
      water              80%
    kept at       39 F
    good for      7 d
  celery root
    gives its water
  Row mix
    could be      white flour, bread flour because "both bins say so"
"""


def test_what_an_entry_says() -> None:
    larder, _kitchen, reports = house(ROW)
    assert reports == []
    rye = ingredient_called(larder, "house rye")
    assert rye is ingredient_called(larder, "Medium-Rye flour")
    assert {name: rye.composition[name] for name in ("water", "protein")} == {"water": 13, "protein": Fraction("8.9")}
    price = rye.buying.price
    assert price is not None and price[:5] == Price(Fraction("21.40"), "EUR", Fraction(25000), "2026-09-14")[:5]
    assert rye.density == Fraction("0.55")
    assert rye.source.startswith("mill's own sheet, August 2026; what it does not give: USDA")
    assert rye.place is not None and rye.place.line == 2
    starter = ingredient_called(larder, "ripe rye starter")
    assert [(part.name, part.share) for part in starter.made_of] == [
        ("medium rye flour", Fraction(5, 9)), ("water", Fraction(4, 9))
    ]  # fmt: skip
    assert starter.kept_at == Fraction(35, 9)
    assert starter.good_for == 7 * 86400
    question = larder.find("row mix")
    assert isinstance(question, Question)
    assert (question.choices, question.why) == (("white flour", "bread flour"), "both bins say so")


def test_what_an_entry_leaves_unsaid_stays_as_built_in() -> None:
    larder, _kitchen, reports = house(ROW)
    assert reports == []
    celeriac = ingredient_called(larder, "celery root")
    assert celeriac.allergens == ("celery",)
    assert celeriac.class_ == "vegetable"
    assert larder.poured(celeriac).water == Fraction("0.88")
    assert ingredient_called(larder, "rye 1150").name == "medium rye flour"
    assert builtin().poured(ingredient_called(builtin(), "celeriac")).water == 0


def test_the_larder_below_is_not_changed() -> None:
    before = ingredient_called(builtin(), "medium rye flour")
    house(ROW)
    assert ingredient_called(builtin(), "medium rye flour") is before


def test_a_house_may_settle_a_false_friend() -> None:
    larder, _kitchen, reports = house("larder House\n  malt\n    class malt\n    allergens barley, gluten\n")
    assert reports == []
    assert ingredient_called(larder, "malt").class_ == "malt"


def test_order_of_lines_does_not_matter() -> None:
    culture = "larder House\n  pot\n    made of\n      white flour 100%\n      water 50%\n    class culture\n"
    larder, _kitchen, reports = house(culture)
    assert reports == []
    assert larder.poured(ingredient_called(larder, "pot")).flour == Fraction(2, 3)


def test_part_of_a_blend_that_stands_below_it() -> None:
    text = (
        "larder House\n  mix\n    class wheat flour\n    made of\n      village flour 100%\n"
        "  village flour\n    class wheat flour\n"
    )
    assert house(text)[2] == []


def test_several_mistakes_are_several_reports_each_at_its_line() -> None:
    text = """\
larder House
  one
    class         wheet flour
    density       550 kg/l
    per 100 g
      watr        13 g
      protein     120 g
  two
    class         other
    allergens     weat, mlik
"""
    reports = reports_on(text)
    assert [(report.name, report.place.line) for report in reports] == [
        ("class-unknown", 3), ("density-impossible", 4), ("composition-unknown", 6), ("composition-over-100", 5),
        ("allergen-unknown", 10), ("allergen-unknown", 10),
    ]  # fmt: skip
    assert all(report.severity is Severity.ERROR for report in reports)
    assert "`class wheat flour`" in reports[0].help
    assert "`water`" in reports[2].help


def test_the_same_name_in_two_larders() -> None:
    text = "larder House\n  a\n    class other\nlarder Cellar\n  A\n    class other\n"
    (report,) = reports_on(text)
    assert report.name == "larder-name-twice"
    assert report.place.line == 5
    assert report.related[0].place.line == 2


def test_an_alias_that_is_the_name_of_another() -> None:
    text = "larder House\n  a\n    class other\n    also called b\n  b\n    class other\n"
    (report,) = reports_on(text)
    assert report.name == "larder-name-twice"
    assert "a name of a" in report.message


def test_each_round_is_reported_once_and_is_no_round_afterwards() -> None:
    names = ["one", "two", "three"]
    entries = [
        Ingredient(name, "other", made_of=(Blend(names[(number + 1) % 3], Fraction(1)),))
        for number, name in enumerate(names)
    ]
    entries += [Ingredient("self", "other", made_of=(Blend("self", Fraction(1)),))]
    larder, reports = builtin().with_entries(entries)
    assert [report.name for report in reports] == ["made-of-itself", "made-of-itself"]
    for name in (*names, "self"):
        assert larder.poured(ingredient_called(larder, name)).water == 0


def test_a_very_long_chain_neither_crashes_nor_hangs() -> None:
    entries = [Ingredient("n0", "other", made_of=(Blend("water", Fraction(1)),))] + [
        Ingredient(f"n{number}", "other", made_of=(Blend(f"n{number - 1}", Fraction(1)),)) for number in range(1, 5000)
    ]
    larder, reports = builtin().with_entries(reversed(entries))
    assert {report.name for report in reports} == {"made-of-too-much"}
    assert larder.poured(ingredient_called(larder, "n31")).water == 1
    assert larder.poured(ingredient_called(larder, "n4999")).water == 0


def test_near_names() -> None:
    larder, _kitchen, _reports = house(ROW)
    assert larder.near("medum rye flour")[0] == "medium rye flour"
    assert "sunflower seeds" in larder.near("sunflowr seeds")
    assert larder.near("") == ()
    assert len(larder.near("flour")) <= 3
