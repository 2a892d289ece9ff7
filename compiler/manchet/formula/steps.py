"""Steps as the model holds them: one value for a verb, its clauses and the clause lines under it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from typing import Any

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula import measures
from manchet.formula.bake_events import OPEN, SHUT, STEAM, BakeEvent, by_the_clock
from manchet.formula.model import Applied, Folds, Heat, Range, Reach, Step, Wait, Who
from manchet.formula.naming import Names
from manchet.formula.picture import Picture
from manchet.formula.step_faults import step_faults
from manchet.larder.densities import millilitres_of, weight_of
from manchet.quantities.units import TIME, UNITS
from manchet.source.text import Line
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.vocabulary import BAKES, IN_OVEN, SHAPES, VERB


def who_works(verb: str, manner: Iterable[str]) -> Who:
    """Who works: as the vocabulary says of the verb, unless the line says `by hand`, `hands-on` or `waiting`."""
    said = set(manner)
    if "waiting" in said:
        return Who.WAITING
    if "hands-on" in said or "by hand" in said:
        return Who.HANDS
    return Who(VERB[verb].who)


def clauses_of(entry: Entry) -> list[tuple[Line, nodes.Clause]]:
    """The clauses of a step: on its own line, then on the lines one step deeper."""
    own = entry.node.clauses if isinstance(entry.node, nodes.StepNode | nodes.ClauseLine) else ()
    found = [(entry.line, clause) for clause in own]
    for child in entry.children:
        if isinstance(child.node, nodes.ClauseLine):
            found += clauses_of(child)
    return found


def _twice(what: str, line: Line, when: str = "") -> Diagnostic:
    """The report of a clause that is said twice (`when`: at one moment); two times on one line are two steps."""
    from manchet.syntax.mistakes.in_two import in_two  # a sound file has no need of it

    message, two = f"this step has {what} twice{when}", in_two(line.body) if what == "a time" else None
    if two is None:
        return report("clause-twice", line.place(), message, "keep one of the two")
    title = f"write two lines: `{two[0]}`, and under it `{two[1]}`"
    fix = Fix(title, (Edit(line.place(), f"{two[0]}\n{' ' * line.indent}{two[1]}"),))
    return report("clause-twice", line.place(), message, f"keep one of the two, or {title}", fixes=(fix,))


def step_of(verb: str, entry: Entry, names: Names, measures_of: str, made_good: bool = False) -> Outcome[Step]:
    """The step an entry describes; `verb` is canonical. A clause said twice is reported once, the first holds.

    `measures_of` is the country of its cups and spoons, as the kitchen says. `made_good`: the stage is topped up later, so a loss may be a range.
    """
    reports: list[Diagnostic] = []
    said: dict[str, Any] = {}
    manner: list[str] = []
    heats: list[Heat] = []
    reaches: list[Reach] = []
    folds: list[Folds] = []
    events: list[BakeEvent] = []
    notes: list[str] = []
    pictures: list[Picture] = []
    taken_up: tuple[nodes.TakesUp, Line] | None = None

    def once(key: str, value: object, line: Line, what: str) -> None:
        if key in said:
            reports.append(_twice(what, line))
        else:
            said[key] = value

    for line, clause in clauses_of(entry):
        match clause:
            case nodes.Time(amount, per):
                once("time", measures.seconds(amount), line, "a time")
                said.setdefault("per", per)
            case nodes.Turns(amount):
                once("turns", measures.plain(amount), line, "turns")
            case nodes.At(amount, where):
                heats.append(Heat(measures.celsius(amount), where))
            case nodes.Ramp(way, amount):
                once("ramp", (way, measures.celsius(amount)), line, "a falling or rising temperature")
            case nodes.To(what, amount):
                if what == "temperature" and verb in BAKES:
                    what = "core"  # the heat around it stands after `at`
                turn = measures.millimetres if what in ("length", "below rim") else measures.celsius
                reaches.append(Reach(what, turn(amount)))
            case nodes.MayWait(time, at):
                once("may_wait", Wait(measures.seconds(time), measures.celsius(at) if at else None), line, "`may wait`")
            case nodes.Prose("note", text):
                notes.append(text.text)
            case nodes.Prose("picture", text):
                pictures.append(Picture(text.text, line.place()))
            case nodes.Prose(what, text):
                field = {"if late": "if_late", "do": "how"}.get(what, what)
                once(field, text.text, line, f"`{what}`")
            case nodes.Where(preposition, place):
                once("where", (preposition, place.text), line, "a place")
            case nodes.IntoSlices(amount):
                once("slices", int(amount.low or 1), line, "a number of slices")
            case nodes.ServeWithin(time):
                once("serve_within", measures.seconds(time).likely, line, "a time")
            case nodes.As(name):
                once("shape", name.text, line, "a shape")
            case nodes.Manner(("covered" | "uncovered") as word) if verb in IN_OVEN:
                once("lid", word == "covered", line, "`lid`")
            case nodes.Manner(word, number):
                manner.append(word)
                if number is not None:
                    said["speed"] = number
            case nodes.ByFire(by_fire):
                once("by_fire", by_fire, line, "a place")
            case nodes.Humidity(amount):
                air, found = _humidity(amount, line)
                reports += found
                once("humidity", air, line, "a humidity")
            case nodes.Steam() | nodes.Vent():
                event, found = _event(clause, line, measures_of)
                reports += (*found, *_clashes(event, events, line))
                events.append(event)
            case nodes.Lid(on):
                once("lid", on, line, "`lid`")
            case nodes.TurnAfter(time):
                once("turn_after", measures.seconds(time).likely, line, "`turn after`")
            case nodes.Within(work, number, every, after):
                between = every or after
                apart = measures.seconds(between).likely if between else Fraction(0)
                folds.append(Folds(work, number, apart, every is not None))
            case nodes.AtATime(number):
                once("at_a_time", number, line, "`at a time`")
            case nodes.Loses(amount):
                loss, found = _loss(amount, line, made_good)
                reports += found
                once("loses", loss, line, "`loses`")
            case nodes.TakesUp():
                taken_up = (clause, line)
            case nodes.AppliedClause():
                applied, found = _applied(clause, line, names, measures_of)
                reports += found
                if applied is not None:
                    once("applied", applied, line, "a weight")
    if taken_up is not None:
        from manchet.formula.fat_taken_up import fat_taken_up  # few breads are fried

        fat, found = fat_taken_up(verb, said.get("where"), *taken_up, names, measures_of)
        reports += found
        said.setdefault("applied", fat)
    said.setdefault("shape", next((m for m in manner if verb == "shape" and m in SHAPES), ""))
    step = Step(
        verb=verb,
        who=who_works(verb, manner),
        place=entry.line.place(),
        manner=tuple(manner),
        heats=tuple(heats),
        reaches=tuple(reaches),
        folds=tuple(folds),
        events=tuple(sorted(events, key=by_the_clock)),
        notes=tuple(notes),
        pictures=tuple(pictures),
        optional="optional" in manner,
        bath=_bath(verb, said.get("where"), names),
        **said,
    )
    if not any(isinstance(child.node, nodes.Unread) for child in entry.children):
        reports += step_faults(step)
    return Outcome(step, tuple(reports))


def _bath(verb: str, where: tuple[str, str] | None, names: Names) -> str:
    """`boil in malt bath`: the key of that preparation; "" where the place is a pot."""
    boils = verb in VERB and VERB[verb].boils
    return fold(where[1]) if boils and where and fold(where[1]) in names.preparations else ""


def _event(clause: nodes.Steam | nodes.Vent, line: Line, measures_of: str) -> Outcome[BakeEvent]:
    after = measures.seconds(clause.after).likely if clause.after else Fraction(0)
    if isinstance(clause, nodes.Vent):
        return Outcome(BakeEvent(OPEN if clause.open else SHUT, after))
    amount = clause.amount
    if amount is None:
        return Outcome(BakeEvent(STEAM, after))
    if UNITS[amount.unit].dimension == TIME:
        return Outcome(BakeEvent(STEAM, after, seconds=measures.seconds(amount).low))
    water, reports = millilitres_of(amount, measures_of, line)
    return Outcome(BakeEvent(STEAM, after, millilitres=water), reports)


def _clashes(event: BakeEvent, others: Iterable[BakeEvent], line: Line) -> Iterator[Diagnostic]:
    """Two of steam, or two of the vent, at one moment."""
    is_steam = event.what == STEAM
    if any(other.after == event.after and (other.what == STEAM) == is_steam for other in others):
        from manchet.formula.durations import duration  # a sound file has no need of it

        when = f", both after {duration(event.after)}" if event.after else ""
        yield _twice("`steam`" if is_steam else "`vent`", line, when)


def _humidity(amount: nodes.Amount, line: Line) -> Outcome[Range | None]:
    share = measures.share(amount)
    if all(end is None or 0 < end <= 1 for end in share):
        return Outcome(share)
    place = line.place(amount.start, amount.end)
    message = f"{place.text[amount.start + line.indent : amount.end + line.indent]} humidity: air holds 100% at most"
    return Outcome(None, (report("humidity-odd", place, message, "write it like `75% humidity`"),))


def _loss(amount: nodes.Amount, line: Line, made_good: bool) -> Outcome[Fraction]:
    loss = measures.plain(amount).likely
    reports = tuple(_wrong_loss(amount, loss, line.place(amount.start, amount.end), made_good))
    return Outcome(loss / 100 if 0 <= loss < 100 else Fraction(0), reports)


def _wrong_loss(amount: nodes.Amount, loss: Fraction, place: Place, made_good: bool) -> Iterator[Diagnostic]:
    if amount.low != amount.high and not made_good:
        help = "choose one figure, or say `top up with water` below and give one figure here"
        yield report("loses-range", place, "a loss cannot be a range: the balance would not close", help)
    if not 0 <= loss < 100:
        yield report("loss-of-everything", place, f"losing {loss}% leaves nothing", "give less than 100%")


def _applied(clause: nodes.AppliedClause, line: Line, names: Names, measures_of: str) -> Outcome[Applied | None]:
    meaning, reports = names.look_up(clause.name, line)
    if meaning is None or clause.amount is None:
        return Outcome(None, reports)  # where the weight is missing, the parser has said so
    if meaning.part is not None or clause.amount.unit == "slices":
        from manchet.formula.laid import weight_laid  # few formulas are dishes

        grams, count, reports = weight_laid(clause.amount, meaning, names, measures_of, line)
    else:
        count = None
        grams, reports = weight_of(clause.amount, meaning.ingredient, measures_of, line)
    if grams is None:
        return Outcome(None, reports)
    each = clause.per == "each"
    applied = Applied(meaning.name, meaning.ingredient, meaning.stage, grams, each, clause.onto, count)
    return Outcome(applied, reports)
