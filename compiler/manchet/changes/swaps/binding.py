"""The swaps of a formula carried out in its lines, one after another."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice

from manchet.changes.swaps.lines import SwapKit
from manchet.changes.swaps.swapping import swap_ingredient
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.binding import Offered, bind
from manchet.formula.changed import OPTION
from manchet.formula.model import Swapped
from manchet.formula.naming import Names
from manchet.larder.yeast_factors import Factors
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.line import read_line
from manchet.syntax.nodes import Entry


class WantedSwap(NamedTuple):
    """A swap, the line it stands in, and whether the formula may be without what is swapped out."""

    swap: nodes.Swap
    line: Line
    if_there: bool = False


def swap_in_line(entry: Entry) -> WantedSwap:
    """The swap of a variant's line."""
    assert isinstance(entry.node, nodes.Swap)
    return WantedSwap(entry.node, entry.line)


def swap_asked_for(text: str, if_there: bool = False) -> WantedSwap | None:
    """The swap that `fresh yeast for instant yeast` asks for; None where the text asks for none."""
    body = f"swap {text}"
    read = read_line(body, "variant")
    if not isinstance(read.node, nodes.Swap) or read.faults:
        return None
    return WantedSwap(read.node, Line(OPTION, 1, body, 0, body, ""), if_there)


def nowhere(one: WantedSwap) -> Diagnostic:
    """The report for a swap that was asked of all formulas, of which none has what is swapped out."""
    off = one.swap.off
    message = f"no formula here has {off.text} to swap"
    help = "ask for one formula by its name to see what can be swapped in it"
    return report("swap-not-there", one.line.place(off.start, off.end), message, help)


class Rewritten(NamedTuple):
    """A formula's lines after its swaps, what it is offered after them, and what they came to."""

    block: Entry
    offered: Offered
    swapped: tuple[Swapped, ...]


def _quiet(made: Sequence[Swapped]) -> frozenset[str]:
    """What a formula that may be without it is not told: it has none of it, or its own swap took it."""
    asked_before = any(each.place.path == OPTION for each in made)
    return frozenset({"swap-not-there"} if asked_before else {"swap-not-there", "swap-taken-before"})


def _unknown_names(swaps: Sequence[WantedSwap], offered: Offered) -> Iterator[Diagnostic]:
    """What is wrong with the names of swaps, whatever is wrong with their formula."""
    names = Names({}, {}, offered.larder)
    for one in swaps:
        reports = (
            report for word in (one.swap.off, one.swap.on) for report in names.look_up(word, one.line).diagnostics
        )
        yield from islice(reports, 1)


def with_swaps(
    block: Entry, swaps: Sequence[WantedSwap], offered: Offered, factors: Factors
) -> Outcome[Rewritten | None]:
    """The formula's lines after its swaps; None where it, or one of them, cannot be."""
    made: list[Swapped] = []
    bench = SwapKit(offered.larder, offered.measures, factors)
    reports: tuple[Diagnostic, ...] = ()
    for one in swaps:
        before = bind(block, offered)
        if before.value is None:
            return Outcome(None, (*before.diagnostics, *_unknown_names(swaps, offered)))
        done = swap_ingredient(block, offered.shared, before.value, one.swap, one.line, bench, made)
        if done.value is None:
            if one.if_there and all(each.name in _quiet(made) for each in done.diagnostics):
                continue
            return Outcome(None, done.diagnostics)
        block, offered = done.value.formula, offered._replace(shared=done.value.shared)
        made.append(done.value.swapped)
        reports += done.diagnostics
    return Outcome(Rewritten(block, offered, tuple(made)), reports)
