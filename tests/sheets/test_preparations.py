"""The preparations of a run: what is made ahead and for whom, each in a block that no page parts; a bath fills its vessel."""

from __future__ import annotations

import io
import json
from fractions import Fraction
from pathlib import Path

import pytest
from every import every
from pypdf import PdfReader
from sheets.home import plain
from sheets.test_hostile_text import HOSTILE, fields, poisoned, seen, with_mark
from sheets.work import ISSUE
from works import bakery_of, works

from manchet.batch.order import Order
from manchet.batch.work import Work, work_of
from manchet.cli.main import command
from manchet.formula.model import Formula
from manchet.sheets.form import Ahead
from manchet.sheets.forms.preparations.preparations import preparations
from manchet.sheets.forms.preparations.view import Preparations
from manchet.sheets.page.house import House
from manchet.sheets.page.json_data import data_of
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.published import schema
from manchet.sheets.registry import form_called, html_of
from manchet.workspace.bound_formula import known_preparations
from manchet.workspace.made_ahead import made_ahead

LOAF = """formula {}
  kind soft
  makes {} buns at 100 g dough
  overall
    white flour 100%
    water 60%
    salt 2%
    instant yeast 1%
  dough
    everything else
    mix slow 5 min
    mix fast 5 min to 25 C
    ferment covered 90 min at 25 C
    divide
    shape round
    prove covered 60 min at 26 C
    {}
    bake 15 min at 200 C
    cool 1 h

"""
WASH = """preparation egg wash
  eggs 500 g
  milk 100 g
  salt 2 g
  hold back salt
  whisk 2 min
  add salt
  strain into jug
  good for 1 d at 4 C

"""
BATH = """preparation malt bath
  water {} kg
  malt syrup 30 g
{}  stir 2 min
  good for 1 d at 4 C

"""
BREADS = LOAF.format("Bun", 20, "brush with egg wash 6 g each") + LOAF.format(
    "Ring", 10, "brush with egg wash 4 g each"
)
METRIC, US = House(), House("Letter", "US", "F", "American")


def ahead_of(text: str, more: tuple[str, ...] = ()) -> tuple[Ahead, ...]:
    bakery = bakery_of(text)
    breads = [work for work in works(bakery) if not work.formula.preparation]

    def sized(formula: Formula, grams: Fraction | None) -> Work | None:
        return work_of(formula, Order(dough=grams), bakery.kitchen, bakery.larder).value

    return made_ahead(breads, known_preparations(bakery.formulas), sized, at_home=False, more=more)


def page_of(text: str, house: House = METRIC, more: tuple[str, ...] = ()) -> Preparations:
    return preparations(ahead_of(text, more), ISSUE, house, {})


def test_what_is_wanted_is_the_sum_over_the_breads_of_this_run() -> None:
    (row,) = page_of(BREADS + WASH).ahead
    assert (row.name, row.weight, row.wanted, row.wanted_unit) == ("egg wash", "602", "160", "g")
    assert [(by.name, by.weight) for by in row.by] == [("Bun", "120"), ("Ring", "40")]
    assert plain(row.good_for) == "24 h at 4 °C" and not row.is_bath


def test_one_bread_is_named_without_its_weight() -> None:
    (row,) = page_of(LOAF.format("Bun", 20, "brush with egg wash 6 g each") + WASH).ahead
    assert row.wanted == "120" and [tuple(by) for by in row.by] == [("Bun", "", "")]


def test_more_is_made_where_more_is_wanted_than_the_file_makes() -> None:
    (row,) = page_of(LOAF.format("Bun", 200, "brush with egg wash 6 g each") + WASH).ahead
    assert (row.weight, row.wanted) == ("1,200", "1,200")
    (block,) = page_of(LOAF.format("Bun", 200, "brush with egg wash 6 g each") + WASH).blocks
    assert block.weight == "1,200"


def test_what_goes_into_another_is_counted_and_made_before_it() -> None:
    text = BREADS + WASH.replace("  milk 100 g\n", "  milk 90 g\n  herb milk 10 g\n")
    text += "preparation herb milk\n  milk 500 g\n  thyme 5 g\n  stir 2 min\n  good for 1 d at 4 C\n"
    view = page_of(text)
    assert [row.name for row in view.ahead] == ["herb milk", "egg wash"]
    assert [(by.name, by.weight) for by in view.ahead[0].by] == [("egg wash", "")] and view.ahead[0].wanted == "10"


DIPPED = LOAF.format("Ring", 12, "dip in malt bath 4 g each")


@every(
    [
        ("20", "", "20.03 kg", ""),
        ("0.2", "", "1,000 g", "the usual least of a bath"),
        ("0.2", "  never under 3 kg\n", "3,000 g", "the least its vessel takes"),
    ],
    at_least=3,
)
def test_a_bath_says_what_is_taken_up_and_is_as_large_as_its_vessel_needs(
    litres: str, line: str, makes: str, least: str
) -> None:
    view = page_of(DIPPED + BATH.format(litres, line))
    (row,), (block,) = view.ahead, view.blocks
    assert row.is_bath and (row.wanted, row.wanted_unit) == ("48", "g")
    assert f"{row.weight} {row.unit}" == makes == f"{block.weight} {block.unit}" and block.least == least
    assert "taken up" in seen(html_of(view)).text


def test_what_nobody_wants_is_made_where_it_is_asked_for() -> None:
    view = page_of(LOAF.format("Bun", 20, "rest 1 min") + WASH + BATH.format(20, ""), more=("egg wash", "malt bath"))
    assert [row.wanted for row in view.ahead] == ["", ""] and len(view.blocks) == 2
    assert ahead_of(LOAF.format("Bun", 20, "rest 1 min") + WASH) == ()


