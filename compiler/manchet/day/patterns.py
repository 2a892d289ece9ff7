"""A plan that is like another: what it says takes the place of what its pattern says, line by line."""

from __future__ import annotations

import re
from collections.abc import Iterator

from manchet.day.wanted import BreadWanted, ForSomebody, SaidCount, alike
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.syntax import nodes, plan_nodes as d
from manchet.syntax.nodes import Entry
from manchet.syntax.parsed_headings import name_of

_DATED = re.compile(r"([0-9]{4}-[0-9]{2}-[0-9]{2})(?:\s+like\s+(.+))?", re.IGNORECASE)


class PlanName(NamedTuple):
    """`Saturday market`; or the day of `2026-12-05`, and what it is like."""

    name: str
    date: str = ""
    like: str = ""


def plan_name(block: Entry) -> PlanName:
    return plan_called(name_of(block))


def plan_called(heading: str) -> PlanName:
    """By what stands behind the word `plan`."""
    said = _DATED.fullmatch(heading)
    if said is None:
        return PlanName(heading)
    return PlanName(f"{said[2]} {said[1]}" if said[2] else said[1], said[1], said[2] or "")


def laid_over(pattern: tuple[Entry, ...], own: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """The lines of a plan and those of its pattern that it leaves standing. Breads are put together by `same_bread`."""
    said = {key for entry in own if (key := _said_of(entry))}
    kept = tuple(entry for entry in pattern if not _of_its_days(entry) and _said_of(entry) not in said)
    return kept + tuple(entry for entry in own if not isinstance(entry.node, nodes.Without))


def left_out(own: tuple[Entry, ...]) -> Iterator[tuple[Entry, nodes.Word]]:
    for entry in own:
        if isinstance(entry.node, nodes.Without):
            yield entry, entry.node.name


def _of_its_days(entry: Entry) -> bool:
    return isinstance(entry.node, (d.OnDay, d.EveryDay, d.UntilDay))


def _said_of(entry: Entry) -> tuple[str, ...]:
    """What a line is about of which a plan says one thing; () for any other."""
    match entry.node:
        case d.Departs(word, name, _, _):
            return word.text, fold(name.text if name else "")
        case d.ShiftNode(name, _, _, _, _):
            return "hands", fold(name.text if name else "")
        case d.FiresNode(thing, name, _, _, _):
            return thing.text, fold(name.text if name else "")
        case d.AppointmentNode(verb, name, _):
            return verb.text, fold(name.text)
        case _:
            return ()


def same_bread(pattern: BreadWanted, own: BreadWanted) -> BreadWanted:
    """A bread of a pattern with what a plan that is like it says of it. Where that is a count and nothing else, `spare` makes
    up the difference, as long as there is some."""
    orders = [_order_of(one.customer, own) or one for one in pattern.orders]
    known = {fold(one.customer) for one in pattern.orders}
    orders += [one for one in own.orders if fold(one.customer) not in known]
    spare = own.spare or pattern.spare
    counts = own.counts or (() if own.orders or own.spare else pattern.counts)
    if own.counts and not own.orders and not own.spare and (pattern.orders or pattern.spare):
        spare = tuple(_spare_now(pattern, own.counts))
    return own._replace(
        counts=counts,
        orders=tuple(orders),
        spare=spare,
        ending=own.ending or pattern.ending,
        age=own.age or pattern.age,
    )


def _order_of(customer: str, wanted: BreadWanted) -> ForSomebody | None:
    return next((one for one in wanted.orders if fold(one.customer) == fold(customer)), None)


def _spare_now(pattern: BreadWanted, counts: tuple[SaidCount, ...]) -> Iterator[SaidCount]:
    """What is left of each count when all orders are met."""
    for count in counts:
        ordered = [one for order in pattern.orders for one in order.counts if alike(one.noun, count.noun)]
        left = count.number - sum(one.number for one in ordered)
        if left > 0 and all(order.counts for order in pattern.orders):
            yield count._replace(number=left)
