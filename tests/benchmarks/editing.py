"""How long an editor waits for an answer among a thousand formulas, beside a server that does nothing but answer."""

from __future__ import annotations

import shutil
import statistics
import sys
import tempfile
import time
from argparse import Namespace
from collections.abc import Iterator
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))
from editor.client import Client
from generate import write

STROKES = 200
PAUSE = 0.02
"""Seconds between two strokes; a fast writer has some 0.1."""
PATH = "shelf-005/formula-00500.bake"
ECHO = """
from lsprotocol import types as lsp
from pygls.lsp.server import LanguageServer

server = LanguageServer("echo", "1", lsp.TextDocumentSyncKind.Full)


@server.feature(lsp.TEXT_DOCUMENT_DID_OPEN)
@server.feature(lsp.TEXT_DOCUMENT_DID_CHANGE)
def changed(ls, params):
    line = lsp.Range(lsp.Position(0, 0), lsp.Position(0, 1))
    told = [lsp.Diagnostic(line, "echo", code="echo")]
    document = params.text_document
    ls.text_document_publish_diagnostics(lsp.PublishDiagnosticsParams(document.uri, told, document.version))


server.start_io()
"""
"""A server of pygls alone: what the talk itself costs."""

LARDER = """\
larder Test
  mill white
    class         wheat flour
    also called   white flour of the mill
"""


def editing(_: Namespace) -> Iterator[tuple[str, float, str]]:
    """Strokes are typed into one of a thousand formulas and, in turn, to the echo; then everything else that an editor asks, once
    and again."""
    folder = Path(tempfile.mkdtemp(prefix="bakery-"))
    try:
        write(folder, 1000)
        (folder / "larder.bake").write_text(LARDER, encoding="utf-8")
        yield from _strokes(folder)
    finally:
        shutil.rmtree(folder)


def _strokes(folder: Path) -> Iterator[tuple[str, float, str]]:
    ours, echo = Client(folder), Client(folder, command=(sys.executable, "-c", ECHO))
    try:
        began = time.perf_counter()
        ours.start()
        yield "from start to an answer, ms", (time.perf_counter() - began) * 1000, ""
        echo.start()
        text = (folder / PATH).read_text(encoding="utf-8")
        yield "first opening of a file, ms", _taken(lambda: ours.open(PATH)), ""
        echo.open(PATH)
        _wait_for_the_folder(ours)
        spent = _processor(ours)
        mine, bare = [], []
        for number in range(STROKES):
            now = _typed(text, number)
            mine.append(_taken(lambda now=now: ours.type(PATH, now)))  # type: ignore[misc]
            bare.append(_taken(lambda now=now: echo.type(PATH, now)))  # type: ignore[misc]
            time.sleep(PAUSE)
        spent = _processor(ours) - spent
        yield f"a stroke to its reports, ms: median of {STROKES}", statistics.median(mine), "at most 15"
        yield "  nineteen in twenty", statistics.quantiles(mine, n=20)[-1], ""
        yield "  the worst", max(mine), "at most 50"
        yield "the bare echo, ms: median", statistics.median(bare), ""
        yield "  the worst", max(bare), ""
        yield "ours / echo, median", statistics.median(mine) / statistics.median(bare), ""
        yield "time of the processor for a stroke, ms", spent / STROKES, ""
        ours.type(PATH, text)
        yield from _questions(ours, text)
        yield "memory at its highest, MB", _highest(ours), "at most 100"
    finally:
        for one in (ours, echo):
            one.process.kill()
            one.process.wait()


def _questions(ours: Client, text: str) -> Iterator[tuple[str, float, str]]:
    rows = text.split("\n")
    line = next(number for number, row in enumerate(rows) if row.startswith("    salt"))
    here, document = ours.at(PATH, line, 6), {"textDocument": {"uri": ours.uri(PATH)}}
    whole = {"start": {"line": 0, "character": 0}, "end": {"line": len(rows), "character": 0}}
    asked = {
        "hover": here,
        "completion": here,
        "definition": here,
        "formatting": {**document, "options": {"tabSize": 2, "insertSpaces": True}},
        "inlayHint": {**document, "range": whole},
        "codeLens": document,
        "codeAction": {**document, "range": whole, "context": {"diagnostics": []}},
        "documentSymbol": document,
        "foldingRange": document,
        "semanticTokens/full": document,
    }
    for method, params in asked.items():
        first = _taken(lambda m=method, p=params: ours.ask(f"textDocument/{m}", p))  # type: ignore[misc]
        again = statistics.median(
            _taken(lambda m=method, p=params: ours.ask(f"textDocument/{m}", p))
            for _ in range(5)  # type: ignore[misc]
        )
        yield f"{method}, ms", again, f"{first:.1f} the first time"
    ours.open("larder.bake")
    flour = {**ours.at("larder.bake", 1, 4), "context": {"includeDeclaration": True}}
    yield "references of what nothing draws on, ms", _taken(lambda: ours.ask("textDocument/references", flour)), ""
    grown = LARDER + "\n  white flour\n    class         wheat flour\n"
    ours.type("larder.bake", grown)
    ours.reports(PATH)
    everywhere = {**ours.at("larder.bake", grown.count("\n") - 2, 4), "context": {"includeDeclaration": True}}
    found: list[int] = []
    taken = _taken(lambda: found.append(len(ours.ask("textDocument/references", everywhere))))
    yield f"references of what {found[0]} lines draw on, ms", taken, ""
    yield "search of the whole bakery, ms", _taken(lambda: ours.ask("workspace/symbol", {"query": "loaf 5"})), ""


def _typed(text: str, number: int) -> str:
    """A text after so many strokes: a step is typed letter by letter, over and over."""
    step = "\n    rest covered 20 min at 24 C"
    return text.rstrip("\n") + step[: number % len(step) + 1]


def _taken(work: object) -> float:
    """Milliseconds."""
    began = time.perf_counter()
    work()  # type: ignore[operator]
    return (time.perf_counter() - began) * 1000


def _wait_for_the_folder(ours: Client) -> None:
    """Until no process of the server's own is at work any more."""
    children = Path(f"/proc/{ours.process.pid}/task/{ours.process.pid}/children")
    time.sleep(2)
    while children.exists() and children.read_text().strip():
        time.sleep(0.5)


def _processor(ours: Client) -> float:
    """Milliseconds of the processor that the server has used."""
    fields = Path(f"/proc/{ours.process.pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) * 10


def _highest(ours: Client) -> float:
    lines = Path(f"/proc/{ours.process.pid}/status").read_text().split("\n")
    return next(int(line.split()[1]) for line in lines if line.startswith("VmHWM")) / 1024
