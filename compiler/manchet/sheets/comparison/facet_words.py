"""What of a step is otherwise, in the house's words: what it was and what it is, facet by facet."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from manchet.formula.model import Folds, Goes, Step
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.joining import run_on
from manchet.sheets.parts.wording import is_by_feel
from manchet.syntax.vocabulary import SETS_WARMTH


def step_name(step: Step, m: Measures, without: tuple[str, ...] = ()) -> str:
    """What the step is called, so that it is found: `mix fast`, `add salt, seeds`, `brush egg wash`. `without`: facets told beside it."""
    if step.verb == "do":
        return run_on(step.how)
    said = [wording.verb_alone(step.verb, m)]
    if step.verb in SETS_WARMTH and "manner" not in without:
        said += [word.rstrip(",") for word in wording.manner(step, m)]
    elif step.shape and "manner" not in without:
        said.append(step.shape)
    if "goes" not in without:
        said.append(", ".join(goes.name for goes in step.goes))
    if step.applied is not None and "applied" not in without:
        said.append(wording.what_is_applied(step, m)[0])
    return " ".join(part for part in said if part)


def whole_step(step: Step, m: Measures) -> str:
    """All of it, as a line: `mix slow 1 min`, `add butter`."""
    said = [run_on(wording.sentence(step, m)), ", ".join(goes.name for goes in step.goes)]
    return " ".join(part for part in said if part).rstrip(":")


def facet_said(facet: str, step: Step, m: Measures) -> str:
    """One facet of a step; "" where it says nothing of it."""
    return _SAID[facet](step, m)


def _goes(step: Step, m: Measures) -> str:
    return ", ".join(_amount(goes, m) for goes in step.goes)


def _amount(goes: Goes, m: Measures) -> str:
    if is_by_feel(goes) and goes.share is None:
        return f"{goes.name} {m.words['say.by_feel']}"
    share = goes.of_dough if goes.share is None else goes.share
    said = goes.name if share is None else f"{goes.name} {m.percent(share)}"
    return m.words.say("compared.up_to", said) if goes.beyond else said


def _folds(folds: Folds, m: Measures) -> str:
    name = folds.work if folds.number == 1 else f"{folds.work}_many"
    times = m.words.say(f"compared.{name}", str(folds.number))
    return m.words.say(
        "compared.folds" if folds.every or folds.number > 1 else "compared.folds_once", times, m.duration(folds.seconds)
    )


def _quoted(text: str, m: Measures) -> str:
    return m.words.say("compared.quoted", text) if text else ""


def _optional(step: Step, m: Measures) -> str:
    return m.words["say.optional"] if step.optional else m.words["compared.must"]


_SAID: Mapping[str, Callable[[Step, Measures], str]] = MappingProxyType(
    {
        "manner": lambda step, m: " ".join(word for word in wording.manner(step, m) if word).rstrip(","),
        "who": lambda step, m: m.words[f"compared.{step.who.value}"],
        "goes": _goes,
        "additions": lambda step, m: " ".join(wording.additions(step, m)),
        "poured": lambda step, m: "" if step.poured is None else f"{step.poured.name} {m.percent(step.poured.share)}",
        "applied": lambda step, m: wording.what_is_applied(step, m)[0],
        "amount": lambda step, m: wording.what_is_applied(step, m)[1],
        "place": lambda step, m: " ".join(wording.place(step, m)),
        "bath": lambda step, m: m.words.say("compared.in_bath", step.bath) if step.bath else "",
        "time": lambda step, m: " ".join(wording.how_long(step, m)),
        "heat": lambda step, m: " ".join(wording.around(step, m)),
        "reach": lambda step, m: ", ".join(wording.targets(step, m)),
        "folds": lambda step, m: ", ".join(_folds(folds, m) for folds in step.folds),
        "humidity": wording.humidity,
        "events": lambda step, m: ", ".join(wording.events(step, m)),
        "lid": wording.lid,
        "turn": lambda step, m: (
            "" if step.turn_after is None else m.words.say("say.turn_after", m.duration(step.turn_after))
        ),
        "lots": wording.at_a_time,
        "loses": lambda step, m: "" if step.loses is None else m.words.say("say.loses", m.percent(step.loses)),
        "wait": wording.may_wait,
        "optional": _optional,
        "how": lambda step, m: _quoted(step.how, m),
        "until": lambda step, m: _quoted(step.until, m),
        "late": lambda step, m: m.words.say("say.if_late", _quoted(step.if_late, m)) if step.if_late else "",
        "notes": lambda step, m: " ".join(_quoted(text, m) for text in (*step.notes, step.why) if text),
    }
)
