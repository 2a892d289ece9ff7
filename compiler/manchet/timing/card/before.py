"""Before you go: what must be seen to now so that the same bread can be made next time."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch, StageBatch
from manchet.syntax.vocabulary import HOLDS_WATER
from manchet.timing.card.values import Before, Row

WARMER = 5
"""An ingredient that is wanted so many degrees warmer than it is kept must be taken out in time. Our own rule."""


def before_you_go(batch: Batch, rows: tuple[Row, ...]) -> tuple[Before, ...]:
    """Cultures to feed and to put away, soakers of the day before, butter to take out, the oven to set."""
    return (
        *_cultures(batch),
        *_soaked_the_day_before(batch, rows),
        *_taken_out(batch, rows),
        *_ovens(rows),
    )


def _cultures(batch: Batch) -> list[Before]:
    """What is kept is put away; where less is given back than taken, the pot must be fed by the difference."""
    given: dict[str, Fraction] = {}
    for made in batch.stages:
        for name, grams in (*made.kept, *made.returned):
            given[name] = given.get(name, Fraction(0)) + grams
    taken: dict[str, Fraction] = {}
    kept_at: dict[str, Fraction | None] = {}
    for made in batch.stages:
        for line in made.weighed:
            ingredient = line.portion.ingredient
            if ingredient is not None and ingredient.class_ == "culture":
                taken[line.portion.name] = taken.get(line.portion.name, Fraction(0)) + line.grams
                kept_at[line.portion.name.casefold()] = ingredient.kept_at
    put_away = [
        Before("put away", name, grams, kept_at.get(name.casefold()), None) for name, grams in given.items() if grams
    ]
    back = {name.casefold(): grams for name, grams in given.items()}
    feed = [
        Before("feed", name, grams - back.get(name.casefold(), Fraction(0)), None, None)
        for name, grams in taken.items()
        if grams > back.get(name.casefold(), Fraction(0))
    ]
    return put_away + feed


def _soaked_the_day_before(batch: Batch, rows: tuple[Row, ...]) -> list[Before]:
    dough = min((row.start for row in rows if not row.stage and row.job == "step"), default=None)
    found = []
    for made in batch.stages:
        begun = _begun(made, rows)
        if begun is None or dough is None or made.stage.word not in HOLDS_WATER:
            continue
        if begun.start.date() < dough.date():
            found.append(Before("soak", made.stage.name or made.stage.word, made.into, None, begun.start))
    return found


def _taken_out(batch: Batch, rows: tuple[Row, ...]) -> list[Before]:
    found = []
    for made in batch.stages:
        begun = _begun(made, rows)
        for line in made.weighed:
            wanted, ingredient = line.portion.celsius, line.portion.ingredient
            if wanted is None or ingredient is None or ingredient.kept_at is None or ingredient.class_ == "culture":
                continue
            if wanted - ingredient.kept_at >= WARMER:
                at = begun.start if begun is not None else None
                found.append(Before("take out", line.portion.name, line.grams, wanted, at))
    return found


def _ovens(rows: tuple[Row, ...]) -> list[Before]:
    return [
        Before("set oven", row.place, Fraction(0), row.celsius.likely if row.celsius is not None else None, row.start)
        for row in rows
        if row.job == "preheat"
    ]


def _begun(made: StageBatch, rows: tuple[Row, ...]) -> Row | None:
    """The first line of a stage; of the dough where it is the dough."""
    return next(
        (row for row in rows if row.job == "step" and row.step is not None and row.step in made.stage.steps), None
    )