def test_what_goes_in_later_has_a_letter_at_its_weight_and_at_its_step() -> None:
    (block,) = page_of(BREADS + WASH).blocks
    (stage,) = block.stages
    assert [(later.letter, later.row.name) for later in stage.later] == [("A", "salt")]
    (added,) = [later for step in stage.steps for clause in step.clauses for later in clause.adds]
    assert (added.letter, added.row.name) == ("A", "salt")
    assert (added.row.weight, added.row.unit) == (stage.later[0].row.weight, stage.later[0].row.unit)


def sides(view: Preparations) -> list[str]:
    made = pdf_of(html_of(view), form_called("preparations").layouts)
    assert isinstance(made, Pdf) and made.faults == () and made.missing == ()
    return [plain(page.extract_text()) for page in PdfReader(io.BytesIO(made.content)).pages]


@pytest.mark.parametrize("house", [METRIC, US], ids=["A4", "Letter"])
def test_no_block_is_parted_and_none_is_more_than_half_a_page(house: House) -> None:
    several = "".join(WASH.replace("egg wash", f"wash {n}") for n in "abcdefghij")
    view = page_of(BREADS + WASH + several, house, tuple(f"wash {n}" for n in "abcdefghij"))
    pages = sides(view)
    assert len(view.blocks) == 11 and len(pages) <= 4
    heads = [sum(page.count("good for 24 h") for page in pages), sum(page.count("use by") for page in pages)]
    assert heads == [11, 11]
    assert all(page.count("good for 24 h") == page.count("use by") for page in pages)


def test_the_data_fits_the_schema_and_every_text_is_printed() -> None:
    import jsonschema

    view = page_of(BREADS + WASH)
    jsonschema.validate(json.loads(json.dumps(data_of(view))), schema())
    page = html_of(view)
    ours = (
        ".language",
        ".paper",
        ".form",
        ".part",
        ".level",
        ".address",
        ".percent",
        ".title",
        ".catchword",
        "adds.0.row.aside",
    )
    paths = [path for path in fields(view) if not path.endswith(ours)]
    assert [path for path in paths if html_of(with_mark(view, path.strip(".").split("."), "QQQ")) == page] == []
    assert seen(html_of(poisoned(view))).tags == seen(page).tags and HOSTILE in seen(html_of(poisoned(view))).text


# ---- as it is built -------------------------------------------------------------------------------


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    (tmp_path / "breads.bake").write_text(BREADS, encoding="utf-8")
    (tmp_path / "wash.bake").write_text(WASH + BATH.format("20", ""), encoding="utf-8")
    (tmp_path / "kitchen.bake").write_text("kitchen Row\n  oven mother\n    heat wood\n", encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1795000000")
    return tmp_path


def built(capsys: pytest.CaptureFixture[str], *what: str) -> list[str]:
    assert command(["build", *what, "--jobs", "1"]) == 0
    return sorted(Path(line).name for line in capsys.readouterr().out.split())


def test_a_preparation_has_no_sheet_and_no_card_of_its_own(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert built(capsys, ".", "--only", "sheet,card,preparations,html") == [
        "bun.card.html", "bun.sheet.html", "ring.card.html", "ring.sheet.html", "row.preparations.html",
    ]  # fmt: skip
    page = seen((bakery / "output" / "row.preparations.html").read_text("utf-8")).text
    assert "malt bath" in page and "wash.bake" in page


def test_one_that_is_asked_for_by_name_has_its_half_page_and_its_card(
    bakery: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert built(capsys, "egg wash", "--only", "sheet,card,preparations,html") == [
        "egg-wash.card.html", "egg-wash.preparations.html",
    ]  # fmt: skip
    assert "Make ahead" not in (bakery / "output" / "egg-wash.preparations.html").read_text("utf-8")


def test_who_asks_for_the_sheet_of_a_preparation_is_told_where_it_stands(
    bakery: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert command(["build", "egg wash", "--only", "sheet,html"]) == 1
    assert "no sheet was made: a preparation has none; write --only preparations" in capsys.readouterr().err
    assert command(["build", ".", "--only", "sheet,html"]) == 0


def test_the_page_says_of_which_files_it_is(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    def foot() -> str:
        built(capsys, ".", "--only", "preparations,json")
        running = json.loads((bakery / "output" / "row.preparations.json").read_text("utf-8"))["running"]
        return f"{running['file']} {running['digest']}"

    first = foot()
    assert first.startswith("wash.bake ")
    (bakery / "kitchen.bake").write_text("kitchen Row\n  oven mother\n    heat gas\n", encoding="utf-8")
    assert foot() == first
    wash = bakery / "wash.bake"
    wash.write_text(wash.read_text("utf-8").replace("100 g", "101 g"), encoding="utf-8")
    assert foot() != first


def test_a_bread_that_is_asked_for_by_name_brings_what_it_wants(
    bakery: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert built(capsys, "Ring", "--only", "sheet,preparations,html") == ["ring.sheet.html", "row.preparations.html"]
    page = seen((bakery / "output" / "row.preparations.html").read_text("utf-8")).text
    assert "egg wash" in page and "malt bath" not in page


def test_ahead_is_what_it_is_made_for() -> None:
    (each,) = ahead_of(BREADS + WASH)
    assert each.wanted == Fraction(160) and each.because is None and not each.dipped
