"""The card as a whole: clocks, rows, what is said beside them."""

from __future__ import annotations

from datetime import datetime, timedelta
from fractions import Fraction

from hypothesis import given, strategies as st
from run_length import FEW_EXAMPLES
from timing.test_schedule import batches, loaf
from weighing.kneading import BUTTER, FLOUR, STARTER, WATER, YEAST, batch, stage, step, weighed
from works import STEPS_ALONE, by_hand

from manchet.batch.model import Batch
from manchet.formula.bake_events import OPEN, BakeEvent
from manchet.formula.model import Heat, Range, Reach
from manchet.kitchen.model import PLAIN, Kitchen, Mixer, Oven
from manchet.timing.card.card import card_of
from manchet.timing.card.late import late_of
from manchet.timing.card.values import BeforeYouGo, Card
from manchet.timing.when import When

FRIDAY = datetime(2026, 11, 27, 17, 0)
MOTHER = Oven("mother", holds=((24, "loaves"), (12, "rounds")), heats_in=Fraction(90 * 60))
ROW = STEPS_ALONE._replace(hands=2, ovens=(MOTHER,), mixers=(Mixer("spiral", Fraction(1000), Fraction(45000)),))


def card(made: Batch, at: datetime = FRIDAY, kitchen: Kitchen = STEPS_ALONE, is_ready: bool = False) -> Card:
    return card_of(by_hand(made, kitchen), When(at, is_ready))


def lines(made: Card) -> list[str]:
    return [
        f"{row.start:%a %H:%M} +{row.elapsed} {row.stage or 'dough'} {row.step.verb if row.job == 'step' else row.job}"
        for row in made.rows
        if row.step is not None
    ]


def test_a_night_and_a_morning() -> None:
    """Begun on Friday at five: the first line is the night before, and both clocks run on over midnight."""
    assert lines(card(loaf())) == [
        "Fri 17:00 +0 sour mix",
        "Fri 17:03 +3 sour ripen",
        "Fri 23:38 +398 seeds soak",
        "Sat 03:48 +648 scald rest",
        "Sat 05:03 +723 scald cool",
        "Sat 06:33 +813 dough mix",
        "Sat 06:38 +818 dough add",
        "Sat 06:39 +819 dough mix",
        "Sat 06:41 +821 dough ferment",
        "Sat 07:26 +866 dough divide",
        "Sat 07:28 +868 dough shape",
        "Sat 07:33 +873 dough prove",
        "Sat 08:33 +933 dough bake",
        "Sat 08:48 +948 dough bake",
        "Sat 09:25 +985 dough take out of oven",
        "Sat 09:25 +985 dough cool",
    ]


def test_ready_by_begins_the_evening_before() -> None:
    made = card(loaf(), datetime(2026, 11, 28, 13, 25), is_ready=True)
    assert (made.start, made.ready) == (FRIDAY, datetime(2026, 11, 28, 13, 25))
    assert made.out_of_oven == datetime(2026, 11, 28, 9, 25)
    assert lines(made) == lines(card(loaf()))


def test_a_day_that_is_not_said_is_moved_until_the_work_can_begin() -> None:
    """It is 21:40; bread at 13:25 tomorrow would have been begun at 17:00 today."""
    now = datetime(2026, 11, 24, 21, 40)
    when = When(datetime(2026, 11, 25, 13, 25), True, now)
    made = card_of(by_hand(loaf(), STEPS_ALONE), when)
    assert (made.start, made.ready) == (datetime(2026, 11, 25, 17, 0), datetime(2026, 11, 26, 13, 25))


def test_an_oven_is_lit_in_time_for_its_first_bake() -> None:
    made = card(loaf(), kitchen=ROW)
    preheat = next(row for row in made.rows if row.job == "preheat")
    bake = next(row for row in made.rows if row.step is not None and row.step.verb == "bake" and row.job == "step")
    assert (preheat.place, bake.start - preheat.start) == ("mother", timedelta(minutes=90))
    assert preheat.end == bake.start


def test_an_oven_that_stood_idle_is_lit_anew() -> None:
    dough = stage("dough", [weighed(FLOUR, 9000)], [step("divide")])
    branches = [
        ("rolls", [step("prove", 120), step("bake", 20)]),
        ("rounds", [step("prove", 300), step("bake", 20)]),
        ("loaves", [step("retard", 900), step("bake", 40)]),
    ]
    made = batch(dough, pieces=[(9, "rolls"), (4, "rounds"), (10, "loaves")], branches=branches)
    lit = [row.start for row in card(made, kitchen=ROW).rows if row.job == "preheat"]
    assert [at - FRIDAY for at in lit] == [timedelta(minutes=32), timedelta(minutes=812)], "2 min to divide"


