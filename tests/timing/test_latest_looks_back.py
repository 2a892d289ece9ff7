"""The latest of a job is bounded by what stands before it, and by the heat of a falling oven."""

from datetime import datetime, timedelta

from works import first_work

from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.issue import Issue
from manchet.timing.card.card import card_of
from manchet.timing.card.values import Card, CardRow
from manchet.timing.when import When
from manchet.workspace.print_options import PrintOptions
from manchet.workspace.rendering import house_of

TWO_SORTS = """\
formula Two sorts
  kind hearth loaf
  makes 10 loaves at 900 g dough
  makes 20 rolls at 80 g dough
  overall
    white flour          100%
    water                 65%
    salt                   2%
    fresh yeast            2%
  dough
    everything else
    mix by hand 10 min to 25 C
    ferment covered 60 min at 25 C
    divide
    for the loaves
      shape round 5 min
      prove covered {prove} at 25 C
      bake 40 min at 230 C, steam
      cool 4 h
    for the rolls
      shape round 5 min
      prove covered 60 min at 25 C{wait}
      bake 18 min at 230 C, steam
      cool 1-6 h
"""

HOUSE = "\nkitchen House\n  weigh 15 s each\n"
"""Four lines: a minute."""

FALLING = """
kitchen House
  weigh 15 s each
  oven beacon
    heat        wood, falling
    heats in    60 min
    falls       30 C an hour from 260 C
"""

CROWDED = """
kitchen House
  weigh 15 s each
  oven small
    heat        electric
    holds       10 loaves, or 20 rolls
"""


def card(text: str) -> Card:
    return card_of(
        first_work(text if "kitchen" in text else text + HOUSE), When(datetime(2026, 11, 28, 5, 0), is_ready=False)
    )


def bake_of(made: Card, branch: str) -> CardRow:
    return next(
        row for row in made.rows if row.job == "step" and row.step and row.step.verb == "bake" and row.branch == branch
    )


def test_what_has_proved_waits_no_longer_than_the_file_lets_it() -> None:
    """Cooled for 1 to 6 h: nothing that comes after hurries the rolls, and yet they have proved."""
    rolls = bake_of(card(TWO_SORTS.format(prove="60 min", wait="")), "rolls")
    assert rolls.latest == rolls.start and rolls.slack == 0
    may = bake_of(card(TWO_SORTS.format(prove="60 min", wait="\n        may wait 20 min")), "rolls")
    assert may.latest == may.start + timedelta(minutes=20) == may.stands_until
    in_a_range = bake_of(
        card(
            TWO_SORTS.format(prove="60 min", wait="").replace(
                "60 min at 25 C\n      bake 18", "60-80 min at 25 C\n      bake 18"
            )
        ),
        "rolls",
    )
    assert in_a_range.latest is not None and in_a_range.latest <= in_a_range.stands_until  # type: ignore[operator]


def test_a_load_waits_no_longer_than_the_floor_is_hot() -> None:
    text = TWO_SORTS.format(prove="60 min", wait="\n        may wait 3 h")
    rolls = bake_of(card(text + FALLING), "rolls")
    assert rolls.floor is not None and rolls.latest is not None
    minutes = (rolls.floor.heat - rolls.floor.least) / 30 * 60
    assert 0 <= rolls.slack <= minutes < 180
    assert rolls.latest == rolls.start + timedelta(minutes=rolls.slack)


def test_while_anything_clashes_no_ready_is_printed() -> None:
    text = TWO_SORTS.format(prove="60 min", wait="")
    for kitchen, clashes in (("", False), (CROWDED, True)):
        work = first_work(text + kitchen)
        when = When(datetime(2026, 11, 28, 5, 0), is_ready=False)
        made = card_of(work, when)
        printed = timing_card(work, when, Issue(), house_of(work.kitchen, PrintOptions()))
        assert bool(made.clashes) == clashes
        assert bool(printed.ready) != clashes
