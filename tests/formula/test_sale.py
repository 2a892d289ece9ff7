"""How a thing is sold is read as the head says it; what an old file says stays what it was."""

from __future__ import annotations

from fractions import Fraction

from every import every
from works import bakery_of, formula_of, reports_of

from manchet.larder.ingredient import Ingredient

LOAF = """formula Loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough
  makes 20 rolls at 90 g dough
{}  bake loss 12%

  overall
    white flour          100%
    water                 70%
    salt                   2%
    instant yeast          0.6%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    for the loaves
      shape round
      prove covered 60 min at 25 C
      bake 40 min at 230 C, steam
    for the rolls
{}      shape round
      prove covered 60 min at 25 C
      bake 20 min at 230 C, steam
    cool 2 h
"""


def test_a_head_says_it_all() -> None:
    head = """  sold loose
  sold prepacked at 700 g net
  called "Wheat bread"
  sells at 5.50 EUR each, tax 10% in it
  use by 2 d at 5 C
  store "cool"
  opened "soon"
  says how much of salt, water
  may contain egg because "one mixer"
  kept apart from sesame and milk because "own bench"
  label approved 2026-11-20 by Ada
"""
    sale = formula_of(LOAF.format(head, '      sold loose\n      called "Rolls"\n')).sale
    assert sale is not None
    assert [(way.way, way.net) for way in sale.ways] == [("loose", None), ("prepacked", 700)]
    assert sale.called is not None and sale.called.text == "Wheat bread"
    assert sale.sells_at is not None and sale.sells_at.price == (Fraction("5.5"), "EUR")
    assert sale.sells_at.tax == Fraction(1, 10)
    assert sale.date_mark is not None and sale.date_mark.word == "use by" and sale.date_mark.seconds == 172800
    assert [one.text for one in sale.how_much_of] == ["salt", "water"]
    assert [(one.apart, one.allergens) for one in sale.contacts] == [(False, ("egg",)), (True, ("sesame", "milk"))]
    assert sale.approved is not None and sale.approved.by == "Ada"


def test_a_part_of_the_dough_is_sold_otherwise() -> None:
    formula = formula_of(LOAF.format("", '      sold loose\n      called "Rolls"\n'))
    assert formula.sale is None
    (rolls,) = [branch for branch in formula.branches if branch.noun == "rolls"]
    assert rolls.sale is not None and rolls.sale.called is not None and rolls.sale.called.text == "Rolls"


@every(
    [
        ("  sold loose\n  sold loose\n", "said-twice"),
        ("  best before 6 d\n  use by 2 d\n", "said-twice"),
        ("  sells at 5 euro each\n", "currency-unknown"),
        ("  sells at 0 EUR each\n", "money-unclear"),
        ("  sells at 5 EUR each, tax 100% in it\n", "sells-at-unclear"),
        ("  best before 0 d\n", "date-mark-unclear"),
        ("  label approved 2026-02-31 by Ada\n", "no-such-day"),
        ('  may contain nuts because "x"\n', "allergen-unknown"),
        ("  store cool and dry\n", "quotes-missing"),
        ("  called Wheat bread\n", "quotes-missing"),
        ("  may contain egg\n", "line-unfinished"),
        ("  sells at 5.50\n", "line-unfinished"),
        ('  listed as "x" in Mars\n', "market-unknown"),
    ],
    at_least=13,
)
def test_each_mistake_has_its_answer(head: str, name: str) -> None:
    assert [one.name for one in reports_of(LOAF.format(head, ""))][:1] == [name]


OLD = """preparation store
  store cheese           100 g
  called oats             50 g
  opened butter           50 g
  stir 2 min
  good for 1 d at 4 C
"""


def test_words_that_open_a_line_now_are_names_as_ever() -> None:
    """A line that ends in a weight weighs an ingredient, whatever its first word is."""
    names = [one.name for one in reports_of(OLD)]
    assert names == ["unknown-ingredient"] * 3


def test_one_way_of_keeping_is_said_once() -> None:
    text = "preparation Sauce\n  milk 1000 g\n  simmer 5 min\n  good for 2 d at 4 C\n  good for 3 d at 5 C\n  good for 90 d at -18 C\n"
    assert "said-twice" in [one.name for one in reports_of(text)]
    kept = formula_of(text.replace("  good for 3 d at 5 C\n", "")).kept
    assert [one.way for one in kept] == ["cold", "frozen"]


def test_what_is_not_known_of_an_allergen_stays_until_it_is_answered() -> None:
    larder = """larder House
  house mix
    class other
    allergens milk
    ask egg, soya because "read the packet"
    no soya
"""
    assert [one.name for one in reports_of(larder)] == ["allergens-yes-and-no"]
    found = bakery_of(larder.replace("    no soya\n", "")).larder.find("house mix")
    assert isinstance(found, Ingredient)
    assert found.allergens == ("milk",) and [one for one, _ in found.asked] == ["egg", "soya"]
