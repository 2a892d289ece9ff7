"""A heat for an oven with a fan, in one that is heated by a fire and has none."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report
from manchet.figures.oven.curve import oven_of
from manchet.kitchen.model import Kitchen, Oven
from manchet.quantities.units import in_fahrenheit

NAME = "fan-in-fired-oven"
ABOUT = ("kitchen oven",)

WARMER = 20
"""Degrees Celsius that an oven without a fan is set hotter: common practice."""
FIRED = ("wood", "coal", "brick", "straw")
"""What an oven without a fan is heated with, in words of its `heat`."""


def check(work: Work) -> Iterator[Diagnostic]:
    for step in work.formula.steps:
        oven = oven_of(step, work.kitchen)
        fan = next((heat.celsius for heat in step.heats if heat.where == "fan"), None)
        if oven is None or fan is None or not _is_fired(oven):
            continue
        heated = oven.heat or "a fire"
        message = f"{degrees(work.kitchen, fan.likely)} with the fan, and {oven.name or 'the oven'} has none: it is heated by {heated}"
        still, in_place = _instead(fan.likely, step.place.text)
        help = f"without a fan it is about {still}" + _another(work.kitchen)
        yield report(
            NAME, step.place, message, help, fixes=exchange_of(step.place, in_place, still) if in_place else ()
        )


def _is_fired(oven: Oven) -> bool:
    return bool(oven.falls) or any(word in oven.heat.casefold() for word in FIRED)


def _instead(celsius: Fraction, line: str) -> tuple[str, str]:
    """The heat without a fan in the line's own unit, and the words that it stands for there; "" where they are others."""
    for unit, figure, more in (("C", celsius, WARMER), ("F", in_fahrenheit(celsius), WARMER * 9 // 5)):
        said = f"{round(figure)} {unit} fan"
        if said in " ".join(line.split()):
            return f"{round((figure + more) / 5) * 5} {unit}", said
    return f"{round(celsius + WARMER)} C", ""


def _another(kitchen: Kitchen) -> str:
    other = next((oven.name for oven in kitchen.ovens if oven.name and not _is_fired(oven)), "")
    return f"; or name the oven that has one: `in {other}`" if other else ""
