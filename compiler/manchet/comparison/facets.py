"""What of a step can be otherwise, each by its name; and which step of one list is which of another."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from manchet.comparison.values import Rank
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Goes, Step
from manchet.syntax.vocabulary import SETS_WARMTH

FACETS: Mapping[str, Callable[[Step], object]] = MappingProxyType(
    {
        "manner": lambda step: (step.manner, step.speed, step.shape),
        "who": lambda step: step.who,
        "goes": lambda step: tuple((goes.key, goes.share, goes.by_feel, goes.beyond) for goes in step.goes),
        "additions": lambda step: step.additions,
        "poured": lambda step: step.poured and (step.poured.name, step.poured.share),
        "applied": lambda step: step.applied and (fold(step.applied.name), step.applied.onto),
        "amount": lambda step: step.applied and (step.applied.grams, step.applied.each),
        "place": lambda step: (step.where, step.by_fire),
        "bath": lambda step: step.bath,
        "time": lambda step: (step.time, step.per, step.turns, step.serve_within, step.slices),
        "heat": lambda step: (step.heats, step.ramp, tuple(goes.celsius for goes in step.goes)),
        "reach": lambda step: step.reaches,
        "folds": lambda step: step.folds,
        "humidity": lambda step: step.humidity,
        "events": lambda step: step.events,
        "lid": lambda step: step.lid,
        "turn": lambda step: step.turn_after,
        "lots": lambda step: step.at_a_time,
        "loses": lambda step: step.loses,
        "wait": lambda step: step.may_wait,
        "optional": lambda step: step.optional,
        "how": lambda step: step.how,
        "until": lambda step: step.until,
        "late": lambda step: step.if_late,
        "notes": lambda step: (step.notes, step.why),
    }
)  # fmt: skip
"""In the order they are told in."""

IN_WORDS = frozenset({"how", "until", "late", "notes"})
OF_TIME = frozenset({"time", "heat", "reach", "folds", "humidity", "events", "lid", "turn", "wait"})

Key = tuple[object, ...]


def key_of(step: Step) -> Key:
    """What makes it the same step, however long and however hot: the verb, the manner of a mix, the shape, what is added or put on."""
    mixed = (step.manner, step.speed) if step.verb in SETS_WARMTH else ()
    applied = "" if step.applied is None else fold(step.applied.name)
    said = fold(step.how) if step.verb == "do" else ""
    return step.verb, mixed, step.shape, tuple(goes.key for goes in step.goes), applied, said


def facets_apart(before: Step, after: Step) -> tuple[str, ...]:
    """The names of what is otherwise, in the order it is told in."""
    return tuple(name for name, facet in FACETS.items() if facet(before) != facet(after))


def rank_of_step(before: Step, after: Step, facets: tuple[str, ...]) -> Rank:
    """How soon a changed step is told."""
    if IN_WORDS.issuperset(facets):
        return Rank.WORDS
    if "reach" in facets and before.verb in SETS_WARMTH and _warmth(before) != _warmth(after):
        return Rank.WARMTH
    return Rank.STEPS if OF_TIME.isdisjoint(facets) else Rank.TIMES


def _warmth(step: Step) -> object:
    return [reach for reach in step.reaches if reach.what == "temperature"]


def called_anew(step: Step, names: Mapping[str, str], without: frozenset[str]) -> Step | None:
    """The step with what it moves or puts on under its newer name, and without what is told to be gone or new; None where nothing is
    left of it."""
    goes = tuple(_renamed(one, names) for one in step.goes if one.key not in without)
    if step.goes and not goes:
        return None
    applied = step.applied
    if applied is not None and names:
        newer = names.get(fold(applied.name))
        applied = applied if newer is None else applied._replace(name=newer)
    return step._replace(goes=goes, applied=applied) if (goes, applied) != (step.goes, step.applied) else step


def _renamed(goes: Goes, names: Mapping[str, str]) -> Goes:
    return goes._replace(key=names[goes.key]) if goes.key in names else goes
