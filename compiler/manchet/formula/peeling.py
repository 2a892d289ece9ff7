"""What is peeled is the first thing weighed; what lies in the vessel beside it does not go with the peel."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import list_of_words, report
from manchet.formula.model import Portion, Step
from manchet.formula.percents import percent
from manchet.syntax.vocabulary import BRINGS_IN, OF_THE_FIRST


def peeled_beside(portions: Sequence[Portion], steps: Sequence[Step]) -> Iterator[Diagnostic]:
    """A report on each loss of peeling for which something else lies in the vessel already."""
    in_it = [portion.name for portion in portions if not portion.held]
    for step in steps:
        if step.verb in BRINGS_IN:
            in_it += [goes.name for goes in step.goes]
        if step.verb in OF_THE_FIRST and step.loses is not None and len(set(in_it)) > 1:
            beside = tuple(dict.fromkeys(name for name in in_it if name != in_it[0]))
            message = (
                f"`{step.verb}` loses {percent(step.loses)} of {in_it[0]}, the first thing weighed: "
                f"{list_of_words(beside, 'and')} in the vessel lose nothing"
            )
            help = f"hold back {list_of_words(beside, 'and')}, and add what is held after the {step.verb}ing"
            yield report("peel-beside-others", step.place, message, help)
