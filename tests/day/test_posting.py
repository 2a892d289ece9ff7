"""The plan without a solver: each rule decides something in a small day, tiny days against every plan there is, and random ones."""

from __future__ import annotations

from fractions import Fraction

from benchmarks.grown_days import grown_day
from day.brute_force import best_plan, tiny_day
from day.days import FIRE_NIGHT, MORNING, Draft, Made, curve, heats
from day.market import market_day
from day.random_days import hurried_day, random_day
from day.without import without
from every import every

from manchet.day.checking import check_planned
from manchet.day.goals import late, may_wait
from manchet.day.model import Day, DayMixer, DayOven, DayPlace, End, Fire, Planned, Shift, Stay
from manchet.day.posting import NotPlanned, plan_by_hand


def planned(day: Day) -> Planned:
    found = plan_by_hand(day)
    assert isinstance(found, Planned)
    assert check_planned(day, found) == ()
    return found


def starts(draft: Draft) -> tuple[int, ...]:
    return planned(draft.day()).timetable.starts


def reached(day: Day) -> tuple[int, int]:
    """Minutes late, and minutes of `may wait`."""
    timetable = planned(day).timetable
    return late(day, timetable), may_wait(day, timetable)


def bakery(hands: int = 1, finishes: int = 600) -> Draft:
    """One deck that holds its heat, and one shift."""
    draft = Draft(0, finishes)
    draft.shifts.append(Shift("Ines", "Ines", hands, 0, finishes))
    draft.ovens.append(DayOven("deck", within=6, recovers=10))
    return draft


def due(draft: Draft, bread: str, take: int, at: int, oldest: int | None = None) -> None:
    draft.ends.append(End(bread, 8, "loaves", take, 0, at, oldest=oldest))


def test_everything_begins_as_late_as_it_can() -> None:
    draft = bakery()
    shape = draft.job("rye/shape", 10)
    put, take = draft.load("rye", "deck", 40)
    draft.wait(shape, put, 60, 90)
    due(draft, "rye", take, 500)
    assert starts(draft) == (500 - 3 - 40 - 60, 500 - 3 - 40, 500 - 3)


def test_one_load_comes_before_the_other_and_the_deck_recovers() -> None:
    draft = bakery()
    for bread in ("rye", "tin"):
        _, take = draft.load(bread, "deck", 40)
        due(draft, bread, take, 500)
    first, second = sorted((starts(draft)[0], starts(draft)[2]))
    assert second - first == 40 + 3 + 10


def test_loads_that_suit_one_another_share_the_deck() -> None:
    draft = bakery()
    for bread in ("rye", "tin"):
        _, take = draft.load(bread, "deck", 40, share=Fraction(1, 2))
        due(draft, bread, take, 500)
    made = starts(draft)
    assert abs(made[0] - made[2]) == 3  # no longer than one pair of hands takes for the other


def test_loads_of_other_heats_wait_until_the_deck_is_there() -> None:
    draft = bakery()
    draft.ovens[0] = draft.ovens[0]._replace(climbs=Fraction(1), sinks=Fraction(2))
    for bread, heat in (("rye", 260), ("rolls", 200)):
        _, take = draft.load(bread, "deck", 40, None, Fraction(1, 2), heats(heat, heat), heats(heat, heat))
        due(draft, bread, take, 500)
    rye, _, rolls, _ = starts(draft)
    assert rolls - rye in {43 + 30, -43 - 60}


def test_two_decks_bake_at_once() -> None:
    draft = bakery(hands=2)
    draft.ovens[0] = draft.ovens[0]._replace(decks=2)
    for bread in ("rye", "tin"):
        _, take = draft.load(bread, "deck", 40)
        due(draft, bread, take, 500)
    found = planned(draft.day()).timetable
    assert found.starts[0] == found.starts[2]
    assert sorted(found.decks) == [0, 1]


def test_a_job_for_two_has_both_pairs_of_hands() -> None:
    draft = bakery(hands=2)
    lift = draft.job("rye/lift", 10, latest=300, hands=2)
    shape = draft.job("tin/shape", 20, latest=300)
    made = starts(draft)
    assert made[lift] + 10 <= made[shape] or made[shape] + 20 <= made[lift]


