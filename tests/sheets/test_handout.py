"""The handout: the size of one oven at home, hands for the mixer, four ovens' heats, and a Recipe for machines."""

from __future__ import annotations

import io
import json
import re
from collections.abc import Callable, Iterator
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from every import every
from loaves import NUTTY_ROLLS
from pypdf import PdfReader
from sheets.test_hostile_text import HOSTILE, fields, seen, with_mark
from sheets.work import ISSUE
from works import work_in

from manchet.figures.oven.at_home import fits, order_at_home
from manchet.formula.model import Range
from manchet.sheets.forms.handout.handout import handout
from manchet.sheets.forms.handout.home_measures import gas_mark, oven_marks, spoons
from manchet.sheets.forms.handout.recipe_data import RecipeTimes, recipe_json
from manchet.sheets.forms.handout.teacher_page import sets_for
from manchet.sheets.forms.handout.view import Handout
from manchet.sheets.page.house import House
from manchet.sheets.page.json_data import data_of
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.words import words_of
from manchet.sheets.published import schema
from manchet.sheets.registry import html_of
from manchet.source.text import SourceText
from manchet.workspace.bakery import read
from manchet.workspace.home_work import home_work
from manchet.workspace.print_options import PrintOptions

GOLDEN = Path(__file__).parent / "golden"
M = Measures(House(), words_of("British"))

QUAY = """formula Quay loaf
  about "Everyday wheat loaf, proved cold."
  kind hearth loaf
  makes 24 loaves at 900 g dough
  bake loss 14%

  overall
    white flour           90%
    whole rye flour       10%
    water                 70%
    salt                   2%
    fresh yeast            1%

  poolish with 20% of all flour
    white flour          100%
    water                100%
    fresh yeast            0.5%
    mix slow 3 min to 24 C
    ripen covered 10-12 h at 20 C until "domed"

  dough
    poolish
    everything else
    hold back salt
    mix slow 5 min
    add salt
    mix fast 4 min to 25 C until "stretches thin"
      why "it holds the gas later"
    ferment covered 2 h at 25 C with 2 folds every 40 min
    divide
    shape oval 20 s each
    prove covered 60-75 min at 26 C until "a finger's mark fills slowly"
    score "one long cut, 6 mm deep"
    bake 15 min at 255 C, steam
    bake 25-30 min at 220 C to 97 C core, vent open
      until "chestnut"
    cool 2 h

  note "Better on the second day."
"""


PLAIN, AT_HOME = House(), PrintOptions()


def taken(text: str = QUAY, house: House = PLAIN, options: PrintOptions = AT_HOME) -> Handout:
    bakery = read([SourceText("quay.bake", text)])
    assert [d for d in bakery.diagnostics if d.severity.value == "error"] == []
    home = home_work(bakery, bakery.formulas[0], options, house)
    assert home.value is not None, home.diagnostics
    return handout(home.value.work, ISSUE, house, {}, options.benches, options.blanks, home.value.made_ahead)


def text_of(page: str) -> str:
    """What a reader sees, a line for each block."""
    body = re.sub(r"<(style|script|svg)[^>]*>.*?</\1>", "", page, flags=re.DOTALL)
    lines = re.sub(r"</?(p|tr|table|h1|h2|h3|div|section|header|main)[^>]*>", "\n", body)
    plain = seen(re.sub(r"</?(td|th|span|b)[^>]*>", " ", lines)).text
    return "\n".join(line for line in (" ".join(raw.split()) for raw in plain.splitlines()) if line) + "\n"


def test_the_whole_text(golden: Callable[[Path, str], None]) -> None:
    options = PrintOptions(benches=12, blanks=True)
    golden(GOLDEN / "handout.txt", text_of(html_of(taken(options=options))))


def test_two_loaves_or_what_fits_the_tray() -> None:
    assert (fits(Fraction(900)), fits(Fraction(100)), fits(Fraction(60)), fits(Fraction(5000))) == (2, 12, 12, 0)
    assert taken().head[0].value.replace("\N{NO-BREAK SPACE}", " ").startswith("2 loaves at 900 g dough")
    rolls = QUAY.replace("24 loaves at 900 g", "60 rolls at 85 g")
    assert taken(rolls).head[0].value.startswith("12 rolls")
    one = QUAY.replace("24 loaves", "1 loaf")
    assert taken(one).head[0].value.startswith("1 loaf")


