"""The two highlighting files know the words of the language and colour the demo as a baker would expect."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from manchet.syntax import classes

ROOT = Path(__file__).parents[2]
EDITORS = ROOT / "grammar" / "editors"
RULES = json.loads((EDITORS / "bake.tmLanguage.json").read_text(encoding="utf-8"))
REPOSITORY = RULES["repository"]


def _lines() -> list[str]:
    """The beginning of every line that begins with words of the language, as deep as it stands."""
    deep = {
        "": classes.TOP, "  ": classes.FORMULA, "    ": classes.WORK | classes.VERBS | classes.ENTRY | classes.THING,
        "      ": classes.CLAUSES,
    }  # fmt: skip
    openings = [(indent, word, o) for indent, found in deep.items() for word, group in found.items() for o in group]
    return sorted(
        {f"{indent}{' '.join((word, *o.rest))}" for indent, word, o in openings if o.canonical == _said(word, o)}
    )


def _said(word: str, opening: classes.Opening) -> str:
    """The words as written; where they are not the ones kept, they are the other English and need no colour."""
    said = " ".join((word, *opening.rest))
    return opening.canonical if said.startswith(opening.canonical) else said


def test_every_rule_is_used_and_is_an_expression() -> None:
    assert {p["include"].removeprefix("#") for p in RULES["patterns"]} == set(REPOSITORY)
    for rule in REPOSITORY.values():
        for key in ("match", "begin", "end"):
            if key in rule:
                re.compile(rule[key])


@pytest.mark.parametrize("line", _lines())
def test_every_first_word_is_coloured(line: str) -> None:
    rules = [rule["match"] for rule in REPOSITORY.values() if "match" in rule]
    assert any(re.search(rule, f"{line} x") for rule in rules)
    assert line.split()[0] in (EDITORS / "bake.vim").read_text(encoding="utf-8")


@pytest.mark.parametrize("line", ["    salt  2%", "    white flour 1 lb", "    dough loss 1%", "    oil  3%"])
def test_a_material_is_not_taken_for_a_step(line: str) -> None:
    assert not re.match(REPOSITORY["step"]["match"], line)


@pytest.mark.parametrize(
    ("line", "amounts"),
    [
        ("    ripen covered 12-14 h at 20 C", ["12-14 h", "20 C"]),
        ("    salt  1½ tsp", ["1½ tsp"]),
        ("    whole rye flour  66 2/3%", ["66 2/3%"]),
        ("    rye 1150  22%", ["22%"]),
    ],
)
def test_amounts_are_found(line: str, amounts: list[str]) -> None:
    assert [m[0] for m in re.finditer(REPOSITORY["amount"]["match"], line)] == amounts
