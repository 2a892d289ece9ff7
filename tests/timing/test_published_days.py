"""Days of work that stand in print, through the card: the clock times must come out as printed.

What a source does not print (how long the pieces stood) is the difference of two times that it does.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from fractions import Fraction

import pytest
from weighing.kneading import FLOUR, WATER, batch, stage, step, weighed
from works import STEPS_ALONE, by_hand

from manchet.batch.model import Batch
from manchet.kitchen.model import Oven
from manchet.timing.card.card import card_of
from manchet.timing.card.values import Card
from manchet.timing.when import When

DAY = datetime(2026, 11, 27)
ALL_TOLD = STEPS_ALONE._replace(minutes=(*STEPS_ALONE.minutes, ("divide", Fraction(0))))
"""What a source prints has dividing, weighing and loading in it: nothing is estimated beside it."""


def rumfords_fifth_batch() -> Batch:
    leaven = stage("leaven", [weighed(FLOUR, 100)], [step("ripen", 270)])
    dough = stage(
        "dough",
        [weighed("leaven", 100), weighed(WATER, 400), weighed(FLOUR, 900)],
        [
            step("stir", 45),
            step("mix", 30, by_hand=True),
            step("divide"),
            step("shape", 30),
            step("prove", 50),
            step("bake", 60),
        ],
    )
    return batch(leaven, dough, pieces=[(186, "loaves")])


def clocks(card: Card) -> dict[str, str]:
    return {
        row.job if row.job != "step" or row.step is None else row.step.verb: f"{row.start:%H:%M}" for row in card.rows
    }


def test_rumford_s_fifth_batch() -> None:
    """Count Rumford, baking trials at Munich, 1794: leaven mixed in 11:45; water and first wood 16:15; kneaded 17:00;
    shaped into 186 loaves 17:30; in the oven 18:50; out after an hour."""
    kitchen = ALL_TOLD._replace(ovens=(Oven("Munich", heats_in=Fraction(155 * 60)),))
    made = rumfords_fifth_batch()
    for when in (
        When(DAY + timedelta(hours=11, minutes=45), False),
        When(DAY + timedelta(hours=19, minutes=50), True),
    ):
        found = clocks(card_of(by_hand(made, kitchen), when))
        assert found == {
            "ripen": "11:45",
            "preheat": "16:15",
            "stir": "16:15",
            "mix": "17:00",
            "divide": "17:30",
            "shape": "17:30",
            "prove": "18:00",
            "bake": "18:50",
            "take out of oven": "19:50",
        }


def test_an_oven_fired_every_ninety_minutes_holds_one_dough_at_a_time() -> None:
    """US Army, manual for bakers, 1916: a field oven takes a dough of 108 two-pound loaves every 90 minutes. Two doughs
    an hour apart, each 90 minutes in the oven, want it twice over in between."""
    kitchen = ALL_TOLD._replace(ovens=(Oven("field", holds=((108, "loaves"),)),))
    dough = stage("dough", [weighed(FLOUR, 9000)], [step("divide")])
    for apart, clash in ((60, 1), (90, 0)):
        branches = [("loaves", [step("bake", 90)]), ("rounds", [step("prove", apart), step("bake", 90)])]
        made = batch(dough, pieces=[(108, "loaves"), (108, "rounds")], branches=branches)
        oven = kitchen.ovens[0]._replace(holds=((108, "loaves"), (108, "rounds")))
        found = card_of(by_hand(made, kitchen._replace(ovens=(oven,))), When(DAY, False))
        assert [c.share for c in found.clashes] == [2] * clash


@pytest.mark.parametrize(
    ("source", "hours", "slack"),
    [
        ("poolish, French Culinary Institute, 12-16 h", (12, 16), 120),
        ("biga, King Arthur Flour, 13-16 h at 70 F", (13, 16), 90),
        ("liquid levain, King Arthur Flour, 12-16 h at 21 C", (12, 16), 120),
        ("rye sour, King Arthur Flour, 12-16 h", (12, 16), 120),
        ("basic sour of three, Hamelman, Bread, 2004, 15-24 h", (15, 24), 270),
    ],
)
def test_a_preferment_overnight(source: str, hours: tuple[int, int], slack: int) -> None:
    """Mixed so that the middle of its range ends as the dough is mixed; half its range is how late it may be set."""
    low, high = hours
    preferment = stage("preferment", [weighed(FLOUR, 1000)], [step("ripen", low * 60, high * 60)])
    dough = stage("dough", [weighed("preferment", 1000), weighed(FLOUR, 2000)], [step("mix", 8)])
    made = batch(preferment, dough)
    ready = DAY + timedelta(days=1, hours=5, minutes=8)
    found = card_of(by_hand(made, ALL_TOLD), When(ready, True))
    ripen, mix = found.rows
    assert mix.start == DAY + timedelta(days=1, hours=5), source
    assert ripen.start == mix.start - timedelta(hours=low + high) / 2
    assert (ripen.slack, ripen.moves) == (slack, "dough")
    assert mix.stands_until == ripen.start + timedelta(hours=high)
