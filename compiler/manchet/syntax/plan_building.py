"""What the rules of a plan's and an order's lines make of their parts: nodes."""

from __future__ import annotations

from collections.abc import Callable

from manchet.syntax import plan_nodes as d
from manchet.syntax.building import ACTIONS, Made
from manchet.syntax.clauses import Amount, Word


def _clock(*parts: Word) -> d.OnClock:
    """A day that is not said leaves the clock time first."""
    at = next(at for at, part in enumerate(parts) if part is not None and ":" in part.text)
    day = next((part for part in parts[:at] if part), None)
    return d.OnClock(day, parts[at], next((part for part in parts[at + 1 :] if part), None))


def _split(parts: tuple[Made, ...]) -> tuple[list[Word], list[d.OnClock], list[Amount]]:
    """The words, the times of the clock and the amounts of a line."""
    words = [part for part in parts if isinstance(part, Word)]
    clocks = [part for part in parts if isinstance(part, d.OnClock)]
    return words, clocks, [part for part in parts if isinstance(part, Amount)]


def _second(clocks: list[d.OnClock]) -> d.OnClock | None:
    return clocks[1] if len(clocks) > 1 else None


def _departs(van: Word, name: Word | None, at: d.OnClock, *customers: Word) -> d.Departs:
    return d.Departs(van, name, at, customers)


def _shift_of(*parts: Made) -> d.ShiftNode:
    words, clocks, amounts = _split(parts)
    return d.ShiftNode(words[0], None, clocks[0], _second(clocks), amounts[0] if amounts else None)


def _shift_of_some(*parts: Made) -> d.ShiftNode:
    _, clocks, amounts = _split(parts)
    return d.ShiftNode(None, amounts[0], clocks[0], _second(clocks), amounts[1] if len(amounts) > 1 else None)


def _fires(thing: Word, name: Word | None, *parts: Made) -> d.FiresNode:
    _, clocks, amounts = _split(parts)
    lit = clocks[0] if clocks else None
    return d.FiresNode(thing, name, amounts[0] if amounts else None, lit, _second(clocks))


def _is_taken(thing: Word, name: Word | None, *clocks: d.OnClock) -> d.TakenNode:
    return d.TakenNode(thing, name, clocks[0], clocks[1] if len(clocks) > 1 else None)


def _want_of_variant(name: Word, variant: Word, *parts: Made) -> d.WantNode:
    return d.WantNode(Word(f"{name.text}, {variant.text}", name.start, variant.end), parts)


OF_A_PLAN: dict[str, Callable[..., Made]] = ACTIONS | {
    "on_day": d.OnDay,
    "every_day": lambda *days: d.EveryDay(days),
    "until_day": d.UntilDay,
    "departs": _departs,
    "already": lambda *items: d.AlreadyThere(items),
    "made_item": d.MadeItem,
    "shift_of": _shift_of,
    "shift_of_some": _shift_of_some,
    "fires": _fires,
    "one_fire": _fires,
    "is_taken": _is_taken,
    "appointment": d.AppointmentNode,
    "takes_orders": d.TakesOrders,
    "want": lambda name, *parts: d.WantNode(name, parts),
    "want_of_variant": _want_of_variant,
    "want_line": lambda *parts: d.WantLine(parts),
    "count_of": lambda amount, noun=None: d.CountOf(amount, noun),
    "customer": d.Customer,
    "spare": d.SpareNode,
    "ending": lambda word, *clocks: d.Ending(word, *clocks),
    "old_at": d.OldAt,
    "on_clock": _clock,
}
