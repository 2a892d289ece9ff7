"""The lines of a file that change, as `diff -u` writes them, for a person to read."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.terminal import show


def difference(path: str, before: bytes, after: bytes, done: str) -> Iterator[str]:
    """What becomes of the file called `path` when it is `done`. Tabs are seen."""
    from difflib import unified_diff

    from manchet.source.files import rough_text_of

    old, new = (rough_text_of(data).split("\n") for data in (before, after))
    return map(_shown, unified_diff(old, new, path, f"{path} ({done})", n=1, lineterm=""))


def _shown(line: str) -> str:
    return show(line.replace("\t", "→"))
