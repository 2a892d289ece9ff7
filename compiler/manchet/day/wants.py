"""What is wanted, bound to breads and moments: names looked up, counts added up, an end for each."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from fractions import Fraction

from manchet.day.breads import Menu, Offer
from manchet.day.moments import DAYS, MomentReading, clock_text
from manchet.day.said import CustomerOrder, Departure, Finish, Pieces, SaidEnd, Want
from manchet.day.standing import StandingOrder
from manchet.day.wanted import BreadWanted, SaidCount, alike
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import line_under, one_of
from manchet.diagnostics.reports import list_of_words, report
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.measures import seconds
from manchet.formula.nouns import noun_for
from manchet.formula.ranges import Range
from manchet.quantities.printing import mass_text


class WantReading(MomentReading):
    """Binds the breads of one plan."""

    def __init__(self, on: date, zone: str, menu: Menu, departures: Iterable[Departure] = ()) -> None:
        super().__init__(on, zone)
        self.menu = menu
        self.departures = tuple(departures)

    def want(self, wanted: BreadWanted, standing: frozenset[str]) -> Want | None:
        """The bread bound; None, with the reason, where it cannot be. `standing` are the customers, folded, who get it by a
        standing order."""
        offer = self.offer(wanted)
        if offer is None or not wanted.is_whole:
            return None
        before = len(self.reports)
        counts = self.of_offer(wanted.counts, offer)
        spare = self.of_offer(wanted.spare, offer)
        ordered = [(one, self.of_offer(one.counts, offer)) for one in wanted.orders]
        if len(self.reports) > before:
            self._judge_end(wanted, offer)
            return None
        open_orders = [one for one, found in ordered if not found]
        if open_orders:
            rest = self._left(wanted, counts, spare, [found for _, found in ordered], len(open_orders))
            ordered = [(one, found or rest) for one, found in ordered]
        if len(self.reports) > before:
            return None
        made = _sum([spare, *(found for _, found in ordered)])
        if not counts:
            counts = made
        elif made and _figures(made) != _figures(counts):
            self._differ(wanted, counts, made)
        end = self._own_end(wanted)
        if len(self.reports) > before:
            return None
        if not counts:
            message = f"how many of {offer.name}?"
            what = "2 kg" if offer.by_weight else f"12 {offer.nouns[0]}"
            self.reports.append(report("wanted-how-many", wanted.place, message, f"write `{offer.name} {what}`"))
            return None
        orders = []
        for one, found in ordered:
            its_end = end or self._departure_of(one.customer)
            if its_end is not None:
                pieces, grams = _parted(found)
                is_standing = fold(one.customer) in standing
                orders.append(CustomerOrder(one.customer, pieces, grams, its_end, is_standing, one.place))
        ends = [order.end for order in orders]
        if len(orders) < len(ordered) or (end is None and not ends):
            self._no_end(wanted, offer, [one.customer for one, _ in ordered])
            return None
        if end is not None:
            self._late_for_the_van(wanted, end)
        pieces, grams = _parted(counts)
        spare_pieces, spare_grams = _parted(spare)
        first = end or min(ends, key=lambda one: one.by)
        age = self._age(wanted, offer)
        return Want(offer.name, pieces, grams, first, tuple(orders), spare_pieces, spare_grams, age, wanted.place)

    def offer(self, wanted: BreadWanted) -> Offer | None:
        offer = self.menu.offer(wanted.name)
        if offer is None:
            from manchet.syntax.mistakes.days import as_a_shift  # a sound file has no need of it

            near = as_a_shift(wanted.name) or nearest(wanted.name, self.menu.names)
            message = f"no formula here is called {wanted.name}"
            help = (
                ""
                if near
                else "write the name as its formula has it; one with a figure or a comma in it goes in quotes"
            )
            fixes = one_of(wanted.place, [near] if near else ())
            self.reports.append(report("no-such-bread", wanted.place, message, help, fixes=fixes))
        return offer

    def of_offer(self, counts: Iterable[SaidCount], offer: Offer) -> tuple[SaidCount, ...]:
        """The counts in the formula's own nouns; what it does not make is reported."""
        found = []
        for one in counts:
            noun = offer.noun(one.noun) if one.noun else ""
            if (one.noun and noun is not None) or (not one.noun and offer.by_weight):
                found.append(one._replace(noun=noun or ""))
            elif not offer.is_whole:
                found.append(one)
            else:
                self._not_made(one, offer)
        return tuple(found)

    def _not_made(self, one: SaidCount, offer: Offer) -> None:
        written = one.place.text[one.place.column - 1 : one.place.end_column - 1]
        if not offer.nouns:
            message = f"{offer.name} is made by weight, not as {one.noun}"
            self.reports.append(report("no-such-piece", one.place, message, "write how much, as in `2 kg`"))
            return
        message = f"{offer.name} makes {list_of_words(offer.nouns, 'and')}, and not {one.noun or written}"
        fixes = one_of(one.place, (f"{one.number} {noun}" for noun in offer.nouns)) if one.noun else ()
        help = "" if fixes else f"write how many, as in `12 {offer.nouns[0]}`"
        self.reports.append(report("no-such-piece", one.place, message, help, fixes=fixes))

    def _left(
        self,
        wanted: BreadWanted,
        counts: tuple[SaidCount, ...],
        spare: tuple[SaidCount, ...],
        ordered: list[tuple[SaidCount, ...]],
        customers: int,
    ) -> tuple[SaidCount, ...]:
        """What is left for the one customer whose order has no count."""
        spoken_for = _sum([spare, *ordered])
        rest = []
        for one in counts:
            number = one.number - sum(
                (there.number for there in spoken_for if alike(there.noun, one.noun)), Fraction(0)
            )
            if number > 0:
                rest.append(one._replace(number=number))
        if customers > 1 or not rest:
            place = next(order.place for order in wanted.orders if not order.counts)
            message = f"how many {wanted.name} for {next(o.customer for o in wanted.orders if not o.counts)}?"
            help = "only one customer may go without a count, and gets what is left of the bread's own"
            self.reports.append(report("order-how-many", place, message, help))
        return tuple(rest)

    def _differ(self, wanted: BreadWanted, counts: tuple[SaidCount, ...], made: tuple[SaidCount, ...]) -> None:
        said, sum_of_all = _in_words(counts), _in_words(made)
        message = f"{wanted.name}: {said}, and orders and spare are {sum_of_all}"
        sums = _figures(made)
        left = tuple(one._replace(number=one.number - sums.pop(one.noun, Fraction(0))) for one in counts)
        missing = _in_words(one for one in left if one.number > 0)
        fits_spare = missing and not sums and not wanted.spare and all(one.number >= 0 for one in left)
        fixes = (line_under(wanted.line.place(), f"  spare {missing}"),) if fits_spare else ()
        who = (
            f"say who gets the others, or write `spare {missing}` under it"
            if fits_spare
            else f"write {sum_of_all}, or change an order"
        )
        self.reports.append(report("orders-do-not-add-up", wanted.place, message, who, fixes=fixes))

    # ---- by when ----

    def _own_end(self, wanted: BreadWanted) -> SaidEnd | None:
        if wanted.ending is None:
            return None
        ending, line = wanted.ending
        span = self._moments(ending.at, line)
        span = None if span is None else self._until(ending.until, line, span)
        if span is None:
            return None
        if span.end < span.start:
            self._ends_first("window-ends-first", "it", span, line.place())
            return None
        if self._runs_backwards(span, ending.until, line.place()):
            return None
        not_before = span.start if span.start != span.end else None
        return SaidEnd(
            Finish(ending.word.text), span.end, not_before, "", line.place(ending.word.start, ending.at.clock.end)
        )

    def _departure_of(self, customer: str) -> SaidEnd | None:
        for one in self.departures:
            if fold(customer) in map(fold, one.customers):
                return SaidEnd(Finish.PACKED, one.at, None, one.name, one.place)
        return None

    def _judge_end(self, wanted: BreadWanted, offer: Offer) -> None:
        """By when it is wanted, of a bread whose count is none: it is another mistake of the same line."""
        customers = [one.customer for one in wanted.orders]
        if wanted.ending is not None:
            self._own_end(wanted)
        elif not customers or any(self._departure_of(one) is None for one in customers):
            self._no_end(wanted, offer, customers)

    def _no_end(self, wanted: BreadWanted, offer: Offer, customers: list[str]) -> None:
        without = [one for one in customers if self._departure_of(one) is None]
        nobody = f"nothing takes it to {list_of_words(tuple(without), 'and')}, and " if without else ""
        message = f"{nobody}nothing says by when {offer.name} is to be there"
        help = (
            f"write `, ready {DAYS[self.on.weekday()]} 06:00` behind it, or in a line `van leaves` whom it leaves with"
        )
        self.reports.append(report("wanted-by-when", wanted.place, message, help))

    def _late_for_the_van(self, wanted: BreadWanted, end: SaidEnd) -> None:
        for order in wanted.orders:
            leaves = self._departure_of(order.customer)
            if leaves is not None and leaves.by < end.by:
                message = f"the {leaves.departure} leaves for {order.customer} at {clock_text(leaves.by)}, before {wanted.name} is there"
                help = f"{wanted.name} is wanted {end.how.value} {clock_text(end.by)}: for {order.customer} that is too late"
                self.reports.append(report("late-for-the-van", order.place, message, help))

    def _age(self, wanted: BreadWanted, offer: Offer) -> Range | None:
        return offer.sold if wanted.age is None else seconds(wanted.age[0].time)


