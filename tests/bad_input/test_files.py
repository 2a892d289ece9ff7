"""Bytes that are no formula: one clear report each, nothing read from outside, no hang."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from manchet.source.files import LARGEST, bytes_of, text_of


def report(path: Path) -> tuple[str, str, int]:
    out = bytes_of(str(path), path.name)
    if out.value is not None:
        assert out.diagnostics == ()
        text = text_of(path.name, out.value)
        assert text.value is None
        faults = text.diagnostics
    else:
        faults = out.diagnostics
    assert len(faults) == 1
    found = faults[0]
    assert found.help and "Errno" not in found.message
    return found.name, found.message, found.place.line


@pytest.mark.parametrize(
    ("data", "name", "says", "line"),
    [
        (b"formula A\n  makes \xff\n", "file-not-utf-8", "byte 19, in line 2", 2),
        (b"\xef\xbb\xbfab\xff", "file-not-utf-8", "byte 6, in line 1", 1),
        ("formula A\n".encode("utf-16"), "file-utf-16", "UTF-16", 1),
        ("formula A\n".encode("utf-16-le"), "file-utf-16", "UTF-16", 1),
        (b"formula A\n\n  x\x00y", "file-binary", "byte 15 is 0", 3),
        (b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", "file-binary", "byte 9", 3),
        (b" " * (LARGEST + 1), "file-too-large", "2,000,001 bytes", 1),
    ],
)
def test_bytes_that_are_no_text(tmp_path: Path, data: bytes, name: str, says: str, line: int) -> None:
    path = tmp_path / "a.bake"
    path.write_bytes(data)
    found, message, at = report(path)
    assert (found, at) == (name, line)
    assert says in message


def test_mark_and_newlines_are_taken_as_they_come(tmp_path: Path) -> None:
    path = tmp_path / "a.bake"
    path.write_bytes(b"\xef\xbb\xbfformula A\r\n  dough\r    salt 2%\n")
    data = bytes_of(str(path), "a.bake").value
    assert data is not None
    out = text_of("a.bake", data)
    assert out.value is not None and out.value.text == "formula A\n  dough\n    salt 2%\n"


def test_what_is_no_file(tmp_path: Path) -> None:
    assert report(tmp_path / "gone.bake")[0] == "file-missing"
    (tmp_path / "folder.bake").mkdir()
    assert report(tmp_path / "folder.bake")[0] == "file-is-folder"
    os.mkfifo(tmp_path / "pipe.bake")
    assert report(tmp_path / "pipe.bake")[0] == "file-not-regular"
    assert report(tmp_path / "a\0b.bake")[0] == "file-unreadable"


def test_a_link_is_not_followed(tmp_path: Path) -> None:
    (tmp_path / "secret").write_text("formula Secret\n")
    (tmp_path / "a.bake").symlink_to(tmp_path / "secret")
    (tmp_path / "loop.bake").symlink_to(tmp_path / "loop.bake")
    assert report(tmp_path / "a.bake")[0] == "file-outside"
    assert report(tmp_path / "loop.bake")[0] == "file-outside"


def test_a_file_that_may_not_be_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Root may read everything, so the refusal is the system's own only for others; for root it is raised here."""
    path = tmp_path / "a.bake"
    path.write_text("formula A\n")
    path.chmod(0)
    if os.geteuid() == 0:

        def refused(*_: object, **__: object) -> int:
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))

        monkeypatch.setattr(os, "open", refused)
    assert report(path)[0] == "file-unreadable"
