"""Folders that may not be written, or that two share: real permissions, and a user who is bound by them."""

from __future__ import annotations

import ctypes
import errno
import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from loaves import PLAIN_LOAF

from manchet.workspace.trouble import Blocked
from manchet.workspace.writing import write

BUILD = ("build", "--only", "html,sheet", "--jobs", "1")
PR_CAPBSET_DROP = 24
OVERRIDES = (1, 2)
"""CAP_DAC_OVERRIDE and CAP_DAC_READ_SEARCH, by which root passes by all permissions (Linux, capabilities(7), prctl(2))."""


@pytest.fixture
def folder(tmp_path: Path) -> Iterator[Path]:
    (tmp_path / "cache").mkdir()
    (tmp_path / "plain.bake").write_text(PLAIN_LOAF)
    (tmp_path / "rye.bake").write_text(PLAIN_LOAF.replace("Plain loaf", "Rye loaf"))
    yield tmp_path
    for path in (tmp_path, *(path for path in tmp_path.rglob("*") if path.is_dir())):
        path.chmod(0o755)


def started(folder: Path, *words: str) -> subprocess.Popen[str]:
    """The command, bound by permissions even where root runs the tests."""
    return subprocess.Popen(
        [sys.executable, "-m", "manchet.cli.main", *words], cwd=folder, text=True, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
        env={**os.environ, "HOME": str(folder), "XDG_CACHE_HOME": str(folder / "cache")},
        preexec_fn=as_anybody if os.geteuid() == 0 else None,
    )  # fmt: skip


def as_anybody() -> None:
    system = ctypes.CDLL(None, use_errno=True)
    for number in OVERRIDES:
        if system.prctl(PR_CAPBSET_DROP, number, 0, 0, 0):
            raise OSError(ctypes.get_errno(), "root cannot be bound by permissions here")


def calm(process: subprocess.Popen[str], *status: int) -> str:
    out, err = process.communicate(timeout=120)
    assert process.returncode in status and "Traceback" not in out + err and "fault" not in err, (out, err)
    return out + err


def test_an_output_folder_that_may_not_be_written_keeps_its_sheets(folder: Path) -> None:
    calm(started(folder, *BUILD), 0)
    output = folder / "output"
    good = {path.name: path.read_bytes() for path in output.iterdir()}
    (folder / "plain.bake").write_text(PLAIN_LOAF.replace("70%", "71%"))
    output.chmod(0o555)
    said = calm(started(folder, *BUILD), 1, 2)
    assert "the output folder output cannot be written to" in said
    assert {path.name: path.read_bytes() for path in output.iterdir()} == good and len(good) == 2


def test_a_bakery_that_may_not_be_written_is_checked_and_not_built(folder: Path) -> None:
    (folder / "cache").chmod(0o555)
    folder.chmod(0o555)
    assert "2 formulas in 2 files" in calm(started(folder, "check"), 0)
    assert "the output folder output cannot be made" in calm(started(folder, *BUILD), 1, 2)
    assert sorted(path.name for path in folder.iterdir()) == ["cache", "plain.bake", "rye.bake"]


def test_a_file_that_may_not_be_read_holds_up_no_other(folder: Path) -> None:
    (folder / "rye.bake").chmod(0)
    said = calm(started(folder, *BUILD), 1)
    assert "[file-unreadable]" in said and (folder / "output/plain-loaf.sheet.html").exists()
    assert "[file-unreadable]" in calm(started(folder, "check"), 1)


def test_two_who_build_at_once_leave_whole_sheets_and_nothing_else(folder: Path) -> None:
    for _ in range(3):
        both = [started(folder, *BUILD, "--paper", paper) for paper in ("A4", "Letter")]
        for one in both:
            calm(one, 0)
    names = sorted(path.name for path in (folder / "output").iterdir())
    assert names == ["plain-loaf.sheet.html", "rye-loaf.sheet.html"]
    assert all((folder / "output" / name).read_text().rstrip().endswith("</html>") for name in names)


@pytest.mark.parametrize("number", [errno.EPERM, errno.EACCES, errno.EROFS, errno.EDQUOT])
def test_a_sheet_of_somebody_else_that_may_not_be_replaced_stays(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int
) -> None:
    sheet = tmp_path / "a.html"
    write(str(sheet), b"good")

    def refused(*_: object) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(os, "replace", refused)
    with pytest.raises(Blocked, match=r"a\.html cannot be written"):
        write(str(sheet), b"new")
    assert sheet.read_bytes() == b"good" and os.listdir(tmp_path) == ["a.html"]
