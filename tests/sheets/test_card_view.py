"""What a timing card says: one row for each clock at which somebody must be there, and what gives if it is late."""

from __future__ import annotations

import re
from fractions import Fraction
from xml.etree import ElementTree

import pytest
from loaves import KITCHEN, LOAF_BY_WEIGHT, LOAVES_AND_ROLLS, PLAIN_LOAF, POOLISH_LOAF, vary
from sheets.card_text import jobs_of, lines_of, plain, said_of
from sheets.test_prep_view import FERRY
from sheets.work import card, sheet

from manchet.batch.order import Order
from manchet.sheets.forms.timing_card.view import CardJob
from manchet.sheets.page.house import House
from manchet.sheets.page.json_data import data_of
from manchet.sheets.published import schema
from manchet.sheets.registry import html_of

OVEN = "  oven deck\n    heats in      90 min\n"
US = House("Letter", "US", "F", "American")


def test_a_row_is_a_clock_at_which_somebody_must_be_there() -> None:
    """Ready at seven: what is done until the dough is left alone is one row, its wait last. Worked out by hand: three and five
    lines weighed at 25 s, twenty loaves divided at 10 s, shaped at 15 s, loaded at 10 s and taken out at 5 s."""
    assert said_of(card(POOLISH_LOAF)) == [
        ("12:22", "Poolish: weigh ~ 1 min · mix by hand 3 min to 23 °C · ripen 12–14 h → Sat 01:26 covered at 20 °C"),
        ("01:26", "Weigh ~ 2 min · mix slow 8 min to 25 °C · ferment 90 min → 03:06 covered at 25 °C"),
        ("03:06", "Divide 20 × 900 g loaves ~ 3 min · shape round ~ 5 min · prove 60 min → 04:15 covered at 25 °C"),
        ("04:15", "Load ~ 3 min · bake 40 min → 04:58 at 230 °C to 97 °C core, steam"),
        ("04:58", "Out of the oven ~ 2 min · cool 2 h → 07:00"),
    ]


def test_an_estimate_is_marked_and_the_mark_explained() -> None:
    """A kitchen that times its own work is believed, and then nothing is marked."""
    told = "~ estimated: not all of it has been timed here."
    timed = "".join(f"  {work} 12 s each\n" for work in ("weigh", "divide", "shape", "load", "take out"))
    for kitchen, estimates in ((KITCHEN, told), (KITCHEN + timed, "")):
        view = card(POOLISH_LOAF + kitchen)
        assert view.estimates == estimates
        assert any("~" in said for _, said in said_of(view)) == bool(estimates)
        assert (told in html_of(view)) == bool(estimates)
    left = vary(PLAIN_LOAF, mix='slow 8 min to 25 C\n    do "leave it be" waiting')
    assert any("leave it be ~ 75 min →" in said for _, said in said_of(card(left)))


def test_both_clocks_and_the_days() -> None:
    view = card(FERRY)
    first = next(jobs_of(view))
    assert first.elapsed == "+0:00"
    assert all(re.fullmatch(r"\d\d:\d\d", job.clock) for job in jobs_of(view))
    assert len(view.days) == len({day.title for day in view.days})
    assert (view.start, view.ready) == (f"start {view.days[0].title[:3]} {first.clock}", "ready Sat 07:00")


def test_a_short_rest_stays_in_the_row_unless_the_dough_goes_into_the_cold() -> None:
    def joined(rest: str, then: str) -> bool:
        text = PLAIN_LOAF.replace("ferment covered 2 h at 25 C", f"rest covered {rest}\n    {then}")
        return any("rest" in said and then.split()[0] in said for _, said in said_of(card(text)))

    assert joined("20 min", "ferment covered 2 h at 25 C")
    assert not joined("25 min", "ferment covered 2 h at 25 C")
    assert not joined("20 min", "chill covered 2 h at 4 C")


