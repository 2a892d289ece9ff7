"""Standing orders: what a customer gets on certain days, until further notice."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from manchet.day.moments import DAYS, date_of, no_such_date, weekday_of
from manchet.day.wanted import BreadWanted, wanted_of
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.syntax import plan_nodes as d
from manchet.syntax.nodes import Entry
from manchet.syntax.parsed_headings import name_of


class DaysSaid(NamedTuple):
    """On which days a plan or an order holds: one date, or some weekdays up to a date."""

    on: date | None = None
    every: tuple[int, ...] = ()
    until: date | None = None
    place: Place | None = None
    """Of the line that says so."""

    @property
    def is_said(self) -> bool:
        return self.on is not None or bool(self.every)

    def holds_on(self, day: date) -> bool:
        return day == self.on or (day.weekday() in self.every and (self.until is None or day <= self.until))

    @property
    def in_words(self) -> str:
        """`Tue, Thu and Sat`"""
        named = [str(self.on)] if self.on else [DAYS[day] for day in self.every]
        return f"{', '.join(named[:-1])} and {named[-1]}" if len(named) > 1 else "".join(named)


class StandingOrder(NamedTuple):
    customer: str
    days: DaysSaid
    wanted: tuple[BreadWanted, ...]
    place: Place


def days_said(entries: Iterable[Entry]) -> Outcome[DaysSaid]:
    """What the lines of a plan or an order say of its days; all other lines are left alone."""
    days = DaysSaid()
    reports: list[Diagnostic] = []
    seen: set[str] = set()
    for entry in entries:
        line, node = entry.line, entry.node
        if not isinstance(node, (d.OnDay, d.EveryDay, d.UntilDay)):
            continue
        said = line.body.split()[0].lower()
        if said in seen:
            reports.append(report("plan-said-twice", line.place(), f"there are two lines `{said}`", "keep one of them"))
            continue
        seen.add(said)
        if isinstance(node, d.EveryDay):
            every = tuple(sorted({weekday_of(word) for word in node.days}))
            days = days._replace(every=every, place=days.place or line.place())
            continue
        place = line.place(node.date.start, node.date.end)
        day = date_of(node.date.text)
        if day is None:
            reports.append(no_such_date(node.date.text, place))
        elif isinstance(node, d.OnDay):
            days = days._replace(on=day, place=line.place())
        else:
            days = days._replace(until=day)
    return Outcome(days, tuple(reports))


def standing_order_of(block: Entry) -> Outcome[StandingOrder]:
    """The order of an `order` block. What its breads are is looked up where it is taken in."""
    days, found = days_said(block.children)
    reports = list(found)
    unread = any(report.name == "plan-no-such-date" for report in found)
    if not days.is_said and not unread:
        message = f"the order of {name_of(block)} says no day"
        help = "write `every Tue, Thu, Sat`, or `on 2026-11-28` for one day"
        reports.append(report("order-without-a-day", block.line.place(), message, help))
    wanted: list[BreadWanted] = []
    for entry in block.children:
        if not isinstance(entry.node, d.WantNode):
            continue
        one, found = wanted_of(entry)
        reports += found
        first = next((there for there in wanted if fold(there.name) == fold(one.name)), None)
        if first is not None:
            reports.append(bread_twice(first, one))
        elif one.orders or one.spare or one.ending or one.age:
            message = f"an order says how many {one.name}, and nothing else of it"
            help = "by when and how old is a matter of the plan; another customer has an order of their own"
            reports.append(report("order-says-more", one.line.place(), message, help))
        elif not one.counts and one.is_whole:
            reports.append(
                report("wanted-how-many", one.place, f"how many of {one.name}?", f"write `{one.name} 4 loaves`")
            )
        else:
            wanted.append(one)
    return Outcome(StandingOrder(name_of(block), days, tuple(wanted), block.line.place()), tuple(reports))


def bread_twice(first: BreadWanted, second: BreadWanted) -> Diagnostic:
    message = f"{first.name} stands here twice"
    help = "put the two into one line, with `for NAME` under it for each who gets some"
    return report("bread-twice", second.place, message, help, (first.place, "the first is here"))
