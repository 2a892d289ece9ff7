"""The timing card on its paper: how many sides, how small the type, that nothing sticks out, and how it is tagged."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime
from fractions import Fraction
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from loaves import PLAIN_LOAF, POOLISH_LOAF, vary
from pypdf import PdfReader
from run_length import IS_LONG, turn_of
from sheets.each_form import demo
from sheets.paper import placed
from sheets.samples_card import night_card
from works import bakery_of, first_work, work_in

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work
from manchet.sheets.forms.timing_card import FORM
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.layouts import LaidOut, fewest_sides
from manchet.sheets.page.pdf import NoPdf, Pdf, engine, pdf_of, typesetter
from manchet.sheets.registry import html_of
from manchet.timing.when import When

SIX = When(datetime(2026, 11, 29, 6, 0), False)
CORPUS = Path(__file__).parents[1] / "corpus" / "quiet"
ISSUE = Issue("Sun 29 Nov 2026", "breads/tern-loaf.bake", "commit 4f2a91c", "9b1e07d4", "14 Nov 2026")
HOUSES = {
    "A4": House(),
    "A4, US": House("A4", "US", "F", "American"),
    "Letter": House("Letter"),
    "Letter, US": House("Letter", "US", "F", "American"),
}


GOLDEN = Path(__file__).parent / "golden"
TRIED = HOUSES if IS_LONG else {name: HOUSES[name] for name in ("A4", "Letter, US")}


def works(house: House) -> Iterator[Work]:
    """The demo's breads; in a long run the sound formulas of every school too, each in one house in turn."""
    yield from (work_in(demo(), formula) for formula in demo().formulas if not formula.preparation)
    for case in turn_of(house, HOUSES.values(), sorted(CORPUS.glob("*.bake"))) if IS_LONG else ():
        bakery = bakery_of(case.read_text(encoding="utf-8"))
        yield from (work_in(bakery, formula) for formula in bakery.formulas)


def printed(work: Work, house: House) -> LaidOut:
    started = engine()
    assert not isinstance(started, NoPdf), started
    html = html_of(timing_card(work, SIX, ISSUE, house))
    return fewest_sides(FORM.layouts, typesetter(html, started))


def large(name: str, *pieces: tuple[int, str]) -> Work:
    formula = next(formula for formula in demo().formulas if formula.name == name)
    order = Order(pieces=tuple((Fraction(number), noun) for number, noun in pieces)) if pieces else AS_WRITTEN
    return work_in(demo(), formula, order)


@pytest.mark.parametrize("house", TRIED.values(), ids=TRIED.keys())
def test_one_side_for_nearly_all_and_never_more_than_two(house: House) -> None:
    sides = {work.formula.name: printed(work, house).sides for work in works(house)}
    assert len(sides) >= 20
    table = "\n".join(f"{number}  {name}" for name, number in sides.items() if number > 1)
    assert max(sides.values()) <= 2, table
    assert sum(number == 1 for number in sides.values()) >= 0.95 * len(sides), table


LARGE = {
    "Tern loaf": ((200, "loaves"),),
    "Causeway": ((100, "loaves"), (100, "rolls")),
    "Pilot rye": ((100, "loaves"),),
}


@pytest.mark.parametrize("name", LARGE)
def test_many_mixes_take_two_sides_at_most(name: str) -> None:
    work = large(name, *LARGE[name])
    assert work.mixes.number >= 3
    assert printed(work, HOUSES["Letter, US"]).sides <= 2


@pytest.mark.parametrize("house", TRIED.values(), ids=TRIED.keys())
def test_nothing_is_smaller_than_eight_points_and_nothing_sticks_out(house: House) -> None:
    tried = (large("Tern loaf"), large("Causeway"), large("Tern loaf", (200, "loaves")))
    for work in tried:
        for side in printed(work, house).document.pages:
            page = side._page_box
            ends = page.position_x + page.margin_width() - page.margin_right
            for box in page.descendants():
                if hasattr(box, "text") and box.text.strip():
                    assert box.style["font_size"] >= 8 * 96 / 72 - 0.01, box.text
                    assert box.position_x + box.width <= ends + 1, f"{work.formula.name}: {box.text}"