def test_a_job_lies_in_one_shift() -> None:
    draft = bakery(finishes=600)
    draft.shifts[:] = [Shift("Tom", "Tom", 1, 0, 300), Shift("Ines", "Ines", 1, 300, 600)]
    shape = draft.job("rye/shape", 20, latest=290)
    assert starts(draft)[shape] == 280


def test_what_goes_by_itself_wants_nobody() -> None:
    draft = bakery(finishes=600)
    draft.shifts[0] = draft.shifts[0]._replace(ends=300)
    rest = draft.job("rye/soak", 20, hands=0)
    assert starts(draft)[rest] == 580


def test_a_mixer_is_washed_between_two_doughs_and_is_sometimes_away() -> None:
    draft = bakery(hands=2)
    rye, tin = (draft.job(f"{bread}/mix", 10, latest=290, mixer="spiral") for bread in ("rye", "tin"))
    draft.mixers.append(DayMixer("spiral", 1, ((rye, tin, 15), (tin, rye, 60)), ((250, 310),)))
    made = starts(draft)
    assert (made[rye], made[tin]) == (215, 240)


def test_what_a_prover_does_not_hold_comes_before_or_after() -> None:
    draft = bakery(hands=2)
    draft.ovens[0] = draft.ovens[0]._replace(decks=2)
    draft.places.append(DayPlace("prover", 10))
    for bread in ("rye", "tin"):
        shape = draft.job(f"{bread}/shape", 10)
        put, take = draft.load(bread, "deck", 40)
        draft.wait(shape, put, 60, 90)
        draft.stays.append(Stay("prover", 8, shape, put))
        due(draft, bread, take, 500)
    made = starts(draft)
    first, second = sorted(((made[0], made[1]), (made[3], made[4])))
    assert first[1] + 3 == second[0]


def test_a_break_is_over_before_a_load_comes_out() -> None:
    draft = bakery()
    _, take = draft.load("rye", "deck", 40)
    due(draft, "rye", take, 300, oldest=0)
    rest = draft.job("Ines/break", 30, 240, 310, shift="Ines", is_break=True)
    assert starts(draft)[rest] == 310
    draft.jobs[rest] = draft.jobs[rest]._replace(latest=290)
    made = starts(draft)
    assert made[rest] + 30 + 10 <= made[take]


def fired(fires: int = 1) -> Draft:
    draft = bakery(hands=3, finishes=1200)
    draft.ovens[0] = DayOven("mother", within=6, curve=curve((0, 300), (100, 200)), mouth_from=60, mouth_until=5)
    for number in range(fires):
        draft.fires.append(Fire("mother", draft.job(f"mother/light {number + 1}", 5), 120))
    return draft


def test_each_load_finds_its_heat_on_a_floor_that_falls() -> None:
    draft = fired()
    for bread, heat, extra in (("tin", 230, 0), ("hearth", 280, 20)):
        _, take = draft.load(bread, "mother", 30, enters=heats(heat - 5, heat + 5), extra=extra)
        due(draft, bread, take, 900)
    made = starts(draft)
    out = made[0] + 120
    assert 15 <= made[3] - out <= 25
    assert 65 <= made[1] - out + 20 <= 75


def test_breads_of_two_heats_too_far_apart_have_a_fire_each() -> None:
    draft = fired(fires=2)
    for bread in ("hearth", "slate"):
        _, take = draft.load(bread, "mother", 80, enters=heats(280, 300))
        due(draft, bread, take, 1000)
    made = starts(draft)
    first, second = sorted(made[:2])
    assert first + 120 <= min(made[2], made[4]) < second
    assert max(made[2], made[4]) >= second + 120


def test_food_stands_at_the_mouth_while_the_oven_heats() -> None:
    draft = fired()
    _, take = draft.load("rye", "mother", 90, enters=heats(270, 300))
    due(draft, "rye", take, 800)
    put, take = draft.load("leeks", "mother", 30, at_the_mouth=True)
    due(draft, "leeks", take, 690)
    made = starts(draft)
    assert made[0] + 60 <= made[put]
    assert made[take] + 3 <= made[0] + 115


def test_a_bread_is_late_only_where_nothing_else_works() -> None:
    draft = bakery(hands=2)
    for bread in ("rye", "tin"):
        _, take = draft.load(bread, "deck", 40)
        due(draft, bread, take, 60, oldest=30)
    assert reached(draft.day()) == (43 + 10 + 43 - 60, 0)


