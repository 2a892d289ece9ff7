"""Which job when: against schedules worked out by hand, and against brute force."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given, strategies as st
from run_length import FEW_EXAMPLES
from weighing.kneading import FLOUR, WATER, batch, stage, step, weighed
from works import STEPS_ALONE, by_hand as hand_made

from manchet.batch.model import Batch, StageBatch
from manchet.kitchen.model import Kitchen, Mixer
from manchet.timing.jobs.lateness import LateDay, TimeGiven
from manchet.timing.jobs.network import Job, network_of
from manchet.timing.jobs.schedule import critical_jobs, latest_of, stands_of, starts_of

MIXER = STEPS_ALONE._replace(mixers=(Mixer("spiral", None, Fraction(10000)),))


def loaf() -> Batch:
    """A sour overnight, a scald, seeds that go in late; one loaf's way to the shelf."""
    sour = stage("sour", [weighed(FLOUR, 2200)], [step("mix", 3, by_hand=True), step("ripen", 720, 900)])
    scald = stage("scald", [weighed(FLOUR, 800)], [step("rest", 60, 90), step("cool", 60, 120)], word="scald")
    seeds = stage("seeds", [weighed(WATER, 800)], [step("soak", 120, 720)], word="soaker")
    dough = stage(
        "dough",
        [weighed("sour", 2200), weighed("scald", 800), weighed(FLOUR, 5000), weighed("seeds", 800, held=True)],
        [
            step("mix", 5),
            step("add", add=["seeds"]),
            step("mix", 2),
            step("ferment", 40, 50),
            step("divide"),
            step("shape", each=20),
            step("prove", 50, 70, may_wait=15),
            step("bake", 15),
            step("bake", 35, 40),
            step("cool", 240),
        ],
    )
    return batch(sour, scald, seeds, dough, pieces=[(14, "loaves")])


def network(made: Batch, kitchen: Kitchen = STEPS_ALONE) -> tuple[Job, ...]:
    return network_of(hand_made(made, kitchen))


def minutes_given(jobs: tuple[Job, ...], given: tuple[TimeGiven, ...]) -> list[tuple[str, Fraction]]:
    return [(jobs[g.job].step.verb, g.seconds / 60) for g in given]


def by_hand(jobs: tuple[Job, ...]) -> list[tuple[str, str, Fraction]]:
    return [(j.stage.key, j.step.verb, start / 60) for j, start in zip(jobs, starts_of(jobs), strict=True)]


def test_every_stage_is_ready_just_when_it_is_used() -> None:
    """The sour takes 3 min and 13 h 30 (the middle of 12-15 h): the dough is mixed at minute 813. Nobody says how long it takes
    to add the seeds and to divide: by estimate 30 s, and 10 s for each of 14 loaves."""
    mixed = 818 + Fraction(1, 2)
    divided = mixed + 2 + 45
    shaped = divided + Fraction(14, 6)
    assert by_hand(network(loaf())) == [
        ("sour", "mix", 0),
        ("sour", "ripen", 3),
        ("scald", "rest", 813 - 90 - 75),
        ("scald", "cool", 813 - 90),
        ("seeds", "soak", 818 - 420),
        ("dough", "mix", 813),
        ("dough", "add", 818),
        ("dough", "mix", mixed),
        ("dough", "ferment", mixed + 2),
        ("dough", "divide", divided),
        ("dough", "shape", shaped),
        ("dough", "prove", shaped + Fraction(14, 3)),
        ("dough", "bake", shaped + Fraction(14, 3) + 60),
        ("dough", "bake", shaped + Fraction(14, 3) + 75),
        ("dough", "cool", shaped + Fraction(14, 3) + 75 + Fraction(75, 2)),
    ]


def test_the_longest_way_is_the_sours_and_the_doughs() -> None:
    jobs = network(loaf())
    found = {(jobs[at].stage.key, jobs[at].step.verb) for at in critical_jobs(jobs, starts_of(jobs))}
    assert ("sour", "ripen") in found and ("dough", "cool") in found
    assert not {key for key, _ in found} & {"scald", "seeds"}


def test_how_late_before_something_else_moves() -> None:
    jobs = network(loaf())
    starts, latest = starts_of(jobs), latest_of(jobs, starts_of(jobs))
    slack = {
        (j.stage.key, j.step.verb): ((last.at - start) / 60, last.moves)
        for j, start, last in zip(jobs, starts, latest, strict=True)
    }
    assert slack["sour", "mix"] == (90, "dough")  # 13 h 30 may shrink to 12 h
    assert slack["scald", "rest"] == (45, "dough")  # 15 of the rest, 30 of the cooling
    assert slack["seeds", "soak"] == (300, "dough")  # 7 h may shrink to 2 h
    assert slack["dough", "ferment"] == (15, "oven")  # 5 of the bulk, 10 of the proof
    assert slack["dough", "shape"] == (10, "oven")
    assert slack["dough", "prove"] == (10, "oven")
    assert slack["dough", "cool"] == (0, "ready")


