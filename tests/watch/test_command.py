"""The command itself, as a baker starts it: builds, builds again at a save, keeps the last good sheet, ends cleanly."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from manchet.intake.starter import starter

SECONDS = 30


class WatchProcess:
    """A `manchet watch` of its own, and what it has said so far."""

    def __init__(self, folder: Path, *words: str) -> None:
        environment = {**os.environ, "XDG_CACHE_HOME": str(folder / "cache"), "NO_COLOR": "1"}
        self.process = subprocess.Popen(
            [sys.executable, "-m", "manchet.cli.main", "watch", "--only", "html,sheet", *words],
            cwd=folder,
            env=environment,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
        )
        self.said = ""
        self.reader = threading.Thread(target=self._read, daemon=True)
        self.reader.start()

    def _read(self) -> None:
        assert self.process.stdout is not None
        for line in self.process.stdout:
            self.said += line

    def blocks(self, number: int) -> list[str]:
        """What was said, in blocks, once there are so many."""
        until = time.monotonic() + SECONDS
        while self.said.count("\n\n") < number and time.monotonic() < until:
            time.sleep(0.02)
        return self.said.strip("\n").split("\n\n")

    def end(self, number: int) -> int:
        self.process.send_signal(number)
        status = self.process.wait(SECONDS)
        self.reader.join(SECONDS)
        return status


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "tern.bake").write_text(starter("Tern loaf"))
    (tmp_path / "pilot.bake").write_text(starter("Pilot rye"))
    return tmp_path


@pytest.fixture
def running(folder: Path) -> Iterator[WatchProcess]:
    started = WatchProcess(folder)
    yield started
    if started.process.poll() is None:
        started.end(signal.SIGKILL)


def test_a_save_builds_only_what_it_reaches_and_a_mistake_keeps_the_last_good_sheet(
    folder: Path, running: WatchProcess
) -> None:
    assert "Tern loaf: sheet (html)" in running.blocks(1)[0]
    sheet = folder / "output" / "tern-loaf.sheet.html"
    other = folder / "output" / "pilot-rye.sheet.html"
    good, left = sheet.read_bytes(), other.stat().st_mtime_ns

    file = folder / "tern.bake"
    file.write_text(starter("Tern loaf").replace("1.9%", "2.1%"))
    second = running.blocks(2)[1].split("\n")
    assert second[0].endswith("  tern.bake") and second[1:] == ["  Tern loaf: sheet (html)"]
    better = sheet.read_bytes()
    assert better != good

    file.write_text(starter("Tern loaf").replace("water  ", "watre  "))
    third = running.blocks(3)[2]
    assert "error" in third and "Tern loaf: the last good sheet stays" in third
    assert sheet.read_bytes() == better

    file.write_text(starter("Tern loaf"))
    assert running.blocks(4)[3].split("\n")[1:] == ["  Tern loaf: sheet (html)"]
    assert sheet.read_bytes() == good
    assert other.stat().st_mtime_ns == left
    assert len(running.blocks(4)) == 4


def test_a_change_of_what_all_share_builds_what_comes_out_differently(folder: Path, running: WatchProcess) -> None:
    running.blocks(1)
    (folder / "kitchen.bake").write_text("kitchen Row\n  scale bench\n    reads 5 g\n")
    assert "Tern loaf: sheet (html)" in running.blocks(2)[1]
    assert "Pilot rye: sheet (html)" in running.blocks(2)[1]
    (folder / "kitchen.bake").write_text("kitchen Row # ours\n  scale bench\n    reads 5 g\n")
    assert "nothing to write; 2 formulas looked at" in running.blocks(3)[2]


def test_the_sheet_of_a_formula_that_is_gone_is_named(folder: Path, running: WatchProcess) -> None:
    running.blocks(1)
    (folder / "pilot.bake").unlink()
    said = running.blocks(2)[1]
    assert "Pilot rye is gone; its sheets still lie in output: pilot-rye.sheet.html" in said
    assert "Tern loaf is gone" not in said


SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><title>{}</title><path d="M1 1 L8 8" stroke="#000"/></svg>'


def with_picture(folder: Path) -> Path:
    """Tern loaf shows a picture on its first shaping; Pilot rye shows none."""
    text, picture = starter("Tern loaf"), folder / "pictures" / "cuts.svg"
    shape = next(line for line in text.splitlines() if line.strip().startswith("shape"))
    (folder / "tern.bake").write_text(text.replace(shape, f'{shape}\n      picture "pictures/cuts.svg"', 1))
    picture.parent.mkdir()
    picture.write_text(SVG.format("Two cuts"))
    return picture


@pytest.mark.parametrize("words", [(), ("tern.bake",), ("--poll",)], ids=["the folder", "a lone file", "polling"])
def test_a_picture_that_is_drawn_anew_is_printed_where_it_is_shown(folder: Path, words: tuple[str, ...]) -> None:
    picture, sheet = with_picture(folder), folder / "output" / "tern-loaf.sheet.html"
    running = WatchProcess(folder, *words)
    try:
        running.blocks(1)
        assert 'alt="Two cuts"' in sheet.read_text()
        picture.with_name("other.svg").write_text(SVG.format("Nobody shows it"))
        picture.write_text(SVG.format("Three cuts"))
        second = running.blocks(2)[1].split("\n")
        assert second[0].endswith("  pictures/cuts.svg") and second[1:] == ["  Tern loaf: sheet (html)"]
        assert 'alt="Three cuts"' in sheet.read_text()

        picture.unlink()
        third = running.blocks(3)[2]
        assert "pictures/cuts.svg (gone)" in third and "[picture-missing]" in third
        assert "Tern loaf: sheet (html)" in third and "Pilot rye" not in third

        picture.write_text(SVG.format("One cut"))
        assert running.blocks(4)[3].split("\n")[1:] == ["  Tern loaf: sheet (html)"]
        assert 'alt="One cut"' in sheet.read_text()
        assert len(running.blocks(4)) == 4
    finally:
        running.end(signal.SIGKILL)


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_it_ends_cleanly(running: WatchProcess, number: int) -> None:
    running.blocks(1)
    assert running.end(number) == 0
    assert running.said.endswith("stopped\n")
    assert "Traceback" not in running.said
