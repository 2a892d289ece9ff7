"""What is added at a temperature brings that heat with it: into the dough, and into a stage on its way there."""

from __future__ import annotations

from fractions import Fraction

from loaves import PLAIN_LOAF
from sheets.card_text import lines_of as card_lines
from sheets.work import card, lines_of, sheet
from works import first_work, reports_of

from manchet.figures.water.mix_inputs import last_temperature, mix_inputs, surroundings
from manchet.figures.water.mix_temperature import dough_balance

KITCHEN = "kitchen K\n  air 22 C\n  flour 20 C\n  tap 12 C\n  mixer spiral\n    warms 9 C in 8 min slow, 4 min fast\n"


def buttery(add: str) -> str:
    text = PLAIN_LOAF.replace(
        "    salt                   2%", "    butter                15%\n    salt                   2%"
    )
    return KITCHEN + text.replace(
        "    mix slow 8 min to 25 C", f"    hold back butter\n    mix slow 4 min\n    {add}\n    mix slow 4 min to 25 C"
    )


def water_of(text: str) -> Fraction:
    balance = dough_balance(first_work(text))
    assert balance is not None
    return balance.water().likely


def test_it_is_in_the_balance_of_the_dough() -> None:
    work = first_work(buttery("add butter at 16 C"))
    things = mix_inputs(work.dough.stage.portions, work, surroundings(work))
    (butter,) = [thing for thing in things if thing.portion.name == "butter"]
    assert (butter.celsius, butter.why) == (16, "as the file says")


def test_each_degree_of_it_is_made_up_by_the_water() -> None:
    work = first_work(buttery("add butter at 16 C"))
    things = mix_inputs(work.dough.stage.portions, work, surroundings(work))
    capacity = {thing.portion.name: thing.capacity for thing in things}
    colder, warmer = water_of(buttery("add butter at 10 C")), water_of(buttery("add butter at 16 C"))
    assert colder - warmer == 6 * capacity["butter"] / capacity["water"]


def test_a_scald_is_as_warm_as_what_meets_in_it() -> None:
    text = KITCHEN + PLAIN_LOAF.replace(
        "  dough\n",
        "  scald with 10% of all flour\n    white flour          100%\n    water                100%\n    hold back water\n"
        "    add water at 96 C\n    mix by hand 2 min\n\n  dough\n    scald\n",
    )
    work = first_work(text)
    scald = work.formula.stages[0]
    warmth = last_temperature(scald, work, surroundings(work))
    (flour, water) = mix_inputs(scald.portions, work, surroundings(work))
    assert (flour.celsius, water.celsius) == (20, 96)
    assert warmth is not None and warmth.likely == (20 * flour.specific + 96 * water.specific) / (
        flour.specific + water.specific
    )


def test_the_sheet_and_the_card_say_it_at_the_step() -> None:
    text = buttery("add butter at 16 C in 2 additions")
    (line,) = [line.text for line in lines_of(sheet(text)) if "butter" in line.text]
    assert "at 16\u00a0°C" in line
    (clause,) = [
        c for _, line in card_lines(card(text)) for c in line.clauses if any(w.name == "butter" for w in c.weights)
    ]
    assert "at 16\u00a0°C" in clause.how and [w.beside for w in clause.weights] == [""]


def test_two_temperatures_of_one_thing_are_asked_about() -> None:
    text = buttery("add butter 5% at 16 C\n    add butter 10%")
    assert "added-at-two-warmths" in [report.name for report in reports_of(text)]
