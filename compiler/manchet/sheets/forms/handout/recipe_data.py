"""The handout for machines: a Recipe in the vocabulary of schema.org, as JSON-LD that stands unseen in the page."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import Any

from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.sheets.forms.handout.view import HomeClause, HomeMethod, HomeStep, MadeAhead


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
    before: Iterable[MadeAhead],
    method: Iterable[HomeMethod],
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
            *(_section(ahead.title, ahead.steps) for ahead in before),
            *(_section(stage.title, [step for way in stage.ways for step in way.steps]) for stage in method),
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


def _section(title: str, steps: Iterable[HomeStep]) -> dict[str, Any]:
    return {
        "@type": "HowToSection",
        "name": title,
        "itemListElement": [{"@type": "HowToStep", "text": _text(step)} for step in steps],
    }


def _text(step: HomeStep) -> str:
    return "; ".join(_clause(clause) for clause in step.clauses)


def _clause(clause: HomeClause) -> str:
    added = ", ".join(" ".join(part for part in (row.weight, row.unit, row.name) if part) for row in clause.adds)
    done = " ".join(part for part in (clause.done, added) if part)
    return ", ".join(part for part in (done + clause.how, clause.until, *clause.ticks) if part)
