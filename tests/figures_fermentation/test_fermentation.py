"""What a wait becomes elsewhere, through formulas as bakers write them."""

from fractions import Fraction

import pytest
from hypothesis import given, strategies as st
from weighing.kneading import step
from works import bakery_of, formula_of

from manchet.diagnostics.catalogue import explain
from manchet.figures.fermentation.another_warmth import Waiting, fermentation_figures, hours_at, mean_pace, waits_of
from manchet.figures.fermentation.yeast_rate import BAKERS, SOUR_BACTERIA, SOUR_YEAST, pace
from manchet.formula.model import Formula, Heat, Range, Step

TWO_LEAVENS = """
formula Two ways
  kind hearth loaf
  makes 2 loaves at 900 g dough

  overall
    white flour          100%
    water                 66%
    fresh yeast          1.0%
    salt                   2%

  levain sour with 20% of all flour
    medium rye flour      100%
    water                 80%
    ripe rye starter      10%
    ripen 14-16 h at 21 C

  dough
    everything else
    mix slow 4 min to 26 C
    ferment 2 h at 26 C
    divide
    shape round
    prove 1 h at 26 C
    bake 40 min at 240 C
    cool 2 h
"""


def with_yeast_alone(text: str) -> Formula:
    """The loaf with yeast alone."""
    start, end = text.index("  levain sour"), text.index("  dough")
    return formula_of(text[:start] + text[end:])


STRAIGHT = with_yeast_alone(TWO_LEAVENS)


def one_wait(low: int, high: int, celsius: int, *leavens: object, falls_to: int | None = None) -> Waiting:
    heat = Heat(Range(Fraction(celsius), Fraction(celsius)))
    falls = None if falls_to is None else ("falling to", Range(Fraction(falls_to), Fraction(falls_to)))
    one = step("ferment", low, high)._replace(heats=(heat,), ramp=falls)
    assert one.time is not None
    return Waiting("dough", one, one.time, leavens or (BAKERS,))  # type: ignore[arg-type]


def minutes(seconds: Fraction | None) -> int:
    assert seconds is not None
    return round(seconds / 60)


def test_every_wait_is_found_and_who_works_in_it() -> None:
    waits = waits_of(STRAIGHT)
    assert [(w.where, w.step.verb, w.celsius, w.leavens) for w in waits] == [
        ("dough", "ferment", 26, (BAKERS,)),
        ("dough", "prove", 26, (BAKERS,)),
    ]


def test_a_sour_in_the_dough_works_too() -> None:
    text = TWO_LEAVENS.replace("white flour          100%", "white flour 75%\n    medium rye flour 25%")
    text = text.replace("everything else", "sour\n    everything else")
    waits = waits_of(formula_of(text))
    assert [(w.step.verb, w.leavens) for w in waits] == [
        ("ripen", (SOUR_YEAST, SOUR_BACTERIA)),
        ("ferment", (BAKERS, SOUR_YEAST)),
        ("prove", (BAKERS, SOUR_YEAST)),
    ]


def test_two_hours_at_26_in_a_cool_and_a_warm_place() -> None:
    """By hand from the rates: 26 C 0.3202, 22 C 0.2561, 30 C 0.3609 an hour; by thumb 1.1^4 longer and shorter."""
    wait = waits_of(STRAIGHT)[0]
    cool, warm = wait.at(Fraction(22)), wait.at(Fraction(30))
    assert cool is not None and warm is not None
    assert minutes(cool.seconds.likely) == pytest.approx(120 * 0.3202 / 0.2561, abs=2)
    assert minutes(warm.seconds.likely) == pytest.approx(120 * 0.3202 / 0.3609, abs=2)
    assert (minutes(cool.by_thumb), minutes(warm.by_thumb)) == (176, 82)


def test_silent_outside_the_model() -> None:
    wait = one_wait(60, 60, 26)
    assert wait.at(Fraction(4)) is None  # a fridge: the dough's own cooling decides
    assert wait.at(Fraction(41)) is None
    assert one_wait(600, 600, 4).at(Fraction(26)) is None
    assert one_wait(60, 60, 26, SOUR_YEAST, SOUR_BACTERIA).at(Fraction(34)) is None  # the yeast is at its end there
    assert hours_at(Fraction(27), [one_wait(600, 600, 4).step]) is None
    assert hours_at(Fraction(27), [step("ferment", 60)]) is None


