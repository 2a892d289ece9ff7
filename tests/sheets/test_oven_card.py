"""The oven card: what goes into an oven whose fire is out, in order, as text; and its page and its data."""

from __future__ import annotations

import json
import re
from datetime import datetime

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
from manchet.timing.when import When
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
TAKES = "    each load cools it 15 C for 20 kg dough\n"
BREADS = (
    ("Soft", "soft", 10, "180-200 C"), ("Lean", "hearth loaf", 60, "220-240 C, steam"),
    ("Flat", "flatbread", 10, "350 C"), ("Rusk", "crisp", 24, '100-120 C until "dry <& brittle>"'),
)  # fmt: skip
BRITISH = House()


ESTIMATE = "A core marked “about” is the usual one for this kind of bread, an estimate: the formula gives none."


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
    breads: tuple[tuple[str, str, int, str], ...] = BREADS,
    takes: str = TAKES,
    house: House = BRITISH,
    when: When | None = None,
) -> OvenCard:
    texts = [loaf(*bread) for bread in breads]
    found = bakery.read((SourceText("x.bake", "\n".join([*texts, HOUSE + takes])),))
    assert len(found.formulas) == len(breads), found.diagnostics
    bakes = [bake for work in works(found) for bake in bakes_of(work)]
    plan = loading_order(bakes, found.kitchen.ovens[0])
    formulas = {formula.name: formula for formula in found.formulas}
    return oven_card("House", [plan], formulas, (), Issue(), house, when)


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def falling(**more: object) -> FallingOven:
    (oven,) = card(**more).ovens  # type: ignore[arg-type]
    return oven


def lines(loads: tuple[LoadRow, ...]) -> list[tuple[str, ...]]:
    return [tuple(plain(x) for x in (t.number, t.name, t.load, t.floor, t.into, t.latest, t.out)) for t in loads]


def test_what_goes_in_in_order() -> None:
    """It is fired to 240 C, which goes in first; 24 loaves of 900 g take 16.2 C, 12 of them 8.1 C, and 45 minutes 9 C anyhow."""
    assert lines(falling().loads) == [
        ("1", "Lean", "load 1 of 3, 24 loaves", "220–240", "+0:00", "+1:40", "+0:45"),
        ("2", "Lean", "load 2 of 3, 24 loaves", "220–240", "+0:50", "+1:05", "+1:35"),
        ("3", "Soft", "10 loaves", "180–200", "+2:10", "+3:50", "+2:55"),
        ("4", "Rusk, drying", "24 loaves", "100–120", "+8:50", "+10:30", "+9:35"),
    ]


def test_on_the_clock_where_a_start_is_known() -> None:
    """The fire is lit at the start, and out when the oven is hot; what is to be ready is the last load, out of it."""
    lit = card(takes=TAKES + "    heats in 90 min\n", when=When(datetime(2026, 11, 28, 4, 30), False)).ovens[0]
    assert plain(lit.fire_out) == "fire out Sat 06:00 at 240 °C"
    assert (lit.loads[0].into, lit.loads[0].out) == ("06:00", "06:45")
    ready = card(when=When(datetime(2026, 11, 28, 20, 0), True)).ovens[0]
    assert ready.loads[-1].out == "20:00" and plain(ready.fire_out) == "fire out Sat 10:25 at 240 °C"
    nobody = card(when=When(datetime(2026, 11, 28, 6, 0), False, assumed=True)).ovens[0]
    assert plain(nobody.fire_out) == "hours after fire out at 240 °C" and nobody.loads[0].into == "+0:00"


def test_what_to_look_for_and_what_to_do_if_it_is_colder() -> None:
    first, second, soft, rusk = falling().loads
    assert [plain(one) for one in first.then] == ["steam", "to about 96 °C core"]
    assert first.colder == "Floor under 200? Load 3 first."
    assert (second.then, second.colder) == ((), "")
    assert [plain(one) for one in soft.then] == ["to about 91 °C core"]
    assert falling().notes.count(ESTIMATE) == 1, "said once, at the foot"
    assert rusk.then == ("until dry <& brittle>",) and rusk.colder == ""


def test_another_goes_first_if_it_is_colder() -> None:
    breads = (("Lean", "hearth loaf", 24, "230-240 C"), ("Brown", "hearth loaf", 24, "210-225 C"))
    lean, brown = falling(breads=breads).loads
    assert (lean.colder, brown.colder) == ("Floor under 225? Load 2 first.", "")


def test_what_does_not_fit_and_why() -> None:
    assert [tuple(plain(text) for text in one) for one in falling().left_out] == [
        ("Flat", "340–360 °C", "300 °C at most"),
        ("Lean, load 3 of 3", "220–240 °C", "about 205 °C"),
    ]


def test_what_is_to_rise_is_left_out_with_its_heat() -> None:
    breads = (("Cold start", "tin loaf", 10, "30 C rising to 210 C"),)
    assert [tuple(plain(text) for text in one) for one in falling(breads=breads).left_out] == [
        ("Cold start", "30 °C rising to 210 °C", "only falls"),
    ]


