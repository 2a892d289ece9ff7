"""The oven card: for each oven whose fire is out, what goes in, in order, from plan to text. All of it is an estimate."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import tzinfo
from fractions import Fraction
from itertools import groupby

from manchet.figures.oven.bakes import Bake
from manchet.figures.oven.curve import fastest, hours_to, rising_phase
from manchet.figures.oven.loading_order import first_if_colder
from manchet.figures.oven.loading_plan import Load, LoadingPlan
from manchet.formula.model import Formula, Range
from manchet.formula.nouns import noun_for
from manchet.kitchen.model import Fall
from manchet.quantities.printing import round_to
from manchet.quantities.units import in_fahrenheit
from manchet.sheets.drawings.falling import LoadMark, way_down
from manchet.sheets.drawings.pen import drawing
from manchet.sheets.drawings.wall_clock import WallClock
from manchet.sheets.forms.oven_card.clock import OvenClock, clock_of, clock_of_one
from manchet.sheets.forms.oven_card.view import FallingOven, LeftOut, LoadRow, OvenCard
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts import wording
from manchet.sheets.parts.clock_lines import clock_lines
from manchet.sheets.parts.core_estimate import CoreEstimate, core_estimate
from manchet.sheets.parts.views import Box, Illustration
from manchet.sheets.parts.wording import single
from manchet.timing.card.values import Card
from manchet.timing.when import When
from manchet.timing.zones import ClockChange, zone_of

LOWER = (Fraction(200), Fraction(150), Fraction(100))
"""Celsius that the card names when the last load is out: for whatever may still be dried or kept warm."""

NEARLY = Fraction(5)
"""Degrees Celsius that no floor's thermometer tells apart."""


def oven_card(
    kitchen: str,
    plans: Sequence[LoadingPlan],
    formulas: Mapping[str, Formula],
    missing: Sequence[str],
    issue: Issue,
    house: House,
    when: When | None = None,
    zone: str = "",
    timed: Sequence[Card] = (),
) -> OvenCard:
    """The card of a kitchen: a plan for each of its falling ovens, with the formulas of what goes in, by name. `zone` is by whose clock it lives, "" for none. `missing`
    are the names of those whose files have mistakes; `timed` the timing cards of the breads, where the day says when."""
    words = words_of(house.words)
    m = Measures(house, words)
    ovens = ", ".join(plan.oven.name or words["oven"] for plan in plans)
    title = words.say("falling.title", ovens[:1].upper() + ovens[1:])
    return OvenCard(
        title=title,
        language=words["language"],
        paper=house.paper,
        running=running_head(words.say("falling.running", kitchen, title) if kitchen else title, "", issue),
        missing=words.say("falling.missing", ", ".join(missing)) if missing else "",
        degree=m.degree(),
        ovens=tuple(_falling(plan, formulas, _clock(plan, when, zone_of(zone), timed), m) for plan in plans),
    )


def _clock(plan: LoadingPlan, when: When | None, zone: tzinfo | None, timed: Sequence[Card]) -> OvenClock:
    one = clock_of_one(plan, timed[0], zone) if len(timed) == 1 else None
    after = {card.name: card.ready - card.out_of_oven for card in timed if card.out_of_oven is not None}
    return clock_of(plan, when, zone, after) if one is None else one


def _falling(plan: LoadingPlan, formulas: Mapping[str, Formula], clock: OvenClock, m: Measures) -> FallingOven:
    hottest = m.oven(single(round_to(plan.fired_to, 0)))
    return FallingOven(
        oven=plan.oven.name or m.words["oven"],
        fire_out=m.words.say("falling.hours", hottest)
        if clock.fire_out is None
        else m.words.say(
            "falling.fire_out_at",
            m.words.several("days.short")[clock.fire_out.weekday()],
            m.clock(clock.fire_out),
            hottest,
        ),
        boxes=(Box(m.words["falling.fire_out"]), Box(m.words["falling.floor_then"], m.degree())),
        rules=(*_rules(plan, m), *clock_lines(_changes(plan, clock), m)),
        burning=tuple(_burning(plan, formulas, m)),
        left_out=tuple(_left_out(plan, m)),
        curve=_curve(plan, clock, m),
        loads=tuple(_row(plan, at, formulas, clock, m) for at in range(len(plan.loads))),
        after=tuple(_after(plan, clock, m)),
        notes=tuple(_notes(plan, formulas, m)),
    )


