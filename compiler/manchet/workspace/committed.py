"""What a formula was in its last committed version, so that a sheet can say what has changed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from manchet.batch.was_weighed import shares_by_name
from manchet.diagnostics.suggest import fold
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.selection import Selection
from manchet.workspace.versions import git, in_checkout

Overall = Mapping[str, Fraction]
"""Grams per gram of all flour, by the folded name of the line."""


def former_overalls(selection: Selection, edited: Mapping[str, bool]) -> Mapping[tuple[str, str], Overall]:
    """By path and folded name of the formula, the overall formula of the version before.

    `edited` has the paths to look at. For one that was edited since its last commit that commit is the version before;
    else it is the commit before that. Nothing without git, for a new file, or where the old text was no formula.
    """
    if not edited or not in_checkout(selection.root):
        return {}
    texts = _texts(selection.root, {path.removeprefix(selection.prefix): was for path, was in edited.items()})
    old = {selection.prefix + inside: text.encode() for inside, text in texts.items()}
    if not old:
        return {}
    files = (Raw(file.path, old[file.path]) if file.path in old else file for file in selection.files)
    then = OpenBakery(files=files).read(old)
    return {
        (formula.place.path, fold(formula.name)): shares_by_name(formula)
        for formula in then.formulas
        if formula.place.path in old
    }


def _texts(root: str, edited: Mapping[str, bool]) -> dict[str, str]:
    top = (git(root, "rev-parse", "--show-prefix") or "").strip()
    found: dict[str, str] = {}
    for inside, commits in _commits(root, top, edited).items():
        back = 0 if edited[inside] else 1
        if back < len(commits):
            text = git(root, "cat-file", "blob", f"{commits[back]}:{top}{inside}")
            if text is not None:
                found[inside] = text
    return found


def _commits(root: str, top: str, paths: Iterable[str]) -> dict[str, list[str]]:
    """The commits that touched each path, newest first, from one reading of the history."""
    history = git(root, "log", "--format=%x01%H", "--name-only", "-z", "--no-renames", "--", "*.bake")
    found: dict[str, list[str]] = {path: [] for path in paths}
    commit = ""
    for word in (history or "").replace("\n", "\0").split("\0"):
        if word.startswith("\x01"):
            commit = word[1:]
        elif word.removeprefix(top) in found:
            found[word.removeprefix(top)].append(commit)
    return found
