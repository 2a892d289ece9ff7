"""The figures of a formula's swaps: so much of the one for a gram of the other, by whom, and what moved with it."""

from __future__ import annotations

from manchet.diagnostics.diagnostic import Place
from manchet.figures.figure import Figure, Given
from manchet.formula.changed import OPTION
from manchet.formula.model import Formula, Swapped


def swap_figures(formula: Formula) -> dict[str, Figure]:
    """One figure a swap, by the name `swap: instant yeast for fresh yeast`."""
    return {f"swap: {made.on} for {made.off}": _figure(made) for made in formula.swapped}


def _figure(made: Swapped) -> Figure:
    where = _where(made.place)
    taken = Given(f"{made.off}, taken out", made.share * 100, "%", where)
    moved = tuple(
        Given(f"{name}, {'taken off' if share < 0 else 'made up'}", abs(share) * 100, "%", where)
        for name, share in made.moved
    )
    rule = f"weight of {made.on} / weight of {made.off}; per cent is of all flour"
    said = f"; {made.said}" if made.said else ""
    return Figure(f"{made.on} for {made.off}", made.factor, "", rule + said, (taken, *moved), made.source)


def _where(place: Place) -> str:
    return place.path if place.path == OPTION else place.where
