"""A line of a stage whose name means nothing: the slip in its writing, if it has one. Asked of no sound line."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.mistakes.blame import a_step_loosely
from manchet.syntax.mistakes.diagnosis import no_ingredient, no_name
from manchet.syntax.mistakes.faults import Fault, as_report
from manchet.syntax.mistakes.mending import mending
from manchet.syntax.mistakes.more_than_a_name import more_than_a_name
from manchet.syntax.nodes import Amount, Entry, MaterialNode


def slip_in_a_name(entry: Entry) -> Iterator[Diagnostic]:
    """Of a line that is only words: `salt 2`, `knead`, a pinch."""
    return _told(a_step_loosely(entry.line.body) or no_name(entry.line.body), entry)


def slip_in_an_ingredient(node: MaterialNode, entry: Entry, knows: Callable[[str], bool]) -> Iterator[Diagnostic]:
    """Of a name and its weight: `hydration 70%`, `flour 1 000 g`, `salt & sugar 20 g`. `knows` tells which names mean something."""
    body = entry.line.body
    return _told(no_ingredient(node, body) or more_than_a_name(node, body, knows), entry)


def _told(fault: Fault | None, entry: Entry) -> Iterator[Diagnostic]:
    if fault is not None:
        yield as_report(mending(fault, entry.line.body, "stage"), entry.line)


def share_of_none(share: Amount, name: str, entry: Entry) -> Diagnostic:
    """`sponge with 0% of all flour`"""
    message = f"`{entry.line.body[share.start : share.end]}` of the flour is none: nothing goes into the {name}"
    help = f"write how much of the flour goes into it, or take out the {name} and the lines that name it"
    return report("nothing-of-it", entry.line.place(share.start, share.end), message, help)
