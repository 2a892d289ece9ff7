"""A food that is sold with a label, with a bought thing in it that is made of several, of which nobody says what is in it."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.piece import SoldPiece
from manchet.batch.work import Work
from manchet.checks.bringing import line_that_brings
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.label.allergens import every_content
from manchet.label.declaration import labelled_pieces
from manchet.larder.ingredient import Ingredient
from manchet.larder.names import key

NAME = "label-parts-unlisted"
ABOUT = ("sold",)

LEAST = Fraction(2, 100)
"""Of the food: under it what the law or a mix of spices fixes needs no list (Annex VII, part E, no. 2)."""
COMPOUND = frozenset(
    key(name)
    for name in (
        "marzipan", "praline paste", "candied fruit", "candied peel", "candied ginger", "glace cherries", "mixed dried fruit", "jam",
        "dark chocolate", "very dark chocolate", "plain chocolate", "milk chocolate", "white chocolate", "chocolate spread", "mustard",
        "curry powder", "miso", "soy sauce", "Worcestershire sauce", "mayonnaise", "piccalilli", "stock cube", "pickled onions", "bacon",
        "ham", "sausage", "pesto", "custard", "mincemeat", "sprinkles", "old bread", "old rye bread", "breadcrumbs", "tinned sardines",
        "tinned tuna",
    )
)  # fmt: skip
"""Things of the built-in larder that are bought ready, and are made of several. Butter, cheese, vinegar and such need no list: article 19."""


def check(work: Work) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for piece, labels in labelled_pieces(work):
        if not labels or not piece.finished:
            continue
        for ingredient, share in _shares(piece, piece.finished):
            if share >= LEAST and ingredient.name not in told and _is_unlisted(ingredient):
                told.add(ingredient.name)
                name = ingredient.name
                message = f"{name} is {percent(share)} of {work.formula.name}, and the label does not say what is in it"
                help = f'write under `{name}` in the larder what its packet says: `listed as "{name} (…, …)"`, or `made of` with each part'
                yield report(NAME, line_that_brings(work, piece, name), message, help)


def _shares(piece: SoldPiece, weight: Fraction) -> Iterator[tuple[Ingredient, Fraction]]:
    grams: dict[str, Fraction] = {}
    found: dict[str, Ingredient] = {}
    for content in every_content(piece.mixture):
        name = content.ingredient.name
        found[name] = content.ingredient
        grams[name] = grams.get(name, Fraction(0)) + content.grams
    for name, ingredient in found.items():
        yield ingredient, grams[name] / weight


def _is_unlisted(ingredient: Ingredient) -> bool:
    return key(ingredient.name) in COMPOUND and not ingredient.listed_as and not ingredient.made_of
