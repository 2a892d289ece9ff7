"""The handout: the size of one oven at home, hands for the mixer, when to start, four ovens' heats, and a Recipe for machines."""

from __future__ import annotations

import io
import json
import re
from collections.abc import Callable
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from every import every
from loaves import NUTTY_ROLLS, PLAIN_LOAF
from pypdf import PdfReader
from sheets.home import QUAY, US, clauses, home_rows, plain, said, steps, taken, text_of
from sheets.same_figures import of_type
from sheets.test_hostile_text import HOSTILE, fields, seen, with_mark
from works import work_in

from manchet.figures.oven.at_home import fits, order_at_home
from manchet.formula.model import Range
from manchet.sheets.forms.handout.home_measures import NO_SPOONS, gas_mark, oven_marks, spoons
from manchet.sheets.forms.handout.recipe_data import RecipeTimes, recipe_json
from manchet.sheets.page.house import House
from manchet.sheets.page.json_data import data_of
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.words import words_of
from manchet.sheets.published import schema
from manchet.sheets.registry import form_called, html_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import read
from manchet.workspace.print_options import PrintOptions

GOLDEN = Path(__file__).parent / "golden"
M = Measures(House(), words_of("British"))
LAYOUTS = form_called("handout").layouts


def test_the_whole_text(golden: Callable[[Path, str], None]) -> None:
    golden(GOLDEN / "handout.txt", text_of(html_of(taken())))


def test_two_loaves_or_what_fits_the_tray() -> None:
    assert (fits(Fraction(900)), fits(Fraction(100)), fits(Fraction(60)), fits(Fraction(5000))) == (2, 12, 12, 0)
    assert plain(taken().makes[0]).startswith("2 loaves")
    rolls = QUAY.replace("24 loaves at 900 g", "60 rolls at 85 g")
    assert taken(rolls).makes[0].startswith("12 rolls")
    one = QUAY.replace("24 loaves", "1 loaf")
    assert taken(one).makes[0].startswith("1 loaf")


def test_never_more_than_the_file_makes() -> None:
    for number in (1, 2, 5, 300):
        bakery = read([SourceText("q.bake", QUAY.replace("24 loaves at 900 g", f"{number} rolls at 60 g"))])
        assert order_at_home(work_in(bakery, bakery.formulas[0]).batch).pieces == (
            (Fraction(min(number, 12)), "rolls"),
        )


def test_no_mixer_is_asked_for() -> None:
    read = [said(clause) for clause in clauses(taken())]
    assert not [text for text in read if re.search(r"\b(slow|fast|speed|mixer|each)\b", text)]
    assert any(text.startswith("Knead by hand 8–12 min") for text in read)
    assert "by hand" in read[0]


def test_why_what_to_look_for_and_notes_are_printed() -> None:
    page = html_of(taken())
    for words in (
        "Why: it holds the gas later",
        "until it stretches thin",
        "to 97\N{NO-BREAK SPACE}°C core until chestnut",
        "Better on the second day.",
    ):
        assert words in page


def test_cautions_of_a_home_and_none_of_a_bakery() -> None:
    page = html_of(taken()).casefold()
    assert "raw dough:</b> do not taste it" in page and "local codes" in page
    assert "25 kg" not in page and "blades out" not in page and not re.search(r"\bsafe\b", page)


def test_the_oven_in_four_ways() -> None:
    oven = taken().oven
    assert oven is not None and (oven.degree, oven.other_degree) == ("°C", "°F")
    (bake,) = oven.bakes
    assert [phase[:5] for phase in bake.phases] == [
        ("15", "255", "235", "490", "10"),
        ("25–30", "220", "200", "430", "7"),
    ]
    assert any("250" in line for line in oven.advice) and any("pot" in line for line in oven.advice)


def test_what_is_baked_for_seconds_says_so_and_two_hours_are_minutes() -> None:
    for written, printed in (("bake 15 min", "15"), ("bake 40-50 s", "40–50 s"), ("bake 2 h", "120")):
        oven = taken(QUAY.replace("bake 15 min", written)).oven
        assert oven is not None and plain(oven.bakes[0].phases[0].minutes) == printed


