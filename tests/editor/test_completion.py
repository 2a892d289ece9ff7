"""What is offered, by where one types and by what is typed."""

from __future__ import annotations

from pathlib import Path

from editor.client import client
from editor.houses import HOUSE, house, write_house
from every import every

from manchet.editor.completion import completion

PATH = "breads/poolish.bake"


def offered(line: str, under: str, path: str = PATH) -> list[str]:
    """What is offered at the end of a new line under the first that holds `under`, at the top where that is ""."""
    rows = HOUSE[path].split("\n")
    at = next(n for n, row in enumerate(rows) if under in row) + 1 if under else 0
    text = "\n".join([*rows[:at], line, *rows[at:]])
    bakery = house({**HOUSE, path: text})
    return [one.text for one in completion(bakery, path, text, at + 1, len(line) + 1).items]


@every(
    [
        ("", "", ["formula", "preparation", "assembly"]),
        ("fo", "", ["formula"]),
        ("  ki", "formula", ["kind"]),
        ("  kind rye", "formula", ["rye hearth loaf", "rye tin loaf"]),
        ("    wh", "overall", ["white flour"]),
        ("    str", "overall", ["strong flour", "strong bran"]),
        ("    water 70", "overall", ["%", "g", "kg"]),
        ("    water 70 k", "overall", ["kg"]),
        ("    water 70 k", "  dough", ["kg"]),
        ("    ferment covered 2", "  dough", ["d", "h", "min", "s"]),
        ("    ferment covered 2 h at 2", "  dough", ["C", "F"]),
        ("    fer", "  dough", ["ferment"]),
        ("    ferment cov", "  dough", ["covered"]),
        ("    keep wh", "  dough", ["keep what is left as"]),
        ("    bake 20 min at ", "  dough", ["230 C"]),
        ("    retard 12 h in ", "  dough", ["long tin", "walk in", "deck"]),
        ("    retard 12 h in wa", "  dough", ["walk in"]),
        ("  makes 4 loaves in ", "formula", ["long tin"]),
        ("    add salt and ripe p", "  dough", ["ripe pot"]),
        ("    dust with whi", "  dough", ["white flour"]),
        ("    hou", "  dough", ["house sour"]),
        ("    class wh", "larder", ["wheat flour"]),
    ],
    at_least=22,
)
def test_what_goes_on_from_what_is_typed(line: str, under: str, wanted: list[str]) -> None:
    path = "larder.bake" if under == "larder" else PATH
    found = offered(line, "white flour" if under == "larder" else under, path)
    assert found[: len(wanted)] == wanted


@every(["    # s", '    ferment 2 h until "a', "    water 70%  # ", '  about "bread of 20'], at_least=4)
def test_words_for_people_are_left_alone(line: str) -> None:
    assert offered(line, "overall") == []


def test_a_stage_is_offered_until_it_is_used() -> None:
    text = HOUSE[PATH]
    assert "poolish" not in offered("    poo", "  dough")
    unused = text.replace("    poolish\n", "    po\n", 1)
    bakery = house({**HOUSE, PATH: unused})
    line = unused[: unused.index("    po\n")].count("\n") + 1
    assert next(one for one in completion(bakery, PATH, unused, line, 7).items).text == "poolish"


def test_an_empty_line_of_a_stage_offers_what_is_likely() -> None:
    found = offered("    ", "  dough")
    assert found[:4] == ["white flour", "strong bran", "ripe pot", "house sour"]
    assert found.index("mix") < found.index("bake") and "hold back" in found
    assert len(found) <= 120


def test_what_is_reported_can_be_allowed() -> None:
    rows = HOUSE[PATH].replace("    salt                   2%\n", "")
    text = rows.replace("  kind", "  allow \n  kind")
    bakery = house({**HOUSE, PATH: text})
    assert 'salt-missing because ""' in [one.text for one in completion(bakery, PATH, text, 2, 9).items]
    assert [one.text for one in completion(bakery, PATH, text.replace("allow ", "allow salt-m"), 2, 15).items] == [
        'salt-missing because ""'
    ]


def test_every_place_of_every_beginning_is_answered() -> None:
    text = HOUSE[PATH] + HOUSE["larder.bake"] + HOUSE["kitchen.bake"]
    bakery = house({**HOUSE, PATH: text})
    for end in range(0, len(text), 5):
        begun = text[:end]
        line = begun.count("\n") + 1
        completion(bakery, PATH, begun, line, len(begun) - (begun.rfind("\n") + 1) + 1)


def test_an_editor_puts_it_in_the_place_of_what_is_typed(tmp_path: Path) -> None:
    text = HOUSE[PATH].replace("    salt ", '    "🥖" whi\n    salt ', 1)
    with client(write_house(tmp_path)) as editor:
        editor.open(PATH, HOUSE[PATH] + '    bake 20 min at 230 C until "🥖", ste')
        rows = HOUSE[PATH].count("\n")
        answer = editor.ask("textDocument/completion", editor.at(PATH, rows, 44))
        assert [one["label"] for one in answer["items"]] == ["steam"]
        assert not answer["isIncomplete"]
        edit = answer["items"][0]["textEdit"]
        assert edit == {
            "newText": "steam",
            "range": {"start": {"line": rows, "character": 37}, "end": {"line": rows, "character": 40}},
        }
        editor.type(PATH, text)
        spaced = {**editor.at(PATH, 1, 2), "context": {"triggerKind": 2, "triggerCharacter": " "}}
        assert editor.ask("textDocument/completion", spaced)["items"] == []
        for line in range(30):
            editor.ask("textDocument/completion", editor.at(PATH, line, 4))
        assert [one for one in editor.asked if one["method"] == "window/logMessage"] == []
