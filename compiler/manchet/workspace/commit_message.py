"""What a commit changes, as remarks in the message that git is about to show: read while it is written, and taken off by git."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.workspace.versions import git

MARK = "#"
"""What begins a remark, unless git is told otherwise (core.commentChar, git-config(1))."""
KEPT = frozenset({"verbatim", "whitespace", "scissors"})
"""Ways of cleaning a message (git-commit(1), `--cleanup`) by which such remarks would stay in it."""
WRITTEN = frozenset({"message", "merge", "squash", "commit"})
"""Where a message comes from that is written already (githooks(5), prepare-commit-msg): nobody reads remarks in it."""


def mark_of_remarks(folder: str) -> str:
    """What begins a remark in this clone; "" where git would leave remarks in the message."""
    asked = git(folder, "config", "--null", "--get-regexp", r"^(core\.commentchar|commit\.cleanup)$") or ""
    settings = (one.partition("\n") for one in asked.split("\0") if one)
    told = {name.rpartition(".")[2]: value for name, _, value in settings}
    if told.get("cleanup") in KEPT:
        return ""
    mark = told.get("commentchar", MARK)
    return MARK if mark == "auto" else mark


def with_remarks(message: str, lines: Iterable[str], mark: str) -> str:
    """The message with the lines before git's own remarks, at its end where it has none."""
    remarks = [f"{mark} {line}".rstrip() for line in lines]
    written = message.split("\n")
    at = next((n for n, line in enumerate(written) if line.startswith(mark)), len(written))
    before = written[:at] if any(written[:at]) or at < len(written) else [""]
    return "\n".join([*before, *remarks, mark, *written[at:]]) + (
        "" if message.endswith("\n") or at < len(written) else "\n"
    )