def test_a_damper_that_opens_soon_is_a_clause_and_later_a_row() -> None:
    def rows(after: int) -> list[str]:
        text = vary(PLAIN_LOAF, bake=f"40 min at 230 C, vent open after {after} min")
        return [said for _, said in said_of(card(text)) if "damper" in said.lower()]

    (soon,), (late,) = rows(5), rows(8)
    assert "bake 40 min" in soon and soon.endswith(", damper open at 04:25")
    assert late == "Damper open"


def test_two_sorts_at_one_clock_are_two_lines_of_one_row() -> None:
    (both,) = [job for job in jobs_of(card(LOAVES_AND_ROLLS)) if isinstance(job, CardJob) and len(job.lines) > 1]
    assert [line.whose for line in both.lines] == ["Dough", "Loaves", "Rolls"]
    assert [line.of_branch for line in both.lines] == ["", "loaves", "rolls"]


def test_what_goes_in_stands_where_it_goes_in() -> None:
    weighed = {
        line.of_stage: [weight.name for weight in line.weights]
        for _, line in lines_of(card(POOLISH_LOAF))
        if line.weights
    }
    assert weighed == {
        "poolish": ["white flour", "water", "instant yeast"],
        "": ["poolish", "white flour", "water", "salt", "instant yeast"],
    }


def test_a_wait_is_its_work_its_minutes_and_its_ends() -> None:
    (bulk,) = [line.wait for _, line in lines_of(card(PLAIN_LOAF)) if line.wait and line.wait.do.startswith("ferment")]
    assert (bulk.work, bulk.minutes) == ("left alone", 120)
    begins, ends = (int(clock[:2]) * 60 + int(clock[3:]) for clock in (bulk.begins, bulk.ends))
    assert (ends - begins) % 1440 == 120
    cold = vary(PLAIN_LOAF, prove="covered 10 h at 4 C").replace("prove covered", "retard covered")
    assert [line.wait.work for _, line in lines_of(card(cold)) if line.wait and "retard" in line.wait.do] == ["cold"]


def test_until_when_a_row_may_begin() -> None:
    """A proof of 50 to 70 min is planned for an hour: ten minutes may be made up, and ten it may stand longer."""
    view = card(vary(PLAIN_LOAF, prove="covered 50-70 min at 27 C"))
    rows = {
        text.split(" ")[0]: job
        for job in jobs_of(view)
        if isinstance(job, CardJob)
        for text in [plain(job.lines[0].clauses[0].do)]
    }
    divide, load, out = rows["Divide"], rows["Load"], rows["Out"]
    assert (divide.sharp, _minutes(divide.start_by) - _minutes(divide.clock)) == (False, 9), "10, of whole minutes 9"
    assert load.sharp and out.sharp and load.start_by == out.start_by == ""


def _minutes(clock: str) -> int:
    return int(clock[:2]) * 60 + int(clock[3:])


def test_what_gives_is_said_once_in_five_lines_at_most() -> None:
    for text in (FERRY, POOLISH_LOAF, LOAVES_AND_ROLLS, PLAIN_LOAF):
        late = card(text).late
        assert 1 <= len(late) <= 5
        assert late[-1].clock.startswith("from ") and late[-1].gives == "all that follows is that much later"
    said = [line.gives for line in card(vary(PLAIN_LOAF, prove="covered 30-90 min at 27 C")).late]
    assert "up to 30 min: shorter proof (look at the dough first)" in said
    assert not any("bake" in line or "mix" in line for line in said), "nobody bakes or mixes faster because it is late"


def test_the_oven_says_why_it_is_lit_so_early() -> None:
    assert any(text == "Heat the oven to 240 °C, 90 min" for _, text in said_of(card(FERRY + OVEN)))
    wood = OVEN.replace("heats in", "heat wood\n    heats in")
    assert any(text == "Light the oven to 240 °C, 90 min" for _, text in said_of(card(FERRY + wood)))


