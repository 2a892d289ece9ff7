"""The head of a formula: what it makes, of what kind, with which losses."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.fixes import one_of, without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.measures import seconds
from manchet.formula.model import Makes
from manchet.formula.percents import percent
from manchet.formula.ranges import Range
from manchet.quantities.dates import is_day
from manchet.quantities.units import UNITS
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.openings import OPENINGS
from manchet.syntax.vocabulary import KIND


class Head(NamedTuple):
    about: str = ""
    kind: str = ""
    status: str = ""
    makes: tuple[Makes, ...] = ()
    from_flour: Fraction | None = None
    dough_loss: Fraction = Fraction(0)
    bake_loss: Fraction | None = None
    never_under: Fraction | None = None
    """Grams, of `makes 5 kg at least`."""
    sold: Range | None = None
    """Seconds since it left the oven."""
    of_dough_flour: Place | None = None
    """Where `written on dough flour` stands, if it does."""


def head_of(entries: Iterable[Entry]) -> Outcome[Head]:
    """Read the head lines of a block; every other line is left alone."""
    head = Head()
    reports: list[Diagnostic] = []
    first: dict[str, Place] = {}
    for entry in entries:
        line, node = entry.line, entry.node
        if isinstance(node, nodes.Setting):
            continue  # how it is sold: `sale` reads that
        said = "overall" if isinstance(node, nodes.OverallHead) else words_of_line(node)
        if said in first:
            message = f"`{said}` is written twice in this formula"
            there = (first[said], "the first is here")
            place, help = line.place(), "keep one of the two lines"
            keep_first = () if entry.children else (without_line(place, "leave out this line"),)
            reports.append(report("said-twice", place, message, help, there, fixes=keep_first))
            continue
        if said:
            first[said] = line.place()
        head, found = _with_line(head, node, line)
        reports += found
    return Outcome(head, tuple(reports))


def may_be_made_by_unread(entries: Iterable[Entry]) -> bool:
    """Whether a line of the head that could not be read may say what is made: then nothing is said to be missing."""
    lines = [e.line.body for e in entries if isinstance(e.node, nodes.Unread) and not e.children]
    weighed = any(_WEIGHT.search(line) for line in lines)
    return weighed or any(nearest(line.split()[0], OPENINGS["formula"]) in ("makes", "from", None) for line in lines)


_WEIGHT = re.compile(r"[0-9] ?(?:k?g|oz|lb)\b")


def _with_line(head: Head, node: nodes.Node | nodes.Unread, line: Line) -> Outcome[Head]:
    match node:
        case nodes.About(text):
            return Outcome(head._replace(about=text.text))
        case nodes.KindNode(name):
            kind = fold(name.text)
            if kind in KIND:
                return Outcome(head._replace(kind=kind))
            return Outcome(head._replace(kind=""), (_no_kind(name, line),))
        case nodes.Status(word, date, by):
            parts = [word.text, date.text if date else "", f"by {by.text}" if by else ""]
            return Outcome(head._replace(status=" ".join(p for p in parts if p)), tuple(_wrong_status(node, line)))
        case nodes.MakesNode(_, _, weight, "at least") if weight is not None:
            return Outcome(head._replace(never_under=_grams(weight)))
        case nodes.MakesNode():
            made, found = _makes(node, line.place())
            return Outcome(head if made is None else head._replace(makes=(*head.makes, made)), found)
        case nodes.FromFlour(amount):
            return Outcome(head._replace(from_flour=_grams(amount)))
        case nodes.Loss(which, amount):
            return _with_loss(head, which, amount, line.place(amount.start, amount.end))
        case nodes.Sold(time):
            return Outcome(head._replace(sold=seconds(time)))
        case nodes.OnDoughFlour():
            return Outcome(head._replace(of_dough_flour=line.place()))
        case _:
            return Outcome(head)


_STATUS = "write `status trial`, or `status approved 2026-11-14 by Ada`"


def _wrong_status(node: nodes.Status, line: Line) -> Iterator[Diagnostic]:
    """A status that is neither of the two words, or a day that no calendar has."""
    word, day = node.word, node.date
    if fold(word.text) not in ("trial", "approved"):
        message = f"`{word.text}` is not a status: a formula is on trial or approved"
        near, place = nearest(fold(word.text), ("trial", "approved")), line.place(word.start, word.end)
        yield report("unknown-status", place, message, _STATUS, fixes=one_of(place, [near] if near else ()))
    elif day is not None and not is_day(day.text):
        yield report("no-such-day", line.place(day.start, day.end), f"there is no day {day.text}", _STATUS)


def words_of_line(node: nodes.Node | nodes.Unread) -> str:
    """What a line of the head says that may be said only once, in the head's own words; "" for any other line."""
    match node:
        case nodes.MakesNode(_, _, _, "at least"):
            return "makes … at least"
        case nodes.About():
            return "about"
        case nodes.KindNode():
            return "kind"
        case nodes.Status():
            return "status"
        case nodes.FromFlour():
            return "from … flour"
        case nodes.Sold():
            return "sold … old"
        case nodes.Loss(which, _):
            return f"{which} loss"
        case nodes.OnDoughFlour():
            return "written on dough flour"
        case nodes.Setting(key):
            return "sold …" if key.startswith("sold") else "best before" if key == "use by" else key
        case _:
            return ""


def _no_kind(name: nodes.Word, line: Line) -> Diagnostic:
    near = nearest(fold(name.text), KIND)
    offer = f"did you mean `{near}`? " if near else ""
    message = f"`{name.text}` is not a kind of bread"
    help = f"{offer}the kinds are {', '.join(KIND)}"
    place = line.place(name.start, name.end)
    return report(
        "unknown-kind", place, message, help, fixes=one_of(place, [near] if near else _of_the_same_noun(name.text))
    )


def _of_the_same_noun(kind: str) -> Iterator[str]:
    """The kinds that are called so without what stands before it: a country loaf is some loaf."""
    noun = fold(kind).rpartition(" ")[2]
    return (known for known in KIND if known.rpartition(" ")[2] == noun)


def _grams(amount: nodes.Amount) -> Fraction:
    low = amount.low if amount.low is not None else amount.high
    assert low is not None  # the parser refuses an amount with neither end
    return low * UNITS[amount.unit].factor


def _makes(node: nodes.MakesNode, place: Place) -> Outcome[Makes | None]:
    number = node.number.low if node.number else None
    written = _grams(node.weight) if node.weight else None
    noun = node.noun.text if node.noun else ""
    tin = node.tin.text if node.tin else ""
    if number is not None and (number <= 0 or number.denominator != 1):
        message = f"{number} {noun or 'pieces'} cannot be made"
        return Outcome(None, (report("no-pieces", place, message, "give a whole number, 1 or more"),))
    if written is not None and written <= 0:
        message = "a weight of 0 cannot be made"
        return Outcome(None, (report("no-weight", place, message, "give the weight of one piece"),))
    grams = written if node.state == "dough" else None
    return Outcome(Makes(number, noun, grams, node.state or "tin", written, tin, place))


def _with_loss(head: Head, which: str, amount: nodes.Amount, place: Place) -> Outcome[Head]:
    loss = (amount.low or Fraction(0)) / 100
    if not 0 <= loss < 1:
        message = f"a {which} loss of {percent(loss)} leaves nothing"
        help = "give what is lost, in per cent of what was there"
        return Outcome(head, (report("loss-of-everything", place, message, help),))
    return Outcome(head._replace(dough_loss=loss) if which == "dough" else head._replace(bake_loss=loss))
