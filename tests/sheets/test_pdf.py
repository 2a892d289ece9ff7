"""The PDF: pages, margins, sizes of type, fonts inside, tags, the same bytes twice, and what a missing sign says."""

from __future__ import annotations

import io
import subprocess
import sys
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader
from sheets import samples, samples_card

from manchet.sheets.page import pdf as pdf_module
from manchet.sheets.page.pdf import NoPdf, Pdf, pdf_of
from manchet.sheets.registry import html_of

MM = 72 / 25.4
SHEET, CARD = samples.ebb_rye(), samples_card.night_card()


@cache
def pdf_of_view(view: Any) -> Pdf:
    made = pdf_of(html_of(view))
    assert isinstance(made, Pdf), made
    assert made.faults == ()
    return made


@pytest.fixture(scope="module")
def sheet() -> PdfReader:
    return PdfReader(io.BytesIO(pdf_of_view(SHEET).content))


class TextRun:
    """A run of text on a page: what, how large (points), how far up from the foot (points)."""

    def __init__(self, text: str, size: float, y: float) -> None:
        self.text, self.size, self.y = text, size, y


def text_runs(page: Any) -> list[TextRun]:
    found = []

    def visit(text: str, cm: Any, tm: Any, font: Any, size: float) -> None:
        if text.strip():
            scale = abs(tm[3] * cm[3])
            y = tm[5] * cm[3] + cm[5]
            found.append(TextRun(text.strip(), round(abs(size) * scale, 1), y))

    page.extract_text(visitor_text=visit)
    return found


def test_pages_have_the_paper_asked_for(sheet: PdfReader) -> None:
    assert {(round(p.mediabox.width), round(p.mediabox.height)) for p in sheet.pages} == {(595, 842)}
    letter = PdfReader(io.BytesIO(pdf_of_view(SHEET._replace(paper="Letter")).content))
    assert {(round(p.mediabox.width), round(p.mediabox.height)) for p in letter.pages} == {(612, 792)}
    card = PdfReader(io.BytesIO(pdf_of_view(CARD).content))
    assert {(round(p.mediabox.width), round(p.mediabox.height)) for p in card.pages} == {(595, 842)}


def test_the_sheet_has_the_pages_it_needs_and_says_which(sheet: PdfReader) -> None:
    texts = [page.extract_text() for page in sheet.pages]
    assert len(texts) == 2
    for number, text in enumerate(texts, 1):
        assert f"prep sheet {number} / 2" in text and "Local codes and licensed practice come first." in text
        for always in ("Ebb rye", "2 mixes", "Thu 26 Nov 2026", "ebb-rye.bake", "4f2a91c", "9b1e 07d4", "14 Nov 2026"):
            assert always in text, (number, always)


def test_each_stage_stands_with_its_steps_on_one_side(sheet: PdfReader) -> None:
    texts = [" ".join(page.extract_text().split()) for page in sheet.pages]
    for weighed, done in (("ripe rye starter", "Keep 60 g"), ("1,350", "Cool 1–2 h"), ("2,025", "mix fast 2 min")):
        assert any(weighed in text and done in text for text in texts), (weighed, done)


def test_three_sizes_of_type_hold(sheet: PdfReader) -> None:
    """Weights at least 16 points, steps at least 11, and nothing smaller than 8."""
    found = [piece for page in sheet.pages for piece in text_runs(page)]
    assert min(piece.size for piece in found) >= 8
    for starts, least in ((("1,515", "1,180", "2,025", "13.5"), 16), (("Mix by hand", "Ripen covered", "Add A"), 11)):
        for start in starts:
            sizes = [piece.size for piece in found if piece.text.startswith(start)]
            assert sizes and min(sizes) >= least, (start, sizes)


def test_the_clip_and_the_wet_hand_have_their_margins(sheet: PdfReader) -> None:
    """What stands in the margins names the sheet, and is small."""
    for page in sheet.pages:
        for piece in text_runs(page):
            if not 11 * MM < piece.y < 842 - 15 * MM:
                assert piece.size <= 8, f"{piece.text} is large and stands in the margin"


def test_what_stands_on_every_page_is_an_artefact(sheet: PdfReader) -> None:
    """ISO 14289-1, 7.8: running heads and feet are artefacts of the pagination; nothing else of a page's text is."""
    for page in sheet.pages:
        artefacts, work = marked_text(page)
        assert artefacts.count("Local codes") == 1 and "Ebb rye · 2 mixes" in artefacts
        assert "Local codes" not in work and "4f2a91c" not in work and len(work) > 100


