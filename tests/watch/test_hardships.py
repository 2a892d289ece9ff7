"""What happens to a watch that goes on for weeks: folders go and come back, processes are killed, odd files are saved."""

from __future__ import annotations

import os
import shutil
import signal
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from watch.test_command import SECONDS, SVG, WatchProcess, with_picture

from manchet.intake.starter import starter


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """The bakery, in a folder of its own, so that it can be taken away."""
    bakery = tmp_path / "bakery"
    fill(bakery)
    return bakery


@pytest.fixture
def running(folder: Path) -> Iterator[WatchProcess]:
    started = WatchProcess(folder)
    yield started
    if started.process.poll() is None:
        started.end(signal.SIGKILL)


def fill(bakery: Path) -> None:
    bakery.mkdir(exist_ok=True)
    (bakery / "tern.bake").write_text(starter("Tern loaf"))
    (bakery / "pilot.bake").write_text(starter("Pilot rye"))


def there(*files: Path) -> bool:
    until = time.monotonic() + SECONDS
    while not all(file.exists() for file in files) and time.monotonic() < until:
        time.sleep(0.05)
    return all(file.exists() for file in files)


def save(folder: Path, salt: str) -> None:
    (folder / "tern.bake").write_text(starter("Tern loaf").replace("1.9%", salt))


def ends_well(running: WatchProcess) -> None:
    assert running.process.poll() is None, running.said
    assert running.end(signal.SIGTERM) == 0
    assert "Traceback" not in running.said


def test_an_output_folder_that_is_taken_away_is_made_again_with_all_its_sheets(
    folder: Path, running: WatchProcess
) -> None:
    running.blocks(1)
    shutil.rmtree(folder / "output")
    save(folder, "2.1%")
    assert there(folder / "output/tern-loaf.sheet.html", folder / "output/pilot-rye.sheet.html")
    ends_well(running)


def test_a_file_in_the_place_of_the_output_folder_is_told_of(folder: Path, running: WatchProcess) -> None:
    running.blocks(1)
    output = folder / "output"
    shutil.rmtree(output)
    output.write_text("mine")
    save(folder, "2.1%")
    assert "output is a file, so nothing can be written into it" in running.blocks(2)[1]
    assert output.read_text() == "mine"
    output.unlink()
    save(folder, "2.2%")
    assert there(output / "tern-loaf.sheet.html", output / "pilot-rye.sheet.html")
    ends_well(running)


def test_a_bakery_that_is_deleted_and_made_anew_is_watched_on(folder: Path, running: WatchProcess) -> None:
    running.blocks(1)
    shutil.rmtree(folder)
    said = running.blocks(2)[1]
    assert "tern.bake (gone)" in said and "no longer exists" in said
    fill(folder)
    assert there(folder / "output/tern-loaf.sheet.html", folder / "output/pilot-rye.sheet.html")
    (folder / "output/tern-loaf.sheet.html").unlink()
    save(folder, "2.1%")
    assert there(folder / "output/tern-loaf.sheet.html")
    ends_well(running)


@pytest.mark.skipif(not os.path.isdir("/proc"), reason="children are found in /proc")
def test_a_printing_process_that_is_killed_is_replaced(folder: Path) -> None:
    running = WatchProcess(folder, "--only", "pdf,sheet", "pilot.bake")
    try:
        running.blocks(1)
        page = folder / "output/pilot-rye.sheet.pdf"
        for at, salt in enumerate(("2.1%", "2.2%"), 2):
            before = page.read_bytes()
            killed = [child for child in children(running.process.pid) if "spawn_main" in command_of(child)]
            assert killed
            for child in killed:
                os.kill(child, signal.SIGKILL)
            (folder / "pilot.bake").write_text(starter("Pilot rye").replace("1.9%", salt))
            assert "Pilot rye: sheet (pdf)" in running.blocks(at)[at - 1]
            assert page.read_bytes() != before
        ends_well(running)
    finally:
        running.end(signal.SIGKILL)


def children(process: int) -> list[int]:
    return [int(one) for one in Path(f"/proc/{process}/task/{process}/children").read_text().split()]


def command_of(process: int) -> str:
    return Path(f"/proc/{process}/cmdline").read_bytes().decode()


def test_an_odd_picture_is_told_of_and_the_next_is_shown(folder: Path) -> None:
    picture = with_picture(folder)
    running = WatchProcess(folder)
    try:
        running.blocks(1)
        picture.write_text(SVG.format("Odd").replace("0 0", "a b"))
        assert "[picture-damaged]" in running.blocks(2)[1]
        picture.write_text(SVG.format("Three cuts"))
        assert "Tern loaf: sheet (html)" in running.blocks(3)[2]
        ends_well(running)
    finally:
        running.end(signal.SIGKILL)


def test_a_fault_of_our_own_is_told_of_and_the_watch_goes_on(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Whatever breaks off, outside of any one formula too."""
    from manchet.cli import watch
    from manchet.cli.arguments import parser_for
    from manchet.workspace import building
    from manchet.workspace.saves import SavedFiles, Watch

    monkeypatch.chdir(folder)
    monkeypatch.setenv("XDG_CACHE_HOME", str(folder.parent / "cache"))
    saves = iter([SavedFiles(("tern.bake",), ()), SavedFiles(("tern.bake",), ()), None])
    monkeypatch.setattr(Watch, "wait", lambda _: next(saves))
    sound, calls = building.renderings, []

    def breaks_off_twice(*given: object) -> object:
        calls.append(1)
        if len(calls) < 3:
            raise IndexError("a secret")
        return sound(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(building, "renderings", breaks_off_twice)
    assert watch.run(parser_for("watch", watch).parse_args(["--only", "html,sheet"])) == 0
    said = capsys.readouterr().out
    assert said.count("something went wrong inside manchet itself") == 2 and "a secret" not in said
    assert (folder / "output/tern-loaf.sheet.html").exists()
