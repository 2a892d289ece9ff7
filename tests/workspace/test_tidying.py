"""`tidy` writes files in their normal form: whole files or none, their ends of lines and their byte-order mark as they were."""

from __future__ import annotations

import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest
from cli.transcripts import manchet

from manchet.source.files import LARGEST
from manchet.workspace.rewriting import write_anew
from manchet.workspace.selection import selections
from manchet.workspace.tidying import tidy_bytes, tidy_files
from manchet.workspace.trouble import Blocked

UNTIDY = "formula Loaf\n  kind soft\n  dough\n    salt 20 grams\n    proof 60 min\n    knead  8 min"
TIDY = "formula Loaf\n  kind soft\n\n  dough\n    salt                  20 g\n    prove 60 min\n    knead  8 min\n"
AMERICAN = "kitchen Home\n  words         American\n"


@pytest.fixture(autouse=True)
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("MANCHET_CACHE", "off")
    monkeypatch.chdir(tmp_path)
    (tmp_path / "a.bake").write_text(UNTIDY, encoding="utf-8")
    return tmp_path


@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"], ids=["plain", "byte-order mark"])
@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"], ids=repr)
def test_ends_of_lines_and_the_mark_stay(here: Path, mark: bytes, newline: str) -> None:
    untidy, tidy = (mark + text.replace("\n", newline).encode() for text in (UNTIDY, TIDY))
    (here / "a.bake").write_bytes(untidy)
    assert manchet(["tidy"]).status == 0
    assert (here / "a.bake").read_bytes() == tidy
    assert manchet(["tidy", "--check"]).status == 0


def test_ends_of_lines_of_two_sorts_become_those_of_the_first() -> None:
    assert tidy_bytes("a", b"# one\r\n# two\n", "").value == b"# one\r\n# two\r\n"


def test_each_file_is_in_the_english_of_its_nearest_kitchen(here: Path) -> None:
    for folder in ("home", "home/deep"):
        (here / folder).mkdir()
        (here / folder / "b.bake").write_text(UNTIDY.replace("Loaf", folder), encoding="utf-8")
    (here / "home" / "kitchen.bake").write_text(AMERICAN, encoding="utf-8")
    (here / "kitchen.bake").write_text("kitchen House\n", encoding="utf-8")
    manchet(["tidy"])
    written = [(here / path).read_text(encoding="utf-8") for path in ("a.bake", "home/b.bake", "home/deep/b.bake")]
    assert ["proof" in text for text in written] == [False, True, True]


def test_standard_input_is_in_the_english_of_this_folder(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (here / "home").mkdir()
    (here / "home" / "kitchen.bake").write_text(AMERICAN, encoding="utf-8")
    (here / "kitchen.bake").write_text("kitchen House\n", encoding="utf-8")
    assert manchet(["tidy", "-"], UNTIDY).out == TIDY
    monkeypatch.chdir(here / "home")
    assert manchet(["tidy", "-"], UNTIDY).out == TIDY.replace("prove", "proof")


def test_standard_output_has_the_bytes_of_the_text_whatever_the_terminal(here: Path) -> None:
    data = b"\xef\xbb\xbf" + "formula Brötchen ½\r\n  about “\U0001f950”".encode()
    done = subprocess.run(
        [sys.executable, "-m", "manchet.cli.main", "tidy", "-"],
        input=data,
        capture_output=True,
        env={**os.environ, "PYTHONIOENCODING": "ascii"},
        timeout=60,
    )
    assert done.stdout == b"\xef\xbb\xbf" + 'formula Brötchen ½\r\n  about "\U0001f950"\r\n'.encode(), done.stderr


def test_a_file_that_was_saved_meanwhile_is_left_alone_and_so_are_all(here: Path) -> None:
    (here / "b.bake").write_text(UNTIDY.replace("Loaf", "Other"), encoding="utf-8")
    (selection,) = selections(["."])
    files = tidy_files(selection).value
    (here / "b.bake").write_text("# saved by the editor\n", encoding="utf-8")
    with pytest.raises(Blocked, match=r"b\.bake was changed while it was looked over, and nothing was written"):
        list(write_anew(files))
    assert (here / "a.bake").read_text(encoding="utf-8") == UNTIDY
    assert (here / "b.bake").read_text(encoding="utf-8") == "# saved by the editor\n"


def test_a_file_keeps_who_may_read_it_and_leaves_nothing_beside(here: Path) -> None:
    os.chmod(here / "a.bake", 0o640)
    manchet(["tidy"])
    assert stat.S_IMODE(os.stat(here / "a.bake").st_mode) == 0o640
    assert os.listdir(here) == ["a.bake"]


def test_a_tidy_file_keeps_its_date(here: Path) -> None:
    manchet(["tidy"])
    os.utime(here / "a.bake", (1, 1))
    manchet(["tidy"])
    assert os.stat(here / "a.bake").st_mtime == 1


def test_a_full_disk_leaves_the_file_whole(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    run = manchet(["tidy"])
    assert run.status == 1 and "the disk is full" in run.err
    assert (here / "a.bake").read_text(encoding="utf-8") == UNTIDY
    assert os.listdir(here) == ["a.bake"]


def test_a_file_that_would_grow_too_large_to_be_read_stays() -> None:
    loaf = b"formula Loaf\n  kind soft\n\n  dough\n    salt 2%\n"
    small, large = (loaf + b"#" * (size - len(loaf) - 1) + b"\n" for size in (1000, LARGEST))
    assert tidy_bytes("a", small, "").value == small.replace(b"salt 2%", b"salt                   2%")
    assert tidy_bytes("a", large, "").value == large