@every([(110, "¼"), (120, "½"), (140, "1"), (150, "2"), (180, "4"), (200, "6"), (220, "7"), (240, "9")], at_least=8)
def test_gas_marks(celsius: int, mark: str) -> None:
    """The usual British table: 1 is 275 F (140 C), 4 is 350 F (180 C), 7 is 425 F (220 C); common practice."""
    assert gas_mark(Fraction(celsius)) == mark


def test_a_fan_is_twenty_less_and_fahrenheit_in_fives() -> None:
    marks = oven_marks(Range(Fraction(230), Fraction(240)), M)
    assert (marks.oven, marks.fan, marks.other) == ("230–240", "210–220", "445–465")


def test_spoons_have_their_density_in_the_data_and_one_warning() -> None:
    bakery = read([SourceText("q.bake", QUAY)])
    salt = next(line.ingredient for line in bakery.formulas[0].overall if line.name == "salt")
    assert salt is not None and salt.density is not None
    spoonful = salt.density * 5
    one = spoons(spoonful, salt, M, "metric")
    assert plain(one.said) == "1 tsp" and plain(one.density).endswith(" g/ml")
    assert spoons(spoonful / 100, salt, M, "metric").said == M.words["handout.pinch"]
    assert spoons(spoonful, salt, M, "") == spoons(spoonful, None, M, "metric") == NO_SPOONS
    page = html_of(taken())
    assert page.count("Spoons and cups are only about right") == 1 and "g/ml" not in page
    assert "cups" in html_of(taken(house=House(words="American")))


def test_fresh_yeast_names_its_dried_twin() -> None:
    rows = [row for row in home_rows(taken()) if row.name == "fresh yeast"]
    assert rows and all(any("instant yeast" in note for note in row.notes) for row in rows)
    assert "Hamelman" in " ".join(taken().once)
    dried = taken(QUAY.replace("fresh yeast ", "instant yeast "))
    assert "instant yeast" in " ".join(dried.once) and "Hamelman" not in " ".join(dried.once)


def recipe(page: str) -> dict[str, Any]:
    found = re.findall(r'<script type="application/ld\+json">(.*?)</script>', page, re.DOTALL)
    assert len(found) == 1
    data: dict[str, Any] = json.loads(found[0])
    return data


def test_the_recipe_for_machines() -> None:
    data = recipe(html_of(taken()))
    assert (data["@context"], data["@type"], data["name"]) == ("https://schema.org", "Recipe", "Quay loaf")
    assert data["description"] == "Everyday wheat loaf, proved cold." and data["recipeYield"].startswith("2 loaves")
    assert any(line.endswith("white flour") for line in data["recipeIngredient"])
    sections = data["recipeInstructions"]
    assert [section["name"] for section in sections] == ["poolish", "dough"]
    for section in sections:
        assert section["@type"] == "HowToSection"
        assert all(step["@type"] == "HowToStep" and step["text"] for step in section["itemListElement"])
    shown = seen(html_of(taken())).text
    assert "schema.org" not in shown.replace(json.dumps(data, ensure_ascii=False, sort_keys=True), "")


ISO = re.compile(r"P(?:\d+D)?(?:T(?:\d+H)?(?:\d+M)?)?")


def test_the_recipe_has_its_times_and_each_ingredient_once() -> None:
    data = recipe(html_of(taken()))
    # 11 h of ripening, 2 h and 67.5 min of waits, 42.5 min of bake, 2 h of cooling, 40 s of shaping; by hand 3 min of stirring,
    # 3 min of bringing together with 20 min of rest, 10 min of kneading with two or three rests of 5 min. By estimate 3 min 45 s
    # of weighing, 30 s of adding, 30 s of dividing and scoring, 30 s of loading and taking out.
    assert (data["cookTime"], data["totalTime"]) == ("PT43M", "PT17H44M")
    assert all(ISO.fullmatch(data[time]) for time in ("cookTime", "prepTime", "totalTime"))
    names = [line.split("g ", 1)[1] for line in data["recipeIngredient"]]
    assert sorted(names) == sorted(set(names)) and "poolish" not in names
    assert {"white flour", "whole rye flour", "water", "salt", "fresh yeast"} == set(names)


