"""A piece that is rolled flat takes the floor its dough has at its thickness."""

from __future__ import annotations

from fractions import Fraction

from every import every
from works import first_work

from manchet.batch.work import Work
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.floor import across, across_flat, footprint, load_of, thickness

TEXT = """\
formula Round
  kind flatbread
  makes 90 rounds at 260 g dough
  overall
    white flour 100%
    water 60%
    salt 2%
  dough
    everything else
    mix slow 5 min
    divide
    shape round
    rest 20 min
    {steps}
    bake 4 min at 300 C
    cool 10 min

kitchen House
  oven mother
    floor 200 x 160 cm
    door 50 cm
"""


def rounds_after(*steps: str) -> Work:
    return first_work(TEXT.format(steps="\n    ".join(steps)))


@every(
    [
        (("roll out to 3 mm",), Fraction(3)),
        (("roll out to 3-5 mm",), Fraction(4)),
        (("press to 10 mm",), Fraction(10)),
        (("shape flat",), Fraction(5)),
        (("roll out",), Fraction(5)),
        (("roll out to 3 mm", "shape flat"), Fraction(3)),
        (("shape flat", "shape round"), None),
        (("roll out to 8 mm", "fold in three"), None),
        (("roll out to 4 mm", "roll"), None),
        (("shape round",), None),
    ],
    at_least=10,
)
def test_how_thick(steps: tuple[str, ...], thick: Fraction | None) -> None:
    assert thickness(rounds_after(*steps).formula, "rounds") == thick


def test_a_round_of_260_grams_at_3_mm_is_32_cm_wide() -> None:
    """260 g at 1.1 kg/l are 236.4 ml; 3 mm thick that is a disc of 788 cm2."""
    assert across_flat(Fraction(260), Fraction(3)) == 316
    work = rounds_after("roll out to 3 mm")
    one = footprint(work, work.batch.pieces[0])
    assert one is not None and (one.wide, one.deep) == (316, 316)


def test_fewer_go_into_a_load_everywhere() -> None:
    """Six across and four deep, 336 mm each with the gap; balls, 127 mm wide, would be 143."""
    work = rounds_after("roll out to 3 mm")
    load = load_of(work, work.batch.pieces[0], work.kitchen.ovens[0])
    assert load is not None and len(load.lie) == 6 * 4
    (bake,) = bakes_of(work)
    assert bake.holds is not None and bake.holds.number == 24
    (other,) = bakes_of(rounds_after("shape round"))
    assert other.holds is not None and other.holds.number > 100


def test_a_thick_one_rises_as_wide_as_any() -> None:
    """Scones rolled out to 20 mm: what they are when baked counts."""
    work = rounds_after("roll out to 30 mm")
    one = footprint(work, work.batch.pieces[0])
    assert one is not None and one.wide == across(work.batch.pieces[0].grams) == 127
