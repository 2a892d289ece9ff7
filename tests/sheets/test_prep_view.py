"""What a prep sheet says of a formula: weights where they are weighed, per cent at the foot, and nothing guessed."""

from __future__ import annotations

from fractions import Fraction

from loaves import NUTTY_ROLLS, PLAIN_LOAF
from sheets import samples
from sheets.card_text import notes_of
from sheets.work import ISSUE, card, lines_of, parts_of, prepared, sheet

from manchet.batch.order import Order
from manchet.batch.pieces import branch_additions
from manchet.intake.starter import starter
from manchet.sheets.forms.prep_sheet.view import BakeTable, DivideList, PrepSheet, StageBlock, Tub, WayHeading
from manchet.sheets.page.house import House
from manchet.sheets.parts.views import WeighRow
from manchet.sheets.registry import html_of

FERRY = """
formula Ferry loaf
  kind hearth loaf
  status approved 2026-11-14 by Ines
  makes 10 loaves at 900 g dough
  makes 24 rolls at 110 g dough
  dough loss 1%
  bake loss 14%

  overall
    white flour           100%
    water                  70%
    salt                    2%

  levain with 20% of all flour
    white flour           100%
    water                 100%
    ripe wheat starter     10%, counted as white flour
    mix by hand 3 min to 26 C
    ripen covered 8-10 h at 24 C until "domed"
    keep 60 g as ripe wheat starter

  dough
    levain
    everything else
    hold back salt, water 4%
    mix slow 4 min
    add salt
    mix fast 3 min to 25 C
    add water as needed
    ferment covered 2-3 h at 25 C with 2 folds every 40 min
    divide
    for the loaves
      shape round
      prove 60-75 min at 26 C
      bake 15 min at 250 C, steam
      bake 25-30 min at 220 C to 97 C core, vent open
      cool 2 h
    for the rolls
      add hazelnuts 12% of the dough
      shape round
      prove 45 min at 26 C
      bake 16-18 min at 240 C, steam
      cool 30 min

larder House
  ripe wheat starter
    class         culture
    made of
      white flour          50%
      water                50%

kitchen House
  mixer spiral
    takes         2-8 kg dough
  scale bench
    reads         5 g
    up to         30 kg
  scale fine
    reads         0.1 g
    up to         300 g
"""


def block(view: PrepSheet, title: str) -> StageBlock:
    return next(b for b in view.blocks if b.title == title)


def row(rows: tuple[WeighRow, ...], name: str) -> WeighRow:
    return next(r for r in rows if r.name == name)


def figure(text: str) -> Fraction:
    return Fraction(text.replace(",", ""))


def test_lines_add_up_to_what_the_bowl_holds() -> None:
    for b in sheet(FERRY).blocks:
        assert abs(sum(figure(r.weight) for r in b.rows) - weight(b.tub)) < 5, b.title


def weight(tub: Tub | None) -> Fraction:
    assert tub is not None
    return figure("".join(c for c in tub.weight if c.isdigit() or c == "."))


def test_two_mixes_have_a_tick_each_and_the_levain_is_made_once() -> None:
    view = sheet(FERRY)
    levain, dough = block(view, "levain"), block(view, "dough")
    assert dough.bowls == ("1", "2")
    assert {r.ticks for r in dough.rows} == {2} and {r.ticks for r in levain.rows} == {1}
    assert (levain.once_for, levain.bowls_in_all) == ("2", "") and (dough.once_for, dough.bowls_in_all) == ("", "2")
    used = row(dough.rows, "levain")
    assert used.notes == () and levain.tub is not None
    assert [(to.to, to.each) for to in levain.tub.goes] == [("dough", f"{used.weight}\N{NO-BREAK SPACE}g")]
    assert view.running.mix == "2 mixes"


