"""What was found before, so that a second `check` looks only at what changed.

A cache must not go stale, must not be something another user can plant, and must be possible to do without:

* A result is kept under a digest of everything it follows from: the bytes of the file, what the bakery shares
  (larder, kitchens, preparations, shared stages, the names of all formulas), the options, the Python, and the
  compiler itself, every module of it by size and date. Nothing is ever looked up by a file's date alone.
* It lies in a folder of our own in the user's cache folder, mode 0700. A folder that is a link, or that belongs
  to someone else, or that others may enter, is not used.
* What is stored is plain text and is only ever read as text. A file that is cut short or was changed does not have the
  digest it starts with, and is passed over.
* `--no-cache`, or `MANCHET_CACHE=off` in the environment, does without.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping

from manchet import __version__
from manchet.records import NamedTuple
from manchet.workspace.cache_folder import cache_folder
from manchet.workspace.packing import escape, unescape
from manchet.workspace.plain_files import plain_bytes

try:  # hashlib is the way in, but it loads OpenSSL, which takes a fifth of the time of a `check` that changes nothing
    from _blake2 import blake2b
except ImportError:
    from hashlib import blake2b

MOST_FILES = 200
"""Stores (one for each bakery and set of options) kept in the folder; the longest unused go first."""
TELLING = (".py", ".lark")
"""Files of the compiler that a check goes by; what data it needs is generated into modules."""
MOST_BYTES = 64_000_000
"""Of one store. A larger one is not written, and not read."""


class Kept(NamedTuple):
    """A result, and the digest of all that it follows from."""

    key: str
    found: str
    """Packed; see `packing`."""


class Store(NamedTuple):
    """The results kept for one bakery: path of each file to what was found. `file` is "" where none is kept."""

    file: str = ""
    compiler: str = ""
    """The digest of the compiler that the results are of."""
    kept: Mapping[str, Kept] = {}


def digest(*parts: bytes | str) -> str:
    """A name for a sequence of texts that no other sequence has."""
    hashed = blake2b(digest_size=20)
    for part in parts:
        data = part.encode("utf-8", "surrogatepass") if isinstance(part, str) else part
        hashed.update(b"%d:" % len(data))
        hashed.update(data)
    return hashed.hexdigest()


def open_store(*name: str) -> Store:
    """The store for a bakery's folder and options; an empty one where there is none or it cannot be trusted."""
    home = cache_folder()
    if home is None:
        return Store()
    empty = Store(os.path.join(home, f"check-{digest(*name)}"), compiler())
    try:
        head, _, body = (plain_bytes(empty.file, MOST_BYTES) or b"").partition(b"\n")
        if head != digest(empty.compiler, body).encode():
            return empty
        lines = body.decode("utf-8", "surrogatepass").split("\n")
        fields = [line.split("\t", 2) for line in lines if line]
        return empty._replace(kept={unescape(path): Kept(key, found) for path, key, found in fields})
    except ValueError:
        return empty


def close_store(store: Store, kept: Mapping[str, Kept]) -> None:
    """Puts `kept` in the store's place. What goes wrong here costs time, not truth, and is not reported."""
    if not store.file or kept == store.kept:
        return
    lines = [f"{escape(path)}\t{one.key}\t{one.found}\n" for path, one in sorted(kept.items())]
    body = "".join(lines).encode("utf-8", "surrogatepass")
    if len(body) > MOST_BYTES:
        return
    beside = f"{store.file}.{os.getpid()}.new"
    try:
        handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC | getattr(os, "O_NOFOLLOW", 0), 0o600)
        with os.fdopen(handle, "wb") as file:
            file.write(digest(store.compiler, body).encode() + b"\n" + body)
        os.replace(beside, store.file)
        _thin_out(os.path.dirname(store.file))
    except OSError:
        return


def compiler() -> str:
    """A digest of this compiler: its version, its Python, and every file that can tell in a check, by size and date."""
    package = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
    # In a checkout the grammar lies beside the package's root, in an installed copy inside the package.
    grammar = os.path.join(os.path.dirname(os.path.dirname(package)), "grammar")
    return digest(__version__, sys.version, *_files(package), *_files(grammar))


def _files(top: str) -> list[str]:
    found: list[str] = []
    folders = [top]
    while folders:
        try:
            entries = list(os.scandir(folders.pop()))
        except OSError:
            continue
        for entry in entries:
            if entry.name.startswith((".", "__pycache__")):
                continue
            if entry.is_dir(follow_symlinks=False):
                folders.append(entry.path)
            elif entry.name.endswith(TELLING):
                status = entry.stat()
                found.append(f"{entry.path} {status.st_size} {status.st_mtime_ns}")
    return sorted(found)


def _thin_out(home: str) -> None:
    stores = [entry for entry in os.scandir(home) if entry.name.startswith("check-")]
    if len(stores) > MOST_FILES:
        by_age = sorted(stores, key=lambda entry: entry.stat().st_mtime_ns)
        for entry in by_age[: len(stores) - MOST_FILES]:
            os.unlink(entry.path)
