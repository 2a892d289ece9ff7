"""The oven card: for each oven whose fire is out, what goes in, in order, from plan to text. All of it is an estimate."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from itertools import groupby

from manchet.figures.oven.bakes import Bake
from manchet.figures.oven.core import core_of
from manchet.figures.oven.curve import fastest, hours_to
from manchet.figures.oven.loading_order import first_if_colder
from manchet.figures.oven.loading_plan import Load, Plan, window_of
from manchet.formula.model import Formula, Range
from manchet.formula.nouns import noun_for
from manchet.kitchen.model import Fall
from manchet.quantities.printing import round_to
from manchet.quantities.units import in_fahrenheit
from manchet.sheets.drawings.falling import FallingLane, way_down
from manchet.sheets.drawings.pen import drawing
from manchet.sheets.forms.oven_card.view import FallingOven, LoadRow, OvenCard
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts import wording
from manchet.sheets.parts.views import Box, Fact
from manchet.sheets.parts.wording import single

LOWER = (Fraction(200), Fraction(150), Fraction(100))
"""Celsius that the card names when the last load is out: for whatever may still be dried or kept warm."""

NEARLY = Fraction(5)
"""Degrees Celsius that no floor's thermometer tells apart."""


def oven_card(
    kitchen: str,
    plans: Sequence[Plan],
    formulas: Mapping[str, Formula],
    missing: Sequence[str],
    issue: Issue,
    house: House,
) -> OvenCard:
    """The card of a kitchen: a plan for each of its falling ovens, with the formulas of what goes in, by name. `missing`
    are the names of those whose files have mistakes."""
    words = words_of(house.words)
    m = Measures(house, words)
    title = words.say("falling.title", kitchen) if kitchen else words["falling.title_plain"]
    return OvenCard(
        title=title,
        language=words["language"],
        paper=house.paper,
        running=running_head(title, "", issue),
        about=words["falling.estimate"],
        missing=words.say("falling.missing", ", ".join(missing)) if missing else "",
        ovens=tuple(_falling(plan, formulas, m) for plan in plans),
    )


def _falling(plan: Plan, formulas: Mapping[str, Formula], m: Measures) -> FallingOven:
    title, svg = _curve(plan, m)
    return FallingOven(
        oven=plan.oven.name or m.words["oven"],
        facts=tuple(_facts(plan, m)),
        boxes=(Box(m.words["falling.fire_out"]), Box(m.words["falling.floor_then"], m.degree())),
        title=title,
        svg=svg,
        turns=tuple(_turn(plan, at, formulas, m) for at in range(len(plan.loads))),
        left_out=tuple(_left_out(plan, m)),
        after=tuple(_after(plan, m)),
        notes=tuple(_notes(plan, m)),
    )


# ---- figures as they are printed -------------------------------------------------------------------


def _at(hours: Fraction) -> str:
    """`+6:45`, to five minutes: an estimate is no more exact."""
    minutes = int(round_to(hours * 12, 0)) * 5
    return f"+{minutes // 60}:{minutes % 60:02}"


def _about(celsius: Fraction, m: Measures) -> str:
    return m.oven(single(round_to(celsius / 5, 0) * 5))


def _heat(celsius: Fraction, m: Measures) -> str:
    """To whole degrees, however a file in another scale came to it."""
    return m.oven(single(round_to(celsius, 0)))


def _wants(bake: Bake, m: Measures) -> str:
    return m.oven(Range(*(round_to(end, 0) for end in bake.wants)))


def _difference(celsius: Range, m: Measures) -> str:
    """A difference of temperature: 10 °C are 18 °F."""
    ends = (in_fahrenheit(end, 0) if end is not None and m.house.degrees == "F" else end for end in celsius)
    return f"{m.plain(Range(*ends), 1)}\N{NO-BREAK SPACE}{m.degree()}"


def _range(fall: Fall) -> Range:
    return Range(fall.slowest or fall.an_hour, fall.fastest or fall.an_hour)


def _name(bake: Bake, m: Measures) -> str:
    name = ", ".join(filter(None, (bake.formula, bake.stage, bake.noun)))
    return m.words.say("falling.drying", name) if bake.dries else name


