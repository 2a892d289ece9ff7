"""A step in the house's words: its parts, the whole sentence, what to look for, and the places for the pen beside it."""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.bake_events import BakeEvent
from manchet.formula.model import CountedAmount, Folds, Goes, Range, Reach, Step, Who
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.views import BakePhase, Box
from manchet.syntax.vocabulary import VERB

_BOXED = {"temperature", "core", "pH", "volume", "below rim"}


def single(figure: Fraction) -> Range:
    """A single figure as the range that it is."""
    return Range(figure, figure)


def verb_alone(verb: str, m: Measures) -> str:
    """A verb inside a sentence: `dust`, `prove`."""
    return m.words.known("short", verb) or m.words["verbs." + verb].lower()


def sentence(step: Step, m: Measures) -> str:
    """What is done, as one phrase: `Mix slow 4 min to 26 °C`, `Ripen covered 12–15 h at 24 °C`."""
    return "".join(done_and_how(step, m))


def done_and_how(step: Step, m: Measures) -> tuple[str, str]:
    """The same in two: what is done and for how long, and under which conditions: `Ripen covered 12–15 h`, ` at 24 °C`."""
    said = opening(step, m)
    parts = [said, *manner(step, m), *_applied(step, m), *place(step, m), *how_long(step, m)]
    done = " ".join(part for part in parts if part)
    how = "".join(f" {part}" for part in (*additions(step, m), around_to(step, m)) if part)
    if step.optional:
        how = f"{how} {m.words['say.optional']}"
    if step.how and step.verb != "do":
        how = f"{how}: {step.how}"
    return done, ", ".join([how, *more(step, m)])


def opening(step: Step, m: Measures) -> str:
    """The verb, or the baker's own words."""
    return step.how[:1].upper() + step.how[1:] if step.verb == "do" else m.words["verbs." + step.verb]


def manner(step: Step, m: Measures) -> list[str]:
    said = []
    for word in step.manner:
        if word == "speed":
            said.append(m.words.say("manner.speed", str(step.speed)) if step.speed is not None else "")
        elif word != "optional":
            said.append(m.words["manner." + word])
    if step.shape and step.shape not in step.manner:
        said.append(m.words.say("say.as_shape", step.shape))
    return said


def additions(step: Step, m: Measures) -> list[str]:
    """In how many parts something is added; its weight stands on a line of its own."""
    return [m.words.say("say.additions", str(step.additions))] if step.additions else []


def _applied(step: Step, m: Measures) -> list[str]:
    with_what, each = what_is_applied(step, m)
    return [f"{with_what}, {each}"] if each else []


def what_is_applied(step: Step, m: Measures) -> tuple[str, str]:
    """What touches the bread, and how much of it: `egg wash`, `6 g each`; "" and "" where nothing does."""
    if step.applied is None:
        return "", ""
    a = step.applied
    amount = amount_each(a.counted, a.grams, a.each, m)
    if step.verb == "grease":
        onto = (m.words.known("nouns", a.onto) or a.onto) if a.onto else ""
        return f"{onto} {m.words.say('say.with', a.name)}".strip(), amount
    return f"{m.words['where.in']} {a.name}" if VERB[step.verb].may_touch else a.name, amount


def amount_each(counted: CountedAmount | None, grams: Fraction, each: bool, m: Measures) -> str:
    """`6 g each`, `90 g in all`; of what is counted `2 slices each`, `2 each`."""
    amount = m.each(grams)
    if counted is not None:
        number = grams / counted.grams
        amount = m.plain(single(number), 2)
        if counted.unit == "slices":
            amount = f"{amount} {m.words['say.slice' if number == 1 else 'say.slices']}"
    return m.words.say("say.each" if each else "say.in_all", amount)


def place(step: Step, m: Measures) -> list[str]:
    fire = [m.words["say." + step.by_fire]] if step.by_fire else []
    if step.where is None:
        return fire
    preposition, where = step.where
    return [m.words["where." + preposition], where, *fire]


def how_long(step: Step, m: Measures) -> list[str]:
    said = [] if step.slices is None else [m.words.say("say.into_slices", str(step.slices))]
    if step.serve_within is not None:
        said.append(m.duration(step.serve_within))
    if step.time is not None:
        time = m.time(step.time)
        said.append(m.words.say("say." + step.per, time) if step.per else time)
    if step.turns is not None:
        said.append(m.words.say("say.turns", m.plain(step.turns, 0)))
    return said


def around(step: Step, m: Measures) -> list[str]:
    heat = heats(step, m) or next(
        (m.degrees(single(goes.celsius)) for goes in step.goes if goes.celsius is not None), ""
    )
    return [m.words.say("say.at", heat)] if heat else []


def heats(step: Step, m: Measures) -> str:
    """`250 °C`, `260 °C floor, 240 °C air`, `230 °C falling to 215 °C`; "" where the step says none."""
    said = []
    for heat in step.heats:
        degrees = m.oven(heat.celsius)
        said.append(m.words.say("say." + heat.where, degrees) if heat.where else degrees)
    phrase = ", ".join(said)
    if step.ramp is not None:
        phrase = f"{phrase} {m.words.say('say.' + step.ramp[0], m.oven(step.ramp[1]))}".strip()
    return phrase


def around_to(step: Step, m: Measures) -> str:
    """What it stands at and what it comes to: `at 20 °C`, `to 25 °C`, `at 230 °C falling to 205 °C, to 97 °C core`."""
    to = ", ".join(targets(step, m))
    return (" " if step.ramp is None else ", ").join(part for part in (*around(step, m), to) if part)


