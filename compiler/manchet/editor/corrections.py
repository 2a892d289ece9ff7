"""What the editor can type for a person, asked for by the editor: fixes, and the normal form."""

from __future__ import annotations

from lsprotocol import types as lsp

from manchet.diagnostics.diagnostic import Edit
from manchet.editor.documents import OpenText
from manchet.editor.fixes import Repair, repairs, safe_edits
from manchet.editor.reports import reports_on
from manchet.editor.session import EditorServer, calm
from manchet.editor.tidying import edits_on_new_line, tidy_edits

FIX_ALL = "source.fixAll.manchet"
PUT_CURSOR = "manchet.putCursor"


def correcting(server: EditorServer) -> None:
    """Has the server answer what can be typed: fixes, and the normal form."""

    @server.feature(
        lsp.TEXT_DOCUMENT_CODE_ACTION,
        lsp.CodeActionOptions([lsp.CodeActionKind.QuickFix, FIX_ALL], resolve_provider=True),
    )
    @calm
    def code_actions(ls: EditorServer, params: lsp.CodeActionParams) -> list[lsp.CodeAction]:
        opened = ls.opened(params.text_document.uri)
        file = opened and opened.bakery.tree(opened.path)
        if opened is None or file is None:
            return []
        reports = reports_on(opened.bakery, opened.path)
        first, _ = ls.wire.at(opened.lines, params.range.start)
        last, _ = ls.wire.at(opened.lines, params.range.end)
        found = []
        if _is_wanted(lsp.CodeActionKind.QuickFix.value, params.context.only):
            found = [_quick_fix(ls, opened, one) for one in repairs(file, reports, first, last)]
        if any(fix.safe for one in reports for fix in one.fixes) and _is_wanted(FIX_ALL, params.context.only):
            number = sum(any(fix.safe for fix in one.fixes) for one in reports)
            title = "make every correction that changes no meaning" + (f" ({number})" if number > 1 else "")
            fix_all = lsp.CodeAction(title, FIX_ALL, data={"uri": opened.name})
            found.append(fix_all if _resolves(ls) else _with_safe_edits(ls, fix_all, opened))
        return found

    @server.feature(lsp.CODE_ACTION_RESOLVE)
    @calm
    def resolve(ls: EditorServer, action: lsp.CodeAction) -> lsp.CodeAction:
        opened = ls.opened(action.data["uri"]) if isinstance(action.data, dict) and "uri" in action.data else None
        return action if opened is None else _with_safe_edits(ls, action, opened)

    @server.command(PUT_CURSOR)
    @calm
    def put_cursor(ls: EditorServer, uri: str, line: int, character: int) -> None:
        at = lsp.Position(line, character)
        ls.window_show_document(lsp.ShowDocumentParams(uri, take_focus=True, selection=lsp.Range(at, at)))

    @server.feature(lsp.TEXT_DOCUMENT_FORMATTING)
    @calm
    def formatting(ls: EditorServer, params: lsp.DocumentFormattingParams) -> list[lsp.TextEdit]:
        opened = ls.opened(params.text_document.uri)
        return [] if opened is None else _typed(ls, opened, tidy_edits(opened.bakery, opened.path, opened.text))

    @server.feature(lsp.TEXT_DOCUMENT_ON_TYPE_FORMATTING, lsp.DocumentOnTypeFormattingOptions("\n"))
    @calm
    def on_new_line(ls: EditorServer, params: lsp.DocumentOnTypeFormattingParams) -> list[lsp.TextEdit]:
        opened = ls.opened(params.text_document.uri)
        if opened is None or params.ch != "\n":
            return []
        line, _ = ls.wire.at(opened.lines, params.position)
        return _typed(ls, opened, edits_on_new_line(opened.bakery, opened.path, line))


def _is_wanted(kind: str, only: object) -> bool:
    """Whether the client asks for this kind, a kind above it (`source`), or for all."""
    if not only:
        return True
    asked = [getattr(one, "value", one) for one in only]  # type: ignore[attr-defined]
    return any(kind == one or kind.startswith(f"{one}.") for one in asked)


def _resolves(ls: EditorServer) -> bool:
    """Whether the client asks for the edits of what the person has chosen, and not before."""
    able = ls.client_capabilities.text_document
    resolves = able.code_action.resolve_support if able is not None and able.code_action is not None else None
    return resolves is not None and "edit" in resolves.properties


def _with_safe_edits(ls: EditorServer, action: lsp.CodeAction, opened: OpenText) -> lsp.CodeAction:
    action.edit = _edit(ls, opened, safe_edits(opened.bakery, opened.path))
    return action


def _quick_fix(ls: EditorServer, opened: OpenText, repair: Repair) -> lsp.CodeAction:
    action = lsp.CodeAction(
        repair.title,
        lsp.CodeActionKind.QuickFix,
        diagnostics=[ls.wire.diagnostic(repair.report, ls.name_in(opened.bakery), opened.lines)],
        is_preferred=repair.is_first or None,
        edit=_edit(ls, opened, repair.edits),
    )
    window = ls.client_capabilities.window
    shows = window.show_document if window is not None else None
    if repair.cursor is not None and shows is not None and shows.support:
        at = ls.wire.range(repair.cursor).start
        action.command = lsp.Command("type the reason", PUT_CURSOR, arguments=[opened.name, at.line, at.character])
    return action


def _edit(ls: EditorServer, opened: OpenText, edits: tuple[Edit, ...]) -> lsp.WorkspaceEdit:
    return ls.wire.workspace_edit(edits, ls.name_in(opened.bakery), opened.lines)


def _typed(ls: EditorServer, opened: OpenText, edits: tuple[Edit, ...]) -> list[lsp.TextEdit]:
    return [ls.wire.text_edit(edit, opened.lines) for edit in edits]
