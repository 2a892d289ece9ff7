"""The oven card: what goes into an oven whose fire is out, in order, as text; and its page and its data."""

from __future__ import annotations

import json
import re

import jsonschema
from loaves import PLAIN_LOAF, vary
from works import work_in, works

from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.loading_order import loading_order
from manchet.sheets.forms.oven_card.card import oven_card
from manchet.sheets.forms.oven_card.view import FallingOven, LoadRow, OvenCard
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.json_data import json_of
from manchet.sheets.published import schema
from manchet.sheets.registry import html_of
from manchet.source.text import SourceText
from manchet.workspace import bakery

HOUSE = """\
kitchen House
  oven mother
    heat wood, falling
    holds 24 loaves
    recovers 6 min
    falls 18 C an hour from 300 C
    falls 12 C an hour from 250 C
"""
TAKES = "    each load takes 15 C for 20 kg dough\n"
BREADS = (
    ("Soft", "soft", 10, "180-200 C"), ("Lean", "hearth loaf", 60, "220-240 C, steam"),
    ("Flat", "flatbread", 10, "350 C"), ("Rusk", "crisp", 24, '100-120 C until "dry <& brittle>"'),
)  # fmt: skip
BRITISH = House()


def loaf(name: str, kind: str, number: int, heat: str) -> str:
    return vary(
        PLAIN_LOAF,
        formula=name,
        kind=kind,
        makes=f"{number} loaves at 900 g dough",
        mix="slow 5 min",
        bake=f"40-50 min at {heat}",
    )


def card(
    breads: tuple[tuple[str, str, int, str], ...] = BREADS, takes: str = TAKES, house: House = BRITISH
) -> OvenCard:
    texts = [loaf(*bread) for bread in breads]
    found = bakery.read((SourceText("x.bake", "\n".join([*texts, HOUSE + takes])),))
    assert len(found.formulas) == len(breads), found.diagnostics
    bakes = [bake for work in works(found) for bake in bakes_of(work)]
    plan = loading_order(bakes, found.kitchen.ovens[0])
    formulas = {formula.name: formula for formula in found.formulas}
    return oven_card("House", [plan], formulas, (), Issue(), house)


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def falling(**more: object) -> FallingOven:
    (oven,) = card(**more).ovens  # type: ignore[arg-type]
    return oven


def lines(turns: tuple[LoadRow, ...]) -> list[tuple[str, ...]]:
    return [tuple(plain(x) for x in (t.number, t.name, t.load, t.floor, t.about, t.when, t.latest)) for t in turns]


def test_what_goes_in_in_order() -> None:
    """From 300 C to 250 at 18 an hour is 2 h 47, to 240 at 12 another 50 min; 24 loaves of 900 g take 16.2 C, 12 of them
    8.1 C, and 45 minutes 9 C anyhow."""
    assert lines(falling().turns) == [
        ("1", "Lean", "load 1 of 3, 24 loaves", "220–240 °C", "about 240 °C by then", "+3:35", "+5:15 at the latest"),
        ("1", "Lean", "load 2 of 3, 24 loaves", "220–240 °C", "about 225 °C by then", "+4:30", "+4:40 at the latest"),
        ("2", "Soft", "10 loaves", "180–200 °C", "about 200 °C by then", "+5:45", "+7:25 at the latest"),
        ("3", "Rusk, drying", "24 loaves", "100–120 °C", "about 120 °C by then", "+12:25", "+14:05 at the latest"),
    ]


def test_what_to_look_for_and_what_to_do_if_it_is_colder() -> None:
    first, second, soft, rusk = falling().turns
    assert (plain(first.look), first.notes) == ("to about 96 °C core (estimate)", ("steam",))
    assert [plain(one) for one in first.colder] == [
        "under 220 °C: bake longer, to its core",
        "under 200 °C: Soft first",
    ]
    assert (second.look, second.colder, second.notes) == ("", (), ())
    assert plain(soft.look) == "to about 91 °C core (estimate)"
    assert rusk.look == "until dry <& brittle>"
    assert [plain(one) for one in rusk.colder] == ["under 100 °C: bake longer, by its look"]


def test_another_goes_first_if_it_is_colder() -> None:
    breads = (("Lean", "hearth loaf", 24, "230-240 C"), ("Brown", "hearth loaf", 24, "210-225 C"))
    lean, brown = falling(breads=breads).turns
    assert [plain(one) for one in lean.colder] == [
        "under 230 °C: bake longer, to its core",
        "under 225 °C: Brown first",
    ]
    assert len(brown.colder) == 1


