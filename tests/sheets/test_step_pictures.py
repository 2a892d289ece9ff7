"""The prep sheet's pictures: each beside its step, once, the baker's own before ours; and none where none are wanted."""

from __future__ import annotations

import io
import re
from pathlib import Path
from typing import Any

import pytest
from loaves import HOUSE_POOLISH, LOAF_OF_HOUSE_POOLISH, vary
from pypdf import PdfReader
from sheets.test_own_pictures import PNG, SVG
from sheets.work import ISSUE, PLAIN_HOUSE, lines_of, parts_of, prepared, sheet

from manchet.cli.main import command
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.forms.prep_sheet.view import BakeTable, LeafLine, PrepSheet
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.parts.views import Illustration
from manchet.sheets.registry import html_of

LOAF = """formula Quay loaf
  kind tin loaf
  makes 4 loaves at 900 g dough
  makes 12 rolls at 60 g dough
  bake loss 12%

  dough
    white flour         2600 g
    water               1800 g
    salt                  50 g
    instant yeast         20 g
    mix slow 8 min to 25 C
    ferment covered 90 min at 25 C with 2 folds every 30 min
    divide
    for the loaves
      shape round
      rest covered 15 min
      shape long
      place in long tin, seam down
      prove covered 60 min at 26 C to 20 mm below the rim until "a finger's mark fills slowly"
      score "one long cut, 6 mm deep"
      bake 15 min at 240 C, steam
      bake 20 min at 220 C falling to 200 C, vent open
      cool 2 h
    for the rolls
      shape round
      prove covered 50 min at 26 C until "a finger's mark fills slowly"
      score "a cross"
      bake 15 min at 230 C
      cool 30 min

kitchen House
  tin long tin
    inside 250 x 110 x 100 mm
    count 4
"""


def lines(view: PrepSheet) -> list[LeafLine]:
    return list(lines_of(view))


def curves(view: PrepSheet) -> list[Illustration]:
    return [one for part in parts_of(view) if isinstance(part, BakeTable) for one in part.figures]


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def test_each_drawing_stands_beside_its_step() -> None:
    shown = [
        (plain(line.text), [plain(one.title) for one in line.figures]) for line in lines(sheet(LOAF)) if line.figures
    ]
    begin = [(text.split(",")[0].split(" at ")[0], [title[:24] for title in titles]) for text, titles in shown]
    assert begin == [
        ("Ferment covered 90 min", ["The dough in its tub, fro"[:24]]),
        ("Shape round · rest covered 15 min", ["Pre-shaped, from above: "]),
        ("Shape long · place seam down in long tin", ["A long loaf from above, "]),
        ("Prove covered 60 min", ["A tin cut through, to sc", "A finger's mark in three"]),
        ("Score: one long cut", ["One long cut along the l"]),
        ("Shape round", ["A ball seen from the sid"]),
        ("Score: a cross", ["A cross; the blade uprig"]),
    ]
    (level, _) = next(titles for text, titles in shown if text.startswith("Prove"))
    # 900 g / 1.1 g/ml = 818 ml on a floor of 250 x 110 mm: 30 mm.
    assert (
        "before proving: about 30 mm" in level and "after proving 20 mm below the rim" in level and "seam down" in level
    )


def test_nothing_is_drawn_twice_and_the_curve_stands_under_its_bake() -> None:
    view = sheet(LOAF)
    shown = [one.svg for line in lines(view) for one in line.figures] + [one.svg for one in curves(view)]
    assert len(shown) == len(set(shown)) == 9
    (curve,) = curves(view)
    assert curve.title.startswith("The oven's heat")


def test_a_step_that_nothing_can_be_shown_of_has_nothing() -> None:
    silent = [line for line in lines(sheet(LOAF)) if line.text.startswith(("Mix", "Rest", "Cool"))]
    assert silent and not any(line.figures for line in silent)


def test_no_pictures_means_none() -> None:
    view = prep_sheet(prepared(LOAF), ISSUE, PLAIN_HOUSE, pictures=None)
    assert not curves(view) and not any(line.figures for line in lines(view)) and "<svg" not in html_of(view)


def alternatives(reader: PdfReader) -> list[str]:
    def walk(node: Any) -> list[str]:
        node = node.get_object()
        found = [str(node["/Alt"])] if node.get("/S") == "/Figure" else []
        kids = node.get("/K", [])
        for kid in kids if isinstance(kids, list) else [kids]:
            kid = kid.get_object()
            if isinstance(kid, dict) and ("/S" in kid or "/K" in kid):
                found += walk(kid)
        return found

    return walk(reader.trailer["/Root"]["/StructTreeRoot"])


def test_the_pdf_says_every_picture_in_words_and_is_the_same_each_time() -> None:
    view = sheet(LOAF)
    made = pdf_of(html_of(view))
    assert isinstance(made, Pdf) and made.faults == () and made.missing == ()
    titles = [one.title for line in lines(view) for one in line.figures] + [one.title for one in curves(view)]
    assert sorted(alternatives(PdfReader(io.BytesIO(made.content)))) == sorted(titles)
    assert made == pdf_of(html_of(sheet(LOAF)))


