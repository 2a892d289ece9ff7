"""What a person asks about a place in a file: what it is, where else it is named, what could be typed there."""

from __future__ import annotations

from collections.abc import Iterable

from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException

from manchet.diagnostics.diagnostic import Place
from manchet.editor.completion import Proposal, completion
from manchet.editor.hover import hover
from manchet.editor.references import definition, references
from manchet.editor.rename import name_to_change, rename
from manchet.editor.session import EditorServer, calm
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.trouble import Trouble


def answering(server: EditorServer) -> None:
    """Has the server answer these."""

    @server.feature(lsp.TEXT_DOCUMENT_HOVER)
    @calm
    def on_hover(ls: EditorServer, params: lsp.HoverParams) -> lsp.Hover | None:
        at = ls.where(params.text_document, params.position)
        told = hover(*at, ls.settings) if at is not None else None
        if told is None:
            return None
        return lsp.Hover(lsp.MarkupContent(lsp.MarkupKind.Markdown, told.text), ls.wire.range(told.place))

    @server.feature(lsp.TEXT_DOCUMENT_COMPLETION, lsp.CompletionOptions(trigger_characters=[" "]))
    @calm
    def on_completion(ls: EditorServer, params: lsp.CompletionParams) -> lsp.CompletionList:
        opened = ls.opened(params.text_document.uri)
        if opened is None:
            return lsp.CompletionList(is_incomplete=False, items=[])
        line, column = ls.wire.at(opened.lines, params.position)
        written = opened.lines[line - 1]
        by_itself = params.context is not None and params.context.trigger_character == " "
        if by_itself and not written[: column - 1].strip():
            return lsp.CompletionList(is_incomplete=False, items=[])  # a line is being indented
        offers = completion(opened.bakery, opened.path, opened.text, line, column)
        items = [_item(ls, one, number, line, column, written) for number, one in enumerate(offers.items)]
        return lsp.CompletionList(is_incomplete=not offers.is_whole, items=items)

    @server.feature(lsp.TEXT_DOCUMENT_DEFINITION)
    @calm
    def on_definition(ls: EditorServer, params: lsp.DefinitionParams) -> list[lsp.Location]:
        at = ls.where(params.text_document, params.position)
        place = definition(*at) if at is not None else None
        return _locations(ls, at, [] if place is None else [place])

    @server.feature(lsp.TEXT_DOCUMENT_REFERENCES)
    @calm
    def on_references(ls: EditorServer, params: lsp.ReferenceParams) -> list[lsp.Location]:
        at = ls.where(params.text_document, params.position)
        found = references(*at, params.context.include_declaration) if at is not None else ()
        return _locations(ls, at, found)

    @server.feature(lsp.TEXT_DOCUMENT_PREPARE_RENAME)
    @calm
    def on_prepare(ls: EditorServer, params: lsp.PrepareRenameParams) -> lsp.Range | None:
        at = ls.where(params.text_document, params.position)
        try:
            return ls.wire.range(name_to_change(*at)) if at is not None else None
        except Trouble as trouble:
            raise _refused(trouble) from None

    @server.feature(lsp.TEXT_DOCUMENT_RENAME, lsp.RenameOptions(prepare_provider=True))
    @calm
    def on_rename(ls: EditorServer, params: lsp.RenameParams) -> lsp.WorkspaceEdit | None:
        at = ls.where(params.text_document, params.position)
        if at is None:
            return None
        try:
            edits = rename(*at, params.new_name)
        except Trouble as trouble:
            raise _refused(trouble) from None
        return ls.wire.workspace_edit(edits, ls.name_in(at[0]))


_KINDS = {
    "word": lsp.CompletionItemKind.Keyword,
    "verb": lsp.CompletionItemKind.Function,
    "ingredient": lsp.CompletionItemKind.Variable,
    "stage": lsp.CompletionItemKind.Method,
    "made": lsp.CompletionItemKind.Class,
    "thing": lsp.CompletionItemKind.Constant,
    "unit": lsp.CompletionItemKind.Unit,
    "figure": lsp.CompletionItemKind.Value,
    "report": lsp.CompletionItemKind.Event,
    "kind": lsp.CompletionItemKind.EnumMember,
}


def _item(ls: EditorServer, offer: Proposal, number: int, line: int, column: int, written: str) -> lsp.CompletionItem:
    """An offer in our order, which the editor keeps by `sort_text`, and that stands the editor's own filter."""
    place = lsp.Range(ls.wire.position(line, offer.start, written), ls.wire.position(line, column, written))
    return lsp.CompletionItem(
        offer.text,
        kind=_KINDS[offer.sort],
        detail=offer.says or None,
        sort_text=f"{number:03}",
        filter_text=written[offer.start - 1 : column - 1] or None,
        text_edit=lsp.TextEdit(place, offer.text),
    )


def _refused(trouble: Trouble) -> JsonRpcException:
    """What the person is told in place of an answer."""
    return JsonRpcException(trouble.message, lsp.LSPErrorCodes.RequestFailed.value)


def _locations(
    ls: EditorServer, at: tuple[OpenBakery, str, int, int] | None, places: Iterable[Place]
) -> list[lsp.Location]:
    if at is None:
        return []
    name_of = ls.name_in(at[0])
    return [lsp.Location(name_of(place.path), ls.wire.range(place)) for place in places]
