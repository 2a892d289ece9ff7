"""What an editor shows beside and over a file: its outline, folds, colours."""

from __future__ import annotations

from collections.abc import Iterable

from lsprotocol import types as lsp

from manchet.editor.documents import OpenText
from manchet.editor.outline import Outlined, folds, named_like, outline
from manchet.editor.session import EditorServer, calm
from manchet.editor.tokens import SORTS, Coloured, colours

KINDS = {
    "formula": lsp.SymbolKind.Class,
    "assembly": lsp.SymbolKind.Class,
    "preparation": lsp.SymbolKind.Interface,
    "larder": lsp.SymbolKind.Namespace,
    "kitchen": lsp.SymbolKind.Namespace,
    "plan": lsp.SymbolKind.Event,
    "order": lsp.SymbolKind.Event,
    "variant": lsp.SymbolKind.EnumMember,
    "overall": lsp.SymbolKind.Array,
    "stage": lsp.SymbolKind.Method,
    "entry": lsp.SymbolKind.Variable,
    "thing": lsp.SymbolKind.Object,
}


def overlooking(server: EditorServer) -> None:
    """Has the server answer these."""

    @server.feature(lsp.TEXT_DOCUMENT_DOCUMENT_SYMBOL)
    @calm
    def symbols(ls: EditorServer, params: lsp.DocumentSymbolParams) -> list[lsp.DocumentSymbol]:
        opened = ls.opened(params.text_document.uri)
        file = opened and opened.bakery.tree(opened.path)
        return [] if opened is None or file is None else _symbols(ls, opened, outline(file))

    @server.feature(lsp.WORKSPACE_SYMBOL)
    @calm
    def search(ls: EditorServer, params: lsp.WorkspaceSymbolParams) -> list[lsp.WorkspaceSymbol]:
        found = []
        for bakery in ls.bakeries():
            name_of = ls.name_in(bakery)
            for one in named_like(bakery, params.query):
                where = lsp.Location(name_of(one.head.path), ls.wire.range(one.head))
                found.append(lsp.WorkspaceSymbol(where, one.name, _kind(one), container_name=one.says))
        return found

    @server.feature(lsp.TEXT_DOCUMENT_FOLDING_RANGE)
    @calm
    def folding(ls: EditorServer, params: lsp.FoldingRangeParams) -> list[lsp.FoldingRange]:
        opened = ls.opened(params.text_document.uri)
        file = opened and opened.bakery.tree(opened.path)
        remark = lsp.FoldingRangeKind.Comment
        return [
            lsp.FoldingRange(one.first - 1, one.last - 1, kind=remark if one.is_remark else None)
            for one in (folds(file) if file is not None else ())
        ]

    @server.feature(lsp.TEXT_DOCUMENT_SEMANTIC_TOKENS_FULL, lsp.SemanticTokensLegend(list(SORTS), []))
    @calm
    def tokens(ls: EditorServer, params: lsp.SemanticTokensParams) -> lsp.SemanticTokens:
        opened = ls.opened(params.text_document.uri)
        file = opened and opened.bakery.tree(opened.path)
        return lsp.SemanticTokens([] if opened is None or file is None else _numbers(ls, opened, colours(file)))


def _symbols(ls: EditorServer, opened: OpenText, found: Iterable[Outlined]) -> list[lsp.DocumentSymbol]:
    return [
        lsp.DocumentSymbol(
            one.name,
            _kind(one),
            ls.wire.range(one.whole, opened.lines),
            ls.wire.range(one.head, opened.lines),
            detail=one.says or None,
            children=_symbols(ls, opened, one.under),
        )
        for one in found
    ]


def _kind(one: Outlined) -> lsp.SymbolKind:
    return KINDS.get(one.sort, lsp.SymbolKind.Method)


def _numbers(ls: EditorServer, opened: OpenText, found: Iterable[Coloured]) -> list[int]:
    """Five numbers a piece, each counted from the piece before it, as the protocol has them."""
    numbers: list[int] = []
    row = column = 0
    for one in found:
        text = opened.lines[one.line - 1]
        start = ls.wire.position(one.line, one.start, text)
        end = ls.wire.position(one.line, one.end, text)
        numbers += (
            start.line - row,
            start.character - (column if start.line == row else 0),
            end.character - start.character,
            SORTS.index(one.sort),
            0,
        )
        row, column = start.line, start.character
    return numbers
