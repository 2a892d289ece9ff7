"""What a falling oven means for one formula, as figures: when it may go in, in how many loads, at which turn. Estimates."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.figure import Figure, Given
from manchet.figures.oven.bakes import Bake, bakes_of, loads_of
from manchet.figures.oven.curve import fastest, hours_to, slowest, window
from manchet.figures.oven.loading_order import loading_order
from manchet.figures.oven.loading_plan import LoadingPlan
from manchet.kitchen.model import Kitchen, Oven
from manchet.quantities.printing import decimal


def oven_figures(work: Work, beside: Iterable[Work]) -> dict[str, Figure]:
    """For each thing that the work bakes: its loads, and in a falling oven its window, the floor after a load, its turn
    among all that is baked beside it, as the oven card counts it (none where it is alone)."""
    bakes, kitchen = bakes_of(work), work.kitchen
    found: dict[str, Figure] = {}
    for bake in bakes:
        found |= _loads(bake, kitchen)
        if bake.oven.falls and not bake.rises and bake.of_a_day:
            found |= _window(bake, kitchen) | _after(bake, kitchen)
    bakes = tuple(bake for bake in bakes if bake.of_a_day)
    for oven in dict.fromkeys(bake.oven for bake in bakes if bake.oven.falls):
        others = [one for one in beside if one.formula.name != work.formula.name]
        found |= _turns([bake for bake in bakes if bake.oven == oven], others, oven)
    return found


def own_fire(work: Work, oven: Oven) -> Fraction:
    """Celsius that an oven which falls is fired to for this formula alone: what goes in first may not go in hotter."""
    return loading_order([bake for bake in bakes_of(work) if bake.oven == oven and bake.of_a_day], oven).fired_to


def _whose(bake: Bake) -> str:
    said = ", ".join(filter(None, (bake.stage, bake.noun)))
    return f" of {said}" if said else ""


SAYS = {
    "step": "`at a time`, as the step says",
    "kitchen": "as the kitchen says what its oven holds",
    "floor": "as many as there is room for on the measured floor",
}


def _loads(bake: Bake, kitchen: Kitchen) -> dict[str, Figure]:
    if bake.holds is None or not bake.pieces:
        return {}
    name = f"loads in {bake.oven.name}{_whose(bake)}"
    given = (
        Given("pieces", bake.pieces, "", "the file"),
        Given("at once", Fraction(bake.holds.number), "", kitchen.where if bake.holds.by != "step" else "the file"),
    )
    rule = f"pieces / pieces at once ({SAYS[bake.holds.by]}), rounded up"
    return {name: Figure(name, Fraction(len(loads_of(bake.pieces, bake.holds))), "", rule, given, "arithmetic")}


def _window(bake: Bake, kitchen: Kitchen) -> dict[str, Figure]:
    """In hours from the hottest heat of the oven's curve on, no load before it: as the oven was measured. (Where it is fired to
    less, the sheet counts from that.)"""
    oven = bake.oven
    when = window(oven.falls, bake.heat)
    if when is None:
        return {}
    least, most = bake.wants
    step = bake.phases[0]
    start = decimal(oven.falls[0].start, 0)
    given = (
        Given("at the hottest", most, "C", step.place.where),
        Given("at the coldest", least, "C", step.place.where),
        *(
            Given(f"{oven.name} falls an hour, from {decimal(f.start, 0)} C", f.an_hour, "C", kitchen.where)
            for f in oven.falls
        ),
    )
    rule = f"an estimate: hours after {oven.name} had {start} C until it has fallen to the {{}} heat the phase may begin at"
    source = f"{kitchen.name or 'the kitchen'}'s own measure of how its oven falls"
    found = {}
    for word, end, hours, heat in (("from", "hottest", when.opens, most), ("until", "coldest", when.closes, least)):
        name = f"goes into {oven.name}{_whose(bake)}, {word}"
        found[name] = Figure(name, hours, "h", rule.format(end) + _between(oven, heat), given, source)
    return found


def _between(oven: Oven, celsius: Fraction) -> str:
    """`; 3.8 to 5 h by the ends of its ranges`, "" where the kitchen gives single figures."""
    soonest, latest = hours_to(fastest(oven.falls), celsius), hours_to(slowest(oven.falls), celsius)
    if soonest is None or latest is None or soonest == latest:
        return ""
    return f"; {decimal(soonest, 1)} to {decimal(latest, 1)} h by the ends of its ranges"


def _after(bake: Bake, kitchen: Kitchen) -> dict[str, Figure]:
    """The floor when the first load is out, where it is measured what a load takes and the load is such a one."""
    takes, oven = bake.oven.load_takes, bake.oven
    into = min(bake.wants[1], oven.falls[0].start)
    if takes is None or into < bake.wants[0]:
        return {}
    plan = loading_order((bake,), oven)
    first = plan.loads[0]
    name = f"{oven.name} after the first load{_whose(bake)}"
    given = (
        Given("goes in at", first.into.celsius, "C", "the hottest heat it may go in at"),
        Given("a load takes", takes.drop, "C", kitchen.where),
        *((Given("a load of", takes.grams, "g", kitchen.where),) if takes.grams is not None else ()),
    )
    rule = "an estimate: the heat it goes in at less what a load takes, by its dough; or what is lost in that time, if more"
    source = f"{kitchen.name or 'the kitchen'}'s own measure of what a load takes"
    return {name: Figure(name, first.out.celsius, "C", rule, given, source)}


def _turns(own: list[Bake], others: Iterable[Work], oven: Oven) -> dict[str, Figure]:
    bakes = [*own, *(bake for other in others for bake in bakes_of(other) if bake.oven == oven and bake.of_a_day)]
    plan = loading_order(bakes, oven)
    on_card = tuple(dict.fromkeys(load.bake for load in plan.loads))
    turns = tuple(dict.fromkeys((*on_card, *(load.bake for load in plan.late), *plan.too_hot, *plan.rising)))
    given = tuple(
        Given(", ".join(filter(None, (bake.formula, bake.stage, bake.noun))), bake.heat.likely, "C", "the file")
        for bake in turns
    )
    if len(turns) < 2:
        return {}
    found = {}
    for bake in own:
        name = f"turn in {oven.name}{_whose(bake)}"
        rule = (
            "as on the oven card: the hottest goes in first, unless a change loses fewer loads to the cold; of "
            f"{len(turns)} things of the whole bakery, as their files say" + _off_the_card(bake, plan, on_card)
        )
        found[name] = Figure(name, Fraction(turns.index(bake) + 1), "", rule, given, "common practice")
    return found


def _off_the_card(bake: Bake, plan: LoadingPlan, on_card: tuple[Bake, ...]) -> str:
    """Why a bake has no turn on the card: then it stands behind those that have."""
    if bake in on_card:
        return ""
    if bake.phases[0].by_fire:
        return "; it is baked while the fire burns, and stands last"
    if bake in plan.rising:
        return "; it wants a heat that rises, and stands last: it needs the fire, or another oven"
    if bake in plan.too_hot:
        return "; it wants more heat than the measured fall begins with, and stands last"
    return "; by then the floor is too cold for it, and it stands behind what fits"
