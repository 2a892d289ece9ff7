"""The two highlighting files know the words of the language and colour the demo as a baker would expect."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from every import every

from manchet.syntax.openings import UNLESS_WEIGHED, lines

ROOT = Path(__file__).parents[2]
EDITORS = ROOT / "grammar" / "editors"
RULES = json.loads((EDITORS / "bake.tmLanguage.json").read_text(encoding="utf-8"))
REPOSITORY = RULES["repository"]


def _lines() -> list[str]:
    """The beginning of every line that words of the language open, as deep as it stands; not the other English's."""
    return sorted(
        {
            f"{deep}{line.example or line.words}"
            for line in lines()
            for where, deep in DEEP.items()
            if where in line.under
        }
    )


DEEP = {"top": "", "formula": "  ", "kitchen": "  "} | {
    "stage": "    ", UNLESS_WEIGHED: "    ", "entry": "    ", "thing": "    ", "step": "      ",
}  # fmt: skip
"""How deep the lines of a context stand. What may stand in others stands in one of these too."""


def test_every_rule_is_used_and_is_an_expression() -> None:
    assert {p["include"].removeprefix("#") for p in RULES["patterns"]} == set(REPOSITORY)
    for rule in REPOSITORY.values():
        for key in ("match", "begin", "end"):
            if key in rule:
                re.compile(rule[key])


@every(_lines(), at_least=150)
def test_every_first_word_is_coloured(line: str) -> None:
    rules = [rule["match"] for rule in REPOSITORY.values() if "match" in rule]
    assert any(re.search(rule, written) for rule in rules for written in (f"{line} x", line))
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
