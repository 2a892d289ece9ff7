"""A file's bytes as text, or one report that says what is wrong with them."""

from __future__ import annotations

import os
import stat

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.outcome import Outcome
from manchet.source.text import SourceText

LARGEST = 2_000_000
"""Bytes. A thousand formulas are smaller; what is larger is no formula."""


def read(path: str, root: str) -> Outcome[SourceText | None]:
    """The text of a file inside the folder `root`, its newlines made `\\n` and its byte-order mark taken off.

    The path is shown as it was given. A file that cannot be read gives no text and exactly one report. Never waits (a
    pipe is refused before it is opened) and never reads through a link that leads out of `root`.
    """
    try:
        data = _bytes(path, root)
    except FileNotFoundError:
        return _fault(path, "file-missing", "there is no such file", "it may have been moved or renamed")
    except PermissionError:
        return _fault(path, "file-unreadable", "this file may not be read", "give yourself leave to read it")
    except (OSError, ValueError) as problem:
        why = (problem.strerror or "").lower() if isinstance(problem, OSError) else str(problem)
        return _fault(path, "file-unreadable", f"this file cannot be read: {why}", "look whether it opens in an editor")
    return data if isinstance(data, Outcome) else text_of(path, data)


def _bytes(path: str, root: str) -> bytes | Outcome[SourceText | None]:
    real, home = os.path.realpath(path), os.path.realpath(root)
    if not _inside(real, home):
        if os.path.exists(real):
            return _fault(
                path,
                "file-outside",
                "this leads to a file outside the folder",
                "put a copy of it into the folder, or run the command in the folder it lies in",
            )
        raise FileNotFoundError
    # without waiting: opening a pipe that nobody writes to would hang
    handle = os.open(real, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    try:
        what = os.fstat(handle)
        if stat.S_ISDIR(what.st_mode):
            return _fault(path, "file-is-folder", "this is a folder, not a file", "name a file that ends in .bake")
        if not stat.S_ISREG(what.st_mode):
            return _fault(path, "file-not-regular", "this is a pipe or a device, not a file", "name a file that ends in .bake")
        if what.st_size > LARGEST:
            return _too_large(path, what.st_size)
        parts = []
        size = 0
        while size <= LARGEST:
            part = os.read(handle, 1 << 20)
            if not part:
                return b"".join(parts)
            parts.append(part)
            size += len(part)
        return _too_large(path, size)
    finally:
        os.close(handle)


def _inside(real: str, home: str) -> bool:
    try:
        return os.path.commonpath((real, home)) == home
    except ValueError:  # two drives
        return False


def text_of(path: str, data: bytes) -> Outcome[SourceText | None]:
    """The text in a file's bytes, or one report."""
    if len(data) > LARGEST:
        return _too_large(path, len(data))
    if data.startswith((b"\xff\xfe", b"\xfe\xff")) or _is_bare_utf16(data):
        return _fault(
            path, "file-utf-16", "this file is saved as UTF-16", "save it as UTF-8 (in the editor's Save as)"
        )
    nul = data.find(b"\0")
    if nul >= 0:
        return _fault(
            path,
            "file-binary",
            f"this is no text file: byte {nul + 1} is 0",
            "name a text file that ends in .bake",
            data.count(b"\n", 0, nul) + 1,
        )
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as problem:
        at = problem.start + (3 if data.startswith(b"\xef\xbb\xbf") else 0)
        line = data.count(b"\n", 0, at) + 1
        shown = data[at : at + 1].hex()
        return _fault(
            path,
            "file-not-utf-8",
            f"byte {at + 1}, in line {line}, is no UTF-8 (it is hex {shown})",
            "save the file as UTF-8 (in the editor's Save as)",
            line,
        )
    return Outcome(SourceText(path, text.replace("\r\n", "\n").replace("\r", "\n")))


def _is_bare_utf16(data: bytes) -> bool:
    """UTF-16 without its mark: every other byte of plain text is 0."""
    head = data[:200]
    if len(head) < 4:
        return False
    even, odd = head[::2].count(0), head[1::2].count(0)
    half = len(head) // 2
    return (even > half * 0.7 and odd == 0) or (odd > half * 0.7 and even == 0)


def _too_large(path: str, size: int) -> Outcome[SourceText | None]:
    return _fault(
        path,
        "file-too-large",
        f"this file has {size:,} bytes; a formula file has at most {LARGEST:,}",
        "put one bread in each file",
    )


def _fault(path: str, name: str, message: str, help_: str, line: int = 1) -> Outcome[SourceText | None]:
    return Outcome(None, (Diagnostic(name, Severity.ERROR, message, Place(path, line, 1, line, 1), help_),))
