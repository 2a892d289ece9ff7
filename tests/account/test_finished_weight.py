"""One finished weight of a piece: (dough + what touches it before the last heat) x (1 - bake loss) + what comes on after."""

from fractions import Fraction

import pytest
from loaves import PLAIN_LOAF
from works import first_work, reports_of

from manchet.batch.order import Order
from manchet.figures.derived import figures_of


def loaf(head: str, bench: str, after: str = "") -> str:
    text = PLAIN_LOAF.replace("  makes 10 loaves at 900 g dough\n", head)
    return text.replace("    bake 40 min at 230 C\n", f"{bench}    bake 40 min at 230 C\n{after}")


HEAD = "  makes 10 loaves at 900 g dough\n  bake loss 13%\n"


@pytest.mark.parametrize(
    ("bench", "after", "grams"),
    [
        # By hand: 900 x 0.87 = 783; 905 x 0.87 = 787.35; + 3 g that come on when it is baked.
        ("", "", Fraction(783)),
        ("    dust with white flour 5 g each\n", "", Fraction("787.35")),
        ("    dust with white flour 50 g in all\n", "", Fraction("787.35")),
        ("    dust with white flour 5 g each\n", "    brush with butter 3 g each\n", Fraction("790.35")),
    ],
)
def test_what_touches_a_piece_counts(bench: str, after: str, grams: Fraction) -> None:
    assert first_work(loaf(HEAD, bench, after)).batch.pieces[0].baked_grams == grams


def test_a_loss_at_the_step_takes_of_what_is_there_then() -> None:
    text = loaf("  makes 10 loaves at 900 g dough\n", "    dust with white flour 5 g each\n")
    text = text.replace("bake 40 min at 230 C", "bake 40 min at 230 C, loses 10%").replace(
        "cool 2 h", "brush with butter 10 g each\n    cool 2 h, loses 1%"
    )
    # (905 x 0.9 + 10) x 0.99
    assert first_work(text).batch.pieces[0].baked_grams == Fraction("816.255")


def test_a_wanted_baked_weight_is_with_what_touches_it() -> None:
    text = loaf(
        "  makes 10 loaves at 800 g baked\n  bake loss 13%\n",
        "    dust with white flour 5 g each\n",
        "    brush with butter 3 g each\n",
    )
    piece = first_work(text).batch.pieces[0]
    assert piece.grams == Fraction(797) / Fraction("0.87") - 5
    assert piece.baked_grams == 800


def test_it_is_the_same_at_any_size() -> None:
    text = loaf(HEAD, "    dust with white flour 50 g in all\n")
    for number in (1, 7, 40):
        work = first_work(text, Order(pieces=((Fraction(number), ""),)))
        assert work.batch.pieces[0].baked_grams == Fraction("787.35")


def test_figures_say_what_touched_it() -> None:
    figures = figures_of(first_work(loaf(HEAD, "    dust with white flour 5 g each\n")))
    one = figures.totals["baked_grams"]
    assert one.value == Fraction("787.35")
    assert [given.name for given in one.inputs] == ["bake loss", "dust: white flour"]


CELERIAC = """\
preparation celeriac
  celeriac             2000 g
  sunflower oil          60 g
  peel, loses 20%
  good for 1 d at 4 C
"""


def test_what_is_peeled_is_the_first_thing_weighed() -> None:
    assert first_work(CELERIAC).batch.dough == 2060 - 400
    assert [one.name for one in reports_of(CELERIAC)] == ["peel-beside-others"]


def test_nothing_beside_what_is_peeled_is_nothing_to_report() -> None:
    held = CELERIAC.replace(
        "  peel, loses 20%\n", "  hold back sunflower oil\n  peel, loses 20%\n  add sunflower oil\n"
    )
    assert first_work(held).batch.dough == 2060 - 400
    assert not reports_of(held)


def test_what_is_left_of_it_is_peeled() -> None:
    boiled = CELERIAC.replace("  peel", "  boil 20 min, loses 10%\n  peel")
    # 2060 x 0.9 = 1854, in which 1800 g are celeriac; a fifth of that goes.
    assert first_work(boiled).batch.dough == 1854 - 360
