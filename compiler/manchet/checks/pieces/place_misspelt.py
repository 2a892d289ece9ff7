"""A tin, basket or place that the kitchen does not have, and a letter or two from one that it has."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import distance, fold
from manchet.kitchen.model import Kitchen

NAME = "place-misspelt"
ABOUT = ("kitchen vessel", "kitchen oven")

SHORT = 6
"""Letters under which one slip is allowed and not two. Our rule."""


def check(work: Work) -> Iterator[Diagnostic]:
    said = set()
    for step in work.formula.steps:
        written = step.where[1] if step.where is not None else ""
        near = near_name(work.kitchen, written) if written and fold(written) not in said else None
        if near is not None:
            said.add(fold(written))
            help = f"if you mean it, write `{near}`; otherwise nothing checks how many there are or what they hold"
            message = f"{work.kitchen.name} has no {written}, and it has a {near}"
            yield report(NAME, step.place, message, help, fixes=exchange_of(step.place, written, near))


def near_name(kitchen: Kitchen, written: str) -> str | None:
    """The thing of the kitchen that a place is a slip of; None where it is one of its things, or like none of them."""
    place = fold(written)
    if kitchen.vessel(place) is not None or kitchen.cold(place) is not None:
        return None
    there = {fold(name): name for name in _things(kitchen)}
    return None if place in there else next((name for key, name in there.items() if _is_slip(place, key)), None)


def _things(kitchen: Kitchen) -> Iterator[str]:
    for things in (kitchen.vessels, kitchen.ovens, kitchen.colds, kitchen.mixers):
        yield from (thing.name for thing in things if thing.name)


def _is_slip(written: str, name: str) -> bool:
    most = 1 if min(len(written), len(name)) < SHORT else 2
    return abs(len(written) - len(name)) <= most and distance(written, name, most) <= most
