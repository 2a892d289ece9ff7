"""What two forms say of one thing in one work is one figure: weights, times, temperatures."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import datetime
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings, strategies as st
from sheets.card_text import clauses_of
from weighing.test_tubs import text
from works import bakery_of, first_work, works

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work, work_of
from manchet.sheets.form import HomeWork
from manchet.sheets.forms.class_set.class_set import class_set
from manchet.sheets.forms.handout.handout import handout
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.when import When

RECIPES = Path(__file__).parents[2] / "recipes"
READY = When(datetime(2026, 11, 28, 7, 0), True)
METRIC = House()
OF_THE_OVEN = ("heat the oven", "light the oven", "fire out", "damper open")
"""Jobs that no step of a sheet says: the fire, and the clock of a damper."""

FIGURE = re.compile(r"[\d,.–½¼¾]+\N{NO-BREAK SPACE}?(?:°C|min|h|s)\b")


def demo() -> tuple[Work, ...]:
    found = works(bakery_of("\n".join(file.read_text(encoding="utf-8") for file in sorted(RECIPES.rglob("*.bake")))))
    assert len(found) >= 20
    return found


def of_type(view: object, name: str) -> Iterator[Any]:
    """All values of one type in a view, in its order."""
    if type(view).__name__ == name:
        yield view
    elif isinstance(view, tuple):
        for part in view:
            yield from of_type(part, name)


def weights(rows: tuple[Any, ...]) -> list[tuple[str, str, str]]:
    """By name; water with the ice in it, as handout and card have it."""
    return sorted((row.name, *_whole(row)) for row in rows)


def _whole(row: Any) -> tuple[str, str]:
    figure, _, unit = getattr(row, "whole", "").rpartition("\N{NO-BREAK SPACE}")
    return (figure, unit) if figure else (row.weight, row.unit)


def differing_weights(work: Work) -> list[str]:
    """Where sheet and handout disagree on a weight of one stage, or on what a step adds; and what the class set weighs."""
    sheet, home = prep_sheet(work, Issue(), METRIC), handout(HomeWork(work), Issue(), METRIC, {})
    assert len(sheet.blocks) == len(home.stages)
    added = {method.title: weights(tuple(of_type(method, "HomeRow"))) for method in home.method}
    classroom = {stage.title: weights(stage.rows) for stage in class_set(HomeWork(work), Issue(), METRIC, 1).stages}
    found = []
    for block, stage in zip(sheet.blocks, home.stages, strict=True):
        rows = (*block.rows, *block.aside)
        done = block.parts if block is not sheet.blocks[-1] else (block.parts, sheet.bench)
        there = classroom.get(stage.title, [])
        mine = {row[1:] for row in weights(rows)}
        for what, one, other in (
            ("rows", weights(rows), weights(stage.rows)),
            ("added", weights(tuple(of_type(done, "WeighRow"))), added.get(stage.title, [])),
            ("class set", [], [row for row in there if row[1:] not in mine]),
        ):
            if one != other:
                found.append(f"{work.formula.name}, {block.title}, {what}: {one} and {other}")
    return found


def test_sheet_and_handout_of_the_demo_weigh_the_same() -> None:
    assert [line for work in demo() for line in differing_weights(work)] == []


@given(
    grams=st.integers(400, 1200), share=st.integers(10, 60), reads=st.sampled_from((1, 2, 5)), pieces=st.integers(1, 40)
)
@settings(max_examples=25, deadline=None)
def test_sheet_and_handout_of_any_amount_weigh_the_same(grams: int, share: int, reads: int, pieces: int) -> None:
    work = first_work(text(grams, share, reads), Order(pieces=((Fraction(pieces), "loaves"),)))
    assert differing_weights(work) == []


@pytest.mark.parametrize("grams", [901, 905, 909, 913])
def test_the_poolish_that_weighed_a_gram_more_at_home(grams: int) -> None:
    assert differing_weights(first_work(text(grams), AS_WRITTEN)) == []


def words_in(view: object) -> Iterator[str]:
    if isinstance(view, str):
        yield view
    elif isinstance(view, tuple):
        for part in view:
            yield from words_in(part)


@pytest.mark.parametrize("house", [METRIC, House("Letter", "US", "F", "American")], ids=["metric", "US"])
def test_sheet_and_card_of_the_demo_say_the_same_times_and_temperatures(house: House) -> None:
    """Every time and temperature of a step that the card names stands in the steps of the sheet too."""
    found, looked_at = [], 0
    for work in demo():
        sheet, card = prep_sheet(work, Issue(), house), timing_card(work, READY, Issue(), house)
        said = " ".join(words_in((*(block.parts for block in sheet.blocks), sheet.bench)))
        for clause in clauses_of(card):
            of_the_file = (
                [] if clause.do.lower().startswith(OF_THE_OVEN) else FIGURE.findall(f"{clause.do} {clause.how}")
            )
            looked_at += len(of_the_file)
            found += [f"{work.formula.name}: {clause.do}: {figure!r}" for figure in of_the_file if figure not in said]
    assert found == []
    assert looked_at >= 200


@pytest.mark.parametrize("house", [METRIC, House("Letter", "US", "F", "American")], ids=["metric", "US"])
@pytest.mark.parametrize("pieces", [1, 12])
def test_sheet_and_card_of_the_demo_weigh_the_same(house: House, pieces: int) -> None:
    """Every weight on the card, into a bowl or at a step, is a weight of the sheet, by name, figure and unit."""
    found, looked_at = [], 0
    for written in demo():
        order = Order(pieces=tuple((piece.number * pieces, piece.noun) for piece in written.batch.pieces))
        work = work_of(written.formula, order, written.kitchen, written.larder).value or written
        sheet, card = prep_sheet(work, Issue(), house), timing_card(work, READY, Issue(), house)
        rows = set(weights(tuple(of_type(sheet, "WeighRow"))))
        said = " ".join(words_in(sheet))
        for weight in of_type(card, "CardWeight"):
            if not weight.weight or weight.number:
                continue
            looked_at += 1
            same = (weight.name, weight.weight, weight.unit) in rows
            goes_back = f"{weight.weight}\N{NO-BREAK SPACE}{weight.unit} {weight.name}" in said
            found += [] if same or goes_back else [f"{work.formula.name}: {weight}"]
    assert found == []
    assert looked_at >= 150


def test_what_goes_back_to_the_pot_is_one_figure_on_sheet_and_card() -> None:
    told = 0
    for work in demo():
        sheet, card = prep_sheet(work, Issue(), METRIC), timing_card(work, READY, Issue(), METRIC)
        back = {handed.weight for block in sheet.blocks if block.tub for handed in block.tub.back}
        told += len(back)
        assert all(any(amount in line for line in card.before) for amount in back), (
            work.formula.name,
            back,
            card.before,
        )
    assert told >= 4
