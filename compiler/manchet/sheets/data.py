"""A view as JSON: the same text as on the page, for other programs, in the shape of `sheet.schema.json`."""

from __future__ import annotations

from typing import Any

from manchet.sheets.handout_values import Handout
from manchet.sheets.oven_card_values import OvenCard
from manchet.sheets.views import HouseCard, PrepSheet, Sheet, TimingCard

SHAPE = "manchet sheet 1"
"""The name and version of the shape. A field may be added under the same version; none is taken away or given another meaning."""

VIEWS = (PrepSheet, TimingCard, HouseCard, OvenCard, Handout)
"""All that is published: the schema is made from these."""


def data_of(view: Sheet | Handout | OvenCard) -> dict[str, Any]:
    """The view as plain lists, mappings and text."""
    return {"schema": SHAPE, **_plain(view)}


def json_of(view: Sheet | Handout | OvenCard) -> str:
    """The view as JSON text, with a line end: the same view always gives the same bytes."""
    import json

    return json.dumps(data_of(view), ensure_ascii=False, indent=2, sort_keys=False) + "\n"


def _plain(value: Any) -> Any:
    if hasattr(value, "_asdict"):
        return {name: _plain(part) for name, part in value._asdict().items()}
    if isinstance(value, tuple):
        return [_plain(part) for part in value]
    return value


def schema() -> dict[str, Any]:
    """The published JSON Schema (draft 2020-12)."""
    import json
    from importlib.resources import files

    read: dict[str, Any] = json.loads(files("manchet.sheets").joinpath("sheet.schema.json").read_text("utf-8"))
    return read


def schema_text() -> str:
    """The same, made from the types of the views."""
    import json

    from manchet.sheets.schema import schema_of

    made = schema_of(
        VIEWS,
        SHAPE,
        "A prep sheet, a timing card, a posted card, an oven card or a handout as printed: every figure is text in the "
        "house's units and words.",
    )
    return json.dumps(made, ensure_ascii=False, indent=2) + "\n"
