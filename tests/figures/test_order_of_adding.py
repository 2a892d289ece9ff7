"""The order of the bowl: common practice, so these cases have no source."""

from works import bakery_of

from manchet.figures.mixing.order_of_adding import order_of_adding

HEAD = """formula Loaf
  makes 10 loaves at 900 g dough
  overall
"""


def order(*lines: str) -> list[list[str]]:
    overall = "".join(f"    {line}\n" for line in lines)
    text = f"{HEAD}{overall}  dough\n    everything else\n    mix slow 4 min\n    divide\n    bake 40 min at 220 C\n"
    bakery = bakery_of(text)
    portions = bakery.formulas[0].stages[-1].portions
    return [[portion.name for portion in turn] for turn in order_of_adding(portions)]


def test_liquids_come_first_and_salt_and_fat_last() -> None:
    lines = "white flour 100%", "salt 2%", "butter 10%", "sugar 8%", "instant yeast 1%", "eggs 20%", "milk 40%"
    assert order(*lines) == [["eggs", "milk"], ["white flour", "sugar", "instant yeast"], ["salt", "butter"]]


def test_what_pours_is_told_by_its_water() -> None:
    found = order("white flour 100%", "water 60%", "honey 5%", "milk powder 3%", "salt 2%")
    assert found == [["water", "honey"], ["white flour", "milk powder"], ["salt"]]


def test_what_is_taken_as_flour_is_dry() -> None:
    assert order("white flour 95%", "potato flakes 5%, counted as flour", "water 65%")[1] == [
        "white flour",
        "potato flakes",
    ]


def test_nothing_is_said_of_what_is_not_there() -> None:
    assert order("white flour 100%", "water 60%") == [["water"], ["white flour"]]
