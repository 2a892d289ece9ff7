"""Where a line says how warm a thing is: hot water of no temperature, and a temperature in `overall`, which nobody would read."""

from __future__ import annotations

import re
from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import at_the_end, instead
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.naming import Meaning
from manchet.syntax.nodes import Amount, Entry

TAP, KETTLE = "at 60 C", "at 98 C"
"""The hot tap, and water that has boiled: common practice."""


def how_hot(meaning: Meaning, at: Amount | None, entry: Entry, in_overall: bool) -> Iterator[Diagnostic]:
    """One report if a line gives a temperature in `overall`, or elsewhere none and is of another ingredient's name with `hot`
    before it."""
    if at is not None or in_overall:
        if at is not None and in_overall:
            yield heat_in_overall(meaning, at, entry)
        return
    name = fold(meaning.name)
    if meaning.ingredient is None or not name.startswith("hot ") or fold(meaning.ingredient.name) == name:
        return
    place, line = entry.line.place(), " ".join(entry.line.body.split())
    tap, kettle = (f"`{line} {heat}`" if "," not in line else f"`{heat}`" for heat in (TAP, KETTLE))
    fixes = () if "," in line else (at_the_end(place, f" {TAP}"), at_the_end(place, f" {KETTLE}"))
    help = f"write how hot, after the amount: {tap} from the tap, {kettle} from the kettle"
    yield report("how-hot", place, f"how hot is the {meaning.name}?", help, fixes=fixes)


def heat_in_overall(meaning: Meaning, at: Amount, entry: Entry) -> Diagnostic:
    """`water 60% at 40 C` in `overall`, where the stages take from: it is weighed warm in one of them, and cold in another."""
    body, degrees = entry.line.body, entry.line.body[at.start : at.end]
    place = entry.line.place(at.start, at.end)
    said = re.search(r",?\s*(?:\bat|@)?\s*$", body[: at.start], re.IGNORECASE)
    start = said.start() if said else at.start
    message = f"overall says how much {meaning.name} there is, and not how warm: {degrees} is read by nobody"
    help = f"leave it out, and say it in the stage: `what is left of the {meaning.name} at {degrees}`"
    fixes = (instead(entry.line.place(start, at.end), "", f"leave out `{body[start : at.end].strip(' ,')}`"),)
    return report("heat-in-overall", place, message, help, fixes=fixes)
