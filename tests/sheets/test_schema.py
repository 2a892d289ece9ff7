"""The schema is read off the types of the views: every kind of field a view may have, and what no view may hold."""

from __future__ import annotations

from fractions import Fraction
from typing import Any, Literal, NamedTuple

import jsonschema
import pytest

from manchet.sheets.page.schema import schema_of


class Loaf(NamedTuple):
    """A loaf,
    by its name."""

    name: str
    scored: bool = True
    """Cut before it
    goes in."""
    pieces: int = 1
    shape: Literal["round", "oval"] = "round"


class Dusted(NamedTuple):
    """With flour."""

    flour: str
    part: Literal["dusted"] = "dusted"


class Seeded(NamedTuple):
    """With seeds."""

    seeds: str
    part: Literal["seeded"] = "seeded"


class Shelf(NamedTuple):
    """What lies on it."""

    loaves: tuple[Loaf, ...]
    best: Loaf | None
    weighed: tuple[str, tuple[int, ...]]
    tops: tuple[Dusted | Seeded, ...] = ()
    form: Literal["shelf"] = "shelf"


SHELF = schema_of([Shelf], "shelf 1", "A shelf.")


def document(**changed: Any) -> dict[str, Any]:
    loaf = {"name": "tin loaf", "scored": True, "pieces": 1, "shape": "oval"}
    whole = {"schema": "shelf 1", "loaves": [loaf], "best": None, "weighed": ["loaf", [1, 2]],
             "tops": [{"flour": "rye", "part": "dusted"}], "form": "shelf"}  # fmt: skip
    return {**whole, **changed}


def test_it_is_a_schema() -> None:
    jsonschema.Draft202012Validator.check_schema(SHELF)
    assert list(SHELF["$defs"]) == ["Dusted", "Loaf", "Seeded", "Shelf"]


@pytest.mark.parametrize(
    "changed",
    [{}, {"best": document()["loaves"][0]}, {"loaves": []}, {"tops": [{"seeds": "poppy", "part": "seeded"}]}],
)
def test_what_fits(changed: dict[str, Any]) -> None:
    jsonschema.validate(document(**changed), SHELF)


@pytest.mark.parametrize(
    "changed",
    [
        {"schema": "shelf 2"},
        {"more": ""},
        {"loaves": None},
        {"loaves": [{"name": "tin loaf"}]},
        {"loaves": [{**document()["loaves"][0], "pieces": -1}]},
        {"loaves": [{**document()["loaves"][0], "shape": "square"}]},
        {"weighed": ["loaf"]},
        {"weighed": ["loaf", [1], ""]},
        {"tops": [{"flour": "rye", "part": "seeded"}]},
        {"form": "card"},
    ],
)
def test_what_does_not(changed: dict[str, Any]) -> None:
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(document(**changed), SHELF)


def test_the_docstrings_say_what_is_meant() -> None:
    loaf = SHELF["$defs"]["Loaf"]
    assert loaf["description"] == "A loaf, by its name."
    assert loaf["properties"]["scored"] == {"description": "Cut before it goes in.", "type": "boolean"}


def test_a_type_without_a_docstring_is_refused() -> None:
    class Crumb(NamedTuple):
        size: str

    with pytest.raises(TypeError, match="Crumb has no docstring"):
        schema_of([Crumb], "", "")


def test_a_number_to_reckon_with_is_refused() -> None:
    class Crust(NamedTuple):
        """Thick or thin."""

        millimetres: Fraction

    with pytest.raises(TypeError, match="no view may hold"):
        schema_of([Crust], "", "")


def another_loaf() -> type:
    class Loaf(NamedTuple):
        """A loaf of another baker's."""

        weight: str

    return Loaf


def test_two_types_of_one_name_are_refused() -> None:
    with pytest.raises(TypeError, match="both have a Loaf"):
        schema_of([Shelf, another_loaf()], "", "")


def test_a_union_that_nothing_tells_apart_is_refused() -> None:
    class Tray(NamedTuple):
        """A tray."""

        top: Dusted | Loaf

    with pytest.raises(TypeError, match="nothing tells these apart: Dusted, Loaf"):
        schema_of([Tray], "", "")
