"""What an editor shows between and above the lines of a file, and what happens where a person presses it."""

from __future__ import annotations

import os
import shlex
import sys
from tempfile import mkdtemp

from lsprotocol import types as lsp
from pygls.uris import from_fs_path

from manchet.editor.documents import OpenText, root_of
from manchet.editor.hints import hints
from manchet.editor.lenses import Lens, lenses
from manchet.editor.processes import end_of
from manchet.editor.session import EditorServer, calm

SHEET, COMPARE = "manchet.sheet", "manchet.compare"
_COMMANDS = {"sheet": SHEET, "compare": COMPARE}


def showing_beside(server: EditorServer) -> None:
    """Has the server answer these."""

    @server.feature(lsp.TEXT_DOCUMENT_INLAY_HINT)
    @calm
    def on_hints(ls: EditorServer, params: lsp.InlayHintParams) -> list[lsp.InlayHint]:
        opened = ls.opened(params.text_document.uri)
        if opened is None:
            return []
        first, _ = ls.wire.at(opened.lines, params.range.start)
        last, _ = ls.wire.at(opened.lines, params.range.end)
        return [
            lsp.InlayHint(ls.wire.range(one.place).start, one.text, tooltip=one.says, padding_left=True)
            for one in hints(opened.bakery, opened.path, first, last, ls.settings)
        ]

    @server.feature(lsp.TEXT_DOCUMENT_CODE_LENS, lsp.CodeLensOptions())
    @calm
    def on_lenses(ls: EditorServer, params: lsp.CodeLensParams) -> list[lsp.CodeLens]:
        opened = ls.opened(params.text_document.uri)
        if opened is None:
            return []
        return [_lens(ls, opened, one) for one in lenses(opened.bakery, opened.path, ls.settings)]

    @server.command(SHEET)
    @calm
    def sheet(ls: EditorServer, uri: str, formula: str) -> None:
        ls.go_on(SHEET, _show_sheet(ls, uri, formula))

    @server.command(COMPARE)
    @calm
    def compare(ls: EditorServer, uri: str, formula: str) -> None:
        ls.go_on(COMPARE, _show_changes(ls, uri, formula))


def _lens(ls: EditorServer, opened: OpenText, lens: Lens) -> lsp.CodeLens:
    arguments = [opened.name, lens.formula] if lens.does else None
    return lsp.CodeLens(
        ls.wire.range(lens.place), lsp.Command(lens.text, _COMMANDS.get(lens.does, ""), arguments=arguments)
    )


async def _show_sheet(ls: EditorServer, uri: str, formula: str) -> None:
    """Makes the prep sheet of a formula, as it is saved, at the size of today, and shows it."""
    opened = ls.opened(uri)
    if opened is None or not root_of(opened.bakery):
        _say(ls, "the file is not saved yet")
        return
    root, folder = root_of(opened.bakery), mkdtemp(dir=ls.folder_for_sheets())
    today = shlex.split(ls.settings.words(formula))
    status, said = await _run(root, "build", formula, *today, "--only", "sheet,html", "--out", folder)
    pages = [os.path.join(root, line) for line in said.split("\n") if line.endswith(".html")] if not status else []
    if pages:
        ls.window_show_document(lsp.ShowDocumentParams(from_fs_path(os.path.realpath(pages[0])) or "", external=True))
    else:
        _say(ls, said or f"{formula} has no sheet: its file has an error")


async def _show_changes(ls: EditorServer, uri: str, formula: str) -> None:
    """Says what of a formula, as it is saved, is otherwise than in its last commit."""
    opened = ls.opened(uri)
    if opened is not None and root_of(opened.bakery):
        _, said = await _run(root_of(opened.bakery), "compare", "HEAD", formula)
        _say(ls, said)


async def _run(folder: str, *words: str) -> tuple[int, str]:
    """One command of ours in a folder: its exit status, and what it said."""
    ended = await end_of((sys.executable, "-m", "manchet.cli.main", *words), folder)
    return ended.status, (ended.output or ended.complaint).decode("utf-8", "replace").strip()


def _say(ls: EditorServer, words: str) -> None:
    ls.window_show_message(lsp.ShowMessageParams(lsp.MessageType.Info, words))
