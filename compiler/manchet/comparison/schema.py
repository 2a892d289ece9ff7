"""The JSON Schema of a comparison, read off the classes of its changes: as published in `comparison.schema.json`."""

from __future__ import annotations

import json
from collections.abc import Set
from enum import IntEnum
from fractions import Fraction
from types import NoneType, UnionType
from typing import Any, Literal, Union, get_args, get_origin, get_type_hints

from manchet.comparison.report import FORMAT, VERSION, kind_of
from manchet.comparison.values import Change, Rank
from manchet.formula.model import Step
from manchet.formula.ranges import Range

Schema = dict[str, Any]

_SHARED = ("exact", "quantity", "end", "range", "step")
"""Definitions that the schema of figures has too."""
_REFERS: dict[type, str] = {Fraction: "number", Range: "range", Step: "step"}
_PLAIN: dict[type, str] = {str: "string", int: "integer", bool: "boolean", NoneType: "null"}


def schema_text(figures_schema: str) -> str:
    """The whole schema, as text. `figures_schema` is the text of that of figures."""
    return json.dumps(_schema(json.loads(figures_schema)["$defs"]), ensure_ascii=False, indent=2) + "\n"


def _schema(figures: Schema) -> Schema:
    number = {"exact": {"$ref": "#/$defs/exact"}, "rounded": {"type": "number"}}
    shared = {name: figures[name] for name in _SHARED}
    bread = {
        "name": {"type": "string"},
        "note": {"description": "Why there are no changes: one side lacks it or cannot be read.", "type": "string"},
        "changes": {"description": "The gravest first.", "type": "array", "items": {"oneOf": _changes()}},
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": f"{FORMAT} {VERSION}",
        "description": "What is otherwise in the newer of two breads, or of many: `manchet compare OLD NEW --format json`. A field may be "
        "added under the same version; none is taken away or given another meaning. Shares are of 1, times seconds, weights grams, "
        "temperatures degrees Celsius. `before` and `after` are the sides; null is a side that has none.",
        "type": "object",
        "properties": {
            "format": {"const": FORMAT},
            "version": {"const": VERSION},
            "old": {"type": "string"},
            "new": {"type": "string"},
            "breads": {"description": "Those that are otherwise.", "type": "array", "items": _object(bread, {"note"})},
            "same": {"description": "How many are the same on both sides.", "type": "integer"},
        },
        "required": ["format", "version", "old", "new", "breads", "same"],
        "additionalProperties": False,
        "$defs": {**shared, "number": _object(number)},
    }


def _object(fields: Schema, may_lack: Set[str] = frozenset()) -> Schema:
    required = [name for name in fields if name not in may_lack]
    return {"type": "object", "properties": fields, "required": required, "additionalProperties": False}


def _changes() -> list[Schema]:
    return [_change(one) for one in get_args(Change)]


def _change(change: type) -> Schema:
    fields = {name: _of(hint) for name, hint in get_type_hints(change).items() if name != "rank"}
    said = {
        "text": {"description": "The line as it is printed.", "type": "string"},
        "kind": {"const": kind_of(change)},
        "rank": {"enum": [rank.name.lower() for rank in Rank]},
    }
    return {"description": " ".join((change.__doc__ or "").split()), **_object({**said, **fields})}


def _of(hint: Any) -> Schema:
    origin, arguments = get_origin(hint), get_args(hint)
    if origin is Literal:
        return {"enum": list(arguments)}
    if origin in (Union, UnionType):
        return {"anyOf": [_of(one) for one in arguments]}
    if origin is tuple and arguments[1:] == (Ellipsis,):
        return {"type": "array", "items": _of(arguments[0])}
    if origin is tuple:
        return {
            "type": "array",
            "prefixItems": [_of(one) for one in arguments],
            "minItems": len(arguments),
            "items": False,
        }
    if hint in _REFERS:
        return {"$ref": f"#/$defs/{_REFERS[hint]}"}
    if hint in _PLAIN:
        return {"type": _PLAIN[hint]}
    if isinstance(hint, type) and issubclass(hint, IntEnum):
        return {"enum": [one.name.lower() for one in hint]}
    return _object({name: _of(one) for name, one in get_type_hints(hint).items()})
