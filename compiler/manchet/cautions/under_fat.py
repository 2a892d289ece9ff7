"""Plants under oil or in butter, where no air comes to them."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace, done_in
from manchet.cautions.caution import Caution, caution
from manchet.cautions.contents import HOUR, class_share, end_of, first_of, ingredients, longest, weight
from manchet.formula.model import Stage
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import STANDS, WRAPS

FAT_CONTINUOUS = Fraction(30, 100)
DRIED = ("dried", "flakes", "powder", "olives", "capers", "sauerkraut", "paste", "starch", "flour", "potato", "puree")
"""Words in the names of plants that are dry or sour enough not to be meant here."""


def plants_under_fat(work: Work, stage: Stage) -> Iterator[Caution]:
    """Above the step that packs them; without one, that after which they are kept."""
    whole = weight(stage)
    if not whole or class_share(stage, "fat") / whole < FAT_CONTINUOUS or any(p.is_flour for p in stage.portions):
        return
    if not any(_fresh_plant(i) for i in ingredients(stage, "vegetable", "spice")):
        return
    done = done_in(stage, work.formula)
    waits = (at for at, s in done if s.may_wait or (s.verb in STANDS and longest(s) > 2 * HOUR))
    waiting = next(waits, None)
    kept = work.formula.preparation and work.formula.good_for is not None
    if kept or waiting is not None:
        yield caution("plants-under-fat", _where_kept(stage, waiting, first_of(done, WRAPS)))
    else:
        yield caution("plants-in-fat-today", end_of(stage))


def _where_kept(stage: Stage, waiting: CautionPlace | None, packed: CautionPlace | None) -> CautionPlace:
    return packed or waiting or end_of(stage)


def _fresh_plant(ingredient: Ingredient) -> bool:
    name = ingredient.name.casefold()
    herb = ingredient.class_ == "spice" and any(word in name for word in ("fresh", "leaves"))
    return (ingredient.class_ == "vegetable" or herb) and not any(word in name for word in DRIED)
