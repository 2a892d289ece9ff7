"""What a plan wants eaten that is past its time by then: made too long ago, or standing longer than it is good for."""

from __future__ import annotations

from collections.abc import Iterator, Set
from datetime import datetime
from fractions import Fraction

from manchet.checks.saying import duration, time_kept
from manchet.day.breads import Menu, Offer
from manchet.day.clock import minutes_down
from manchet.day.jobs.people import clock_of
from manchet.day.moments import clock_text
from manchet.day.said import AlreadyMade, Finish, Plan, Want
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold


def too_old(plan: Plan, menu: Menu) -> Iterator[Diagnostic]:
    """Of what is there already, and of what stands while a dish is served."""
    for one in plan.already:
        offer = menu.offer(one.name)
        if offer is not None and one.made is not None:
            yield from _made_too_long_ago(one, one.made, offer, plan, menu)
    for want in plan.wants:
        yield from _served_too_long(want, plan, menu)


def _made_too_long_ago(one: AlreadyMade, made: datetime, offer: Offer, plan: Plan, menu: Menu) -> Iterator[Diagnostic]:
    kept, oldest = offer.keeps, None if offer.is_preparation or offer.sold is None else offer.sold.high
    seconds = oldest if kept is None else kept.seconds
    if seconds is None:
        return
    said = f"sold at most {duration(seconds)} old" if kept is None else f"good for {time_kept(plan.kitchen, kept)}"
    clock = clock_of(plan)
    over = clock.minute(made) + minutes_down(seconds)
    for want in plan.wants:
        used, why = _used(want, plan)
        if clock.minute(used) > over and one.key in _takes(want.name, menu):
            message = (
                f"{offer.name} of {clock_text(made)} is {said}, until {clock_text(clock.at(over))}; "
                f"{want.name} is {why} {clock_text(used)}"
            )
            help = f"{'throw it away and ' if offer.is_preparation else ''}take it out of this line: then the plan makes it anew"
            yield report("already-too-old", one.place, message, help)
            return


def _used(want: Want, plan: Plan) -> tuple[datetime, str]:
    """Until when it is eaten, of what is served; of all else the first moment at which anybody can use it."""
    if want.end.how is Finish.SERVED or not plan.shifts:
        return want.end.by, f"{want.end.how.value} until"
    return min(shift.start for shift in plan.shifts), "begun no sooner than"


def _served_too_long(want: Want, plan: Plan, menu: Menu) -> Iterator[Diagnostic]:
    """What is good for less than the hours in which a dish is served is gone before its last plate."""
    offer = menu.offer(want.name)
    if offer is None or not offer.is_dish or want.end.not_before is None or want.end.place is None:
        return
    minutes = clock_of(plan).between(want.end.not_before, want.end.by)
    for name in sorted(_takes(want.name, menu)):
        part = menu.offer(name)
        kept = None if part is None else part.keeps
        if part is not None and kept is not None and kept.seconds < minutes * 60:
            hours = duration(Fraction(minutes * 60))
            message = f"{want.name} is served for {hours}, and {part.name} is good for {time_kept(plan.kitchen, kept)}"
            help = f"serve it for {duration(kept.seconds)}, or say in {part.name} how long it keeps cold too"
            yield report("served-too-long", want.end.place, message, help, (kept.place, f"{part.name} says it here"))
            return


def _takes(name: str, menu: Menu) -> Set[str]:
    """The folded names of all that goes into something, and into what it is made of."""
    found: set[str] = set()
    waiting = [fold(name)]
    while waiting:
        offer = menu.offer(waiting.pop())
        if offer is not None:
            waiting += [key for key in offer.takes - found if menu.offer(key) is not None]
            found |= offer.takes
    return found
