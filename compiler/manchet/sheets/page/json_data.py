"""A view as JSON: the same text as on the page, for other programs, in the shape of `sheet.schema.json`."""

from __future__ import annotations

from typing import Any

SHAPE = "manchet sheet 2"
"""The name and version of the shape. A field may be added under the same version; none is taken away or given another meaning."""


def data_of(view: Any) -> dict[str, Any]:
    """The view as plain lists, mappings and text."""
    return {"schema": SHAPE, **_plain(view)}


def json_of(view: Any) -> str:
    """The view as JSON text, with a line end: the same view always gives the same bytes."""
    import json

    return json.dumps(data_of(view), ensure_ascii=False, indent=2, sort_keys=False) + "\n"


def _plain(value: Any) -> Any:
    if hasattr(value, "_asdict"):
        return {name: _plain(part) for name, part in value._asdict().items()}
    if isinstance(value, tuple):
        return [_plain(part) for part in value]
    return value
