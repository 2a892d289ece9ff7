"""`manchet figures` of a dish lists all that is on its plates, and not the bread alone."""

from __future__ import annotations

import json

from dishes.bread import ALL
from dishes.test_dishes import dish
from figures.test_json_shape import SCHEMA
from jsonschema import validate

from manchet.cli.figures import csv_text, json_text, text
from manchet.figures.derived import figures_of

UNWEIGHED = ALL.replace("  bake loss 13%\n", "")


def test_every_part_is_listed_from_the_bottom_up() -> None:
    """48 slices of 783 x 0.94 / 22 g are 1605.9 g; 24 plates of 6 g and of 40 g."""
    said = text(figures_of(dish(ALL)))
    lines = [line.split() for line in said.split("on the plates, in all\n")[1].split("\n\n")[0].splitlines()]
    assert lines == [
        ["Plain", "loaf", "1605.9", "g", "48", "slices"],
        ["butter", "144", "g"],
        ["bean", "paste", "960", "g"],
    ]
    assert "overall" not in said and "100 %" not in said and "weighed grams" not in said


def test_json_and_table_list_them_too() -> None:
    work = dish(ALL)
    report = json.loads(json_text(figures_of(work), work))
    validate(report, SCHEMA)
    assert [(part["name"], part["grams"]["rounded"]) for part in report["parts"][1:]] == [
        ("butter", 144),
        ("bean paste", 960),
    ]
    assert (report["parts"][0]["number"]["exact"], report["parts"][0]["unit"]) == ("48", "slices")
    assert [row.split(",")[1] for row in csv_text(figures_of(work)).splitlines()] == [
        "material",
        "Plain loaf",
        "butter",
        "bean paste",
    ]


def test_a_part_that_nobody_weighed_is_counted_alone() -> None:
    work = dish(UNWEIGHED)
    report = json.loads(json_text(figures_of(work), work))
    validate(report, SCHEMA)
    assert report["parts"][0]["grams"] is None and report["parts"][0]["number"]["exact"] == "48"
