"""The market Saturday: eight breads of the demo bakery out of one falling oven, two people, four shifts."""

from __future__ import annotations

import json
from datetime import date, datetime
from fractions import Fraction
from functools import cache
from pathlib import Path

from works import work_in

from manchet.batch.order import Order
from manchet.batch.work import work_of
from manchet.day.goals import GOALS, MOST_ROOM, cost
from manchet.day.jobs.day_of import Bread, PlannedDay, day_of
from manchet.day.model import Day, Goal, Planned, Timetable
from manchet.day.pages.day_plan import DayPlan
from manchet.day.said import AlreadyMade, CustomerOrder, Departure, Finish, Fires, Plan, SaidEnd, SaidShift, Want
from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.suggest import fold
from manchet.formula.ranges import Range
from manchet.kitchen.model import Kitchen, Mouth
from manchet.source.text import SourceText
from manchet.workspace.bakery import Bakery, read
from manchet.workspace.bound_formula import known_preparations
from manchet.workspace.made_ahead import made_ahead

RECIPES = Path(__file__).parents[2] / "recipes"
HERE = Place("market.bake", 1, 1, 1, 1)
BREADS = (
    ("Slate bread", {"rounds": 24}, {"Weir House": 12, "the stall": 12}),
    ("Causeway", {"loaves": 10, "rolls": 0}, {"Quay cafe": 4, "the stall": 6}),
    ("Ebb rye", {"loaves": 14}, {"Quay cafe": 4, "Weir House": 2, "the stall": 8}),
    ("Mudlark", {"loaves": 12}, {"the stall": 12}),
    ("Tern loaf", {"loaves": 16}, {"Quay cafe": 6, "Weir House": 4, "the stall": 6}),
    ("Gangway loaf", {"loaves": 12}, {"the stall": 12}),
    ("Lamplight tin", {"loaves": 20}, {"Quay cafe": 8, "the stall": 12}),
    ("Regatta plait", {"plaits": 4, "buns": 30}, {}),
)
"""Name, pieces, and who gets how many of the first sort."""
CUSTOMERS = ("Quay cafe", "Weir House", "the stall")
STARTS = Path(__file__).with_name("market-starts.json")
"""When each job begins, by its key, and which shift does it: found by a solver, and believed by the checker."""


def at(day: int, hour: int, minute: int = 0) -> datetime:
    return datetime(2026, 11, day, hour, minute)


@cache
def demo() -> Bakery:
    paths = sorted(RECIPES.rglob("*.bake"))
    return read([SourceText(str(path.relative_to(RECIPES)), path.read_text(encoding="utf-8")) for path in paths])


def kitchen() -> Kitchen:
    """The demo's, and what a kitchen says of a day."""
    plain = work_in(demo(), next(f for f in demo().formulas if f.name == "Tern loaf")).kitchen
    numbers = {"round basket": 40, "linen": 4, "black tray": 20}
    holds = {"linen": ((6, "loaves"),), "black tray": ((12, "rolls"), (15, "buns"), (3, "plaits"))}
    rooms = {"prover": ((28, "loaves"), (110, "rolls"))}
    packs = {"loaves": 7200, "rounds": 1200, "buns": 2400, "plaits": 2400}
    return plain._replace(
        minutes=(*plain.minutes, *((verb, Fraction(s)) for verb, s in (("weigh", 25), ("load", 10), ("take out", 5)))),
        packs=tuple((noun, Fraction(seconds)) for noun, seconds in packs.items()),
        ovens=tuple(
            oven._replace(
                holds=((24, "loaves"), (60, "rolls"), (20, "plaits")),
                loads_within=Fraction(360),
                mouth=Mouth(Fraction(3600), Fraction(300)),
            )
            for oven in plain.ovens
        ),
        colds=tuple(
            cold._replace(holds=rooms.get(cold.word, ((40, "loaves"), (130, "rolls")))) for cold in plain.colds
        ),
        vessels=tuple(
            vessel._replace(number=numbers.get(vessel.name, vessel.number), holds=holds.get(vessel.name, vessel.holds))
            for vessel in plain.vessels
        ),
    )


