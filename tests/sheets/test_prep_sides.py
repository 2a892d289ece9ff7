"""How many sides of paper a prep sheet takes, and what stands on them: a leaf at most, on both papers and in both units."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from run_length import at_length, turn_of
from works import bakery_of, first_work, work_in, works

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work
from manchet.sheets.forms.prep_sheet import FORM, LAYOUTS
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.layouts import LaidOut, fewest_sides
from manchet.sheets.page.pdf import NoPdf, engine, typesetter
from manchet.sheets.registry import html_of
from manchet.workspace.bakery import Bakery

RECIPES = Path(__file__).parents[2] / "recipes"
QUIET = Path(__file__).parents[1] / "corpus" / "quiet"
METRIC, US = House(), House("Letter", "US", "F", "American")
POINT = 4 / 3
"""Pixels of the type engine."""

SIDES = {
    "Causeway": (2, 2),
    "Copper wreath": (2, 2),
    "Ebb rye": (2, 2),
    "Gangway loaf": (1, 2),
    "Hawser knots": (1, 2),
    "Lamplight tin": (2, 2),
    "Lock-keeper's white": (2, 2),
    "Lock-keeper's white, dried yeast": (2, 2),
    "Mist buns": (1, 1),
    "Mooring rings": (2, 2),
    "Mudlark": (2, 2),
    "Pilot rye": (2, 2),
    "Regatta plait": (2, 2),
    "Slate bread": (1, 1),
    "Tern loaf": (2, 2),
    "Tidemark crisp": (1, 1),
    "Wherry cakes": (1, 1),
    "Landing cakes": (1, 1),
    "Lantern buns": (2, 2),
    "Night loaf": (1, 2),
}
"""The demo by name: sides on A4 in grams, and on Letter in pounds."""


@cache
def bakery() -> Bakery:
    return bakery_of("\n".join(file.read_text(encoding="utf-8") for file in sorted(RECIPES.rglob("*.bake"))))


def demo(name: str, order: Order = AS_WRITTEN) -> Work:
    return work_in(bakery(), next(one for one in bakery().formulas if one.name == name), order)


@cache
def laid(work: Work, house: House) -> LaidOut:
    started = engine()
    assert not isinstance(started, NoPdf)
    html = html_of(prep_sheet(work, Issue("Sat 28 Nov 2026", "x.bake", "4f2a91c", "9b1e07d4"), house))
    return fewest_sides(LAYOUTS, typesetter(html, started))


@cache
def of_the_demo() -> dict[str, tuple[LaidOut, LaidOut]]:
    """In a short run every other one."""
    sheets = [work for work in works(bakery()) if FORM.prints(work.formula, named=False)]
    return {work.formula.name: (laid(work, METRIC), laid(work, US)) for work in sheets[:: at_length(1, 2)]}


def test_the_demo_takes_as_many_sides_as_the_table_says() -> None:
    found = {name: (a4.sides, letter.sides) for name, (a4, letter) in of_the_demo().items()}
    assert len(found) >= at_length(15, 10)
    assert found == {name: SIDES[name] for name in found}


def test_the_table_keeps_the_budget() -> None:
    """A leaf for every bread; on A4 a side and a half for each on average, on Letter in pounds and ounces a little more."""
    a4, letter = zip(*SIDES.values(), strict=True)
    assert max(a4) == max(letter) == 2
    assert sum(a4) <= len(SIDES) * 1.6 and sum(letter) <= len(SIDES) * 1.8


@pytest.mark.parametrize(("number", "mixes"), [(150, 3), (200, 4)])
@pytest.mark.parametrize("house", [METRIC, US], ids=["A4", "Letter"])
def test_several_mixes_are_a_leaf_too(number: int, mixes: int, house: House) -> None:
    work = demo("Tern loaf", Order(pieces=((Fraction(number), "loaves"),)))
    assert work.mixes.number == mixes
    assert laid(work, house).sides == 2


def test_a_sound_formula_of_any_school_is_a_leaf() -> None:
    """Each in one house, in turn; in a short run every sixth of them."""
    found = {}
    for house in (METRIC, US):
        for file in turn_of(house, (METRIC, US), sorted(QUIET.glob("*.bake")))[:: at_length(1, 6)]:
            for work in works(bakery_of(file.read_text(encoding="utf-8"))):
                found[f"{file.stem}: {work.formula.name}"] = laid.__wrapped__(work, house).sides
    assert len(found) >= 10
    assert {name: sides for name, sides in found.items() if sides > 2} == {}


def texts(laid_out: LaidOut) -> Iterator[tuple[Any, Any]]:
    """Every text with the side it stands on."""
    for side in laid_out.document.pages:
        yield from ((side._page_box, box) for box in side._page_box.descendants() if hasattr(box, "text"))


def test_nothing_is_smaller_than_eight_points_and_weights_are_sixteen() -> None:
    for name, both in of_the_demo().items():
        for one in both:
            sizes = {round(box.style["font_size"] / POINT, 2) for _, box in texts(one)}
            assert min(sizes) >= 8, name
            weights = [box for _, box in texts(one) if box.element is not None and box.element.get("class") == "weight"]
            assert {round(box.style["font_size"] / POINT) for box in weights} <= {16}, name


def test_everything_stands_on_its_paper() -> None:
    """No line runs out of the margins, and none of the work into the foot."""
    for name, both in of_the_demo().items():
        for one in both:
            for side in one.document.pages:
                page = side._page_box
                right, foot = page.content_box_x() + page.width, page.content_box_y() + page.height
                work = next(box for box in page.children if box.element_tag == "html")
                for box in (box for box in work.descendants() if hasattr(box, "text")):
                    assert box.position_x + box.width <= right + 1, (name, box.text)
                    assert box.position_y + box.height <= foot + 1, (name, box.text)


STAGES = "\n".join(
    f"""  soaker seeds {n}
    rye flakes           {100 + n} g
    linseed               80 g
    sunflower seeds       80 g
    rolled oats           60 g
    sesame                40 g
    pumpkin seeds         40 g
    water                300 g
    mix by hand 2 min
    soak covered 8 h at 20 C
"""
    for n in range(1, 10)
)
USED = "\n".join(f"    seeds {n}" for n in range(1, 10))


def test_what_no_leaf_holds_is_made_before_on_a_leaf_of_its_own() -> None:
    text = f"""formula Nine soakers
  kind hearth loaf
  makes 10 loaves at 1200 g dough
{STAGES}
  dough
    white flour         4000 g
    water               1500 g
    salt                  90 g
    fresh yeast           60 g
{USED}
    mix by hand 10 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove 60 min at 26 C
    bake 45 min at 230 C
"""
    one = laid(first_work(text), METRIC)
    assert one.classes.startswith("apart")
    sides = ["".join(box.text for _, box in texts(one) if _ is side._page_box) for side in one.document.pages]
    dough = next(n for n, said in enumerate(sides) if "10 dough" in said)
    assert dough % 2 == 0, "a leaf of its own begins on a front"
    assert "Nine soakers, made before" in sides[0] and not any("seeds 1 " in said for said in sides[dough + 1 :])
