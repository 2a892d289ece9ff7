"""Before you go: what must be seen to now so that the same bread can be made next time."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.cultures import cultures_used
from manchet.batch.model import StageBatch
from manchet.batch.scales import System
from manchet.batch.tubs import given_back
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.syntax.vocabulary import HOLDS_WATER
from manchet.timing.card.values import BeforeYouGo, CardRow

WARMER = 5
"""An ingredient that is wanted so many degrees warmer than it is kept must be taken out in time. Our own rule."""


def before_you_go(work: Work, rows: tuple[CardRow, ...], system: System) -> tuple[BeforeYouGo, ...]:
    """Cultures to feed and to put away, soakers of the day before, butter to take out, the oven to set. Weights as the
    sheet has them."""
    tables = weighings(work, system).value
    return (
        *_cultures(work, tables),
        *_soaked_the_day_before(tables, rows),
        *_taken_out(tables, rows),
        *_ovens(rows),
    )


def _cultures(work: Work, tables: Sequence[Table]) -> list[BeforeYouGo]:
    """What is kept is put away; where less is given back than taken, the pot must be fed by the difference."""
    given: dict[str, Fraction] = {}
    for table in tables:
        for name, grams in (*table.kept, *given_back(table, tables)):
            given[name] = given.get(name, Fraction(0)) + grams
    used = cultures_used(work)
    kept_at = {
        fold(portion.name): portion.ingredient.kept_at
        for portion in (line.weighed.portion for table in tables for line in table.lines)
        if portion.key in used and portion.ingredient is not None
    }
    put_away = [
        BeforeYouGo("put away", name, grams, kept_at.get(fold(name)), None) for name, grams in given.items() if grams
    ]
    feed = [BeforeYouGo("feed", one.name, one.short, None, None) for one in used.values() if one.short]
    return put_away + feed


def _soaked_the_day_before(tables: Sequence[Table], rows: tuple[CardRow, ...]) -> list[BeforeYouGo]:
    dough = min((row.start for row in rows if not row.stage and row.job == "step"), default=None)
    found = []
    for table in tables:
        made = table.making.stage
        begun = _begun(made, rows)
        if begun is None or dough is None or made.stage.word not in HOLDS_WATER:
            continue
        if begun.start.date() < dough.date():
            found.append(
                BeforeYouGo(
                    "soak", made.stage.name or made.stage.word, table.total * table.making.times, None, begun.start
                )
            )
    return found


def _taken_out(tables: Sequence[Table], rows: tuple[CardRow, ...]) -> list[BeforeYouGo]:
    found = []
    for table in tables:
        begun = _begun(table.making.stage, rows)
        for line in table.lines:
            portion = line.weighed.portion
            wanted, ingredient = portion.celsius, portion.ingredient
            if wanted is None or ingredient is None or ingredient.kept_at is None or ingredient.class_ == "culture":
                continue
            if wanted - ingredient.kept_at >= WARMER:
                at = begun.start if begun is not None else None
                grams = line.reading.grams * table.making.times
                found.append(BeforeYouGo("take out", portion.name, grams, wanted, at))
    return found


def _ovens(rows: tuple[CardRow, ...]) -> list[BeforeYouGo]:
    return [
        BeforeYouGo(
            "set oven", row.place, Fraction(0), row.celsius.likely if row.celsius is not None else None, row.start
        )
        for row in rows
        if row.job == "preheat"
    ]


def _begun(made: StageBatch, rows: tuple[CardRow, ...]) -> CardRow | None:
    """The first line of a stage; of the dough where it is the dough."""
    return next(
        (row for row in rows if row.job == "step" and row.step is not None and row.step in made.stage.steps), None
    )
