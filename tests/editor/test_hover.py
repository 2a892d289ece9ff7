"""What is said of what lies under the pointer."""

from __future__ import annotations

from pathlib import Path

from editor.client import client
from editor.houses import LOAF, house, write_house

from manchet.cli.editor import order_in_words
from manchet.editor.hover import hover
from manchet.editor.settings import Settings, settings_of

PATH = "breads/plain.bake"


def told(line: str, word: str, path: str = PATH, settings: Settings | None = None) -> str:
    """What is said at a word of the first line that holds `line`."""
    bakery = house()
    file = bakery.tree(path)
    assert file is not None
    at = next(one for one in file.lines if line in one.raw)
    found = hover(bakery, path, at.number, at.raw.index(word) + 1, settings or Settings())
    return "" if found is None else found.text


def test_a_figure_says_why() -> None:
    said = told("water", "water")
    assert "**water** 3647.78 g, for 10 loaves" in said or ("**water** " in said and "for 10 loaves" in said)
    assert "rule: per cent of all flour x all flour" in said
    assert "water  70 %  (breads/plain.bake:7)" in said


def test_an_ingredient_is_told_from_the_house_larder() -> None:
    said = told("white flour", "white")
    assert "**white flour**: wheat flour" in said
    assert "- allergens: wheat, gluten" in said
    assert "- from larder.bake:2" in said and "not known" not in said
    assert "- not known: fat, saturates" in told("strong bran", "bran", "larder.bake")
    assert "allergens: wheat, gluten" in told("ripe pot", "pot", "larder.bake")


def test_a_verb_says_what_it_asks_for() -> None:
    said = told("ferment", "ferment")
    assert said.startswith("**ferment**: a wait")
    assert "It has to say how long: `40-50 min`" in said


def test_the_head_says_the_whole() -> None:
    said = told("formula", "Plain")
    assert said.startswith("**Plain loaf**, 10 loaves")
    assert "- salt: 2 %" in said
    assert "- salt" in told("everything else", "else")


def test_a_report_that_is_allowed_says_what_it_is_about() -> None:
    bakery = house({"a.bake": LOAF.replace("  kind", '  allow salt-missing because "no"\n  kind')})
    found = hover(bakery, "a.bake", 2, 10, Settings())
    assert found is not None and "no salt in a bread that usually has it" in found.text


def test_today_is_a_setting_of_the_editor(tmp_path: Path) -> None:
    wanted = {"today": {"Plain loaf": "--pieces 20", "Other": "--pieces many", "Third": "--what"}}
    settings = settings_of(wanted, order_in_words)
    assert [wrong.split(":")[1] for wrong in settings.wrong] == [" Other", " Third"]
    assert "for 20 loaves today" in told("water", "water", settings=settings)
    assert settings_of(["nonsense"], order_in_words) == Settings()
    with client(write_house(tmp_path), settings={"today": {"Plain loaf": "--pieces 20"}}) as editor:
        editor.open(PATH)
        editor.reports(PATH)
        answer = editor.ask("textDocument/hover", editor.at(PATH, 0, 3))
        assert answer["contents"]["value"].startswith("**Plain loaf**, 20 loaves today")
        assert answer["range"]["end"] == {"line": 0, "character": 18}
        editor.notify(
            "workspace/didChangeConfiguration", {"settings": {"manchet": {"today": {"Plain loaf": "--pieces 30"}}}}
        )
        answer = editor.ask("textDocument/hover", editor.at(PATH, 0, 3))
        assert answer["contents"]["value"].startswith("**Plain loaf**, 30 loaves today")


def test_where_there_is_nothing_nothing_is_said() -> None:
    bakery = house()
    for line in range(40):
        for column in (0, 1, 5, 400):
            for file in bakery.files:
                hover(bakery, file.path, line, column, Settings())
    assert hover(bakery, "no such file", 1, 1, Settings()) is None
