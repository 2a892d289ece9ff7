"""What is written to a terminal: no wider than it is, nothing that hides, and no remarks of a library."""

from __future__ import annotations

import logging
import os
import pty
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import manchet, scene

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.text import COLOURED, full, wrap
from manchet.intake.starter import starter
from manchet.workspace.bakery import Bakery


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[Path]:
    with scene(tmp_path, {}):
        Path("tin.bake").write_text(starter("Saturday tin"))
        yield tmp_path


def on_a_terminal(*words: str, columns: int) -> str:
    """What the command writes to a terminal of that width."""
    import fcntl
    import struct
    import termios

    ours, theirs = pty.openpty()
    fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", 24, columns, 0, 0))
    command = [sys.executable, "-m", "manchet.cli.main", *words]
    with subprocess.Popen(command, stdout=theirs, stderr=theirs, env={**os.environ, "NO_COLOR": "1"}):
        os.close(theirs)
        said = b""
        try:
            while part := os.read(ours, 65536):
                said += part
        except OSError:  # the other end is closed
            pass
    os.close(ours)
    return said.decode().replace("\r\n", "\n")


def test_a_long_sentence_is_broken_at_spaces_and_a_name_never() -> None:
    said = wrap("a.bake:1:1: error: one two three [a-name-in-brackets-that-is-long]", 24, "  ")
    assert said.split("\n") == ["a.bake:1:1: error: one", "  two three", "  [a-name-in-brackets-that-is-long]"]


def test_colours_take_no_room() -> None:
    place = Place("a.bake", 1, 1, 1, 2, "x")
    report = Diagnostic("odd", Severity.ERROR, "is 20 wide", place, "short")
    plain, coloured = full(report, columns=45), full(report, COLOURED, columns=45)
    assert plain.count("\n") == coloured.count("\n")
    assert re.sub("\x1b\\[[0-9;]*m", "", coloured) == plain


def test_a_tab_in_a_quoted_line_is_one_arrow_and_the_caret_stands_under_what_is_meant() -> None:
    _, quoted, caret, *_ = full(
        Diagnostic("odd", Severity.ERROR, "odd", Place("a.bake", 1, 3, 1, 7, "\t\tsalt 2%"))
    ).split("\n")
    assert quoted == "    1 | →→salt 2%" and caret == "      |   ^^^^"


@pytest.mark.parametrize("words", [("explain", "salt-missing"), ("build", "--help"), ("new", "--help"), ("explain",)])
def test_what_is_explained_is_as_wide_as_the_terminal(words: tuple[str, ...]) -> None:
    prose = [line for line in on_a_terminal(*words, columns=80).split("\n") if not line.startswith("  manchet ")]
    assert max(map(len, prose)) <= 80


def test_into_a_pipe_nothing_is_broken() -> None:
    assert max(map(len, manchet(["explain"]).out.split("\n"))) > 80


def test_a_formula_that_is_not_printed_for_no_said_reason_ends_with_one(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Bakery, "formulas", property(lambda bakery: (), lambda bakery, formulas: None), raising=False)
    ran = manchet(["build", "Saturday tin", "--only", "html"])
    assert ran.status == 1 and "Saturday tin was not printed: no mistake was found in it" in ran.err


def test_a_watch_that_ends_as_it_starts_says_nothing(capfd: pytest.CaptureFixture[str]) -> None:
    from manchet.workspace.folder import Premises
    from manchet.workspace.saves import Watch

    with Watch(Premises(os.getcwd(), whole=False)):
        logging.getLogger("watchdog.observers.inotify").error("called when the thread is inactive")
    assert capfd.readouterr().err == ""