# ---- the head --------------------------------------------------------------------------------------


def _facts(plan: Plan, m: Measures) -> Iterable[Fact]:
    words, oven = m.words, plan.oven
    yield Fact(words["falling.hour_none"], words.say("falling.floor_at", _heat(oven.falls[0].start, m)))
    falls = (words.say("falling.an_hour", _difference(_range(fall), m), _heat(fall.start, m)) for fall in oven.falls)
    yield Fact(words["falling.falls"], "; ".join(falls))
    takes = oven.load_takes
    if takes is None:
        yield Fact(words["falling.load_takes"], words["falling.not_measured"])
    else:
        grams = takes.grams or plan.full
        yield Fact(
            words["falling.load_takes"],
            words.say("falling.for_dough", _difference(single(takes.drop), m), m.mass(grams)),
        )
    if oven.recovers:
        yield Fact(words["falling.between"], m.duration(oven.recovers))


def _curve(plan: Plan, m: Measures) -> tuple[str, str]:
    """The curve and its lanes, one for each thing in the order they go in."""
    lanes, said = [], []
    for number, bake in enumerate(dict.fromkeys(load.bake for load in plan.loads), 1):
        when = window_of(plan.curve, bake)
        if when is None:
            continue
        loads = tuple(
            (float(load.into.hours), float(load.out.hours)) for load in plan.loads if load.bake == bake
        )  # fmt: skip
        lanes.append(FallingLane(f"{number} {_name(bake, m)}", float(when.opens), float(when.closes), loads))
        said.append(m.words.say("falling.lane", _name(bake, m), _at(when.opens), _at(when.closes)))
    points = [(float(point.hours), float(m.reading(point.celsius))) for point in plan.curve]
    title = m.words.say("falling.curve", plan.oven.name, "; ".join(said))
    art = way_down(points, lanes, m.degree(), m.words["units.h"], m.words["falling.key"])
    return title, drawing("falling oven", title, art).svg


# ---- its loads -------------------------------------------------------------------------------------


def _turn(plan: Plan, at: int, formulas: Mapping[str, Formula], m: Measures) -> LoadRow:
    load = plan.loads[at]
    bake, words = load.bake, m.words
    turns = list(dict.fromkeys(one.bake for one in plan.loads))
    falls = fastest(plan.oven.falls)
    begun, ended = hours_to(falls, load.into.celsius), hours_to(falls, bake.wants[0])
    longer = (ended or Fraction(0)) - (begun or Fraction(0))
    return LoadRow(
        number=str(turns.index(bake) + 1),
        name=_name(bake, m),
        load=_load(load, m),
        floor=_wants(bake, m),
        about=words.say("falling.by_then", _about(load.into.celsius, m)),
        when=_at(load.into.hours),
        latest=words.say("falling.latest", _at(load.into.hours + longer)),
        minutes=_minutes(bake, m),
        look=_look(bake, formulas, m) if load.number == 1 else "",
        colder=tuple(_colder(plan, at, formulas, m)) if load.number == 1 else (),
        notes=tuple(_later_phases(bake, m)) if load.number == 1 else (),
    )


def _load(load: Load, m: Measures) -> str:
    noun = load.bake.each or m.words["falling.pieces"]
    pieces = f"{m.plain(single(load.pieces), 1)} {noun_for(load.pieces, noun)}" if load.pieces else ""
    number = m.words.say("falling.load", str(load.number), str(load.of)) if load.of > 1 else ""
    return ", ".join(filter(None, (number, pieces)))


def _minutes(bake: Bake, m: Measures) -> str:
    return m.time(bake.seconds) if bake.seconds.high else ""


def _core(bake: Bake, formulas: Mapping[str, Formula], m: Measures) -> str:
    """The core the file gives; else the one its kind has, as an estimate; "" where nothing has a core."""
    for phase in bake.phases:
        for reach in phase.reaches:
            if reach.what == "core":
                return m.words.say("say.core", m.degrees(reach.value))
    formula = formulas.get(bake.formula)
    core = None if formula is None or bake.stage or bake.dries else core_of(formula, bake.phases)
    if core is None:
        return ""
    return m.words.say("falling.core_about", m.degrees(single(Fraction(core.celsius))))


