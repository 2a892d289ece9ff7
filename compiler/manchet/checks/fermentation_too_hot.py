"""Yeast or a sour left to work at a temperature that stops it: often degrees Fahrenheit."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import all_steps
from manchet.checks.saying import celsius
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "fermentation-too-hot"


def check(subject: Subject) -> Iterator[Diagnostic]:
    most = limit("fermentation-most", subject.kind)
    if most is None:
        return
    for step in all_steps(subject.formula):
        if step.verb not in ("ferment", "prove", "ripen", "retard") or not step.heats:
            continue
        warmth = step.heats[0].celsius.likely
        if warmth > most:
            yield warning(
                NAME,
                step.place,
                f"`{step.verb}` at {celsius(warmth)}: yeast stops working above {celsius(most)}",
                f"{celsius(warmth)[:-2]} F is {celsius((warmth - 32) * 5 / 9)}: write the unit that is meant",
            )
