"""Nothing appears and nothing is lost: what is weighed is what comes out, stage by stage and in all."""

from __future__ import annotations

from fractions import Fraction

from benchmarks.generate import CULTURE, in_overall, recipe
from hypothesis import given, strategies as st
from reference.reading import bakery_of

from manchet.batch.batching import batch_of
from manchet.batch.model import Batch
from manchet.batch.pieces import PieceWeights
from manchet.formula.model import Booking
from manchet.kitchen.model import PLAIN

RANDOMS = st.randoms(use_true_random=False)
NOTHING = Fraction(0)


def batch_with(random: object, keep: int = 0) -> Batch:
    """A batch as its file asks for it; with `keep`, that many grams of the levain go back to the pot on top."""
    text = in_overall(recipe(random, 1))  # type: ignore[arg-type]
    if keep:
        levain, rest = text.split("\n\n  scald", 1)
        text = f"{levain}\n    keep {keep} g as {CULTURE}\n\n  scald{rest}"
    bakery = bakery_of(text)
    (formula,) = bakery.formulas
    flour = PieceWeights(formula).written_flour().value
    assert isinstance(flour, Fraction)
    return batch_of(formula, flour, PLAIN)


@given(random=RANDOMS, keep=st.sampled_from((0, 60, 1000)))
def test_every_stage_closes(random: object, keep: int) -> None:
    for stage in batch_with(random, keep).stages:
        assert stage.into == sum((w.grams for w in stage.weighed), NOTHING)
        leaves = (grams for way in (stage.used, stage.kept) for _, grams in way)
        assert stage.into - stage.lost + stage.topped_up == (
            stage.out + sum((grams for _, grams in stage.returned), NOTHING)
        )
        if stage.used:
            assert stage.out == sum(leaves, NOTHING) + stage.left


@given(random=RANDOMS, keep=st.sampled_from((0, 60, 1000)))
def test_what_is_weighed_comes_out(random: object, keep: int) -> None:
    batch = batch_with(random, keep)
    raw = sum((w.grams for stage in batch.stages for w in stage.weighed if not w.portion.stage), NOTHING)
    lost = sum((stage.lost - stage.topped_up for stage in batch.stages), NOTHING)
    back = sum((grams for stage in batch.stages for _, grams in (*stage.kept, *stage.returned)), NOTHING)
    assert raw == batch.dough + lost + back
    if keep:
        assert sum((grams for stage in batch.stages for _, grams in stage.kept), NOTHING) == keep


@given(random=RANDOMS)
def test_stages_add_up_to_overall(random: object) -> None:
    batch = batch_with(random)
    there = {line.name: line.share * batch.flour for line in batch.formula.overall}
    taken: dict[str, Fraction] = {}
    for stage in batch.stages:
        for weighed in stage.weighed:
            portion = weighed.portion
            if portion.stage or portion.booking is Booking.RETURNED:
                continue
            if portion.booking is Booking.COUNTED:  # half flour and half water, by the larder
                parts = ((portion.counted_as, weighed.grams / 2), ("water", weighed.grams / 2))
            else:
                parts = ((portion.name, weighed.grams),)
            for name, grams in parts:
                taken[name] = taken.get(name, NOTHING) + grams
    assert taken == there


@given(random=RANDOMS)
def test_overall_flours_are_a_hundred(random: object) -> None:
    formula = batch_with(random).formula
    assert sum((line.share for line in formula.overall if line.is_flour), NOTHING) == 1
