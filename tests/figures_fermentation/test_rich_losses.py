"""What a rich dough loses is bounded by its water, and no figure is told that no bread has."""

from __future__ import annotations

from loaves import PLAIN_LOAF, vary
from works import first_work

from manchet.figures.losses.bake_loss import loss_figures

CROWN = """formula Crown
  kind soft
  makes 10 crowns at 600 g dough

  overall
    white flour          100%
    milk                  25%
    eggs                  20%
    butter                50%
    sugar                 35%
    salt                   1.2%
    fresh yeast            6%

  dough
    everything else
    mix slow 4 min
    mix fast 12 min to 25 C
    ferment covered 60 min at 26 C
    divide
    shape as wreath
    prove 60-75 min at 28 C
    bake 30 min at 180 C
    cool 1 h
"""


def test_a_crown_of_butter_and_sugar_has_little_to_lose() -> None:
    found = loss_figures(first_work(CROWN))
    lost = found["bake loss, estimate"]
    assert lost.value == 8 and "6 to 10 %" in lost.rule and "Boutroux" in lost.source
    assert 17 <= found["moisture, estimate"].value <= 30


def test_a_lean_loaf_loses_as_it_did() -> None:
    assert "10 to 16 %" in loss_figures(first_work(PLAIN_LOAF))["bake loss, estimate"].rule


def test_a_moisture_that_no_bread_has_is_not_told() -> None:
    dry = first_work(PLAIN_LOAF.replace("\n\n  overall", "\n  bake loss 27%\n\n  overall"))
    assert "moisture, estimate" not in loss_figures(dry)


def test_a_day_on_the_shelf_is_a_range_and_only_of_a_loaf_like_the_one_that_was_weighed() -> None:
    found = loss_figures(first_work(PLAIN_LOAF))["weight after 24 h unwrapped, estimate"]
    assert "750 to 770 g" in found.rule
    small = loss_figures(first_work(vary(PLAIN_LOAF, makes="10 loaves at 500 g dough")))
    assert not any("unwrapped" in name for name in small)