def test_a_strip_is_lettered_to_eight_points() -> None:
    """Its letters are 9 units, and it is as wide as the room on A4, 189 mm, which is the narrower."""
    strip = timing_card(large("Tern loaf"), SIX, ISSUE, House()).strip
    assert strip is not None
    units = float(strip.svg.split('viewBox="')[1].split('"')[0].split()[2])
    sizes = {float(part.split('"')[0]) for part in strip.svg.split('font-size="')[1:]}
    assert min(sizes) * 189 / units / 25.4 * 72 >= 8


def test_a_second_side_begins_with_a_day() -> None:
    work = large("Causeway", *LARGE["Causeway"])
    html = html_of(timing_card(work, SIX, ISSUE, House("Letter", "US", "F", "American")))
    made = pdf_of(html, FORM.layouts)
    assert isinstance(made, Pdf) and made.sides == 2
    second = PdfReader(BytesIO(made.content)).pages[1].extract_text()
    assert "Monday 30 Nov" in second and "Sunday 29 Nov" not in second


NIGHT = first_work(POOLISH_LOAF)
MIXES = first_work(
    vary(PLAIN_LOAF, makes="60 loaves at 900 g dough", prove="covered 10-14 h at 4 C\n      may wait 4 h")
    + "kitchen House\n  mixer spiral\n    takes 1-45 kg dough\n  oven mother\n    heat wood\n    heats in 2 h\n"
    "    holds 24 loaves\n    recovers 4 min\n"
)


@pytest.mark.parametrize(("name", "work"), [("night", NIGHT), ("mixes", MIXES)], ids=["night", "mixes"])
@pytest.mark.parametrize("house", [HOUSES["A4"], HOUSES["Letter, US"]], ids=["A4", "Letter"])
def test_text_and_boxes_of_each_page(golden: Callable[[Path, str], None], house: House, name: str, work: Work) -> None:
    sides = [placed(side._page_box) for side in printed(work, house).document.pages]
    golden(GOLDEN / f"card-{name}-{house.paper}.txt", "\n\n".join(sides) + "\n")


# ---- for whoever cannot see it -------------------------------------------------------------------


def elements(node: Any) -> Iterator[Any]:
    """Every element of a tree of tags, in its order."""
    node = node.get_object()
    if "/S" in node:
        yield node
    kids = node.get("/K", [])
    for kid in kids if isinstance(kids, list) else [kids]:
        kid = kid.get_object()
        if hasattr(kid, "get") and ("/K" in kid or "/S" in kid):
            yield from elements(kid)


def test_the_tags_name_the_heads_of_every_cell() -> None:
    made = pdf_of(html_of(night_card()), FORM.layouts)
    assert isinstance(made, Pdf)
    found = list(elements(PdfReader(BytesIO(made.content)).trailer["/Root"]["/StructTreeRoot"]))
    kinds = [str(one["/S"]) for one in found]
    assert kinds.count("/H1") == 1 and kinds.count("/H2") >= 4 and "/Figure" in kinds and "/LI" in kinds
    ids = {str(one["/ID"]) for one in found if one["/S"] == "/TH" and "/ID" in one}
    cells = [one for one in found if one["/S"] == "/TD"]
    assert len(cells) > 10
    for cell in cells:
        heads = [str(head) for head in cell["/A"]["/Headers"]]
        assert heads and set(heads) <= ids


def test_every_head_of_a_table_says_what_it_heads() -> None:
    page = html_of(night_card())
    heads = page.split("<th")[1:]
    heads = [head for head in heads if head[:1] == " " or head[:1] == ">"]
    assert len(heads) > 12
    assert all('scope="' in head.split(">")[0] for head in heads)
    boxes = page.count('type="checkbox"')
    assert boxes == page.count("<label>") >= 7, "each box stands in the label of what it ticks"