def mistakes_in_order(order: StandingOrder, menu: Menu) -> tuple[Diagnostic, ...]:
    """What is wrong with the breads of a standing order, whether or not a plan takes it in."""
    reading = WantReading(date(2001, 1, 1), "", menu)
    for one in order.wanted:
        offer = reading.offer(one)
        if offer is not None:
            reading.of_offer(one.counts, offer)
    return tuple(reading.reports)


def _sum(parts: Iterable[tuple[SaidCount, ...]]) -> tuple[SaidCount, ...]:
    """Every noun once, in the order it first stands."""
    found: dict[str, SaidCount] = {}
    for part in parts:
        for one in part:
            there = found.get(one.noun)
            found[one.noun] = one if there is None else there._replace(number=there.number + one.number)
    return tuple(found.values())


def _figures(counts: Iterable[SaidCount]) -> dict[str, Fraction]:
    return {one.noun: one.number for one in counts}


def _parted(counts: Iterable[SaidCount]) -> tuple[Pieces, Fraction | None]:
    """The pieces, and the grams of what is wanted by weight."""
    pieces, grams = [], None
    for one in counts:
        if one.noun:
            pieces.append((one.number, one.noun))
        else:
            grams = one.number
    return tuple(pieces), grams


def _in_words(counts: Iterable[SaidCount]) -> str:
    return ", ".join(
        f"{one.number} {noun_for(one.number, one.noun)}" if one.noun else mass_text(one.number) for one in counts
    )
