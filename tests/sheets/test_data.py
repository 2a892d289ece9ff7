"""The sheet as data fits its published shape, and holds the same text as the page."""

from __future__ import annotations

import json
from typing import Any

import jsonschema
import pytest
from sheets import samples, samples_card

from manchet.sheets.data import data_of, json_of, schema

VIEWS = [samples.ebb_rye(), samples_card.night_card()]


@pytest.mark.parametrize("view", VIEWS, ids=["sheet", "card"])
def test_the_data_fits_the_schema(view: Any) -> None:
    jsonschema.Draft202012Validator.check_schema(schema())
    jsonschema.validate(json.loads(json_of(view)), schema(), cls=jsonschema.Draft202012Validator)


@pytest.mark.parametrize("view", VIEWS, ids=["sheet", "card"])
def test_the_schema_refuses_what_is_not_a_sheet(view: Any) -> None:
    whole = data_of(view)
    for broken in ({**whole, "title": 3}, {**whole, "more": ""}, {k: v for k, v in whole.items() if k != "running"}):
        with pytest.raises(jsonschema.ValidationError):
            jsonschema.validate(broken, schema())


def test_same_view_same_text() -> None:
    assert json_of(samples.ebb_rye()) == json_of(samples.ebb_rye())
