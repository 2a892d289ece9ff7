"""What is poured off is gone at that step: in the account of the vessel, in the water, on the sheet."""

from __future__ import annotations

from fractions import Fraction

from loaves import PLAIN_LOAF
from sheets.card_text import lines_of as card_lines
from sheets.work import card, lines_of, sheet
from works import first_work, formula_of, reports_of

from manchet.figures.derived import figures_of
from manchet.larder.book import builtin

F = Fraction
SAUCE = """\
preparation pear sauce
  pears                  500 g
  water                  400 g
  simmer 30-40 min until "soft", loses 10%
  pour off 200 g
  chill 2 h to 4 C
  good for 3 d at 4 C
"""
SEEDS = PLAIN_LOAF.replace(
    "    salt                   2%", "    sunflower seeds       10%\n    salt                   2%"
).replace(
    "  dough\n",
    "  soaker seeds\n    all of the sunflower seeds\n    water                 20% of all flour\n    soak covered 8 h at 20 C\n"
    "    pour off 6%\n\n  dough\n    seeds\n",
)


def test_the_account_closes() -> None:
    batch = first_work(SAUCE).batch.dough_stage
    assert (batch.into, batch.lost, batch.out) == (900, 90 + 200, 610)


def test_it_is_by_its_own_weight_and_after_what_boiled_off_before() -> None:
    later = SAUCE.replace("  pour off 200 g\n", "").replace("  simmer", "  pour off 200 g\n  simmer")
    assert first_work(later).batch.dough_stage.lost == 200 + 70


def test_in_per_cent_it_is_a_part_of_the_flour_and_goes_with_the_size() -> None:
    formula = formula_of(SEEDS)
    (soaker, dough) = formula.stages
    assert (soaker.into_share, soaker.lost_share, soaker.out_share) == (F(30, 100), F(6, 100), F(24, 100))
    assert dough.out_share == sum(line.share for line in formula.overall) - F(6, 100)


def test_its_water_is_no_longer_in_the_dough() -> None:
    poured, kept = (figures_of(first_work(text)).totals for text in (SEEDS, SEEDS.replace("    pour off 6%\n", "")))
    assert poured["water_percent"].value == kept["water_percent"].value == 70
    assert kept["hydration_percent"].value - poured["hydration_percent"].value == 6


def test_of_whey_the_water_is_counted_out_and_no_more() -> None:
    whey, kept = (SEEDS.replace("pour off 6%", "pour off whey 6%"), SEEDS.replace("    pour off 6%\n", ""))
    of_whey = builtin().ingredient("whey")
    assert of_whey is not None
    gone = figures_of(first_work(kept)).totals["hydration_percent"].value
    gone -= figures_of(first_work(whey)).totals["hydration_percent"].value
    assert gone == 6 * of_whey.composition["water"] / 100


def test_topping_up_does_not_make_it_good() -> None:
    text = SAUCE.replace("  chill", "  top up with water\n  chill")
    batch = first_work(text).batch.dough_stage
    assert (batch.topped_up, batch.out) == (90, 700)


def test_the_figure_of_what_is_lost_names_it() -> None:
    (stage,) = figures_of(first_work(SAUCE)).stages
    assert [(given.name, given.value) for given in stage.lost.inputs] == [
        ("loses (simmer)", 10),
        ("poured off (water)", 200),
    ]


def test_sheet_and_card_say_how_much() -> None:
    assert any("Pour off 304\u00a0g water" in line.text for line in lines_of(sheet(SEEDS)))
    weights = [w for _, line in card_lines(card(SEEDS)) for clause in line.clauses for w in clause.weights]
    assert ("304", "g", "water") in [(w.weight, w.unit, w.name) for w in weights]


def test_more_than_there_is_and_after_dividing_are_asked_about() -> None:
    def named(text: str) -> list[str]:
        return [report.name for report in reports_of(text)]

    assert named(SAUCE.replace("200 g", "850 g")) == ["pours-off-too-much"]
    assert named(PLAIN_LOAF.replace("    shape round", "    pour off 2%\n    shape round")) == ["pours-off-too-much"]
    assert named(SEEDS.replace("pour off 6%", "pour off 200 g")) == ["percent-and-weight-mixed"]
