"""Outline, search, folds and colours."""

from __future__ import annotations

from pathlib import Path

from editor.client import client
from editor.houses import HOUSE, LOAF, house, write_house

from manchet.editor.outline import folds, named_like, outline
from manchet.editor.tokens import SORTS, colours

POOLISH = "breads/poolish.bake"


def tree(path: str, text: str | None = None):  # type: ignore[no-untyped-def]
    bakery = house(HOUSE if text is None else {**HOUSE, path: text})
    file = bakery.tree(path)
    assert file is not None
    return file


def test_an_outline_has_what_is_named() -> None:
    (formula,) = outline(tree(POOLISH))
    assert (formula.name, formula.sort) == ("Poolish loaf", "formula")
    assert [(one.name, one.sort, one.says) for one in formula.under] == [
        ("overall", "overall", ""),
        ("poolish", "stage", "30% of all flour"),
        ("dough", "stage", ""),
    ]
    assert formula.whole.line == 1 and formula.whole.end_line == HOUSE[POOLISH].count("\n")
    (larder,) = outline(tree("larder.bake"))
    assert [one.name for one in larder.under] == ["white flour", "strong bran", "ripe pot"]
    (kitchen,) = outline(tree("kitchen.bake"))
    assert [one.name for one in kitchen.under] == ["deck", "walk in", "long tin"]


def test_the_whole_bakery_is_searched_by_beginnings() -> None:
    bakery = house()
    assert [one.name for one in named_like(bakery, "loa")] == ["Plain loaf", "Poolish loaf"]
    assert [(one.name, one.head.where) for one in named_like(bakery, "sour h")] == [
        ("levain house sour", "sours.bake:1")
    ]
    assert [one.name for one in named_like(bakery, "bran")] == ["strong bran"]
    assert len(named_like(bakery, "")) == 8


def test_headings_and_remarks_fold() -> None:
    found = folds(tree("a.bake", "# one\n# two\n\n" + LOAF + "# three\n"))
    assert (1, 2, True) in found
    assert (4, LOAF.count("\n") + 3, False) in found
    assert all(one.first < one.last for one in found)


def test_colours_follow_the_grammar() -> None:
    text = 'formula A  # 🥖\n  overall\n    white flour  100%\n  poolish with 20% of all flour\n    mix slow 3 min until "🥖 smooth"\n    mixx\n'
    file = tree("a.bake", text)
    said = [(file.lines[one.line - 1].raw[one.start - 1 : one.end - 1], one.sort) for one in colours(file)]
    assert said == [
        ("formula", "keyword"), ("A", "class"), ("# 🥖", "comment"), ("overall", "keyword"), ("white flour", "variable"),
        ("100%", "number"), ("poolish", "class"), ("with", "keyword"), ("20%", "number"), ("of all flour", "keyword"),
        ("mix", "function"), ("slow", "keyword"), ("3 min", "number"), ("until", "keyword"), ('"🥖 smooth"', "string"),
        ("mixx", "variable"),
    ]  # fmt: skip


def test_an_editor_is_given_them_in_its_units(tmp_path: Path) -> None:
    text = 'formula A\n  about "🥖" # 🥖\n' + LOAF
    with client(write_house(tmp_path)) as editor:
        editor.open(POOLISH, text)
        document = {"textDocument": {"uri": editor.uri(POOLISH)}}
        symbols = editor.ask("textDocument/documentSymbol", document)
        assert [one["name"] for one in symbols] == ["A", "Plain loaf"]
        assert symbols[0]["range"]["end"] == {"line": 1, "character": 17}
        folded = editor.ask("textDocument/foldingRange", document)
        assert {"startLine": 0, "endLine": 1} in folded
        data = editor.ask("textDocument/semanticTokens/full", document)["data"]
        assert data[:25] == [0, 0, 7, 0, 0, 0, 8, 1, 3, 0, 1, 2, 5, 0, 0, 0, 6, 4, 5, 0, 0, 5, 4, 6, 0]
        assert len(data) % 5 == 0 and all(sort < len(SORTS) for sort in data[3::5])
        (found,) = editor.ask("workspace/symbol", {"query": "house so"})
        assert found["location"]["uri"] == editor.uri("sours.bake")
        for half in (text[:9], text[:30], text[:200], "", "\t\tx", "formula"):
            editor.type(POOLISH, half)
            for method in ("documentSymbol", "foldingRange", "semanticTokens/full"):
                editor.ask(f"textDocument/{method}", document)
        assert [one for one in editor.asked if one["method"] == "window/logMessage"] == []
