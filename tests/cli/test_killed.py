"""A build that is killed leaves no process behind, no torn sheet, and nothing that the next build does not clear away."""

from __future__ import annotations

import errno
import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF

from manchet.workspace import writing
from manchet.workspace.trouble import Blocked

MANCHET = [sys.executable, "-m", "manchet.cli.main"]
STATUS = {signal.SIGTERM: 143, signal.SIGHUP: 129, signal.SIGKILL: -9}


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[None]:
    with scene(tmp_path, {}):
        for number in range(40):
            Path(f"{number}.bake").write_text(PLAIN_LOAF.replace("Plain loaf", f"Loaf {number}"))
        yield


def group_of(process: int) -> list[int]:
    """The processes of a group that still run."""
    found = []
    for entry in Path("/proc").iterdir():
        try:
            fields = (entry / "stat").read_text().rpartition(")")[2].split() if entry.name.isdigit() else []
        except OSError:
            continue
        if fields and int(fields[2]) == process and fields[0] != "Z":
            found.append(int(entry.name))
    return found


@pytest.mark.skipif(not os.path.isdir("/proc"), reason="processes are found in /proc")
@pytest.mark.parametrize("number", STATUS, ids=lambda number: number.name)
def test_a_build_that_is_stopped_leaves_no_process_and_no_torn_sheet(number: signal.Signals) -> None:
    process = subprocess.Popen(
        [*MANCHET, "build", "--only", "sheet", "--jobs", "2"],
        stdout=subprocess.PIPE, stderr=subprocess.PIPE, start_new_session=True,
    )  # fmt: skip
    until = time.monotonic() + 60
    while len(group_of(process.pid)) < 3 and time.monotonic() < until:
        time.sleep(0.02)
    time.sleep(0.5)
    process.send_signal(number)
    _, said = process.communicate(timeout=60)
    assert process.returncode == STATUS[number]
    assert b"Traceback" not in said and (number == signal.SIGKILL or b"stopped" in said)
    until = time.monotonic() + 20
    while group_of(process.pid) and time.monotonic() < until:
        time.sleep(0.05)
    assert group_of(process.pid) == []
    for sheet in Path("output").glob("*.html"):
        assert sheet.read_text().rstrip().endswith("</html>")


def test_leftovers_of_a_killed_rename_are_cleared_by_the_next_build() -> None:
    gone = subprocess.Popen([sys.executable, "-c", ""])
    gone.wait()
    Path("output").mkdir()
    dead = Path(f"output/.loaf-1.sheet.html.{gone.pid}.new")
    alive = Path(f"output/.loaf-2.sheet.html.{os.getppid()}.new")
    foreign = Path("output/.notes.txt.1.new")
    for file in (dead, alive, foreign):
        file.write_text("half")
    assert manchet(["build", "Loaf 1", "--only", "html,sheet"]).status == 0
    assert not dead.exists() and alive.exists() and foreign.exists()


def test_what_is_moved_into_place_is_on_the_disk_first(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    done: list[str] = []
    sync, move = os.fsync, os.replace
    monkeypatch.setattr(
        os,
        "fsync",
        lambda handle: (done.append("folder" if os.path.isdir(f"/proc/self/fd/{handle}") else "file"), sync(handle)),
    )
    monkeypatch.setattr(os, "replace", lambda *names: (done.append("move"), move(*names)))
    assert writing.write(str(tmp_path / "a.html"), b"whole")
    assert done == ["file", "move", "folder"]
    done.clear()
    assert not writing.write(str(tmp_path / "a.html"), b"whole")
    assert done == []


@pytest.mark.parametrize("at", ["fsync", "replace", "open"])
def test_killed_or_full_at_any_moment_the_good_sheet_stays(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, at: str
) -> None:
    sheet = tmp_path / "a.html"
    writing.write(str(sheet), b"good")
    sound = getattr(os, at)

    def fails(path: object, *more: object, **named: object) -> object:
        if at == "open" and not str(path).endswith(".new"):
            return sound(path, *more, **named)
        raise OSError(errno.ENOSPC, "full")

    monkeypatch.setattr(os, at, fails)
    with pytest.raises(Blocked, match="the disk is full"):
        writing.write(str(sheet), b"half")
    assert sheet.read_bytes() == b"good" and sorted(os.listdir(tmp_path)) == ["a.html", "bench", "home"]


def test_a_clock_set_back_hides_no_change() -> None:
    """A file is told by its bytes, never by its date."""
    assert manchet(["check", "0.bake"]).status == 0
    before = os.stat("0.bake")
    Path("0.bake").write_text(PLAIN_LOAF.replace("Plain loaf", "Loaf 0").replace("salt   ", "sault  "))
    os.utime("0.bake", ns=(before.st_atime_ns, before.st_mtime_ns - 10**15))
    assert "sault" in manchet(["check", "0.bake"]).out


def test_two_users_share_no_cache(monkeypatch: pytest.MonkeyPatch) -> None:
    assert manchet(["check"]).status == 0
    (store,) = Path("../home/cache/manchet").glob("check-*")
    planted = store.read_bytes()
    monkeypatch.setattr(os, "geteuid", lambda: 12345)
    assert manchet(["check"]).status == 0
    assert store.read_bytes() == planted


KILLED_AT = """
import os, signal, sys
from manchet.cli.main import run
def killed(*_): os.kill(os.getpid(), signal.SIGKILL)
os.{at} = killed
sys.argv = ["manchet", "build", "Loaf 1", "--only", "html,sheet", "--jobs", "1"]
run()
"""


@pytest.mark.parametrize("at", ["replace", "fsync"])
def test_killed_at_the_moment_of_renaming(at: str) -> None:
    build = ["build", "Loaf 1", "--only", "html,sheet"]
    assert manchet(build).status == 0
    sheet = Path("output/loaf-1.sheet.html")
    good = sheet.read_bytes()
    Path("1.bake").write_text(
        PLAIN_LOAF.replace("Plain loaf", "Loaf 1").replace("salt                   2%", "salt  1.9%")
    )
    ran = subprocess.run([sys.executable, "-c", KILLED_AT.format(at=at)], capture_output=True, check=False)
    assert ran.returncode == -signal.SIGKILL and sheet.read_bytes() == good
    assert [name for name in os.listdir("output") if name.endswith(".new")], "it was killed in between"
    assert manchet(build).status == 0
    assert os.listdir("output") == [sheet.name] and sheet.read_bytes() != good
