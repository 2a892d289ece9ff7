"""What is lost after dividing counts where it stands, into the baked weight; and JSON has what is thrown away and all bread."""

from __future__ import annotations

from fractions import Fraction

from loaves import LOAVES_AND_ROLLS, PLAIN_LOAF, vary
from works import first_work, reports_of

from manchet.figures.derived import figures_of
from manchet.figures.report import report_of


def baked(text: str) -> Fraction:
    return figures_of(first_work(text)).totals["baked_grams"].value


def test_a_bake_that_says_what_it_loses() -> None:
    assert baked(vary(PLAIN_LOAF, bake="40 min at 230 C, loses 20%")) == 720


def test_losses_follow_one_another() -> None:
    loses = vary(vary(PLAIN_LOAF, bake="40 min at 230 C, loses 10%"), cool="24 h, loses 2%")
    assert baked(loses) == 900 * Fraction(9, 10) * Fraction(98, 100)


def test_a_trimming_stands_beside_the_bake_loss_of_the_head() -> None:
    text = PLAIN_LOAF.replace("    shape round", "    trim, loses 5%\n    shape round")
    assert baked(text.replace("\n\n  overall", "\n  bake loss 10%\n\n  overall")) == 900 * Fraction(95, 100) * Fraction(
        9, 10
    )


def test_the_dough_for_a_baked_weight_is_found_by_it() -> None:
    text = vary(vary(PLAIN_LOAF, bake="40 min at 230 C, loses 20%"), makes="10 loaves at 800 g baked")
    work = first_work(text)
    assert work.batch.pieces[0].grams == 1000 and work.batch.divided == 10_000


def test_each_bread_of_a_dough_has_its_own() -> None:
    text = LOAVES_AND_ROLLS.replace("bake 16 min at 230 C, steam", "bake 16 min at 230 C, steam, loses 15%")
    work = first_work(text)
    assert [piece.baked_grams for piece in work.batch.pieces] == [None, 110 * Fraction(85, 100)]


def test_half_of_it_lost_on_the_rack_is_asked_about() -> None:
    (found,) = reports_of(
        vary(PLAIN_LOAF, bake="40 min at 230 C, steam, vent open after 9 min", cool="24 h, loses 50%")
    )
    assert (found.name, found.place.line) == ("loss-implausible", 19)


def test_the_figures_have_all_the_bread() -> None:
    text = PLAIN_LOAF.replace("\n\n  overall", "\n  bake loss 20%\n\n  overall")
    found = report_of(figures_of(first_work(text)))["totals"]
    assert found["baked_total_grams"]["exact"] == "7200"
    pounds = report_of(figures_of(first_work(vary(text, makes="500 lb baked"))))["totals"]
    assert pounds["baked_total_grams"]["exact"] == "226796.185"


def test_the_figures_have_what_is_thrown_away_and_what_is_kept() -> None:
    text = """formula Two thirds
  kind hearth loaf
  makes 2 loaves at 860 g dough

  poolish
    white flour          150 g
    water                150 g
    fresh yeast            0.3 g
    mix by hand 2 min
    ripen covered 10-12 h at 20 C
    discard what is left

  dough
    white flour          900 g
    water                600 g
    poolish              200 g
    salt                  20 g
    mix by hand 4 min to 25 C
    ferment covered 4 h at 24 C
    divide
    shape round
    prove covered 2 h at 24 C
    bake 40 min at 230 C
    cool 2 h
"""
    stage = report_of(figures_of(first_work(text)))["stages"][0]
    assert (stage["discarded_grams"]["exact"], stage["kept_grams"]["exact"]) == ("100.3", "0")
    stage = report_of(figures_of(first_work(text.replace("discard what is left", "keep what is left as old poolish"))))[
        "stages"
    ][0]
    assert (stage["discarded_grams"]["exact"], stage["kept_grams"]["exact"]) == ("0", "100.3")
