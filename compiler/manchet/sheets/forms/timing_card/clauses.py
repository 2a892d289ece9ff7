"""What is done, in the house's words: the strong words first (`mix slow 4 min`), then how (`to 25 °C until it is smooth`)."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Literal

from manchet.figures.fermentation.yeast_grid import hours_to_say
from manchet.formula.model import Range, Step, Who
from manchet.quantities.printing import round_to
from manchet.sheets.forms.timing_card.view import CardWeight, Clause
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.far_from_written import far_line
from manchet.sheets.parts.rounds import rounds_line
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import COLD, VERB
from manchet.timing.card.moments import OUT
from manchet.timing.card.values import CardRow
from manchet.timing.jobs.handling import Handling

MINUTE = 60
COVERS = frozenset({"covered", "uncovered"})


def clause_of(row: CardRow, weights: tuple[CardWeight, ...], m: Measures) -> Clause:
    """One row of the card as a clause; `weights` is what goes in."""
    do, how = _said(row, m)
    about = "".join(_about(seconds, m) for seconds in _nobody_timed(row))
    return Clause(do, how, work_of(row), minutes_of(row), weights, note_of(row, m), about)


def handling_clause(one: Handling, m: Measures) -> Clause:
    """`weigh`, `load ~ 3 min`."""
    about = _about(one.seconds, m) if one.is_estimate else ""
    return Clause(m.words["card." + one.does], "", "hands", int(round_to(one.seconds / MINUTE, 0)), about=about)


def _nobody_timed(row: CardRow) -> Iterator[Fraction]:
    """Seconds of what the row itself says, by an estimate."""
    if row.is_estimate:
        yield row.seconds.likely
    if row.job == OUT:
        yield from (one.seconds for one in row.handling if one.is_estimate)


def is_said(seconds: Fraction) -> bool:
    """Work of less than a minute is in the clock, and not told."""
    return seconds >= MINUTE


def _about(seconds: Fraction, m: Measures) -> str:
    """How long it takes by an estimate of ours, which the clock has in it."""
    return m.words.say("day.about", m.time(single(round_to(seconds / MINUTE, 0) * MINUTE))) if is_said(seconds) else ""


def work_of(row: CardRow) -> Literal["hands", "machine", "left alone", "cold"]:
    if row.who is Who.HANDS:
        return "hands"
    if row.who is Who.MACHINE:
        return "machine"
    return "cold" if row.step is not None and row.step.verb in COLD else "left alone"


def minutes_of(row: CardRow) -> int:
    return int((row.end - row.begins).total_seconds()) // 60


def capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _said(row: CardRow, m: Measures) -> tuple[str, str]:
    words = m.words
    if row.job == "step" and row.step is not None:
        return strong_words(row.step, m), how_said(row.step, m)
    if row.event is not None:
        return wording.event_said(row.event, m), ""
    if row.job == "preheat":
        to = () if row.celsius is None else (words.say("say.to", m.oven(row.celsius)),)
        takes = (m.time(row.seconds),) if row.seconds.high else ()
        return words["card.light" if row.is_fire else "card.heat"], ", ".join((*to, *takes))
    if row.job == "fire out" and row.celsius is not None:
        return words["card.fire_out"], words.say("card.floor", _floor_heat(row.celsius.likely, m))
    said = words["card." + row.job]
    return (words.say("card.counted", said, str(row.number), str(row.of)) if row.of > 1 else said), ""


def strong_words(step: Step, m: Measures) -> str:
    """The verb with what it is without meaning to be read: its speed, its shape, its time."""
    verb = step.how if step.verb == "do" else m.words["verbs." + step.verb]
    return " ".join(filter(None, (verb[:1].lower() + verb[1:], *_manner(step, m), _time(step, m)))).rstrip(",")


def _manner(step: Step, m: Measures) -> list[str]:
    said = []
    for word in step.manner:
        if word == "speed":
            said.append(m.words.say("manner.speed", str(step.speed)) if step.speed is not None else "")
        elif word not in COVERS and word != "optional":
            said.append(m.words["manner." + word])
    if step.shape and step.shape not in step.manner:
        said.append(m.words.say("say.as_shape", step.shape))
    return said


def _time(step: Step, m: Measures) -> str:
    """As long as the file says; not the seconds of each piece, which the clock has in it."""
    if step.time is not None and step.per != "each":
        time = m.time(step.time)
        return m.words.say("say." + step.per, time) if step.per else time
    return m.words.say("say.turns", m.plain(step.turns, 0)) if step.turns is not None else ""


def how_said(step: Step, m: Measures) -> str:
    """`covered at 25 °C with 2 folds until it has doubled`; with a colon before the baker's own words."""
    words = m.words
    covers = [words["manner." + word] for word in step.manner if word in COVERS]
    additions = [words.say("say.additions", str(step.additions))] if step.additions else []
    place = wording.place(step, m)
    said = " ".join([*covers, *additions, *_applied(step, m), *place, wording.around_to(step, m)]).strip()
    tail = [wording.humidity(step, m), *_events(step, m), wording.lid(step, m), wording.at_a_time(step, m)]
    said = ", ".join(filter(None, (said, *tail)))
    if step.how and step.verb != "do":
        said = ": ".join(filter(None, (said, step.how))) if said else f": {step.how}"
    if step.optional:
        said = f"{said} {words['say.optional']}".strip()
    until = wording.look(step, m)
    return (", " if any(tail) else " ").join(filter(None, (said, until)))


