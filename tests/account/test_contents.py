"""What is in a piece: every gram that is weighed comes out again, is lost as it is, or is water that has gone."""

from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path

import pytest
from every import every
from works import bakery_of, first_work, work_in

from manchet.account.mixture import by_ingredient
from manchet.account.piece import makings_of, sold_pieces
from manchet.batch.order import Order
from manchet.batch.work import Work
from manchet.figures.derived import figures_of
from manchet.workspace.selection import selections

ROOT = Path(__file__).parents[2]
QUIET = sorted((ROOT / "tests/corpus/quiet").glob("*.bake"))


def inside(work: Work, at: int = 0) -> dict[str, Fraction]:
    return {name: held.grams for name, held in by_ingredient(sold_pieces(work)[at].mixture).items()}


def demo() -> Iterator[Work]:
    (selection,) = selections([str(ROOT / "recipes")])
    bakery = selection.bakery.read(None)
    yield from (work_in(bakery, formula) for formula in bakery.formulas)


def agrees_with_the_batch(work: Work) -> None:
    """The weights that the batch has of each stage, and of a finished piece."""
    for stage in work.formula.stages:
        assert makings_of(work).stage(stage).weight == stage.out_share, stage.name
    for piece, sold in zip(work.batch.pieces, sold_pieces(work), strict=False):
        assert piece.baked_grams in (None, sold.finished), piece.noun


def test_the_demo_weighs_what_its_batches_weigh() -> None:
    works = list(demo())
    assert len(works) > 20
    for work in works:
        agrees_with_the_batch(work)


@every(QUIET, at_least=45)
def test_every_sound_formula_does(case: Path) -> None:
    bakery = bakery_of(case.read_text(encoding="utf-8"))
    for formula in bakery.formulas:
        agrees_with_the_batch(work_in(bakery, formula))


ROLLS = """\
formula Rolls
  kind rolls
  makes 20 rolls at 100 g dough
  bake loss 10%

  overall
    white flour          100%
    water                 60%
    salt                   2%
    fresh yeast            2%
    {more}

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 1 h at 25 C
    divide
    shape round
    {bench}
    bake 18 min at 230 C
    cool 1 h
"""


def rolls(bench: str = "", more: str = "", house: str = "") -> Work:
    lines = (line for line in ROLLS.format(bench=bench, more=more).split("\n") if line.strip() or not line)
    bakery = bakery_of("\n".join(lines) + house)
    formula = bakery.formula("Rolls")
    assert formula is not None, bakery.diagnostics
    return work_in(bakery, formula)


def test_a_plain_roll_by_hand() -> None:
    # 100 g of 164 parts; 10 % of it goes off as water.
    work = rolls()
    assert inside(work) == {
        "white flour": Fraction(10000, 164),
        "water": Fraction(6000, 164),
        "salt": Fraction(200, 164),
        "fresh yeast": Fraction(200, 164),
    }
    assert sold_pieces(work)[0].mixture.gone == 10
    assert sold_pieces(work)[0].finished == 90


def test_a_starter_is_its_own_flour_and_water() -> None:
    work = rolls(more="ripe rye starter      10%")
    flour = inside(work)
    assert flour["medium rye flour"] / flour["white flour"] == Fraction(5, 100)
    ways = {
        component.name
        for (name, way), _ in sold_pieces(work)[0].mixture.holds.items()
        for component in way
        if name == "medium rye flour"
    }
    assert ways == {"ripe rye starter"}


WASH = """
preparation gloss
  eggs                   500 g
  milk                   100 g
  whisk 2 min
  good for 1 d at 4 C
"""


def test_a_wash_is_what_it_is_made_of() -> None:
    work = rolls("brush with gloss 6 g each", house=WASH)
    assert inside(work)["eggs"] == 5
    assert inside(work)["milk"] == 1
    assert sold_pieces(work)[0].finished == Fraction(106) * 9 / 10


def test_a_bath_gives_what_is_picked_up() -> None:
    bath = "\npreparation bath\n  water 4800 g\n  lye 200 g\n  stir 3 min\n  good for 1 d at 18 C\n"
    work = rolls("dip in bath 5 g each", house=bath)
    assert inside(work)["lye"] == Fraction(2, 10)


def test_what_a_kettle_gives_nobody_weighed_is_named() -> None:
    bath = "\npreparation malt bath\n  water 4800 g\n  malt syrup 200 g\n  good for 1 d at 18 C\n"
    work = rolls("boil 30 s a side in malt bath, 12 at a time", house=bath)
    assert "malt syrup" not in inside(work)
    (taken,) = sold_pieces(work)[0].mixture.taken_up
    assert by_ingredient(taken.mixture)["malt syrup"].grams == Fraction(4, 100)


def test_an_own_stage_used_as_a_topping_is_looked_into() -> None:
    assert "hazelnuts" in inside(rolls("sprinkle with hazelnuts 3 g each"))


SOAKED = """\
preparation pears
  dried pears           1000 g
  water                 3000 g
  soak covered 8 h at 4 C
  {step}
  good for 1 d at 4 C
"""


@pytest.mark.parametrize(
    ("step", "weight", "pears", "gone"),
    [
        ("drain, loses 25%", 3000, 1000, 1000),
        ("pour off 1000 g", 3000, 1000, 1000),
        ("simmer 20 min, loses 25%", 3000, 1000, 1000),
        ("strain, loses 25%", 3000, 750, 0),
    ],
)
def test_water_goes_or_the_stuff_as_it_is(step: str, weight: int, pears: int, gone: int) -> None:
    work = first_work(SOAKED.format(step=step))
    (whole,) = sold_pieces(work)
    assert whole.finished == weight
    assert inside(work)["dried pears"] == pears
    assert whole.mixture.gone == gone
    leached = by_ingredient(whole.mixture)["dried pears"].leached
    assert bool(leached) == ("drain" in step or "pour" in step)


def test_what_is_peeled_goes_alone() -> None:
    text = SOAKED.replace("soak covered 8 h at 4 C", "peel, loses 20%").format(step="stir 1 min")
    assert inside(first_work(text)) == {"dried pears": 800, "water": 3000}


def test_scaling_changes_no_piece() -> None:
    (selection,) = selections([str(ROOT / "recipes")])
    bakery = selection.bakery.read(None)
    for name in ("Ebb rye", "Copper wreath", "Hawser knots"):
        formula = bakery.formula(name)
        assert formula is not None
        one = inside(work_in(bakery, formula))
        for number in (1, 3, 250):
            assert inside(work_in(bakery, formula, Order(pieces=((Fraction(number), ""),)))) == one


def test_branches_of_one_dough_are_two_products() -> None:
    (selection,) = selections([str(ROOT / "recipes")])
    bakery = selection.bakery.read(None)
    formula = bakery.formula("Regatta plait")
    assert formula is not None
    plait, bun = (set(by_ingredient(piece.mixture)) for piece in sold_pieces(work_in(bakery, formula)))
    assert bun - plait
    assert plait - bun or bun > plait


def test_without_a_loss_nobody_knows_the_finished_weight() -> None:
    bakery = bakery_of(ROLLS.replace("  bake loss 10%\n", "").replace("    {more}\n", "").replace("    {bench}\n", ""))
    (piece,) = sold_pieces(work_in(bakery, bakery.formulas[0]))
    assert piece.finished is None


def test_it_can_be_traced() -> None:
    figures = figures_of(rolls(more="ripe rye starter      10%"))
    figure = figures.contents["in one roll: medium rye flour"]
    assert [one.name for one in figure.inputs] == ["medium rye flour by ripe rye starter"]
    assert figure.value == sum(one.value for one in figure.inputs)
