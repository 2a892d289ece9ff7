"""Labels and shelf tickets on paper: a roll cut off where each ends, sheets with a place for each, nothing under 7 pt."""

from __future__ import annotations

import datetime
import io
from collections.abc import Iterable
from pathlib import Path

import pytest
from label.test_declaration import LABELLED, labels
from pypdf import PdfReader
from sheets.test_pdf import text_runs
from works import first_work

from manchet.cli.main import command
from manchet.sheets.form import PageSetup
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.page.view import View
from manchet.sheets.registry import form_called, html_of

MM = 72 / 25.4
MADE = datetime.date(2026, 11, 28)
LOOSE = LABELLED.replace("sold prepacked at 740 g net", "sold loose\n  sells at 7.20 EUR each")
SHEET = "  sells in EU\n  labels 3 across, 6 down on A4\n"


def view_of(text: str, form: str = "label") -> View | None:
    page = PageSetup(Issue(made=MADE), House())
    return form_called(form).render(first_work(text), page).value


def printed(text: str, form: str = "label") -> Pdf:
    view = view_of(text, form)
    assert view is not None
    pdf = pdf_of(html_of(view), form_called(form).layouts)
    assert isinstance(pdf, Pdf) and pdf.faults == () and pdf.missing == ()
    return pdf


def text_of(pdf: Pdf) -> str:
    pages = PdfReader(io.BytesIO(pdf.content)).pages
    return " ".join(" ".join(page.extract_text() for page in pages).replace("\N{NO-BREAK SPACE}", " ").split())


def on_sheets(text: str = LABELLED) -> str:
    return text.replace("  sells in EU\n", SHEET)


def test_a_roll_is_as_wide_as_the_kitchen_says_and_as_long_as_the_label() -> None:
    for said, wide in (("", 62), ("  labels 80 mm roll\n", 80)):
        (page,) = PdfReader(
            io.BytesIO(printed(LABELLED.replace("  sells in EU\n", f"  sells in EU\n{said}")).content)
        ).pages
        assert abs(float(page.mediabox.width) / MM - wide) < 0.5
        assert 40 < float(page.mediabox.height) / MM < 140


def test_it_says_what_the_law_asks_for() -> None:
    said = text_of(printed(LABELLED))
    for part in ("Quay loaf", "Wheat bread with sunflower seeds", "Ingredients: WHEAT flour (", "water, sunflower seeds (",
                 "energy", "of which saturates", "740 g", "best before", "2 Dec 2026", "Cool and dry", "Lot Quay loaf, 28 Nov",
                 "Quay Bakery, Port Avel"):  # fmt: skip
        assert part in said, part


def test_it_is_not_approved_until_a_person_says_so() -> None:
    assert "NOT APPROVED" in text_of(printed(LABELLED))
    (label,) = labels()
    approved = LABELLED.replace("  store", f"  label approved 2026-11-20 by Ada as {label.mark}\n  store")
    assert "NOT APPROVED" not in text_of(printed(approved))


def test_a_label_that_two_markets_share_is_printed_once() -> None:
    both = LABELLED.replace("sells in EU", "sells in EU, Britain")
    assert len(PdfReader(io.BytesIO(printed(both).content)).pages) == 1
    three = LABELLED.replace("sells in EU", "sells in EU, Britain, US")
    said = text_of(printed(three))
    assert "NET WT 26.1 oz (740 g)" in said and "Contains: WHEAT" in said


def test_sheets_have_a_label_for_each_piece() -> None:
    shelf = printed(on_sheets(LOOSE), "shelf")
    assert text_of(shelf).count("Quay loaf") == 1  # one ticket for the shelf
    pages = PdfReader(io.BytesIO(printed(on_sheets().replace("3 across, 6 down", "2 across, 3 down")).content)).pages
    assert [page.extract_text().count("best before") for page in pages] == [6, 4]
    assert {(round(float(page.mediabox.width)), round(float(page.mediabox.height))) for page in pages} == {(595, 842)}


def test_three_stand_side_by_side_and_six_below_each_other() -> None:
    text = on_sheets(
        LABELLED.replace("sold prepacked at 740 g net", "sold prepacked for direct sale").replace(
            "10 loaves", "18 loaves"
        )
    )
    (page,) = PdfReader(io.BytesIO(printed(text).content)).pages
    assert page.extract_text().count("Quay loaf") >= 18


@pytest.mark.parametrize("text", [LABELLED, on_sheets().replace("3 across, 6 down", "2 across, 3 down"),
                                  on_sheets(LABELLED.replace("prepacked at 740 g net", "prepacked for direct sale"))])  # fmt: skip
def test_small_letters_are_as_high_as_the_law_has_them(text: str) -> None:
    """Regulation (EU) 1169/2011, article 13(2): an x-height of 1.2 mm, which in this face (486 of 1,000) are 7 pt."""
    pages: Iterable[object] = PdfReader(io.BytesIO(printed(text).content)).pages
    assert min(run.size for page in pages for run in text_runs(page)) >= 7