def test_two_that_work_give_a_range() -> None:
    """The bacteria of a sour gain more by warmth than its yeast: one wait is told from the one to the other."""
    both = one_wait(600, 600, 21, SOUR_YEAST, SOUR_BACTERIA).at(Fraction(27))
    assert both is not None
    by_yeast, by_bacteria = (
        600 * pace(leaven, Fraction(21)) / pace(leaven, Fraction(27)) for leaven in (SOUR_YEAST, SOUR_BACTERIA)
    )
    assert (minutes(both.seconds.low), minutes(both.seconds.high)) == (round(by_bacteria), round(by_yeast))


def test_a_dough_that_cools_works_like_the_mean_of_its_way() -> None:
    """From 28 C to 20 C: between the rates at both ends, and what many thin slices say."""
    falling = one_wait(120, 120, 28, falls_to=20)
    many = sum(pace(BAKERS, 20 + Fraction(2 * n + 1, 250)) for n in range(1000)) / 1000
    assert float(mean_pace(BAKERS, falling.step)) == pytest.approx(float(many), rel=0.001)
    there = falling.at(Fraction(24))
    assert there is not None
    assert 115 < minutes(there.seconds.likely) < 125


def test_figures_say_their_rule_source_and_the_thumb_beside() -> None:
    found = fermentation_figures(STRAIGHT)
    figure = found["dough, ferment at 22 C"]
    assert (figure.value, figure.unit) == (150, "min")
    assert "estimate" in figure.rule and "Salvado" in figure.source
    assert [(g.name, g.value) for g in figure.inputs] == [
        ("ferment as written", 120), ("as warm as", 26), ("by the rule of thumb", 175)
    ]  # fmt: skip


# ---- properties ---------------------------------------------------------------------------------------

warmths = st.integers(15, 31).map(Fraction)


@given(warmths, warmths, warmths, st.sampled_from([(BAKERS,), (SOUR_YEAST,), (SOUR_BACTERIA,), (BAKERS, SOUR_YEAST)]))
def test_no_longer_wait_in_a_warmer_place_below_the_best(
    at: Fraction, one: Fraction, other: Fraction, leavens: tuple[object, ...]
) -> None:
    cool, warm = sorted((one, other))
    if warm > min(leaven.best for leaven in leavens):  # type: ignore[attr-defined]
        return
    wait = one_wait(60, 90, int(at), *leavens)
    longer, shorter = wait.at(cool), wait.at(warm)
    assert longer is not None and shorter is not None
    assert shorter.seconds.likely <= longer.seconds.likely
    assert shorter.by_thumb <= longer.by_thumb


@given(st.lists(warmths, max_size=4))
def test_hours_are_never_less_where_it_is_warm(at: list[Fraction]) -> None:
    steps: list[Step] = [one_wait(60, 60, int(celsius)).step for celsius in at]
    hours = hours_at(Fraction(15), steps)
    assert hours is not None and hours >= len(steps)


def test_the_card_of_a_sourdough_that_came_out_warm() -> None:
    """No yeast but a culture's: by the model of a sour's yeast, 26 C is near its best and 22 C a fifth longer."""
    from manchet.batch.order import AS_WRITTEN
    from manchet.batch.sizing import size_batch
    from manchet.kitchen.model import PLAIN
    from manchet.timing.card.warmth import came_out_at

    text = TWO_LEAVENS.replace("    fresh yeast          1.0%\n", "")
    text = text.replace("white flour          100%", "white flour 75%\n    medium rye flour 25%")
    batch = size_batch(
        formula_of(text.replace("everything else", "sour\n    everything else")), AS_WRITTEN, PLAIN
    ).value
    assert batch is not None
    assert [(line.celsius, round(line.low / 60)) for line in came_out_at(batch)] == [
        (22, 145), (24, 128), (26, 120), (28, 119)
    ]  # fmt: skip


def test_a_wait_is_told_for_the_room_as_it_is() -> None:
    assert "dough, ferment at 21 C" in fermentation_figures(STRAIGHT, Fraction(21))
    assert "dough, ferment at 21 C" not in fermentation_figures(STRAIGHT)
    assert fermentation_figures(STRAIGHT, Fraction(26)) == fermentation_figures(STRAIGHT)


def test_the_report_of_a_cool_room_says_about_how_long() -> None:
    """A levain of 8-10 h at 24 C in a room of 17 C; at 12 C the model is silent, and so is the report."""
    case = explain("room-far-from-written")
    assert case is not None
    text = case.mistake

    def help_at(air: int) -> str:
        found = bakery_of(text.replace("air            12 C", f"air            {air} C"))
        (report,) = [d for d in found.diagnostics if d.name == "room-far-from-written"]
        return report.help

    assert help_at(17).endswith("for the room as it is: about 16.5-21 h at 17 C, by an estimate")
    assert help_at(12).endswith("for the room as it is")
