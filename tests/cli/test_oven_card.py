"""Which breads stand on the card at the oven: those the run is about, in its amounts, each in the kitchen it is made in."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF, vary

VARIANT = """
  variant wetter
    overall
      water               70%
"""
HOUSE = """\
kitchen {name}
  oven mother
    heat wood, falling
    holds 24 loaves
    falls 12 C an hour from 260 C
"""
NAMES = ("Plain loaf", "Brown loaf", "Soft loaf", "Late loaf", "Last loaf", "Long loaf", "Low loaf")


def loaf(name: str, water: str, heat: str) -> str:
    makes = "10 loaves at 900 g dough\n  bake loss 14%"
    return vary(PLAIN_LOAF, formula=name, makes=makes, water=water, mix="slow 5 min", bake=f"40 min at {heat}, lid on")


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[Path]:
    with scene(tmp_path, {}):
        Path("house.bake").write_text(HOUSE.format(name="House"))
        for at, name in enumerate(NAMES):
            text = loaf(name, "66%", f"{240 - 10 * at} C")
            Path(f"{name[:-5].lower()}.bake").write_text(text + (VARIANT if at == 0 else ""))
        yield tmp_path


def turns(*words: str, card: str = "house") -> list[tuple[str, str]]:
    ran = manchet(["build", "--jobs", "1", *words, "--only", "oven,json"])
    assert ran.status == 0, ran.err
    said = json.loads(Path(f"output/{card}.oven.json").read_text(encoding="utf-8"))
    return [(turn["name"], turn["load"]) for oven in said["ovens"] for turn in oven["loads"]]


@pytest.mark.parametrize("processes", ["1", "2"])
def test_all_breads_of_the_run_however_many_processes_make_them(processes: str) -> None:
    assert turns("--jobs", processes) == [(name, "10 loaves") for name in NAMES]


def test_a_run_for_some_of_them_and_a_variant_by_its_name() -> None:
    assert turns("Soft loaf", "Plain loaf") == [("Plain loaf", "10 loaves"), ("Soft loaf", "10 loaves")]
    assert turns("Plain loaf, wetter") == [("Plain loaf, wetter", "10 loaves")]


def test_the_amount_that_was_asked_for() -> None:
    assert turns("Plain loaf", "--pieces", "30") == [
        ("Plain loaf", "load 1 of 2, 24 loaves"),
        ("Plain loaf", "load 2 of 2, 6 loaves"),
    ]


def test_each_bread_at_the_oven_of_its_own_kitchen() -> None:
    Path("mill").mkdir()
    Path("mill/house.bake").write_text(HOUSE.format(name="Mill"))
    Path("mill/rye.bake").write_text(loaf("Mill loaf", "70%", "230 C"))
    assert turns(card="mill") == [("Mill loaf", "10 loaves")]
    assert len(turns()) == len(NAMES)


def test_a_bread_with_a_mistake_is_named_on_the_card() -> None:
    Path("soft.bake").write_text(loaf("Soft loaf", "66 g", "220 C"))
    assert manchet(["build", "--jobs", "1", "--only", "oven,json"]).status == 1
    said = json.loads(Path("output/house.oven.json").read_text(encoding="utf-8"))
    assert said["missing"] == "Left off, files with errors: Soft loaf."
    assert "Soft loaf" not in [turn["name"] for oven in said["ovens"] for turn in oven["loads"]]


def test_a_run_that_bakes_nothing_there_leaves_the_last_card() -> None:
    Path("mill").mkdir()
    Path("mill/house.bake").write_text(HOUSE.format(name="Mill"))
    Path("mill/rye.bake").write_text(loaf("Mill loaf", "70%", "230 C"))
    assert len(turns()) == len(NAMES)
    before = Path("output/house.oven.json").read_bytes()
    assert turns("Mill loaf", card="mill") == [("Mill loaf", "10 loaves")]
    assert Path("output/house.oven.json").read_bytes() == before
    Path("mill/rye.bake").write_text(loaf("Mill loaf", "70 g", "230 C"))
    assert manchet(["build", "Mill loaf", "--only", "oven,json"]).status == 1
    assert "Mill loaf" in Path("output/mill.oven.json").read_text()


def test_trace_counts_the_turns_of_the_card() -> None:
    """Six of seven stand on the card of all of them; each has the number there that its trace says."""
    turns()
    said = json.loads(Path("output/house.oven.json").read_text())
    numbers = {turn["name"]: turn["number"] for oven in said["ovens"] for turn in oven["loads"]}
    assert len(numbers) > 3
    for name, number in numbers.items():
        ran = manchet(["trace", name, "turn in mother"])
        first, rule, *rest = ran.out.splitlines()
        assert first.split() == ["turn", "in", "mother", number], ran
        assert f"of {len(NAMES)} things of the whole bakery" in rule
        assert sum("(the file)" in line for line in rest) == len(NAMES)
