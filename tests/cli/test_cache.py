"""The cache cannot go stale, cannot be planted by someone else, and can be done without."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Place, Related, Severity
from manchet.formula.picture import Picture
from manchet.workspace import cache
from manchet.workspace.cache import Kept, close_store, open_store
from manchet.workspace.cache_folder import cache_folder
from manchet.workspace.packing import Found, pack, unpack

HOSTILE = "a\\n\\\\n\n\t\x1e\x1f\r\\\u2028\ud800é"
PLACE = Place(HOSTILE, 3, 4, 5, 6, HOSTILE)
FOUND = Found(
    (
        Diagnostic("salt-missing", Severity.WARNING, HOSTILE, PLACE, HOSTILE, (Related(PLACE, HOSTILE),) * 2),
        Diagnostic("x", Severity.ERROR, "", Place("", 1, 1, 1, 1)),
        Diagnostic(
            "unknown-word",
            Severity.ERROR,
            HOSTILE,
            PLACE,
            related=(Related(PLACE, ""),),
            fixes=(Fix(HOSTILE, (Edit(PLACE, HOSTILE), Edit(PLACE, "")), True), Fix("", (Edit(PLACE, "safe"),))),
        ),
    ),
    7,
    (Picture(HOSTILE, PLACE), Picture("cut.svg", PLACE)),
)


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    monkeypatch.delenv("MANCHET_CACHE", raising=False)
    return tmp_path


def test_a_result_comes_back_as_it_was() -> None:
    assert unpack(pack(FOUND)) == FOUND
    store = open_store("bakery", "")
    close_store(store, {HOSTILE: Kept("key", pack(FOUND)), "b": Kept("k", "0")})
    again = open_store("bakery", "")
    assert again.kept == {HOSTILE: Kept("key", pack(FOUND)), "b": Kept("k", "0")}
    assert open_store("bakery", "other").kept == {}


def test_the_folder_is_ours_alone(home: Path) -> None:
    made = cache_folder()
    assert made == str(home / "manchet")
    assert os.stat(made).st_mode & 0o777 == 0o700


def test_a_folder_that_others_may_enter_is_not_used(home: Path) -> None:
    (home / "manchet").mkdir(mode=0o700)
    (home / "manchet").chmod(0o755)
    assert cache_folder() is None
    store = open_store("bakery", "")
    close_store(store, {"a": Kept("k", "0")})
    assert list((home / "manchet").iterdir()) == []


def test_a_linked_folder_is_not_used(home: Path) -> None:
    (home / "elsewhere").mkdir(mode=0o700)
    (home / "manchet").symlink_to(home / "elsewhere")
    assert cache_folder() is None


def test_a_file_in_the_way_is_borne(home: Path) -> None:
    (home / "manchet").write_text("")
    assert cache_folder() is None


@pytest.mark.parametrize("value", ["off", "OFF", "0"])
def test_it_can_be_switched_off(value: str, home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("MANCHET_CACHE", value)
    assert cache_folder() is None
    assert not (home / "manchet").exists()


@pytest.mark.parametrize(
    "spoil",
    [
        lambda data: data[:-3],
        lambda data: data.replace(b"key", b"kex"),
        lambda data: b"",
        lambda data: b"\xff\x00" * 1000,
        lambda data: data + b"more\n",
    ],
)
def test_a_spoilt_store_is_passed_over(spoil: object) -> None:
    store = open_store("bakery")
    close_store(store, {"a": Kept("key", "0")})
    path = Path(store.file)
    path.write_bytes(spoil(path.read_bytes()))  # type: ignore[operator]
    assert open_store("bakery").kept == {}


def test_another_compiler_does_not_read_it(monkeypatch: pytest.MonkeyPatch) -> None:
    close_store(open_store("bakery"), {"a": Kept("key", "0")})
    monkeypatch.setattr(cache, "compiler", lambda: "another")
    assert open_store("bakery").kept == {}


def test_no_two_sequences_share_a_digest() -> None:
    assert cache.digest("ab", "c") != cache.digest("a", "bc")
    assert cache.digest("a") != cache.digest("a", "")


def test_old_stores_go_first(monkeypatch: pytest.MonkeyPatch, home: Path) -> None:
    monkeypatch.setattr(cache, "MOST_FILES", 3)
    for number in range(5):
        store = open_store(str(number))
        close_store(store, {"a": Kept("key", "0")})
        os.utime(store.file, ns=(number, number))
    close_store(open_store("last"), {"a": Kept("key", "0")})
    assert open_store("4").kept and open_store("last").kept
    assert open_store("0").kept == {} and len(list((home / "manchet").iterdir())) == 3
