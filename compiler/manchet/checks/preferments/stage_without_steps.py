"""A stage that is weighed, and no step says how it is made."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import STAGE, StageWord

NAME = "stage-without-steps"
ABOUT = ("without steps",)


def check(work: Work) -> Iterator[Diagnostic]:
    for stage in work.formula.stages:
        such_as = _such_as(STAGE[stage.word])
        if stage.steps or not stage.portions or not such_as:
            continue
        name = "the dough" if stage.word == "dough" else stage.name
        yield report(NAME, stage.place, f"nothing says how {name} is made", f"add its steps, such as {such_as}")


def _such_as(word: StageWord) -> str:
    """Steps by which such a stage is mostly made; "" where it may only be weighed, or is taken as it is."""
    if word.hot_water:
        return "`mix by hand 4 min`, `cool 2-3 h to 30 C`"
    if word.holds_water:
        return "`soak covered 8-12 h at 20 C`"
    if word.verb == "ripen":
        wait = "6-8 h at 26 C" if word.by_culture else "2-3 h at 26 C" if word.may_ripen_fast else "12-14 h at 20 C"
        return f"`mix by hand 3 min`, `ripen covered {wait}`"
    return "`mix slow 5 min to 25 C`, `divide`" if word.verb else ""
