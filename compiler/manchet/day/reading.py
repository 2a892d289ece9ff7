"""A plan as its block says it, read into its values for the day it is of."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date, timedelta
from fractions import Fraction

from manchet.day.breads import Menu
from manchet.day.moments import DAYS, date_of, no_such_date
from manchet.day.patterns import PlanName, laid_over, left_out, plan_name, same_bread
from manchet.day.people import HouseReading, vans_with_nothing
from manchet.day.said import Plan, Want
from manchet.day.standing import DaysSaid, StandingOrder, bread_twice, days_said
from manchet.day.too_old import too_old
from manchet.day.wanted import BreadWanted, ForSomebody, customer_twice, wanted_of
from manchet.day.wants import WantReading
from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.fixes import exchange_of, one_of, where_said
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.kitchen.model import Kitchen
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.syntax import plan_nodes as d
from manchet.syntax.nodes import Entry, Unread

MOST_BREADS, MOST_PIECES = 100, 10_000
"""In one plan, and of one bread. A bakery's longest day has a third of that. Our rule."""

ANY_MONDAY = date(2001, 1, 1)
"""A pattern that has no date is looked over as if it were of the week that begins here, in which no clock changes."""


OF_ITS_DAY = frozenset(("no-orders-that-day", "late-for-the-van", "plan-day-too-far"))
"""Reports that nobody can give of a plan whose day is not known."""


class Pattern(NamedTuple):
    """A plan for certain weekdays, that other plans are like."""

    name: PlanName
    days: DaysSaid
    block: Entry


class Sources(NamedTuple):
    """What a plan draws on."""

    menu: Menu
    orders: tuple[StandingOrder, ...]
    stages: Mapping[str, str]
    """Those that stand by themselves: by folded name, as written."""
    larder: Larder
    patterns: Mapping[str, Pattern]
    """By folded name."""
    serves_dishes: bool = False
    """A dish is wanted: then breads may be there already, for it to be built on."""

    def with_stages(self, breads: Iterable[str]) -> Sources:
        """With the stages of some breads."""
        offers = [self.menu.offer(name) for name in breads]
        own = {key: name for offer in offers if offer is not None for key, name in offer.stages.items()}
        dishes = any(offer is not None and offer.is_dish for offer in offers)
        return self._replace(stages={**own, **self.stages}, serves_dishes=dishes)

    def ready(self, name: str) -> str | None:
        """See `people.Ready`."""
        offer = self.menu.offer(name)
        if fold(name) in self.stages or (offer is not None and (offer.is_preparation or self.serves_dishes)):
            return fold(name)
        known = self.larder.ingredient(name)
        return None if known is None else fold(known.name)


def patterns_of(blocks: Iterable[Entry]) -> dict[str, Pattern]:
    """The plans that others may be like: those that are like none themselves."""
    found: dict[str, Pattern] = {}
    for block in blocks:
        name = plan_name(block)
        if not name.date:
            found.setdefault(fold(name.name), Pattern(name, days_said(block.children).value, block))
    return found


def plan_of(block: Entry, house: Sources, kitchen: Kitchen, on: date | None = None) -> Outcome[Plan | None]:
    """The plan of a block: None where it has a mistake, and of a pattern without a date, unless it is asked for `on` one."""
    name = plan_name(block)
    days, found = days_said(block.children)
    reports = list(found)
    own = block.children
    pattern = None
    if name.like:
        pattern = house.patterns.get(fold(name.like))
        if pattern is None:
            reports.append(_no_pattern(block, name, house))
            return Outcome(None, tuple(reports))
        own = laid_over(pattern.block.children, block.children)
    day, found = _day_of(block, name, pattern, days, on)
    reports += found
    # Of no day that there is, all else is looked over as if it were of any week.
    plan, found = _read(block, name, own, pattern, house, kitchen, day or ANY_MONDAY)
    reports += found if day is not None else (one for one in found if one.name not in OF_ITS_DAY)
    is_dated = on is not None or bool(name.date) or days.on is not None
    sound = plan is not None and is_dated and not any(one.severity is Severity.ERROR for one in reports)
    every = (pattern.days if pattern else days).every
    return Outcome(plan._replace(every=every, like=name.like) if plan is not None and sound else None, tuple(reports))


def _no_pattern(block: Entry, name: PlanName, house: Sources) -> Diagnostic:
    known = tuple(pattern.name.name for pattern in house.patterns.values())
    near = nearest(name.like, known)
    place = block.line.place()
    message = f"no plan here is called {name.like}"
    help = (
        ""
        if near
        else f"plans here: {list_of_words(known, 'and')}"
        if known
        else "write the plan that it is like first"
    )
    return report("no-such-pattern", place, message, help, fixes=exchange_of(place, name.like, near) if near else ())


