"""What was found before, so that a second `check` looks only at what changed.

A cache must not go stale, must not be something another user can plant, and must be possible to do without:

* A result is kept under a digest of everything it follows from: the bytes of the file, what the bakery shares
  (larder, kitchens, preparations, shared stages, the names of all formulas), the options, the Python, and the
  compiler itself, every file of it by size and date. Nothing is ever looked up by a file's date alone.
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
from manchet.diagnostics.diagnostic import Diagnostic, Place, Related, Severity
from manchet.formula.picture import Picture
from manchet.records import NamedTuple

try:  # hashlib is the way in, but it loads OpenSSL, which takes a fifth of the time of a `check` that changes nothing
    from _blake2 import blake2b
except ImportError:
    from hashlib import blake2b

MOST_FILES = 200
"""Stores (one for each bakery and set of options) kept in the folder; the longest unused go first."""
MOST_BYTES = 64_000_000
"""Of one store. A larger one is not written, and not read."""


class Found(NamedTuple):
    """What checking one file gave: its reports, how many formulas it holds, and the pictures they name.

    Whether a picture can be shown follows from another file, so that is never kept; it is looked at each time.
    """

    diagnostics: tuple[Diagnostic, ...]
    formulas: int
    pictures: tuple[Picture, ...] = ()


class Kept(NamedTuple):
    """A result, and the digest of all that it follows from."""

    key: str
    found: str
    """Packed; see `pack`."""


class Store(NamedTuple):
    """The results kept for one bakery: path of each file to what was found. `file` is "" where none is kept."""

    file: str
    kept: Mapping[str, Kept]


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
    home = folder()
    if home is None:
        return Store("", {})
    file = os.path.join(home, f"check-{digest(*name)}")
    try:
        if os.path.getsize(file) > MOST_BYTES:
            return Store(file, {})
        with open(file, "rb") as stored:
            head, _, body = stored.read().partition(b"\n")
        if head != digest(compiler(), body).encode():
            return Store(file, {})
        lines = body.decode("utf-8", "surrogatepass").split("\n")
        fields = [line.split("\t", 2) for line in lines if line]
        return Store(file, {_plain(path): Kept(key, found) for path, key, found in fields})
    except (OSError, ValueError):
        return Store(file, {})


def close_store(store: Store, kept: Mapping[str, Kept]) -> None:
    """Puts `kept` in the store's place. What goes wrong here costs time, not truth, and is not reported."""
    if not store.file or kept == store.kept:
        return
    lines = [f"{_escaped(path)}\t{one.key}\t{one.found}\n" for path, one in sorted(kept.items())]
    body = "".join(lines).encode("utf-8", "surrogatepass")
    if len(body) > MOST_BYTES:
        return
    beside = f"{store.file}.{os.getpid()}.new"
    try:
        handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC | getattr(os, "O_NOFOLLOW", 0), 0o600)
        with os.fdopen(handle, "wb") as file:
            file.write(digest(compiler(), body).encode() + b"\n" + body)
        os.replace(beside, store.file)
        _thin_out(os.path.dirname(store.file))
    except OSError:
        return


def folder() -> str | None:
    """Our folder in the user's cache folder, made if need be; None where it is not to be used."""
    if os.environ.get("MANCHET_CACHE", "").lower() in ("off", "0", "no"):
        return None
    path = os.path.join(_user_cache(), "manchet")
    try:
        os.makedirs(os.path.dirname(path), mode=0o700, exist_ok=True)
        if not os.path.lexists(path):
            os.mkdir(path, 0o700)
        status = os.lstat(path)
    except OSError:
        return None
    if not os.path.isdir(path) or os.path.islink(path):
        return None
    if hasattr(os, "geteuid") and (status.st_uid != os.geteuid() or status.st_mode & 0o077):
        return None
    return path