def test_never_more_than_the_file_makes() -> None:
    for number in (1, 2, 5, 300):
        bakery = read([SourceText("q.bake", QUAY.replace("24 loaves at 900 g", f"{number} rolls at 60 g"))])
        assert order_at_home(work_in(bakery, bakery.formulas[0]).batch).pieces == (
            (Fraction(min(number, 12)), "rolls"),
        )


def doings(view: Handout) -> Iterator[Any]:
    return (doing for section in view.sections for way in section.ways for doing in way.doings)


def test_no_mixer_is_asked_for() -> None:
    said = [doing.text for doing in doings(taken())]
    assert not [text for text in said if re.search(r"\b(slow|fast|speed|mixer|each)\b", text)]
    assert any(text.replace("\N{NO-BREAK SPACE}", " ").startswith("Knead by hand 8–12 min") for text in said)
    assert "by hand" in said[0]


def test_why_what_to_look_for_and_notes_are_printed() -> None:
    page = html_of(taken())
    for words in ("Why: it holds the gas later", "until stretches thin", "until chestnut", "Better on the second day."):
        assert words in page


def test_cautions_of_a_home_and_none_of_a_bakery() -> None:
    page = html_of(taken()).casefold()
    assert "do not taste it" in page and "local codes" in page
    assert "25 kg" not in page and "blades out" not in page and not re.search(r"\bsafe\b", page)


def test_the_oven_in_four_ways() -> None:
    oven = next(way.oven for section in taken().sections for way in section.ways if way.oven)
    first, second = (tuple(part.replace("\N{NO-BREAK SPACE}", " ") for part in phase[:6]) for phase in oven.phases)
    assert first == ("15 min", "255 °C", "235 °C", "490 °F", "10", "")
    assert second == ("25–30 min", "220 °C", "200 °C", "430 °F", "7", "97 °C")
    assert any("250" in line for line in oven.advice) and any("pot" in line for line in oven.advice)


@every([(110, "¼"), (120, "½"), (140, "1"), (150, "2"), (180, "4"), (200, "6"), (220, "7"), (240, "9")], at_least=8)
def test_gas_marks(celsius: int, mark: str) -> None:
    """The usual British table: 1 is 275 F (140 C), 4 is 350 F (180 C), 7 is 425 F (220 C); common practice."""
    assert gas_mark(Fraction(celsius)) == mark


def test_a_fan_is_twenty_less_and_fahrenheit_in_fives() -> None:
    said = oven_marks(Range(Fraction(230), Fraction(240)), M)
    assert (said.oven[:7], said.fan[:7], said.other[:7]) == ("230–240", "210–220", "445–465")


def test_spoons_have_their_density_and_one_warning() -> None:
    bakery = read([SourceText("q.bake", QUAY)])
    salt = next(line.ingredient for line in bakery.formulas[0].overall if line.name == "salt")
    assert salt is not None and salt.density is not None
    spoonful = salt.density * 5
    said = spoons(spoonful, salt, M, "metric").replace("\N{NO-BREAK SPACE}", " ")
    assert said.startswith("about 1 tsp at ")
    assert spoons(spoonful / 100, salt, M, "metric") == M.words["handout.pinch"]
    assert spoons(spoonful, salt, M, "") == "" and spoons(spoonful, None, M, "metric") == ""
    page = html_of(taken())
    assert page.count("Spoons and cups are only about right") == 1
    us = html_of(taken(house=House(words="American")))
    assert "cups at" in us


def test_fresh_yeast_names_its_dried_twin() -> None:
    rows = [row for section in taken().sections for row in section.rows if row.name == "fresh yeast"]
    assert rows and all(any("instant yeast" in note for note in row.notes) for row in rows)
    assert "Hamelman" in taken().yeast
    dried = taken(QUAY.replace("fresh yeast ", "instant yeast "))
    assert "instant yeast" in dried.yeast and "Hamelman" not in dried.yeast


def test_a_class_weighs_the_same_set_over_and_over() -> None:
    assert [sets_for(n) for n in (1, 10, 11, 12)] == [3, 12, 14, 15]
    view = taken(options=PrintOptions(benches=12))
    assert view.bench is not None and "15 sets" in view.bench.sets
    for _, lines in view.bench.stages:
        for share in lines:
            one, whole = (grams(text) for text in (share.one, share.whole))
            assert whole == pytest.approx(15 * one, rel=0.001), share