def test_several_sorts_are_several_yields() -> None:
    text = QUAY.replace(
        "  makes 24 loaves at 900 g dough\n", "  makes 2 loaves at 900 g dough\n  makes 8 rolls at 90 g dough\n"
    )
    text = text.replace(
        "    shape oval 20 s each\n",
        "    for the rolls\n      add walnuts 12% of the dough\n      bake 18 min at 230 C\n    for the loaves\n",
    )
    for line in ("prove covered 60", "score", "bake 15", "bake 25", "cool 2"):
        text = text.replace(f"    {line}", f"      {line}")
    text = text.replace('      until "chestnut"', '        until "chestnut"')
    data = recipe(html_of(taken(text)))
    assert len(data["recipeYield"]) == 2
    (walnuts,) = [line for line in data["recipeIngredient"] if line.endswith("walnuts")]
    # 6 rolls of 90 g with their walnuts: 540 x 12 / 112.
    assert walnuts.replace("\N{NO-BREAK SPACE}", " ") == "57.9 g walnuts"


def test_a_bakery_s_pot_is_not_fed_at_home() -> None:
    text = QUAY.replace(
        "  poolish with 20% of all flour\n    white flour          100%\n    water                100%\n    fresh yeast            0.5%",
        "  levain with 20% of all flour\n    white flour          100%\n    water                100%\n    ripe wheat starter    10%",
    )
    text = text.replace("    poolish\n", "    levain\n").replace(
        'until "domed"\n', 'until "domed"\n    keep 3000 g as ripe wheat starter\n'
    )
    text = text.replace("    fresh yeast            1%\n", "")
    (keep,) = [clause.done for clause in clauses(taken(text)) if clause.done.startswith("Keep")]
    assert "3" not in keep


def test_the_size_of_a_tin_is_said() -> None:
    text = QUAY.replace("    prove covered", "    place in long tin\n    prove covered")
    text += "\nkitchen K\n  tin long tin\n    volume 1904 ml\n"
    (place,) = [clause for clause in clauses(taken(text)) if clause.done.startswith("Place")]
    assert place.notes[-1].replace("\N{NO-BREAK SPACE}", " ").startswith("or another that holds about 1,900 ml")


def test_no_recipe_card() -> None:
    page = html_of(taken()).casefold()
    for word in ("servings", "serves", "prep time", "cook time", "<button", "<input", "print recipe", "1x", "2x"):
        assert word not in page


@pytest.mark.parametrize("width", [375, 768])
def test_nothing_overflows_on_a_phone(width: int, tmp_path: Path) -> None:
    from shutil import which

    from playwright.sync_api import sync_playwright

    path = which("chromium") or which("google-chrome")
    if path is None:
        pytest.skip("no Chromium on this machine")
    (tmp_path / "page.html").write_text(html_of(taken()), encoding="utf-8")
    with sync_playwright() as play:
        chromium = play.chromium.launch(executable_path=path, args=["--no-sandbox", "--disable-gpu"])
        page = chromium.new_page(viewport={"width": width, "height": 900})
        said: list[str] = []
        page.on("console", lambda message: said.append(message.text))
        page.goto((tmp_path / "page.html").as_uri())
        wide = page.evaluate("document.documentElement.scrollWidth")
        chromium.close()
    assert wide <= width and said == []


HOME = """
kitchen Home
  oven mine
    floor 46 x 40 cm
    door  44 cm
"""


WASHED = QUAY.replace("    score", "    brush with egg wash 6 g each\n    score").replace(
    "    prove covered", "    brush with egg wash 6 g each\n    prove covered"
) + """
preparation egg wash
  eggs                   500 g
  milk                   100 g
  salt                     2 g
  whisk 2 min
  strain into jug
  good for 1 d at 4 C
"""  # fmt: skip