def test_how_long_what_waits_may_stand() -> None:
    jobs = network(loaf())
    starts = starts_of(jobs)
    at = {(j.stage.key, j.step.verb, j.step.time): n for n, j in enumerate(jobs)}
    mix = at["dough", "mix", step("mix", 5).time]
    divide = at["dough", "divide", None]
    bake = at["dough", "bake", step("bake", 15).time]
    assert stands_of(jobs, starts)[mix] == min(3 * 60 + 900 * 60, starts[2] + (75 + 120) * 60 + 0)
    assert stands_of(jobs, starts)[divide] == starts[divide] + 5 * 60
    assert stands_of(jobs, starts)[bake] == starts[bake] + (10 + 15) * 60  # its range, then what it may wait
    assert stands_of(jobs, starts)[0] is None


def test_late_by_a_quarter_of_an_hour() -> None:
    jobs = network(loaf())
    starts = starts_of(jobs)
    divide = next(at for at, job in enumerate(jobs) if job.step.verb == "divide")
    found = LateDay(jobs, starts).lateness(divide, Fraction(15 * 60))
    assert minutes_given(jobs, found.shorter) == [("prove", 10), ("bake", Fraction(5, 2))]
    assert minutes_given(jobs, found.longer) == [("ferment", 5)]
    assert minutes_given(jobs, found.over) == [("ferment", 10)]
    assert (found.bake / 60, found.ready / 60) == (5, Fraction(5, 2))


def test_what_may_wait_waits_when_the_oven_is_late() -> None:
    jobs = network(loaf())
    bake = next(at for at, job in enumerate(jobs) if job.step.verb == "bake")
    found = LateDay(jobs, starts_of(jobs)).lateness(bake, Fraction(30 * 60))
    assert minutes_given(jobs, found.longer) == [("prove", 25)]
    assert minutes_given(jobs, found.over) == [("prove", 5)]
    assert found.bake == 30 * 60


def test_branches_go_their_own_ways_after_divide() -> None:
    dough = stage("dough", [weighed(FLOUR, 9000)], [step("mix", 5), step("ferment", 60), step("divide")])
    made = batch(
        dough,
        pieces=[(10, "loaves"), (24, "rolls")],
        branches=[
            ("loaves", [step("shape", each=30), step("retard", 720), step("bake", 40)]),
            ("rolls", [step("shape", each=10), step("prove", 60), step("bake", 15)]),
        ],
    )
    divided = 65 + Fraction(34, 6)  # 10 s for each of 34, by estimate
    assert [(j.branch, j.step.verb, s / 60) for j, s in zip(network(made), starts_of(network(made)), strict=True)] == [
        ("", "mix", 0),
        ("", "ferment", 5),
        ("", "divide", 65),
        ("loaves", "shape", divided),
        ("loaves", "retard", divided + 5),
        ("loaves", "bake", divided + 725),
        ("rolls", "shape", divided),
        ("rolls", "prove", divided + 4),
        ("rolls", "bake", divided + 64),
    ]


def test_a_second_mix_waits_for_the_mixer_and_the_levain_is_made_once() -> None:
    levain = stage("levain", [weighed(FLOUR, 3000)], [step("ripen", 240)])
    oats = stage("oats", [weighed(WATER, 1000)], [step("soak", 30)], for_each_mix=True)
    dough = stage(
        "dough",
        [weighed("levain", 3000), weighed("oats", 1000), weighed(FLOUR, 14000)],
        [step("mix", 5), step("rest", 20), step("mix", 5), step("ferment", 90), step("divide")],
    )
    jobs = network(batch(levain, oats, dough, pieces=[(21, "loaves")]), MIXER)
    found = [(j.stage.key, j.mix, j.step.verb, s / 60) for j, s in zip(jobs, starts_of(jobs), strict=True)]
    assert found == [
        ("levain", 0, "ripen", 0),
        ("oats", 1, "soak", 210),
        ("oats", 2, "soak", 240),
        ("dough", 1, "mix", 240),
        ("dough", 1, "rest", 245),
        ("dough", 1, "mix", 265),
        ("dough", 1, "ferment", 270),
        ("dough", 1, "divide", 360),
        ("dough", 2, "mix", 270),
        ("dough", 2, "rest", 275),
        ("dough", 2, "mix", 295),
        ("dough", 2, "ferment", 300),
        ("dough", 2, "divide", 390),
    ]
    assert [j.pieces for j in jobs if j.step.verb == "divide"] == [10, 11]


def test_three_builds_follow_one_another() -> None:
    first = stage("first", [weighed(FLOUR, 100)], [step("ripen", 300, 360)])
    second = stage("second", [weighed("first", 100), weighed(FLOUR, 500)], [step("ripen", 900, 1440)])
    third = stage("third", [weighed("second", 600), weighed(FLOUR, 900)], [step("ripen", 180, 240)])
    dough = stage("dough", [weighed("third", 1500), weighed(FLOUR, 900)], [step("mix", 8), step("ferment", 10, 20)])
    jobs = network(batch(first, second, third, dough))
    # Hamelman, Bread, 2004: freshening 5-6 h, basic sour 15-24 h, full sour 3-4 h, bulk 10-20 min
    assert [s / 60 for s in starts_of(jobs)] == [0, 330, 1500, 1710, 1718]
    assert critical_jobs(jobs, starts_of(jobs)) == frozenset(range(5))


