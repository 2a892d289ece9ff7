"""One editor that is served: its open files, and the reports that it is sent without asking.

Everything it knows is in plain values and functions of this room; here is only who is told what, and when. Nothing that a
file holds makes a handler raise: a client that gets an error for a stroke stops sending them.
"""

from __future__ import annotations

import asyncio
import gc
from collections.abc import Callable, Iterable, Mapping
from functools import wraps
from typing import TYPE_CHECKING, Any, Concatenate, ParamSpec, TypeVar

from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException
from pygls.lsp.server import LanguageServer
from pygls.uris import from_fs_path, to_fs_path

from manchet import __version__
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.editor.documents import Desk, OpenText, place_of, root_of
from manchet.editor.processes import end_of
from manchet.editor.reports import reports_on
from manchet.editor.settings import ReadOrder, Settings, settings_of
from manchet.editor.warming import warm_up
from manchet.editor.whole_folder import command_for, read_answer
from manchet.editor.wire import Wire
from manchet.syntax.line import forget_lines
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.trouble import Trouble

if TYPE_CHECKING:
    from tempfile import TemporaryDirectory

P = ParamSpec("P")
T = TypeVar("T")

BREATH = 0.004
"""Seconds for which strokes that have already come are taken in before a file is looked at once more."""
FORGETS_AFTER = 1000
"""Reports after which what is remembered of lines is let go: most of it is lines that were being typed."""
FIRST_STROKES = 0.6
"""Seconds that the files one opens first have for themselves, before the whole folder is looked at."""


class EditorServer(LanguageServer):
    """One client, its open files and what it was told of the others."""

    def __init__(self, read_order: ReadOrder) -> None:
        # Whole texts: pygls ends lines at characters that are none of a line's ends for the protocol, so that it would
        # put a part into the wrong place; and a file of formulas is small.
        super().__init__("manchet", __version__, lsp.TextDocumentSyncKind.Full)
        self.read_order = read_order
        self.desk = Desk()
        self.settings = Settings()
        self._due: dict[str, None] = {}
        self._wake: asyncio.Event | None = None
        self._tasks: dict[str, asyncio.Task[None]] = {}
        self._sheets: TemporaryDirectory[str] | None = None
        self._told: dict[str, Mapping[str, tuple[Diagnostic, ...]]] = {}
        """By the folder of a bakery: the reports on its files, as they are saved."""

    @property
    def wire(self) -> Wire:
        return Wire(self.workspace.position_codec)

    def opened(self, name: str) -> OpenText | None:
        return self.desk.at(name)

    def where(
        self, document: lsp.TextDocumentIdentifier, position: lsp.Position
    ) -> tuple[OpenBakery, str, int, int] | None:
        """The bakery, the path, the line and the column that a question is about; None where the file is not open."""
        opened = self.opened(document.uri)
        return None if opened is None else (opened.bakery, opened.path, *self.wire.at(opened.lines, position))

    def bakeries(self) -> tuple[OpenBakery, ...]:
        """Those of the folders that the editor works in, and of what is open beside them."""
        folders = [bakery for folder in self.desk.folders for bakery in self.desk.bakeries_in(folder)]
        every = [*folders, *(one.bakery for one in self.desk)]
        return tuple({id(one): one for one in every}.values())

    def name_in(self, bakery: OpenBakery) -> Callable[[str], str]:
        """The address of each file of a bakery: as the editor wrote it, where it is open."""

        def name_of(path: str) -> str:
            opened = self.desk.name_of(bakery, path)
            if opened is not None or not root_of(bakery):
                return opened or path
            return from_fs_path(self.desk.as_given(place_of(root_of(bakery), path))) or ""

        return name_of

    def folder_for_sheets(self) -> str:
        """A folder that lasts as long as the talk, for pages that are shown."""
        if self._sheets is None:
            from tempfile import TemporaryDirectory

            self._sheets = TemporaryDirectory(prefix="manchet-")
        return self._sheets.name

    # ---- what is typed

    def take(self, name: str, version: int | None) -> None:
        """The text of a file as the client has it now."""
        text = self.workspace.get_text_document(name).source
        shared = self._shared_with(name)
        opened = self.desk.open(name, to_fs_path(name) or "", text, version)
        others = (
            [one.name for one in self.desk if one.bakery is opened.bakery] if shared != self._shared_with(name) else []
        )
        self.look_at(name, *others)

    def _shared_with(self, name: str) -> object:
        """What other files draw on; the text alone, for a file that moves down says the same."""
        opened = self.desk.at(name)
        return None if opened is None else [(path, block.name, block.text) for path, block in opened.bakery.shared]

    def look_at(self, *names: str) -> None:
        """These files are to be reported on again, the first of them first of all."""
        self._due = dict.fromkeys((*names, *self._due))
        if self._wake is None:
            self._wake = asyncio.Event()
            self.go_on("reports", self._report())
        self._wake.set()

    async def _report(self) -> None:
        """Reports on what is due; what was typed meanwhile comes first, and nothing is reported of an older text."""
        assert self._wake is not None
        clock = asyncio.get_running_loop().time
        done, first, published = 0.0, True, 0
        while True:
            await self._wake.wait()
            self._wake.clear()
            while self._due:
                await asyncio.sleep(BREATH if clock() - done < BREATH else 0)
                name = next(iter(self._due), "")
                self._due.pop(name, None)
                self.publish(name)
                done = clock()
                published += 1
                if not published % FORGETS_AFTER:
                    forget_lines()
                if first:
                    first = False
                    await asyncio.sleep(0)
                    warm_up()
                    settle()

    @staticmethod
    def _calm_reports(opened: OpenText) -> tuple[Diagnostic, ...]:
        try:
            return reports_on(opened.bakery, opened.path)
        except Trouble:
            raise
        except Exception as fault:
            from manchet.diagnostics.diagnostic import Place
            from manchet.workspace.faults import fault_report

            return (fault_report(fault, Place(opened.path, 1, 1, 1, 1), "this file could not be looked at"),)

    def publish(self, name: str) -> None:
        """Sends the reports on an open file."""
        opened = self.desk.at(name)
        if opened is not None:
            self._send(opened.bakery, opened.path, self._calm_reports(opened), opened)

    def _send(
        self, bakery: OpenBakery, path: str, reports: Iterable[Diagnostic], opened: OpenText | None = None
    ) -> None:
        name_of = self.name_in(bakery)
        lines, version = ((), None) if opened is None else (opened.lines, opened.version)
        wire = self.wire
        items = [wire.diagnostic(one, name_of, lines) for one in reports]
        self.text_document_publish_diagnostics(lsp.PublishDiagnosticsParams(name_of(path), items, version))

    def close(self, name: str) -> None:
        """The editor has put a file away: what is reported of it is what is saved, in a folder that it works in, or nothing."""
        opened = self.desk.at(name)
        self._due.pop(name, None)
        self.desk.close(name)
        if opened is None:
            return
        root = root_of(opened.bakery)
        is_there = root in self._told and any(file.path == opened.path for file in opened.bakery.files)
        reports = self._calm_reports(opened) if is_there else ()
        if root in self._told:
            self._told[root] = {**self._told[root], opened.path: reports}
        self.text_document_publish_diagnostics(lsp.PublishDiagnosticsParams(name, []))
        if reports:
            self._send(opened.bakery, opened.path, reports)
        self.look_at(*(one.name for one in self.desk if one.bakery is opened.bakery))

    # ---- what is saved

    def saved(self, name: str) -> None:
        """A file was saved, or one changed on the disk: the folder is looked at again where others draw on it."""
        opened = self.desk.at(name)
        self.desk.refresh()
        if opened is not None and any(path == opened.path for path, _ in opened.bakery.shared):
            self.check_folders()

    def disk_changed(self) -> None:
        """Something else than this editor wrote files."""
        self.desk.refresh()
        self.look_at(*(one.name for one in self.desk))
        self.check_folders()

    def check_folders(self) -> None:
        """Looks at every folder that the editor works in, from the beginning where that is going on already."""
        for folder in self.desk.folders:
            self.go_on(f"folder {folder}", self._check_folder(folder))

    async def _check_folder(self, folder: str) -> None:
        await asyncio.sleep(FIRST_STROKES)
        for bakery in self.desk.bakeries_in(folder):
            await self._check_bakery(bakery)

    async def _check_bakery(self, bakery: OpenBakery) -> None:
        root = root_of(bakery)
        ended = await end_of(command_for(root))
        if ended.status:
            return
        before, now = self._told.get(root, {}), read_answer(ended.output).by_path
        self._told[root] = now
        for path in sorted({*before, *now}):
            if self.desk.name_of(bakery, path) is None and before.get(path, ()) != now.get(path, ()):
                self._send(bakery, path, now.get(path, ()))
                await asyncio.sleep(0)

    # ---- settings, and what goes on beside

    def set(self, value: Any) -> None:
        """Takes the settings over, and tells what of them cannot be understood."""
        self.settings = settings_of(value, self.read_order)
        for wrong in self.settings.wrong:
            self.window_show_message(lsp.ShowMessageParams(lsp.MessageType.Warning, wrong))

    def go_on(self, name: str, work: Any) -> None:
        """Starts what goes on beside; what goes on under the same name ends."""
        running = self._tasks.get(name)
        if running is not None:
            running.cancel()
        self._tasks[name] = asyncio.get_running_loop().create_task(calmly(self, work))


