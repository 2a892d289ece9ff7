"""A dish or a preparation that is to be kept, or to stand, longer than something in it that no heat comes to any more."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import duration, time_kept
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.model import Formula, Stage
from manchet.syntax.vocabulary import COOKS

NAME = "keeps-longer-than-its-part"
ABOUT = ("preparation",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    parts = [work.preparations[key] for key in _not_heated(formula) if key in work.preparations]
    for kept in formula.kept:
        for part in parts:
            same_way = next((one for one in part.kept if one.way == kept.way), None)
            if same_way is not None and same_way.seconds < kept.seconds:
                said, held = time_kept(work.kitchen, kept), time_kept(work.kitchen, same_way)
                message = f"{formula.name} is good for {said}, and holds {part.name}, good for {held}"
                help = f"write {duration(same_way.seconds)} here, or less: nothing grows younger in a dish"
                yield report(NAME, kept.place, message, help, (same_way.place, f"{part.name} says it here"))
                break
    if formula.serve_within is not None:
        yield from _stands_too_long(work, parts)


def _stands_too_long(work: Work, parts: list[Formula]) -> Iterator[Diagnostic]:
    formula, limit = work.formula, work.formula.serve_within
    assert limit is not None
    at = next(step.place for step in formula.dough.steps if step.serve_within is not None)
    for part in parts:
        longest = max(part.kept, key=lambda one: one.seconds, default=None)
        if part.serve_within is not None and part.serve_within < limit:
            there = next(step.place for step in part.dough.steps if step.serve_within is not None)
            said, most = f"to be served within {duration(part.serve_within)}", part.serve_within
        elif longest is not None and longest.seconds < limit:
            there, said, most = longest.place, f"good for {time_kept(work.kitchen, longest)}", longest.seconds
        else:
            continue
        message = f"{formula.name} is to be served within {duration(limit)}, and holds {part.name}, {said}"
        help = f"write `serve within {duration(most)}`, or less"
        yield report(NAME, at, message, help, (there, f"{part.name} says it here"))
        return


def _not_heated(formula: Formula) -> Iterator[str]:
    """The keys of what goes in and is heated no more, in the order of the work: what a heat comes to begins anew."""
    heated = {key for key, is_heated in _taken(formula.dough) if is_heated}
    for stage in formula.stages:
        if stage.key not in heated:
            yield from (key for key, is_heated in _taken(stage) if not is_heated)


def _taken(stage: Stage) -> Iterator[tuple[str, bool]]:
    """The key of each thing made elsewhere that a stage takes, and whether a heat of this stage comes to it."""
    last = max((at for at, step in enumerate(stage.steps) if step.verb in COOKS), default=-1)
    later = {goes.key for step in stage.steps[last + 1 :] for goes in step.goes}
    for portion in stage.portions:
        if portion.stage:
            yield portion.stage, last >= 0 and portion.key not in later
    for at, step in enumerate(stage.steps):
        if step.applied is not None and step.applied.stage:
            yield step.applied.stage, at < last
