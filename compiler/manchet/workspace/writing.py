"""Files are written whole or not at all, and only when they change.

A new file is written beside the old one and takes its place in one move, so that a full disk, a pulled plug or a
reader in between never sees half a sheet. A file whose bytes are the same is left alone, with its date.
"""

from __future__ import annotations

import contextlib
import os
import re
import stat
from collections.abc import Callable

from manchet.workspace.plain_files import plain_bytes
from manchet.workspace.trouble import Blocked, reason


def output_folder(path: str, make: Callable[[str], None] = os.makedirs) -> str:
    """The folder to write to, made if it is not there; absolute. Raises `Blocked` if it cannot be used."""
    actual = os.path.realpath(path)
    if os.path.islink(path) or _crosses_a_link(path, actual):
        raise Blocked(
            f"the output folder {path} leads through a link to {actual}, and nothing is written through a link",
            "name the folder itself with --out",
        )
    if os.path.exists(path) and not os.path.isdir(path):
        raise Blocked(f"{path} is a file, so nothing can be written into it", "name a folder with --out")
    try:
        if not os.path.isdir(path):
            make(path)
    except FileExistsError:
        if not os.path.isdir(path):  # else another build has just made it
            raise Blocked(f"{path} is a file, so nothing can be written into it", "name a folder with --out") from None
    except FileNotFoundError:
        # The folder above is there and yet takes none, as where the system shows its own state.
        raise Blocked(
            f"no folder can be made in {_nearest(actual)}, so nothing can be written to {path}",
            "name another folder with --out",
        ) from None
    except OSError as error:
        raise Blocked(f"the output folder {path} cannot be made: {reason(error)}") from None
    if not os.access(path, os.W_OK | os.X_OK):
        raise Blocked(
            f"the output folder {path} cannot be written to", "name another with --out, or change its permissions"
        )
    return actual


def write(path: str, data: bytes) -> bool:
    """Makes the file at `path` hold `data`; False if it did already. Raises `Blocked`, leaving what was there."""
    if os.path.isdir(path):
        raise Blocked(f"{path} is a folder, and a sheet of that name cannot be written")
    if not os.path.islink(path) and _holds(path, data):
        return False
    # The process number keeps two builds apart; the dot keeps a file left by a pulled plug out of sight.
    beside = os.path.join(os.path.dirname(path), f".{os.path.basename(path)}.{os.getpid()}.new")
    try:
        flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_BINARY", 0)
        if os.path.lexists(beside):
            os.unlink(beside)
        handle = os.open(beside, flags, 0o666)
        try:
            with os.fdopen(handle, "wb") as file:
                _keep_mode(path, handle)
                file.write(data)
                file.flush()
                os.fsync(handle)
            os.replace(beside, path)
        except BaseException:
            with contextlib.suppress(FileNotFoundError):
                os.unlink(beside)
            raise
        _settle(os.path.dirname(path))
    except OSError as error:
        raise Blocked(f"{path} cannot be written: {reason(error)}") from None
    return True


def _keep_mode(path: str, handle: int) -> None:
    """Who may read and write a file stays as it was for the one that takes its place."""
    with contextlib.suppress(OSError):
        there = os.lstat(path)
        if stat.S_ISREG(there.st_mode) and hasattr(os, "fchmod"):
            os.fchmod(handle, stat.S_IMODE(there.st_mode))


def _settle(folder: str) -> None:
    """Sees that a move in a folder is on the disk, where the system can be asked for that."""
    if not hasattr(os, "O_DIRECTORY"):
        return
    try:
        handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
    except OSError:
        return
    try:
        os.fsync(handle)
    except OSError:
        return  # a share that knows no such thing
    finally:
        os.close(handle)


def clear_leftovers(folder: str, is_ours: Callable[[str], bool]) -> None:
    """Takes away what writers left that were killed before they moved it into place."""
    for name in os.listdir(folder):
        left = _LEFT.fullmatch(name)
        if left is not None and is_ours(left[1]) and not _is_running(int(left[2])):
            with contextlib.suppress(OSError):
                os.unlink(os.path.join(folder, name))


_LEFT = re.compile(r"\.(.+)\.(\d{1,9})\.new")


def _is_running(process: int) -> bool:
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except OSError:
        return True
    return True


def write_new(path: str, text: str) -> None:
    """Writes a file that is not there yet. Raises `Blocked`, and touches nothing, where it is."""
    try:
        with open(path, "x", encoding="utf-8", newline="\n") as file:
            file.write(text)
        with open(path, encoding="utf-8", newline="") as written:
            same = written.read() == text
    except FileExistsError:
        raise Blocked(f"{path} is there already and was left as it is", "name another file with --out") from None
    except FileNotFoundError:
        raise Blocked(f"{path} cannot be written: there is no folder {os.path.dirname(path)}") from None
    except OSError as error:
        raise Blocked(f"{path} cannot be written: {reason(error)}") from None
    if not same:
        raise Blocked(
            f"{path} was written, but reads back differently: is the disk full?", "look at it before you use it"
        )


def _crosses_a_link(path: str, actual: str) -> bool:
    """Whether a path given from here leads, by a link in the middle of it, out of here."""
    here = os.path.realpath(os.getcwd())
    return not os.path.isabs(path) and os.path.normpath(os.path.join(here, path)) != actual


def _nearest(path: str) -> str:
    """The folder above that is there."""
    while not os.path.isdir(path) and path != os.path.dirname(path):
        path = os.path.dirname(path)
    return path


def _holds(path: str, data: bytes) -> bool:
    try:
        return os.path.getsize(path) == len(data) and plain_bytes(path, len(data)) == data
    except OSError:
        return False
