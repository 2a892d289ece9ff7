"""A comparison with a revision of git, in real checkouts: which bread is which, the house of then, and what is said where one side has
nothing to say."""

from __future__ import annotations

import json
import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from loaves import LOAVES_AND_ROLLS, PLAIN_LOAF, POOLISH_LOAF

from manchet.cli.main import run

LARDER = """\
larder House
  white flour
    price         20 EUR for 25 kg
  crumb fat
    class         fat
    no allergens
    per 100 g
      fat             99 g
"""

Manchet = Callable[..., tuple[int, str, str]]


def git(folder: Path, *words: str) -> None:
    author = ("-c", "user.name=A", "-c", "user.email=a@b", "-c", "commit.gpgsign=false")
    subprocess.run(["git", "-C", str(folder), *author, *words], check=True, capture_output=True)


def commit(folder: Path) -> None:
    git(folder, "add", "-A")
    git(folder, "commit", "-qm", "x", "--allow-empty")


@pytest.fixture
def bakery(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A bakery in a folder of a checkout, committed once; the command runs in it."""
    inside = tmp_path / "bakery"
    (inside / "breads").mkdir(parents=True)
    git(tmp_path, "init", "-q")
    (inside / "larder.bake").write_text(LARDER)
    (inside / "breads" / "plain.bake").write_text(PLAIN_LOAF)
    (inside / "breads" / "poolish.bake").write_text(POOLISH_LOAF)
    commit(tmp_path)
    monkeypatch.chdir(inside)
    return inside


@pytest.fixture
def manchet(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Manchet:
    def called(*words: str) -> tuple[int, str, str]:
        monkeypatch.setattr("sys.argv", ["manchet", "compare", *words])
        status = run()
        said = capsys.readouterr()
        return status, said.out, said.err

    return called


def rewrite(file: Path, before: str, after: str) -> None:
    text = file.read_text()
    assert before in text
    file.write_text(text.replace(before, after))


SALT = "Plain loaf: {} → {}\n  salt 2 → 1.8 %: 104 g → 93 g today\n"


def test_the_whole_bakery_with_a_revision(bakery: Path, manchet: Manchet) -> None:
    assert manchet("HEAD") == (0, "2 are the same on both sides\n", "")
    rewrite(bakery / "breads/plain.bake", "salt                   2%", "salt                   1.8%")
    status, out, _ = manchet("HEAD")
    assert (status, out) == (1, SALT.format("HEAD", "working copy") + "1 is the same on both sides\n")


@pytest.mark.parametrize(
    "words",
    [
        ("Plain loaf",),
        ("plain loaf",),
        ("HEAD", "Plain loaf"),
        ("HEAD:breads/plain.bake",),
        ("HEAD:bakery/breads/plain.bake",),
        ("HEAD:./breads/plain.bake",),
        ("HEAD:breads/plain.bake", "Plain loaf"),
        ("HEAD", "breads/plain.bake"),
        ("breads/plain.bake",),
    ],
    ids=" ".join,
)
def test_every_way_to_name_one(bakery: Path, manchet: Manchet, words: tuple[str, ...]) -> None:
    rewrite(bakery / "breads/plain.bake", "salt                   2%", "salt                   1.8%")
    assert manchet(*words) == (1, SALT.format("HEAD", "working copy"), "")
    assert manchet(*words, "--quiet") == (1, "", "")


@pytest.mark.parametrize(
    "words", [("HEAD~1", "HEAD"), ("HEAD~1", "HEAD", "Plain loaf"), ("HEAD~1", "Plain loaf", "HEAD"), ("one", "HEAD")]
)
def test_two_revisions(bakery: Path, manchet: Manchet, words: tuple[str, ...]) -> None:
    git(bakery, "tag", "one")
    rewrite(bakery / "breads/plain.bake", "salt                   2%", "salt                   1.8%")
    commit(bakery)
    rewrite(bakery / "breads/plain.bake", "1.8%", "2.2%")
    status, out, _ = manchet(*words)
    assert status == 1
    assert out.startswith(SALT.format(words[0], "HEAD"))


def test_a_folder_is_compared_by_itself(bakery: Path, manchet: Manchet, monkeypatch: pytest.MonkeyPatch) -> None:
    rewrite(bakery / "breads/plain.bake", "salt                   2%", "salt                   1.8%")
    (bakery / "home").mkdir()
    (bakery / "home" / "rolls.bake").write_text(LOAVES_AND_ROLLS)
    monkeypatch.chdir(bakery / "breads")
    status, out, _ = manchet("HEAD")
    assert (status, out) == (1, SALT.format("HEAD", "working copy") + "1 is the same on both sides\n")


def test_the_house_of_then_counts(bakery: Path, manchet: Manchet) -> None:
    rewrite(
        bakery / "breads/plain.bake",
        "salt                   2%",
        "crumb fat              3%\n    salt                   2%",
    )
    commit(bakery)
    rewrite(bakery / "larder.bake", "no allergens", "allergens     milk")
    rewrite(bakery / "larder.bake", "fat             99 g", "fat             80 g")
    status, out, _ = manchet("HEAD", "Plain loaf")
    assert status == 1
    assert "now contains MILK (from crumb fat)\n" in out
    assert "fat 2.97 → 2.4 %\n" in out
    # And what only its larder entry changed is told of no other bread.
    assert manchet("HEAD", "Poolish loaf")[0] == 0


def test_new_gone_and_called_otherwise(bakery: Path, manchet: Manchet) -> None:
    (bakery / "breads/rolls.bake").write_text(LOAVES_AND_ROLLS)
    (bakery / "breads/poolish.bake").unlink()
    rewrite(bakery / "breads/plain.bake", "formula Plain loaf", "formula Daily loaf")
    rewrite(bakery / "breads/plain.bake", "salt                   2%", "salt                   1.8%")
    status, out, _ = manchet("HEAD")
    assert status == 1
    assert out == (
        SALT.format("HEAD", "working copy").replace("Plain loaf", "Plain loaf → Daily loaf")
        + "Loaves and rolls: only in working copy\n"
        + "Poolish loaf: only in HEAD\n"
    )
    assert manchet("HEAD", "Daily loaf")[1] == SALT.format("HEAD", "working copy").replace(
        "Plain loaf", "Plain loaf → Daily loaf"
    )
    assert manchet("HEAD", "Poolish loaf")[:2] == (1, "Poolish loaf: only in HEAD\n")
    assert manchet("HEAD", "Loaves and rolls")[:2] == (1, "Loaves and rolls: only in working copy\n")


def test_a_side_that_cannot_be_read(bakery: Path, manchet: Manchet) -> None:
    rewrite(bakery / "breads/plain.bake", "white flour          100%", "white flour           90%")
    commit(bakery)
    told = "breads/plain.bake:5: the flours of overall come to 90%: white flour 90%\n"
    status, out, _ = manchet("HEAD~1", "Plain loaf")
    assert (status, out) == (1, f"Plain loaf: cannot be read in working copy: {told}")
    rewrite(bakery / "breads/plain.bake", "white flour           90%", "white flour          100%")
    status, out, _ = manchet("HEAD", "Plain loaf")
    assert (status, out) == (1, f"Plain loaf: cannot be read in HEAD: {told}")
    assert manchet("HEAD~1", "Plain loaf")[0] == 0


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("HAED~1",), "there is no formula, file or revision of git called HAED~1"),
        (("Plain loav",), "there is no formula, file or revision of git called Plain loav\n  near: Plain loaf"),
        (("HEAD~9",), "there is no formula, file or revision of git called HEAD~9\n  a revision is a commit"),
        (("HEAD", "Nobody's loaf"), "neither HEAD nor working copy has a formula called Nobody's loaf\n  formulas there: Plain"),
        (("HEAD", "Plain loav"), "neither HEAD nor working copy has a formula called Plain loav\n  near: Plain loaf"),
        (("HEAD:breads/none.bake",), "neither HEAD nor working copy has a formula called breads/none.bake"),
        (("breads/none.bake",), "there is no file or folder breads/none.bake"),
        ((), "compare what?"),
        (("",), "an empty name was given"),
        (("HEAD", "HEAD", "HEAD"), "a comparison is of two"),
        (("--not-a-revision",), "there is no option --not-a-revision"),
    ],
)  # fmt: skip
def test_what_is_not_understood(bakery: Path, manchet: Manchet, words: tuple[str, ...], said: str) -> None:
    status, out, err = manchet(*words)
    assert (status, out) == (2, "")
    assert said in err


@pytest.mark.parametrize("breads", [1, 9])
def test_git_is_asked_as_often_however_many_files(
    bakery: Path, manchet: Manchet, monkeypatch: pytest.MonkeyPatch, breads: int
) -> None:
    for number in range(breads):
        (bakery / f"breads/more-{number}.bake").write_text(PLAIN_LOAF.replace("Plain loaf", f"Loaf {number}"))
    commit(bakery)
    calls: list[Any] = []
    popen = subprocess.run

    def counted(*words: Any, **more: Any) -> Any:
        calls.append(words)
        return popen(*words, **more)

    monkeypatch.setattr(subprocess, "run", counted)
    assert manchet("HEAD")[0] == 0
    assert len(calls) == 4  # is it a revision; which; its files; what is in them
    calls.clear()
    assert manchet("HEAD~1", "HEAD")[0] == 1
    assert len(calls) == 9


def test_json_and_html(bakery: Path, manchet: Manchet) -> None:
    rewrite(bakery / "breads/plain.bake", "salt                   2%", "salt                   1.8%")
    status, out, _ = manchet("HEAD", "--format", "json")
    found = json.loads(out)
    assert (status, found["old"], found["new"], found["same"]) == (1, "HEAD", "working copy", 1)
    (bread,) = found["breads"]
    (change,) = bread["changes"]
    assert change["text"] == "salt 2 → 1.8 %: 104 g → 93 g today"
    assert (change["kind"], change["name"]) == ("share change", "salt")
    assert change["before"] == {"exact": "0.02", "rounded": 0.02}
    status, out, _ = manchet("HEAD", "--format", "html")
    assert status == 1
    assert "salt <b>1.8" in out and "<small>was 2" in out
    assert manchet("HEAD", "--format", "html", "--quiet") == (1, "", "")