def test_where_the_oven_takes_longest_it_is_the_first_line() -> None:
    soda = batch(stage("dough", [weighed(FLOUR, 1000)], [step("mix", 3), step("divide"), step("bake", 45, at=200)]))
    made = card(soda, kitchen=ROW)
    assert lines(made)[:2] == ["Fri 17:00 +0 dough preheat", "Fri 18:27 +87 dough mix"]
    assert made.rows[0].celsius == Range(Fraction(200), Fraction(200))
    assert [b for b in made.before_you_go if b.what == "set oven"] == [
        BeforeYouGo("set oven", "mother", Fraction(0), Fraction(200), FRIDAY)
    ]


def test_folds_and_the_damper_have_lines_of_their_own() -> None:
    bake = step("bake", 25)._replace(events=(BakeEvent(OPEN, Fraction(120)),), turn_after=Fraction(600))
    dough = stage("dough", [weighed(FLOUR, 1000)], [step("ferment", 120, folds=(2, 40)), bake])
    found = card(batch(dough))
    assert lines(found) == [
        "Fri 17:00 +0 dough ferment",
        "Fri 17:40 +40 dough fold",
        "Fri 18:20 +80 dough fold",
        "Fri 19:00 +120 dough bake",
        "Fri 19:02 +122 dough vent open",
        "Fri 19:10 +130 dough turn bread",
        "Fri 19:25 +145 dough take out of oven",
    ]
    assert [(row.number, row.of) for row in found.rows if row.job == "fold"] == [(1, 2), (2, 2)]


def test_work_nobody_gave_a_time_for_takes_what_is_usual() -> None:
    """30 s to add, 10 s to divide each of 14."""
    estimates = [row for row in card(loaf()).rows if row.is_estimate]
    assert [(row.step.verb, row.seconds.low) for row in estimates if row.step] == [("add", 30), ("divide", 140)]


def test_weighing_loading_and_taking_out_take_time_and_no_line_of_their_own() -> None:
    """Each of four lines 30 s; six loaves through the door at 20 s, out at 10 s. The bake is as long as the file says."""
    kitchen = PLAIN._replace(minutes=(("weigh", Fraction(30)), ("load", Fraction(20)), ("take out", Fraction(10))))
    lines_of_bowl = [weighed(FLOUR, 3000), weighed(WATER, 2000), weighed(YEAST, 30), weighed(BUTTER, 100)]
    dough = stage("dough", lines_of_bowl, [step("mix", 8), step("bake", 40), step("cool", 60)])
    made = card(batch(dough, pieces=[(6, "loaves")]), kitchen=kitchen)
    assert [(f"{row.start:%H:%M}", f"{row.begins:%H:%M}", f"{row.end:%H:%M}", row.job) for row in made.rows] == [
        ("17:00", "17:02", "17:10", "step"),
        ("17:10", "17:12", "17:52", "step"),
        ("17:52", "17:52", "17:53", "take out of oven"),
        ("17:53", "17:53", "18:53", "step"),
    ]
    assert not any(one.is_estimate for row in made.rows for one in row.handling)


def test_what_is_kept_of_a_stage_takes_no_time_before_it_is_used() -> None:
    """It is taken out of it by whoever uses it: half a minute of the dough's first line."""
    sour = stage("sour", [weighed(FLOUR, 900)], [step("ripen", 60), step("keep")])
    dough = stage("dough", [weighed("sour", 900)], [step("mix", 5)])
    ripen, keep, mix = card(batch(sour, dough)).rows
    assert keep.start == keep.end == ripen.end == mix.start
    assert [(one.does, one.seconds, one.is_estimate) for one in mix.handling] == [
        ("weigh", 0, False),
        ("keep", 30, True),
    ]


