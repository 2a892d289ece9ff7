"""`figures --format json` is what its schema says, for every formula of the demo and of the quiet corpus; and says what is done."""

from __future__ import annotations

import json
from importlib.resources import files
from pathlib import Path
from typing import Any

import jsonschema
from every import every
from loaves import LOAVES_AND_ROLLS, NUTTY_ROLLS
from works import first_work

from manchet.batch.work import Work
from manchet.cli.figures import json_text
from manchet.figures.derived import figures_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

ROOT = Path(__file__).parents[2]
SCHEMA = json.loads(files("manchet.figures").joinpath("figures.schema.json").read_text("utf-8"))


def works_of(*places: Path) -> list[Work]:
    bakery = read(SourceText(str(file), file.read_text("utf-8")) for file in places)
    return [work for formula in bakery.formulas for work in [bakery.work(formula).value] if work is not None]


def data_of(work: Work) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(json_text(figures_of(work), work))
    return found


EVERY = [
    *works_of(*sorted((ROOT / "recipes").rglob("*.bake"))),
    *(work for file in sorted((ROOT / "tests/corpus/quiet").glob("*.bake")) for work in works_of(file)),
]


@every(EVERY, at_least=100)
def test_it_is_what_the_schema_says(work: Work) -> None:
    jsonschema.Draft202012Validator(SCHEMA).validate(data_of(work))


def test_the_schema_is_one() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


def test_steps_pieces_allergens_and_hours() -> None:
    text = LOAVES_AND_ROLLS.replace(
        "    mix slow 8 min to 26 C\n",
        "    hold back salt\n    mix slow 4 min\n    add salt\n    mix fast 4 min to 26 C\n",
    ).replace(
        "      bake 40 min at 230 C to 97 C core, steam\n",
        "      bake 35-40 min at 250 C falling to 220 C in deck oven, steam\n",
    )
    found = data_of(first_work(text))
    (dough,) = found["stages"]
    assert dough["held_back"] == ["salt"]
    assert [step["verb"] for step in dough["steps"]] == ["mix", "add", "mix", "ferment", "divide"]
    assert dough["steps"][1]["moves"] == [{"name": "salt"}]
    assert dough["steps"][2]["reaches"][0]["low"] == {"exact": "26", "rounded": 26, "unit": "C"}
    loaves = found["branches"][0]
    bake = next(step for step in loaves["steps"] if step["verb"] == "bake")
    assert (bake["time"]["low"]["rounded"], bake["time"]["high"]["rounded"]) == (35 * 60, 40 * 60)
    assert bake["heats"][0]["low"]["rounded"] == 250
    assert (bake["ramp"]["way"], bake["ramp"]["low"]["rounded"]) == ("falling", 220)
    assert bake["where"] == {"preposition": "in", "place": "deck oven"}
    assert bake["events"] == [{"what": "steam", "after": {"exact": "0", "rounded": 0, "unit": "s"}}]
    assert [(piece["noun"], piece["number"]["rounded"]) for piece in found["pieces"]] == [("loaves", 10), ("rolls", 24)]
    assert [one["allergen"] for one in found["allergens"][0]["contains"]] == ["wheat"]
    assert 4 < found["hours"]["rounded"] < 9


def test_what_goes_into_one_sort_is_in_that_sort_alone() -> None:
    loaves, rolls = data_of(first_work(NUTTY_ROLLS))["allergens"]
    assert [one["allergen"] for one in loaves["contains"]] == ["wheat"]
    assert [(one["allergen"], one["because"]) for one in rolls["contains"]][1:] == [("hazelnut", ["hazelnuts"])]