def _applied(step: Step, m: Measures) -> list[str]:
    if step.applied is None:
        return []
    a = step.applied
    said = m.words.say("say.applied_each" if a.each else "say.applied_all", a.name, m.each(a.grams))
    if step.verb != "grease":
        return [m.words["where.in"], said] if VERB[step.verb].may_touch else [said]
    onto = (m.words.known("nouns", a.onto) or a.onto) if a.onto else ""
    return [part for part in (onto, m.words.say("say.with", said)) if part]


def _events(step: Step, m: Measures) -> list[str]:
    """What is done with steam and damper at once; what comes later has its own clock."""
    return [wording.event_said(event, m) for event in step.events if not event.after]


# ---- small remarks --------------------------------------------------------------------------------


def note_of(row: CardRow, m: Measures) -> str:
    """What may wait, what the room or the floor of the oven does to it, what is far from what was written."""
    said = [_rounds(row, m), _may_wait(row, m), _floor(row, m), _cold(row, m), _in_room(row, m)]
    said += [far_line(row.far, m) if row.far is not None else ""]
    if row.job == "step" and row.step is not None and row.step.if_late:
        said.append(m.words.say("say.if_late", row.step.if_late))
    return "; ".join(filter(None, said))


def _rounds(row: CardRow, m: Measures) -> str:
    """`12 rounds of 4` on a griddle, in a pan or in a pot; or that the minutes are of one and nobody says how many there are."""
    if row.job != "step":
        return ""
    if row.one_round:
        return m.words["card.one_round"]
    return rounds_line((row.rounds,), m)


def _may_wait(row: CardRow, m: Measures) -> str:
    return wording.may_wait(row.step, m) if row.step is not None and row.job == "step" else ""


def _in_room(row: CardRow, m: Measures) -> str:
    """About how long a wait takes in the room as it is, in hours that a baker plans by."""
    if row.in_room is None:
        return ""
    room, there = m.degrees(single(row.in_room.celsius)), row.in_room.seconds
    if there is None:
        return m.words.say("card.in_room_silent", room, m.degrees(single(row.in_room.written)))
    low, high = (None if end is None else hours_to_say(end) for end in there)
    if low is None or high is None:
        open_end = "card.in_room_up_to" if low is None else "card.in_room_down_to"
        return m.words.say(open_end, room, m.time(single(low or high or Fraction(0))))
    return m.words.say("card.in_room", room, m.time(Range(low, high)))


def _cold(row: CardRow, m: Measures) -> str:
    """From when to when the middle of what is put into the fridge is cold."""
    return "" if row.cold_after is None else m.words.say("card.cold", m.time(row.cold_after))


def _floor(row: CardRow, m: Measures) -> str:
    """What the floor of a falling oven should show when the load goes in, and what to do if it does not."""
    if row.floor is None:
        return ""
    under = m.words.say("card.floor_under", m.oven(single(row.floor.least)))
    if not row.floor.fallen:
        return under
    return m.words.say("card.floor_now", _floor_heat(row.floor.heat, m), under)


def _floor_heat(celsius: Fraction, m: Measures) -> str:
    """A floor's heat, to what its thermometer tells apart."""
    return m.oven(single(round_to(celsius / 5, 0) * 5))