def grams(text: str) -> float:
    figure, unit = text.split("\N{NO-BREAK SPACE}")
    return float(figure.replace(",", "")) * {"g": 1, "kg": 1000}[unit]


def test_blanks_hide_the_per_cents_until_the_last_page() -> None:
    page = html_of(taken(options=PrintOptions(blanks=True)))
    question, answer = page.split(M.words["handout.answers"], 1)
    assert "70\N{NO-BREAK SPACE}%" not in question and "70\N{NO-BREAK SPACE}%" in answer
    assert M.words["handout.answers"] not in html_of(taken())


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
    # 11 h of ripening, 2 h and 67.5 min of waits, 42.5 min of bake, 2 h of cooling, 12 min of mixing, 40 s of shaping.
    assert (data["cookTime"], data["totalTime"]) == ("PT43M", "PT17H3M")
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
    (keep,) = [doing.text for doing in doings(taken(text)) if doing.text.startswith("Keep")]
    assert "3" not in keep


def test_the_size_of_a_tin_is_said() -> None:
    text = QUAY.replace("    prove covered", "    place in long tin\n    prove covered")
    text += "\nkitchen K\n  tin long tin\n    volume 1904 ml\n"
    (place,) = [doing for doing in doings(taken(text)) if doing.text.startswith("Place")]
    assert place.notes[-1].replace("\N{NO-BREAK SPACE}", " ").startswith("or another that holds about 1,900 ml")


def test_hostile_names_stay_text() -> None:
    for hostile in (HOSTILE, "</script><script>alert(1)</script>", "]]>\u2028--><!--", '"}]}'):
        view = taken()._replace(title=hostile, about=hostile)
        row = view.sections[0].rows[0]._replace(name=hostile)
        section = view.sections[0]._replace(rows=(row,), title=hostile)
        times = RecipeTimes(Fraction(600), Fraction(7200))
        machine = recipe_json(hostile, hostile, "en-GB", [hostile], [f"1 g {hostile}"], (section,), times)
        view = view._replace(sections=(section,), recipe=machine)
        page = html_of(view)
        data = recipe(page)
        assert data["name"] == hostile and data["recipeIngredient"][0].endswith(hostile)
        assert seen(page).tags == seen(html_of(view._replace(title="x", about="x"))).tags
        assert "<script>alert" not in page


def test_the_data_fits_the_schema() -> None:
    import jsonschema

    for options in (PrintOptions(), PrintOptions(benches=3, blanks=True)):
        jsonschema.validate(json.loads(json.dumps(data_of(taken(options=options)))), schema())


def test_the_pdf_is_two_or_three_pages_and_says_it_all() -> None:
    made = pdf_of(html_of(taken()))
    assert isinstance(made, Pdf) and made.faults == () and made.missing == ()
    pages = [page.extract_text() for page in PdfReader(io.BytesIO(made.content)).pages]
    assert 2 <= len(pages) <= 3
    whole = " ".join(" ".join(pages).split()).replace("\N{NO-BREAK SPACE}", " ")
    for words in ("Quay loaf", "2 loaves at 900 g dough", "gas mark", "Take care at home", "Per cent of all flour"):
        assert words in whole
    klass = pdf_of(html_of(taken(options=PrintOptions(benches=12, blanks=True))))
    assert isinstance(klass, Pdf) and len(PdfReader(io.BytesIO(klass.content)).pages) == len(pages) + 2
    assert made == pdf_of(html_of(taken()))


def test_no_recipe_card() -> None:
    page = html_of(taken()).casefold()
    for word in ("servings", "serves", "prep time", "cook time", "<button", "<input", "print recipe", "1x", "2x"):
        assert word not in page


