"""What a sheet says beside a mix."""

from __future__ import annotations

import pytest
from loaves import POOLISH_LOAF, vary
from sheets.work import lines_of, sheet

from manchet.sheets.forms.prep_sheet.view import PrepSheet

LOAF = vary(
    POOLISH_LOAF,
    kind="{kind}",
    makes="{number} loaves at 800 g dough",
    mix_slow="{slow}\n    mix fast {fast} min to 25 C",
).replace(" 68%", " {water}%")
SPIRAL = """
kitchen House
  air           21 C
  mixer spiral
    takes       6-45 kg dough
    slow        100 turns a minute
    fast        200 turns a minute
"""


def said(kitchen: str = SPIRAL, **change: object) -> list[str]:
    values = {"kind": "hearth loaf", "number": 20, "water": 68, "slow": "4 min", "fast": 5} | change
    return notes(sheet(LOAF.format(**values) + kitchen))


def notes(page: PrepSheet) -> list[str]:
    return [note.replace("\N{NO-BREAK SPACE}", " ") for line in lines_of(page) for note in line.notes]


def test_the_order_of_the_bowl_is_said_once_and_of_the_dough_alone() -> None:
    assert said() == ["order: water, poolish, then white flour, instant yeast, then salt"]


@pytest.mark.parametrize(("kind", "fast", "warned"), [("hearth loaf", 7, False), ("hearth loaf", 8, True), ("soft", 14, True),
                                                     ("hearth loaf", 20, False)])  # fmt: skip
def test_an_intensive_mix_says_where_there_is_no_way_back(kind: str, fast: int, warned: bool) -> None:
    """8 to 15 min fast is an intensive mix: DiMuzio, Bread Baking, 2010. Past the most, the check speaks."""
    assert any("stays so" in note for note in said(kind=kind, fast=fast)) is warned


def test_turns_are_minutes_on_a_mixer_that_says_how_fast_it_turns() -> None:
    """Slow-speed doughs want 700 to 800 turns: King Arthur Flour; Hamelman, Bread."""
    assert "about 7 min 30 s on spiral" in said(slow="750 turns")
    assert not any("on spiral" in note for note in said(SPIRAL.replace("    slow        100 turns a minute\n", "")))


def test_a_house_without_a_mixer_is_told_the_way_by_hand() -> None:
    by_hand = [note for note in said("\nkitchen House\n  air 21 C\n") if note.startswith("without a mixer")]
    assert "rest covered 20 min" in by_hand[0]
    assert "knead by hand 10–14 min" in by_hand[1]


def test_too_little_for_the_mixer_is_told_the_way_by_hand() -> None:
    assert any(note.startswith("without a mixer") for note in said(number=3))
    assert not any(note.startswith("without a mixer") for note in said())


def test_nobody_is_told_who_has_described_no_kitchen() -> None:
    assert not any(note.startswith("without a mixer") for note in said(""))


def heads(page: PrepSheet) -> list[str]:
    return list(page.lines)


def test_a_stiff_dough_says_why_it_is_split() -> None:
    values = {"kind": "hearth loaf", "number": 50, "slow": "8 min", "fast": 3}
    stiff = heads(sheet(LOAF.format(water=54, **values) + SPIRAL))
    assert "2 mixes, 20 kg dough each" in [value.replace("\N{NO-BREAK SPACE}", " ") for value in stiff]
    assert any("this stiff" in value for value in stiff)
    assert not any("this stiff" in value for value in heads(sheet(LOAF.format(water=66, **values) + SPIRAL)))
