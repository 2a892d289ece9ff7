"""Files and folders named on the command line: where each is, and what is said of one that was not read."""

from __future__ import annotations

import os
from collections.abc import Container, Iterable, Iterator

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import nearest
from manchet.source.files import SUFFIX, bytes_of
from manchet.workspace.folder import premises_of
from manchet.workspace.links import loose_link
from manchet.workspace.trouble import Unknown


def place_named(word: str) -> str:
    """The real place of what is there under this name: a link to a formula file of its own bakery names that file; any other
    stays what it is, a link. Raises `Unknown` for a file that can hold no formula."""
    if os.path.isdir(word):
        return os.path.realpath(word)
    if not word.endswith(SUFFIX):
        raise Unknown(f"{word} is not a formula file", f"formulas stand in files that end in {SUFFIX}")
    place = os.path.join(os.path.realpath(os.path.dirname(word) or "."), os.path.basename(word))
    hidden = next(
        (part for part in os.path.normpath(word).split(os.sep) if part.startswith(".") and part.strip(".")), ""
    )
    if hidden:
        raise Unknown(f"{word} is not read: {hidden} is hidden, since it begins with a dot", "call it otherwise")
    if os.path.islink(place) and loose_link(premises_of(place).root, place) is None:
        return os.path.realpath(place)
    return place


def unread(places: Iterable[str], read: Container[str], root: str, prefix: str) -> Iterator[Diagnostic]:
    """An error for each link that was named and cannot be followed. `read` are the real places of the files that were read."""
    for place in sorted(places):
        loose = loose_link(root, place) if place not in read and os.path.islink(place) else None
        if loose is not None:
            shown = prefix + os.path.relpath(place, root).replace(os.sep, "/")
            yield report("link-not-followed", Place(shown, 1, 1, 1, 1), loose.message, loose.help)


def bytes_named(name: str) -> bytes:
    """What a file holds that is no part of a bakery, as git hands it over. Raises `Unknown` where it cannot be read."""
    read = bytes_of(name, name)
    if read.value is None:
        raise Unknown(f"{name}: {read.diagnostics[0].message}", read.diagnostics[0].help)
    return read.value


def no_such_path(word: str) -> Unknown:
    folder, name = os.path.split(word)
    try:
        beside = sorted(entry for entry in os.listdir(folder or ".") if not entry.startswith("."))
    except OSError:
        return Unknown(f"there is no file or folder {word}, nor the folder {folder}")
    near = nearest(name, beside)
    return Unknown(f"there is no file or folder {word}", f"near: {os.path.join(folder, near)}" if near else "")