def test_hostile_names_stay_text() -> None:
    for hostile in (HOSTILE, "</script><script>alert(1)</script>", "]]>\u2028--><!--", '"}]}'):
        view = taken()._replace(title=hostile, about=hostile)
        stage, method = view.stages[0], view.method[0]
        stage = stage._replace(rows=(stage.rows[0]._replace(name=hostile),), title=hostile)
        method = method._replace(title=hostile)
        times = RecipeTimes(Fraction(600), Fraction(7200))
        machine = recipe_json(hostile, hostile, "en-GB", [hostile], [f"1 g {hostile}"], (), (method,), times)
        view = view._replace(stages=(stage,), method=(method,), recipe=machine)
        page = html_of(view)
        data = recipe(page)
        assert data["name"] == hostile and data["recipeIngredient"][0].endswith(hostile)
        assert seen(page).tags == seen(html_of(view._replace(title="x", about="x"))).tags
        assert "<script>alert" not in page


def test_every_text_of_the_view_is_printed_and_stays_text() -> None:
    """But our own drawings, the picture's address and the recipe, which are markup by design, and what is data only."""
    view = taken(WASHED)
    whole = html_of(view)
    ours = ("svg", "data", "recipe", "language", "paper", "form", "density", "catchword", "level", "part", "source")
    paths = [path for path in fields(view) if path.rsplit(".", 1)[-1] not in ours and ".figures." not in path]
    # Of what is made ahead the weights stand once, in its list, and no spoons.
    once = re.compile(r"\.before\.\d+\.(steps\..*\.adds\.\d+\.(weight|unit|ounces)|.*\.(measure|address|notes\.\d+))$")
    unprinted = [path for path in paths if html_of(with_mark(view, path.strip(".").split("."), "QQQ")) == whole]
    assert [path for path in unprinted if not once.search(path) and not path.endswith(".address")] == []
    notes = [note for note in of_type(view, "CautionNote") if note.words]
    assert notes and all(note.source in seen(whole).text for note in notes)
    hostile = view
    for path in paths:
        hostile = with_mark(hostile, path.strip(".").split("."), HOSTILE)
    assert seen(html_of(hostile)).tags == seen(whole).tags


def test_the_data_fits_the_schema() -> None:
    import jsonschema

    for text in (QUAY, WASHED):
        jsonschema.validate(json.loads(json.dumps(data_of(taken(text)))), schema())


def test_the_pdf_is_two_sides_at_most_and_says_it_all() -> None:
    made = pdf_of(html_of(taken()), LAYOUTS)
    assert isinstance(made, Pdf) and made.faults == () and made.missing == ()
    pages = [page.extract_text() for page in PdfReader(io.BytesIO(made.content)).pages]
    assert len(pages) <= 2
    whole = plain(" ".join(" ".join(pages).split()))
    for words in ("Quay loaf", "2 loaves", "When to start what", "Oven", "gas", "At home", "% of all flour", "Method"):
        assert words in whole
    assert made == pdf_of(html_of(taken()), LAYOUTS)


HOME = """
kitchen Home
  oven mine
    floor 46 x 40 cm
    door  44 cm
"""


def test_the_measured_floor_of_an_oven_at_home_is_drawn() -> None:
    """Two loaves of 900 g, 19 cm across each, lie side by side on 46 x 40 cm; on 30 x 30 cm they do not."""
    floors = [
        [
            figure.title
            for step in steps(taken(QUAY + home))
            for figure in step.figures
            if "oven's floor" in figure.title
        ]
        for home in (HOME, HOME.replace("46 x 40", "30 x 30"), HOME.replace("    floor 46 x 40 cm\n", ""), "")
    ]
    (drawn,), *none = floors
    assert "46 × 40 cm" in drawn and "with 2 pieces" in drawn
    assert none == [[], [], []]


