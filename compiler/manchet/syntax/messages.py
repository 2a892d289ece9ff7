"""The words of every report about how a line is written: severity, message, help. `{…}` is filled from the line."""

from __future__ import annotations

MESSAGES: dict[str, tuple[str, str, str]] = {
    "unreadable-line": ("error", "cannot read “{text}” here", "{form}"),
    "tab-indentation": ("error", "a tab stands at the start of the line", "indent with two spaces for each step"),
    "too-deep": ("error", "this line stands more than {most} steps deep", "take it further out"),
    "odd-indentation": ("error", "{spaces} spaces at the start of the line", "one step is two spaces"),
    "deep-indentation": ("error", "{spaces} spaces: at most {most} can stand here", "one step deeper is two spaces more"),
    "too-many-mistakes": ("note", "and {more} more like these", "put the first ones right and look again"),
}
