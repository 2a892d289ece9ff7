"""A range that the flour decides, and what may be left out: planned with the low end, counted with what is optional."""

from __future__ import annotations

from fractions import Fraction

from loaves import PLAIN_LOAF, POOLISH_LOAF
from works import bakery_of, first_work, formula_of

from manchet.batch.weighing import weighings
from manchet.figures.derived import figures_of
from manchet.workspace.changes import Changes

F = Fraction
ASKED = PLAIN_LOAF.replace("water                 70%", "water                 66-70%, as the flour asks")
LOW = PLAIN_LOAF.replace("water                 70%", "water                 66%")
NUTTY = "    salt                   2%\n    walnuts                8%"


def test_every_figure_is_that_of_the_low_end() -> None:
    asked, low = figures_of(first_work(ASKED)), figures_of(first_work(LOW))
    assert {n: f.value for n, f in asked.totals.items() if n != "water_at_most_percent"} == {
        n: f.value for n, f in low.totals.items()
    }
    assert [m.grams.value for m in asked.stages[0].materials] == [m.grams.value for m in low.stages[0].materials]
    assert asked.totals["water_at_most_percent"].value == 70


def test_what_stands_by_is_the_high_end_less_the_low() -> None:
    (line,) = [m for m in figures_of(first_work(ASKED)).stages[0].materials if m.more is not None]
    assert line.name == "water" and line.more is not None
    assert line.more.value == line.grams.value * F(4, 66)


def test_it_goes_where_the_rest_of_the_line_goes() -> None:
    formula = formula_of(
        POOLISH_LOAF.replace("water                 68%", "water                 66-68%, as the flour asks")
    )
    more = {stage.key: [p.share * p.more for p in stage.portions if p.more] for stage in formula.stages}
    assert more == {"poolish": [], "dough": [F(2, 100)]}


def test_what_is_left_takes_it_too() -> None:
    text = ASKED.replace("    everything else\n", "    what is left of the water\n    everything else\n")
    (water,) = [p for p in formula_of(text).dough.portions if p.more]
    assert (water.share, water.more * water.share) == (F(66, 100), F(4, 100))


def test_of_water_held_back_in_part_it_is_counted_once() -> None:
    text = ASKED.replace(
        "    everything else\n    mix slow 8 min to 25 C",
        "    everything else\n    hold back water 6%\n    mix slow 6 min\n    add water as needed\n    mix slow 2 min to 25 C",
    )
    portions = [p for p in formula_of(text).dough.portions if p.key == "water"]
    assert [p.share for p in portions] == [F(60, 100), F(6, 100)]
    assert sum(p.share * p.more for p in portions) == F(4, 100)
    (water,) = [m for m in figures_of(first_work(text)).stages[0].materials if m.name == "water"]
    assert water.more is not None and water.more.value == water.grams.value * F(4, 66)


def test_a_volume_has_both_its_ends() -> None:
    text = (
        "kitchen K\n  measures US\nformula A\n  makes 20 loaves at 900 g dough\n  dough\n    white flour 20 lb\n"
        "    water 6-6 1/2 qt, as the flour asks\n    salt 90 g\n    mix slow 8 min\n    divide\n"
    )
    (water,) = [p for p in bakery_of(text).formulas[0].dough.portions if p.more]
    assert water.more == F(1, 12)


def test_on_the_scale_it_ends_at_the_high_end() -> None:
    text = "kitchen K\n  scale platform\n    reads 50 g\n" + ASKED
    (table,) = weighings(first_work(text)).value
    (line,) = [x for x in table.lines if x.weighed.portion.more]
    from manchet.batch.weighed_table import more_on_the_scale

    high = line.weighed.grams * (1 + line.weighed.portion.more)
    assert (line.shown + more_on_the_scale(line)) % 50 == 0
    assert abs(line.shown + more_on_the_scale(line) - high) <= 25


def test_a_swap_keeps_it() -> None:
    text = ASKED.replace("fresh yeast            1.5%", "fresh yeast            1.5%\n    butter                 5%")
    bakery = bakery_of(text, Changes(("fresh yeast for instant yeast",)))
    (water,) = [p for p in bakery.formulas[0].dough.portions if p.key == "water"]
    assert water.more * water.share == F(4, 66) * water.share and water.share > F(66, 100)


def test_what_is_optional_is_counted() -> None:
    plain = PLAIN_LOAF.replace("    salt                   2%", NUTTY)
    optional = first_work(plain.replace("walnuts                8%", "walnuts                8%, optional"))
    assert [w.grams for w in optional.batch.dough_stage.weighed] == [
        w.grams for w in first_work(plain).batch.dough_stage.weighed
    ]
    assert {line.name: line.optional for line in optional.batch.formula.overall if line.optional} == {"walnuts": True}
    assert [p.name for p in optional.batch.formula.dough.portions if p.optional] == ["walnuts"]


def test_by_weight_what_stands_by_is_the_same_in_all_and_in_the_stage() -> None:
    text = (
        "formula A\n  makes 2 loaves at 850 g dough\n  dough\n    white flour 1000 g\n    water 640-670 g, as the flour asks\n"
        "    salt 20 g\n    mix by hand 8 min\n    divide\n"
    )
    figures = figures_of(first_work(text))
    of_all, of_dough = (
        [m.more.value for m in lines if m.more] for lines in (figures.overall, figures.stages[0].materials)
    )
    assert of_all == of_dough == [first_work(text).batch.flour * F(30, 1000)]
    assert figures.totals["water_at_most_percent"].value == 67
