"""One dough taken apart: what is one moment, how long it takes one pair of hands, and how long the waits between may be.

The figures follow from the text of each formula and from the estimates of `timing.jobs.usual_times`, worked out by hand here.
"""

from __future__ import annotations

from fractions import Fraction

from works import first_work

from manchet.day.jobs.making import work_of_day
from manchet.day.jobs.values import Gap, WorkMoment, WorkOfDay

KITCHEN = """
kitchen Test
  hands 2
  mixer spiral
    takes 1-45 kg dough
  oven deck
    holds 12 loaves
    recovers 5 min
  basket round
    count 20
  fridge cold
    keeps 4 C
    holds 30 loaves
  weigh 30 s each
  divide 6 s each
  shape 12 s each
  load 10 s each
  take out 5 s each
"""

LOAF = """
formula Plain
  kind hearth loaf
  makes 10 loaves at 900 g dough
  overall
    white flour 100%
    water 65%
    salt 2%
    instant yeast 0.5%
  dough
    everything else
    mix slow 5 min
    ferment covered 60-90 min at 24 C with a fold after 30 min
    divide
    shape round
    place in round
    retard covered 10-12 h at 5 C
      may wait 2 h at 4 C
    score "a cross"
    bake 40 min at 230 C
    cool 2 h
"""


def apart(text: str) -> WorkOfDay:
    return work_of_day(first_work(text))


def moment(day: WorkOfDay, key: str) -> WorkMoment:
    return next(one for one in day.moments if one.key == key)


def gap(day: WorkOfDay, before: str, after: str) -> Gap:
    return next(one for one in day.gaps if (one.before, one.after) == (before, after))


def test_all_work_between_two_waits_is_one_moment() -> None:
    does = {one.key: [part.does for part in one.parts] for one in apart(LOAF + KITCHEN).moments}
    assert does == {
        "Plain/weigh": ["weigh", "mix"],
        "Plain/fold": ["fold"],
        "Plain/divide": ["divide", "shape", "place"],
        "Plain/score": ["score", "load"],
        "Plain/take out": ["take out"],
    }


def test_it_takes_one_pair_of_hands_as_long_as_the_kitchen_says() -> None:
    day = apart(LOAF + KITCHEN)
    # Four lines of 30 s and 5 min at the mixer; ten pieces of 6 s and 12 s, and 4 s each by estimate.
    assert moment(day, "Plain/weigh").seconds == 4 * 30 + 300
    assert moment(day, "Plain/divide").seconds == 10 * (6 + 12 + 4)
    assert [part.is_estimate for part in moment(day, "Plain/divide").parts] == [False, False, True]


def test_the_first_piece_and_the_last_lie_in_the_range() -> None:
    day = apart(LOAF + KITCHEN)
    cold = gap(day, "Plain/divide", "Plain/score")
    shaping, loading = Fraction(220), Fraction(10 * (5 + 10))
    assert cold.least == shaping + 10 * 3600 - loading * 9 / 10
    assert cold.most == 12 * 3600 + shaping - shaping * 9 / 10
    assert (cold.may, cold.is_cold, cold.what) == (2 * 3600, True, "retard")


def test_a_fold_is_a_moment_inside_its_wait() -> None:
    day = apart(LOAF + KITCHEN)
    fold = gap(day, "Plain/weigh", "Plain/fold")
    assert (fold.least, fold.most) == (420 + 25 * 60, 420 + 40 * 60)
    assert gap(day, "Plain/fold", "Plain/divide").least == moment(day, "Plain/fold").seconds


def test_a_single_figure_may_be_stretched_by_a_tenth_or_five_minutes() -> None:
    short = apart(LOAF.replace("60-90 min at 24 C with a fold after 30 min", "20 min at 24 C") + KITCHEN)
    long = apart(LOAF.replace("60-90 min at 24 C with a fold after 30 min", "2 h at 24 C") + KITCHEN)
    assert (gap(short, "Plain/weigh", "Plain/divide").most or 0) - 420 == 25 * 60
    assert (gap(long, "Plain/weigh", "Plain/divide").most or 0) - 420 == 132 * 60


def test_a_wait_in_the_bakers_own_words_takes_half_an_hour_to_two_hours() -> None:
    left = LOAF.replace(
        "    mix slow 5 min\n", '    mix slow 5 min\n    do "leave it be" waiting\n    mix slow 1 min\n'
    )
    wait = gap(apart(left + KITCHEN), "Plain/weigh", "Plain/mix")
    assert (wait.least, wait.most) == (420 + 30 * 60, 420 + 120 * 60)


def test_a_load_is_in_the_oven_from_its_door_to_its_door() -> None:
    (load,) = apart(LOAF + KITCHEN).loads
    assert (load.put, load.take) == ("Plain/score", "Plain/take out")
    assert load.stays == 10 * (5 + 10) + 40 * 60
    assert (load.oven, load.pieces, load.share, load.grams) == ("deck", 10, Fraction(10, 12), 9000)