def test_what_a_line_says_of_lateness() -> None:
    work = by_hand(loaf(), STEPS_ALONE)
    made = card_of(work, When(FRIDAY, False))
    shape = next(row for row in made.rows if row.step is not None and row.step.verb == "divide")
    assert (shape.latest, shape.slack, shape.moves) == (datetime(2026, 11, 28, 7, 30), 4, "oven"), (
        "5, of whole minutes 4"
    )
    assert shape.stands_until == datetime(2026, 11, 28, 7, 30)
    quarter, half, three_quarters = (late_of(work, shape, minutes) for minutes in (15, 30, 45))
    assert [(c.step.verb, c.minutes) for c in quarter.shorter] == [("prove", 10), ("bake", 3)]
    assert [(c.step.verb, c.minutes) for c in quarter.longer] == [("ferment", 5)]
    assert [(c.step.verb, c.minutes) for c in quarter.over] == [("ferment", 10)]
    assert (quarter.bake, half.bake, three_quarters.bake) == (5, 20, 35)
    assert half.ready == 18


def test_what_each_wait_yields() -> None:
    made = card(loaf())
    by_verb = {row.step.verb: row.gives for row in made.rows if row.job == "step" and row.step is not None}
    assert (by_verb["ripen"].shortens, by_verb["ripen"].stretches) == (90 * 60, 90 * 60)
    assert by_verb["prove"].waits == 15 * 60
    assert (by_verb["shape"].stretches, by_verb["shape"].waits) == (0, 0), "nothing says that it may stand"


def test_two_products_that_want_more_than_the_oven_holds() -> None:
    steps = [step("prove", 60), step("bake", 30)]
    dough = stage("dough", [weighed(FLOUR, 9000)], [step("divide")])
    made = batch(dough, pieces=[(16, "loaves"), (6, "rounds")], branches=[("loaves", steps), ("rounds", steps)])
    (clash,) = card(made, kitchen=ROW).clashes
    assert (clash.what, clash.name, clash.share, clash.who) == ("oven", "mother", Fraction(7, 6), ("loaves", "rounds"))
    fewer = batch(dough, pieces=[(16, "loaves"), (4, "rounds")], branches=[("loaves", steps), ("rounds", steps)])
    assert card(fewer, kitchen=ROW).clashes == ()


def test_six_at_a_time_never_fill_the_oven() -> None:
    flat = step("bake")._replace(time=Range(Fraction(60), Fraction(60)), per="side", at_a_time=6)
    made = batch(stage("dough", [weighed(FLOUR, 900)], [step("divide"), flat]), pieces=[(40, "rounds")])
    assert card(made, kitchen=ROW).clashes == ()


def test_two_doughs_at_one_mixer_are_said() -> None:
    sponge = stage("sponge", [weighed(FLOUR, 900)], [step("mix", 10)])
    dough = stage(
        "dough",
        [weighed(FLOUR, 900), weighed("sponge", 900, held=True)],
        [step("mix", 4), step("fold", 2), step("add", add=["sponge"])],
    )
    (clash,) = card(batch(sponge, dough), kitchen=ROW._replace(hands=None)).clashes
    assert (clash.what, clash.share, clash.who) == ("mixer", 2, ("sponge", "dough"))


def test_a_pair_of_hands_too_few_is_said() -> None:
    crumb = stage("crumb", [weighed(FLOUR, 900)], [step("rub", 10)])
    dough = stage("dough", [weighed("crumb", 900, held=True)], [step("fold", 20), step("add", add=["crumb"])])
    (clash,) = card(batch(crumb, dough), kitchen=PLAIN._replace(hands=1)).clashes
    assert (clash.what, clash.share, clash.who) == ("hands", 2, ("dough", "crumb"))
    assert card(batch(crumb, dough), kitchen=PLAIN._replace(hands=2)).clashes == ()
    assert card(batch(crumb, dough)).clashes == ()


def test_before_you_go() -> None:
    sour = stage("sour", [weighed(FLOUR, 900), weighed(STARTER, 90)], [step("ripen", 840)], kept=[(STARTER.name, 60)])
    seeds = stage("seeds", [weighed(WATER, 500)], [step("soak", 720)], word="soaker")
    block = stage("butter block", [weighed(BUTTER, 400, celsius=12)], [step("press")], word="stage")
    dough = stage(
        "dough", [weighed("sour", 990), weighed("seeds", 500), weighed("butter block", 400)], [step("mix", 5)]
    )
    found = card(batch(sour, seeds, block, dough)).before_you_go
    assert found == (
        BeforeYouGo("put away", STARTER.name, Fraction(60), Fraction(4), None),
        BeforeYouGo("feed", STARTER.name, Fraction(30), None, None),
        BeforeYouGo("soak", "seeds", Fraction(500), None, datetime(2026, 11, 27, 19, 0)),
        BeforeYouGo("take out", "butter", Fraction(400), Fraction(12), datetime(2026, 11, 28, 7, 0)),
    )


