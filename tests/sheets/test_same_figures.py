"""What two forms say of one thing in one work is one figure: weights, times, temperatures."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given, settings, strategies as st
from sheets.same_figures import METRIC, READY, differing_card_weights, differing_times, differing_weights, of_type
from weighing.test_tubs import text
from works import bakery_of, first_work, works

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.preparations_needed import preparations_needed, touching, weighed_beside
from manchet.batch.work import Work, work_of
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of

RECIPES = Path(__file__).parents[2] / "recipes"


def demo() -> tuple[Work, ...]:
    found = works(bakery_of("\n".join(file.read_text(encoding="utf-8") for file in sorted(RECIPES.rglob("*.bake")))))
    assert len(found) >= 20
    return found


def test_sheet_and_handout_of_the_demo_weigh_the_same() -> None:
    assert [line for work in demo() for line in differing_weights(work)] == []


@given(
    grams=st.integers(400, 1200), share=st.integers(10, 60), reads=st.sampled_from((1, 2, 5)), pieces=st.integers(1, 40)
)
@settings(max_examples=25, deadline=None)
def test_sheet_and_handout_of_any_amount_weigh_the_same(grams: int, share: int, reads: int, pieces: int) -> None:
    work = first_work(text(grams, share, reads), Order(pieces=((Fraction(pieces), "loaves"),)))
    assert differing_weights(work) == []


@pytest.mark.parametrize("grams", [901, 905, 909, 913])
def test_the_poolish_that_weighed_a_gram_more_at_home(grams: int) -> None:
    assert differing_weights(first_work(text(grams), AS_WRITTEN)) == []


def test_the_card_splits_off_the_ice_that_the_sheet_splits_off() -> None:
    """One water, 4,410 g with the ice: never whole on the card and in two on the sheet."""
    iced = 0
    for work in demo():
        if work.formula.preparation:
            continue
        rows = [row for block in prep_sheet(work, Issue(), METRIC).blocks for row in block.rows]
        said = {(row.name, row.weight, row.unit): row.ice for row in rows if row.ice}
        for one in of_type(timing_card(work, READY, Issue(), METRIC), "CardWeight"):
            ice = said.get((one.name, one.weight, one.unit))
            if ice is not None:
                iced += 1
                assert one.beside.endswith(f"+ {ice} ice")
        wholes = {(row.name, row.whole) for row in rows if row.ice}
        shown = {
            (one.name, f"{one.weight}\u00a0{one.unit}")
            for one in of_type(timing_card(work, READY, Issue(), METRIC), "CardWeight")
        }
        assert not wholes & shown, work.formula.name
    assert iced


def test_what_touches_the_bread_is_totalled_as_the_preparations_have_it() -> None:
    """What the sheets of a run ask for is what the page of preparations is made for, and nothing is left out."""
    some = 0
    for work in demo():
        if work.formula.preparation:
            continue
        view = prep_sheet(work, Issue(), METRIC)
        m = Measures(METRIC, words_of(METRIC.words))
        needed = preparations_needed(work.batch)
        assert [one.weight for one in view.ahead] == [m.mass(grams) if grams else "" for grams in needed.values()]
        assert {one.name: one.weight for one in view.beside} == {
            name: m.mass(grams) for name, grams in weighed_beside(work.batch).items()
        }
        total = sum(needed.values()) + sum(weighed_beside(work.batch).values())
        assert total >= sum(grams for _, grams in touching(work.batch))
        some += len(view.beside)
    assert some >= 5


@pytest.mark.parametrize("house", [METRIC, House("Letter", "US", "F", "American")], ids=["metric", "US"])
def test_sheet_and_card_of_the_demo_say_the_same_times_and_temperatures(house: House) -> None:
    """Every time and temperature of a step that the card names stands in the steps of the sheet too."""
    looked = [differing_times(work, house) for work in demo()]
    assert [line for found, _ in looked for line in found] == []
    assert sum(number for _, number in looked) >= 200


@pytest.mark.parametrize("house", [METRIC, House("Letter", "US", "F", "American")], ids=["metric", "US"])
@pytest.mark.parametrize("pieces", [1, 12])
def test_sheet_and_card_of_the_demo_weigh_the_same(house: House, pieces: int) -> None:
    """Every weight on the card, into a bowl or at a step, is a weight of the sheet, by name, figure and unit."""
    looked = []
    for written in demo():
        order = Order(pieces=tuple((piece.number * pieces, piece.noun) for piece in written.batch.pieces))
        work = work_of(written.formula, order, written.kitchen, written.larder).value or written
        looked.append(differing_card_weights(work, house))
    assert [line for found, _ in looked for line in found] == []
    assert sum(number for _, number in looked) >= 150


def test_what_goes_back_to_the_pot_is_one_figure_on_sheet_and_card() -> None:
    told = 0
    for work in demo():
        sheet, card = prep_sheet(work, Issue(), METRIC), timing_card(work, READY, Issue(), METRIC)
        back = {handed.weight for block in sheet.blocks if block.tub for handed in block.tub.back}
        told += len(back)
        assert all(any(amount in line for line in card.before) for amount in back), (
            work.formula.name,
            back,
            card.before,
        )
    assert told >= 4