# ---- figures as they are printed -------------------------------------------------------------------


def _fives(celsius: Range, m: Measures) -> str:
    """A floor's heat without its unit, to what its thermometer tells apart."""
    return m.plain(Range(*(None if end is None else round_to(m.reading(end) / 5, 0) * 5 for end in celsius)), 0)


def _about(celsius: Fraction, m: Measures) -> str:
    return f"{_fives(single(celsius), m)}{NBSP}{m.degree()}"


def _heat(celsius: Fraction, m: Measures) -> str:
    return m.oven(single(round_to(celsius, 0)))


def _difference(celsius: Range, m: Measures) -> str:
    """A difference of temperature: 10 °C are 18 °F, to the whole degree."""
    in_f = m.house.degrees == "F"
    ends = (in_fahrenheit(end, 0) if end is not None and in_f else end for end in celsius)
    return f"{m.plain(Range(*ends), 0 if in_f else 1)}{NBSP}{m.degree()}"


def _range(fall: Fall) -> Range:
    return Range(fall.slowest or fall.an_hour, fall.fastest or fall.an_hour)


def _name(bake: Bake, m: Measures) -> str:
    name = ", ".join(filter(None, (bake.formula, bake.stage, bake.noun)))
    return m.words.say("falling.drying", name) if bake.dries else name


# ---- the head --------------------------------------------------------------------------------------


def _rules(plan: LoadingPlan, m: Measures) -> Iterable[str]:
    words, oven = m.words, plan.oven
    yield words["falling.read_first"]
    yield words["falling.hotter"]
    yield words["falling.estimate"]
    if oven.recovers:
        yield words.say("falling.between", m.duration(oven.recovers))
    falls = (words.say("falling.an_hour", _difference(_range(fall), m), _heat(fall.start, m)) for fall in oven.falls)
    yield words.say("falling.falls", "; ".join(falls))
    takes = oven.load_takes
    if takes is not None:
        grams = takes.grams or plan.full
        yield words.say("falling.load_takes", _difference(single(takes.drop), m), m.mass(grams))


def _curve(plan: LoadingPlan, clock: OvenClock, m: Measures) -> Illustration | None:
    """The floor's way down, with the number of each load where it goes in."""
    if not plan.loads:
        return None
    marks = [
        LoadMark(float(load.into.hours), float(m.reading(load.into.celsius)), str(number))
        for number, load in enumerate(plan.loads, 1)
    ]
    points = [(float(point.hours), float(m.reading(point.celsius))) for point in plan.curve]
    said = "; ".join(
        m.words.say("falling.point", mark.number, clock.at(load.into.hours), _about(load.into.celsius, m))
        for mark, load in zip(marks, plan.loads, strict=True)
    )
    made = drawing(
        "falling oven",
        m.words.say("falling.curve", plan.oven.name, said),
        way_down(points, marks, m.degree(), _wall(clock)),
    )
    return Illustration(made.title, made.svg, high=made.high)


