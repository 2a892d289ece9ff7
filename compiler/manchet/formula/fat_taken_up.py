"""The fat that stays in what is fried: `fry … in sunflower oil, takes up 9 g each`."""

from __future__ import annotations

from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.naming import Meaning, Names
from manchet.formula.step import Applied
from manchet.larder.densities import weight_of
from manchet.source.text import Line
from manchet.syntax import nodes

FRY = "fry"


def fat_taken_up(
    verb: str, where: tuple[str, str] | None, clause: nodes.TakesUp, line: Line, names: Names, measures_of: str
) -> Outcome[Applied | None]:
    """What is eaten of the fat in the pot, as what touches a piece; None with a report where the step does not name the fat."""
    found = names.meaning(where[1]) if where is not None and where[0] == "in" else None
    if verb != FRY or not isinstance(found, Meaning):
        place = line.place(clause.amount.start, clause.amount.end)
        written = line.body[clause.amount.start : clause.amount.end]
        what = (
            f"`{verb}` takes up no fat"
            if verb != FRY
            else f"{written} of what? the step does not name the fat in the pot"
        )
        help = f"write it like `fry 90 s a side at 175 C in sunflower oil, takes up {written} each`"
        return Outcome(None, (report("takes-up-what", place, what, help),))
    grams, reports = weight_of(clause.amount, found.ingredient, measures_of, line)
    if grams is None:
        return Outcome(None, reports)
    return Outcome(Applied(found.name, found.ingredient, found.stage, grams, clause.per == "each"), reports)