@pytest.mark.parametrize("width", [375, 768])
def test_a_phone_shows_the_step_over_its_picture_and_nothing_overflows(width: int, tmp_path: Path) -> None:
    from shutil import which

    from playwright.sync_api import sync_playwright

    path = which("chromium") or which("google-chrome")
    if path is None:
        pytest.skip("no Chromium on this machine")
    (tmp_path / "page.html").write_text(html_of(sheet(LOAF)), encoding="utf-8")
    with sync_playwright() as play:
        chromium = play.chromium.launch(executable_path=path, args=["--no-sandbox", "--disable-gpu"])
        page = chromium.new_page(viewport={"width": width, "height": 900})
        page.goto((tmp_path / "page.html").as_uri())
        wide = page.evaluate("document.documentElement.scrollWidth")
        narrowest = page.evaluate("Math.min(...[...document.querySelectorAll('.said')].map(said => said.clientWidth))")
        chromium.close()
    assert wide <= width and narrowest > 140


# ---- the baker's own ------------------------------------------------------------------------------

OWN = LOAF.replace("  bake loss 12%\n", '  bake loss 12%\n  picture "HEAD"\n').replace(
    "  dough\n", '  dough\n    picture "STAGE"\n'
).replace("    for the rolls\n      shape round\n", '    for the rolls\n      shape round\n        picture "STEP"\n')  # fmt: skip


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    (tmp_path / "cuts.svg").write_bytes(SVG)
    (tmp_path / "photo.png").write_bytes(PNG)
    (tmp_path / "tub.svg").write_bytes(SVG.replace(b"Two cuts", b"The tub"))
    (tmp_path / "bad.svg").write_bytes(SVG.replace(b"<path", b"<script/><path"))
    monkeypatch.chdir(tmp_path)
    return tmp_path


def built(bakery: Path, head: str, stage: str, step: str, *more: str) -> dict[str, str]:
    text = OWN.replace("HEAD", head).replace("STAGE", stage).replace("STEP", step)
    (bakery / "quay.bake").write_text(text, encoding="utf-8")
    command(["build", "quay.bake", "--only", "sheet,handout,html", *more])
    return {kind: (bakery / "output" / f"quay-loaf.{kind}.html").read_text("utf-8") for kind in ("sheet", "handout")}


def test_head_stage_and_step_show_their_own_on_both_forms(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for page in built(bakery, "photo.png", "tub.svg", "cuts.svg").values():
        head, _, work = page.partition("</header>")
        assert 'alt="picture: photo"' in head and "data:image/png" in head
        assert 'alt="The tub"' in work and 'alt="Two cuts"' in work and "A ball seen from the side" not in page
        assert work.index('alt="The tub"') < work.index("Ferment") < work.index('alt="Two cuts"')
    assert "[picture" not in capsys.readouterr().err


@pytest.mark.parametrize("place", [0, 1, 2])
@pytest.mark.parametrize(("name", "report"), [("none.svg", "picture-missing"), ("bad.svg", "picture-not-plain"),
                                              ("../x.svg", "picture-outside")])  # fmt: skip
def test_one_that_cannot_be_shown_is_told_once_where_it_is_named(
    bakery: Path, capsys: pytest.CaptureFixture[str], place: int, name: str, report: str
) -> None:
    names = ["cuts.svg", "cuts.svg", "cuts.svg"]
    names[place] = name
    pages = built(bakery, *names)
    said = capsys.readouterr().err
    line = next(n for n, text in enumerate((bakery / "quay.bake").read_text("utf-8").splitlines(), 1) if name in text)
    assert said.count(f"[{report}]") == 1 and re.search(rf"quay\.bake:{line}:\d+: warning", said), said
    assert "<script/>" not in pages["sheet"] and "<script/>" not in pages["handout"]


def test_the_same_bad_file_in_three_places_is_one_cause(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    built(bakery, "bad.svg", "bad.svg", "bad.svg")
    assert capsys.readouterr().err.count("[picture-not-plain]") == 1


def test_without_pictures_no_file_is_asked_for(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for page in built(bakery, "none.svg", "bad.svg", "photo.png", "--no-pictures").values():
        assert "<svg" not in page and "<img" not in page
    assert "[picture" not in capsys.readouterr().err


def test_a_stage_of_the_house_has_its_pictures_beside_its_own_file(
    bakery: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (bakery / "stages").mkdir()
    (bakery / "stages" / "levain.svg").write_bytes(SVG.replace(b"Two cuts", b"Risen"))
    stage = f'{HOUSE_POOLISH}    picture "levain.svg"\n'
    (bakery / "stages" / "levains.bake").write_text(stage, encoding="utf-8")
    loaf = vary(LOAF_OF_HOUSE_POOLISH, formula="Pier loaf")
    (bakery / "loaf.bake").write_text(loaf, encoding="utf-8")
    command(["build", ".", "--jobs", "1", "--only", "sheet,html"])
    assert "[picture" not in capsys.readouterr().err
    assert 'alt="Risen"' in (bakery / "output" / "pier-loaf.sheet.html").read_text("utf-8")
