"""What the editor tells of itself: what it opens, types, saves and puts away, and what a person has set in it."""

from __future__ import annotations

from lsprotocol import types as lsp
from pygls.uris import to_fs_path

from manchet.editor.documents import Desk
from manchet.editor.session import EditorServer, calm


def listening(server: EditorServer) -> None:
    """Has the server listen."""

    @server.feature(lsp.INITIALIZE)
    @calm
    def initialize(ls: EditorServer, params: lsp.InitializeParams) -> None:
        folders = [folder.uri for folder in params.workspace_folders or ()] or [params.root_uri or ""]
        ls.desk = Desk(path for uri in folders if (path := to_fs_path(uri)))
        ls.set(params.initialization_options)

    @server.feature(lsp.INITIALIZED)
    @calm
    def initialized(ls: EditorServer, params: lsp.InitializedParams) -> None:
        ls.go_on("settings", _ask_for_settings(ls))
        ls.go_on("watching", _ask_to_be_told_of_saves(ls))
        ls.check_folders()

    @server.feature(lsp.WORKSPACE_DID_CHANGE_CONFIGURATION)
    @calm
    def configured(ls: EditorServer, params: lsp.DidChangeConfigurationParams) -> None:
        told = params.settings.get("manchet") if isinstance(params.settings, dict) else None
        if told is not None:
            ls.set(told)
            _show_anew(ls)
        else:
            ls.go_on("settings", _ask_for_settings(ls))

    @server.feature(lsp.TEXT_DOCUMENT_DID_OPEN)
    @calm
    def did_open(ls: EditorServer, params: lsp.DidOpenTextDocumentParams) -> None:
        ls.take(params.text_document.uri, params.text_document.version)

    @server.feature(lsp.TEXT_DOCUMENT_DID_CHANGE)
    @calm
    def did_change(ls: EditorServer, params: lsp.DidChangeTextDocumentParams) -> None:
        ls.take(params.text_document.uri, params.text_document.version)

    @server.feature(lsp.TEXT_DOCUMENT_DID_SAVE)
    @calm
    def did_save(ls: EditorServer, params: lsp.DidSaveTextDocumentParams) -> None:
        ls.saved(params.text_document.uri)

    @server.feature(lsp.TEXT_DOCUMENT_DID_CLOSE)
    @calm
    def did_close(ls: EditorServer, params: lsp.DidCloseTextDocumentParams) -> None:
        ls.close(params.text_document.uri)

    @server.feature(lsp.WORKSPACE_DID_CHANGE_WATCHED_FILES)
    @calm
    def files_changed(ls: EditorServer, params: lsp.DidChangeWatchedFilesParams) -> None:
        if any(ls.desk.at(change.uri) is None for change in params.changes):
            ls.disk_changed()


async def _ask_for_settings(server: EditorServer) -> None:
    able = server.client_capabilities.workspace
    if able is not None and able.configuration:
        asked = lsp.ConfigurationParams([lsp.ConfigurationItem(section="manchet")])
        (value,) = await server.workspace_configuration_async(asked)
        server.set(value)
        _show_anew(server)


async def _ask_to_be_told_of_saves(server: EditorServer) -> None:
    able = server.client_capabilities.workspace
    watches = able.did_change_watched_files if able is not None else None
    if watches is not None and watches.dynamic_registration:
        wanted = lsp.DidChangeWatchedFilesRegistrationOptions([lsp.FileSystemWatcher("**/*.bake")])
        one = lsp.Registration("saves", lsp.WORKSPACE_DID_CHANGE_WATCHED_FILES, wanted)
        await server.client_register_capability_async(lsp.RegistrationParams([one]))


def _show_anew(server: EditorServer) -> None:
    """Has the editor ask again for what follows from the settings, where it can."""
    able = server.client_capabilities.workspace
    hints, lenses = (able.inlay_hint, able.code_lens) if able is not None else (None, None)
    if hints is not None and hints.refresh_support:
        server.workspace_inlay_hint_refresh(None)
    if lenses is not None and lenses.refresh_support:
        server.workspace_code_lens_refresh(None)
