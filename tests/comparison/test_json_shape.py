"""`compare --format json` is what its schema says: every sort of change there is, told and as data."""

from __future__ import annotations

import json
from importlib.resources import files
from typing import Any, get_args

import jsonschema
from comparison.breads import compared, edited
from comparison.every_change import EVERY_CHANGE
from comparison.test_twelve_edits import TWELVE
from every import every

from manchet.cli.compare import json_text
from manchet.comparison.values import Change
from manchet.sheets.comparison.page import compared_bread
from manchet.sheets.page.house import House

SCHEMA = json.loads(files("manchet.comparison").joinpath("comparison.schema.json").read_text("utf-8"))
SIDES = ("HEAD~2", "working copy")

PAIRS = [
    *((bread, edited(bread, *edits)) for bread, edits, _ in TWELVE.values()),
    *((before, after) for before, after, _ in EVERY_CHANGE.values()),
]


def data_of(before: str, after: str) -> dict[str, Any]:
    comparison = compared(before, after)
    bread = compared_bread(comparison, SIDES, House(), everything=True)
    found: dict[str, Any] = json.loads(json_text(SIDES, [(bread, comparison)], 3))
    return found


@every(PAIRS, at_least=30)
def test_it_is_what_the_schema_says(before: str, after: str) -> None:
    jsonschema.Draft202012Validator(SCHEMA).validate(data_of(before, after))
    jsonschema.Draft202012Validator(SCHEMA).validate(data_of(after, before))


def test_the_schema_is_one() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


def test_every_sort_of_change_is_tried() -> None:
    tried = {type(change) for before, after in PAIRS for change in compared(before, after).changes}
    assert {kind.__name__ for kind in get_args(Change)} == {kind.__name__ for kind in tried}
