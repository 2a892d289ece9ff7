"""What goes on a dish: how much of it, where it is counted in slices or whole pieces, and how the dish cuts its bread.

A slice weighs cooled loaf x (1 - loss of the slicing) / slices. Our own rule: what comes off the ends is spread over all slices.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import without_line
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.naming import Meaning, Names
from manchet.formula.nouns import singular
from manchet.formula.parts import CountedAmount, DishPart, Slicing
from manchet.larder.densities import weight_of
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Amount, Entry


class LaidWeight(NamedTuple):
    """Grams of an amount, and how they are counted."""

    grams: Fraction | None
    counted: CountedAmount | None
    diagnostics: tuple[Diagnostic, ...] = ()


def weight_laid(amount: Amount, meaning: Meaning, names: Names, measures: str, line: Line) -> LaidWeight:
    """Grams of an amount on a dish; None with the report that says why not."""
    place = line.place(amount.start, amount.end)
    written = line.body[amount.start : amount.end]
    part = meaning.part
    if amount.unit == "%":
        message = f"{meaning.name} is in per cent, and a dish has no flour that it could be of"
        help = f"write the weight, as in `{meaning.name} 40 g each`"
        return LaidWeight(None, None, (report("percent-on-a-dish", place, message, help),))
    if amount.unit == "slices" and (part is None or not part.noun):
        message = f"nobody knows what a slice of {meaning.name} weighs"
        help = f"write the weight: `{meaning.name} 20 g`, and behind it `each` or `in all`"
        return LaidWeight(None, None, (report("slice-of-what", place, message, help),))
    if amount.unit == "whole" and part is not None and not part.noun:
        message = f"{meaning.name} is not made by the piece"
        help = f"write the weight: `{meaning.name} 80 g` for `{written}`"
        return LaidWeight(None, None, (report("slice-of-what", place, message, help),))
    if part is None or amount.unit not in ("slices", "whole"):
        grams, reports = weight_of(amount, meaning.ingredient, measures, line)
        return LaidWeight(grams, None, reports)
    one = part.at_most if part.grams is None else part.grams
    number = amount.low or Fraction(0)
    if amount.unit == "whole":
        return LaidWeight(number * one, CountedAmount("whole", one, part.grams is not None, 1))
    cut = names.slicing.get(part.key) or (None if part.slices is None else Slicing(part.slices, Fraction(0)))
    if cut is None:
        message = f"how many slices does a {singular(part.noun)} of {part.name} give?"
        help = "say it below the line, as in `slice into 22 slices, loses 6%`; or write the weight"
        help = f"{help}: `{part.name} 80 g`"
        return LaidWeight(None, None, (report("slices-not-said", place, message, help),))
    slice_ = one * (1 - cut.loss) / cut.number
    return LaidWeight(number * slice_, CountedAmount("slices", slice_, part.grams is not None, cut.number))


def slicing_in(vessels: Iterable[Entry], names: Names) -> Outcome[dict[str, Slicing]]:
    """How a dish cuts its breads, by the key of the part. `vessels` are its blocks: the dish, and each of its stages."""
    found: dict[str, Slicing] = {}
    reports: list[Diagnostic] = []
    for vessel in vessels:
        cuts = [entry for entry in vessel.children if _cuts(entry)]
        sliced = [part for entry in vessel.children for part in _parts_in_slices(entry, names)]
        breads = tuple(dict.fromkeys(part.key for part in sliced if part is not None))
        unknown = None in sliced  # which has its own report
        for cut in cuts:
            part = next((one for one in names.parts.all if one.key == breads[0]), None) if len(breads) == 1 else None
            if part is None and not unknown:
                reports.append(_slices_what(cut, [one.name for one in names.parts.all if one.key in breads]))
            elif part is not None and (part.slices is not None or part.key in found):
                where = "its own formula" if part.slices is not None else "this dish"
                message = f"{part.name} is cut into {found[part.key].number if part.key in found else part.slices} slices in {where} already"
                place = cut.line.place()
                fixes = (without_line(place, "leave out this line"),)
                reports.append(report("sliced-twice", place, message, "cut it in one place", fixes=fixes))
            elif part is not None:
                found[part.key] = _slicing(cut)
    return Outcome(found, tuple(reports))


def _parts_in_slices(entry: Entry, names: Names) -> Iterator[DishPart | None]:
    """The bread of a line that is counted in slices; None where its name means none."""
    node = entry.node
    said = node.clauses if isinstance(node, nodes.StepNode) else (node,)
    for one in said:
        if isinstance(one, nodes.MaterialNode | nodes.AppliedClause) and one.amount and one.amount.unit == "slices":
            meaning = names.meaning(one.name.text)
            yield meaning.part if isinstance(meaning, Meaning) else None


def _cuts(entry: Entry) -> bool:
    node = entry.node
    return isinstance(node, nodes.StepNode) and any(isinstance(clause, nodes.IntoSlices) for clause in node.clauses)


def _slicing(cut: Entry) -> Slicing:
    lines = (cut, *cut.children)
    clauses = [
        clause
        for line in lines
        if isinstance(line.node, nodes.StepNode | nodes.ClauseLine)
        for clause in line.node.clauses
    ]
    number = next(int(one.amount.low or 1) for one in clauses if isinstance(one, nodes.IntoSlices))
    lost = next((one.amount.low or Fraction(0) for one in clauses if isinstance(one, nodes.Loses)), Fraction(0))
    return Slicing(max(number, 1), lost / 100 if 0 <= lost < 100 else Fraction(0))


def _slices_what(cut: Entry, breads: list[str]) -> Diagnostic:
    if breads:
        message = f"which of them is sliced: {' or '.join(breads)}?"
        help = "give one of the two a `stage` of its own, with its line and its `slice`"
    else:
        message = "nothing here is counted in slices"
        help = "write above it what is sliced, as in `Ebb rye 2 slices each`"
    return report("slices-what", cut.line.place(), message, help)
