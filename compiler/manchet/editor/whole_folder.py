"""The reports on a whole bakery, found in a process of its own that lets all others go first.

    python -m manchet.editor.whole_folder FOLDER

A check of a thousand formulas takes seconds where nothing is remembered, and the editor must not wait for it. What is saved
counts here, as for `check`, whose cache it shares; what is open is looked at by the editor itself.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from manchet.records import NamedTuple

if TYPE_CHECKING:
    from manchet.diagnostics.diagnostic import Diagnostic

POLITE = 10
"""How far behind all others, of 19: far enough for an editor, and not so far that a busy machine never comes to it."""


class WholeFolder(NamedTuple):
    """What `check` says of a folder, by file; every file with a report is there. Paths are those of its bakery."""

    by_path: Mapping[str, tuple[Diagnostic, ...]]


def command_for(folder: str) -> Sequence[str]:
    """The words that start the process."""
    return (sys.executable, "-m", "manchet.editor.whole_folder", folder)


def read_answer(answer: bytes) -> WholeFolder:
    """What the process wrote. Raises `ValueError` where it is not whole."""
    from manchet.workspace.packing import unpack

    by_path: dict[str, tuple[Diagnostic, ...]] = {}
    for one in unpack(answer.decode("utf-8", "surrogatepass")).diagnostics:
        by_path[one.place.path] = (*by_path.get(one.place.path, ()), one)
    return WholeFolder(by_path)


def main(folder: str) -> int:
    """Checks the folder and writes what was found."""
    from manchet.workspace.checking import check_selection
    from manchet.workspace.packing import Found, pack
    from manchet.workspace.selection import selections
    from manchet.workspace.trouble import Trouble

    if hasattr(os, "nice"):
        os.nice(POLITE)
    os.chdir(folder)
    try:
        (selection,) = selections(["."])
        checked = check_selection(selection)
    except Trouble:
        return 1
    prefix = selection.prefix
    mine = [one for one in checked.diagnostics if one.place.path.startswith(prefix)]
    sys.stdout.buffer.write(pack(Found(tuple(mine), checked.formulas)).encode("utf-8", "surrogatepass"))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
