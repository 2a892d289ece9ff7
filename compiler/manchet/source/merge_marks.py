"""Whether git left a file half merged: asked of every file, so nothing else is loaded for it."""

from __future__ import annotations

UNMERGED = "merge-unfinished"
"""The name of its report; see `unmerged`."""


def is_unmerged(text: str) -> bool:
    """Whether git's marks stand in the text. Asked of every file, so it looks for no more than their beginnings."""
    return any(f"\n{mark}" in text or text.startswith(mark) for mark in ("<<<<<<<", ">>>>>>>"))
