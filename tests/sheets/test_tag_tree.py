"""What PDF/UA (ISO 14289-1) asks of every form, read back from its PDF: the clauses are named beside each test."""

from __future__ import annotations

from functools import cache
from itertools import pairwise
from typing import Any

import pytest
from pypdf import PdfReader
from sheets.each_form import sample_of
from sheets.tags import Tag, named_in, painted_by_mark, reader_of, root_of, tags_of, text_by_mark

from manchet.sheets.form import Form
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.words import DEFAULT, words_of
from manchet.sheets.registry import FORMS, form_called, html_of

each_form = pytest.mark.parametrize("form", FORMS, ids=lambda form: form.name)


@cache
def read(form: Form) -> PdfReader:
    made = pdf_of(html_of(sample_of(form)), form.layouts)
    assert isinstance(made, Pdf), made
    return reader_of(made.content)


@cache
def tree(form: Form) -> Tag:
    return tags_of(read(form))


@each_form
def test_it_says_what_it_is(form: Form) -> None:
    """5, 7.1, 7.2: the mark of PDF/UA, its title on the window, its language."""
    root, told = root_of(read(form)), read(form).metadata
    assert b'pdfuaid:part="1"' in root["/Metadata"].get_data() or b"<pdfuaid:part>1<" in root["/Metadata"].get_data()
    assert root["/MarkInfo"]["/Marked"] and root["/Lang"] == "en-GB"
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
    assert told is not None and str(told.title).endswith(words_of(DEFAULT)[f"forms.{form.name}"])


@each_form
def test_all_that_is_painted_is_in_the_tree_or_an_artefact(form: Form) -> None:
    """7.1, 7.8: nothing without a mark, no mark that hangs nowhere, and the running head and foot outside the work."""
    reader = read(form)
    mapped = root_of(reader)["/StructTreeRoot"]["/ParentTree"]["/Nums"]
    elements = [tag.raw.indirect_reference for tag in tree(form).below()]
    for number, page in enumerate(reader.pages):
        owners = mapped[mapped.index(page["/StructParents"]) + 1].get_object()
        marks = painted_by_mark(page, reader)
        assert "" not in marks, (number, marks[""])
        for mark in marks:
            if isinstance(mark, int):
                owner = owners[mark]
                assert owner in elements and mark in owner.get_object()["/K"], (number, mark)
        assert form.is_label or "Local codes" in text_by_mark(page)["Artifact"]
    assert "Local codes and licensed practice come first" not in tree(form).said or form.name == "house"
    assert len(tree(form).said) > (60 if form.is_label else 100)


@each_form
def test_no_head_is_skipped(form: Form) -> None:
    """7.4.2: the first head of the first order, and each at most one below the head before it."""
    levels = [int(tag.role[1]) for tag in tree(form).all("H1", "H2", "H3", "H4", "H5", "H6")]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(level - before <= 1 for before, level in pairwise(levels)), levels
    assert all(tag.said.strip() for tag in tree(form).all("H1", "H2", "H3", "H4"))


@each_form
def test_lists_have_items_and_items_a_body(form: Form) -> None:
    """7.6; ISO 32000-1, 14.8.4.3.3."""
    lists = tree(form).all("L")
    assert all(item.role in ("LI", "L", "Caption") for each in lists for item in each.kids)
    items = [item for each in lists for item in each.kids if item.role == "LI"]
    assert all([kid.role for kid in item.kids if kid.role != "Lbl"] == ["LBody"] for item in items)
    assert len(items) == len(tree(form).all("LI")) == len(tree(form).all("LBody"))


@each_form
def test_each_cell_has_heads_that_are_there(form: Form) -> None:
    """7.5: heads say what they stand over; the heads of a cell are heads of its own table, found in the table of names."""
    named = named_in(root_of(read(form)))
    for table in tree(form).all("Table"):
        lines = [line for part in table.kids for line in ([part] if part.role == "TR" else part.kids)]
        assert {part.role for part in table.kids} <= {"THead", "TBody", "TFoot", "TR", "Caption"}
        assert {line.role for line in lines} == {"TR"} and {cell.role for line in lines for cell in line.kids} <= {
            "TH",
            "TD",
        }
        heads = {tag.raw["/ID"].original_bytes: tag for line in lines for tag in line.kids if tag.role == "TH"}
        assert heads
        for name, head in heads.items():
            assert head.table["/Scope"] in ("/Row", "/Column", "/Both") and head.said.strip()
            assert named[name] == head.raw
        for line in lines:
            for cell in line.kids:
                if cell.role == "TD":
                    assert {name.original_bytes for name in cell.table["/Headers"]} <= set(heads)


def test_a_weight_of_the_class_set_is_headed_by_its_stage_its_ingredient_and_its_column() -> None:
    """7.5; `scope` and `headers` as HTML has them: what spans a table heads its own group of rows and no other."""
    form = form_called("class")
    view: Any = sample_of(form)
    named = {head.raw["/ID"].original_bytes: " ".join(head.said.split()) for head in tree(form).all("TH")}
    found = {
        (" ".join(cell.said.split()), frozenset(named[head.original_bytes] for head in cell.table["/Headers"]))
        for cell in tree(form).all("TD")
    }
    wanted = {
        (f"{row.weight} {row.unit}", frozenset((stage.title, row.name, words_of(DEFAULT)["class.one_set"])))
        for stage in view.stages
        for row in stage.rows
    }
    assert len(wanted) > 5 and wanted <= found


@each_form
def test_figures_say_what_they_show_and_where(form: Form) -> None:
    """7.3; ISO 32000-1, 14.8.5.4.3: the place in points from the lower left corner, on the paper."""
    for figure in tree(form).all("Figure"):
        assert str(figure.raw.get("/Alt", "")).strip()
        page = figure.raw["/Pg"]["/MediaBox"]
        left, low, right, high = map(float, figure.table["/BBox"])
        assert 0 <= left < right <= float(page[2]) and 0 <= low < high <= float(page[3])


def test_some_form_has_each_kind_of_tag() -> None:
    """So that none of the above is true for want of anything to look at."""
    roles = {tag.role for form in FORMS for tag in tree(form).below()}
    assert {"H1", "H2", "H3", "L", "LI", "LBody", "Table", "THead", "TBody", "TR", "TH", "TD", "Figure", "P"} <= roles
