"""The safety card: every hazard of one kitchen, each with its source, once for the wall, and again when the kitchen changes."""

from __future__ import annotations

import io
import re
import tomllib
from pathlib import Path

import pytest
from loaves import LOAF_BY_WEIGHT, vary
from pypdf import PdfReader
from sheets.test_hostile_text import HOSTILE, fields, poisoned, seen, with_mark
from sheets.work import ISSUE, prepared

import manchet.cautions
from manchet.cautions.caution import DEFERS
from manchet.cautions.house import house_hazards
from manchet.cautions.registry import cautions_of
from manchet.cli.main import command
from manchet.kitchen.model import PLAIN, Kitchen, Oven
from manchet.sheets.forms.house_card.card import safety_card
from manchet.sheets.forms.house_card.view import SafetyCard
from manchet.sheets.page.house import House
from manchet.sheets.page.pdf import Pdf, pdf_of
from manchet.sheets.registry import form_called, html_of

HAZARDS = {
    name: entry
    for name, entry in tomllib.loads(
        (Path(manchet.cautions.__path__[0]) / "hazards.toml").read_text(encoding="utf-8")
    ).items()
    if isinstance(entry, dict) and entry["of"] == "house"
}
FIRED = {"smoke-and-monoxide", "gas-oven"}
"""Those of a fire: a kitchen has them only where it says what it burns."""


def kitchen(*heats: str) -> Kitchen:
    return Kitchen("Saltpan Row", ovens=tuple(Oven(f"oven {n}", heat) for n, heat in enumerate(heats)))


def card(at: Kitchen, house: House | None = None) -> SafetyCard:
    return safety_card(at, ISSUE, house or House())


@pytest.mark.parametrize(
    ("heats", "fires"),
    [
        ((), set()),
        (("electric",), set()),
        (("wood, falling",), {"smoke-and-monoxide"}),
        (("charcoal",), {"smoke-and-monoxide"}),
        (("gas", "electric"), {"gas-oven"}),
        (("gas", "wood"), FIRED),
    ],
)
def test_every_hazard_of_the_house_stands_on_it_once(heats: tuple[str, ...], fires: set[str]) -> None:
    names = [one.name for one in house_hazards(kitchen(*heats))]
    assert len(names) == len(set(names)) and set(names) == set(HAZARDS) - FIRED | fires


def test_whatever_a_sheet_points_to_is_on_the_card() -> None:
    from sheets.test_step_pictures import LOAF

    for heat in ("wood", "gas", "electric"):
        text = LOAF.replace("kitchen House\n", f"kitchen House\n  oven mother\n    heat {heat}\n")
        work = prepared(text.replace("2600 g", "26 kg").replace("1800 g", "18 kg"))
        called = {one.name for one in cautions_of(work) if one.of == "house"}
        assert called and called <= {one.name for one in house_hazards(work.kitchen)}, heat


def test_its_text() -> None:
    view = card(kitchen("wood"))
    page = html_of(view)
    text = " ".join(seen(page).text.split())
    assert (view.title, view.kitchen) == ("Bakehouse safety", "Saltpan Row") and text.count(DEFERS) == 1
    for name in set(HAZARDS) - {"gas-oven"}:
        entry = HAZARDS[name]
        assert text.count(entry.get("address", entry["source"])) == 1, name
        assert f" {entry['catchword']} " in text and entry["words"].split("{")[0].strip() in text, name
    assert not re.search(r"\bsafe\b", text.casefold())
    grave = [row.is_grave for row in view.rows]
    assert grave == sorted(grave, reverse=True) and grave[0], "warnings first"
    assert [row.number for row in view.rows] == [str(n + 1) for n in range(len(view.rows))]


def test_a_house_that_mixes_lye_has_it_and_its_first_aid_on_the_card() -> None:
    names = [row.catchword for row in card(kitchen("wood")).rows]
    view = safety_card(kitchen("wood"), ISSUE, House(), has_lye=True)
    assert [row.catchword for row in view.rows if row.catchword not in names] == ["Mixing lye"]
    assert "running water" in view.rows[0].if_missed and "Goggles" in view.rows[0].words
    assert {"eye wash", "gas valve", "gas line"} <= set(re.split(r", ", ", ".join(view.emergency)))
    made = pdf_of(html_of(view), form_called("house").layouts)
    assert isinstance(made, Pdf) and len(PdfReader(io.BytesIO(made.content)).pages) == 1


