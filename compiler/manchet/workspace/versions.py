"""Which commit a file is at, from git where there is one; sheets carry it so that two can be told apart."""

from __future__ import annotations

import os
from collections.abc import Mapping

SECONDS = 10


def versions(root: str, prefix: str, paths: set[str]) -> Mapping[str, tuple[str, bool]]:
    """For each path that git knows: its last commit (short), and whether it was edited since. Empty without git."""
    if not paths or not in_checkout(root):
        return {}
    changed = git(root, "status", "--porcelain=v1", "-z", "--untracked-files=all", "--", ".")
    if changed is None:
        return {}
    top = (git(root, "rev-parse", "--show-prefix") or "").strip()
    dirty = {entry[3:].removeprefix(top) for entry in changed.split("\0") if len(entry) > 3}
    commits = _last_commits(root, top, {path.removeprefix(prefix) for path in paths})
    return {
        path: (commits[inside], inside in dirty) for path in paths if (inside := path.removeprefix(prefix)) in commits
    }


def in_checkout(folder: str) -> bool:
    while True:
        if os.path.exists(os.path.join(folder, ".git")):
            return True
        above = os.path.dirname(folder)
        if above == folder:
            return False
        folder = above


def _last_commits(root: str, top: str, paths: set[str]) -> dict[str, str]:
    """The newest commit that touched each path, from one reading of the history."""
    history = git(root, "log", "--format=%x01%h", "--name-only", "-z", "--no-renames", "--", "*.bake")
    found: dict[str, str] = {}
    commit = ""
    for word in (history or "").replace("\n", "\0").split("\0"):
        if word.startswith("\x01"):
            commit = word[1:]
        elif word.removeprefix(top) in paths:
            found.setdefault(word.removeprefix(top), commit)
    return found


def git(folder: str, *words: str) -> str | None:
    """What git says; None where there is none, or it will not."""
    said = git_bytes(folder, b"", *words)
    return None if said is None else said.decode("utf-8", "replace")


def git_bytes(folder: str, given: bytes, *words: str) -> bytes | None:
    """The same byte for byte, of what it is given to read."""
    import subprocess

    # A checkout may name programs of its own for git to run; none of them is wanted here.
    safe = ("-c", "core.fsmonitor=false", "-c", "core.hooksPath=/dev/null", "-c", "log.showSignature=false")
    try:
        ran = subprocess.run(
            ["git", "--no-optional-locks", "-C", folder, *safe, *words],
            capture_output=True,
            timeout=SECONDS,
            check=True,
            input=given,
        )
    except (OSError, subprocess.SubprocessError):
        return None
    return ran.stdout