def _want(name: str, pieces: dict[str, int], customers: dict[str, int]) -> Want:
    sweet = name == "Regatta plait"
    end = SaidEnd(Finish.READY, at(28, 7)) if sweet else SaidEnd(Finish.PACKED, at(28, 6), departure="van")
    noun = next(iter(pieces))
    return Want(
        name=name,
        pieces=tuple((Fraction(number), noun) for noun, number in pieces.items()),
        grams=None,
        end=end,
        orders=tuple(
            CustomerOrder(who, ((Fraction(number), noun),), None, end, False, HERE) for who, number in customers.items()
        ),
        spare=(),
        spare_grams=None,
        age=Range(Fraction(0), Fraction(24 * 3600)) if name == "Slate bread" else None,
        place=HERE,
    )


@cache
def market_day() -> tuple[Plan, PlannedDay]:
    mine = kitchen()
    breads = []
    for name, pieces, customers in BREADS:
        formula = next(formula for formula in demo().formulas if formula.name == name)
        want = _want(name, pieces, customers)
        work = work_of(formula, Order(pieces=want.pieces), mine, demo().larder).value
        assert work is not None
        breads.append(Bread(want, work))
    plan = Plan(
        "Saturday market",
        HERE,
        mine,
        date(2026, 11, 28),
        wants=tuple(bread.want for bread in breads),
        departures=(Departure("van", at(28, 6), CUSTOMERS, HERE),),
        already=tuple(
            AlreadyMade(name, fold(name), None, None, HERE)
            for name in ("toasted seeds", "egg wash", "plum filling", "crumble")
        ),
        shifts=(
            SaidShift("Tom", 1, at(26, 17), at(26, 23, 30), None, HERE),
            SaidShift("Ines", 1, at(27, 6, 30), at(27, 16, 30), None, HERE),
            SaidShift("Tom", 1, at(27, 16), at(28, 2, 30), None, HERE),
            SaidShift("Ines", 1, at(28, 3, 30), at(28, 8), None, HERE),
        ),
        fires=(Fires("beacon", 1, None, HERE),),
    )
    ahead = made_ahead(
        [bread.work for bread in breads],
        known_preparations(demo().formulas),
        lambda formula, grams: work_of(formula, Order(dough=grams), mine, demo().larder).value,
        at_home=False,
    )
    return plan, day_of(plan, breads, [one.work for one in ahead])


def planned(day: Day, timetable: Timetable) -> Planned:
    """With what it costs; the first two goals are said to be proven."""
    values = dict(zip(GOALS, cost(day, timetable), strict=True)) | {"room": MOST_ROOM - cost(day, timetable)[2]}
    goals = (Goal(name, values[name], values[name], at < 2) for at, name in enumerate(GOALS))
    return Planned(timetable, tuple(goals), "cp-sat")


@cache
def market() -> DayPlan:
    plan, of = market_day()
    by_key = json.loads(STARTS.read_text(encoding="utf-8"))
    found = [by_key[job.key] for job in of.day.jobs]
    timetable = Timetable(tuple(s for s, _ in found), tuple(w for _, w in found), (0,) * len(of.day.loads))
    return DayPlan(plan, of, planned(of.day, timetable))


def with_starts(plan: DayPlan, starts: dict[str, int]) -> DayPlan:
    """The same plan with some jobs at other minutes."""
    keys = [job.key for job in plan.day.jobs]
    assert starts.keys() <= set(keys)
    moved = tuple(starts.get(key, at) for key, at in zip(keys, plan.timetable.starts, strict=True))
    timetable = plan.timetable._replace(starts=moved)
    return plan._replace(planned=planned(plan.day, timetable))


def with_day(plan: DayPlan, day: Day) -> DayPlan:
    """The same plan of another day."""
    return plan._replace(of=plan.of._replace(day=day), planned=planned(day, plan.timetable))


def number_of(plan: DayPlan, key: str) -> int:
    return next(at for at, job in enumerate(plan.day.jobs) if job.key == key)