def test_a_load_that_nobody_measured_is_said_with_how_to_measure_it() -> None:
    assert "A load cools it by 15 °C for 20 kg of dough." in [plain(rule) for rule in falling().rules]
    unknown = falling(takes="")
    assert not any("cools it" in rule for rule in unknown.rules)
    assert any("each load cools it 15 C for 20 kg dough" in note for note in unknown.notes)
    assert not any("each load cools it" in note for note in falling().notes)


def test_what_an_oven_holds_may_be_unknown() -> None:
    text = HOUSE.replace("    holds 24 loaves\n", "")
    found = bakery.read((SourceText("x.bake", loaf("Lean", "soft", 60, "230 C") + text),))
    work = work_in(found, found.formulas[0])
    plan = loading_order(list(bakes_of(work)), found.kitchen.ovens[0])
    (oven,) = oven_card("", [plan], {}, ("Odd",), Issue(), BRITISH).ovens
    assert "Load size unknown, shown as one: Lean." in "".join(oven.notes)


def test_the_page_and_its_data() -> None:
    made = card()
    page = html_of(made)
    assert page.count("<tr>") == 1 + 2 + 1 + 4, "a head and two decisions, a head and four loads"
    assert "dry &lt;&amp; brittle&gt;" in page and "<& brittle>" not in page
    assert page.count("<svg") == 1 and "The floor of mother, load by load: 1 at +0:00" in page
    assert "tr { break-inside: avoid; }" in page, "a row stays on one page"
    jsonschema.validate(json.loads(json_of(made)), schema(), cls=jsonschema.Draft202012Validator)


def test_another_house() -> None:
    made = card(house=House("Letter", "US", "F", "American"))
    (oven,) = made.ovens
    assert (made.degree, oven.loads[0].floor) == ("°F", "430–465")
    assert "The floor falls 32 °F an hour from 570 °F; 22 °F an hour from 480 °F." in [plain(x) for x in oven.rules]
    assert plain(oven.loads[0].then[-1]).endswith(" °F core")
    assert "°C" not in re.sub(r"<style.*?</style>", "", html_of(made), flags=re.S)


def test_what_has_a_mistake_is_named() -> None:
    found = bakery.read((SourceText("x.bake", loaf("Pizza", "flatbread", 2, "400 C") + HOUSE),))
    work = work_in(found, found.formulas[0])
    plan = loading_order(list(bakes_of(work)), found.kitchen.ovens[0])
    page = html_of(oven_card("", [plan], {}, ("Odd loaf",), Issue(), BRITISH))
    assert "Left off, files with errors: Odd loaf." in page
    assert "Pizza" in page and page.count("<table") == 1, "all of it too hot: no loads, and why"


def test_a_fall_as_a_range_is_on_the_safe_side_for_the_latest() -> None:
    """From 240 to 220 C: 100 min at 12 C an hour, 80 at 15."""
    text = HOUSE.replace("falls 12 C", "falls 9-15 C")
    found = bakery.read((SourceText("x.bake", loaf("Lean", "soft", 20, "230 C") + text),))
    work = work_in(found, found.formulas[0])
    plan = loading_order(list(bakes_of(work)), found.kitchen.ovens[0])
    (oven,) = oven_card("", [plan], {}, (), Issue(), BRITISH).ovens
    assert "The floor falls 18 °C an hour from 300 °C; 9–15 °C an hour from 250 °C." in [plain(x) for x in oven.rules]
    assert (oven.loads[0].into, oven.loads[0].latest) == ("+0:00", "+1:20")


def test_one_loaf_is_a_loaf() -> None:
    last = falling(breads=(("Lean", "hearth loaf", 25, "200-260 C"),)).loads[-1]
    assert plain(last.load) == "load 2 of 2, 1 loaf"


def test_what_bakes_while_the_fire_burns_has_its_line() -> None:
    breads = (
        ("Ash", "flatbread", 48, "350 C, beside the fire"),
        ("Onion", "flatbread", 10, '350 C, at the mouth until "it has spots"'),
        ("Slow", "flatbread", 10, "150 C rising to 200 C, beside the fire"),
    )
    mouth = TAKES + "    cooks at the mouth from 60 min until 5 min before the fire is out\n"
    oven = falling(breads=(*BREADS, *breads), takes=mouth)
    assert [plain(line) for line in oven.burning] == [
        "Before the fire is out, beside the fire: Ash, 48 loaves, in 2 loads, 40–50 min.",
        "Before the fire is out, at the mouth: Onion, 10 loaves, 40–50 min, in from 60 min, out by 5 min, before the fire is out; "
        "until it has spots.",
        "Before the fire is out, beside the fire: Slow, 10 loaves, 40–50 min, in as the fire is lit.",
    ]
    assert not {"Ash", "Onion", "Slow"} & {one.name for one in (*oven.loads, *oven.left_out)}
    page = html_of(card(breads=(*BREADS, *breads)))
    assert page.count("Before the fire is out, ") == 3
    assert falling().burning == ()