def _user_cache() -> str:
    named = os.environ.get("XDG_CACHE_HOME", "")
    if os.path.isabs(named):
        return named
    if sys.platform == "win32":
        return os.environ.get("LOCALAPPDATA") or os.path.expanduser("~\\AppData\\Local")
    if sys.platform == "darwin":
        return os.path.expanduser("~/Library/Caches")
    return os.path.expanduser("~/.cache")


_compiler = ""


def compiler() -> str:
    """A digest of this compiler: its version, its Python, and every one of its files by size and date."""
    global _compiler
    if not _compiler:
        package = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
        # In a checkout the grammar lies beside the package's root, in an installed copy inside the package.
        grammar = os.path.join(os.path.dirname(os.path.dirname(package)), "grammar")
        files = [*_files(package), *_files(grammar)]
        _compiler = digest(__version__, sys.version, *files)
    return _compiler


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
            else:
                status = entry.stat()
                found.append(f"{entry.path} {status.st_size} {status.st_mtime_ns}")
    return sorted(found)


def _thin_out(home: str) -> None:
    stores = [entry for entry in os.scandir(home) if entry.name.startswith("check-")]
    if len(stores) > MOST_FILES:
        by_age = sorted(stores, key=lambda entry: entry.stat().st_mtime_ns)
        for entry in by_age[: len(stores) - MOST_FILES]:
            os.unlink(entry.path)


# ---- a result as text -----------------------------------------------------------------------------
#
# Fields are escaped and parted by characters that then cannot stand in them: tab between the fields of a line of the
# store, \x1e between the head and the reports, \x1f between the fields of one.


def pack(found: Found) -> str:
    pictures = (field for picture in found.pictures for field in (picture.path, *_place_fields(picture.place)))
    head = "\x1f".join(map(_escaped, (str(found.formulas), *pictures)))
    return "\x1e".join([head, *map(_packed, found.diagnostics)])


def unpack(text: str) -> Found:
    """Raises ValueError for text that `pack` did not make."""
    head, *reports = text.split("\x1e")
    formulas, *named = map(_plain, head.split("\x1f"))
    pictures = tuple(Picture(named[at], _place(named[at + 1 : at + 7])) for at in range(0, len(named), 7))
    return Found(tuple(map(_unpacked, reports)), int(formulas), pictures)


def _packed(diagnostic: Diagnostic) -> str:
    fields = [diagnostic.name, diagnostic.severity.value, diagnostic.message, diagnostic.help]
    fields += _place_fields(diagnostic.place)
    for related in diagnostic.related:
        fields += [related.message, *_place_fields(related.place)]
    return "\x1f".join(map(_escaped, fields))


def _unpacked(text: str) -> Diagnostic:
    fields = [_plain(field) for field in text.split("\x1f")]
    name, severity, message, help = fields[:4]
    place = _place(fields[4:10])
    related = [Related(_place(fields[at + 1 : at + 7]), fields[at]) for at in range(10, len(fields), 7)]
    return Diagnostic(name, Severity(severity), message, place, help, tuple(related))


def _place_fields(place: Place) -> list[str]:
    return [place.path, *map(str, place[1:5]), place.text]


def _place(fields: list[str]) -> Place:
    path, line, column, end_line, end_column, text = fields
    return Place(path, int(line), int(column), int(end_line), int(end_column), text)


_ESCAPES = {"\\": "\\\\", "\n": "\\n", "\t": "\\t", "\x1e": "\\e", "\x1f": "\\f", "\r": "\\r"}
_TABLE = str.maketrans(_ESCAPES)


def _escaped(text: str) -> str:
    return text.translate(_TABLE)


def _plain(text: str) -> str:
    if "\\" not in text:
        return text
    # Two backslashes first become a character that cannot stand in the text, so that `\\n` is not taken for `\n`.
    parts = text.split("\\\\")
    for character, escape in _ESCAPES.items():
        if character != "\\":
            parts = [part.replace(escape, character) for part in parts]
    return "\\".join(parts)
