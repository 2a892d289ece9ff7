"""Loads in a falling oven: none before the oven has fallen to it, none that loses more than the plain order by heat."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from hypothesis import given, strategies as st
from works import first_work

from manchet.diagnostics.diagnostic import Place
from manchet.figures.oven.bakes import Bake, Holds, bakes_of
from manchet.figures.oven.curve import rising_phase, wanted_heats
from manchet.figures.oven.loading_order import by_heat, first_if_colder, loading_order
from manchet.figures.oven.loading_plan import LoadingPlan, full_load, loading_plan
from manchet.formula.model import Heat, Range, Step, Who
from manchet.kitchen.model import Fall, LoadTakes, Oven

NOWHERE = Place("x.bake", 1, 1, 1, 1, "")
FALLS = (Fall(Fraction(18), Fraction(330)), Fall(Fraction(12), Fraction(250)), Fall(Fraction(9), Fraction(200)))


def bake(
    name: str, low: int, high: int, minutes: int = 40, pieces: int = 20, holds: int = 20, grams: int = 900
) -> Bake:
    heat = Range(Fraction(low), Fraction(high))
    length = Range(Fraction(minutes * 60), Fraction(minutes * 60))
    step = Step("bake", Who.WAITING, NOWHERE, time=length, heats=(Heat(heat),))
    weight = Fraction(pieces * grams)
    return Bake(
        name, "", "", (step,), Oven("mother"), heat, "loaves", Fraction(pieces), weight, Holds(holds, "kitchen")
    )


def oven(takes: int | None = None, recovers: int | None = None) -> Oven:
    drop = None if takes is None else LoadTakes(Fraction(takes))
    return Oven("mother", falls=FALLS, load_takes=drop, recovers=None if recovers is None else Fraction(recovers * 60))


def names(plan: LoadingPlan) -> list[str]:
    return [load.bake.formula for load in plan.loads]


def test_each_waits_for_its_heat() -> None:
    plan = loading_order((bake("Soft", 190, 200), bake("Flat", 300, 320), bake("Lean", 230, 240)), oven())
    assert names(plan) == ["Flat", "Lean", "Soft"]
    assert [load.into.celsius for load in plan.loads] == [320, 240, 200]
    assert (plan.fired_to, plan.loads[0].into.hours) == (320, 0)


def test_it_is_fired_no_further_than_what_goes_in_first_may_have() -> None:
    """Alone, a soft bread waits for nothing; and what follows it waits as it would have after a hotter fire."""
    soft, lean = bake("Soft", 190, 200), bake("Lean", 230, 240)
    alone = loading_order((soft,), oven())
    assert (alone.fired_to, alone.loads[0].into) == (200, (0, 200))
    assert alone.curve[0] == (0, 200)
    after_lean = loading_order((lean, soft), oven()).loads[1].into
    after_flat = loading_order((bake("Flat", 300, 320), lean, soft), oven()).loads
    assert after_lean.hours == after_flat[2].into.hours - after_flat[1].into.hours
    assert loading_order((bake("Slate", 320, 360),), oven()).fired_to == 330, "no hotter than the curve begins"
    assert loading_order((bake("Pizza", 400, 420),), oven()).fired_to == 330


def test_what_rises_is_baked_in_no_falling_heat() -> None:
    cold = bake("Cold start", 20, 40)
    phase = cold.phases[0]
    rising = cold._replace(phases=(phase._replace(ramp=("rising", Range(Fraction(210), Fraction(210)))),))
    hotter = bake("Coloured", 200, 210)
    hotter = hotter._replace(phases=(*hotter.phases, bake("", 230, 240).phases[0]))
    lower = bake("Lower", 230, 240)
    lower = lower._replace(phases=(*lower.phases, bake("", 200, 210).phases[0]))
    as_near = bake("Near", 200, 210)
    as_near = as_near._replace(phases=(*as_near.phases, bake("", 205, 215).phases[0]))
    plan = loading_order((rising, hotter, lower, as_near), oven())
    assert [one.formula for one in plan.rising] == ["Coloured", "Cold start"]
    assert (names(plan), plan.late, plan.too_hot) == (["Lower", "Near"], (), ())


def test_heats_of_two_places_are_not_compared() -> None:
    """A floor at 200 C under air at 230 C is no oven that has to rise."""
    floor_, air = (Heat(Range(Fraction(n), Fraction(n)), where) for n, where in ((200, "floor"), (230, "air")))
    first, second = (Step("bake", Who.WAITING, NOWHERE, heats=(heat,)) for heat in (floor_, air))
    assert rising_phase((first, second)) is None
    assert rising_phase((first, first._replace(heats=(floor_._replace(celsius=air.celsius),)))) is not None


def test_a_load_takes_its_part_by_its_dough() -> None:
    """Two loads of 20 and 10 at 15 C a full one; the second goes in four minutes after the first is out."""
    plan = loading_order((bake("Lean", 200, 240, pieces=30),), oven(15, recovers=4))
    first, second = plan.loads
    assert (first.pieces, second.pieces) == (20, 10)
    assert (first.into.celsius, first.out.celsius) == (240, 225)
    assert second.into.hours - first.out.hours == Fraction(4, 60)
    assert second.into.celsius == 225 - 12 * Fraction(4, 60)
    # 12 C an hour is 8 C in 40 minutes: more than half a load's 15.
    assert second.into.celsius - second.out.celsius == 8


def test_what_says_its_own_loads_goes_in_and_out_without_a_stop() -> None:
    flat = bake("Flat", 200, 240, minutes=2, pieces=50)._replace(holds=Holds(20, "step"))
    (load,) = loading_order((flat,), oven(15, recovers=4)).loads
    assert (load.of, load.pieces, load.out.hours - load.into.hours) == (1, 50, Fraction(6, 60))


def test_by_a_load_that_was_weighed() -> None:
    weighed = oven()._replace(load_takes=LoadTakes(Fraction(30), Fraction(9_000)))
    plan = loading_order((bake("Lean", 200, 240),), weighed)
    assert plan.loads[0].out.celsius == 240 - 60


def test_what_comes_too_late_is_not_baked_cold() -> None:
    plan = loading_order((bake("Lean", 225, 240, pieces=60),), oven(15))
    assert [load.number for load in plan.loads] == [1, 2]
    assert [(one.number, one.of, one.into.celsius) for one in plan.late] == [(3, 3, 210)]


def test_hotter_than_the_curve_begins() -> None:
    plan = loading_order((bake("Pizza", 400, 420), bake("Lean", 230, 240)), oven())
    assert [one.formula for one in plan.too_hot] == ["Pizza"]
    assert names(plan) == ["Lean"]


def test_what_can_do_with_less_lets_another_go_first() -> None:
    wide, narrow = bake("Wide", 200, 280), bake("Narrow", 234, 240, pieces=2)
    by_their_heat = loading_plan(by_heat((wide, narrow)), oven(60), Fraction(18_000))
    assert (names(by_their_heat), by_their_heat.lost) == (["Wide"], 1)
    plan = loading_order((wide, narrow), oven(60))
    assert (names(plan), plan.lost) == (["Narrow", "Wide"], 0)


def test_the_floor_colder_than_planned() -> None:
    """Under 230 C the lean loaf is late whatever is done; the soft one is lost too unless it goes in first."""
    lean, soft = bake("Lean", 230, 240), bake("Soft", 210, 225)
    plan = loading_order((lean, soft), oven(15))
    first = first_if_colder(plan, 0)
    assert first is not None and (first.under, first.bake.formula) == (225, "Soft")
    assert first_if_colder(plan, 1) is None


def test_a_load_takes_the_floor_down_sooner() -> None:
    """From 240 C to 200 at 12 C an hour is 3 h 20; a load of 40 minutes takes 15 C, of which it would have lost 8 anyhow."""
    lean, soft = bake("Lean", 230, 240), bake("Soft", 190, 200)
    plain, loaded = (loading_order((lean, soft), oven(takes)) for takes in (None, 15))
    assert plain.loads[1].into == (Fraction(40, 12), 200)
    assert loaded.loads[1].into == (Fraction(40, 12) - Fraction(7, 12), 200)


BAKES = st.lists(
    st.builds(
        lambda low, more, minutes, loads: bake(f"{low}-{more}-{minutes}-{loads}", low, low + more, minutes, loads * 20),
        st.integers(80, 320), st.integers(0, 60), st.integers(10, 90), st.integers(1, 3),
    ),
    min_size=1, max_size=5, unique_by=lambda one: one.formula,
)  # fmt: skip
OVENS = st.builds(oven, st.sampled_from([None, 5, 20, 60]), st.sampled_from([None, 5, 15]))


@given(BAKES, OVENS)
def test_nothing_goes_in_before_the_oven_has_fallen_to_it(bakes: list[Bake], mother: Oven) -> None:
    plan = loading_order(bakes, mother)
    for load in plan.loads:
        least, most = wanted_heats(load.bake.heat)
        assert least <= load.into.celsius <= most
        assert load.out.hours - load.into.hours == load.bake.seconds.likely / 3600
    for one, other in pairwise(plan.loads):
        assert other.into.hours >= one.out.hours, "one load at a time"
    for here, there in pairwise(plan.curve):
        assert there.celsius <= here.celsius and there.hours >= here.hours


@given(BAKES, OVENS)
def test_the_order_is_never_worse_than_by_heat(bakes: list[Bake], mother: Oven) -> None:
    plain = loading_plan(by_heat(bakes), mother, full_load(bakes))
    plan = loading_order(bakes, mother)
    assert plan.lost <= plain.lost
    everything = sum(len(one.loads) for one in bakes)
    assert len(plan.loads) + len(plan.late) + sum(len(one.loads) for one in plan.too_hot) == everything


@given(BAKES, OVENS)
def test_a_load_that_takes_more_never_lets_more_be_baked(bakes: list[Bake], mother: Oven) -> None:
    colder = mother._replace(load_takes=LoadTakes(Fraction(90)))
    order = by_heat(bakes)
    full = full_load(bakes)
    first, second = loading_plan(order[:1], mother, full), loading_plan(order[:1], colder, full)
    assert len(second.loads) <= len(first.loads)


TEXT = """\
formula Loaf
  kind hearth loaf
  makes {number} at 900 g dough
  overall
    white flour 100%
    water 70%
    salt 2%
    fresh yeast 1.5%
    hazelnuts 10%
  soaker nuts
    all of the hazelnuts
    roast 10 min at 150-160 C
  dough
    nuts
    everything else
    mix slow 5 min
    ferment 2 h at 25 C
    divide
    shape round
    prove 1 h at 27 C
    bake 15 min at 260 C floor 240 C air{more}
    turn out
    bake 20 min at 220 C
    bake 50 min at 110 C
    cool 2 h
kitchen House
  oven mother
    holds 24 loaves
    floor 120 x 90 cm
    falls 12 C an hour from 280 C
"""


def bakes(number: str = "40 loaves", more: str = "") -> list[Bake]:
    work = first_work(TEXT.format(number=number, more=more))
    return list(bakes_of(work))


def test_what_goes_into_the_oven() -> None:
    """The nuts by themselves; both phases at once, at the floor's heat; the drying when the oven has fallen so far."""
    nuts, loaf, dried = bakes()
    assert (nuts.stage, nuts.heat.likely, (*nuts.loads,)) == ("nuts", 155, (0,))
    assert (loaf.heat.likely, loaf.seconds, (*loaf.loads,)) == (260, Range(Fraction(2100), Fraction(2100)), (24, 16))
    assert (dried.heat.likely, len(dried.phases)) == (110, 1)


def test_who_says_how_many_go_in_at_once() -> None:
    assert [one.holds for one in bakes()[1:]] == [Holds(24, "kitchen")] * 2
    assert bakes(more=", 6 at a time")[1].holds == Holds(6, "step")
    assert bakes("40 rounds")[1].holds == Holds(20, "floor")
