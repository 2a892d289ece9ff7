"""A stiff dough of a weight that the mixer takes only of softer ones."""

from collections.abc import Iterator

from manchet.checks.saying import grams, percent
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import note
from manchet.figures.mixing import by_machine, load
from manchet.formula.mixes import mixes_of

NAME = "stiff-dough-over-mixer"


def check(subject: Subject) -> Iterator[Diagnostic]:
    mixes = mixes_of(subject.batch, subject.kitchen)
    mixing = by_machine(subject.batch.stages[-1].stage.steps)
    wet = subject.totals.water_in_all + subject.totals.fat
    most = None if mixes.mixer is None else load(mixes.mixer, wet)
    if mixes.mixer is None or most is None or not mixing or mixes.grams <= most:
        return
    yield note(
        NAME,
        mixing[0].place,
        f"{grams(mixes.grams)} of a dough with {percent(wet)} water and fat; {mixes.mixer.name} takes about {grams(most)} "
        "of one so stiff",
        "make less at a time",
    )
