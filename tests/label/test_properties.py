"""What must hold of every list, panel and allergen, whatever is made."""

from collections.abc import Iterator
from fractions import Fraction
from pathlib import Path

from hypothesis import given, strategies as st
from works import bakery_of, work_in

from manchet.account.mixture import Content, Mixture, held_alone, put_together
from manchet.account.piece import SoldPiece, sold_pieces
from manchet.batch.order import Order
from manchet.batch.work import Work
from manchet.label.allergens import AllergenAnswer, all_findings, contains, not_known
from manchet.label.entry_bounds import bounds_of, energy_of
from manchet.label.ingredients import ingredient_list
from manchet.label.markets import BRITAIN, EU, US
from manchet.label.nutrition import Panel, panel_of
from manchet.larder.ingredient import Ingredient
from manchet.larder.stock import built_in_entries
from manchet.workspace.bakery import Bakery
from manchet.workspace.selection import selections

ROOT = Path(__file__).parents[2]
MARKETS = (EU, BRITAIN, US)


def demo() -> Bakery:
    (selection,) = selections([str(ROOT / "recipes")])
    return selection.bakery.read(None)


def breads() -> Iterator[Work]:
    bakery = demo()
    yield from (work_in(bakery, formula) for formula in bakery.formulas)


def said(piece: SoldPiece) -> tuple[object, ...]:
    """All that a label would say of a food."""
    lists = tuple(ingredient_list(piece, market).text for market in MARKETS)
    panels = tuple(
        tuple((line.name, line.text, line.span) for line in panel_of(piece, market).lines) for market in MARKETS
    )
    answers = tuple(
        (one.allergen, one.answer, tuple(c.ingredient.name for c in one.because)) for one in all_findings(piece)
    )
    return lists, panels, answers


def test_scaling_changes_no_list_panel_or_allergen() -> None:
    bakery = demo()
    for formula in bakery.formulas:
        if formula.preparation or not formula.makes or formula.makes[0].number is None:
            continue
        one = [said(piece) for piece in sold_pieces(work_in(bakery, formula))]
        if len(formula.makes) == 1:
            more = work_in(bakery, formula, Order(pieces=((formula.makes[0].number * 3, ""),)))
            assert [said(piece) for piece in sold_pieces(more)] == one, formula.name


def test_the_lines_of_a_list_weigh_what_the_food_weighs() -> None:
    for work in breads():
        for piece in sold_pieces(work):
            found = ingredient_list(piece, EU)
            lines = sum(line.grams for line in found.lines if not line.at_most)
            if piece.finished is not None and any(line.is_water for line in found.lines):
                assert lines == piece.finished, work.formula.name
            dry = sum(c.grams for c in piece.mixture.holds.values() if c.ingredient.class_ != "water")
            assert sum(line.grams for line in found.lines if not line.is_water and not line.at_most) == dry


BUN = """\
formula Bun
  kind rolls
  makes 10 buns at 80 g dough
  bake loss 11%

  overall
    white flour          100%
    milk                  55%
    salt                   2%
    fresh yeast            2%

  dough
    everything else
    mix slow 8 min to 25 C
    divide
    shape round
    {wash}
    bake 15 min at 220 C
    cool 1 h

preparation gloss
  eggs                   500 g
  milk                   100 g
  salt                     2 g
  whisk 2 min
  good for 1 d at 4 C
"""


def bun(wash: str, house: str = "") -> SoldPiece:
    bakery = bakery_of(house + BUN.format(wash=wash))
    formula = bakery.formula("Bun")
    assert formula is not None, bakery.diagnostics
    return sold_pieces(work_in(bakery, formula))[0]


def test_a_preparation_written_out_by_hand_says_the_same() -> None:
    by_name = bun("brush with gloss 6.02 g each")
    by_hand = bun("brush with eggs 5 g each\n    brush with milk 1 g each\n    brush with salt 0.02 g each")
    assert said(by_name) == said(by_hand)


def test_repeating_the_built_in_entry_changes_nothing() -> None:
    house = """
larder House
  milk
    class         dairy
    per 100 g
      water         {water} g
      fat           {fat} g
    allergens     milk

"""
    milk = bakery_of("").larder.ingredient("milk")
    assert milk is not None
    figures = {name: f"{float(milk.composition[name]):.4f}" for name in ("water", "fat")}
    assert said(bun("press")) == said(bun("press", house.format(**figures)))


ENTRIES = [entry for entry in built_in_entries() if isinstance(entry, Ingredient) and not entry.made_of]


