"""Every form stands wherever forms are known: one that is a folder of `forms` is on the command line, published, worded, tried."""

from __future__ import annotations

import io
import json
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from pypdf import PdfReader
from sheets.each_form import METRIC, RECIPES, US, sample_of
from sheets.test_hostile_text import HOSTILE, seen

import manchet.sheets.forms
from manchet.cli.completion import known_options
from manchet.cli.main import command
from manchet.sheets.form import Form, Subject
from manchet.sheets.page.json_data import data_of, json_of
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.words import LANGUAGES, words_of
from manchet.sheets.published import schema
from manchet.sheets.registry import FORMS, form_called, html_of
from manchet.workspace.print_options import BUILT, KINDS, ON_DEMAND

FOLDERS = sorted(file.parent for file in Path(manchet.sheets.forms.__path__[0]).glob("*/__init__.py"))
SCHEMA = jsonschema.Draft202012Validator(schema())

each_form = pytest.mark.parametrize("form", FORMS, ids=lambda form: form.name)
PAGES = [form for form in FORMS if not form.is_label]
each_page = pytest.mark.parametrize("form", PAGES, ids=lambda form: form.name)
"""Labels are printed on a roll, or on sheets of labels: see `test_labels`."""


def test_a_folder_is_a_form() -> None:
    assert len(FORMS) == len(FOLDERS) >= 5
    assert len({form.name for form in FORMS}) == len({form.place for form in FORMS}) == len(FORMS)
    assert {*KINDS, *ON_DEMAND} == {form.name for form in BUILT}
    assert all(form.about is Subject.DAY for form in FORMS if form not in BUILT)


@pytest.mark.parametrize("folder", FOLDERS, ids=lambda folder: folder.name)
def test_a_folder_has_its_view_its_template_and_its_words(folder: Path) -> None:
    assert {"view.py", "template.html", "words.toml"} <= {file.name for file in folder.iterdir()}


@pytest.mark.parametrize("form", BUILT, ids=lambda form: form.name)
def test_it_is_on_the_command_line(form: Form, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (only,) = (option for option in known_options()["build"] if option.name == "--only")
    assert form.name in only.words and form.name in only.help.removeprefix("some of ").split(",")
    assert command(["build", str(RECIPES), "--only", f"{form.name},html", "--output", str(tmp_path)]) == 0
    endings = {file.name.split(".", 1)[1] for file in tmp_path.iterdir()}
    assert endings == {f"{form.name}.html"}, capsys.readouterr().err


@each_form
def test_it_has_a_name_in_every_language(form: Form) -> None:
    for language in LANGUAGES:
        assert words_of(language)[f"forms.{form.name}"]


@each_form
def test_its_view_says_which_form_it_is(form: Form) -> None:
    view = sample_of(form)
    assert type(view) is form.view and form_called(view.form) is form


@each_form
def test_its_data_fits_the_schema(form: Form) -> None:
    for house in (METRIC, US):
        SCHEMA.validate(json.loads(json_of(sample_of(form, house))))


@each_form
def test_the_schema_refuses_what_is_not_this_form(form: Form) -> None:
    whole = data_of(sample_of(form))
    another = next(other.name for other in FORMS if other is not form)
    lacking = {name: value for name, value in whole.items() if name != "running"}
    for broken in ({**whole, "title": 3}, {**whole, "more": ""}, {**whole, "form": another}, lacking):
        with pytest.raises(jsonschema.ValidationError):
            SCHEMA.validate(broken)


@each_form
def test_a_hostile_name_stays_text(form: Form) -> None:
    view: Any = sample_of(form)
    hostile = view._replace(title=HOSTILE, running=view.running._replace(name=HOSTILE, file=HOSTILE))
    assert seen(html_of(hostile)).tags == seen(html_of(view)).tags
    assert HOSTILE in seen(html_of(hostile)).text


@each_page
def test_it_is_printed_on_the_paper_of_its_house(form: Form) -> None:
    for house, short, long in ((METRIC, 595, 842), (US, 612, 792)):
        made = pdf_of(html_of(sample_of(form, house)))
        assert isinstance(made, Pdf) and made.faults == () and made.missing == ()
        page = PdfReader(io.BytesIO(made.content)).pages[0].mediabox
        sides = (long, short) if form.landscape else (short, long)
        assert (round(float(page.width)), round(float(page.height))) == sides
