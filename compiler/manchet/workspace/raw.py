"""The files of a bakery as bytes: enough to know what changed and what is where, before anything is parsed."""

from __future__ import annotations

import os
from functools import cached_property
from stat import S_ISREG

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.workspace.folder import MOST_BYTES, listing
from manchet.workspace.headings import Block, blocks
from manchet.workspace.trouble import reason


class Raw:
    """One file: its path as shown, its bytes, and its blocks (found when first asked for)."""

    def __init__(self, path: str, data: bytes) -> None:
        self.path = path
        self.data = data

    @cached_property
    def blocks(self) -> tuple[Block, ...]:
        return blocks(self.data)


def raw_files(root: str, prefix: str) -> tuple[tuple[Raw, ...], tuple[Diagnostic, ...]]:
    """Every `.bake` file of a bakery that can be read, and a report for each that cannot."""
    found = listing(root)
    files: list[Raw] = []
    reports = [one._replace(place=one.place._replace(path=prefix + one.place.path)) for one in found.diagnostics]
    for path in found.paths:
        data = read_bytes(os.path.join(root, path))
        if isinstance(data, bytes):
            files.append(Raw(prefix + path, data))
        elif data:
            place = Place(prefix + path, 1, 1, 1, 1)
            reports.append(Diagnostic("file-unreadable", Severity.ERROR, f"this file cannot be read: {data}", place))
    return tuple(files), tuple(reports)


def read_bytes(path: str) -> bytes | str:
    """The bytes of a plain file, or why they cannot be had; "" for a file that is gone by now."""
    try:
        # O_NONBLOCK: a pipe that someone called tern.bake must not hold us up for ever.
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
        try:
            status = os.fstat(handle)
            if not S_ISREG(status.st_mode):
                return "it is no plain file"
            if status.st_size > MOST_BYTES:
                return f"it is larger than {MOST_BYTES:,} bytes"
            data = os.read(handle, status.st_size + 1)
            while more := os.read(handle, 65536):
                data += more
                if len(data) > MOST_BYTES:
                    return f"it is larger than {MOST_BYTES:,} bytes"
            return data
        finally:
            os.close(handle)
    except FileNotFoundError:
        return ""
    except OSError as error:
        return reason(error)