def test_several_mixes_are_one_row_with_a_clock_for_each() -> None:
    folds = [
        job
        for job in jobs_of(card(FERRY))
        if isinstance(job, CardJob) and job.lines[0].clauses and job.lines[0].clauses[0].do == "Fold 1 of 2"
    ]
    (fold,) = folds
    assert [one.label for one in fold.mixes] == ["mix 1", "mix 2"] and fold.mixes[0].clock == fold.clock
    assert html_of(card(FERRY)).count("Fold 1 of 2") == 1


def test_a_strip_for_a_long_day_of_one_mix_alone() -> None:
    assert card(POOLISH_LOAF).strip is not None
    assert card(FERRY).strip is None, "two mixes"
    short = vary(PLAIN_LOAF, ferment="20 min at 25 C", prove="20 min at 27 C").replace("cool 2 h", "cool 30 min")
    assert card(short).strip is None, "under three hours"


@pytest.mark.parametrize("house", [House(), US], ids=["metric", "US"])
def test_the_strip_is_sound_lies_in_its_frame_and_says_itself(house: House) -> None:
    strip = card(POOLISH_LOAF, house).strip
    assert strip is not None
    root = ElementTree.fromstring(strip.svg)
    wide, high = (float(n) for n in root.attrib["viewBox"].split()[2:])
    for bar in root.iter("{http://www.w3.org/2000/svg}rect"):
        x, y, width, height = (float(bar.attrib[name]) for name in ("x", "y", "width", "height"))
        assert 0 <= x <= x + width <= wide + 0.5 and 0 <= y <= y + height <= high
    assert "poolish: mix" in strip.title and root.attrib["aria-label"] == strip.title
    assert any("h cut" in (text.text or "") for text in root.iter("{http://www.w3.org/2000/svg}text"))


def test_real_sheets_fit_the_schema() -> None:
    import jsonschema

    loads = Order(pieces=((Fraction(90), "loaves"),))
    for view in (card(FERRY), sheet(FERRY), card(FERRY, US), card(PLAIN_LOAF, order=loads)):
        jsonschema.validate(data_of(view), schema())


def test_what_is_weighed_hot_has_its_heat() -> None:
    """As on the prep sheet: in the bowl, and where a step adds it; what is poured cold beside it has none."""
    scalded = LOAF_BY_WEIGHT.replace(
        "  dough\n",
        "  scald\n    whole rye flour 500 g\n    water 1000 g at 98 C\n    honey 50 g\n    mix by hand 2 min\n"
        "    cool covered 4 h\n\n  dough\n    scald\n",
    )
    (weights,) = [line.weights for _, line in lines_of(card(scalded)) if line.of_stage == "scald" and line.weights]
    assert [(one.name, plain(one.beside)) for one in weights] == [
        ("whole rye flour", ""), ("water", "98 °C"), ("honey", ""),
    ]  # fmt: skip
    (block,) = [block for block in sheet(scalded).blocks if block.title == "scald"]
    assert [row.notes for row in block.rows] == [() if not one.beside else (one.beside,) for one in weights]


def test_a_bulk_that_no_warmth_changes_has_no_table() -> None:
    assert len({one.bulk for one in card(PLAIN_LOAF).warmths}) == len(card(PLAIN_LOAF).warmths) == 4
    assert card(vary(PLAIN_LOAF, ferment="covered 5 min at 25 C")).warmths == ()


def test_the_water_of_the_dough_has_the_degrees_of_the_sheet() -> None:
    """For the flour and the room of the kitchen; where it gives none, neither says any."""

    def both(text: str) -> tuple[str, str]:
        (weights,) = [line.weights for _, line in lines_of(card(text)) if line.weights]
        water = sheet(text).water
        figure = "" if water is None else plain(water.figure)
        return next(plain(one.beside) for one in weights if one.name == "water"), figure

    said, figure = both(PLAIN_LOAF + KITCHEN)
    assert re.fullmatch(r"\d+ °C( \+ \d+ g ice)?", figure) and said == f"about {figure}"
    assert both(PLAIN_LOAF) == ("", "")
