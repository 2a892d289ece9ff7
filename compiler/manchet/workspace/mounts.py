"""Folders that send no events when a file in them changes."""

from __future__ import annotations

import os
from collections.abc import Mapping

WITHOUT_EVENTS = frozenset({"nfs", "nfs4", "cifs", "smb3", "smbfs", "9p", "drvfs", "vboxsf", "virtiofs", "sshfs"})
"""Kinds of mount from which changes made elsewhere send no event; and every kind of `fuse`."""


def why_poll(root: str, mounts: str = "/proc/mounts") -> str:
    """Why events cannot be relied on for this folder; "" where they can, or where nothing is known."""
    try:
        with open(mounts, encoding="utf-8", errors="surrogateescape") as file:
            kinds = dict(_mount(line) for line in file if line.count(" ") >= 3)
    except OSError:
        return ""
    kind = kinds.get(_mounted_at(os.path.realpath(root), kinds), "")
    return f"the folder is on {kind}, which sends no events" if kind in WITHOUT_EVENTS or "fuse" in kind else ""


def _mount(line: str) -> tuple[str, str]:
    fields = line.split(" ")
    return fields[1].replace("\\040", " "), fields[2]


def _mounted_at(path: str, kinds: Mapping[str, str]) -> str:
    while path not in kinds and path != os.path.dirname(path):
        path = os.path.dirname(path)
    return path
