"""A step as plain data: what is done, how long, in what heat, where. What a step does not say is not there."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from manchet.figures.exact import ends, quantity
from manchet.formula.model import Goes, Step
from manchet.formula.step import Applied

_REACH_UNITS = {"temperature": "C", "core": "C", "length": "mm", "below rim": "mm"}
"""Of what a thing itself reaches; pH and volume have none."""


def step_data(step: Step) -> dict[str, Any]:
    """Times in seconds, temperatures in Celsius, lengths in millimetres, weights in grams, shares in per cent of all flour."""
    return dict(_fields(step))


def _fields(step: Step) -> Iterator[tuple[str, Any]]:
    yield "verb", step.verb
    yield "who", step.who.value
    if step.manner:
        yield "manner", list(step.manner)
    if step.speed is not None:
        yield "speed", step.speed
    if step.shape:
        yield "shape", step.shape
    if step.goes:
        yield "moves", [_goes(goes) for goes in step.goes]
    if step.additions is not None:
        yield "additions", step.additions
    if step.applied is not None:
        yield "applied", _applied(step.applied)
    if step.poured is not None:
        yield "poured_off", {"name": step.poured.name, "share": quantity(step.poured.share * 100, "%")}
    if step.where is not None:
        yield "where", {"preposition": step.where[0], "place": step.where[1]}
    if step.bath:
        yield "bath", step.bath
    yield from _times(step)
    yield from _heats(step)
    if step.loses is not None:
        yield "loses", quantity(step.loses * 100, "%")
    if step.at_a_time is not None:
        yield "at_a_time", step.at_a_time
    if step.slices is not None:
        yield "slices", step.slices
    if step.lid is not None:
        yield "lid", step.lid
    if step.optional:
        yield "optional", True
    for name, said in (("how", step.how), ("until", step.until), ("if_late", step.if_late), ("why", step.why)):
        if said:
            yield name, said
    if step.notes:
        yield "notes", list(step.notes)
    yield "at", step.place.where


def _times(step: Step) -> Iterator[tuple[str, Any]]:
    if step.time is not None:
        yield "time", ends(step.time, "s") | ({"per": step.per} if step.per else {})
    if step.turns is not None:
        yield "turns", ends(step.turns, "")
    if step.serve_within is not None:
        yield "serve_within", quantity(step.serve_within, "s")
    if step.folds:
        yield (
            "folds",
            [
                {
                    "work": one.work,
                    "number": one.number,
                    "after" if not one.every else "every": quantity(one.seconds, "s"),
                }
                for one in step.folds
            ],
        )
    if step.turn_after is not None:
        yield "turn_after", quantity(step.turn_after, "s")
    if step.may_wait is not None:
        wait = {"time": ends(step.may_wait.seconds, "s")}
        if step.may_wait.celsius is not None:
            wait["celsius"] = ends(step.may_wait.celsius, "C")
        yield "may_wait", wait


def _heats(step: Step) -> Iterator[tuple[str, Any]]:
    if step.heats:
        yield (
            "heats",
            [ends(heat.celsius, "C") | ({"where": heat.where} if heat.where else {}) for heat in step.heats],
        )
    if step.ramp is not None:
        yield "ramp", {"way": step.ramp[0], **ends(step.ramp[1], "C")}
    if step.by_fire:
        yield "by_fire", step.by_fire
    if step.humidity is not None:
        yield "humidity", {name: end and quantity(end * 100, "%") for name, end in step.humidity._asdict().items()}
    if step.reaches:
        yield (
            "reaches",
            [{"what": one.what, **ends(one.value, _REACH_UNITS.get(one.what, ""))} for one in step.reaches],
        )
    if step.events:
        yield "events", [_event(one.what, one.after, one.seconds, one.millilitres) for one in step.events]


def _event(what: str, after: Fraction, seconds: Fraction | None, millilitres: Fraction | None) -> dict[str, Any]:
    found: dict[str, Any] = {"what": what, "after": quantity(after, "s")}
    if seconds is not None:
        found["lasts"] = quantity(seconds, "s")
    if millilitres is not None:
        found["water"] = quantity(millilitres, "ml")
    return found


def _goes(goes: Goes) -> dict[str, Any]:
    found: dict[str, Any] = {"name": goes.name}
    if goes.share is not None:
        found["share"] = quantity(goes.share * 100, "%")
    if goes.of_dough is not None:
        found["share_of_dough"] = quantity(goes.of_dough * 100, "%")
    if goes.celsius is not None:
        found["celsius"] = quantity(goes.celsius, "C")
    if goes.by_feel or goes.beyond:
        found["by_feel"] = True
    return found


def _applied(applied: Applied) -> dict[str, Any]:
    return {
        "name": applied.name,
        "grams": quantity(applied.grams, "g"),
        "each": applied.each,
        **({"onto": applied.onto} if applied.onto else {}),
    }
