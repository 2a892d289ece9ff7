"""The JSON Schema of views, read off their types: the fields from the annotations, what they mean from the docstrings.

A view is a `NamedTuple` whose fields are `str`, `int` (a count), `bool`, a `Literal`, another such tuple, a `tuple` of these, or a
union: of one and None, or of tuples that a field with a `Literal` tells apart.
"""

from __future__ import annotations

import ast
import inspect
import textwrap
from collections.abc import Iterator, Sequence
from types import NoneType, UnionType
from typing import Any, Literal, Union, get_args, get_origin, get_type_hints

Schema = dict[str, Any]

DRAFT = "https://json-schema.org/draft/2020-12/schema"
_PLAIN = {str: "string", bool: "boolean", NoneType: "null"}


def schema_of(views: Sequence[type], title: str, description: str) -> Schema:
    """The schema of a document that is one of `views`, each with `title` in a field `schema` before its own.

    Raises TypeError for what no view may hold, for a type without a docstring, and for two types of one name.
    """
    types = dict(sorted((found.__name__, found) for found in _named(views)))
    definitions = {name: _object_of(found) for name, found in types.items()}
    for view in views:
        whole = definitions[view.__name__]
        whole["properties"] = {"schema": {"const": title}, **whole["properties"]}
        whole["required"] = ["schema", *whole["required"]]
    return {
        "$schema": DRAFT,
        "title": title,
        "description": description,
        "oneOf": _one_of(views),
        "$defs": definitions,
    }


def _named(views: Sequence[type]) -> list[type]:
    """Every named tuple that a view holds, at whatever depth, and the views themselves: each once."""
    found: dict[str, type] = {}
    waiting = list(views)
    while waiting:
        view = waiting.pop()
        if found.setdefault(view.__name__, view) is not view:
            raise TypeError(f"{view.__module__} and {found[view.__name__].__module__} both have a {view.__name__}")
        inside = {held for annotation in get_type_hints(view).values() for held in _tuples_in(annotation)}
        waiting += [held for held in inside if found.get(held.__name__) is not held]
    return list(found.values())


def _tuples_in(annotation: Any) -> Iterator[type]:
    if _is_named_tuple(annotation):
        yield annotation
    elif get_origin(annotation) is not Literal:
        for argument in get_args(annotation):
            yield from _tuples_in(argument)


def _is_named_tuple(annotation: Any) -> bool:
    return isinstance(annotation, type) and issubclass(annotation, tuple) and hasattr(annotation, "_fields")


def _object_of(view: type) -> Schema:
    if not view.__doc__ or view.__doc__.startswith(f"{view.__name__}("):
        raise TypeError(f"{view.__name__} has no docstring")
    said = _field_docs(view)
    fields = {
        name: {**({"description": said[name]} if name in said else {}), **_schema_of(annotation)}
        for name, annotation in get_type_hints(view).items()
    }
    return {
        "description": _unwrapped(view.__doc__),
        "type": "object",
        "properties": fields,
        "required": list(fields),
        "additionalProperties": False,
    }


def _field_docs(view: type) -> dict[str, str]:
    """What stands as a string under a field, by the field's name."""
    (written,) = ast.parse(textwrap.dedent(inspect.getsource(view))).body
    assert isinstance(written, ast.ClassDef)
    said = {}
    for field, below in zip(written.body, written.body[1:], strict=False):
        if isinstance(field, ast.AnnAssign) and isinstance(field.target, ast.Name) and isinstance(below, ast.Expr):
            said[field.target.id] = _unwrapped(ast.literal_eval(below.value))
    return said


def _unwrapped(doc: str) -> str:
    return " ".join(doc.split())


def _schema_of(annotation: Any) -> Schema:
    origin, arguments = get_origin(annotation), get_args(annotation)
    if annotation is int:
        return {"type": "integer", "minimum": 0}
    if annotation in _PLAIN:
        return {"type": _PLAIN[annotation]}
    if _is_named_tuple(annotation):
        return {"$ref": f"#/$defs/{annotation.__name__}"}
    if origin is Literal:
        return {"const": arguments[0]} if len(arguments) == 1 else {"enum": list(arguments)}
    if origin is tuple and arguments[1:] == (Ellipsis,):
        return {"type": "array", "items": _schema_of(arguments[0])}
    if origin is tuple:
        return {"type": "array", "prefixItems": [_schema_of(item) for item in arguments], "minItems": len(arguments), "items": False}  # fmt: skip
    if origin in (Union, UnionType):
        return {"oneOf": _one_of(arguments)}
    raise TypeError(f"no view may hold {annotation}")


def _one_of(kinds: Sequence[type]) -> list[Schema]:
    """Either, where no value can be read as two of them."""
    tags = [_tag_of(kind) for kind in kinds if _is_named_tuple(kind)]
    if len(tags) > 1 and (None in tags or len(set(tags)) < len(tags)):
        raise TypeError(f"nothing tells these apart: {', '.join(kind.__name__ for kind in kinds)}")
    return [_schema_of(kind) for kind in kinds]


def _tag_of(view: type) -> tuple[str, str] | None:
    """The name and the value of the field that holds one word only."""
    words = {name: get_args(hint) for name, hint in get_type_hints(view).items() if get_origin(hint) is Literal}
    return next(((name, *only) for name, only in words.items() if len(only) == 1), None)
