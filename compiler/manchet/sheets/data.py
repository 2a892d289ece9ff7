"""A view as JSON: the same text as on the page, for other programs, in the shape of `sheet.schema.json`."""

from __future__ import annotations

from typing import Any

from manchet.sheets.handout_values import Handout
from manchet.sheets.oven_card_values import OvenCard
from manchet.sheets.views import Sheet

VERSION = "1"
"""Of the shape. A field may be added under the same version; none is taken away or given another meaning."""


def data_of(view: Sheet | Handout | OvenCard) -> dict[str, Any]:
    """The view as plain lists, mappings and text."""
    return {"schema": f"manchet sheet {VERSION}", **_plain(view)}


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
