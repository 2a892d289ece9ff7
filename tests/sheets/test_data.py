"""A page as data: the whole demo bakery fits the published shape, and the same view is the same text."""

from __future__ import annotations

import json
from pathlib import Path

import jsonschema
from sheets import samples, samples_card
from sheets.each_form import RECIPES

from manchet.cli.main import command
from manchet.sheets.page.json_data import json_of
from manchet.sheets.published import schema
from manchet.workspace.print_options import BUILT

SCHEMA = jsonschema.Draft202012Validator(schema())


def test_views_made_by_hand_fit_the_schema() -> None:
    SCHEMA.check_schema(schema())
    for view in (samples.ebb_rye(), samples_card.night_card()):
        SCHEMA.validate(json.loads(json_of(view)))


def test_the_whole_demo_bakery_fits_the_schema(tmp_path: Path) -> None:
    only = ",".join((*(form.name for form in BUILT), "json"))
    assert command(["build", str(RECIPES), "--only", only, "--output", str(tmp_path)]) == 0
    pages = [json.loads(file.read_text(encoding="utf-8")) for file in tmp_path.iterdir()]
    assert {page["form"] for page in pages} == {form.name for form in BUILT}
    assert [error.message for page in pages for error in SCHEMA.iter_errors(page)] == []


def test_same_view_same_text() -> None:
    assert json_of(samples.ebb_rye()) == json_of(samples.ebb_rye())
