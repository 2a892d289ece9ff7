"""A file that is named is read, or it is an error that says why not."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF

BROKEN = PLAIN_LOAF.replace("salt   ", "sault  ")


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[None]:
    with scene(tmp_path, {}):
        Path("breads").mkdir()
        Path("breads/plain.bake").write_text(BROKEN)
        Path("../away").mkdir()
        Path("../away/other.bake").write_text(BROKEN)
        for link, target in {
            "out.bake": "../away/other.bake",
            "gone.bake": "nowhere.bake",
            "round.bake": "round.bake",
            "here.bake": "breads/plain.bake",
            "breads/up.bake": "../here.bake",
            "text.bake": "notes.txt",
        }.items():
            Path(link).symlink_to(target)
        Path("notes.txt").write_text(BROKEN)
        Path("larder.bake").write_text("larder Row\n  Row flour\n    class wheat flour\n")
        yield


@pytest.mark.parametrize("command", ["check", "build", "figures"])
@pytest.mark.parametrize(
    ("name", "says"),
    [
        ("out.bake", "this link leads out of the bakery's folder, and was not followed"),
        ("gone.bake", "this link leads to nowhere.bake, and there is no such file"),
        ("round.bake", "this link leads round in a circle, to no file"),
        ("text.bake", "this link leads to notes.txt, which is no formula file"),
    ],
)
def test_a_link_that_is_named_and_cannot_be_followed_is_an_error(command: str, name: str, says: str) -> None:
    ran = manchet([command, name])
    assert ran.status == (2 if command == "figures" else 1)
    said = ran.out + ran.err
    assert said.count(says) == 1
    if command != "figures":
        assert f"{name}:1:1: error: {says} [link-not-followed]" in said and said.count("[link-") == 1, said


@pytest.mark.parametrize("name", ["here.bake", "breads/up.bake"])
def test_a_link_within_the_bakery_names_the_file_it_leads_to(name: str) -> None:
    assert manchet(["check", name]) == manchet(["check", "breads/plain.bake"])
    assert "sault" in manchet(["check", name]).out


def test_a_link_that_leads_nowhere_is_told_of_in_the_folder() -> None:
    lines = manchet(["check", ".", "--format", "short"]).out.splitlines()
    assert [line for line in lines if "link" in line] == [
        "gone.bake:1:1: warning: this link leads to nowhere.bake, and there is no such file [link-leads-nowhere]",
        "out.bake:1:1: warning: this link leads out of the bakery's folder, and was not followed [link-leads-out]",
        "round.bake:1:1: warning: this link leads round in a circle, to no file [link-leads-nowhere]",
        "text.bake:1:1: warning: this link leads to notes.txt, which is no formula file [link-leads-nowhere]",
    ]  # fmt: skip


def test_a_hidden_file_that_is_named_is_refused() -> None:
    Path(".hidden.bake").write_text(BROKEN)
    Path(".old").mkdir()
    Path(".old/plain.bake").write_text(BROKEN)
    for name in (".hidden.bake", ".old/plain.bake"):
        ran = manchet(["check", name])
        assert (ran.status, ran.out) == (2, "") and "hidden" in ran.err, name


@pytest.mark.parametrize("name", ["Rye loaf", "Quay loaf"])
@pytest.mark.parametrize("spoilt", [b"\0", b"\xe9"])
def test_a_file_that_is_no_text_is_an_error_of_each_of_its_formulas(name: str, spoilt: bytes) -> None:
    two = [PLAIN_LOAF.replace("Plain loaf", one).encode() for one in ("Rye loaf", "Quay loaf")]
    Path("two.bake").write_bytes((spoilt + b"\n").join(two))
    for command in ("check", "build"):
        ran = manchet([command, name])
        assert ran.status == 1 and (ran.out + ran.err).count("error: ") == 1 and "[file-" in ran.out + ran.err, ran
        assert "fault" not in ran.err