def test_more_than_the_oven_holds_goes_in_load_by_load() -> None:
    day = apart(LOAF.replace("makes 10 loaves", "makes 20 loaves") + KITCHEN)
    assert [load.pieces for load in day.loads] == [12, 8]
    assert [end.pieces for end in day.finished] == [12, 8]
    assert {load.put for load in day.loads} == {"Plain/score/load 1", "Plain/score/load 2"}


def test_pieces_have_their_baskets_and_the_fridge_until_they_go_in() -> None:
    standings = {one.place: one for one in apart(LOAF + KITCHEN).standings}
    assert {(name, one.number, one.begins, one.ends) for name, one in standings.items()} == {
        ("round", 10, "Plain/divide", "Plain/score"),
        ("cold", 10, "Plain/divide", "Plain/score"),
    }


def test_of_several_loads_each_has_its_own_share_of_fridge_and_baskets() -> None:
    day = apart(LOAF.replace("makes 10 loaves", "makes 20 loaves") + KITCHEN)
    for place in ("round", "cold"):
        held = [(one.number, one.ends) for one in day.standings if one.place == place]
        assert held == [(12, "Plain/score/load 1"), (8, "Plain/score/load 2")]


def test_of_several_mixes_each_has_its_own_baskets() -> None:
    day = apart(LOAF + KITCHEN.replace("1-45 kg", "1-6 kg"))
    held = [(one.number, one.begins, one.ends) for one in day.standings if one.place == "round"]
    assert held == [(5, "Plain/divide/mix 1", "Plain/score"), (5, "Plain/divide/mix 2", "Plain/score")]


def test_the_second_mix_does_not_come_before_the_first() -> None:
    day = apart(LOAF + KITCHEN.replace("1-45 kg", "1-6 kg"))
    (order,) = (gap for gap in day.gaps if gap.after.endswith("mix 2") and gap.before.endswith("mix 1"))
    assert (order.before, order.after, order.least, order.most) == ("Plain/weigh/mix 1", "Plain/weigh/mix 2", 0, None)


def test_a_dough_keeps_the_bowl_while_it_rests_between_two_mixes() -> None:
    rested = LOAF.replace("    mix slow 5 min\n", "    mix slow 5 min\n    rest covered 20 min\n    mix fast 3 min\n")
    (bowl,) = apart(rested + KITCHEN).bowls
    assert (bowl.mixer, bowl.begins, bowl.ends) == ("spiral", "Plain/weigh", "Plain/mix")


SOUR = """
formula Sour
  kind hearth loaf
  makes 10 loaves at 900 g dough
  overall
    white flour 100%
    water 65%
    salt 2%
  levain with 20% of all flour
    white flour 100%
    water 60%
    ripe rye starter 10%
    mix by hand 4 min to 26 C
    ripen covered 8-10 h at 24 C
    keep 200 g as ripe rye starter
  dough
    levain
    everything else
    mix slow 5 min
    ferment covered 3 h at 24 C
    divide
    shape round
    prove 1 h at 26 C
    bake 40 min at 230 C
"""


def test_what_is_kept_of_a_stage_is_taken_out_when_it_is_used() -> None:
    day = apart(SOUR + KITCHEN)
    assert [part.does for part in moment(day, "Sour/weigh").parts] == ["weigh", "keep", "mix"]
    ripe = gap(day, "Sour/levain/weigh", "Sour/weigh")
    mixed = 3 * 30 + 240
    assert (ripe.least, ripe.most, ripe.what) == (mixed + 8 * 3600, mixed + 10 * 3600, "ripen")


def test_a_stage_that_stands_there_is_not_made() -> None:
    work = first_work(SOUR + KITCHEN)
    day = work_of_day(work, frozenset({"levain"}))
    assert [one.key for one in day.moments] == ["Sour/weigh", "Sour/divide", "Sour/load", "Sour/take out"]


def test_each_sort_of_piece_goes_its_own_way() -> None:
    both = LOAF.replace(
        "  makes 10 loaves at 900 g dough\n", "  makes 6 loaves at 900 g dough\n  makes 12 rolls at 90 g dough\n"
    )
    text = both[: both.index("    shape round")] + (
        "    for the loaves\n      shape round\n      prove 60 min at 26 C\n      bake 40 min at 230 C\n"
        "    for the rolls\n      shape round\n      prove 40 min at 26 C\n      bake 15 min at 240 C\n"
    )
    day = apart(text + KITCHEN)
    assert [(end.noun, end.pieces) for end in day.finished] == [("loaves", 6), ("rolls", 12)]
    assert {load.branch for load in day.loads} == {"loaves", "rolls"}
    assert {one.does for one in moment(day, "Plain/rolls/shape").parts} == {"shape"}
