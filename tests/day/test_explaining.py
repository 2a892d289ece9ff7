"""What keeps a job from beginning later: one thing a small day, and the checker's word for it on random ones."""

from __future__ import annotations

from fractions import Fraction

from day.days import Draft, curve, heats, timed
from day.market import market_day
from day.random_days import random_day
from every import every

from manchet.day.checking import check
from manchet.day.explaining import Held, HeldBy, first_holds, holds
from manchet.day.goals import late, may_wait
from manchet.day.model import Day, DayMixer, DayOven, DayPlace, End, Fire, Planned, Shift, Stay, Timetable
from manchet.day.posting import plan_by_hand


def bakery() -> Draft:
    draft = Draft(0, 900)
    draft.shifts.append(Shift("Ines", "Ines", 2, 0, 800))
    draft.ovens.append(DayOven("deck", within=6, recovers=10))
    return draft


def first(draft: Draft, job: int, starts: tuple[int, ...]) -> tuple[int, HeldBy, str]:
    day = draft.day()
    plan = timed(day, starts)
    assert check(day, plan) == ()
    held = first_holds(day, plan)[job]
    assert held == holds(day, plan, job)[0]
    return held.minutes, held.by, held.words


def test_the_job_after_it_and_the_wait_between() -> None:
    draft = bakery()
    mix, shape = draft.job("rye/mix", 10), draft.job("rye/shape", 20)
    draft.wait(mix, shape, 60, 90)
    assert first(draft, mix, (100, 165)) == (5, HeldBy.WAIT, "before shape: ferment")
    assert first(draft, shape, (100, 165)) == (25, HeldBy.LONGEST, "before it has stood too long: ferment")


def test_another_bread_that_the_same_stage_goes_into() -> None:
    draft = bakery()
    feed, mix = draft.job("levain/feed", 5), draft.job("rye/mix", 10)
    draft.wait(feed, mix, 60, 90, what="ripen")
    assert first(draft, feed, (100, 165)) == (5, HeldBy.WAIT, "before rye mix: ripen")


def test_the_other_load_in_the_oven() -> None:
    draft = bakery()
    one, _ = draft.load("tin", "deck", 40)
    two, _ = draft.load("rye", "deck", 40)
    assert first(draft, one, (100, 140, 160, 200)) == (7, HeldBy.OVEN, "before rye: the oven")
    assert first(draft, two, (100, 140, 160, 200))[1] is not HeldBy.OVEN


def test_the_load_beside_it() -> None:
    draft = bakery()
    one, _ = draft.load("tin", "deck", 40, share=Fraction(1, 2))
    draft.load("rye", "deck", 40, share=Fraction(1, 2))
    assert first(draft, one, (100, 140, 103, 143)) == (9, HeldBy.BESIDE, "beside rye: the oven")


def test_the_floor() -> None:
    draft = bakery()
    draft.ovens.append(DayOven("mother", curve=curve((0, 300), (100, 200))))
    light = draft.job("mother/light", 5)
    draft.fires.append(Fire("mother", light, 120))
    put, _ = draft.load("rye", "mother", 40, enters=heats(250, 280))
    assert first(draft, put, (100, 250, 290)) == (20, HeldBy.FLOOR, "before the floor is too cold")
    assert first(draft, light, (100, 250, 290)) == (10, HeldBy.FLOOR, "before the floor is too hot: rye")


def test_the_mixer() -> None:
    draft = bakery()
    rye, tin = (draft.job(f"{bread}/mix", 10, mixer="spiral") for bread in ("rye", "tin"))
    draft.mixers.append(DayMixer("spiral", 1, ((rye, tin, 6),)))
    assert first(draft, rye, (100, 120)) == (4, HeldBy.MIXER, "before tin: spiral")


def test_the_prover() -> None:
    draft = bakery()
    draft.places.append(DayPlace("prover", 10))
    jobs = [draft.job(f"{bread}/{does}", 10, hands=0) for bread in ("rye", "tin") for does in ("shape", "load")]
    draft.stays += [Stay("prover", 8, jobs[0], jobs[1]), Stay("prover", 8, jobs[2], jobs[3])]
    assert first(draft, jobs[1], (100, 160, 175, 250)) == (5, HeldBy.PLACE, "before tin: prover")


def test_somebodys_hands() -> None:
    draft = bakery()
    for bread in ("rye", "tin", "plait"):
        draft.job(f"{bread}/shape", 10)
    assert first(draft, 0, (100, 115, 118)) == (8, HeldBy.HANDS, "before plait: Ines's hands")
    assert first(draft, 2, (100, 115, 118)) == (800 - 128, HeldBy.SHIFT, "before the shift ends: Ines")


def test_the_hour_it_is_due() -> None:
    draft = bakery()
    _, take = draft.load("rye", "deck", 40)
    draft.ends.append(End("rye", 8, "loaves", take, 120, 300, word="packed"))
    assert first(draft, take, (100, 140)) == (37, HeldBy.END, "in time to be packed: rye")


def test_a_break_is_over_before_a_load_comes_out() -> None:
    draft = bakery()
    draft.load("rye", "deck", 40)
    rest = draft.job("Ines/break", 20, shift="Ines", is_break=True)
    assert first(draft, rest, (100, 140, 105)) == (5, HeldBy.BREAK, "before it comes out: rye")


def test_its_own_latest() -> None:
    draft = bakery()
    job = draft.job("rye/feed", 5, latest=130)
    assert first(draft, job, (100,)) == (30, HeldBy.LATEST, "before its hour is over")


@every((*range(40), "market"), at_least=41)
def test_by_as_much_as_is_said_and_no_more(which: int | str) -> None:
    """A job moved by as many minutes breaks nothing and costs nothing, by one more it does."""
    day = random_day(which).day if isinstance(which, int) else market_day()[1].day
    found = plan_by_hand(day)
    assert isinstance(found, Planned)
    for held in first_holds(day, found.timetable):
        assert not worse(day, found.timetable, held, held.minutes), held
        assert worse(day, found.timetable, held, held.minutes + 1), held


def worse(day: Day, plan: Timetable, held: Held, minutes: int) -> bool:
    moves = {held.job}
    for _ in day.loads:
        moves |= {job for load in day.loads if {load.put, load.take} & moves for job in (load.put, load.take)}
    starts = tuple(start + (minutes if at in moves else 0) for at, start in enumerate(plan.starts))
    moved = plan._replace(starts=starts)
    costs_more = late(day, moved) > late(day, plan) or may_wait(day, moved) > may_wait(day, plan)
    return costs_more or bool(check(day, moved))