def test_what_does_not_fit_and_why() -> None:
    assert [plain(one) for one in falling().left_out] == [
        "Flat wants 340–360 °C; this oven's measured fall begins at 300 °C. Bake it on the fire, or measure the fall from "
        "further up.",
        "Lean (load 3 of 3) wants 220–240 °C: when its turn comes the floor is about 205 °C. Another fire, or bake it "
        "longer, by core and look.",
    ]


def test_a_load_that_nobody_measured_is_said_with_how_to_measure_it() -> None:
    facts = {fact.label: plain(fact.value) for fact in falling().facts}
    assert facts["a load takes"] == "15 °C for 20 kg of dough"
    unknown = falling(takes="")
    assert {fact.label: fact.value for fact in unknown.facts}["a load takes"] == "nobody has measured"
    assert any("each load takes 15 C for 20 kg dough" in note for note in unknown.notes)
    assert not any("each load takes" in note for note in falling().notes)


def test_what_an_oven_holds_may_be_unknown() -> None:
    text = HOUSE.replace("    holds 24 loaves\n", "")
    found = bakery.read((SourceText("x.bake", loaf("Lean", "soft", 60, "230 C") + text),))
    work = work_in(found, found.formulas[0])
    plan = loading_order(list(bakes_of(work)), found.kitchen.ovens[0])
    (oven,) = oven_card("", [plan], {}, ("Odd",), Issue(), BRITISH).ovens
    assert "How many go in at once is not known of: Lean." in "".join(oven.notes)


def test_the_page_and_its_data() -> None:
    made = card()
    page = html_of(made)
    assert page.count("<tr>") == 1 + 4
    assert "dry &lt;&amp; brittle&gt;" in page and "<& brittle>" not in page
    assert page.count("<svg") == 1 and "The floor&#39;s heat over the hours in mother." in page.replace(
        "&#x27;", "&#39;"
    )
    assert "tr { break-inside: avoid; }" in page, "a row stays on one page"
    jsonschema.validate(json.loads(json_of(made)), schema(), cls=jsonschema.Draft202012Validator)


def test_another_house() -> None:
    made = card(house=House("Letter", "US", "F", "American"))
    (oven,) = made.ovens
    assert plain(oven.turns[0].floor) == "430–465 °F"
    facts = {fact.label: plain(fact.value) for fact in oven.facts}
    assert facts["falls"] == "32.4 °F an hour from 570 °F; 21.6 °F an hour from 480 °F"
    assert plain(oven.turns[0].look).endswith("internal (estimate)")
    assert "°C" not in re.sub(r"<style>.*?</style>", "", html_of(made), flags=re.S)


def test_what_has_a_mistake_is_named() -> None:
    found = bakery.read((SourceText("x.bake", loaf("Pizza", "flatbread", 2, "400 C") + HOUSE),))
    work = work_in(found, found.formulas[0])
    plan = loading_order(list(bakes_of(work)), found.kitchen.ovens[0])
    page = html_of(oven_card("", [plan], {}, ("Odd loaf",), Issue(), BRITISH))
    assert "Not on this card, because of mistakes in their files: Odd loaf." in page
    assert "Pizza wants" in page and "<table" not in page, "all of it too hot: no table, and why"


def test_a_fall_as_a_range_is_on_the_safe_side_for_the_latest() -> None:
    """From 240 to 220 C: 100 min at 12 C an hour, 80 at 15."""
    text = HOUSE.replace("falls 12 C", "falls 9-15 C")
    found = bakery.read((SourceText("x.bake", loaf("Lean", "soft", 20, "230 C") + text),))
    work = work_in(found, found.formulas[0])
    plan = loading_order(list(bakes_of(work)), found.kitchen.ovens[0])
    (oven,) = oven_card("", [plan], {}, (), Issue(), BRITISH).ovens
    assert {fact.label: plain(fact.value) for fact in oven.facts}["falls"] == (
        "18 °C an hour from 300 °C; 9–15 °C an hour from 250 °C"
    )
    assert (oven.turns[0].when, plain(oven.turns[0].latest)) == ("+3:35", "+4:55 at the latest")


def test_one_loaf_is_a_loaf() -> None:
    last = falling(breads=(("Lean", "hearth loaf", 25, "200-260 C"),)).turns[-1]
    assert plain(last.load) == "load 2 of 2, 1 loaf"
