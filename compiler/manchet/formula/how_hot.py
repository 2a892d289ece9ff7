"""Hot water of no temperature: from the tap, or from the kettle?"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import at_the_end
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.naming import Meaning
from manchet.syntax.nodes import Entry

TAP, KETTLE = "at 60 C", "at 98 C"
"""The hot tap, and water that has boiled: common practice."""


def how_hot(meaning: Meaning, entry: Entry) -> Iterator[Diagnostic]:
    """One report if a line that gives no temperature is of another ingredient's name with `hot` before it."""
    name = fold(meaning.name)
    if meaning.ingredient is None or not name.startswith("hot ") or fold(meaning.ingredient.name) == name:
        return
    place, line = entry.line.place(), " ".join(entry.line.body.split())
    tap, kettle = (f"`{line} {heat}`" if "," not in line else f"`{heat}`" for heat in (TAP, KETTLE))
    fixes = () if "," in line else (at_the_end(place, f" {TAP}"), at_the_end(place, f" {KETTLE}"))
    help = f"write how hot, after the amount: {tap} from the tap, {kettle} from the kettle"
    yield report("how-hot", place, f"how hot is the {meaning.name}?", help, fixes=fixes)
