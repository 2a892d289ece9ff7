"""However the command ends, it ends calmly: its own faults, a full disk, no Pango, Ctrl-C, a reader that went away."""

from __future__ import annotations

import errno
import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import CommandRun, manchet, scene

from manchet.intake.starter import starter

MANCHET = [sys.executable, "-m", "manchet.cli.main"]


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[Path]:
    with scene(tmp_path, {}):
        Path("tin.bake").write_text(starter("Saturday tin"))
        yield tmp_path


def calm(ran: CommandRun, status: int) -> str:
    assert ran.status == status
    assert "Traceback" not in ran.out + ran.err
    return ran.err


def test_a_fault_of_our_own_is_one_calm_line_and_a_file(monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.workspace import checking

    def faulty(*_: object) -> None:
        raise ZeroDivisionError("a secret")

    monkeypatch.setattr(checking, "look", faulty)
    said = calm(manchet(["check"]), 3)
    assert "inside manchet itself" in said and "a secret" not in said
    path = said.split(" is recorded in ")[1].split(":")[0]
    written = Path(path).read_text()
    assert "ZeroDivisionError: a secret" in written and "in look" not in said
    assert os.stat(path).st_mode & 0o777 & ~0o644 == 0


def test_a_fault_that_cannot_be_written_down_is_still_calm(monkeypatch: pytest.MonkeyPatch) -> None:
    import tempfile

    from manchet.workspace import checking

    def faulty(*_: object) -> None:
        raise RecursionError

    monkeypatch.setattr(checking, "look", faulty)
    monkeypatch.setattr(tempfile, "tempdir", "/proc/no such place")
    monkeypatch.setenv("MANCHET_CACHE", "off")
    assert "RecursionError" in calm(manchet(["check"]), 3)


def test_a_full_disk_is_said_and_nothing_is_left_behind(monkeypatch: pytest.MonkeyPatch) -> None:
    calm(manchet(["build", "--only", "html,sheet"]), 0)
    sheet = Path("output/saturday-tin.sheet.html")
    good = sheet.read_bytes()
    Path("tin.bake").write_text(starter("Saturday tin").replace("1.9%", "2%"))

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    assert "the disk is full" in calm(manchet(["build", "--only", "html,sheet"]), 1)
    assert sheet.read_bytes() == good
    assert [path.name for path in Path("output").iterdir()] == [sheet.name]


def test_without_pango_html_and_json_are_written_and_one_line_says_what_to_install(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    from manchet.sheets.page import pdf

    monkeypatch.setattr(pdf, "_engine", pdf.NoPdf("cannot load library libpango-1.0-0", "apt install libpango-1.0-0"))
    said = calm(manchet(["build", "--only", "sheet"]), 4)
    assert said.count("apt install libpango-1.0-0") == 1
    assert sorted(path.suffix for path in Path("output").iterdir()) == [".html", ".json"]
    doctor = manchet(["doctor"])
    assert doctor.status == 4
    assert "missing  pango" in doctor.out and "apt install libpango-1.0-0" in doctor.out


def test_a_well_machine_is_told_so() -> None:
    ran = manchet(["doctor"])
    assert calm(ran, 0) == ""
    assert "missing" not in ran.out and ran.out.endswith("everything is there\n")


def test_ctrl_c_is_calm(monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.workspace import checking

    def stopped(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(checking, "look", stopped)
    calm(manchet(["check"]), 130)


def test_a_reader_that_goes_away_is_no_fault() -> None:
    for number in range(400):
        Path(f"{number}.bake").write_text(f"formula Tin {number}\n  kind tin loaf\n")
    process = subprocess.Popen([*MANCHET, "check"], stdout=subprocess.PIPE, stderr=subprocess.PIPE)
    assert process.stdout is not None and process.stderr is not None
    process.stdout.read(10)
    process.stdout.close()
    assert process.stderr.read() == b""
    assert process.wait(30) == 0


@pytest.mark.skipif(os.name == "nt", reason="Windows has no such signal")
def test_a_second_process_is_not_left_behind_by_ctrl_c() -> None:
    for number in range(2000):
        Path(f"{number}.bake").write_text(starter(f"Tin {number}"))
    process = subprocess.Popen(
        [*MANCHET, "check", "--jobs", "2", "--no-cache"],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        start_new_session=True,
    )
    with pytest.raises(subprocess.TimeoutExpired):
        process.wait(0.6)
    os.killpg(process.pid, signal.SIGINT)
    out, _ = process.communicate(timeout=30)
    assert process.returncode == 130
    assert b"Traceback" not in out, out.decode()
    with pytest.raises(ProcessLookupError):
        for _ in range(100):
            os.killpg(process.pid, 0)
            import time

            time.sleep(0.05)


def test_output_in_an_encoding_without_our_signs() -> None:
    environment = {**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"}
    Path("tin.bake").write_text(starter("Göteborg").replace("water  ", "wätre  "))
    ran = subprocess.run([*MANCHET, "check"], capture_output=True, env=environment, check=False)
    assert ran.returncode == 1 and b"w\\xe4tre" in ran.stdout and ran.stderr == b""


def test_two_processes_say_what_one_says() -> None:
    for number in range(150):
        Path(f"{number}.bake").write_text(starter(f"Tin {number}").replace("1.9%", f"{number % 7}.5%"))
    one = manchet(["check", "--no-cache", "--jobs", "1", "--format", "short"])
    two = manchet(["check", "--no-cache", "--jobs", "2", "--format", "short"])
    assert one == two
    assert one.out.count("\n") > 20


def test_a_change_is_never_hidden_by_what_was_kept() -> None:
    """Whatever is saved, deleted, added or shared: with what was kept, `check` says what it says without."""
    larder = 'larder Row\n  white flour\n    class wheat flour\n    source "ours"\n'
    kitchen = "kitchen Row\n  mixer small\n    takes 1-2 kg dough\n"
    doings = (
        lambda: Path("other.bake").write_text(starter("Other tin").replace("1.9%", "0.9%")),
        lambda: Path("kitchen.bake").write_text(kitchen),
        lambda: Path("other.bake").write_text(starter("Saturday tin")),
        lambda: Path("larder.bake").write_text(larder),
        lambda: Path("larder.bake").write_text(larder.replace("wheat flour", "starch")),
        lambda: Path("kitchen.bake").unlink(),
        lambda: Path("tin.bake").write_text("# moved\n" + starter("Saturday tin")),
        lambda: Path("other.bake").unlink(),
        lambda: Path("larder.bake").write_text(larder.replace("wheat flour", "whet flour")),
        lambda: os.rename("tin.bake", "renamed.bake"),
    )
    for do in doings:
        do()
        kept = manchet(["check", "--format", "json"])
        assert kept == manchet(["check", "--format", "json", "--no-cache"])
        assert kept == manchet(["check", "--format", "json"])