def test_what_sees_no_tray_has_none_drawn() -> None:
    rolls = PLAIN_LOAF.replace("10 loaves at 900 g", "8 rolls at 80 g")
    griddled = rolls.replace("bake 40 min at 230 C", "griddle 4 min a side at 200 C, 4 at a time")
    trays = [
        [figure.title for step in steps(taken(text)) for figure in step.figures if "with 8 pieces" in figure.title]
        for text in (rolls, griddled)
    ]
    assert [len(titles) for titles in trays] == [1, 0], trays


def test_a_core_the_file_does_not_say_is_about() -> None:
    (bake,) = (c for c in clauses(taken(QUAY.replace(" to 97 C core", ""))) if c.done.startswith("Bake"))
    assert plain(f"{bake.how} {bake.until}").endswith(", to about 96 °C core until chestnut")
    assert bake.notes == (
        "a core marked “about” is the usual one for this kind of bread, an estimate: the formula gives none",
    )
    (said,) = (c for c in clauses(taken(QUAY)) if c.done.startswith("Bake"))
    assert said.notes == ()


def test_a_house_of_fahrenheit_reads_its_own_dial_first() -> None:
    oven = taken(QUAY.replace("at 220 C", "at 190 C"), US).oven
    assert oven is not None and oven.bakes[0].phases[1][1:5] == ("375", "350", "190", "5")
    assert (oven.degree, oven.other_degree) == ("°F", "°C")
    assert {"convection", "gas (British)"} <= set(re.findall(r'<th scope="col">([^<]*)</th>', html_of(taken(house=US))))


def test_ounces_stand_beside_the_grams_where_they_are_asked_for() -> None:
    view = taken(house=US)
    flour = next(row for row in view.stages[-1].rows if row.name == "white flour")
    assert flour.unit == "g" and " oz" in plain(flour.ounces)
    assert "900 g (1 lb 15¾ oz)" in plain(view.makes[0])
    salt = next(row for clause in clauses(view) for row in clause.adds)
    assert (salt.weight, salt.ounces) == ("21", ""), "less than an ounce is spooned"
    assert not re.search(r"\d\.\d+ oz", plain(html_of(view))), "quarters, as in pounds and ounces"
    assert " oz" not in plain(html_of(taken()))


WASH = """
preparation egg wash
  eggs                   500 g
  milk                   100 g
  salt                     2 g
  whisk 2 min
  strain into jug
  good for 1 d at 4 C
"""
WASHED = QUAY.replace("    score", "    brush with egg wash 6 g each\n    score").replace(
    "    prove covered", "    brush with egg wash 6 g each\n    prove covered"
) + WASH  # fmt: skip


def test_what_is_needed_of_a_preparation_stands_on_the_handout_once() -> None:
    (wash,) = taken(WASHED).before
    assert (wash.title, wash.weight, wash.unit, wash.least) == ("egg wash", "24", "g", "")  # 2 loaves, twice 6 g
    assert [(row.name, row.weight) for row in wash.rows] == [("eggs", "19.9"), ("milk", "4.0"), ("salt", "0.1")]
    assert [said(clause) for step in wash.steps for clause in step.clauses] == ["Whisk 2 min", "strain in jug"]
    assert html_of(taken(WASHED)).count("19.9") == 1


def test_a_preparation_that_needs_another() -> None:
    text = WASHED.replace("preparation egg wash\n", "preparation egg wash\n  herb salt              10 g\n")
    text += "\npreparation herb salt\n  salt 100 g\n  thyme 100 g\n  grind\n  good for 30 d\n"
    assert [made.title for made in taken(text).before] == ["herb salt", "egg wash"]


def test_no_preparation_no_block() -> None:
    assert taken().before == () and "make ahead" not in html_of(taken())


BATH = """
preparation malt bath
  water 20 l
  malt syrup 600 g
  stir 2 min
  good for 1 d at 4 C
"""
DIPPED = QUAY.replace("    score", "    dip in malt bath 4 g each\n    score") + BATH


