"""Which files belong together in an editor."""

from __future__ import annotations

from pathlib import Path

from editor.client import client
from editor.houses import HOUSE, LOAF, write_house

from manchet.editor.documents import Desk, root_of

NO_SALT = LOAF.replace("    salt                   2%\n", "")


def root_around(desk: Desk, path: Path) -> Path:
    return Path(root_of(desk.open(path.as_uri(), str(path), "").bakery))


def test_a_file_belongs_to_its_house(tmp_path: Path) -> None:
    """And a folder with two houses in it is two bakeries, as it is for `check` of a file in one."""
    for name in ("quay", "hill"):
        write_house(tmp_path / name)
    write_house(tmp_path, {"loose/loaf.bake": LOAF})
    desk = Desk([str(tmp_path)])
    assert root_around(desk, tmp_path / "quay/breads/plain.bake") == tmp_path / "quay"
    assert root_around(desk, tmp_path / "hill/new.bake") == tmp_path / "hill"
    assert root_around(desk, tmp_path / "loose/loaf.bake") == tmp_path / "loose"
    assert [root_of(one) for one in desk.bakeries_in(str(tmp_path))] == [str(tmp_path / "hill"), str(tmp_path / "quay")]


def test_a_folder_without_a_house_is_one_bakery(tmp_path: Path) -> None:
    write_house(tmp_path, {"a/one.bake": LOAF, "b/two.bake": LOAF})
    desk = Desk([str(tmp_path)])
    assert root_around(desk, tmp_path / "a/one.bake") == tmp_path
    assert root_around(Desk(), tmp_path / "a/one.bake") == tmp_path / "a"
    house = write_house(tmp_path / "house")
    assert root_around(Desk([str(house / "breads")]), house / "breads/plain.bake") == house


def test_what_is_put_away_counts_as_it_is_saved(tmp_path: Path) -> None:
    path = write_house(tmp_path) / "larder.bake"
    desk = Desk([str(tmp_path)])
    opened = desk.open("it", str(path), "larder Other\n")
    assert opened.bakery.read([]).larder.find("ripe pot") is None
    desk.close("it")
    assert opened.bakery.read([]).larder.find("ripe pot") is not None
    assert desk.at("it") is None


def test_each_house_of_a_folder_is_told_of(tmp_path: Path) -> None:
    write_house(tmp_path / "quay", {**HOUSE, "breads/other.bake": NO_SALT.replace("Plain", "Other")})
    write_house(tmp_path / "hill", {**HOUSE, "breads/third.bake": NO_SALT.replace("Plain", "Other")})
    with client(tmp_path) as editor:
        editor.open("quay/breads/plain.bake")
        editor.reports_like("quay/breads/other.bake", ["salt-missing"])
        editor.reports_like("hill/breads/third.bake", ["salt-missing"])
        found = editor.ask("workspace/symbol", {"query": "other loaf"})
        assert len(found) == 2


def test_a_folder_behind_a_link_is_called_as_the_editor_calls_it(tmp_path: Path) -> None:
    write_house(tmp_path / "house")
    (tmp_path / "link").symlink_to(tmp_path / "house")
    with client(tmp_path / "link") as editor:
        editor.open("breads/plain.bake")
        here = editor.at("breads/plain.bake", 5, 6)
        (found,) = editor.ask("textDocument/definition", here)
        assert found["uri"] == editor.uri("larder.bake")
