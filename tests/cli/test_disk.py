"""Reading and writing: whole files or none, nothing outside, and names that are ours."""

from __future__ import annotations

import errno
import os
import re
from pathlib import Path

import pytest
from every import every
from hypothesis import given, strategies as st

from manchet.diagnostics.suggest import fold
from manchet.source.files import LARGEST, bytes_of, rough_text_of
from manchet.syntax.headings import blocks
from manchet.workspace.folder import Premises, listing, premises_of
from manchet.workspace.slugs import LONGEST, slug, slugs
from manchet.workspace.trouble import Blocked
from manchet.workspace.writing import output_folder, write


def house_of(path: str) -> str:
    return premises_of(path).root


@every(
    [
        ("Tern loaf", "tern-loaf"),
        ("Göteborg rye, No. 3", "goteborg-rye-no-3"),
        ("Weißbrot Æble", "weissbrot-aeble"),
        ("../../etc/passwd", "etc-passwd"),
        ("Lock-keeper's white", "lock-keepers-white"),
        ("CON", "con-1"),
        ("lpt1", "lpt1-1"),
        ("a" * 300, "a" * LONGEST),
        ("小麦", ""),
        ("<b>\x1b[31m&", "b-31m"),
        ("", ""),
    ],
    at_least=11,
)
def test_a_file_is_called_by_a_slug(name: str, expected: str) -> None:
    assert slug(name) == expected


def test_two_formulas_never_share_a_slug() -> None:
    names = ["Tern loaf", "tern  loaf", "Tern-loaf", "Tern loaf 2", "小麦", "粉", "a" * 70, "a" * 80]
    made = slugs(names)
    assert len(set(made.values())) == len(names)
    assert all(len(one) <= LONGEST for one in made.values())
    assert made == slugs(reversed(names))


NAMES = [
    "小麦", "粉", "Хлеб", "Хлеб 2", "Rye 粉", "Rye", "a" * 70, "a" * 80, "Göteborg rye", "Goteborg rye", "ψωμί", "🍞", "!!",
    "Tern loaf", "Tern-loaf", "Tern loaf, by hand", "Tern loaf by hand", "Tern loaf,by hand", "Tern, loaf by hand", "Rye+",
    "Rye #1", "Rye 1", "Pané", "Pañe", "Pane", "con", "con 1", "خبز", "لحم", "Weißbrot", "Tern loaf, " + "b" * 70, "Rye, 粉",
]  # fmt: skip
"""Some differ in a sign or an accent alone, or have no letter that a file name keeps."""


def test_a_formula_taken_away_renames_no_other_s_sheet() -> None:
    made = slugs(NAMES)
    assert len(set(made.values())) == len(NAMES)
    for name in NAMES:
        assert slugs([name]) == {name: made[name]}, "a file is called after its own formula alone"
    assert all(re.fullmatch(r"[a-z0-9]+(--?[a-z0-9]+)*", one) and len(one) <= LONGEST for one in made.values())
    plain = {"Rye": "rye", "Goteborg rye": "goteborg-rye", "Tern loaf, by hand": "tern-loaf--by-hand"}
    assert {name: made[name] for name in plain} == plain


@given(st.sets(st.text(max_size=12) | st.text("aá ,-'", max_size=8), max_size=6))
def test_as_many_file_names_as_formulas_whatever_they_are_called(names: set[str]) -> None:
    """Of names that differ to a reader: others are an error, and numbered."""
    apart = list({fold(name): name for name in names}.values())
    made = slugs(apart)
    assert len(set(made.values())) == len(apart)
    assert all(slugs([name]) == {name: made[name]} for name in apart)


def test_the_same_bytes_are_not_written_again(tmp_path: Path) -> None:
    file = tmp_path / "sheet.html"
    assert write(str(file), b"one")
    os.utime(file, ns=(1, 1))
    assert not write(str(file), b"one")
    assert file.stat().st_mtime_ns == 1
    assert write(str(file), b"two")
    assert file.read_bytes() == b"two"
    assert [path.name for path in tmp_path.iterdir()] == ["sheet.html"]


def test_a_full_disk_leaves_the_last_good_sheet(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "sheet.html"
    write(str(file), b"good")

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    with pytest.raises(Blocked, match="the disk is full"):
        write(str(file), b"half")
    assert file.read_bytes() == b"good"
    assert [path.name for path in tmp_path.iterdir()] == ["sheet.html"]


def test_a_link_at_the_place_of_a_sheet_is_replaced_and_not_followed(tmp_path: Path) -> None:
    precious = tmp_path / "precious"
    precious.write_bytes(b"mine")
    (tmp_path / "sheet.html").symlink_to(precious)
    assert write(str(tmp_path / "sheet.html"), b"new")
    assert precious.read_bytes() == b"mine"
    assert (tmp_path / "sheet.html").read_bytes() == b"new"


def test_an_output_folder_that_cannot_be_one_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "file").touch()
    (tmp_path / "work").mkdir()
    (tmp_path / "away").symlink_to("/")
    for path in ("file", "file/below", "away", "away/below"):
        with pytest.raises(Blocked):
            output_folder(path)
    assert output_folder("work/new") == str(tmp_path / "work" / "new")