def test_nothing_is_short_that_no_scale_shows() -> None:
    """A culture of 90.004 g is weighed to the gram: a third of one less on the way back leaves the pot full, one and a half do not."""

    def fed(back: Fraction) -> list[Fraction]:
        sour = stage("sour", [weighed(FLOUR, 900), weighed(STARTER, Fraction("90.004"))], [step("ripen", 840)])
        dough = stage("dough", [weighed("sour", 990)], [step("mix", 5)])
        found = card(batch(sour._replace(returned=((STARTER.name, back),)), dough)).before_you_go
        return [item.grams for item in found if item.what == "feed"]

    assert fed(Fraction("90.004")) == fed(Fraction(90)) == fed(Fraction("89.7")) == []
    assert fed(Fraction("88.5")) == [Fraction("1.504")]
    assert fed(Fraction(0)) == [Fraction("90.004")]


def test_the_picture_of_the_day() -> None:
    made = card(loaf(), kitchen=ROW)
    assert [(lane.what, lane.name) for lane in made.lanes] == [
        ("stage", "sour"),
        ("stage", "seeds"),
        ("stage", "scald"),
        ("product", "Test loaf"),
        ("oven", "mother"),
    ]
    for lane in made.lanes:
        for bar in lane.bars:
            assert (bar.start, bar.end) == (made.rows[bar.row].start, made.rows[bar.row].end)
    oven = next(lane for lane in made.lanes if lane.what == "oven")
    assert [bar.kind for bar in oven.bars] == ["preheat", "waiting", "waiting"]


# ---- the dough came out at ---------------------------------------------------------------------------


def yeasted_batch(at: int | None = None) -> Batch:
    mix = step("mix", 2)._replace(reaches=(Reach("temperature", Range(Fraction(28), Fraction(28))),))
    bulk = step("ferment", 40, 50)
    if at is not None:
        bulk = bulk._replace(heats=(Heat(Range(Fraction(at), Fraction(at))),))
    return batch(stage("dough", [weighed(FLOUR, 900), weighed(YEAST, 9)], [mix, bulk]))


def test_a_dough_that_came_out_cooler_takes_longer() -> None:
    """40-50 min at 28 C: 24 C 47-59, 26 C 43-54, 30 C 38-48 (worked out by the model)."""
    found = card(yeasted_batch(28)).came_out_at
    assert [(w.celsius, round(w.low / 60), round(w.high / 60)) for w in found if w.high is not None] == [
        (24, 47, 59),
        (26, 43, 54),
        (28, 40, 50),
        (30, 38, 48),
    ]


def test_the_model_is_silent_where_it_does_not_hold() -> None:
    assert card(yeasted_batch(4)).came_out_at == ()  # a night in the fridge
    assert card(loaf()).came_out_at == ()  # no yeast


# ---- properties --------------------------------------------------------------------------------------

moments = st.datetimes(datetime(2026, 1, 1), datetime(2027, 1, 1)).map(lambda at: at.replace(second=0, microsecond=0))


@given(batches(), moments, st.integers(0, 5000))
@FEW_EXAMPLES
def test_moving_the_start_moves_every_line_alike(made: Batch, at: datetime, by: int) -> None:
    later = timedelta(minutes=by)
    first, second = card(made, at, ROW), card(made, at + later, ROW)
    assert [row.start + later for row in first.rows] == [row.start for row in second.rows]
    assert [row.end + later for row in first.rows] == [row.end for row in second.rows]
    assert [(row.elapsed, row.slack) for row in first.rows] == [(row.elapsed, row.slack) for row in second.rows]


@given(batches(), moments)
@FEW_EXAMPLES
def test_ready_by_undoes_start(made: Batch, at: datetime) -> None:
    forward = card(made, at, ROW)
    assert card(made, forward.ready, ROW, is_ready=True) == forward


@given(batches(), moments)
@FEW_EXAMPLES
def test_lines_stand_in_order_of_time(made: Batch, at: datetime) -> None:
    found = card(made, at, ROW)
    assert found.rows[0].start == found.start == at
    assert [row.start for row in found.rows] == sorted(row.start for row in found.rows)
    for row in found.rows:
        assert row.start <= row.end <= found.ready
        assert row.latest is None or row.latest >= row.start
        assert row.elapsed == (row.start - at).total_seconds() // 60