# ---- against brute force ---------------------------------------------------------------------------

pieces_of_work = st.tuples(st.sampled_from(["mix", "rest", "fold"]), st.integers(0, 200), st.integers(0, 100))


@st.composite
def batches(draw: st.DrawFn) -> Batch:
    """Up to five stages, each using some of those before it, some of them held back; the dough bakes."""
    stages: list[StageBatch] = []
    unused: list[str] = []
    for number in range(draw(st.integers(0, 4))):
        key = f"stage {number}"
        used = draw(st.lists(st.sampled_from(unused), unique=True)) if unused else []
        stages.append(_stage(draw, key, used, "soaker"))
        unused = [k for k in unused if k not in used] + [key]
    stages.append(_stage(draw, "dough", unused, "dough"))
    return batch(*stages, pieces=[(draw(st.integers(1, 40)), "loaves")])


def _stage(draw: st.DrawFn, key: str, used: list[str], word: str) -> StageBatch:
    steps = [step(verb, low, low + more) for verb, low, more in draw(st.lists(pieces_of_work, min_size=1, max_size=4))]
    lines = [weighed(FLOUR, draw(st.integers(1000, 30000)))]
    for name in used:
        held = draw(st.booleans())
        lines.append(weighed(name, 100, held=held))
        if held:
            steps.insert(draw(st.integers(0, len(steps))), step("add", add=[name]))
    if key == "dough":
        steps += [step("prove", 30, 60), step("bake", 30, 40)]
    return stage(key, lines, steps, word=word)


def ways_to(jobs: tuple[Job, ...], at: int, dough: bool) -> list[Fraction]:
    """The lengths of all ways that end where job `at` begins, through the dough or through the other stages."""
    before = [need.job for need in jobs[at].needs if jobs[need.job].is_dough is dough]
    if not before:
        return [Fraction(0)]
    return [way + jobs[j].length.planned for j in before for way in ways_to(jobs, j, dough)]


def longest_day(jobs: tuple[Job, ...]) -> Fraction:
    """The dough's longest way, and in front of it what the other stages need more than the dough gives them."""
    dough = [at for at, job in enumerate(jobs) if job.is_dough]
    to_end = max(max(ways_to(jobs, at, True)) + jobs[at].length.planned for at in dough)
    leads = [max(ways_to(jobs, at, False)) - max(ways_to(jobs, at, True)) for at in dough]
    return to_end + max([*leads, Fraction(0)])


@given(batches())
@FEW_EXAMPLES
def test_nothing_begins_before_what_it_needs(made: Batch) -> None:
    jobs = network(made, MIXER)
    starts = starts_of(jobs)
    assert min(starts) == 0
    for at, job in enumerate(jobs):
        for need in job.needs:
            assert need.job < at
            assert starts[need.job] + jobs[need.job].length.planned <= starts[at]


@given(batches())
@FEW_EXAMPLES
def test_the_day_is_as_long_as_its_longest_way(made: Batch) -> None:
    jobs = network(made, MIXER)
    starts = starts_of(jobs)
    longest = longest_day(jobs)
    assert max(s + j.length.planned for s, j in zip(starts, jobs, strict=True)) == longest
    critical = critical_jobs(jobs, starts)
    assert critical
    moment = Fraction(1, 10**6)
    for at, job in enumerate(jobs):
        longer = list(jobs)
        longer[at] = job._replace(length=job.length._replace(planned=job.length.planned + moment))
        day = longest_day(tuple(longer))  # shorter, if only the use of what is begun first comes later
        assert day == longest + moment if at in critical else day <= longest


@given(batches(), st.data())
@FEW_EXAMPLES
def test_until_its_latest_nothing_that_matters_moves(made: Batch, data: st.DataObject) -> None:
    jobs = network(made, MIXER)
    starts = starts_of(jobs)
    at = data.draw(st.integers(0, len(jobs) - 1))
    slack = latest_of(jobs, starts)[at].at - starts[at]
    found = LateDay(jobs, starts).lateness(at, slack)
    is_first_bake = jobs[at].step.verb == "bake"
    assert (found.bake, found.ready) == (slack if is_first_bake else 0, 0)


@given(batches(), st.data(), st.integers(0, 200))
@FEW_EXAMPLES
def test_lateness_never_costs_more_than_itself(made: Batch, data: st.DataObject, late: int) -> None:
    jobs = network(made, MIXER)
    starts = starts_of(jobs)
    at = data.draw(st.integers(0, len(jobs) - 1))
    found = LateDay(jobs, starts).lateness(at, Fraction(late * 60))
    assert 0 <= found.ready <= late * 60
    assert 0 <= found.bake <= late * 60
    for given_ in found.shorter:
        length = jobs[given_.job].length
        assert given_.seconds <= length.planned - length.low
