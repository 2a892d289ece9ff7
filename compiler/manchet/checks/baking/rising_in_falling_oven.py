"""A heat that is to rise, in an oven whose fire is out: it only grows colder."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.curve import rising_phase
from manchet.formula.model import Range, Step

NAME = "rising-in-falling-oven"
ABOUT = ("kitchen oven",)


def check(work: Work) -> Iterator[Diagnostic]:
    told = set()
    for bake in bakes_of(work):
        phase = rising_phase(bake.phases)
        if not bake.oven.falls or bake.phases[0].by_fire or phase is None or phase.place in told:
            continue
        told.add(phase.place)
        other = next((oven for oven in work.kitchen.ovens if not oven.falls), None)
        name = bake.oven.name or "the oven"
        message = f"{name} falls once its fire is out, and cannot rise to {degrees(work.kitchen, _to(phase).likely)}"
        help = (
            f"name the oven that can: `in {other.name}`"
            if other is not None and other.name
            else "write `, beside the fire` if it bakes while the fire burns; or the hottest phase first"
        )
        yield report(NAME, phase.place, message, help)


def _to(phase: Step) -> Range:
    """What the phase rises to."""
    return phase.ramp[1] if phase.ramp is not None else phase.heats[0].celsius