def test_every_text_of_the_view_is_printed_and_stays_text() -> None:
    """But our own drawings, the picture's address and the recipe, which are markup by design."""
    options = PrintOptions(benches=3)
    view = taken(options=options)
    whole = html_of(view)
    ours = ("svg", "data", "recipe", "language", "paper", "form")
    paths = [path for path in fields(view) if path.rsplit(".", 1)[-1] not in ours]
    unprinted = [path for path in paths if html_of(with_mark(view, path.strip(".").split("."), "QQQ")) == whole]
    unprinted = [path for path in unprinted if not path.endswith("figures.0.title") and ".figures." not in path]
    assert unprinted == []
    hostile = view
    for path in paths:
        if ".figures." not in path:
            hostile = with_mark(hostile, path.strip(".").split("."), HOSTILE)
    page = html_of(hostile)
    assert seen(page).tags == seen(whole).tags


@pytest.mark.parametrize("width", [375, 768])
def test_nothing_overflows_on_a_phone(width: int, tmp_path: Path) -> None:
    from shutil import which

    from playwright.sync_api import sync_playwright

    path = which("chromium") or which("google-chrome")
    if path is None:
        pytest.skip("no Chromium on this machine")
    (tmp_path / "page.html").write_text(html_of(taken(options=PrintOptions(benches=12, blanks=True))), encoding="utf-8")
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


def test_the_measured_floor_of_an_oven_at_home_is_drawn() -> None:
    """Two loaves of 900 g, 19 cm across each, lie side by side on 46 x 40 cm; on 30 x 30 cm they do not."""
    floors = [
        [figure.title for section in taken(QUAY + home).sections for way in section.ways if way.oven
         for figure in way.oven.figures if "oven's floor" in figure.title]
        for home in (HOME, HOME.replace("46 x 40", "30 x 30"), HOME.replace("    floor 46 x 40 cm\n", ""), "")
    ]  # fmt: skip
    (drawn,), *none = floors
    assert "46 × 40 cm" in drawn and "with 2 pieces" in drawn
    assert none == [[], [], []]


def test_a_core_the_file_does_not_say_is_an_estimate() -> None:
    bare = [phase.core for section in taken(QUAY.replace(" to 97 C core", "")).sections for way in section.ways
            if way.oven for phase in way.oven.phases]  # fmt: skip
    assert [core.replace("\N{NO-BREAK SPACE}", " ") for core in bare if core] == ["about 96 °C (estimate)"]


def test_the_teacher_weighs_out_what_touches_the_bread_too() -> None:
    text = QUAY.replace(
        "    divide\n", "    divide\n    grease trays with butter 24 g in all\n    dust with rice flour 3 g each\n"
    )
    view = taken(text, options=PrintOptions(benches=12))
    assert view.bench is not None
    name, shares = view.bench.stages[-1]
    assert name == M.words["handout.besides"]
    said = {
        s.name: (s.one.replace("\N{NO-BREAK SPACE}", " "), s.whole.replace("\N{NO-BREAK SPACE}", " ")) for s in shares
    }
    # 2 loaves of the 24: 2 g of the butter; 15 sets.
    assert said == {"butter": ("2 g", "30 g"), "rice flour": ("6 g", "90 g")}


US = House("Letter", "US", "F", "American")


def test_a_house_of_fahrenheit_reads_its_own_dial_first() -> None:
    view = taken(QUAY.replace("at 220 C", "at 190 C"), US)
    oven = next(way.oven for section in view.sections for way in section.ways if way.oven)
    phase = tuple(part.replace("\N{NO-BREAK SPACE}", " ") for part in oven.phases[1][1:5])
    assert phase == ("375 °F", "350 °F", "190 °C", "5")
    heads = re.findall(r'<th scope="col">([^<]*)</th>', html_of(view))
    assert heads[-6:] == ["bake", "oven", "convection", "Celsius", "gas mark (British)", "internal"]


def test_ounces_stand_beside_the_grams_where_they_are_asked_for() -> None:
    view = taken(house=US)
    flour = next(row for row in view.sections[-1].rows if row.name == "white flour")
    assert flour.unit == "g" and " oz" in flour.aside.replace("\N{NO-BREAK SPACE}", " ")
    assert view.head[0].value.replace("\N{NO-BREAK SPACE}", " ").startswith("2 loaves at 900 g (1 lb 15¾ oz) dough")
    added = next(row for doing in doings(view) for row in doing.adds)
    assert "oz" in added.aside
    assert "oz" not in text_of(html_of(taken()))


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


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def test_what_is_needed_of_a_preparation_stands_on_the_handout_once() -> None:
    view = taken(WASHED, options=PrintOptions(benches=12))
    (wash,) = view.before
    assert plain(wash.title) == "egg wash 24 g"  # 2 loaves, twice 6 g
    assert plain(wash.rows) == "eggs 19.9 g, milk 4 g, salt 0.1 g"
    assert plain(wash.steps) == "whisk 2 min; strain in jug"
    page = html_of(view)
    assert "a sheet of its own" not in page and page.count("eggs 19.9") == 1
    assert view.bench is not None
    whole = {
        share.name: plain(share.whole) for name, shares in view.bench.stages if name == "egg wash" for share in shares
    }
    assert whole == {"eggs": "298.5 g", "milk": "60 g", "salt": "1.5 g"}
    assert not [s for name, shares in view.bench.stages if name != "egg wash" for s in shares if s.name == "egg wash"]


