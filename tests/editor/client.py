"""A client of the language server that speaks its protocol over a pipe, message by message, as an editor does."""

from __future__ import annotations

import json
import queue
import subprocess
import sys
import threading
import time
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

PATIENCE = 20
"""Seconds after which an answer will not come; no test waits so long."""

ABLE: dict[str, Any] = {
    "general": {"positionEncodings": ["utf-16"]},
    "textDocument": {"codeAction": {"resolveSupport": {"properties": ["edit"]}}},
    "window": {"showDocument": {"support": True}},
    "workspace": {"configuration": True, "didChangeWatchedFiles": {"dynamicRegistration": True}},
}
COMMAND = (sys.executable, "-m", "manchet.cli.main", "editor")


class Client:
    """`settings` is what it says when it is asked for the section `manchet`."""

    def __init__(
        self,
        folder: Path | None,
        settings: Any = None,
        able: Mapping[str, Any] = ABLE,
        command: Sequence[str] = COMMAND,
    ) -> None:
        self.folder = folder
        self.settings = settings
        self.able = able
        self.process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        self.asked: list[dict[str, Any]] = []
        """What the server has asked or told, but for reports."""
        self._answers: dict[int, queue.Queue[dict[str, Any]]] = {}
        self._reports: queue.Queue[dict[str, Any]] = queue.Queue()
        self._last: dict[str, dict[str, Any]] = {}
        self._number = 0
        self._versions: dict[str, int] = {}
        self._sending = threading.Lock()
        threading.Thread(target=self._listen, daemon=True).start()

    # ---- messages

    def send(self, message: Mapping[str, Any]) -> None:
        body = json.dumps({"jsonrpc": "2.0", **message}).encode()
        assert self.process.stdin is not None
        with self._sending:
            self.process.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
            self.process.stdin.flush()

    def notify(self, method: str, params: Any) -> None:
        self.send({"method": method, "params": params})

    def ask(self, method: str, params: Any) -> Any:
        """The result; raises `AssertionError` with the server's words where it refuses."""
        self._number += 1
        answers = self._answers[self._number] = queue.Queue()
        self.send({"id": self._number, "method": method, "params": params})
        answer = answers.get(timeout=PATIENCE)
        assert "error" not in answer, answer["error"]["message"]
        return answer["result"]

    def _listen(self) -> None:
        output = self.process.stdout
        assert output is not None
        while True:
            length = 0
            while (line := output.readline()).strip():
                if line.lower().startswith(b"content-length:"):
                    length = int(line.split(b":")[1])
            if not length:
                return
            message = json.loads(output.read(length))
            if "method" not in message:
                self._answers[message["id"]].put(message)
            elif message["method"] == "textDocument/publishDiagnostics":
                self._reports.put(message["params"])
            else:
                self.asked.append(message)
                if "id" in message:
                    self.send({"id": message["id"], "result": self._reply(message["method"])})

    def _reply(self, method: str) -> Any:
        return [self.settings] if method == "workspace/configuration" else {"success": True}

    # ---- what an editor does

    def uri(self, path: str) -> str:
        return (self.folder / path).as_uri() if self.folder is not None else f"untitled:{path}"

    def start(self) -> dict[str, Any]:
        folders = None if self.folder is None else [{"uri": self.folder.as_uri(), "name": "bakery"}]
        able = self.ask(
            "initialize", {"processId": None, "capabilities": self.able, "rootUri": None, "workspaceFolders": folders}
        )
        self.notify("initialized", {})
        return dict(able["capabilities"])

    def open(self, path: str, text: str | None = None) -> list[dict[str, Any]]:
        """Opens a file, with what is on the disk unless another text is given, and waits for its reports."""
        if text is None:
            assert self.folder is not None
            text = (self.folder / path).read_bytes().decode()
        self._versions[path] = 1
        item = {"uri": self.uri(path), "languageId": "bake", "version": 1, "text": text}
        self.notify("textDocument/didOpen", {"textDocument": item})
        return self.reports(path)

    def type(self, path: str, text: str, wait: bool = True) -> list[dict[str, Any]]:
        """The file has this text from now on."""
        self._versions[path] += 1
        document = {"uri": self.uri(path), "version": self._versions[path]}
        self.notify("textDocument/didChange", {"textDocument": document, "contentChanges": [{"text": text}]})
        return self.reports(path) if wait else []

    def reports(self, path: str) -> list[dict[str, Any]]:
        """Those on the newest text of an open file."""
        while True:
            last = self._last.get(self.uri(path), {})
            if last.get("version") == self._versions[path]:
                return list(last["diagnostics"])
            self._next()

    def reports_like(self, path: str, names: list[str]) -> list[dict[str, Any]]:
        """Waits until the reports on a file have these names."""
        while sorted(one["code"] for one in self._last.get(self.uri(path), {}).get("diagnostics", [])) != sorted(names):
            self._next()
        return list(self._last[self.uri(path)]["diagnostics"])

    def _next(self) -> None:
        told = self._reports.get(timeout=PATIENCE)
        self._last[told["uri"]] = told

    def told(self, method: str) -> Any:
        """Waits until the server asks or tells this, and gives it."""
        for _ in range(PATIENCE * 20):
            for one in self.asked:
                if one["method"] == method:
                    return one["params"]
            time.sleep(0.05)
        raise AssertionError(f"{method} does not come")

    def at(self, path: str, line: int, character: int) -> dict[str, Any]:
        """A document and a position in it, as most requests want it."""
        return {"textDocument": {"uri": self.uri(path)}, "position": {"line": line, "character": character}}

    def close(self) -> int:
        """Ends the talk politely; the exit status."""
        self.ask("shutdown", None)
        self.notify("exit", None)
        return self.process.wait(PATIENCE)


@contextmanager
def client(folder: Path | None, settings: Any = None, able: Mapping[str, Any] = ABLE) -> Iterator[Client]:
    """A client that has introduced itself. What it started has ended afterwards."""
    one = Client(folder, settings, able)
    try:
        one.start()
        yield one
    finally:
        one.process.kill()
        one.process.wait()
        for stream in (one.process.stdin, one.process.stdout, one.process.stderr):
            assert stream is not None
            stream.close()
