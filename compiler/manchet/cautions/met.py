"""Every hazard of a formula, each at the step that causes it."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.after_heat import after_the_last_heat, best_before_of_cold_food
from manchet.cautions.burns import burns_of_the_house, hands_in_the_mixer, hot_fat, hot_sugar
from manchet.cautions.caution import Caution
from manchet.cautions.cooked import cooled_fast, egg_through, heated_again
from manchet.cautions.eaten import told_to_eaters
from manchet.cautions.keeping import neither_cold_nor_hot, rope_in_warm_weather, wrapped_warm
from manchet.cautions.lye import lye_met
from manchet.cautions.meat_and_fish import fish_never_cooked, meat_through
from manchet.cautions.raw_egg import raw_egg_after_heat, raw_egg_kept
from manchet.cautions.standing import standing_warm
from manchet.cautions.under_fat import plants_under_fat

OF_FORMULA = (
    plants_under_fat,
    lye_met,
    hot_fat,
    hot_sugar,
    cooled_fast,
    neither_cold_nor_hot,
    heated_again,
    egg_through,
    raw_egg_kept,
    raw_egg_after_heat,
    meat_through,
    fish_never_cooked,
    after_the_last_heat,
    best_before_of_cold_food,
    standing_warm,
    rope_in_warm_weather,
    wrapped_warm,
)
"""The gravest first: so they stand where several are met at one step."""
AT_A_STEP_OF_THE_HOUSE = (burns_of_the_house, hands_in_the_mixer)


def hazards_met(work: Work) -> Iterator[Caution]:
    """Every hazard of the formula, at each step that causes it; the same one may come several times."""
    for met in OF_FORMULA:
        yield from met(work)


def beside_the_sheet(work: Work) -> Iterator[Caution]:
    """What the crew's sheet leaves out: a handout has it at its step, and whoever eats is told."""
    for met in (*AT_A_STEP_OF_THE_HOUSE, told_to_eaters):
        yield from met(work)