def test_a_preparation_that_needs_another() -> None:
    text = WASHED.replace("preparation egg wash\n", "preparation egg wash\n  herb salt              10 g\n")
    text += "\npreparation herb salt\n  salt 100 g\n  thyme 100 g\n  grind\n  good for 30 d\n"
    assert [made.title.split(" ")[0] for made in taken(text).before] == ["herb", "egg"]


def test_no_preparation_no_block() -> None:
    assert taken().before == () and "Make before" not in html_of(taken())


def test_two_waters_say_which() -> None:
    text = QUAY.replace("hold back salt", "hold back salt and water 5%").replace("add salt", "add salt and water")
    view = taken(text, options=PrintOptions(benches=12))
    assert view.bench is not None
    names = [share.name for share in view.bench.stages[1][1]]
    assert len(names) == len(set(names)) and "water" in names and "water, held back" in names


def test_every_page_is_headed_for_who_gets_it() -> None:
    made = pdf_of(html_of(taken(options=PrintOptions(benches=12, blanks=True))))
    assert isinstance(made, Pdf)
    heads = [page.extract_text() for page in PdfReader(io.BytesIO(made.content)).pages]
    assert ["to take home" in head for head in heads] == [True] * (len(heads) - 2) + [False, False]


def test_pieces_are_divided_without_what_is_added_below() -> None:
    (divide,) = [plain(doing.text) for doing in doings(taken(NUTTY_ROLLS)) if doing.text.startswith("Divide")]
    assert "rolls at 98 g dough, 110 g with what is added below" in divide and "at 110 g dough" not in divide
    assert "1 loaf at 900 g dough" in divide or "loaves at 900 g dough" in divide


def advice(text: str) -> str:
    return plain(" ".join(line for s in taken(text).sections for w in s.ways if w.oven for line in w.oven.advice))


@every(
    [
        ("24 loaves at 900 g", "oval", True), ("24 loaves at 700 g", "round", True), ("24 loaves at 1200 g", "round", True),
        ("24 loaves at 1500 g", "round", False), ("24 loaves at 900 g", "long", False),
        ("24 baguettes at 360 g", "long", False), ("24 baguettes at 360 g", "as baguette", False),
        ("24 loaves at 900 g", "as wreath", False), ("24 loaves at 900 g", "as plait of 3", False),
        ("24 rolls at 90 g", "round", False), ("24 loaves at 400 g", "flat", False), ("24 sticks at 400 g", "round", False),
    ],
    at_least=12,
)  # fmt: skip
def test_a_pot_is_offered_for_what_fits_one(makes: str, shape: str, potted: bool) -> None:
    text = QUAY.replace("24 loaves at 900 g", makes).replace("shape oval 20 s each", f"shape {shape}")
    said = advice(text)
    assert ("heavy pot" in said, "pot or the stone" in said) == (potted, potted)
    assert "upturned tray" in said and "pour a cup of boiling water" in said


def test_what_lies_on_a_tray_is_offered_neither_pot_nor_stone() -> None:
    text = QUAY.replace("    prove covered", "    place on black tray\n    prove covered")
    assert "upturned tray" not in advice(text) and "pour a cup of boiling water" in advice(text)


def test_the_order_of_the_bowl_stands_at_the_first_mix() -> None:
    said = {doing.text: [plain(note) for note in doing.notes] for doing in doings(taken())}
    found = [note for notes in said.values() for note in notes if note.startswith("into the bowl")]
    assert found == ["into the bowl: water, poolish, then white flour, whole rye flour, fresh yeast"]
