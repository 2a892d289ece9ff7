"""Files of the baker written anew: each whole, and none where one of them was changed meanwhile or may not be written."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from typing import Protocol, TypeVar

from manchet.source.files import bytes_of
from manchet.workspace.trouble import Blocked
from manchet.workspace.writing import write


class FileToWrite(Protocol):
    """A file that was read: its path as shown, its place on the disk, what it held, what it is to hold."""

    @property
    def path(self) -> str: ...
    @property
    def place(self) -> str: ...
    @property
    def before(self) -> bytes: ...
    @property
    def after(self) -> bytes: ...


File = TypeVar("File", bound=FileToWrite)


def write_anew(files: Sequence[File]) -> Iterator[File]:
    """Writes each file, and gives it when it is written. Raises `Blocked`, before any is written, where one of them was
    changed since it was read, or may not be."""
    for file in files:
        if bytes_of(file.place, file.path).value != file.before:
            raise Blocked(f"{file.path} was changed while it was looked over, and nothing was written", "run it again")
        if not os.access(file.place, os.W_OK):
            raise Blocked(f"{file.path} may not be written, and nothing was", "give yourself leave to write it")
    for file in files:
        write(file.place, file.after)
        yield file