def _day_of(
    block: Entry, name: PlanName, pattern: Pattern | None, days: DaysSaid, on: date | None
) -> Outcome[date | None]:
    """The plan's own day; of a pattern the one it is asked for, else any of its weekdays."""
    place = block.line.place()
    if name.date:
        day = date_of(name.date)
        if day is None:
            return Outcome(None, (no_such_date(name.date, where_said(place, name.date) or place),))
        of = pattern.days if pattern else days
        weekdays = of.every or ((of.on.weekday(),) if of.on else ())
        return _on_its_weekday(day, weekdays, pattern.name.name if pattern else name.name, place)
    if days.on is not None:
        return _on_its_weekday(days.on, days.every, name.name, days.place or place)
    if on is not None:
        return Outcome(on)
    if days.every:
        return Outcome(ANY_MONDAY + timedelta(days=days.every[0]))
    if any(isinstance(entry.node, (d.OnDay, Unread)) for entry in block.children):
        return Outcome(None)  # its day could not be read, and that is reported
    message = f"nothing says of which day {name.name} is"
    help = "write `on 2026-11-28` for one day, or `every Sat` for a pattern that plans may be like"
    return Outcome(None, (report("plan-without-a-day", place, message, help),))


def _on_its_weekday(day: date, weekdays: tuple[int, ...], of: str, place: Place) -> Outcome[date | None]:
    if not weekdays or day.weekday() in weekdays:
        return Outcome(day)
    named = list_of_words(tuple(DAYS[weekday] for weekday in weekdays), "and")
    message = f"{day} is a {DAYS[day.weekday()]}, and {of} is for {named}: each weekday in it would be another day"
    help = f"choose a date that is a {DAYS[weekdays[0]]}, or write the plan of that day out"
    return Outcome(None, (report("plan-on-another-day", place, message, help),))


def _read(
    block: Entry,
    name: PlanName,
    lines: tuple[Entry, ...],
    pattern: Pattern | None,
    house: Sources,
    kitchen: Kitchen,
    day: date,
) -> Outcome[Plan | None]:
    """The plan, with what could be read of it."""
    rest = HouseReading(day, kitchen)
    departures = rest.departures(lines)
    takes_orders = any(isinstance(entry.node, d.TakesOrders) for entry in lines)
    (wanted, standing), found = _wanted_in(block.children, pattern, house.orders if takes_orders else None, day, lines)
    reports = list(found)
    wanted, found = _without(wanted, block.children)
    reports += found
    breads = WantReading(day, kitchen.zone, house.menu, departures)
    if len(wanted) > MOST_BREADS:
        message = f"this plan wants {len(wanted)} breads, and {MOST_BREADS} are the most that one day is planned with"
        reports.append(
            report("plan-too-large", block.line.place(), message, "make two plans of it, each in its kitchen")
        )
        return Outcome(None, tuple(reports))
    if not wanted and not any(isinstance(entry.node, Unread) for entry in lines):
        message = f"{name.name} wants no bread"
        reports.append(
            report("plan-wants-nothing", block.line.place(), message, "write a bread and how many: `Ebb rye 14 loaves`")
        )
    wants = [breads.want(one, standing.get(fold(one.name), frozenset())) for one in wanted]
    too_many = tuple(_too_many(wants))
    if too_many:
        return Outcome(None, (*reports, *breads.reports, *too_many))
    ordering = [order.customer for one in wanted for order in one.orders]
    around = house.with_stages(one.name for one in wanted)
    names = frozenset((*house.menu.names, *around.stages.values()))
    plan = Plan(
        name=name.name,
        place=block.line.place(),
        kitchen=kitchen,
        date=day,
        wants=tuple(want for want in wants if want is not None),
        departures=departures,
        already=rest.already(lines, around.ready, names),
        shifts=rest.shifts(lines),
        fires=rest.fires(lines),
        away=rest.away(lines),
        appointments=rest.appointments(lines, house.menu, [one.name for one in wanted]),
        takes_orders=takes_orders,
    )
    reports += [*breads.reports, *rest.reports, *vans_with_nothing(departures, ordering), *too_old(plan, house.menu)]
    return Outcome(plan, tuple(reports))


