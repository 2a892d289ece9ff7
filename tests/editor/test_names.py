"""Where a name is entered, where it is used, and another name for it."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path

import pytest
from editor.client import client
from editor.houses import HOUSE, LOAF, house, write_house
from every import every

from manchet.diagnostics.diagnostic import Fix
from manchet.editor.references import definition, references
from manchet.editor.rename import name_to_change, rename
from manchet.source.mending import mend
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.trouble import Unknown

SOUR = """\
formula Sour loaf
  kind hearth loaf
  makes 10 loaves in long tin

  overall
    strong flour         100%
    water                 70%
    salt                   2%

  levain house sour with 20% of all flour

  levain wet rye with 10% of all flour
    white flour          100%
    water                100%
    ripe pot              20%, counted as white flour
    mix by hand 4 min to 26 C
    ripen covered 8-10 h at 24 C in walk in

  dough
    house sour
    wet rye
    everything else
    mix slow 8 min to 25 C
    dust with white flour 6 g each
    ferment covered 2 h at 25 C

  variant by hand
    without salt

plan Tuesday
  Sour loaf 10 loaves
  Sour loaf, by hand 10 loaves
  already made wash 200 g

preparation wash
  water                 50 g
  "egg"                 50 g
"""
FILES = {**HOUSE, "breads/sour.bake": SOUR}
PATH = "breads/sour.bake"


def at(path: str, line: str, word: str, files: dict[str, str] = FILES) -> tuple[str, int, int]:
    """Path, line and column of a word on the first line that holds `line`."""
    rows = files[path].split("\n")
    number = next(n for n, row in enumerate(rows) if line in row)
    return path, number + 1, rows[number].index(word) + 2


@every(
    [
        ((PATH, "strong flour", "strong"), "larder.bake:2"),
        ((PATH, "counted as", "white flour"), "larder.bake:2"),
        ((PATH, "ripe pot", "ripe"), "larder.bake:11"),
        ((PATH, "    house sour", "house"), "sours.bake:1"),
        ((PATH, "levain house sour", "house"), "sours.bake:1"),
        ((PATH, "    wet rye", "wet"), f"{PATH}:12"),
        ((PATH, "long tin", "long"), "kitchen.bake:7"),
        ((PATH, "in walk in", "walk"), "kitchen.bake:5"),
        ((PATH, "  Sour loaf 10", "Sour"), f"{PATH}:1"),
        ((PATH, "Sour loaf, by", "Sour"), f"{PATH}:1"),
        ((PATH, "already made", "wash"), f"{PATH}:35"),
        ((PATH, "dust with", "white"), "larder.bake:2"),
        (("larder.bake", "also called", "strong"), "larder.bake:2"),
        ((PATH, "water", "water"), ""),
        ((PATH, "kind", "hearth"), ""),
    ],
    at_least=15,
)
def test_a_name_leads_to_where_it_is_entered(where: tuple[str, str, str], wanted: str) -> None:
    found = definition(house(FILES), *at(*where))
    assert ("" if found is None else found.where) == wanted


def places(where: tuple[str, str, str], with_definition: bool = True) -> list[str]:
    return [place.where for place in references(house(FILES), *at(*where), with_definition)]


def test_every_place_is_found_where_it_is_named() -> None:
    assert places((PATH, "    wet rye", "wet")) == [f"{PATH}:12", f"{PATH}:21"]
    assert places((PATH, "    house sour", "house")) == [f"{PATH}:10", f"{PATH}:20", "sours.bake:1"]
    assert places((PATH, "    house sour", "house"), with_definition=False) == [f"{PATH}:20"]
    flour = places((PATH, "strong flour", "strong"))
    assert flour == [
        "breads/plain.bake:6", "breads/poolish.bake:6", "breads/poolish.bake:12", f"{PATH}:6", f"{PATH}:13", f"{PATH}:15",
        f"{PATH}:24", "larder.bake:2", "larder.bake:4", "larder.bake:14", "sours.bake:2",
    ]  # fmt: skip
    assert places((PATH, "  Sour loaf 10", "Sour")) == [f"{PATH}:1", f"{PATH}:31", f"{PATH}:32"]
    assert places((PATH, "long tin", "long")) == [f"{PATH}:3", "kitchen.bake:7"]


def renamed(where: tuple[str, str, str], new: str, files: dict[str, str] = FILES) -> dict[str, str]:
    """The files that become others by it."""
    edits = rename(house(files), *at(*where, files), new)
    found = {}
    for path in {edit.place.path for edit in edits}:
        mine = tuple(edit for edit in edits if edit.place.path == path)
        found[path] = mend(path, files[path], [Fix("", mine)]).text
    return found


def test_another_name_stands_wherever_the_old_one_stood() -> None:
    found = renamed((PATH, "    wet rye", "wet"), "grey rye")
    assert found == {PATH: SOUR.replace("wet rye", "grey rye")}
    found = renamed((PATH, "Sour loaf, by", "Sour"), "Acid loaf")
    assert found == {PATH: SOUR.replace("Sour loaf", "Acid loaf")}
    found = renamed((PATH, "    house sour", "house"), "our sour")
    assert found == {
        PATH: SOUR.replace("house sour", "our sour"),
        "sours.bake": HOUSE["sours.bake"].replace("house sour", "our sour"),
    }
    found = renamed((PATH, "variant by", "hand"), "all by hand")
    assert found == {
        PATH: SOUR.replace("by hand\n    without", "all by hand\n    without").replace(", by hand", ", all by hand")
    }
    found = renamed((PATH, "long tin", "long"), "tall tin")
    assert set(found) == {PATH, "kitchen.bake"}


def test_other_names_of_an_ingredient_stay() -> None:
    found = renamed((PATH, "strong flour", "strong"), "sack flour")
    assert found == {
        PATH: SOUR.replace("strong flour", "sack flour"),
        "larder.bake": HOUSE["larder.bake"].replace("strong flour", "sack flour"),
    }
    assert "breads/plain.bake" in renamed((PATH, "counted as", "white flour"), "house flour")


@every(
    [
        ((PATH, "    wet rye", "wet"), "house sour", "the name `house sour` is taken: sours.bake:1"),
        ((PATH, "    wet rye", "wet"), "Strong flours", "the name `Strong flours` is taken: larder.bake:2"),
        ((PATH, "    wet rye", "wet"), "butter", "the name `butter` is taken: in the built-in larder"),
        ((PATH, "  Sour loaf 10", "Sour"), "plain loaf", "the name `plain loaf` is taken: breads/plain.bake:1"),
        ((PATH, "long tin", "long"), "walk in", "the name `walk in` is taken: kitchen.bake:5"),
        ((PATH, "water", "water"), "aqua vitae", "in the larder that Manchet brings"),
        ((PATH, "kind", "hearth"), "x", "no name that can be changed"),
        ((PATH, "    wet rye", "wet"), 'a "b"', "without commas, quotes and #"),
        ((PATH, "    wet rye", "wet"), "  ", "letters, figures and spaces"),
        ((PATH, "    wet rye", "wet"), "mix slow 8 min", "with that name it would not check: "),
        ((PATH, "strong flour", "strong"), "20 g", "with that name it would not check: "),
        (("breads/poolish.bake", "    poolish", "poolish"), "sponge one", "`poolish` is a kind of stage"),
    ],
    at_least=12,
)
def test_a_name_is_refused_with_the_reason(where: tuple[str, str, str], new: str, says: str) -> None:
    with pytest.raises(Unknown) as refused:
        renamed(where, new)
    assert says in refused.value.message


LOST = "formula A\n   odd odd\n      white flour 100%\n  makes\n      water 70% of\n"
"""What stands under lines that could not be read."""


def test_nothing_raises_wherever_one_asks() -> None:
    bakery = house(
        {**FILES, "odd.bake": "\tformula A\n   overall\n\t\twhite flour 100%\n  x\n\xff\n", "lost.bake": LOST}
    )
    for file in bakery.files:
        for line in range(38):
            for column in (0, 3, 6, 9, 300):
                definition(bakery, file.path, line, column)
                try:
                    name_to_change(bakery, file.path, line, column)
                except Unknown:
                    continue
                with suppress(Unknown):
                    rename(bakery, file.path, line, column, "quite another") if column == 6 and not line % 5 else None


def test_an_editor_is_told_where_and_why_not(tmp_path: Path) -> None:
    with client(write_house(tmp_path, FILES)) as editor:
        text = SOUR.replace("  makes", '  about "🥖"\n  makes').replace('  "egg" ', '  "eggs 🥚" ')
        editor.open(PATH, text)
        _, line, column = at(PATH, "    wet rye", "wet")
        here = editor.at(PATH, line, column)
        (found,) = editor.ask("textDocument/definition", here)
        assert (found["uri"], found["range"]["start"]["line"]) == (editor.uri(PATH), 12)
        every = editor.ask("textDocument/references", {**here, "context": {"includeDeclaration": True}})
        assert [one["range"]["start"]["line"] for one in every] == [12, 21]
        ready = editor.ask("textDocument/prepareRename", here)
        assert ready == {"start": {"line": 21, "character": 4}, "end": {"line": 21, "character": 11}}
        edit = editor.ask("textDocument/rename", {**here, "newName": "grey rye"})
        assert [one["newText"] for one in edit["changes"][editor.uri(PATH)]] == ["grey rye", "grey rye"]
        with pytest.raises(AssertionError, match=r"the name `butter` is taken: in the built-in larder"):
            editor.ask("textDocument/rename", {**here, "newName": "butter"})


def test_a_thousand_lines_of_one_name_are_found_at_once() -> None:
    files = {f"b{number}.bake": LOAF.replace("Plain loaf", f"Loaf {number}") for number in range(200)}
    bakery = house({**HOUSE, **files})
    assert isinstance(bakery, OpenBakery)
    assert len(references(bakery, "larder.bake", 2, 4, with_definition=False)) == 205
