"""Where two forms of one work disagree: weights by name, figure and unit, times and temperatures."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import datetime
from typing import Any

from sheets.card_text import clauses_of

from manchet.batch.work import Work
from manchet.sheets.form import HomeWork
from manchet.sheets.forms.class_set.class_set import class_set
from manchet.sheets.forms.handout.handout import handout
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.timing.when import When

READY = When(datetime(2026, 11, 28, 7, 0), True)
METRIC = House()
OF_THE_OVEN = ("heat the oven", "light the oven", "fire out", "damper open")
"""Jobs that no step of a sheet says: the fire, and the clock of a damper."""
FIGURE = re.compile(r"[\d,.–½¼¾]+\N{NO-BREAK SPACE}?(?:°C|min|h|s)\b")

Differing = tuple[list[str], int]
"""What differs, and how many figures were looked at."""


def of_type(view: object, name: str) -> Iterator[Any]:
    """All values of one type in a view, in its order."""
    if type(view).__name__ == name:
        yield view
    elif isinstance(view, tuple):
        for part in view:
            yield from of_type(part, name)


def words_in(view: object) -> Iterator[str]:
    if isinstance(view, str):
        yield view
    elif isinstance(view, tuple):
        for part in view:
            yield from words_in(part)


def weights(rows: tuple[Any, ...]) -> list[tuple[str, str, str]]:
    """By name; water with the ice in it, as handout and card have it."""
    return sorted((row.name, *whole_of(row)) for row in rows)


def whole_of(row: Any) -> tuple[str, str]:
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


def differing_times(work: Work, house: House) -> Differing:
    """The times and temperatures of a step that the card names and the steps of the sheet do not."""
    sheet, card = prep_sheet(work, Issue(), house), timing_card(work, READY, Issue(), house)
    said = " ".join(words_in((*(block.parts for block in sheet.blocks), sheet.bench)))
    found, looked_at = [], 0
    for clause in clauses_of(card):
        of_the_file = [] if clause.do.lower().startswith(OF_THE_OVEN) else FIGURE.findall(f"{clause.do} {clause.how}")
        looked_at += len(of_the_file)
        found += [f"{work.formula.name}: {clause.do}: {figure!r}" for figure in of_the_file if figure not in said]
    return found, looked_at


def differing_card_weights(work: Work, house: House) -> Differing:
    """The weights on the card, into a bowl or at a step, that are no weight of the sheet by name, figure and unit."""
    sheet, card = prep_sheet(work, Issue(), house), timing_card(work, READY, Issue(), house)
    there = tuple(of_type(sheet, "WeighRow"))
    rows = {*weights(there), *((row.name, row.weight, row.unit) for row in there if row.ice)}
    said = " ".join(words_in(sheet))
    found, looked_at = [], 0
    for weight in of_type(card, "CardWeight"):
        if not weight.weight or weight.number:
            continue
        looked_at += 1
        same = (weight.name, weight.weight, weight.unit) in rows
        goes_back = f"{weight.weight}\N{NO-BREAK SPACE}{weight.unit} {weight.name}" in said
        found += [] if same or goes_back else [f"{work.formula.name}: {weight}"]
    return found, looked_at