def _too_many(wants: Iterable[Want | None]) -> Iterator[Diagnostic]:
    """A slip of noughts, which would be planned for hours."""
    for want in filter(None, wants):
        number = sum((number for number, _ in want.pieces), Fraction(0))
        if number > MOST_PIECES:
            message = f"{want.name}: {int(number):,} pieces are wanted, and {MOST_PIECES:,} of a bread are the most that one day is planned with"
            help = "write fewer, or make two plans of it, each in its kitchen"
            yield report("plan-too-large", want.place, message, help)


Standing = dict[str, frozenset[str]]
"""By a bread's folded name, the customers who get it by a standing order."""


def _wanted_in(
    own: tuple[Entry, ...],
    pattern: Pattern | None,
    orders: tuple[StandingOrder, ...] | None,
    day: date,
    lines: tuple[Entry, ...],
) -> Outcome[tuple[tuple[BreadWanted, ...], Standing]]:
    """The breads of a plan: its pattern's, or its own where it has none; with the standing orders that it takes in; and then
    what the plan says otherwise than its pattern."""
    mine, reports = _breads_of(own)
    breads, found = (mine, ()) if pattern is None else _breads_of(pattern.block.children)
    standing: Standing = {}
    if orders is not None:
        (breads, standing), taken = _with_orders(breads, orders, day, lines)
        found = (*found, *taken)
    if pattern is not None:
        for key, one in mine.items():
            breads[key] = same_bread(breads[key], one) if key in breads else one
            said = {fold(order.customer) for order in one.orders}
            standing[key] = standing.get(key, frozenset()) - said
    return Outcome((tuple(breads.values()), standing), (*found, *reports))


def _breads_of(entries: tuple[Entry, ...]) -> Outcome[dict[str, BreadWanted]]:
    breads: dict[str, BreadWanted] = {}
    reports: list[Diagnostic] = []
    for entry in entries:
        if isinstance(entry.node, d.WantNode):
            one, found = wanted_of(entry)
            reports += found
            there = breads.setdefault(fold(one.name), one)
            if there is not one:
                reports.append(bread_twice(there, one))
    return Outcome(breads, tuple(reports))


def _with_orders(
    wanted: dict[str, BreadWanted], orders: tuple[StandingOrder, ...], day: date, lines: tuple[Entry, ...]
) -> Outcome[tuple[dict[str, BreadWanted], Standing]]:
    """With the standing orders of a day, and who gets each bread by one. What a plan itself says of a customer and a bread
    stands instead of the order."""
    breads = dict(wanted)
    said = {key: {fold(order.customer) for order in one.orders} for key, one in breads.items()}
    standing: Standing = {}
    reports: list[Diagnostic] = []
    today = [
        order
        for order in orders
        if order.days.holds_on(day) or (day.year == ANY_MONDAY.year and day.weekday() in order.days.every)
    ]
    if not today:
        line = next(entry.line for entry in lines if isinstance(entry.node, d.TakesOrders))
        when = "; ".join(f"{order.customer}: {order.days.in_words}" for order in orders if order.days.is_said)
        message = f"no standing order falls on {DAYS[day.weekday()]} {day}"
        help = (
            f"they fall on other days ({when}), or `until` is over"
            if when
            else "write a block `order NAME` for each customer"
        )
        reports.append(report("no-orders-that-day", line.place(), message, help))
    for order in today:
        for one in order.wanted:
            key = fold(one.name)
            there = breads.setdefault(key, one._replace(counts=()))
            if fold(order.customer) in said.get(key, ()):
                continue
            twice = next((other for other in there.orders if fold(other.customer) == fold(order.customer)), None)
            if twice is not None:
                reports.append(customer_twice(one.name, twice, one.place))
                continue
            breads[key] = there._replace(orders=(*there.orders, ForSomebody(order.customer, one.counts, one.place)))
            standing[key] = standing.get(key, frozenset()) | {fold(order.customer)}
    return Outcome((breads, standing), tuple(reports))


def _without(wanted: tuple[BreadWanted, ...], own: tuple[Entry, ...]) -> Outcome[tuple[BreadWanted, ...]]:
    reports = []
    for entry, name in left_out(own):
        kept = tuple(one for one in wanted if fold(one.name) != fold(name.text))
        if len(kept) == len(wanted):
            near = nearest(name.text, tuple(one.name for one in wanted))
            place = entry.line.place(name.start, name.end)
            help = (
                ""
                if near
                else "`without` leaves out a bread of the plan that this one is like, or of its standing orders"
            )
            fixes = one_of(place, [near] if near else ())
            reports.append(
                report("nothing-left-out", place, f"there is no {name.text} to leave out", help, fixes=fixes)
            )
        wanted = kept
    return Outcome(wanted, tuple(reports))
