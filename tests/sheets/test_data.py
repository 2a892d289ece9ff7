"""Every form as data: it fits the published shape, and holds the same text as the page."""

from __future__ import annotations

import json
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages
from typing import Any

import jsonschema
import pytest
from sheets import samples, samples_card, test_handout, test_house_card, test_oven_card

import manchet.sheets
from manchet.cli.main import command
from manchet.sheets.data import VIEWS, data_of, json_of, schema

SAMPLES = (
    samples.ebb_rye(),
    samples_card.night_card(),
    test_house_card.card(test_house_card.kitchen("gas")),
    test_oven_card.card(),
    test_handout.taken(),
)
SCHEMA = jsonschema.Draft202012Validator(schema())


def views_on_disk() -> set[type]:
    """Every type of a page that there is: a named tuple that says which form it is."""
    modules = [import_module(one.name) for one in walk_packages(manchet.sheets.__path__, "manchet.sheets.")]
    types = {found for module in modules for found in vars(module).values() if isinstance(found, type)}
    return {found for found in types if issubclass(found, tuple) and "form" in getattr(found, "_fields", ())}


def test_every_form_is_published_and_has_a_sample() -> None:
    assert views_on_disk() == set(VIEWS) == {type(view) for view in SAMPLES}


@pytest.mark.parametrize("view", SAMPLES, ids=lambda view: view.form)
def test_the_data_fits_the_schema(view: Any) -> None:
    SCHEMA.check_schema(schema())
    SCHEMA.validate(json.loads(json_of(view)))


@pytest.mark.parametrize("view", SAMPLES, ids=lambda view: view.form)
def test_the_schema_refuses_what_is_not_this_form(view: Any) -> None:
    whole = data_of(view)
    another = next(other.form for other in SAMPLES if other.form != view.form)
    lacking = {name: value for name, value in whole.items() if name != "running"}
    for broken in ({**whole, "title": 3}, {**whole, "more": ""}, {**whole, "form": another}, lacking):
        with pytest.raises(jsonschema.ValidationError):
            SCHEMA.validate(broken)


def test_the_whole_demo_bakery_fits_the_schema(tmp_path: Path) -> None:
    recipes = str(Path(__file__).parents[2] / "recipes")
    assert command(["build", recipes, "--only", "sheet,card,house,oven,handout,json", "--output", str(tmp_path)]) == 0
    pages = [json.loads(file.read_text(encoding="utf-8")) for file in tmp_path.iterdir()]
    assert {page["form"] for page in pages} == {view.form for view in SAMPLES}
    assert [error.message for page in pages for error in SCHEMA.iter_errors(page)] == []


def test_same_view_same_text() -> None:
    assert json_of(samples.ebb_rye()) == json_of(samples.ebb_rye())