def _wall(clock: OvenClock) -> WallClock | None:
    out = clock.fire_out
    if out is None:
        return None
    jumps = tuple((int((change.after - out).total_seconds()) // 60, change.minutes) for change in clock.changes)
    return WallClock(out.hour * 60 + out.minute, jumps)


def _changes(plan: LoadingPlan, clock: OvenClock) -> tuple[ClockChange, ...]:
    """Those of the clock up to when the last load is out."""
    last = max((load.out.hours for load in plan.loads), default=Fraction(0))
    out = clock.fire_out
    return tuple(one for one in clock.changes if out and (one.after - out).total_seconds() <= last * 3600)


def _burning(plan: LoadingPlan, formulas: Mapping[str, Formula], m: Measures) -> Iterable[str]:
    """`Before the fire is out, at the mouth: Ash rolls, 24 rolls, 12 min, from 40 to 5 min before; until spotted`"""
    for bake in plan.rising:
        first = bake.phases[0]
        if not first.by_fire:
            continue
        noun = bake.each or m.words["falling.pieces"]
        said = [_name(bake, m)]
        said += [f"{m.plain(single(bake.pieces), 1)} {noun_for(bake.pieces, noun)}"] if bake.pieces else []
        said += [m.words.say("falling.in_loads", str(len(bake.loads)))] if len(bake.loads) > 1 else []
        said += [m.time(bake.seconds)] if bake.seconds.high else []
        if first.by_fire == "at the mouth" and plan.oven.mouth is not None:
            mouth = plan.oven.mouth
            said.append(m.words.say("falling.before_out", m.duration(mouth.start), m.duration(mouth.end)))
        elif first.ramp is not None:
            said.append(m.words["falling.as_it_is_lit"])
        then = "; ".join((", ".join(said), *_then(bake, formulas, m)))
        yield m.words.say("falling.burning", m.words["say." + first.by_fire], then)


# ---- its loads -------------------------------------------------------------------------------------


def _row(plan: LoadingPlan, at: int, formulas: Mapping[str, Formula], clock: OvenClock, m: Measures) -> LoadRow:
    load = plan.loads[at]
    bake = load.bake
    falls = fastest(plan.oven.falls)
    begun, ended = hours_to(falls, load.into.celsius), hours_to(falls, bake.wants[0])
    longer = (ended or Fraction(0)) - (begun or Fraction(0))
    return LoadRow(
        number=str(at + 1),
        name=_name(bake, m),
        load=_load(load, m),
        into=clock.at(load.into.hours),
        latest=clock.at(load.into.hours + longer),
        floor=_fives(Range(*bake.wants), m),
        minutes=m.time(bake.seconds) if bake.seconds.high else "",
        out=clock.at(load.out.hours),
        then=tuple(_then(bake, formulas, m)) if load.number == 1 else (),
        colder=_colder(plan, at, m),
    )


def _load(load: Load, m: Measures) -> str:
    noun = load.bake.each or m.words["falling.pieces"]
    pieces = f"{m.plain(single(load.pieces), 1)} {noun_for(load.pieces, noun)}" if load.pieces else ""
    number = m.words.say("falling.load", str(load.number), str(load.of)) if load.of > 1 else ""
    return ", ".join(filter(None, (number, pieces)))


def _core(bake: Bake, formulas: Mapping[str, Formula], m: Measures) -> tuple[str, ...]:
    """The core the file gives; else the one its kind has, about; nothing where nothing has a core."""
    for phase in bake.phases:
        for reach in phase.reaches:
            if reach.what == "core":
                return (m.words.say("say.core", m.degrees(reach.value)),)
    core = _estimate(bake, formulas, m)
    return () if core is None else (m.words.say("say.core", core.about),)


def _estimate(bake: Bake, formulas: Mapping[str, Formula], m: Measures) -> CoreEstimate | None:
    formula = formulas.get(bake.formula)
    return None if formula is None or bake.stage or bake.dries else core_estimate(formula, bake.phases, m)


def _then(bake: Bake, formulas: Mapping[str, Formula], m: Measures) -> Iterable[str]:
    """`6 at a time`, steam and damper, the phases after the first with their minutes and heat, the look, the core."""
    if bake.turns > 1 and bake.holds is not None:
        yield m.words.say("say.at_a_time", str(bake.holds.number))
    yield from wording.events(bake.phases[0], m)
    for phase in bake.phases[1:]:
        heat = wording.heats(phase, m)
        minutes = m.time(phase.time) if phase.time is not None else ""
        if heat:
            yield m.words.say("falling.then", " ".join(filter(None, (minutes, m.words.say("say.at", heat)))))
    yield from filter(None, (wording.look(phase, m) for phase in bake.phases))
    yield from _core(bake, formulas, m)


def _colder(plan: LoadingPlan, at: int, m: Measures) -> str:
    """Which load goes in first if the floor is colder than that; "" where nothing is won by it."""
    first = first_if_colder(plan, at)
    if first is None:
        return ""
    number = next(n for n, load in enumerate(plan.loads, 1) if load.bake == first.bake)
    return m.words.say("falling.first", _fives(single(first.under), m), str(number))


# ---- what is left ----------------------------------------------------------------------------------


def _left_out(plan: LoadingPlan, m: Measures) -> Iterable[LeftOut]:
    words = m.words
    start = _heat(plan.oven.falls[0].start, m)
    for bake in plan.too_hot:
        yield LeftOut(_name(bake, m), _about_range(bake, m), words.say("falling.too_hot", start))
    for bake in (bake for bake in plan.rising if not bake.phases[0].by_fire):
        phase = rising_phase(bake.phases) or bake.phases[0]
        yield LeftOut(_name(bake, m), wording.heats(phase, m), words["falling.rising"])
    for bake, group in groupby(plan.late, key=lambda load: load.bake):
        late = list(group)
        least, found = bake.wants[0], late[0].into.celsius
        floor = words["falling.just_under"] if least - found < NEARLY else words.say("falling.about", _about(found, m))
        yield LeftOut(f"{_name(bake, m)}{_which(late, m)}", _about_range(bake, m), floor)


def _about_range(bake: Bake, m: Measures) -> str:
    return f"{_fives(Range(*bake.wants), m)}{NBSP}{m.degree()}"


def _which(late: Sequence[Load], m: Measures) -> str:
    """`, load 3 of 3`, `, loads 2–3 of 3`; "" for all of it."""
    first, last = late[0], late[-1]
    if len(late) == first.of:
        return ""
    if len(late) == 1:
        return f", {m.words.say('falling.load', str(first.number), str(first.of))}"
    return f", {m.words.say('falling.loads', str(first.number), str(last.number), str(first.of))}"


def _after(plan: LoadingPlan, clock: OvenClock, m: Measures) -> Iterable[str]:
    """The floor when the last load is out, and when it has fallen further: for drying and keeping warm."""
    if not plan.loads:
        return
    last = plan.loads[-1].out
    yield m.words.say("falling.last_out", clock.at(last.hours), _about(last.celsius, m))
    begun = hours_to(plan.oven.falls, last.celsius)
    for celsius in LOWER:
        ended = hours_to(plan.oven.falls, celsius)
        if begun is not None and ended is not None and ended > begun:
            yield m.words.say("falling.down_to", m.oven(single(celsius)), clock.at(last.hours + ended - begun))
    yield m.words["falling.under"]


def _notes(plan: LoadingPlan, formulas: Mapping[str, Formula], m: Measures) -> Iterable[str]:
    """What holds for several loads is said once."""
    estimates = (_estimate(load.bake, formulas, m) for load in plan.loads)
    for note in dict.fromkeys(one.note for one in estimates if one is not None):
        yield f"{note[:1].upper()}{note[1:]}."
    if plan.oven.load_takes is None:
        yield m.words["falling.measure_load"]
    unknown = [load.bake for load in plan.loads if load.bake.holds is None and load.bake.pieces > 1]
    if unknown:
        yield m.words.say("falling.holds_unknown", ", ".join(_name(bake, m) for bake in dict.fromkeys(unknown)))
