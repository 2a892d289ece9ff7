"""A step that waits, or that a machine does, and no time for it: no card can be made without."""

from collections.abc import Iterator

from manchet.checks.looking import all_steps
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error

NAME = "step-time-missing"
TIMED = frozenset(
    {"rest", "ripen", "ferment", "prove", "retard", "chill", "freeze", "thaw", "soak", "cool"}
    | {"bake", "roast", "griddle", "fry", "boil", "simmer", "mix", "blend"}
)


def check(subject: Subject) -> Iterator[Diagnostic]:
    for step in all_steps(subject.formula):
        if step.verb not in TIMED or step.time is not None or step.turns is not None:
            continue
        example = {"mix": "mix slow 5 min", "cool": "cool 1-2 h to 30 C"}.get(step.verb, f"{step.verb} 40-50 min")
        yield error(
            NAME,
            step.place,
            f"`{step.verb}` has no time",
            f"give one, a range if you like (`{example}`); the cue after `until` outranks it",
        )
