"""Several mixes and loads at one oven: never more in it than it holds, and each mix begun so that it comes when there is room."""

from __future__ import annotations

from datetime import datetime
from fractions import Fraction
from pathlib import Path

from hypothesis import given, strategies as st
from loaves import LOAVES_AND_ROLLS, PLAIN_LOAF, vary
from run_length import FEW_EXAMPLES
from works import bakery_of, first_work, work_in

from manchet.batch.order import Order
from manchet.batch.work import Work
from manchet.figures.oven.curve import oven_of
from manchet.formula.nouns import same_noun
from manchet.timing.card.card import card_of
from manchet.timing.card.values import Card, CardRow
from manchet.timing.when import When

SUNDAY = When(datetime(2026, 11, 29, 6, 0), False)
RECIPES = Path(__file__).parents[2] / "recipes"
HOUSE = """\
kitchen House
  mixer spiral
    takes 1-45 kg dough
  oven mother
    holds {holds}
    recovers 4 min
"""


def of(text: str, *pieces: tuple[int, str]) -> Work:
    return first_work(text, Order(pieces=tuple((Fraction(number), noun) for number, noun in pieces)))


def baked(card: Card) -> list[CardRow]:
    """The rows at which a load goes in."""
    rows = [row for row in card.rows if row.job == "step" and row.step is not None and row.step.verb == "bake"]
    begun: set[tuple[str, int, int]] = set()
    found = []
    for row in rows:
        load = (row.branch, row.mix, row.load)
        if load not in begun:
            found.append(row)
        begun.add(load)
    return found


def fullest(work: Work, card: Card) -> Fraction:
    """How full an oven gets, as a share of what it holds, counted from the card alone."""
    spans: list[tuple[datetime, datetime, Fraction]] = []
    for row in card.rows:
        if row.step is None or row.job != "step" or row.step.at_a_time:
            continue
        oven = oven_of(row.step, work.kitchen)
        nouns = [piece.noun for piece in work.batch.pieces if not row.branch or same_noun(piece.noun, row.branch)]
        held = [number for noun in nouns for number, of in (oven.holds if oven else ()) if same_noun(noun, of)]
        if oven is not None and held and row.pieces:
            spans.append((row.start, row.end, row.pieces / min(held)))
    return max(
        (sum(share for begin, end, share in spans if begin <= at < end) for at, _, _ in spans), default=Fraction(0)
    )


def mixed(number: int, holds: str = "24 loaves", grams: int = 900, **otherwise: str) -> tuple[Work, Card]:
    text = vary(PLAIN_LOAF, makes=f"{number} loaves at {grams} g dough", **otherwise) + HOUSE.format(holds=holds)
    work = first_work(text)
    return work, card_of(work, SUNDAY)


OVERNIGHT = {"prove": "covered 10-14 h at 4 C\n      may wait 4 h"}


def test_two_hundred_loaves_in_an_oven_for_24_are_nine_loads() -> None:
    """They come out of the cold, where what is left of a mix may stand for the next: 200 / 24, and not 3 for each mix."""
    work, card = mixed(200, **OVERNIGHT)
    assert card.mixes == 4
    loads = baked(card)
    assert [int(row.pieces) for row in loads] == [24] * 8 + [8]
    assert [(row.load, row.loads) for row in loads] == [(at, 9) for at in range(1, 10)]
    assert fullest(work, card) == 1


def test_every_load_comes_out_before_the_next_goes_in() -> None:
    _, card = mixed(200, **OVERNIGHT)
    out = [row.start for row in card.rows if row.job == "take out of oven"]
    into = [row.start for row in baked(card)]
    assert len(out) == len(into) == 9
    assert [(later - one).total_seconds() / 60 for one, later in zip(out, into[1:], strict=False)] == [6] * 8, (
        "2 min to take out, 4 to come back"
    )


def test_a_mix_is_begun_when_the_oven_will_have_room_for_it() -> None:
    """Mixed 8 min apart all would be proved within the hour; a load has the oven for 44 min."""
    _, card = mixed(96, grams=1800)
    proved = [row.end for row in card.rows if row.step is not None and row.step.verb == "prove"]
    loads = baked(card)
    assert card.mixes == len(loads) == 4
    waited = [(load.start - end).total_seconds() / 60 for load, end in zip(loads, proved, strict=True)]
    assert waited == [0, 0, 0, 0]


def test_a_load_does_not_wait_for_a_mix_longer_than_its_pieces_may_stand() -> None:
    """Two mixes of 15, 8 min apart: a proof of exactly an hour sets no time to stand; 55 to 80 min do."""
    alone = [int(row.pieces) for row in baked(mixed(30, "60 loaves", 2000)[1])]
    assert alone == [15, 15]
    together = mixed(30, "60 loaves", 2000, prove="covered 55-80 min at 27 C")
    assert [int(row.pieces) for row in baked(together[1])] == [30]


def test_each_load_is_scored_just_before_it_goes_in() -> None:
    _, card = mixed(48, bake="40 min at 230 C", prove='covered 1 h at 27 C\n    score "a cross" 10 s each')
    scored = [row for row in card.rows if row.step is not None and row.step.verb == "score"]
    assert [(int(row.pieces), row.load) for row in scored] == [(24, 1), (24, 2)]
    assert [row.end <= load.start for row, load in zip(scored, baked(card), strict=True)] == [True, True]


def test_an_oven_that_needs_no_time_to_come_back_is_emptied_all_the_same() -> None:
    text = vary(PLAIN_LOAF, makes="48 loaves at 900 g dough") + HOUSE.format(holds="24 loaves").replace(
        "recovers 4 min", "hottest 280 C"
    )
    card = card_of(first_work(text), SUNDAY)
    out = [row.end for row in card.rows if row.job == "take out of oven"]
    assert len(out) == 2 and out[0] == baked(card)[1].start


def test_two_sorts_of_several_mixes_wait_for_one_another() -> None:
    work = of(LOAVES_AND_ROLLS + HOUSE.format(holds="24 loaves, or 60 rolls"), (80, "loaves"), (200, "rolls"))
    card = card_of(work, SUNDAY)
    assert card.mixes > 1 and {row.branch for row in baked(card)} == {"loaves", "rolls"}
    assert fullest(work, card) <= 1
    assert not [clash for clash in card.clashes if clash.what == "oven"]


@given(
    number=st.integers(1, 160),
    holds=st.integers(1, 40),
    grams=st.sampled_from((400, 900, 2400)),
    proof=st.sampled_from(("1 h", "50-90 min")),
)
@FEW_EXAMPLES
def test_no_order_fills_an_oven_over(number: int, holds: int, grams: int, proof: str) -> None:
    work, card = mixed(number, f"{holds} loaves", grams, prove=f"covered {proof} at 27 C")
    assert fullest(work, card) <= 1
    assert sum(row.pieces for row in baked(card)) == number
    assert [row.start for row in card.rows] == sorted(row.start for row in card.rows)


def test_no_bread_of_the_demo_fills_the_oven_over_at_many_times_its_size() -> None:
    bakery = bakery_of("\n".join(file.read_text(encoding="utf-8") for file in sorted(RECIPES.rglob("*.bake"))))
    tried = 0
    for formula in bakery.formulas:
        sorts = [(piece.number, piece.noun) for piece in work_in(bakery, formula).batch.pieces]
        if not sorts:
            continue
        work = work_in(bakery, formula, Order(pieces=tuple((number * 8, noun) for number, noun in sorts)))
        card = card_of(work, SUNDAY)
        tried += card.mixes > 1
        assert fullest(work, card) <= 1, formula.name
    assert tried >= 6
