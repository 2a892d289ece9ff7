"""How many sides of paper a plan takes: ten at most for eight breads, and the same bytes each time."""

from __future__ import annotations

import io

from day.market import market
from every import every
from pypdf import PdfReader
from sheets.each_form import ISSUE, METRIC

from manchet.sheets.form import PageSetup, Subject
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.registry import forms_about, html_of


@every(["A4", "Letter"], at_least=2)
def test_eight_breads_are_ten_sides_at_most(paper: str) -> None:
    sides = {}
    setup = PageSetup(ISSUE, METRIC._replace(paper=paper))
    for form in forms_about(Subject.DAY):
        view = form.render(market(), setup).value
        assert view is not None, form.name
        html = html_of(view)
        again = form.render(market(), setup).value
        assert again is not None and html == html_of(again), form.name
        made = pdf_of(html, form.layouts)
        assert isinstance(made, Pdf) and not made.faults and not made.missing, form.name
        sides[form.name] = len(PdfReader(io.BytesIO(made.content)).pages)
    assert len(market().day.breads) == 8 and len(sides) == 6
    assert sum(sides.values()) <= 10, sides