def food(contents: list[tuple[Ingredient, int]]) -> SoldPiece:
    mixture = put_together(held_alone(entry, Fraction(grams)) for entry, grams in contents)
    return SoldPiece("", Fraction(1), mixture, True)


def widths(panel: Panel) -> dict[str, Fraction]:
    return {line.name: line.span.width for line in panel.lines}


some = st.lists(st.tuples(st.sampled_from(ENTRIES), st.integers(1, 500)), min_size=1, max_size=6)
NOBODY_KNOWS = Ingredient(name="nobody knows what", class_="other")


@given(some, st.integers(1, 300))
def test_adding_an_unknown_never_narrows_a_span(contents: list[tuple[Ingredient, int]], grams: int) -> None:
    before = food(contents)
    after = food([*contents, (NOBODY_KNOWS, grams)])
    # Of all of the food, not of 100 g: there the unknown only makes more of it.
    a, b = widths(panel_of(before, EU)), widths(panel_of(after, EU))
    for name in a:
        assert b[name] * after.mixture.weight >= a[name] * before.mixture.weight, name


@given(some)
def test_removing_an_ingredient_never_adds_an_allergen(contents: list[tuple[Ingredient, int]]) -> None:
    whole = food(contents)
    for n in range(len(contents)):
        less = food(contents[:n] + contents[n + 1 :])
        if not less.mixture.weight:
            continue
        for market in MARKETS:
            # What sulphites are declared by is a share of the food, which is smaller without the rest of it.
            assert set(contains(less, market)) - {"sulphites", "sulfites"} <= set(contains(whole, market))


@given(some)
def test_every_bound_lies_within_a_hundred_grams(contents: list[tuple[Ingredient, int]]) -> None:
    for entry, _ in contents:
        bounds = bounds_of(entry)
        for name, span in bounds.held.items():
            assert 0 <= span.low <= span.high <= 105, (entry.name, name)
        energy = energy_of(entry, EU, "kj")
        assert 0 <= energy.low <= energy.high <= 3800, entry.name


def test_a_known_entry_is_within_what_would_be_said_of_it_unknown() -> None:
    """Take one figure away from each well-known entry: what bounds it then holds the figure."""
    for entry in ENTRIES:
        if "fibre" not in entry.composition or "fat" not in entry.composition:
            continue
        for name in ("fat", "fibre", "sugars"):
            figure = entry.composition.get(name)
            if figure is None:
                continue
            without = {key: value for key, value in entry.composition.items() if key != name}
            span = bounds_of(entry._replace(composition=without)).held[name]
            assert span.low <= figure + 1 and figure <= span.high + 1, (entry.name, name, float(figure), span)


def test_no_food_of_the_demo_is_without_an_answer() -> None:
    for work in breads():
        for piece in sold_pieces(work):
            findings = all_findings(piece)
            assert {one.answer for one in findings} <= set(AllergenAnswer)
            unknown = {one.name for one in not_known(piece)}
            named = {
                c.ingredient.name for one in findings for c in one.because if one.answer is AllergenAnswer.NOT_KNOWN
            }
            assert unknown == named


def test_what_was_drained_may_have_taken_sugar_with_it() -> None:
    sugar = next(entry for entry in ENTRIES if entry.name == "sugar")
    water = next(entry for entry in ENTRIES if entry.name == "water")
    pot = put_together([held_alone(sugar, Fraction(10)), held_alone(water, Fraction(90))])
    drained = pot.drained(Fraction(45), Fraction(90))
    line = panel_of(SoldPiece("", Fraction(1), drained, True), EU).line("sugars")
    # Half of the water took at most half of the sugar.
    assert line.span.low * drained.weight / 100 == Fraction("4.999")
    assert line.span.high * drained.weight / 100 == Fraction("9.998")
    assert not line.is_known
    assert "sugar" in line.why_not


def test_alcohol_goes_with_the_heat_nobody_knows_how_much() -> None:
    rum = Ingredient(name="rum", class_="liquid", composition={"water": Fraction(60), "alcohol": Fraction(40)})
    cold = Mixture({("rum", ()): Content(rum, Fraction(100))})
    heated = cold.through_heat()
    line = panel_of(SoldPiece("", Fraction(1), heated, True), EU).line("energy kj")
    assert (line.span.low, line.span.high) == (0, 40 * 29)
    assert panel_of(SoldPiece("", Fraction(1), cold, True), EU).line("energy kj").span.low == 40 * 29
