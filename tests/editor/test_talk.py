"""The talk itself: how it begins, in which units it counts, and how it ends."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path

import pytest
from editor.client import ABLE, COMMAND, client
from editor.houses import LOAF, write_house

from manchet.cli.editor import order_in_words
from manchet.editor import session
from manchet.syntax import line


def test_columns_are_counted_in_utf_16(tmp_path: Path) -> None:
    """A character beyond the basic plane takes two units, before the line and on it."""
    text = "# 🥖 𝒶\n" + LOAF.replace("white flour ", '"🥐 𝒶 flower" ')
    with client(write_house(tmp_path)) as editor:
        (report,) = editor.open("breads/plain.bake", text)
        start, end = report["range"]["start"], report["range"]["end"]
        line = text.split("\n")[start["line"]]
        marked = line.encode("utf-16-le")[2 * start["character"] : 2 * end["character"]].decode("utf-16-le")
        assert marked == '"🥐 𝒶 flower"'


def test_columns_are_counted_as_the_client_wishes(tmp_path: Path) -> None:
    text = LOAF.replace("white flour ", '"🥐 flower" ')
    able = {**ABLE, "general": {"positionEncodings": ["utf-32", "utf-16"]}}
    with client(write_house(tmp_path), able=able) as editor:
        (report,) = editor.open("breads/plain.bake", text)
        start, end = report["range"]["start"], report["range"]["end"]
        assert text.split("\n")[start["line"]][start["character"] : end["character"]] == '"🥐 flower"'


def test_lines_end_where_the_protocol_ends_them(tmp_path: Path) -> None:
    """And at no other character, whatever some libraries take for the end of a line."""
    text = "# a\u2028b\x0bc\x0cd\x85e\r\n\r" + LOAF.replace("white flour ", "whit flower ")
    with client(write_house(tmp_path)) as editor:
        reports = editor.open("breads/plain.bake", text)
        unknown = [one for one in reports if one["code"] == "unknown-ingredient"]
        assert [one["range"]["start"]["line"] for one in unknown] == [7]


def test_a_half_typed_file_is_answered(tmp_path: Path) -> None:
    """Every beginning of a file, a character more each time, and what follows it."""
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake", "")
        for end in range(0, len(LOAF), 7):
            editor.type("breads/plain.bake", LOAF[:end])
        for odd in ("\ud83e", "\0", "\ufeff" + LOAF, "\t\t\t", '"', "formula", "  " * 100 + "x", "\r\r\n\n"):
            editor.type("breads/plain.bake", odd)
        assert editor.type("breads/plain.bake", LOAF) == []
        assert [one for one in editor.asked if one["method"] == "window/logMessage"] == []


def test_no_handler_raises(monkeypatch: pytest.MonkeyPatch) -> None:
    """A client that is told of an error for a stroke sends no more."""
    told: list[str] = []
    monkeypatch.setattr(session, "say_calmly", lambda _, fault: told.append(str(fault)))

    @session.calm
    def broken(ls: session.EditorServer) -> None:
        raise ValueError("within")

    broken(session.EditorServer(order_in_words))
    assert told == ["within"]


def test_a_day_of_typing_is_not_remembered() -> None:
    for number in range(2000):
        line.read_line(f"    rest covered {number} min", "stage")
    line.forget_lines()
    assert line._read_short.cache_info().currsize == 0
    assert line.read_line("rest covered 20 min", "stage").trouble is None


def test_it_ends_when_it_is_asked_to(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake")
        assert editor.close() == 0
        assert editor.process.stderr is not None
        assert editor.process.stderr.read() == b""


def test_it_ends_when_the_editor_is_gone(tmp_path: Path) -> None:
    with client(write_house(tmp_path)) as editor:
        editor.open("breads/plain.bake")
        assert editor.process.stdin is not None
        editor.process.stdin.close()
        assert editor.process.wait(120) == 0
        assert editor.process.stderr is not None
        assert editor.process.stderr.read() == b""


@pytest.mark.parametrize("politely", [True, False])
def test_what_it_started_ends_with_it(tmp_path: Path, politely: bool) -> None:
    """The look at the whole folder, too, in the middle of it."""
    files = {f"{number}.bake": LOAF.replace("Plain loaf", f"Loaf {number}") for number in range(400)}
    with client(write_house(tmp_path, files)) as editor:
        editor.open("1.bake")
        started = Path(f"/proc/{editor.process.pid}/task/{editor.process.pid}/children")
        until = time.monotonic() + 20
        while time.monotonic() < until and not started.read_text().strip():
            time.sleep(0.02)
        (child,) = started.read_text().split()
        if politely:
            assert editor.close() == 0
        else:
            assert editor.process.stdin is not None
            editor.process.stdin.close()
            assert editor.process.wait(120) == 0
        assert editor.process.stderr is not None
        assert editor.process.stderr.read() == b""
        assert not Path(f"/proc/{child}").exists()


def test_without_pygls_it_says_what_to_install() -> None:
    probe = (
        "import sys\n"
        "sys.modules['pygls'] = None\n"
        "sys.argv = ['manchet', 'editor']\n"
        "from manchet.cli.main import run\n"
        "sys.exit(run())\n"
    )
    done = subprocess.run([sys.executable, "-c", probe], capture_output=True, text=True, stdin=subprocess.DEVNULL)
    assert done.returncode == 4
    assert (
        done.stderr
        == "manchet: an editor cannot be served here: pygls is not installed\n  pip install 'manchet[editor]'\n"
    )


def test_a_person_who_types_the_command_is_told_whose_it_is() -> None:
    ours, theirs = os.openpty()
    done = subprocess.run(COMMAND, stdin=theirs, capture_output=True, text=True, timeout=60)
    os.close(ours)
    os.close(theirs)
    assert done.returncode == 2
    assert done.stderr.startswith("manchet: this is for an editor to start, not for a person\n")
