"""What a batch costs, worked out by hand beside it; the rules of W-numbers are those of the trade: paid by what is weighed."""

from __future__ import annotations

from fractions import Fraction

from works import bakery_of, first_work, reports_of

from manchet.costing.cost import Cost, cost_of

LARDER = """
larder House
  white flour
    price         20 EUR for 25 kg on 2026-09-14 from Mill
    price         10 EUR for 25 kg on 2025-09-14 from Mill
  salt
    price         10 EUR for 25 kg
  water
    price         2 EUR for 1000 l
  butter
    price         8 EUR for 1 kg
  ripe wheat starter
    class         culture
    made of
      white flour        100%
      water              100%
"""

BREAD = """
formula Loaf
  kind hearth loaf
  makes 10 loaves at 1000 g dough
  dough loss 2%
  bake loss 12%
  sells at 2.20 EUR each, tax 10% in it

  dough
    white flour         6000 g
    water               4080 g
    salt                 120 g
    mix slow 5 min
    ferment 2 h at 25 C
    divide
    shape round
    brush with butter 5 g each
    prove 1 h at 25 C
    bake 40 min at 230 C
    cool 2 h
"""

KITCHEN = """
kitchen House
  work          30 EUR an hour
  shape         36 s each
  oven deck
    holds       20 loaves
    costs       6 EUR a firing
"""


def cost(text: str) -> Cost:
    found = cost_of(first_work(text)).value
    assert found is not None
    return found


def test_each_ingredient_by_what_is_weighed_and_the_newest_price() -> None:
    """The file weighs 6,000 g of flour, at 0.80 EUR a kg 4.80; 120 g of salt at 0.40; 4,080 g of water at 2 EUR for 1000 l."""
    found = cost(LARDER + BREAD)
    money = {line.ingredient.name: line.money for line in found.lines}
    assert money["white flour"] == Fraction("4.80")
    assert money["salt"] == Fraction("0.048")
    assert money["butter"] == 50 * Fraction(8, 1000)
    assert money["water"] == Fraction("0.00816")
    assert found.ingredients == sum(money.values(), Fraction(0)) == sum(share.money for share in found.by_stage)
    assert sum(each.money * each.piece.number for each in found.pieces) == found.ingredients


def test_what_stays_in_the_bowl_is_charged_and_told() -> None:
    found = cost(LARDER + BREAD)
    (lost,) = found.spare
    assert lost.grams == 10200 * Fraction(2, 100)
    in_dough = found.ingredients - 50 * Fraction(8, 1000)
    assert lost.money == in_dough * Fraction(2, 100)


def test_hands_only_where_they_are_given_and_an_oven_by_the_firing() -> None:
    bare = cost(LARDER + BREAD)
    assert bare.hands.money is None and not bare.fires
    assert bare.work == 0
    given = cost(LARDER + BREAD + KITCHEN)
    assert given.hands.seconds == 360
    assert given.hands.money == 3
    assert "shape" not in given.hands.untimed and "brush" in given.hands.untimed
    assert [fire.money for fire in given.fires] == [6]
    assert given.work == 9


def test_a_missing_price_withholds_the_total_and_nothing_else() -> None:
    found = cost(LARDER.replace("    price         8 EUR for 1 kg\n", "    density       0.9 kg/l\n") + BREAD)
    assert found.without == ("butter",)
    assert not found.is_whole and found.ingredients > 0
    assert found.lines[-1].money is None


def test_nothing_with_a_price_is_no_cost() -> None:
    assert cost_of(first_work(BREAD)).value is None


def test_several_currencies_are_refused() -> None:
    outcome = cost_of(first_work(LARDER.replace("8 EUR for 1 kg", "8 GBP for 1 kg") + BREAD))
    assert outcome.value is None
    (report,) = outcome.diagnostics
    assert report.name == "currencies-mixed" and "GBP" in report.message and "EUR" in report.message
    assert report.message.startswith("no cost sheet is made of ")


def test_a_price_in_another_currency_is_told_by_check_at_its_line() -> None:
    text = LARDER + BREAD.replace("2.20 EUR each", "2.20 USD each")
    (found,) = (one for one in reports_of(text) if one.name == "currencies-mixed")
    assert text.splitlines()[found.place.line - 1] == "  sells at 2.20 USD each, tax 10% in it"
    assert "what it sells at in USD" in found.message
    same = text.replace("USD", "EUR")
    assert not [one for one in reports_of(same) if one.name == "currencies-mixed"]


LEVAIN = """
formula Sour loaf
  kind hearth loaf
  makes 10 loaves at 1000 g dough
  bake loss 12%

  overall
    white flour          100%
    water                 70%
    salt                   2%

  levain with 20% of all flour
    white flour          100%
    water                100%
    ripe wheat starter    50%
    ripen covered 6 h at 26 C
    keep enough as ripe wheat starter

  dough
    levain
    everything else
    mix slow 5 min
    ferment 2 h at 25 C
    divide
    shape round
    prove 1 h at 25 C
    bake 40 min at 230 C
    cool 2 h
"""


def test_starter_from_the_pot_is_free_and_what_is_mixed_for_the_pot_is_paid() -> None:
    """The levain is mixed larger by just what goes back to the pot, so flour and water of both are paid once."""
    found = cost(LARDER + LEVAIN)
    work = first_work(LARDER + LEVAIN)
    levain = work.batch.stages[0]
    pot = next(
        line.grams
        for line in levain.weighed
        if line.portion.ingredient is not None and line.portion.ingredient.class_ == "culture"
    )
    assert found.from_pot == pot
    assert (
        sum((line.grams for line in found.lines), Fraction(0))
        == sum(
            (line.grams for made in work.batch.stages for line in made.weighed if line.portion.ingredient is not None),
            Fraction(0),
        )
        - pot
    )
    kept = next(share for share in found.spare if share.name == "ripe wheat starter")
    assert kept.grams == pot and kept.money > 0


def test_what_is_trimmed_off_is_paid() -> None:
    text = (LARDER + BREAD).replace(
        "    price         8 EUR for 1 kg\n", "    price         8 EUR for 1 kg\n    loses         20% in trimming\n"
    )
    money = {line.ingredient.name: line.money for line in cost(text).lines}
    assert money["butter"] == 50 * Fraction(8, 1000) / Fraction("0.8")


def test_a_bath_is_paid_whole_and_what_is_left_is_told() -> None:
    """10 loaves take up 50 g of a bath that is made by the kilogram: all of it is paid, and 950 g of it are left over."""
    bath = """
preparation sweet bath
  butter                100 g
  water                1900 g
  heat 5 min to 60 C
  good for 1 d at 4 C
"""
    text = LARDER + BREAD.replace("brush with butter", "dip in sweet bath") + bath
    found = cost(text)
    left = next(share for share in found.spare if share.name == "sweet bath")
    assert left.grams == 950
    whole = next(share for share in found.by_stage if share.name == "sweet bath")
    assert whole.grams == 1000
    assert left.money == whole.money * Fraction(95, 100)
    assert sum(each.money * each.piece.number for each in found.pieces) == found.ingredients


def test_the_demo_is_costed_in_full_or_says_what_it_is_without() -> None:
    bakery = bakery_of(LARDER + BREAD)
    assert bakery.formulas[0].sale is not None
    assert bakery.formulas[0].sale.sells_at is not None
    assert bakery.formulas[0].sale.sells_at.tax == Fraction(1, 10)
