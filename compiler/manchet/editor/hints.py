"""Small figures behind what is written: grams for today behind per cents, per cents behind grams."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Place
from manchet.editor.settings import Settings
from manchet.editor.standing import block_around, entries_at
from manchet.editor.today import size_of, work_today
from manchet.formula.model import Formula, Portion
from manchet.quantities.printing import decimal, telling
from manchet.records import NamedTuple
from manchet.syntax import nodes as n
from manchet.syntax.nodes import File
from manchet.workspace.open_bakery import OpenBakery


class Hint(NamedTuple):
    """A figure that is shown behind a line, and is no part of its text; `says` is for whoever asks."""

    place: Place
    text: str
    says: str


def hints(bakery: OpenBakery, path: str, first: int, last: int, settings: Settings) -> tuple[Hint, ...]:
    """The figures behind the lines from `first` to `last`."""
    file = bakery.tree(path)
    if file is None or not settings.hints:
        return ()
    found: list[Hint] = []
    for formula in bakery.read([path]).formulas:
        if formula.place.path == path and _reaches(file, formula, first, last):
            work = work_today(bakery, formula, settings)
            if work is not None:
                found += (one for one in _of_work(file, work, settings) if first <= one.place.line <= last)
    return tuple(sorted({one.place: one for one in reversed(found)}.values()))


def _reaches(file: File, formula: Formula, first: int, last: int) -> bool:
    if formula.place.line > last:
        return False
    block = block_around(file, formula.place.line)
    after = (one.line.number for one in file.entries if block is not None and one.line.number > block.line.number)
    return first <= next(after, len(file.lines) + 1)


def _of_work(file: File, work: Work, settings: Settings) -> Iterator[Hint]:
    """Behind each line that weighs one thing. (Of `everything else` the sheet has the table.)"""
    at_line: dict[int, list[tuple[Portion, Fraction]]] = {}
    for stage in work.batch.stages:
        for weighed in stage.weighed:
            if weighed.portion.place.path == file.path:
                at_line.setdefault(weighed.portion.place.line, []).append((weighed.portion, weighed.grams))
    says = f"for {size_of(work)}" + (" today" if settings.is_today(work.formula.name) else "")
    overall = {
        line.place.line: (line.share * 100, line.share * work.batch.flour)
        for line in work.formula.overall
        if line.place is not None and line.place.path == file.path
    }
    for number, found in at_line.items():
        if len({portion.key for portion, _ in found}) == 1:
            grams = sum((grams for _, grams in found), Fraction(0))
            yield from _hint(file, number, found[0][0].percent, grams, says)
    for number, (percent, grams) in overall.items():
        if number not in at_line:
            yield from _hint(file, number, percent, grams, says)


def _hint(file: File, number: int, percent: Fraction | None, grams: Fraction, says: str) -> Iterator[Hint]:
    entries = entries_at(file.entries, number)
    if not entries or entries[-1].line.number != number:
        return
    line, node = entries[-1].line, entries[-1].node
    end = line.place()._replace(column=line.indent + len(line.body) + 1)
    if isinstance(node, n.MaterialNode) and node.amount.unit != "%":
        if percent is not None:
            yield Hint(end, f"{decimal(percent, telling(percent, 1))}%", says)
    elif isinstance(node, n.MaterialNode | n.BareName | n.TakeAll | n.TakeLeft):
        yield Hint(end, f"{decimal(grams, telling(grams, 0 if grams >= 100 else 1))} g", says)
