"""The picture of the day: one lane for each stage, product and oven."""

from __future__ import annotations

from manchet.figures.oven.curve import oven_of
from manchet.kitchen.model import Kitchen
from manchet.timing.card.values import CardBar, CardLane, CardRow

IN_ORDER = ("stage", "product", "oven")
FIRE = frozenset({"preheat", "fire out"})


def lanes_of(name: str, rows: tuple[CardRow, ...], kitchen: Kitchen) -> tuple[CardLane, ...]:
    """All lanes, in the order they are drawn. `name` is the formula's: it names the dough's lane."""
    found: dict[tuple[str, str, int], list[CardBar]] = {}
    for at, row in enumerate(rows):
        for what, lane, mix, label in _lanes_for(name, row, kitchen):
            found.setdefault((what, lane, mix), []).append(CardBar(row.start, row.end, _kind(row), label, at))
    lanes = [CardLane(what, lane, mix, tuple(bars)) for (what, lane, mix), bars in found.items()]
    return tuple(sorted(lanes, key=lambda one: IN_ORDER.index(one.what)))


def _kind(row: CardRow) -> str:
    """The heating of an oven by its own name: it is nobody's machine."""
    return row.job if row.job in FIRE else row.who.value


def _lanes_for(name: str, row: CardRow, kitchen: Kitchen) -> list[tuple[str, str, int, str]]:
    if row.job in FIRE:
        return [("oven", row.place, 0, row.job)] if row.end > row.start else []
    if row.job != "step" or row.step is None:
        return []
    verb, product = row.step.verb, row.branch or name
    lanes = [("stage", row.stage, row.mix, verb) if row.stage else ("product", product, row.mix, verb)]
    oven = oven_of(row.step, kitchen)
    if oven is not None:
        lanes.append(("oven", oven.name, 0, row.stage or product))
    return lanes