def _look(bake: Bake, formulas: Mapping[str, Formula], m: Measures) -> str:
    looks = [wording.look(phase, m) for phase in bake.phases]
    return "; ".join(filter(None, (*looks, _core(bake, formulas, m))))


def _later_phases(bake: Bake, m: Measures) -> Iterable[str]:
    """`6 at a time`, `steam`, and what the file says of the phases after the first: their minutes and heat."""
    if bake.turns > 1 and bake.holds is not None:
        yield m.words.say("say.at_a_time", str(bake.holds.number))
    first = wording.steam(bake.phases[0], m)
    if first:
        yield first
    for phase in bake.phases[1:]:
        heat = wording.heats(phase, m)
        minutes = m.time(phase.time) if phase.time is not None else ""
        if heat:
            yield m.words.say("falling.then", " ".join(filter(None, (minutes, m.words.say("say.at", heat)))))


def _colder(plan: Plan, at: int, formulas: Mapping[str, Formula], m: Measures) -> tuple[str, ...]:
    """What to do on the way down: the higher figure first. Said with the first load, for all of them."""
    bake = plan.loads[at].bake
    least, first = bake.wants[0], first_if_colder(plan, at)
    under, longer = (
        _heat(least, m),
        m.words["falling.to_core" if _core(bake, formulas, m) else "falling.by_look"],
    )
    late = m.words.say("falling.longer", under, longer)
    if first is None:
        return (late,)
    if first.under == least:
        return (m.words.say("falling.first_then", under, _name(first.bake, m), longer),)
    other = m.words.say("falling.first", _heat(first.under, m), _name(first.bake, m))
    return (late, other) if first.under < least else (other, late)


# ---- what is left ----------------------------------------------------------------------------------


def _left_out(plan: Plan, m: Measures) -> Iterable[str]:
    words = m.words
    start = _heat(plan.oven.falls[0].start, m)
    for bake in plan.too_hot:
        yield words.say("falling.too_hot", _name(bake, m), _wants(bake, m), start)
    for bake, group in groupby(plan.late, key=lambda load: load.bake):
        late = list(group)
        least, found = bake.wants[0], late[0].into.celsius
        floor = words["falling.just_under"] if least - found < NEARLY else words.say("falling.at", _about(found, m))
        yield words.say("falling.late", _name(bake, m), _which(late, m), _wants(bake, m), floor)


def _which(late: Sequence[Load], m: Measures) -> str:
    """`load 3 of 3`, `loads 2–3 of 3`; "" for all of it."""
    first, last = late[0], late[-1]
    if len(late) == first.of:
        return ""
    if len(late) == 1:
        return f" ({m.words.say('falling.load', str(first.number), str(first.of))})"
    return f" ({m.words.say('falling.loads', str(first.number), str(last.number), str(first.of))})"


def _after(plan: Plan, m: Measures) -> Iterable[str]:
    """The floor when the last load is out, and when it has fallen further: for drying and keeping warm."""
    if not plan.loads:
        return
    last = plan.loads[-1].out
    yield m.words.say("falling.last_out", _at(last.hours), _about(last.celsius, m))
    begun = hours_to(plan.oven.falls, last.celsius)
    for celsius in LOWER:
        ended = hours_to(plan.oven.falls, celsius)
        if begun is not None and ended is not None and ended > begun:
            yield m.words.say("falling.down_to", m.oven(single(celsius)), _at(last.hours + ended - begun))


def _notes(plan: Plan, m: Measures) -> Iterable[str]:
    yield m.words["falling.hotter"]
    if plan.oven.load_takes is None:
        yield m.words["falling.measure_load"]
    unknown = [load.bake for load in plan.loads if load.bake.holds is None and load.bake.pieces > 1]
    if unknown:
        yield m.words.say("falling.holds_unknown", ", ".join(_name(bake, m) for bake in dict.fromkeys(unknown)))
