"""A day that can't be done: what is said of it is so, and each change that is said to help does."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

from day.days import FIRE_NIGHT, MORNING, Draft, heats
from day.random_days import random_day
from every import every

from manchet.day.checking import check
from manchet.day.clashes.asking import ask_by_hand, ask_the_solver
from manchet.day.clashes.eased import eased_day, with_longer_shift
from manchet.day.clashes.find import clashes_of
from manchet.day.clashes.less import RULES, on_time, without
from manchet.day.clashes.values import Clashes, Reply
from manchet.day.goals import late
from manchet.day.model import Day, DayOven, DayPlace, End, Shift, Stay
from manchet.day.solving.search import feasible_by_solver


def hour(minute: int) -> str:
    return f"{minute // 60:02}:{minute % 60:02}"


def clashes(day: Day) -> Clashes:
    found = clashes_of(day, ask_the_solver, hour, lambda: 0)
    assert found is not None
    return found


def can_be_done(day: Day) -> bool:
    return feasible_by_solver(day).planned is not None


def said(found: Clashes) -> list[str]:
    return [clash.words for clash in found.clashes]


def bread(draft: Draft, name: str, due: int, stays: int = 40, share: Fraction = Fraction(1)) -> tuple[int, int]:
    """Mixed, two to three hours later baked, and half an hour after that ready."""
    mix = draft.job(f"{name}/mix", 20)
    put, take = draft.load(name, "deck", stays, None, share, heats(220, 240), heats(220, 240), minutes=5)
    draft.wait(mix, put, 120, 180)
    draft.ends.append(End(name, 8, "loaves", take, 30, due, oldest=300))
    return mix, put


def bakery(*breads: tuple[str, int], shifts: tuple[tuple[int, int], ...] = ((0, 900),), decks: int = 1) -> Draft:
    draft = Draft(0, 900)
    draft.ovens.append(DayOven("deck", decks, 6, 10))
    draft.shifts.extend(Shift(f"shift {number}", "Tom", 1, *hours) for number, hours in enumerate(shifts))
    for name, due in breads:
        bread(draft, name, due)
    return draft


def test_a_day_that_can_be_done_has_no_clash() -> None:
    assert clashes_of(MORNING.day, ask_the_solver, hour, lambda: 0) is None


def test_a_prover_that_is_too_small_is_seen() -> None:
    draft = bakery(("Ebb rye", 600))
    draft.places.append(DayPlace("warm cupboard", 12))
    draft.stays.append(Stay("warm cupboard", 15, 0, 1))
    found = clashes(draft.day())
    assert said(found) == ["warm cupboard holds 12, and Ebb rye wants 15 at once"]
    assert [remedy.words for remedy in found.remedies] == ["if warm cupboard held 15 instead of 12"]


def test_an_oven_never_so_hot_is_seen() -> None:
    day = FIRE_NIGHT.day
    loads = tuple(load._replace(enters=heats(330, 350)) if load.bread == "hearth" else load for load in day.loads)
    words = "hearth goes in at 330 C at least, and mother has 320 C when its fire is out"
    assert said(clashes(day._replace(loads=loads))) == [words]


def test_hours_in_which_nobody_is_there_are_seen() -> None:
    """Ready at 05:00: out by 04:30, so in by 03:45; mixed by 01:00 it can wait until 03:40."""
    found = clashes(bakery(("Ebb rye", 600), ("Tern loaf", 300), shifts=((0, 60), (330, 900))).day())
    assert said(found) == [
        "from 01:00 to 05:30 nobody is there, and Tern loaf (load 1) would have to begin between 02:00 and 03:45"
    ]
    assert found.clashes[0].breads == ("Tern loaf",)
    hands = next(remedy for remedy in found.remedies if remedy.kind == "hands")
    assert (hands.minutes, hands.hours) == (45, ((220, 265),))
    assert found.remedies[0].words == "without Tern loaf"


def test_a_shift_that_begins_earlier_or_ends_later_is_offered_with_its_hour() -> None:
    """Ready at 05:00, in by 03:45, so mixed from 01:45 on at the latest."""
    found = clashes(bakery(("Ebb rye", 600), ("Tern loaf", 300), shifts=((150, 900),)).day())
    (shift,) = (remedy for remedy in found.remedies if remedy.kind == "shift")
    assert shift.words == "if Tom began at 01:45 instead of 02:30"
    found = clashes(bakery(("Ebb rye", 600), ("Tern loaf", 300), shifts=((0, 250),)).day())
    shifts = [remedy.words for remedy in found.remedies if remedy.kind == "shift"]
    assert len(shifts) == 1 and shifts[0].startswith("if Tom stayed until ")


def test_hands_that_are_wanted_in_two_gaps_are_not_kept_between_them() -> None:
    """Mixed at 07:40, Tern loaf can wait until somebody comes at 10:40."""
    shifts = ((0, 60), (330, 355), (640, 900))
    found = clashes(bakery(("Ebb rye", 300), ("Tern loaf", 805), shifts=shifts).day())
    hands = next(remedy for remedy in found.remedies if remedy.kind == "hands")
    assert (hands.minutes, hands.hours) == (65, ((220, 265), (460, 480)))
    assert hands.words == "with one more pair of hands from 03:40 to 04:25 and from 07:40 to 08:00 (65 min)"


def test_waits_longer_than_the_time_are_seen() -> None:
    """Ready at 03:00: out by 02:25, in by 01:45, mixed by 00:00 less 15 minutes."""
    words = (
        "Ebb rye (mix) would have to begin by -1:45, for Ebb rye to be ready by 03:00; "
        "it can't before 00:00, since the day begins at 00:00"
    )
    assert said(clashes(bakery(("Ebb rye", 180)).day())) == [words]


def test_more_minutes_than_the_oven_has_are_counted() -> None:
    """Five loads of 45 minutes, all out between 05:00 and 08:30 less the half hour, and none in before 02:00."""
    breads = [(f"bread {number}", 330) for number in range(1, 6)]
    found = clashes(bakery(*breads).day())
    assert [clash.how for clash in found.clashes] == ["counted"]
    assert said(found) == [
        "5 loads (bread 1, bread 2, bread 3, bread 4 and bread 5) must be in deck between 02:00 and 05:00: "
        "that takes 3 h 45 min of a full deck, and there are 3 h"
    ]


def two_that_clash() -> Day:
    """Two loads of 45 minutes and the 10 between them in 95 minutes, by 06:10; a third is hours later."""
    draft = bakery(("Ebb rye", 400), ("Tern loaf", 400), ("Mudlark", 700))
    ends = [end._replace(not_before=350) if end.bread != "Mudlark" else end for end in draft.ends]
    return draft.day()._replace(ends=tuple(ends))


def test_two_breads_that_clash_are_found_and_no_other_with_them() -> None:
    found = clashes(two_that_clash())
    assert found.clashes[0].breads == ("Ebb rye", "Tern loaf")
    assert said(found) == [
        "for one thing, Ebb rye and Tern loaf can't both be done on time: either Ebb rye would be ready at 04:10, sooner than "
        "05:50, or Ebb rye and Tern loaf would both be in deck at 04:35"
    ]
    assert found.is_certain


def two_things_that_clash() -> Day:
    """Twice what clashes above, hours apart."""
    draft = bakery(("Ebb rye", 400), ("Tern loaf", 400), ("Mudlark", 800), ("Lamplight", 800))
    return draft.day()._replace(ends=tuple(end._replace(not_before=end.due - 50) for end in draft.ends))


def test_of_two_things_that_clash_each_has_its_own_changes_and_some_help_together() -> None:
    day = two_things_that_clash()
    found = clashes(day)
    assert [clash.breads for clash in found.clashes] == [("Mudlark", "Lamplight"), ("Ebb rye", "Tern loaf")]
    for clash, other in zip(found.clashes, reversed(found.clashes), strict=True):
        alone = without(day, frozenset(other.breads))
        assert clash.remedies and all(can_be_done(on_time(eased_day(alone, [change]))) for change in clash.remedies)
        assert not any(can_be_done(on_time(eased_day(day, [change]))) for change in clash.remedies)
    assert {"leaving out one bread", "one more pair of hands"} <= set(found.useless)
    joint = [remedy for remedy in found.remedies if remedy.kind == "together"]
    assert joint and all(can_be_done(on_time(eased_day(day, change.parts))) for change in joint)
    assert joint[0].words == ", and ".join(part.words for part in joint[0].parts)


def test_what_is_seen_at_once_hides_nothing_else_that_clashes() -> None:
    """Nobody is there for Mudlark, which is plain; the two of before clash as they did, which has to be searched."""
    day = two_that_clash()
    ends = tuple(end._replace(not_before=690) if end.bread == "Mudlark" else end for end in day.ends)
    shifts = tuple(shift._replace(ends=560) for shift in day.shifts)
    found = clashes(day._replace(ends=ends, shifts=shifts))
    assert [clash.breads for clash in found.clashes] == [("Mudlark",), ("Ebb rye", "Tern loaf")]
    assert [clash.how for clash in found.clashes] == ["seen", "searched"]
    joint = [remedy.words for remedy in found.remedies if remedy.kind == "together"]
    assert "without Mudlark, and without Ebb rye" in joint or any("later" in words for words in joint)


def cut(seed: int) -> Day:
    """A random day with less of everything: an hour off the first shift, and all due earlier."""
    day = random_day(seed, 5).day
    shifts = (day.shifts[0]._replace(ends=day.shifts[0].ends - 60), *day.shifts[1:])
    return day._replace(shifts=shifts, ends=tuple(end._replace(due=end.due - 25) for end in day.ends))


@every([two_that_clash(), *map(cut, range(25))], at_least=26)
def test_what_is_said_to_help_does_and_a_minute_less_does_not(day: Day) -> None:
    found = clashes_of(day, ask_the_solver, hour, lambda: 0)
    assert (found is None) == can_be_done(on_time(day))
    if found is None:
        return
    assert found.is_finished
    assert found.is_certain
    for remedy in found.remedies:
        match remedy.kind:
            case "without" if remedy.bread:
                assert can_be_done(on_time(without(day, frozenset({remedy.bread}))))
            case "later":
                assert can_be_done(on_time(day, remedy.bread, remedy.minutes))
                assert not can_be_done(on_time(day, remedy.bread, remedy.minutes - 1))
            case "shift":
                ((begins, ends),) = remedy.hours
                (shift,) = (at for at, one in enumerate(day.shifts) if begins == one.ends or ends == one.begins)
                one = day.shifts[shift]
                longer = with_longer_shift(day, shift, min(begins, one.begins), max(ends, one.ends))
                assert can_be_done(on_time(longer))
            case "hands":
                assert can_be_done(with_hands(day, *remedy.hours))
                for number, (begins, ends) in enumerate(remedy.hours):
                    others = remedy.hours[:number] + remedy.hours[number + 1 :]
                    assert not can_be_done(with_hands(day, *others, (begins + 1, ends)))
                    assert not can_be_done(with_hands(day, *others, (begins, ends - 1)))


def with_hands(day: Day, *hours: tuple[int, int]) -> Day:
    more = (Shift(f"more {number}", "more", 1, *each) for number, each in enumerate(hours))
    return on_time(day._replace(shifts=(*day.shifts, *more)))


@every([two_that_clash(), *map(cut, range(25))], at_least=26)
def test_what_is_said_not_to_help_does_not(day: Day) -> None:
    found = clashes_of(day, ask_the_solver, hour, lambda: 0)
    if found is None:
        return
    if "leaving out one bread" in found.useless:
        assert not any(can_be_done(on_time(without(day, frozenset({bread})))) for bread in day.breads)
    if "leaving out two breads" in found.useless:
        assert not any(can_be_done(on_time(without(day, frozenset(two)))) for two in combinations(day.breads, 2))
    if "a later hour, up to 4 h" in found.useless:
        assert not any(can_be_done(on_time(day, bread, 240)) for bread in day.breads)
    if "one more pair of hands" in found.useless:
        assert not can_be_done(with_hands(day, (day.begins, day.finishes)))
    if "longer waits, up to 2 h" in found.useless:
        longer = tuple(wait._replace(may=wait.may + 120) for wait in day.waits)
        assert not can_be_done(on_time(day._replace(waits=longer)))


def test_each_rule_left_out_makes_a_day_easier_and_none_harder() -> None:
    days = [random_day(seed) for seed in range(12)]
    assert all(can_be_done(leave_out(day)) for day, _ in days for leave_out in RULES.values())
    changed = {name for day, _ in days for name, leave_out in RULES.items() if leave_out(day) != day}
    assert changed == RULES.keys()


def ask_a_doubter(day: Day) -> Reply:
    """Finds what the solver finds, and proves nothing."""
    return Reply(ask_the_solver(day).timetable, is_certain=False)


def test_without_a_solver_nothing_is_said_to_be_proven_that_is_not() -> None:
    found = clashes_of(two_that_clash(), ask_a_doubter, hour, lambda: 0)
    assert found is not None
    assert not found.is_certain
    assert not found.clashes[0].is_certain
    assert said(found)[0].startswith(
        "no plan was found that has Ebb rye and Tern loaf on time, which does not prove that there is none"
    )


def test_what_is_seen_without_search_is_certain_without_a_solver_too() -> None:
    found = clashes_of(bakery(("Ebb rye", 180)).day(), ask_a_doubter, hour, lambda: 0)
    assert found is not None
    assert found.clashes[0].is_certain


@every(range(25), at_least=25)
def test_without_a_solver_the_answers_are_no_other_where_they_are_proven(seed: int) -> None:
    day = on_time(cut(seed))
    by_hand = ask_by_hand(day)
    if by_hand.timetable is not None:
        assert check(day, by_hand.timetable) == ()
        assert late(day, by_hand.timetable) == 0
    if by_hand.is_certain:
        assert (by_hand.timetable is not None) == can_be_done(day)


def test_when_the_time_is_up_what_is_known_is_said() -> None:
    found = clashes_of(bakery(("Ebb rye", 180)).day(), ask_the_solver, hour, lambda: 100)
    assert found is not None
    assert len(found.clashes) == 1
    assert not found.is_finished
    assert found.remedies == ()
