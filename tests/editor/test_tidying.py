"""The normal form, asked for by an editor."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from editor.client import client
from editor.houses import LOAF, write_house
from editor.test_fixes import _typed as typed
from every import every

from manchet.diagnostics.diagnostic import Fix
from manchet.editor.differences import edits_between
from manchet.source.mending import mend

OPTIONS = {"tabSize": 2, "insertSpaces": True}
UNTIDY = LOAF.replace("    water                 70%", "    water 70 %   # 🥖 warm")


@every(
    [
        ("a\nb\nc\n", "a\nB\nc\n"), ("a\nb\nc\n", "a\nc\n"), ("a\nc\n", "a\nb\nc\n"), ("", "a\n"), ("a", ""), ("a", "a\n"),
        ("a\nb", "a"), ("a\nb\nc", "x\ny\nb\nz"), ("a\r\nb\r\n", "a\nb\nc\n"), ("\n\n\na", "a\n"), ("a\n\n\n", "a\n"), ("ab", "aab"),
        ("", "a\n\nb"), ("\n", "a\n\nb\n"), ("a\n", "\n\na\n\n"),
    ],
    at_least=15,
)  # fmt: skip
def test_one_text_is_made_of_another(before: str, after: str) -> None:
    edits = edits_between("a", before, after)
    made = mend("a", before, [Fix("", edits)]).text if edits else before
    assert made.replace("\r\n", "\n") == after


def test_a_file_is_tidied(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake", UNTIDY)
        document = {"textDocument": {"uri": editor.uri("breads/plain.bake")}, "options": OPTIONS}
        (edit,) = editor.ask("textDocument/formatting", document)
        assert typed(UNTIDY, [edit]) == LOAF.replace(
            "    water                 70%", "    water                 70%  # 🥖 warm"
        )
        editor.type("breads/plain.bake", LOAF + "  no such word\n")
        assert editor.ask("textDocument/formatting", document) == []


def _new_line(tmp_path: Path, before: str, after: str = "") -> tuple[str, int]:
    """The text after Enter was pressed behind `before`, and how deep one types on."""
    text = f"{before}\n{after}"
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake", text)
        line = before.count("\n") + 1
        at = {**editor.at("breads/plain.bake", line, 0), "ch": "\n", "options": OPTIONS}
        edits: list[dict[str, Any]] = editor.ask("textDocument/onTypeFormatting", at)
    made = typed(text, edits)
    return made, len(made.split("\n")[line])


def test_a_line_that_is_left_is_tidied_and_the_next_stands_under_it(tmp_path: Path) -> None:
    begun = "formula A\n  overall\n"
    assert _new_line(tmp_path, begun + "    water 70 %") == (begun + "    water                 70%\n    ", 4)
    assert _new_line(tmp_path, "formula  A") == ("formula A\n  ", 2)
    assert _new_line(tmp_path, begun + "    no such thing") == (begun + "    no such thing\n    ", 4)