def test_a_kitchen_without_a_name_and_american_words() -> None:
    assert (card(PLAIN).title, card(PLAIN).kitchen) == ("Bakehouse safety", "")
    view = card(kitchen("gas"), House("Letter", "US", "F", "American"))
    assert (view.language, view.paper, view.title) == ("en-US", "Letter", "Bakery safety") and "°C" not in html_of(view)


@pytest.mark.parametrize("heat", ["wood", "gas", "electric"])
def test_it_is_one_tagged_page_and_the_same_each_time(heat: str) -> None:
    for house in (House(), House("Letter", "US", "F", "American")):
        page = html_of(card(kitchen(heat), house))
        made = pdf_of(page, form_called("house").layouts)
        assert (
            isinstance(made, Pdf)
            and made.faults == ()
            and made.missing == ()
            and made == pdf_of(page, form_called("house").layouts)
        )
        reader = PdfReader(io.BytesIO(made.content))
        assert len(reader.pages) == 1, "it is posted, not turned over"
        assert "safety" in reader.pages[0].extract_text().casefold()
        assert reader.trailer["/Root"]["/MarkInfo"]["/Marked"]


def test_every_text_of_it_is_printed_and_stays_text() -> None:
    view = card(kitchen("wood"))
    page = html_of(view)
    shown = [
        path for path in fields(view) if not path.endswith((".address", ".level"))
    ]  # each source once, at the foot
    assert [path for path in shown if html_of(with_mark(view, path.strip(".").split("."), "QQQ")) == page] == []
    assert seen(html_of(poisoned(view))).tags == seen(page).tags and HOSTILE in seen(html_of(poisoned(view))).text


# ---- as it is built -------------------------------------------------------------------------------

KITCHEN = "kitchen {}\n  oven mother\n    heat {}\n"
LOAF = vary(LOAF_BY_WEIGHT, formula="{}", makes="2 loaves at 860 g dough\n  bake loss 14%")


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    for name in ("Quay loaf", "Pier loaf"):
        (tmp_path / f"{name[:4].lower()}.bake").write_text(LOAF.format(name), encoding="utf-8")
    (tmp_path / "kitchen.bake").write_text(KITCHEN.format("Row", "wood"), encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1795000000")
    return tmp_path


def built(bakery: Path, capsys: pytest.CaptureFixture[str], *more: str) -> list[str]:
    """The files that this build wrote anew."""
    assert command(["build", ".", "--jobs", "1", *more]) == 0
    return sorted(Path(line).name for line in capsys.readouterr().out.split())


def test_once_for_the_kitchen_and_again_when_the_kitchen_changes(
    bakery: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert built(bakery, capsys, "--only", "sheet,house,html") == [
        "pier-loaf.sheet.html", "quay-loaf.sheet.html", "row.house.html",
    ]  # fmt: skip
    assert built(bakery, capsys, "--only", "sheet,house,html") == []
    loaf = bakery / "quay.bake"
    loaf.write_text(loaf.read_text("utf-8").replace("20 g", "21 g"), encoding="utf-8")
    assert built(bakery, capsys, "--only", "sheet,house,html") == ["quay-loaf.sheet.html"]
    (bakery / "kitchen.bake").write_text(KITCHEN.format("Row", "gas"), encoding="utf-8")
    assert "row.house.html" in built(bakery, capsys, "--only", "sheet,house,html")
    page = (bakery / "output" / "row.house.html").read_text("utf-8")
    assert HAZARDS["gas-oven"]["address"] in page and HAZARDS["smoke-and-monoxide"]["address"] not in page


def test_it_is_made_alone_and_left_out_where_it_is_asked_for(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert built(bakery, capsys, "--only", "house") == ["row.house.html", "row.house.json", "row.house.pdf"]
    assert not any("house" in name for name in built(bakery, capsys, "--only", "sheet,html"))
    assert "see Bakehouse safety on the wall" in (bakery / "output" / "quay-loaf.sheet.html").read_text("utf-8")


def test_each_kitchen_has_its_own(bakery: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (bakery / "home").mkdir()
    (bakery / "home" / "kitchen.bake").write_text(KITCHEN.format("Home", "gas"), encoding="utf-8")
    assert built(bakery, capsys, "--only", "house,html") == ["home.house.html", "row.house.html"]
    (bakery / "kitchen.bake").unlink()
    (bakery / "home" / "kitchen.bake").unlink()
    assert built(bakery, capsys, "--only", "house,html") == ["kitchen.house.html"]