def targets(step: Step, m: Measures) -> list[str]:
    said = []
    for reach in step.reaches:
        if reach.what == "temperature":
            said.append(m.words.say("say.to", m.degrees(reach.value)))
        elif reach.what == "core":
            said.append(m.words.say("say.core", m.degrees(reach.value)))
        elif reach.what in ("length", "below rim"):
            said.append(m.words.say("say." + reach.what, m.length(reach.value)))
        else:
            said.append(m.words.say("say." + reach.what, m.plain(reach.value)))
    return said


def more(step: Step, m: Measures) -> list[str]:
    said = [humidity(step, m), *events(step, m), lid(step, m), at_a_time(step, m)]
    return [part for part in said if part]


def humidity(step: Step, m: Measures) -> str:
    return "" if step.humidity is None else m.words.say("say.humidity", m.per_cents(step.humidity))


def events(step: Step, m: Measures) -> tuple[str, ...]:
    """Steam and damper, in order of time, each with its minute: `10 s steam`, `damper open after 8 min`."""
    return tuple(
        m.words.say("say.event_after", event_said(event, m), m.duration(event.after))
        if event.after
        else event_said(event, m)
        for event in step.events
    )


def event_said(event: BakeEvent, m: Measures) -> str:
    """What is done, without its minute."""
    if event.seconds is not None:
        return m.words.say("say.steam_seconds", m.duration(event.seconds))
    if event.millilitres is not None:
        return m.words.say("say.steam_millilitres", m.poured(event.millilitres))
    return m.words["say." + event.what]


def lid(step: Step, m: Measures) -> str:
    return "" if step.lid is None else m.words["say.lid_on" if step.lid else "say.lid_off"]


def at_a_time(step: Step, m: Measures) -> str:
    return "" if step.at_a_time is None else m.words.say("say.at_a_time", str(step.at_a_time))


def may_wait(step: Step, m: Measures) -> str:
    """`may wait 20 min`, `may wait 4 h at 4 °C`; "" where the step does not say."""
    if step.may_wait is None:
        return ""
    time, celsius = m.time(step.may_wait.seconds), step.may_wait.celsius
    return (
        m.words.say("say.may_wait", time)
        if celsius is None
        else m.words.say("say.may_wait_at", time, m.degrees(celsius))
    )


def look(step: Step, m: Measures) -> str:
    """The cue, which outranks the clock."""
    if not step.until:
        return ""
    first = step.until.partition(" ")[0].rstrip(",")
    if first == "like":
        return m.words.say("say.until_it_looks", step.until)
    return m.words.say("say.until_it" if first in m.words.several("say.it_does") else "say.until", step.until)


def notes(step: Step, m: Measures) -> tuple[str, ...]:
    """What may wait, what to do when it is late, what boils off, what the baker wrote."""
    said = []
    if step.turn_after is not None:
        said.append(m.words.say("say.turn_after", m.duration(step.turn_after)))
    if step.may_wait is not None:
        said.append(may_wait(step, m))
    if step.if_late:
        said.append(m.words.say("say.if_late", step.if_late))
    if step.loses is not None:
        said.append(m.words.say("say.loses", m.percent(step.loses)))
    return (*said, *step.notes)


def counts(step: Step, m: Measures) -> tuple[str, ...]:
    """Folds, turns and stirs inside a wait, each with the time at which it is due."""
    return tuple(due for folds in step.folds for due in _due(folds, m))


def _due(folds: Folds, m: Measures) -> list[str]:
    work = m.words["say." + folds.work]
    return [m.words.say("say.after", work, m.duration(folds.seconds * (n + 1))) for n in range(folds.number)]


def boxes(step: Step, m: Measures) -> tuple[Box, ...]:
    """What happened: the measures the step names, the room it stood in, and always the time, last."""
    found = [Box(m.words["box." + reach.what], _unit(reach.what, m)) for reach in _read(step)]
    if _stands_in_a_warmth(step):
        found.append(Box("", m.degree()))
    return (*found, Box(m.words["box.time"]))


def has_reading(step: Step) -> bool:
    """Whether something is measured at it, besides the hour."""
    return bool(_read(step)) or _stands_in_a_warmth(step)


def _read(step: Step) -> list[Reach]:
    return [reach for reach in step.reaches if reach.what in _BOXED]


def _stands_in_a_warmth(step: Step) -> bool:
    return step.who is Who.WAITING and bool(step.heats) and not any(r.what == "temperature" for r in step.reaches)


def _unit(what: str, m: Measures) -> str:
    if what in ("temperature", "core"):
        return m.degree()
    if what == "below rim":
        return m.words["units.inch" if m.in_inches else "units.mm"]
    return ""


def phase(step: Step, m: Measures) -> BakePhase:
    """One phase of a bake, for its table."""
    core = next((m.degrees(r.value) for r in step.reaches if r.what == "core"), "")
    minutes = " ".join(how_long(step, m))
    beside = [" ".join(place(step, m)), lid(step, m), at_a_time(step, m)]
    said = ", ".join(part for part in beside if part)
    return BakePhase(
        minutes, heats(step, m), events(step, m), core, look(step, m),
        ((said,) if said else ()) + notes(step, m),
    )  # fmt: skip


def is_by_feel(goes: Goes) -> bool:
    """Added by feel: then the pen writes how much."""
    return goes.by_feel or goes.beyond