def test_what_is_held_back_has_its_tick_where_it_is_added() -> None:
    dough = block(sheet(FERRY), "dough")
    assert [(r.letter, r.name) for r in dough.aside] == [("A", "salt"), ("B", "water")], "in the order they go in"
    assert "salt" not in [r.name for r in dough.rows]
    assert dough.tub is not None and dough.tub.before == ("A", "B")
    salted = next(line for line in lines_of(dough) if any(clause.adds for clause in line.clauses))
    add, mix = salted.clauses
    assert (add.doing, add.letter, add.adds[0].name, mix.verb) == ("Add", "A", "salt", "mix"), (
        "with the mix that works it in"
    )
    assert add.adds[0].weight == row(dough.aside, "salt").weight
    assert add.adds[0].ticks == 2 and salted.numbers == ("1", "2")


def test_water_by_feel_has_its_jug_and_its_box() -> None:
    dough = block(sheet(FERRY), "dough")
    jug = next(line for line in lines_of(dough) if "as the flour asks" in line.text)
    assert jug.notes[0].startswith("jug: ") and jug.clauses[0].letter == "B"
    assert row(dough.aside, "water").weight in jug.notes[0]
    assert [box.label for box in jug.boxes] == ["went in", "time"] and jug.numbers == ("1", "2")


def test_the_pot_says_what_it_gives_and_gets() -> None:
    levain = block(sheet(FERRY), "levain")
    assert "from the pot" in row(levain.rows, "ripe wheat starter").notes
    assert levain.tub is not None
    assert [(back.weight, back.to) for back in levain.tub.back] == [("60\N{NO-BREAK SPACE}g", "ripe wheat starter")]
    assert any(line.text.startswith("Keep 60") for line in lines_of(levain))


def test_branches_and_the_divide_list() -> None:
    found = parts_of(sheet(FERRY))
    divide = next(p for p in found if isinstance(p, DivideList))
    assert [(s.number, s.noun, s.weight) for s in divide.sorts] == [("10", "loaves", "900"), ("24", "rolls", "98")]
    assert divide.sorts[0].baked == "770\N{NO-BREAK SPACE}g"
    assert [p.title for p in found if isinstance(p, WayHeading)] == ["for the loaves", "for the rolls"]
    nuts = [r for line in lines_of(sheet(FERRY)) for clause in line.clauses for r in clause.adds]
    assert [(r.name, r.weight) for r in nuts if r.name == "hazelnuts"] == [
        ("hazelnuts", "283")
    ]  # 2,357 g of dough and 12 % of it


def test_the_phases_of_a_bake_stand_in_a_table() -> None:
    bake = next(p for p in parts_of(sheet(FERRY)) if isinstance(p, BakeTable))
    one, two = bake.phases
    assert (one.minutes, one.heat, one.steam_vent) == ("15\N{NO-BREAK SPACE}min", "250\N{NO-BREAK SPACE}°C", ("steam",))
    assert (two.steam_vent, two.core) == (("damper open",), "97\N{NO-BREAK SPACE}°C")


def test_folds_have_a_tick_and_their_minute() -> None:
    bulk = next(line for line in lines_of(sheet(FERRY)) if line.text.startswith("Ferment"))
    assert [c.replace("\N{NO-BREAK SPACE}", " ") for c in bulk.clauses[0].counts] == [
        "fold at 40 min",
        "fold at 80 min",
    ]


def test_the_foot_has_per_cent_only_and_what_was() -> None:
    view = sheet(FERRY, before={"white flour": Fraction(1), "water": Fraction(7, 10), "salt": Fraction(18, 1000)})
    assert all("%" in line.percent for line in view.overall)
    marks = {line.name: line.was.replace("\N{NO-BREAK SPACE}", " ") for line in view.overall}
    assert marks == {"white flour": "", "water": "", "salt": "was 1.8 %"}
    assert view.flours == "counted as flour: white flour"
    labels = {f.label for f in view.totals}
    assert {"water added", "water in all", "prefermented flour"} <= labels and "salt" not in labels, "nothing twice"