def test_what_has_no_room_is_refused_and_not_set_smaller(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "quay.bake").write_text(on_sheets().replace("6 down", "8 down"), encoding="utf-8")
    assert command(["build", str(tmp_path), "--only", "label", "--output", str(tmp_path / "out")]) == 1
    assert "label-too-small" in capsys.readouterr().err
    assert not list(tmp_path.glob("out/*.label.*"))


def test_nothing_is_printed_of_what_is_withheld_or_not_sold() -> None:
    assert view_of(LABELLED.replace('  store "cool and dry"\n', "")) is None
    assert view_of(LOOSE) is None
    assert view_of(LABELLED, "shelf") is None


def test_a_ticket_has_name_price_and_what_it_contains() -> None:
    said = text_of(printed(LOOSE, "shelf"))
    for part in ("Quay loaf", "7.20 €", "about 750 g", "a kg", "CONTAINS WHEAT", "Please ask us"):
        assert part in said, part
    kilo = text_of(printed(LOOSE.replace("7.20 EUR each", "8 GBP for 1 kg"), "shelf"))
    assert "£8.00 a kg" in kilo


def test_no_ticket_says_that_something_is_not_in_it() -> None:
    plain = LOOSE.replace("white flour", "rice flour")
    said = text_of(printed(plain, "shelf")).lower()
    assert "contains" not in said and "free" not in said and "ask us about other allergens" in said


TUB = """\
kitchen Quay
  sells in EU

preparation egg wash
  eggs                   500 g
  milk                   100 g
  whisk 2 min
  strain into jug
  good for 2 d at 4 C
  good for 30 d at -18 C
"""


PASTEURISED = """
larder Quay
  pasteurised eggs
    class egg
    pasteurised
    allergens egg
"""


def test_a_tub_says_what_it_contains_how_cold_and_until_when() -> None:
    """Without an hour two days from Saturday end on Sunday evening: Monday at the hour it was made is the latest that is meant."""
    said = text_of(printed(TUB.replace("  eggs  ", "  pasteurised eggs  ") + PASTEURISED, "tub"))
    for part in (
        "egg wash",
        "CONTAINS EGG, MILK",
        "Sat 28 Nov",
        "≤ 4 °C",
        "Sun 29 Nov, evening",
        "Sun 27 Dec, evening",
    ):
        assert part in said, part


def test_a_tub_of_raw_egg_has_the_limit_where_its_file_is_laxer() -> None:
    said = text_of(printed(TUB, "tub"))
    assert "Sat 28 Nov, evening" in said and "Sun 29 Nov" not in said, "24 h of raw egg, not the two days of the file"


def test_no_date_stands_on_a_jar_that_is_to_be_kept_beyond_its_limit() -> None:
    """National Center for Home Food Preservation, garlic in oil (2015): 4 days at 4 C."""
    jar = "preparation garlic oil\n  garlic 100 g\n  sunflower oil 400 g\n  pack in jars\n  good for {} d at 4 C\n"
    assert view_of(jar.format(9), "tub") is None
    said = text_of(printed(jar.format(3), "tub"))
    assert "Botulism" in said and "Mon 30 Nov, evening" in said


def test_a_tub_of_which_something_is_not_known_says_so() -> None:
    unknown = "larder Quay\n  sweet paste\n    class other\n\n" + TUB.replace(
        "  milk  ", "  sweet paste 20 g\n  milk  "
    )
    assert "Not all its allergens are known: ask." in text_of(printed(unknown, "tub"))


SLICED = LABELLED.replace("740 g net", "680 g net") + "    slice into 20 slices, loses 5%\n    pack in bags\n"


def test_what_is_sold_sliced_says_its_figures_of_a_slice_too() -> None:
    """Regulation (EU) 1169/2011, article 33: per portion beside per 100 g, where the portion and how many there are is said. 748.2 g
    less 5 % are 710.8 g, a twentieth 35.5 g."""
    text = text_of(printed(SLICED))
    assert "1 of 20 slices, 36 g" in text
    (label,) = labels(SLICED)
    assert label.panel is not None and label.slice_grams is not None
    energy = label.panel.line("energy kj").span.middle
    assert f"{round(energy * label.slice_grams / 100)} kJ" in text
    assert "slices" not in text_of(printed(LABELLED))
    assert labels(SLICED.replace("into 20", "into 19"))[0].mark != label.mark


def test_a_whole_panel_has_room_on_eighteen_labels_to_a_sheet() -> None:
    """In lines where a table has none: Regulation (EU) 1169/2011, article 34."""
    said = text_of(printed(on_sheets()))
    assert said.count("Nutrition, typical values per 100 g: energy ") == said.count("of which saturates ") > 1
