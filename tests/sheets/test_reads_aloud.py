"""What is done reads as English, and the same on sheet and card: what parts the words, and what `until` stands before."""

from __future__ import annotations

from loaves import POOLISH_LOAF
from sheets.home import plain
from sheets.work import card, lines_of, sheet

from manchet.sheets.forms.prep_sheet.view import PrepSheet
from manchet.sheets.forms.timing_card.view import TimingCard

LOAF = POOLISH_LOAF.replace("8 min to 25 C", '8 min to 25 C until "like wet mortar"').replace(
    "bake 40 min at 230 C to 97 C core, steam",
    "bake 10 min at 250 C, steam\n    bake 40 min at 230 C falling to 205 C to 97 C core",
)
BATH = """
preparation malt bath
  water                  1000 g
  malt syrup               30 g
  stir 2 min
  good for 1 d at 4 C
"""


def done_on(view: PrepSheet) -> list[str]:
    lines = (clause for line in lines_of(view) for clause in line.clauses)
    return [plain(f"{clause.doing} {clause.object} {clause.minutes}{clause.rest}") for clause in lines]


def hows_of(view: TimingCard) -> list[str]:
    lines = (line for day in view.days for job in day.jobs for line in getattr(job, "lines", ()))
    return [plain(one.how) for line in lines for one in (*line.clauses, *([line.wait] if line.wait else []))]


def test_a_look_that_is_a_likeness() -> None:
    assert "Mix slow 8 min to 25 °C until it looks like wet mortar" in done_on(sheet(LOAF))
    assert "to 25 °C until it looks like wet mortar" in hows_of(card(LOAF))


def test_what_is_reached_is_parted_from_where_a_falling_oven_ends() -> None:
    """`falling to 205 °C to 97 °C core` would be two ends in one breath."""
    assert any("at 230 °C falling to 205 °C, to 97 °C core" in how for how in hows_of(card(LOAF)))


def test_of_a_bath_the_sheet_says_what_is_taken_up() -> None:
    """Twenty loaves take up 80 g; whoever makes no more has nothing to dip into."""
    (bath,) = sheet(LOAF.replace("    bake 10", "    dip in malt bath 4 g each\n    bake 10") + BATH).ahead
    assert (bath.name, plain(bath.weight), bath.taken_up) == ("malt bath", "80 g", True)
    wash = BATH.replace("malt bath", "malt wash")
    (brushed,) = sheet(LOAF.replace("    bake 10", "    brush with malt wash 4 g each\n    bake 10") + wash).ahead
    assert not brushed.taken_up