def test_an_approved_formula_that_was_edited_says_so() -> None:
    assert sheet(FERRY).warning == ""
    assert sheet(FERRY, issue=ISSUE._replace(edited=True)).warning.startswith("NOT APPROVED")
    assert sheet(FERRY.replace("approved 2026-11-14 by Ines", "trial")).status == "trial"


def test_american_words_and_units() -> None:
    view = sheet(FERRY, House("Letter", "US", "F", "American"))
    dough = block(view, "dough")
    assert view.language == "en-US" and view.paper == "Letter"
    assert any(line.text.startswith("Proof") for line in lines_of(view))
    assert {r.unit for b in view.blocks for r in b.rows if not r.fine} <= {"oz", "lb"}
    bake = next(p for p in parts_of(view) if isinstance(p, BakeTable))
    assert bake.phases[0].heat == "480\N{NO-BREAK SPACE}°F"
    assert bake.phases[1].core == "207\N{NO-BREAK SPACE}°F"
    salt = row(dough.aside, "salt")
    assert salt.fine and salt.unit == "g" and salt.aside.replace("\N{NO-BREAK SPACE}", " ").endswith(" oz")


def test_large_weights_are_in_kilograms_and_one_unit_a_table() -> None:
    view = sheet(
        FERRY.replace("takes         2-8 kg", "takes         2-80 kg"), order=Order(pieces=((Fraction(40), "loaves"),))
    )
    coarse = {r.unit for r in block(view, "dough").rows if not r.fine}
    assert coarse == {"kg"}
    assert all(len(r.weight.split(".")[1]) == 3 for r in block(view, "dough").rows if not r.fine)


def test_a_preparation_has_no_flour_and_says_how_long_it_is_good() -> None:
    view = sheet(
        "preparation egg wash\n  eggs   500 g\n  milk   100 g\n  salt     2 g\n  whisk 2 min\n  good for 1 d at 4 C\n"
    )
    assert view.blocks[0].flour == "" and view.flours == "" and view.totals == ()
    assert any(line.startswith(("good for 24", "good for 1")) for line in view.lines)
    assert "total weight" in view.overall_head


def test_a_light_piece_is_divided_in_grams_with_the_ounces_beside() -> None:
    text = starter("Bun").replace("8 loaves at 900 g", "20 loaves at 60 g")
    view = sheet(text, House("Letter", "US", "F", "American"))
    (made,) = view.amounts
    assert (made.noun, made.weight, made.unit) == ("loaves", "60", "g (2.12\N{NO-BREAK SPACE}oz)")
    assert view.water is None, "no kitchen says how warm anything is"


def test_what_is_worked_into_a_part_and_its_dough_weigh_what_its_pieces_do() -> None:
    work = prepared(NUTTY_ROLLS)
    ((_, nuts),) = branch_additions(work.batch.formula.branches[1], work.batch)
    assert nuts == Fraction(24 * 110 * 12, 112)
    assert work.batch.divided + nuts == 24 * 110 + 10 * 900


def test_what_is_weighed_beside_the_dough_is_parted_from_what_is_made_ahead() -> None:
    said = " ".join(html_of(samples.ebb_rye()).split())
    assert '<p class="ahead"><b>weigh out too</b> <span' in said


def test_rounds_on_a_griddle_are_those_of_the_card() -> None:
    """46 cakes, 4 at a time: eleven rounds and one of two."""
    cakes = PLAIN_LOAF.replace("    bake 40 min at 230 C\n", "    griddle 4 min a side at 200 C, 4 at a time\n")
    for pieces, rounds in ((46, "12 rounds of 4"), (4, "")):
        text = cakes.replace("10 loaves at 900 g", f"{pieces} cakes at 90 g")
        (line,) = [line for line in lines_of(sheet(text)) if "riddle" in line.text]
        assert line.text.endswith(f"4 at a time ({rounds})" if rounds else "4 at a time")
        assert notes_of(card(text)).count("12 rounds of 4") == bool(rounds)
