"""The lines of one bread in a plan or an order, put together: how many, for whom, by when, how old. Names are not looked up yet."""

from __future__ import annotations

from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.nouns import same_noun
from manchet.quantities.units import MASS, UNITS
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import plan_nodes as d
from manchet.syntax.clauses import Amount, Word
from manchet.syntax.nodes import Entry, Unread


class SaidCount(NamedTuple):
    """How many of what; `noun` is "" where `number` is grams."""

    number: Fraction
    noun: str
    place: Place


class ForSomebody(NamedTuple):
    """`for Quay cafe 4 loaves`; without a count all that is left."""

    customer: str
    counts: tuple[SaidCount, ...]
    place: Place


class BreadWanted(NamedTuple):
    """One bread. `ending` and `age` keep the line they stand in."""

    name: str
    line: Line
    word: Word
    counts: tuple[SaidCount, ...] = ()
    orders: tuple[ForSomebody, ...] = ()
    spare: tuple[SaidCount, ...] = ()
    ending: tuple[d.Ending, Line] | None = None
    age: tuple[d.OldAt, Line] | None = None
    is_whole: bool = True
    """False where some of it has a mistake that is reported."""

    @property
    def place(self) -> Place:
        return self.line.place(self.word.start, self.word.end)


def wanted_of(entry: Entry) -> Outcome[BreadWanted]:
    """The bread of a plan's or an order's line, with what stands under it."""
    assert isinstance(entry.node, d.WantNode)
    wanted = BreadWanted(entry.node.name.text, entry.line, entry.node.name)
    reports: list[Diagnostic] = []
    lines = [(entry.line, entry.node.parts)]
    lines += [(child.line, child.node.parts) for child in entry.children if isinstance(child.node, d.WantLine)]
    for line, parts in lines:
        wanted, found = _with_parts(wanted, parts, line)
        reports += found
    unread = any(isinstance(child.node, Unread) for child in entry.children)
    return Outcome(wanted._replace(is_whole=not reports and not unread), tuple(reports))


def _with_parts(wanted: BreadWanted, parts: tuple[d.WantPart, ...], line: Line) -> Outcome[BreadWanted]:
    reports: list[Diagnostic] = []
    owner = ""
    for part in parts:
        match part:
            case d.Customer(name):
                owner = "for"
                place = line.place(name.start, name.end)
                first = next((one for one in wanted.orders if fold(one.customer) == fold(name.text)), None)
                if first is not None:
                    reports.append(customer_twice(wanted.name, first, place))
                wanted = wanted._replace(orders=(*wanted.orders, ForSomebody(name.text, (), place)))
            case d.SpareNode():
                owner = "spare"
            case d.CountOf(amount, noun):
                counted, found = _counted(amount, noun, line)
                reports += found
                if counted is not None:
                    wanted, found = _adding(wanted, owner, counted)
                    reports += found
            case d.Ending():
                if wanted.ending is not None:
                    reports.append(_said_twice(wanted.name, "by when it is there", line.place()))
                wanted = wanted._replace(ending=wanted.ending or (part, line))
            case d.OldAt():
                if wanted.age is not None:
                    reports.append(_said_twice(wanted.name, "how old it is to be", line.place()))
                wanted = wanted._replace(age=wanted.age or (part, line))
    return Outcome(wanted, tuple(reports))


def _adding(wanted: BreadWanted, owner: str, counted: SaidCount) -> Outcome[BreadWanted]:
    """With one more count, of the bread itself, of the last customer or of what is spare."""
    if owner == "for":
        *others, last = wanted.orders
        counts = last.counts
        changed = wanted._replace(orders=(*others, last._replace(counts=(*counts, counted))))
    elif owner == "spare":
        counts = wanted.spare
        changed = wanted._replace(spare=(*counts, counted))
    else:
        counts = wanted.counts
        changed = wanted._replace(counts=(*counts, counted))
    if any(alike(one.noun, counted.noun) for one in counts):
        return Outcome(wanted, (_said_twice(wanted.name, f"how many {counted.noun or 'grams'}", counted.place),))
    return Outcome(changed)


def alike(one: str, other: str) -> bool:
    """Whether two counts are of the same: a noun, or a weight."""
    return one == other or bool(one and other and same_noun(one, other))


def _counted(amount: Amount, noun: Word | None, line: Line) -> Outcome[SaidCount | None]:
    place = line.place(amount.start, noun.end if noun else amount.end)
    if noun is None:
        unit = UNITS[amount.unit]
        grams = (amount.low or Fraction(0)) * unit.factor
        if unit.dimension == MASS and amount.low == amount.high and grams > 0:
            return Outcome(SaidCount(grams, "", place))
    elif amount.low is not None and amount.low == amount.high and amount.low >= 1 and amount.low.denominator == 1:
        return Outcome(SaidCount(amount.low, noun.text, place))
    message = f"`{line.body[amount.start : amount.end]}` is no number of pieces that somebody can bake for"
    return Outcome(None, (report("wanted-no-number", place, message, "write one whole number, 1 or more"),))


def customer_twice(bread: str, first: ForSomebody, place: Place) -> Diagnostic:
    message = f"{first.customer} gets {bread} twice"
    return report("customer-twice", place, message, "put the two into one line", (first.place, "the first is here"))


def _said_twice(bread: str, what: str, place: Place) -> Diagnostic:
    return report("plan-said-twice", place, f"it is said twice of {bread} {what}", "keep one of the two")
