"""The handout for machines: a Recipe in the vocabulary of schema.org, as JSON-LD that stands unseen in the page."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import Any

from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.sheets.forms.handout.view import HomeStage, HomeWay
from manchet.sheets.parts.views import WeighRow


class RecipeTimes(NamedTuple):
    """Seconds: of the bake (0 where nothing is baked), and of all the work with its waits."""

    bake: Fraction
    total: Fraction


def recipe_json(
    name: str,
    about: str,
    language: str,
    makes: Sequence[str],
    ingredients: Sequence[str],
    sections: Iterable[HomeStage],
    times: RecipeTimes,
) -> str:
    """JSON text in which no character can end the element it stands in. `ingredients` are what is bought, each once; times
    stand as ISO 8601 writes them: `PT15H30M`."""
    import json

    data: dict[str, Any] = {
        "@context": "https://schema.org",
        "@type": "Recipe",
        "name": name,
        "inLanguage": language,
        "recipeYield": makes[0] if len(makes) == 1 else list(makes),
        "recipeIngredient": list(ingredients),
        "recipeInstructions": [
            {"@type": "HowToSection", "name": section.title, "itemListElement": list(_steps(section.ways))}
            for section in sections
        ],
    }
    if times.bake:
        data["cookTime"] = _duration(times.bake)
    if times.total > times.bake:
        data |= {"prepTime": _duration(times.total - times.bake), "totalTime": _duration(times.total)}
    if about:
        data["description"] = about
    return (
        json.dumps(data, ensure_ascii=False, sort_keys=True)
        .replace("&", "\\u0026").replace("<", "\\u003c").replace(">", "\\u003e")
        .replace("\u2028", "\\u2028").replace("\u2029", "\\u2029")
    )  # fmt: skip


def _duration(seconds: Fraction) -> str:
    """`PT12M`, `PT15H30M`, `P2DT4H`: to the minute, as ISO 8601 writes it."""
    minutes = int(round_to(seconds / 60, 0))
    days, rest = divmod(minutes, 24 * 60)
    hours, minutes = divmod(rest, 60)
    day = f"{days}D" if days else ""
    clock = (f"{hours}H" if hours else "") + (f"{minutes}M" if minutes else "")
    return f"P{day}T{clock}" if clock else f"P{day or 'T0M'}"


def _ingredient(row: WeighRow) -> str:
    return " ".join(part for part in (row.weight, row.unit, row.name) if part)


def _steps(ways: Iterable[HomeWay]) -> Iterable[dict[str, str]]:
    for way in ways:
        for doing in way.doings:
            added = [_ingredient(row) for row in doing.adds]
            yield _step(" ".join(part for part in (doing.text, ", ".join(added), doing.look) if part))
        if way.oven is not None:
            for phase in way.oven.phases:
                yield _step(", ".join(part for part in (phase.minutes, phase.oven, phase.core, phase.look) if part))


def _step(text: str) -> dict[str, str]:
    return {"@type": "HowToStep", "text": text}
