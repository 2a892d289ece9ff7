"""A bake that does not fit into the oven at once, on the sheet and on the card; the core that a file does not give."""

from __future__ import annotations

import pytest
from loaves import LOAVES_AND_ROLLS, PLAIN_LOAF, vary
from sheets.card_text import jobs_of, said_of
from sheets.work import card, parts_of, sheet

from manchet.sheets.forms.prep_sheet.view import BakeTable, PrepSheet, WayHeading
from manchet.sheets.forms.timing_card.view import LoadList

HOUSE = """\
kitchen House
  oven mother
    {holds}
    recovers 12 min
    heats in 60 min
"""
FALLS = "    falls 12 C an hour from 280 C\n    each load cools it 20 C\n"


def text(
    number: int = 40,
    bake: str = "10 min at 250 C, steam, vent open after 8 min",
    core: str = "",
    holds: str = "holds 24 loaves",
    kind: str = "hearth loaf",
    more: str = "",
) -> str:
    loaf = vary(
        PLAIN_LOAF,
        formula="Loaf",
        kind=kind,
        makes=f"{number} loaves at 900 g dough",
        bake=f"{bake}\n    bake 30 min at 220 C{core}",
    )
    return loaf + HOUSE.format(holds=holds) + more


def plain(said: str) -> str:
    return said.replace("\N{NO-BREAK SPACE}", " ")


def bakes(view: PrepSheet) -> list[BakeTable]:
    return [part for part in parts_of(view) if isinstance(part, BakeTable)]


def loads(said: str) -> tuple[LoadList, ...]:
    return tuple(job for job in jobs_of(card(said)) if isinstance(job, LoadList))


def test_the_sheet_says_how_many_go_in_at_once() -> None:
    (bake,) = bakes(sheet(text()))
    assert plain(bake.notes[0]) == ("24 at once in the mother: 2 loads, of 24, 16; 12 min between loads, door shut")
    (one,) = bakes(sheet(text(24)))
    assert not any("at once" in note for note in one.notes)


def test_by_the_measured_floor_it_is_an_estimate() -> None:
    (bake,) = bakes(sheet(text(holds="floor 120 x 90 cm")))
    assert bake.notes[0].startswith("about 20 fit the mother: 2 loads, of 20, 20")


def test_the_card_bakes_load_after_load() -> None:
    (table,) = loads(text())
    assert (table.clock, table.oven) == ("03:18", "Mother, 2 loads")
    assert [plain(f"{clause.do} {clause.how}") for clause in table.clauses] == [
        "load ", "bake 10 min at 250 °C, steam", "bake 30 min at 220 °C",
    ]  # fmt: skip
    assert table.between == ("damper", "next heat")
    assert [(load.number, load.pieces, load.into, load.between, load.out) for load in table.loads] == [
        ("1", "24", "03:18", ("03:30", "03:32"), "04:02"),
        ("2", "16", "04:16", ("04:27", "04:29"), "04:59"),
    ], "4 min to load 24 and 2 to take them out, then 12 min to come back"
    assert [said for said in said_of(card(text())) if "oven" in said[1].lower()] == [
        ("02:18", "Heat the oven to 250 °C, 60 min")
    ]


def test_the_later_load_stands_longer_and_the_card_says_so() -> None:
    """By 52 minutes, after a proof of exactly an hour; what comes out of the cold may stand."""
    assert card(text()).notes == ("Later loads stand longer: shape them later, or prove them cooler.",)
    assert card(text(24)).notes == ()
    cold = vary(text(), prove="covered 10-14 h at 4 C\n      may wait 4 h")
    assert len(loads(cold)[0].loads) == 2 and card(cold).notes == ()


def test_the_floor_of_a_falling_oven_is_said_where_the_first_load_goes_in() -> None:
    (table,) = loads(text(more=FALLS))
    assert [plain(clause.note) for clause in table.clauses if clause.note] == ["floor under 240 °C: bake longer"]


def test_the_sheet_says_when_a_falling_oven_has_its_heat() -> None:
    """From 260 to 240 C at 12 an hour is 1 h 40 min; for it alone the oven is fired no hotter than 260."""
    (bake,) = bakes(sheet(text(24, more=FALLS)))
    assert plain(bake.notes[0]) == (
        "mother: fired to 260 °C, it is this hot for about 100 min (with other breads: see oven card)"
    )
    (cold,) = bakes(sheet(text(24, more=FALLS.replace("280", "200"))))
    assert not any("at this heat" in note for note in cold.notes)


def test_what_says_its_own_loads_keeps_them() -> None:
    said = text(bake="10 min at 250 C, steam, vent open, 10 at a time")
    assert loads(said) == ()
    assert not any("at once in the" in note for note in bakes(sheet(said))[0].notes)


@pytest.mark.parametrize(
    ("kind", "core"), [("hearth loaf", "about 96 °C"), ("rye hearth loaf", "about 98 °C"), ("soft", "about 91 °C")]
)
def test_a_core_by_kind_where_the_file_gives_none(kind: str, core: str) -> None:
    (bake,) = bakes(sheet(text(kind=kind)))
    assert [plain(phase.core) for phase in bake.phases] == ["", core]
    assert (
        "a core marked “about” is the usual one for this kind of bread, an estimate: the formula gives none"
        in bake.notes
    )
    (given,) = bakes(sheet(text(kind=kind, core=" to 97 C core")))
    assert plain(given.phases[-1].core) == "97 °C"
    assert not any("usual for the kind" in note for note in given.notes)


def test_steam_as_this_oven_makes_it() -> None:
    (bake,) = bakes(sheet(text(holds="holds 24 loaves\n    steam by pan")))
    assert [phase.steam_vent[:1] for phase in bake.phases] == [("steam, by pan",), ()]


def test_no_core_for_what_has_no_crumb() -> None:
    (bake,) = bakes(sheet(text(kind="crisp")))
    assert [phase.core for phase in bake.phases] == ["", ""]


TWO = LOAVES_AND_ROLLS.replace("24 rolls at 110 g", "50 rolls at 90 g")
TWO += "kitchen House\n  oven mother\n    holds 24 loaves, or 40 rolls\n"


def test_each_sort_by_itself() -> None:
    view = sheet(TWO)
    loaves, rolls = bakes(view)
    assert loaves.notes == () and plain(loaves.phases[0].core) == "97 °C"
    assert rolls.notes[0] == "40 at once in the mother: 2 loads, of 40, 10"
    assert plain(rolls.phases[0].core) == "about 96 °C"
    assert any(isinstance(part, WayHeading) for part in view.bench)
