"""Every way an editor saves is one change; what is no save is none. Real files, real events."""

from __future__ import annotations

import os
import shutil
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from manchet.source.files import stamp_of
from manchet.workspace.folder import Premises
from manchet.workspace.saves import SavedFiles, Watch

BEFORE = "formula Tern loaf\n"
AFTER = "formula Tern loaf\n  kind tin loaf\n"


def in_place(file: Path) -> None:
    file.write_text(AFTER)


def in_two_writes(file: Path) -> None:
    with file.open("w") as opened:
        opened.write(AFTER[:10])
        opened.flush()
        time.sleep(0.03)
        opened.write(AFTER[10:])


def rename_over(file: Path) -> None:
    beside = file.with_suffix(".tmp")
    beside.write_text(AFTER)
    os.replace(beside, file)


def hidden_beside_then_over(file: Path) -> None:
    beside = file.with_name(f".{file.name}.swp.new")
    beside.write_text(AFTER)
    os.replace(beside, file)


def backup_and_rename(file: Path) -> None:
    """Move the old one away, write a new one, drop the old one; with a probe file first."""
    probe = file.with_name("4913")
    probe.touch()
    probe.unlink()
    backup = file.with_name(file.name + "~")
    file.rename(backup)
    time.sleep(0.05)
    file.write_text(AFTER)
    backup.unlink()


def lock_and_write(file: Path) -> None:
    lock = file.with_name(f".#{file.name}")
    lock.symlink_to("someone@somewhere.1234")
    file.write_text(AFTER)
    lock.unlink()


def delete_and_write(file: Path) -> None:
    file.unlink()
    time.sleep(0.05)
    file.write_text(AFTER)


def same_size_and_date(file: Path) -> None:
    """A save that leaves size and date as they were: only the content tells."""
    status = file.stat()
    file.write_text(BEFORE.replace("Tern", "Ferm"))
    os.utime(file, ns=(status.st_atime_ns, status.st_mtime_ns))


SAVES = (
    in_place,
    in_two_writes,
    rename_over,
    hidden_beside_then_over,
    backup_and_rename,
    lock_and_write,
    delete_and_write,
)


class Listener:
    """Collects the changes in another thread, as the command would work on them."""

    def __init__(self, root: Path, poll: bool) -> None:
        self.watch = Watch(Premises(str(root), whole=True), poll)
        self.heard: list[SavedFiles] = []
        self.ready = threading.Event()
        self.thread = threading.Thread(target=self._listen, daemon=True)
        self.thread.start()
        assert self.ready.wait(5)

    def _listen(self) -> None:
        with self.watch:
            self.ready.set()
            while changes := self.watch.wait():
                self.heard.append(changes)

    def after(self, seconds: float, enough: int = 1) -> list[SavedFiles]:
        """What was heard once there is enough and a quiet second after it, or when the time is up."""
        until = time.monotonic() + seconds
        while len(self.heard) < enough and time.monotonic() < until:
            time.sleep(0.02)
        time.sleep(0.4)
        return self.heard

    def close(self) -> None:
        self.watch.stop()
        self.thread.join(5)
        assert not self.thread.is_alive()


@pytest.fixture
def listen(tmp_path: Path) -> Iterator[Callable[..., Listener]]:
    opened: list[Listener] = []

    def start(poll: bool = False) -> Listener:
        opened.append(Listener(tmp_path, poll))
        return opened[-1]

    yield start
    for listener in opened:
        listener.close()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "tern.bake"
    path.write_text(BEFORE)
    return path


@pytest.mark.parametrize("poll", [False, True], ids=["events", "polling"])
@pytest.mark.parametrize("save", SAVES, ids=lambda save: save.__name__)
def test_one_save_is_one_change(
    save: Callable[[Path], None], poll: bool, file: Path, listen: Callable[..., Listener]
) -> None:
    listener = listen(poll)
    save(file)
    changes = listener.after(3)
    assert changes[-1:] == [SavedFiles(("tern.bake",), ())]
    if not poll:
        assert len(changes) == 1


def test_a_save_of_the_same_size_and_date_is_seen(file: Path, listen: Callable[..., Listener]) -> None:
    listener = listen()
    same_size_and_date(file)
    assert listener.after(3) == [SavedFiles(("tern.bake",), ())]


def test_a_picture_that_changed_while_it_was_printed_is_seen(file: Path) -> None:
    """It is told of as it was before it was read; what it is now is what counts, and one nobody shows is not looked at."""
    picture, other = file.with_name("cuts.svg"), file.with_name("other.svg")
    picture.write_text("<svg/>")
    with Watch(Premises(str(file.parent), whole=True), poll=True) as watch:
        before = stamp_of(str(picture))
        picture.write_text("<svg></svg>")
        other.write_text("<svg/>")
        watch.look_at({str(picture): before})
        assert watch.wait() == SavedFiles(("cuts.svg",), ())
        watch.look_at({str(other): stamp_of(str(other))})
        picture.unlink()
        other.write_text("<svg></svg>")
        assert watch.wait() == SavedFiles(("other.svg",), ())


def test_writing_the_same_again_is_no_change(file: Path, listen: Callable[..., Listener]) -> None:
    listener = listen()
    file.write_text(BEFORE)
    file.touch()
    (file.parent / "notes.txt").write_text("milk")
    assert listener.after(0.6) == []


def test_a_deleted_and_a_new_file_are_said(file: Path, listen: Callable[..., Listener]) -> None:
    listener = listen()
    file.unlink()
    assert listener.after(3) == [SavedFiles((), ("tern.bake",))]
    (file.parent / "breads").mkdir()
    (file.parent / "breads" / "pilot.bake").write_text(BEFORE)
    assert listener.after(3, enough=2)[1:] == [SavedFiles(("breads/pilot.bake",), ())]


def test_the_folder_deleted_and_made_again(file: Path, listen: Callable[..., Listener]) -> None:
    listener = listen()
    shutil.rmtree(file.parent)
    listener.after(4)
    file.parent.mkdir()
    file.write_text(AFTER)
    listener.after(4, enough=2)
    file.write_text(AFTER + "  # more\n")
    heard = listener.after(4, enough=3)
    assert heard[0] == SavedFiles((), ("tern.bake",))
    assert heard[-1] == SavedFiles(("tern.bake",), ())
    assert len(heard) == 3


def test_a_folder_renamed_away_and_another_put_in_its_place(file: Path, listen: Callable[..., Listener]) -> None:
    listener = listen()
    other = file.parent.with_name("other")
    shutil.copytree(file.parent, other)
    (other / "tern.bake").write_text(AFTER)
    file.parent.rename(file.parent.with_name("old"))
    other.rename(file.parent)
    assert listener.after(4)[-1] == SavedFiles(("tern.bake",), ())


def test_a_network_mount_is_polled(tmp_path: Path) -> None:
    from manchet.workspace.mounts import why_poll

    mounts = tmp_path / "mounts"
    here = os.path.realpath(tmp_path)
    mounts.write_text(f"/dev/a / ext4 rw 0 0\nserver:/x {here} nfs4 rw 0 0\nplain text\n")
    assert "nfs4" in why_poll(here, str(mounts))
    mounts.write_text(f"/dev/a / ext4 rw 0 0\nx {here} fuse.sshfs rw 0 0\n")
    assert "fuse" in why_poll(here + "/below", str(mounts))
    mounts.write_text("/dev/a / ext4 rw 0 0\n")
    assert why_poll(here, str(mounts)) == ""
