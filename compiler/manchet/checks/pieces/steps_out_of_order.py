"""Steps in an order in which nobody can do them: proved after the bake, divided after the proof, out of the tin before the bake."""

from collections.abc import Iterator, Sequence

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.model import Step
from manchet.syntax.vocabulary import BAKES, COLD, COOKS, PROVES, RISES_WARM

NAME = "steps-out-of-order"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    said = set()
    for noun, steps in breads(work.formula):
        for found in (*_rises_when_baked(steps), *_divided_when_proved(steps), *_turned_out_raw(work, noun, steps)):
            if found.place not in said:
                said.add(found.place)
                yield found


def _rises_when_baked(steps: Sequence[Step]) -> Iterator[Diagnostic]:
    baked = next((n for n, step in enumerate(steps) if step.verb in BAKES), len(steps))
    late = next((step for step in steps[baked:] if step.verb in RISES_WARM), None)
    if late is None:
        return
    message = f"`{late.verb}` comes after `{steps[baked].verb}`: baked bread rises no more"
    yield report(NAME, late.place, message, f"move it before the line `{steps[baked].place.text.strip()}`")


def _divided_when_proved(steps: Sequence[Step]) -> Iterator[Diagnostic]:
    """Pieces that rise once more after it were not proved before, whatever the first rise is called."""
    for number, step in enumerate(steps):
        if step.verb != "divide" or not any(before.verb in PROVES - COLD for before in steps[:number]):
            continue
        rest = steps[number:]
        heat = next((n for n, after in enumerate(rest) if after.verb in COOKS), None)
        if heat is not None and not any(after.verb in PROVES for after in rest[:heat]):
            proved = next(before for before in reversed(steps[:number]) if before.verb in PROVES - COLD)
            message = "`divide` comes after `prove`: the pieces are cut out of a dough that has risen, and go in flat"
            help = f"move `divide` before the line `{proved.place.text.strip()}`; a whole dough's rise is `ferment`"
            yield report(NAME, step.place, message, help)
            return


def _turned_out_raw(work: Work, noun: str, steps: Sequence[Step]) -> Iterator[Diagnostic]:
    """Out of a basket it is turned before the bake, out of a tin after it."""
    in_tin = next((bool(makes.tin) for makes in work.formula.makes if makes.noun == noun), False)
    for step in steps:
        if step.verb in BAKES:
            return
        if step.verb == "place" and step.where is not None:
            vessel = work.kitchen.vessel(step.where[1])
            words = step.where[1].casefold().split()
            in_tin = vessel.word == "tin" if vessel is not None else words[-1:] == ["tin"]
        elif step.verb == "turn out" and in_tin:
            message = "`turn out` comes before the bake: the dough is taken out of its tin raw"
            yield report(NAME, step.place, message, "move it after the last bake")
            return
