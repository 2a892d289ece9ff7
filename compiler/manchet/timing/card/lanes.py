"""The picture of the day: one lane for each stage, product, oven, mixer and person."""

from __future__ import annotations

from datetime import datetime

from manchet.figures.oven.curve import oven_of
from manchet.formula.model import Who
from manchet.kitchen.model import Kitchen
from manchet.timing.card.values import CardBar, CardLane, CardRow
from manchet.timing.jobs.places import mixer_of

IN_ORDER = ("stage", "product", "oven", "mixer", "person")
FIRE = frozenset({"preheat", "fire out"})


def lanes_of(name: str, rows: tuple[CardRow, ...], kitchen: Kitchen) -> tuple[CardLane, ...]:
    """All lanes, in the order they are drawn. `name` is the formula's: it names the dough's lane."""
    found: dict[tuple[str, str, int], list[CardBar]] = {}
    for at, row in enumerate(rows):
        for what, lane, mix, label in _lanes_for(name, row, kitchen):
            found.setdefault((what, lane, mix), []).append(CardBar(row.start, row.end, _kind(row), label, at))
    people = _people(rows, kitchen.hands or 1)
    lanes = [CardLane(what, lane, mix, tuple(bars)) for (what, lane, mix), bars in found.items()]
    return tuple(sorted([*lanes, *people], key=lambda one: IN_ORDER.index(one.what)))


def _kind(row: CardRow) -> str:
    """The fire's own lines by their name: an oven that falls, with its fire out, is nobody's machine."""
    return row.job if row.job in FIRE else row.who.value


def _lanes_for(name: str, row: CardRow, kitchen: Kitchen) -> list[tuple[str, str, int, str]]:
    if row.job in FIRE:
        return [("oven", row.place, 0, row.job)] if row.end > row.start else []
    if row.job != "step" or row.step is None:
        return []
    verb, product = row.step.verb, row.branch or name
    lanes = [("stage", row.stage, row.mix, verb) if row.stage else ("product", product, row.mix, verb)]
    oven, mixer = oven_of(row.step, kitchen), mixer_of(row.step, kitchen)
    if oven is not None:
        lanes.append(("oven", oven.name, 0, row.stage or product))
    if mixer is not None:
        lanes.append(("mixer", mixer.name, 0, row.stage or product))
    return lanes


def _people(rows: tuple[CardRow, ...], hands: int) -> list[CardLane]:
    """Hands-on jobs given to whoever is free first; if nobody is, to the one who is free soonest (a clash says so)."""
    free = [datetime.min] * hands
    bars: list[list[CardBar]] = [[] for _ in range(hands)]
    for at, row in enumerate(rows):
        if row.who is not Who.HANDS:
            continue
        label = row.step.verb if row.job == "step" and row.step is not None else row.job
        everybody = row.job == "step" and row.step is not None and row.step.per == "each"
        chosen = range(hands) if everybody else [min(range(hands), key=lambda who: (max(free[who], row.start), who))]
        for who in chosen:
            bars[who].append(CardBar(row.start, row.end, row.who.value, label, at))
            free[who] = max(free[who], row.end)
    return [CardLane("person", str(who + 1), 0, tuple(found)) for who, found in enumerate(bars) if found]