def marked_text(page: Any) -> tuple[str, str]:
    """The text that is marked as an artefact, and the rest."""
    inside: list[bool] = []
    said = {True: "", False: ""}

    def mark(operator: bytes, operands: Any, *_: Any) -> None:
        if operator in (b"BDC", b"BMC"):
            inside.append(operands[0] == "/Artifact")
        elif operator == b"EMC":
            inside.pop()

    def hear(text: str, *_: Any) -> None:
        said[bool(inside) and inside[-1]] += text

    page.extract_text(visitor_operand_before=mark, visitor_text=hear)
    return said[True], said[False]


def test_fonts_are_inside_and_ours_alone(sheet: PdfReader) -> None:
    names = set()
    for page in sheet.pages:
        for font in page["/Resources"]["/Font"].values():
            inner = font.get_object()["/DescendantFonts"][0].get_object()
            descriptor = inner["/FontDescriptor"].get_object()
            assert any(key in descriptor for key in ("/FontFile2", "/FontFile3"))
            names.add(str(descriptor["/FontName"]).split("+")[-1])
    assert names == {"Source-Sans", "Source-Sans-Bold"}


@pytest.mark.parametrize("view", [SHEET, CARD], ids=["sheet", "card"])
def test_it_is_tagged_and_says_its_title_and_language(view: Any) -> None:
    reader = PdfReader(io.BytesIO(pdf_of_view(view).content))
    root = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"] is True or root["/MarkInfo"]["/Marked"].value is True
    assert root["/Lang"] == "en-GB"
    assert reader.metadata is not None and str(reader.metadata.title).startswith("Ebb rye")
    kinds = kinds_of(root["/StructTreeRoot"])
    assert {"/H1", "/H2", "/Table", "/TH", "/TD"} <= kinds
    assert b"pdfuaid" in root["/Metadata"].get_data()


def kinds_of(node: Any) -> set[str]:
    node = node.get_object()
    found = {str(node["/S"])} if "/S" in node else set()
    kids = node.get("/K", [])
    for kid in kids if isinstance(kids, list) else [kids]:
        kid = kid.get_object()
        if isinstance(kid, dict) and ("/K" in kid or "/S" in kid):
            found |= kinds_of(kid)
    return found


def test_table_heads_are_said_again_on_the_next_page() -> None:
    night, morning = CARD.days
    days = (night._replace(jobs=night.jobs[:1] * 40), morning)
    reader = PdfReader(io.BytesIO(pdf_of_view(CARD._replace(days=days)).content))
    pages = [page.extract_text() for page in reader.pages]
    assert len(pages) > 2
    assert all("start by" in text for text in pages if "ripen 12–15 h" in text)


def test_same_bytes_twice_and_in_another_process(tmp_path: Path) -> None:
    html = html_of(SHEET)
    here = pdf_of_view(SHEET).content
    again = pdf_of(html)
    assert isinstance(again, Pdf) and again.content == here
    page = tmp_path / "page.html"
    page.write_text(html, encoding="utf-8")
    program = (
        "import sys; from manchet.sheets.page.pdf import pdf_of;"
        "sys.stdout.buffer.write(pdf_of(open(sys.argv[1], encoding='utf-8').read()).content)"
    )
    there = subprocess.run([sys.executable, "-c", program, str(page)], capture_output=True, check=True)
    assert there.stderr == b""
    assert there.stdout == here


def test_other_scripts_print_and_a_sign_that_is_not_there_is_named() -> None:
    assert pdf_of_view(samples.ebb_rye("Хлеб ржаной, Ψωμί σίκαλης, Pão de centeio, Žitný")).missing == ()
    assert pdf_of_view(samples.ebb_rye("Ebb 麦 rye 麦")).missing == ("麦",)


def test_a_page_cannot_ask_for_anything() -> None:
    for asking in (
        '<link rel="attachment" href="file:///etc/hostname">',
        '<img src="http://localhost/x.png">',
        '<style>@import url("file:///etc/passwd");</style>',
    ):
        page = html_of(SHEET).replace("</head>", asking + "</head>")
        with pytest.raises(RuntimeError, match="a sheet asked for"):
            pdf_of(page)


def test_without_pango_there_is_a_reason_and_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    def no_library() -> Any:
        raise OSError("cannot load library 'libpango-1.0-0': no such file")

    monkeypatch.setattr(pdf_module, "_engine", None)
    monkeypatch.setattr(pdf_module, "_import_engine", no_library)
    made = pdf_of(html_of(SHEET))
    assert isinstance(made, NoPdf)
    assert "libpango-1.0-0" in made.reason
    assert made.install


def test_the_search_for_libraries_is_given_back() -> None:
    import ctypes.util

    pdf_of_view(SHEET)
    assert ctypes.util.find_library.__module__ == "ctypes.util"
