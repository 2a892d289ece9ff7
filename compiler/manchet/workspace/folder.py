"""Which files belong together.

The rule: **a bakery is a folder, with every `.bake` file in it and under it.** Which folder: the one asked about
(or the one the file is in), unless a folder above it holds a larder or a kitchen; then the uppermost of those, so that
a second kitchen in a folder further down belongs to the same house. The search upwards ends at the home folder, at the
top of a git checkout, and at a folder that belongs to someone else, so that nobody's file in a shared folder can change
a formula.

A file asked about by itself, with no larder and no kitchen in its folder or above, is no house yet: then the files beside
it belong to it, and the folders further down do not. Else one formula in a home folder would have all of it read.

Hidden files and folders (their names begin with a dot) are not read. A link that leads out of the bakery is
reported and not followed, as is one that leads to no file; one that stays inside is passed over, since what it points to
is read where it is.
"""

from __future__ import annotations

import os
from collections.abc import Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.records import NamedTuple
from manchet.source.files import SUFFIX, rough_text_of
from manchet.syntax.headings import holds_house
from manchet.workspace.links import loose_link
from manchet.workspace.trouble import Unknown, reason

MOST_FILES = 20_000
_SNIFFED = 1_000_000
"""Bytes of a file above that are looked at for a larder or a kitchen."""


class Premises(NamedTuple):
    """Where a bakery is: its folder, absolute and with all links resolved; and whether those under it belong to it."""

    root: str
    whole: bool


class Listing(NamedTuple):
    """The `.bake` files of a bakery, relative to its folder with `/` between, in order; and what was refused."""

    root: str
    paths: tuple[str, ...]
    diagnostics: tuple[Diagnostic, ...]


def premises_of(path: str) -> Premises:
    """The bakery that a file or folder belongs to."""
    is_folder = os.path.isdir(path)
    folder = os.path.realpath(path if is_folder else os.path.dirname(path) or ".")
    houses = [above for above in _upwards(folder) if not (is_folder and above == folder) and _is_house(above)]
    return Premises(houses[-1] if houses else folder, whole=is_folder or bool(houses))


def listing(premises: Premises) -> Listing:
    """Every `.bake` file of the bakery. Raises `Unknown` for a folder that cannot be read or holds too many."""
    root = premises.root
    paths: list[str] = []
    refused: list[Diagnostic] = []
    folders = [""]
    while folders:
        folder = folders.pop()
        try:
            entries = sorted(os.scandir(os.path.join(root, folder)), key=lambda entry: entry.name)
        except OSError as error:
            if not folder:
                raise Unknown(f"the folder {root} cannot be read: {reason(error)}") from None
            refused.append(_report("folder-unreadable", folder, f"this folder cannot be read: {reason(error)}"))
            continue
        for entry in entries:
            if entry.name.startswith("."):
                continue
            path = f"{folder}/{entry.name}" if folder else entry.name
            if entry.is_symlink():
                if entry.name.endswith(SUFFIX) or entry.is_dir():
                    refused += _loose_link(root, path)
            elif entry.is_dir():
                if premises.whole:
                    folders.append(path)
            elif entry.name.endswith(SUFFIX):
                paths.append(path)
        if len(paths) > MOST_FILES:
            raise Unknown(
                f"there are more than {MOST_FILES:,} {SUFFIX} files under {root}", "name a folder further down"
            )
    return Listing(root, tuple(sorted(paths)), tuple(refused))


def _upwards(folder: str) -> Iterator[str]:
    home = os.path.realpath(os.path.expanduser("~"))
    while True:
        yield folder
        above = os.path.dirname(folder)
        if folder in (home, above) or os.path.exists(os.path.join(folder, ".git")) or not _is_ours(above):
            return
        folder = above


def _is_house(folder: str) -> bool:
    return any(holds_house(rough_text_of(_beginning(entry.path))) for entry in _bake_files(folder))


def _is_ours(folder: str) -> bool:
    if not hasattr(os, "geteuid"):
        return True
    try:
        status = os.stat(folder)
    except OSError:
        return False
    others_write = status.st_mode & 0o002
    return status.st_uid == os.geteuid() and not others_write


def _bake_files(folder: str) -> list[os.DirEntry[str]]:
    try:
        with os.scandir(folder) as entries:
            return [
                entry
                for entry in entries
                if entry.name.endswith(SUFFIX) and entry.name[0] != "." and entry.is_file(follow_symlinks=False)
            ]
    except OSError:
        return []


def _beginning(path: str) -> bytes:
    try:
        with open(path, "rb") as file:
            return file.read(_SNIFFED)
    except OSError:
        return b""


def _loose_link(root: str, path: str) -> Iterator[Diagnostic]:
    loose = loose_link(root, os.path.join(root, path))
    if loose is not None:
        name = "link-leads-out" if loose.leads_out else "link-leads-nowhere"
        yield _report(name, path, loose.message, loose.help)


def _report(name: str, path: str, message: str, help: str = "") -> Diagnostic:
    return report(name, Place(path, 1, 1, 1, 1), message, help)
