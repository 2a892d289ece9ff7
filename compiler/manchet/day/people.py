"""Who is there, what may be used and what leaves: the lines of a plan that tell of no bread."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from datetime import date, timedelta
from fractions import Fraction
from itertools import pairwise

from manchet.day.breads import Menu
from manchet.day.moments import Between, MomentReading, clock_text
from manchet.day.said import AlreadyMade, Appointment, Away, Departure, Fires, SaidShift
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import one_of
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.kitchen.model import Kitchen
from manchet.larder.figures import worth
from manchet.quantities.units import MASS, TIME
from manchet.source.text import Line
from manchet.syntax import plan_nodes as d
from manchet.syntax.clauses import Amount, Word
from manchet.syntax.loose.words import NUMBERS
from manchet.syntax.nodes import Entry

LONGEST_SHIFT = timedelta(hours=16)
"""Nobody means more. Our rule; what the law allows is less."""

Ready = Callable[[str], str | None]
"""Of a name, the folded one of the stage, preparation or ingredient that it is; None where there is none."""


class HouseReading(MomentReading):
    """Reads these lines for one plan, in its kitchen."""

    def __init__(self, on: date, kitchen: Kitchen) -> None:
        super().__init__(on, kitchen.zone)
        self.kitchen = kitchen

    # ---- what leaves ----

    def departures(self, entries: Iterable[Entry]) -> tuple[Departure, ...]:
        found: list[Departure] = []
        taken: dict[str, Departure] = {}
        for entry in entries:
            line, node = entry.line, entry.node
            if not isinstance(node, d.Departs):
                continue
            at = self._moments(node.at, line)
            name = f"{node.word.text} {node.name.text}" if node.name else node.word.text
            for word in node.customers:
                there = taken.get(fold(word.text))
                if there is not None:
                    message = f"{word.text} is on the {there.name} of {clock_text(there.at)} already"
                    also = (there.place, "the first is here")
                    place = line.place(word.start, word.end)
                    self.reports.append(report("customer-on-two-vans", place, message, "keep one of the two", also))
            if at is not None:
                customers = tuple(word.text for word in node.customers)
                found.append(Departure(name, at.end, customers, line.place()))
                taken |= {fold(customer): found[-1] for customer in customers}
        return tuple(found)

    # ---- people ----

    def shifts(self, entries: Iterable[Entry]) -> tuple[SaidShift, ...]:
        found = [
            shift
            for entry in entries
            if isinstance(entry.node, d.ShiftNode)
            for shift in self._shift(entry, entry.node)
        ]
        for name in dict.fromkeys(fold(shift.name) for shift in found if shift.name):
            own = sorted((shift for shift in found if fold(shift.name) == name), key=lambda shift: shift.start)
            for one, two in pairwise(own):
                if two.start < one.end:
                    message = (
                        f"{two.name} is there from {clock_text(two.start)} on, and till {clock_text(one.end)} already"
                    )
                    also = (one.place, "the shift before it")
                    self.reports.append(
                        report("shifts-overlap", two.place, message, "make one shift of them, or part them", also)
                    )
        return tuple(found)

    def _shift(self, entry: Entry, node: d.ShiftNode) -> Iterator[SaidShift]:
        line = entry.line
        span = self._from_to(node.start, node.end, line, "shift-ends-first", "the shift")
        hands = 1 if node.number is None else self._whole(node.number, line, "hands 2 Fri 22:00 to Sat 04:00")
        if node.name is not None and " and " in f" {fold(node.name.text)} ":
            message = f"`{node.name.text}`: a page of work is one person's"
            place = line.place(node.name.start, node.name.end)
            self.reports.append(
                report("shift-of-two", place, message, "write a line for each, or `hands 2` without names")
            )
            return
        if node.name is not None and fold(node.name.text) in NUMBERS:
            number = NUMBERS[fold(node.name.text)]
            place = line.place(node.name.start, node.name.end)
            message = f"is `{node.name.text}` a person or a number?"
            fixes = one_of(place, [number])
            self.reports.append(
                report("shift-of-two", place, message, f"write `hands {number}` for a number", fixes=fixes)
            )
            return
        rest = None if node.rest is None else worth(node.rest, TIME)
        if span is None or hands is None:
            return
        length = span.end - span.start
        if length > LONGEST_SHIFT:
            hours = f"{length.total_seconds() // 3600:g}"
            message = f"this shift is {hours} h long, from {clock_text(span.start)} to {clock_text(span.end)}"
            self.reports.append(
                report("shift-very-long", line.place(), message, "look at its two days, or make two shifts of it")
            )
        if node.rest is not None and (rest is None or rest >= Fraction(int(length.total_seconds()))):
            message = f"`{line.body[node.rest.start : node.rest.end]}` is no break that fits into this shift"
            place = line.place(node.rest.start, node.rest.end)
            self.reports.append(report("break-too-long", place, message, "write it as `break 30 min`"))
            return
        yield SaidShift(node.name.text if node.name else "", hands, span.start, span.end, rest, line.place())

    # ---- things ----

    def fires(self, entries: Iterable[Entry]) -> tuple[Fires, ...]:
        found: list[Fires] = []
        for entry in entries:
            line, node = entry.line, entry.node
            if not isinstance(node, d.FiresNode):
                continue
            number = 1 if node.number is None else self._whole(node.number, line, "oven mother 1 fire")
            name = self._thing(node.thing, node.name, line)
            lit = None if node.lit is None else self._from_to(node.lit, node.lit_until, line, "window-ends-first", "it")
            if lit is not None and self._runs_backwards(lit, node.lit_until, line.place()):
                lit = None
            if name is None or number is None or (node.lit is not None and lit is None):
                continue
            if any(fold(one.oven) == fold(name) for one in found):
                message = f"it is said twice of {node.thing.text} {name} how often it is lit"
                self.reports.append(report("plan-said-twice", line.place(), message, "keep one of the two"))
                continue
            found.append(Fires(name, number, None if lit is None else (lit.start, lit.end), line.place()))
        return tuple(found)

    def away(self, entries: Iterable[Entry]) -> tuple[Away, ...]:
        found = []
        for entry in entries:
            line, node = entry.line, entry.node
            if isinstance(node, d.TakenNode):
                span = self._from_to(node.start, node.end, line, "window-ends-first", "it")
                name = self._thing(node.thing, node.name, line)
                if span is not None and name is not None:
                    found.append(Away(node.thing.text, name, span.start, span.end, line.place()))
        return tuple(found)

    def _thing(self, thing: Word, name: Word | None, line: Line) -> str | None:
        """What the kitchen calls the thing; without a name the only one of its kind."""
        word = thing.text
        known = tuple(things_of(self.kitchen, word))
        said = name.text if name else ""
        for one in known:
            if fold(one) == fold(said):
                return one
        if not said and len(known) == 1:
            return known[0]
        house = self.kitchen.name or "the kitchen"
        listed = list_of_words(tuple(f"`{word} {one}`" for one in known))
        place = line.place(thing.start, (name or thing).end)
        message = f"{house} has no {f'{word} {said}'.strip()}" if said or not known else f"which {word} is it?"
        near = nearest(said, known) if said else None
        fixes = one_of(place, [f"{word} {near}"] if near else ())
        help = "" if fixes else f"write {listed}" if listed else f"describe it there: `{word} {said or 'NAME'}`"
        self.reports.append(report("no-such-thing", place, message, help, fixes=fixes))
        return None

    # ---- what is there, what is fixed ----

    def already(self, entries: Iterable[Entry], ready: Ready, names: Iterable[str]) -> tuple[AlreadyMade, ...]:
        found = []
        for entry in entries:
            line, node = entry.line, entry.node
            for item in node.items if isinstance(node, d.AlreadyThere) else ():
                key = ready(item.name.text)
                place = line.place(item.name.start, item.name.end)
                if key is None:
                    near = nearest(item.name.text, frozenset(names))
                    message = f"no stage, preparation or starter here is called {item.name.text}"
                    help = "" if near else "write the name as the formulas have it"
                    fixes = one_of(place, [near] if near else ())
                    self.reports.append(report("nothing-made-so", place, message, help, fixes=fixes))
                    continue
                at = None if item.at is None else self._moments(item.at, line)
                grams = None if item.amount is None else worth(item.amount, MASS)
                if item.at is None or at is not None:
                    found.append(AlreadyMade(item.name.text, key, grams, at and at.end, place))
        return tuple(found)

    def appointments(self, entries: Iterable[Entry], menu: Menu, wanted: Iterable[str]) -> tuple[Appointment, ...]:
        """`wanted` are the names of the plan's breads."""
        breads = {fold(name): name for name in wanted}
        found = []
        for entry in entries:
            line, node = entry.line, entry.node
            if not isinstance(node, d.AppointmentNode):
                continue
            at = self._moments(node.at, line)
            bread = breads.get(fold(node.name.text))
            if bread is None:
                near = nearest(node.name.text, tuple(breads.values()))
                place = line.place(node.name.start, node.name.end)
                message = f"this plan makes no {node.name.text}"
                help = "" if near else "write how many of it are wanted, in a line of its own"
                fixes = one_of(place, [near] if near else ())
                self.reports.append(report("appointment-of-no-bread", place, message, help, fixes=fixes))
                continue
            offer = menu.offer(bread)
            if offer is not None and node.verb.text not in offer.verbs:
                place = line.place(node.verb.start, node.verb.end)
                message = f"{bread} has no step `{node.verb.text}`"
                help = f"its steps are {list_of_words(tuple(sorted(filter(None, offer.verbs))), 'and')}"
                self.reports.append(report("appointment-of-no-step", place, message, help))
            elif at is not None:
                found.append(Appointment(node.verb.text, bread, at.start, line.place()))
        return tuple(found)

    # ---- their figures ----

    def _from_to(self, start: d.OnClock, end: d.OnClock | None, line: Line, name: str, what: str) -> Between | None:
        span = self._moments(start, line)
        span = None if span is None else self._until(end, line, span)
        if span is None:
            return None
        if end is None and span.start == span.end and name == "shift-ends-first":
            message = f"this shift begins {clock_text(span.start)}, and until when?"
            help = "write both, as in `hands Tom Fri 16:00 to Sat 02:30`"
            self.reports.append(report("shift-without-end", line.place(), message, help))
            return None
        if span.end < span.start or (name == "shift-ends-first" and span.end == span.start):
            self._ends_first(name, what, span, line.place())
            return None
        return span

    def _whole(self, amount: Amount, line: Line, example: str) -> int | None:
        if (
            amount.low is not None
            and amount.low == amount.high
            and amount.low.denominator == 1
            and 1 <= amount.low <= 99
        ):
            return int(amount.low)
        place = line.place(amount.start, amount.end)
        message = f"`{line.body[amount.start : amount.end]}` is no number that can be meant here"
        self.reports.append(report("plan-number-unfit", place, message, f"write a whole number, as in `{example}`"))
        return None


def things_of(kitchen: Kitchen, word: str) -> Iterator[str]:
    """The names of a kitchen's things of one kind."""
    yield from (one.name for one in kitchen.mixers if word == "mixer")
    yield from (one.name for one in kitchen.ovens if word == "oven")
    yield from (one.name for one in kitchen.scales if word == "scale")
    yield from (one.name for one in kitchen.colds if one.word == word)
    yield from (one.name for one in kitchen.vessels if one.word == word)


def vans_with_nothing(departures: Iterable[Departure], ordering: Iterable[str]) -> Iterator[Diagnostic]:
    """A van that leaves with somebody who gets nothing: mostly a name that is written in two ways."""
    names = {fold(name): name for name in ordering}
    for departure in departures:
        for customer in departure.customers:
            if fold(customer) not in names:
                near = nearest(customer, tuple(names.values()))
                message = f"the {departure.name} has nothing for {customer}"
                help = (
                    f"did you mean {near}?" if near else f"write `for {customer}` under a bread, or leave the name out"
                )
                yield report("nothing-for-a-customer", departure.place, message, help)
