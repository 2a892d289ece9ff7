"""The handout for machines: a Recipe in the vocabulary of schema.org, as JSON-LD that stands unseen in the page."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from manchet.sheets.handout_values import Section, Way
from manchet.sheets.views import Row


def recipe_of(name: str, about: str, language: str, makes: str, sections: Iterable[Section]) -> str:
    """JSON text in which no character can end the element it stands in."""
    import json

    sections = tuple(sections)
    data: dict[str, Any] = {
        "@context": "https://schema.org",
        "@type": "Recipe",
        "name": name,
        "inLanguage": language,
        "recipeYield": makes,
        "recipeIngredient": list(dict.fromkeys(_ingredient(row) for s in sections for row in (*s.rows, *s.aside))),
        "recipeInstructions": [
            {"@type": "HowToSection", "name": section.title, "itemListElement": list(_steps(section.ways))}
            for section in sections
        ],
    }
    if about:
        data["description"] = about
    return (
        json.dumps(data, ensure_ascii=False, sort_keys=True)
        .replace("&", "\\u0026").replace("<", "\\u003c").replace(">", "\\u003e")
        .replace("\u2028", "\\u2028").replace("\u2029", "\\u2029")
    )  # fmt: skip


def _ingredient(row: Row) -> str:
    return " ".join(part for part in (row.weight, row.unit, row.name) if part)


def _steps(ways: Iterable[Way]) -> Iterable[dict[str, str]]:
    for way in ways:
        for doing in way.doings:
            added = [_ingredient(row) for row in doing.adds]
            yield _step(" ".join(part for part in (doing.text, ", ".join(added), doing.look) if part))
        if way.oven is not None:
            for phase in way.oven.phases:
                yield _step(", ".join(part for part in (phase.minutes, phase.oven, phase.core, phase.look) if part))


def _step(text: str) -> dict[str, str]:
    return {"@type": "HowToStep", "text": text}