async def calmly(server: EditorServer, work: Any) -> None:
    """Does what goes on beside; a fault in it is written down."""
    try:
        await work
    except asyncio.CancelledError:
        raise
    except Exception as fault:
        say_calmly(server, fault)


def say_calmly(server: EditorServer, fault: Exception) -> None:
    """What ends a piece of work: of what a person can act on they are told, a fault of ours is written down and logged."""
    if isinstance(fault, Trouble):
        words = f"manchet: {fault.message}" + (f" ({fault.help})" if fault.help else "")
        server.window_show_message(lsp.ShowMessageParams(lsp.MessageType.Warning, words))
        return
    from manchet.workspace.fault_record import way_to_send

    words = f"a fault in manchet itself: {way_to_send(fault)}"
    server.window_log_message(lsp.LogMessageParams(lsp.MessageType.Error, words))


def calm(
    handler: Callable[Concatenate[EditorServer, P], T],
) -> Callable[Concatenate[EditorServer, P], T | None]:
    """A handler that never raises: it answers nothing where it cannot."""

    @wraps(handler)
    def answered(ls: EditorServer, /, *args: P.args, **kwargs: P.kwargs) -> T | None:
        try:
            return handler(ls, *args, **kwargs)
        except JsonRpcException:
            raise  # no, in so many words
        except Exception as fault:
            say_calmly(ls, fault)
            return None

    return answered


def settle() -> None:
    """What is loaded now stays: to look through it for garbage again and again would hold up strokes."""
    gc.collect()
    gc.freeze()
