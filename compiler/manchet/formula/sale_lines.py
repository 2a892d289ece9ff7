"""Lines about selling that stand in a stage: there only its name in a list of ingredients has a meaning."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.larder.ingredient import ListedAs
from manchet.larder.selling import listed_as
from manchet.syntax.nodes import Entry, Setting


def listed_as_of_stage(lines: Iterable[Entry], stage: str) -> Outcome[tuple[ListedAs, ...]]:
    """What a stage is called in a list of ingredients, and a report for each line that belongs to the head."""
    found: dict[str, ListedAs] = {}
    reports: list[Diagnostic] = []
    for entry in lines:
        node, line = entry.node, entry.line
        assert isinstance(node, Setting)
        if node.key != "listed as":
            message = f"`{line.body}` stands in the stage {stage}, and a stage is not sold"
            help = "write it at the head of the formula, or under `for the …` where one part of the dough is sold so"
            reports.append(report("sold-in-a-stage", line.place(), message, help))
            continue
        listed = listed_as(node, line)
        reports += listed.diagnostics
        there = found.setdefault(listed.value.market, listed.value)
        if there is not listed.value:
            message, help = f"{stage} is listed as two things", "keep one line for each market"
            reports.append(report("said-twice", line.place(), message, help, (there.place, "the first is here")))
    return Outcome(tuple(found.values()), tuple(reports))
