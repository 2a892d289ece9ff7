"""Which state of its file a sheet is printed from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from manchet.records import NamedTuple
from manchet.workspace import cache
from manchet.workspace.replacing import Last
from manchet.workspace.selection import Selection
from manchet.workspace.versions import versions


class Version(NamedTuple):
    """Which state of its file a sheet was printed from. `commit` is "" outside of a git checkout."""

    file: str
    digest: str
    commit: str = ""
    edited: bool = False
    before: Mapping[str, Fraction] = {}
    """The overall formula of the committed version before, by key; {} if there is none."""
    last: Mapping[str, Last] = {}
    """What the sheets of this name in the output folder say of themselves, by kind."""


def file_versions(selection: Selection, paths: Iterable[str]) -> Mapping[str, Version]:
    """Of each path as it is now. Git is asked once for all of them. A path of no file ("") is in no commit."""
    asked = set(paths)
    data = {file.path: file.data for file in selection.files}
    known = versions(selection.root, selection.prefix, asked)
    found = {}
    for path in asked:
        commit, edited = known.get(path, ("", False))
        digest = cache.digest(data.get(path, b""))[:8]
        found[path] = Version(path.removeprefix(selection.prefix), digest, commit, edited)
    return found
