"""What the larder knows of an ingredient, in words, and what it does not."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.larder.book import Larder
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import decimal

ON_A_LABEL = ("fat", "saturates", "carbohydrate", "sugars", "protein", "salt")
"""What a nutrition panel needs of 100 g, as the EU's Regulation 1169/2011 lists it; energy follows from these."""


def about_entry(ingredient: Ingredient, larder: Larder) -> str:
    """Its class, other names, allergens, what it is made of, and what is not known, in Markdown."""
    return "\n".join(
        [f"**{ingredient.name}**: {ingredient.class_}", "", *(f"- {line}" for line in _lines(ingredient, larder))]
    )


def _lines(ingredient: Ingredient, larder: Larder) -> Iterator[str]:
    if ingredient.aliases:
        yield f"also called {', '.join(ingredient.aliases)}"
    allergens = larder.allergens(ingredient)
    yield (
        "allergens not known"
        if allergens is None
        else f"allergens: {', '.join(allergens)}"
        if allergens
        else "no allergens"
    )
    if ingredient.may_contain:
        yield f"may contain {', '.join(ingredient.may_contain)}"
    if ingredient.made_of:
        yield "made of " + ", ".join(f"{part.name} {decimal(part.share * 100, 1)}%" for part in ingredient.made_of)
    elif ingredient.composition:
        yield "in 100 g: " + ", ".join(
            f"{name} {decimal(grams, 1)} g" for name, grams in ingredient.composition.items()
        )
    if not ingredient.made_of and not ingredient.nothing_else_known:
        known = {*ingredient.composition, *(("salt",) if "sodium" in ingredient.composition else ())}
        unknown = [name for name in ON_A_LABEL if name not in known]
        if unknown and ingredient.class_ not in ("water", "packaging"):
            yield f"not known: {', '.join(unknown)}"
    price = ingredient.buying.price
    if price is not None:
        yield f"{decimal(price.amount, 2)} {price.currency} for {price.bought}" + (
            f", {price.date}" if price.date else ""
        )
    yield f"from {ingredient.place.where}" if ingredient.place is not None else "from the built-in larder"
    if ingredient.source:
        yield f"source: {ingredient.source}"
