"""The JSON Schema of all forms, as it is published in `sheet.schema.json`."""

from __future__ import annotations

import json
from importlib.resources import files
from typing import Any

from manchet.sheets.page.json_data import SHAPE
from manchet.sheets.page.schema import schema_of
from manchet.sheets.page.words import words_of
from manchet.sheets.registry import FORMS


def schema() -> dict[str, Any]:
    """The published JSON Schema (draft 2020-12)."""
    read: dict[str, Any] = json.loads(files("manchet.sheets").joinpath("sheet.schema.json").read_text("utf-8"))
    return read


def schema_text() -> str:
    """The same, made from the types of the views."""
    names = ", ".join(words_of("")[f"forms.{form.name}"] for form in FORMS)
    says = f"One printed form ({names}): every figure is text in the house's units and words."
    made = schema_of([form.view for form in FORMS], SHAPE, says)
    return json.dumps(made, ensure_ascii=False, indent=2) + "\n"
