"""A transcript: files, command lines, and what each writes and how it ends. A case is a text that a person can read.

    What the case shows, in a sentence.

    === file breads/tern.bake
    formula Tern loaf
    …
    === run check breads
    === out
    nothing to report; 1 formula in 1 file
    === err
    === status 0

Other ways to set the scene: `=== bytes NAME` (Python escapes; `\\udcff` is the single byte ff), `=== big NAME`
(a line and, after ` * `, how often), `=== folder NAME`, `=== link NAME -> TARGET`, `=== environment NAME=VALUE`,
`=== input` (what stands on standard input), `=== remove NAME`. After a run, `=== has NAME` shows a file that was
written, `=== hasn't NAME` that there is none. What is empty may be left out. Every case begins in a new folder.
"""

from __future__ import annotations

import contextlib
import io
import os
import shlex
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple
from unittest.mock import patch

SIGN = "=== "


class Passage(NamedTuple):
    word: str
    rest: str
    body: str


class CommandRun(NamedTuple):
    out: str
    err: str
    status: int


class StandardInput(io.StringIO):
    """Standard input, with the bytes behind it."""

    @property
    def buffer(self) -> io.BytesIO:
        return io.BytesIO(self.getvalue().encode())


def parts(text: str) -> tuple[str, tuple[Passage, ...]]:
    """The sentence at the top, and the parts in order."""
    first, *rest = ("\n" + text).split("\n" + SIGN)
    result = []
    for one in rest:
        head, _, body = one.partition("\n")
        word, _, value = head.partition(" ")
        result.append(Passage(word, value.strip(), body + "\n" if body and not body.endswith("\n") else body))
    return first.strip(), tuple(result)


def manchet(words: list[str], stdin: str = "") -> CommandRun:
    """Runs the command in this process, as the shell would."""
    from manchet.cli.main import run

    out, err = io.StringIO(), io.StringIO()
    with (
        contextlib.redirect_stdout(out),
        contextlib.redirect_stderr(err),
        patch.object(sys, "argv", ["manchet", *words]),
        patch.object(sys, "stdin", StandardInput(stdin)),
    ):
        status = run()
    return CommandRun(out.getvalue(), err.getvalue(), status)


@contextlib.contextmanager
def scene(folder: Path, environment: dict[str, str]) -> Iterator[None]:
    """A new folder, an empty home and cache, and nothing of this machine's own settings."""
    home = folder / "home"
    work = folder / "bench"
    home.mkdir(parents=True)
    work.mkdir()
    before = os.getcwd()
    kept = {
        name: os.environ[name] for name in ("PATH", "LANG", "SYSTEMROOT", "TMPDIR", "PYTHONPATH") if name in os.environ
    }
    fresh = {**kept, "HOME": str(home), "XDG_CACHE_HOME": str(home / "cache"), **environment}
    with patch.dict(os.environ, fresh, clear=True):
        os.chdir(work)
        try:
            yield
        finally:
            os.chdir(before)


def replay(text: str, folder: Path) -> str:
    """The transcript as it comes out now: equal to `text` if all is as it should be."""
    title, found = parts(text)
    environment = dict(part.rest.split("=", 1) for part in found if part.word == "environment")
    written = [title, ""]
    stdin = ""
    last = CommandRun("", "", 0)
    with scene(folder, environment):
        for part in found:
            match part.word:
                case "file" | "bytes" | "big" | "folder" | "link" | "remove" | "environment":
                    _set(part)
                    written.append(_as_written(part))
                case "input":
                    stdin = part.body
                    written.append(_as_written(part))
                case "run":
                    last = manchet(shlex.split(part.rest), stdin)
                    stdin = ""
                    written.append(_as_written(part._replace(body="")))
                    for word, said in (("out", last.out), ("err", last.err)):
                        if said:
                            said = said.replace(str(folder.resolve()), "HERE")
                            written.append(_as_written(Passage(word, "", said)))
                    assert last.status != 3, f"manchet {part.rest}: {last.err}"
                    written.append(f"{SIGN}status {last.status}")
                case "has":
                    path = Path(part.rest)
                    body = path.read_text("utf-8") if path.is_file() else "(there is no such file)\n"
                    written.append(_as_written(part._replace(body=body)))
                case "hasn't":
                    there = os.path.lexists(part.rest)
                    written.append(f"{SIGN}{'is there after all:' if there else part.word} {part.rest}")
                case "out" | "err" | "status":
                    continue
                case _:
                    raise ValueError(f"no part of a transcript begins with {part.word!r}")
    return "\n".join(written).rstrip("\n") + "\n"


def _set(part: Passage) -> None:
    path = Path(part.rest.split(" -> ")[0])
    path.parent.mkdir(parents=True, exist_ok=True)
    match part.word:
        case "file":
            path.write_text(part.body, "utf-8", newline="\n")
        case "bytes":
            path.write_bytes(
                part.body.rstrip("\n").encode("ascii").decode("unicode_escape").encode("utf-8", "surrogateescape")
            )
        case "big":
            line, _, times = part.body.rstrip("\n").rpartition(" * ")
            path.write_text(line.encode("ascii").decode("unicode_escape") * int(times), "utf-8", newline="\n")
        case "folder":
            path.mkdir(parents=True, exist_ok=True)
        case "link":
            path.symlink_to(part.rest.split(" -> ")[1])
        case "remove":
            path.unlink()


def _as_written(part: Passage) -> str:
    return (
        f"{SIGN}{part.word} {part.rest}".rstrip() + "\n" + part.body.rstrip("\n")
        if part.body
        else f"{SIGN}{part.word} {part.rest}".rstrip()
    )
