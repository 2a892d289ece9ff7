"""A file's bytes as text, or one report that says what is wrong with them."""

from __future__ import annotations

import os
import stat
from typing import Any

from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.source.text import SourceText

SUFFIX = ".bake"
"""What the name of a formula file ends in."""
LARGEST = 2_000_000
"""Bytes. A thousand formulas are smaller; what is larger is no formula."""

WHOLE_FILE = frozenset({"file-too-large", "file-utf-16", "file-binary", "file-not-utf-8"})
"""The reports on bytes that are no text: at one line, and yet about all that the file holds."""


def bytes_of(path: str, shown: str) -> Outcome[bytes | None]:
    """The bytes of the file at `path`; none, and exactly one report, for a file that cannot be read.

    Reports name it `shown`. Never waits for a pipe, and never reads through a link at the end of the path.
    """
    try:
        # O_NONBLOCK: opening a pipe that nobody writes to would hang.
        flags = os.O_RDONLY | sum(getattr(os, name, 0) for name in ("O_NONBLOCK", "O_NOFOLLOW", "O_BINARY"))
        handle = os.open(path, flags)
        try:
            return _read(handle, shown)
        finally:
            os.close(handle)
    except FileNotFoundError:
        return _fault("file-missing", shown, "there is no such file", "it may have been moved or renamed")
    except PermissionError:
        return _fault("file-unreadable", shown, "this file may not be read", "give yourself permission to read it")
    except (OSError, ValueError) as problem:
        if os.path.islink(path):
            return _fault(
                "file-outside",
                shown,
                "this leads to a file outside the folder",
                "put a copy of it into the folder, or run the command in the folder it lies in",
            )
        why = (problem.strerror or "").lower() if isinstance(problem, OSError) else str(problem)
        return _fault(
            "file-unreadable", shown, f"this file cannot be read: {why}", "look whether it opens in an editor"
        )


def _read(handle: int, shown: str) -> Outcome[bytes | None]:
    what = os.fstat(handle)
    if stat.S_ISDIR(what.st_mode):
        return _fault("file-is-folder", shown, "this is a folder, not a file", "name a file that ends in .bake")
    if not stat.S_ISREG(what.st_mode):
        return _fault(
            "file-not-regular", shown, "this is a pipe or a device, not a file", "name a file that ends in .bake"
        )
    if what.st_size > LARGEST:
        return _too_large(shown, what.st_size)
    # One more than it should have: a file that grows meanwhile is read to its new end.
    data = os.read(handle, what.st_size + 1)
    while len(data) <= LARGEST:
        part = os.read(handle, 1 << 16)
        if not part:
            return Outcome(data)
        data += part
    return _too_large(shown, len(data))


_MARK = b"\xef\xbb\xbf"
"""The byte-order mark that some editors put before UTF-8."""


def text_of(path: str, data: bytes) -> Outcome[SourceText | None]:
    """The text in a file's bytes, or one report."""
    if len(data) > LARGEST:
        return _too_large(path, len(data))
    if data.startswith((b"\xff\xfe", b"\xfe\xff")) or _is_bare_utf16(data):
        return _fault("file-utf-16", path, "this file is saved as UTF-16", "save it as UTF-8 (in the editor's Save as)")
    nul = data.find(b"\0")
    if nul >= 0:
        return _fault(
            "file-binary",
            path,
            f"this is not a text file: byte {nul + 1} is 0",
            "name a text file that ends in .bake",
            data.count(b"\n", 0, nul) + 1,
        )
    try:
        # Not the codec utf-8-sig: finding it costs each start some milliseconds.
        text = data.removeprefix(_MARK).decode()
    except UnicodeDecodeError as problem:
        at = problem.start + (len(_MARK) if data.startswith(_MARK) else 0)
        line = data.count(b"\n", 0, at) + 1
        shown = data[at : at + 1].hex()
        return _fault(
            "file-not-utf-8",
            path,
            f"byte {at + 1}, in line {line}, is not UTF-8 (it is hex {shown})",
            "save the file as UTF-8 (in the editor's Save as)",
            line,
        )
    return Outcome(SourceText(path, with_plain_newlines(text)))


def rough_text_of(data: bytes) -> str:
    """The text in a file's bytes as well as it may be, where they are no UTF-8: that is reported when the file is read."""
    return with_plain_newlines(data.removeprefix(_MARK).decode("utf-8", "replace"))


def text_with_its_newlines(data: bytes) -> tuple[bytes, str]:
    """The byte-order mark of a file, or nothing, and its text with the ends of lines as they are. The bytes must be UTF-8."""
    mark = _MARK if data.startswith(_MARK) else b""
    return mark, data.removeprefix(mark).decode()


def with_plain_newlines(text: str) -> str:
    """The text with `\\n` at the end of each line."""
    return text.replace("\r\n", "\n").replace("\r", "\n")


def _is_bare_utf16(data: bytes) -> bool:
    """UTF-16 without its mark: every other byte of plain text is 0."""
    head = data[:200]
    if len(head) < 4:
        return False
    even, odd = head[::2].count(0), head[1::2].count(0)
    half = len(head) // 2
    return (even > half * 0.7 and odd == 0) or (odd > half * 0.7 and even == 0)


def _too_large(path: str, size: int) -> Outcome[Any]:
    return _fault(
        "file-too-large",
        path,
        f"this file has {size:,} bytes; a formula file has at most {LARGEST:,}",
        "put one bread in each file",
    )


def _fault(name: str, path: str, message: str, help: str, line: int = 1) -> Outcome[Any]:
    return Outcome(None, (report(name, Place(path, line, 1, line, 1), message, help),))


Stamp = tuple[int, int, int]
"""A file by its date, size and number: after a save one of them is another."""


def stamp_of(path: str) -> Stamp | None:
    """None where there is no such file."""
    try:
        status = os.stat(path)
    except OSError:
        return None
    return status.st_mtime_ns, status.st_size, status.st_ino