@every(
    [
        ("", "1,000", "the usual least of a bath"),
        ("  never under 2 kg\n", "2,000", "the least its vessel takes"),
        ("  never under 5 g\n", "8", ""),
    ],
    at_least=3,
)
def test_a_bath_is_never_smaller_than_its_vessel_needs(line: str, weight: str, least: str) -> None:
    """Two loaves take up 8 g; what they are dipped into is more."""
    (bath,) = taken(DIPPED.replace("  stir 2 min\n", f"{line}  stir 2 min\n")).before
    assert bath.weight == weight and bath.least.startswith(least) and bool(bath.least) == bool(least)
    assert ("8 g is taken up" in plain(bath.least)) == bool(least)


def test_seeds_are_no_bath() -> None:
    text = QUAY.replace("    score", "    dip in seed mix 4 g each\n    score")
    text += "\npreparation seed mix\n  sesame seeds 500 g\n  poppy seeds 500 g\n  stir 1 min\n  good for 30 d\n"
    assert taken(text).before[0].weight == "8"


def test_pieces_are_divided_without_what_is_added_below() -> None:
    (divide,) = [said(clause) for clause in clauses(taken(NUTTY_ROLLS)) if clause.done.startswith("Divide")]
    assert "98 g" in divide and "110 g with what is added below" in divide and "900 g" in divide


def advice(text: str) -> str:
    oven = taken(text).oven
    return "" if oven is None else plain(" ".join(oven.advice))


def test_the_order_of_the_bowl_stands_at_the_first_mix() -> None:
    notes = [note for clause in clauses(taken()) for note in clause.notes]
    assert [
        note for note in notes if "water, poolish, then white flour, whole rye flour, fresh yeast" in note
    ] == notes[:1]


def test_it_is_numbered_within_a_stage_and_joined_where_nothing_is_waited_for() -> None:
    poolish, dough = taken().method
    assert [[step.number for step in way.steps] for way in poolish.ways] == [["1", "2"]]
    (way,) = dough.ways
    assert [step.number for step in way.steps] == [str(n + 1) for n in range(len(way.steps))]
    joined = [[clause.done.split()[0] for clause in step.clauses] for step in way.steps]
    assert ["Divide", "shape"] in joined and ["Ferment"] in joined and ["Score"] in joined
    assert "Bake" in [words[0] for words in joined] and not any("Bake" in words[1:] for words in joined)


def test_a_caution_stands_at_its_step_and_nowhere_else() -> None:
    view = taken(WASHED)
    above = [(step.cautions, step.clauses[0].done) for step in steps(view) if step.cautions]
    assert above and all(done.startswith("Brush with egg wash") for _, done in above)


def test_when_to_start_counts_back_from_three_ready_times() -> None:
    start = taken().start
    assert start is not None and len(start.ready) == 3
    assert {time.day for time in start.ready} == {"Sat", "Sun"}
    assert [row.what for row in start.rows] == ["poolish", "dough", "divide", "oven on", "bake"]
    assert all(len(row.times) == 3 for row in start.rows)
    on, bake = start.rows[-2:]
    assert minutes(bake) - minutes(on) == 40  # a pot or a stone in it


def minutes(row: Any) -> int:
    hour, minute = row.times[0].clock.split(":")
    return int(hour) * 60 + int(minute)


def test_the_learner_s_file_has_no_answer_in_it() -> None:
    """Neither its page, nor its PDF, nor its data: the per cents stand on the class set alone."""
    from manchet.sheets.page.json_data import json_of

    swapped = QUAY.replace("salt                   2%", "salt                   2.3%")
    answers = {"90 %", "10 %", "70 %", "2.3 %", "1 %"}
    for wish, there in ((PrintOptions(), answers), (PrintOptions(blanks=True), set())):
        view = taken(swapped, wish=wish)
        page = html_of(view)
        pdf = pdf_of(page, LAYOUTS)
        assert isinstance(pdf, Pdf)
        printed = " ".join(page.extract_text() for page in PdfReader(io.BytesIO(pdf.content)).pages)
        for text in (seen(page).text, json_of(view), printed, page):
            found = {answer for answer in answers if re.search(rf"(?<![\d.]){re.escape(answer)}", plain(text))}
            assert found == there