def test_a_wait_goes_beyond_its_range_before_anything_is_late() -> None:
    draft = bakery(hands=2)
    for bread in ("rye", "tin"):
        shape = draft.job(f"{bread}/shape", 10, latest=200)
        put, take = draft.load(bread, "deck", 40)
        draft.wait(shape, put, 60, 60, may=60)
        due(draft, bread, take, 400)
    draft.jobs[0] = draft.jobs[0]._replace(earliest=200)
    draft.jobs[3] = draft.jobs[3]._replace(earliest=200)
    assert reached(draft.day()) == (0, 53)


def test_what_is_too_much_for_its_place_is_named() -> None:
    draft = bakery()
    shape = draft.job("rye/shape", 10)
    put, _ = draft.load("rye", "deck", 40)
    draft.wait(shape, put, 60, 90)
    draft.places.append(DayPlace("prover", 10))
    draft.stays.append(Stay("prover", 12, shape, put))
    found = plan_by_hand(draft.day())
    assert isinstance(found, NotPlanned)
    assert found.is_impossible
    assert {tie.why.sort for conflict in found.conflicts for tie in conflict.ties} >= {"place"}


def test_a_job_for_which_nobody_is_there_is_named() -> None:
    draft = bakery()
    draft.shifts.clear()
    shape = draft.job("rye/shape", 10)
    found = plan_by_hand(draft.day())
    assert isinstance(found, NotPlanned)
    assert found.is_impossible
    assert found.conflicts[0].bounds[0][0] == shape


def test_a_day_without_jobs_is_planned() -> None:
    assert planned(Draft().day()).timetable.starts == ()


TINY = range(30)
RANDOM = (*range(60), 150, 162, 302)
"""In the last three two fires may be lit in either order, by their hours."""


@every(TINY, at_least=30)
def test_a_tiny_day_is_planned_as_well_as_can_be(seed: int) -> None:
    day = tiny_day(seed)
    best, found = best_plan(day), plan_by_hand(day)
    if best is None:
        assert isinstance(found, NotPlanned)
    else:
        assert reached(day) == (best.late, best.may_wait)


@every(TINY, at_least=30)
def test_what_is_called_impossible_is(seed: int) -> None:
    day = tiny_day(seed)
    found = plan_by_hand(day)
    assert isinstance(found, Planned) or not found.is_impossible or best_plan(day) is None


@every([MORNING, FIRE_NIGHT, *map(random_day, RANDOM)], at_least=60)
def test_a_day_is_planned_no_worse_than_it_was_thought_out(made: Made) -> None:
    assert reached(made.day) <= (late(made.day, made.plan), may_wait(made.day, made.plan))


@every((*range(10), 1032), at_least=11)
def test_a_hurried_day_is_planned(seed: int) -> None:
    """In the last one the order of a falling oven is begun anew in its middle: what goes in later finds another floor."""
    planned(hurried_day(seed).day)


@every([(seed, crowded) for seed in (1, 3, 14) for crowded in (False, True)], at_least=6)
def test_forty_breads_of_two_decks_are_on_time(seed: int, crowded: bool) -> None:
    """The solver finds none of the first, crowded or not, within a minute."""
    assert reached(grown_day(40, seed, crowded)) == (0, 0)


def test_the_market_saturday_is_on_time() -> None:
    day = market_day()[1].day
    minutes_late, waited = reached(day)
    assert minutes_late == 0
    assert waited <= 90


@every([*map(tiny_day, range(10)), *(random_day(seed).day for seed in range(10))], at_least=20)
def test_the_same_day_has_the_same_plan(day: Day) -> None:
    assert plan_by_hand(day) == plan_by_hand(day)


@every(RANDOM, at_least=60)
def test_what_is_due_later_makes_nothing_later(seed: int) -> None:
    day = random_day(seed).day
    before = reached(day)
    at = seed % len(day.ends)
    later = day.ends[at]._replace(due=day.ends[at].due + 30, oldest=None)
    ends = (*day.ends[:at], later, *day.ends[at + 1 :])
    after = reached(day._replace(ends=ends))
    assert after <= before


@every(RANDOM, at_least=60)
def test_a_bread_left_out_makes_nothing_impossible(seed: int) -> None:
    day = random_day(seed).day
    bread = day.breads[seed % len(day.breads)]
    assert reached(without(day, bread)) <= reached(day)
