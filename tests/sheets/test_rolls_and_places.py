"""Paper of no fixed height is cut off where its work ends; of a place of fixed height it is said that it is too small."""

from __future__ import annotations

import io

from pypdf import PdfReader

from manchet.sheets.page.layouts import PageLayout
from manchet.sheets.page.pdf import Pdf, pdf_of

MM = 72 / 25.4


def page(body: str, marks: str = "", style: str = "") -> str:
    return (
        '<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A label</title><style>'
        f"@page {{ size: 62mm 900mm; margin: 3mm; }} body {{ margin: 0; font-size: 9pt; line-height: 1.2; }} {style}"
        f'</style></head><body class="label normal"{marks}>{body}</body></html>'
    )


def made(html: str, *layouts: PageLayout) -> Pdf:
    pdf = pdf_of(html, layouts or (PageLayout("normal"),))
    assert isinstance(pdf, Pdf) and pdf.faults == ()
    return pdf


def heights(pdf: Pdf) -> list[float]:
    return [round(float(one.mediabox.height) / MM, 1) for one in PdfReader(io.BytesIO(pdf.content)).pages]


def test_a_roll_is_cut_where_each_page_ends() -> None:
    lines = "<p style='margin: 0'>flour</p>"
    two = f"<div>{lines * 10}</div><div style='break-before: page'>{lines * 20}</div>"
    assert heights(made(page(two))) == [900, 900]
    short, long = heights(made(page(two, " data-roll")))
    line = 9 * 1.2 / MM
    assert abs(short - (6 + 10 * line)) < 0.3 and abs(long - (6 + 20 * line)) < 0.3


def test_text_stands_on_what_is_left() -> None:
    (only,) = PdfReader(io.BytesIO(made(page("<p>flour</p>", " data-roll")).content)).pages
    found: list[float] = []
    only.extract_text(
        visitor_text=lambda text, cm, tm, *_: found.append(tm[5] * cm[3] + cm[5]) if text.strip() else None
    )
    assert 0 < found[0] < only.mediabox.height


PLACES = ".place { height: 20mm; } .normal .place { font-size: 12pt; } .small .place { font-size: 7pt; }"


def test_the_first_layout_in_which_everything_has_room_is_taken() -> None:
    layouts = PageLayout("normal"), PageLayout("small", 40)
    few, some, many = (
        page(f"<div class='place'>{'flour, water and salt ' * n}</div>", style=PLACES) for n in (4, 12, 60)
    )
    assert [(made(one, *layouts).layout.split()[0], made(one, *layouts).crowded) for one in (few, some)] == [
        ("normal", 0),
        ("small", 0),
    ]
    assert made(many, *layouts).crowded == 1