def test_the_bakery_is_the_uppermost_folder_above_with_a_larder_or_kitchen(tmp_path: Path) -> None:
    (tmp_path / "breads" / "rye").mkdir(parents=True)
    loaf = tmp_path / "breads" / "rye" / "pilot.bake"
    loaf.write_text("formula Pilot rye\n")
    assert house_of(str(loaf)) == str(tmp_path / "breads" / "rye")
    (tmp_path / "breads" / "larder.bake").write_text("# ours\nlarder Row\n")
    assert house_of(str(loaf)) == str(tmp_path / "breads")
    assert house_of(str(tmp_path / "breads" / "rye")) == str(tmp_path / "breads")
    (tmp_path / "breads" / "rye" / "kitchen.bake").write_text("kitchen Row\n")
    assert house_of(str(loaf)) == str(tmp_path / "breads")
    (tmp_path / "kitchen.bake").write_text("formula Tern loaf\n  kitchen Row\n")
    assert house_of(str(loaf)) == str(tmp_path / "breads")


def test_a_file_by_itself_brings_in_its_neighbours_and_not_the_folders_below(tmp_path: Path) -> None:
    (tmp_path / "below").mkdir()
    for name in ("tern.bake", "pilot.bake", "below/ebb.bake"):
        (tmp_path / name).write_text("formula Tern loaf\n")
    assert listing(premises_of(str(tmp_path / "tern.bake"))).paths == ("pilot.bake", "tern.bake")
    assert len(listing(premises_of(str(tmp_path))).paths) == 3
    (tmp_path / "larder.bake").write_text("larder Row\n")
    assert len(listing(premises_of(str(tmp_path / "tern.bake"))).paths) == 4


def test_the_search_for_the_bakery_ends_at_a_checkout_and_at_a_folder_all_may_write(tmp_path: Path) -> None:
    (tmp_path / "a" / "b").mkdir(parents=True)
    (tmp_path / "larder.bake").write_text("larder Planted\n")
    (tmp_path / "a" / "b" / "x.bake").touch()
    (tmp_path / "a" / ".git").mkdir()
    assert house_of(str(tmp_path / "a" / "b")) == str(tmp_path / "a" / "b")
    (tmp_path / "a" / ".git").rmdir()
    assert house_of(str(tmp_path / "a" / "b")) == str(tmp_path)
    tmp_path.chmod(0o777)
    assert house_of(str(tmp_path / "a" / "b")) == str(tmp_path / "a" / "b")


def test_links_out_are_reported_and_links_within_passed_over(tmp_path: Path) -> None:
    bakery = tmp_path / "bakery"
    (bakery / "breads").mkdir(parents=True)
    (bakery / "breads" / "tern.bake").touch()
    (bakery / ".hidden.bake").touch()
    (bakery / "again.bake").symlink_to("breads/tern.bake")
    (bakery / "round").symlink_to(".")
    (bakery / "out.bake").symlink_to("/etc/passwd")
    (bakery / "etc").symlink_to("/etc")
    found = listing(Premises(str(bakery), whole=True))
    assert found.paths == ("breads/tern.bake",)
    assert [(one.name, one.place.path) for one in found.diagnostics] == [
        ("link-leads-out", "etc"),
        ("link-leads-out", "out.bake"),
    ]


def test_what_is_no_plain_file_gives_one_report_and_never_holds_us_up(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.bake")
    (tmp_path / "folder.bake").mkdir()
    (tmp_path / "link.bake").symlink_to("/etc/hostname")
    (tmp_path / "large.bake").write_bytes(b"#" * (LARGEST + 1))
    expected = {
        "pipe.bake": "file-not-regular",
        "folder.bake": "file-is-folder",
        "link.bake": "file-outside",
        "large.bake": "file-too-large",
        "none.bake": "file-missing",
        "a\0b.bake": "file-unreadable",
    }
    for name, report in expected.items():
        read = bytes_of(str(tmp_path / name), name)
        assert read.value is None
        assert [one.name for one in read.diagnostics] == [report]
        assert read.diagnostics[0].place.path == name
    assert bytes_of(str(tmp_path / "tin.bake"), "tin.bake").value is None


def test_headings_tell_what_a_file_holds() -> None:
    data = b"\xef\xbb\xbf# house\n\nlarder Row # ours\n  salt\n\nformula  Tern loaf\r\n  kind x\npoolish\n"
    assert [(one.word, one.name, one.line) for one in blocks(rough_text_of(data))] == [
        ("larder", "Row", 3),
        ("formula", "Tern loaf", 6),
        ("poolish", "", 8),
    ]
    assert blocks("") == ()
    assert blocks(rough_text_of(b"\xff\xfe\x00formula")) != ()
