"""Seeing that a file was saved, whatever way the editor saves.

An editor may write in place, write beside and rename over, move the old file away first, or leave lock files about;
a synced folder may be swapped whole. So no event is taken at its word: **any event means "look again"**, and only a
file whose content is different counts as changed. The look waits for a short quiet, so that one save is one change.

Besides the `.bake` files it looks at the pictures that it is told are shown, by date, size and number alone.

Events come from watchdog. Where they cannot come (network mounts, `--poll`, no watches left) the folder is looked
through four times a second; and every two seconds anyway, so that a lost event costs two seconds and not the sheet.
"""

from __future__ import annotations

import os
import threading
import time
from collections.abc import Mapping
from hashlib import blake2b

from manchet.records import NamedTuple
from manchet.source.files import SUFFIX, Stamp, bytes_of, stamp_of
from manchet.workspace.folder import Premises, listing
from manchet.workspace.listening import Observer, observer_of
from manchet.workspace.mounts import why_poll
from manchet.workspace.trouble import Trouble

QUIET = 0.08
"""Seconds without an event after which a save is over."""
SURE = 0.01
"""The same once a formula's file was closed or moved into place: that is how a save ends."""
DEADLINE = 0.5
"""Seconds after which it is looked at even if events go on."""
GONE_AFTER = 0.2
"""Seconds for which a file may be missing (between "move away" and "move in") before it is taken for deleted."""
RESCAN = 2.0
POLL = 0.25


class SavedFiles(NamedTuple):
    """Paths inside the watched folder, each in order, of formulas and of pictures. `gone` were there before and are not any more."""

    changed: tuple[str, ...]
    gone: tuple[str, ...]


class _Seen(NamedTuple):
    stamp: Stamp
    content: bytes
    """Its digest; of a picture b"": its stamp tells enough."""


class Watch:
    """Watches the `.bake` files of one folder, and the pictures named by `look_at`. Use it as a context, and call `wait` for each set of changes."""

    def __init__(self, premises: Premises, poll: bool = False) -> None:
        self.premises = premises
        self.root = root = premises.root
        self._here = os.getcwd()
        self.polling = "asked for" if poll else why_poll(root)
        """Why the folder is looked through again and again; "" where events come."""
        self._bell = threading.Event()
        self._named: set[str] = set()
        self._quiet = QUIET
        self._observer: Observer | None = None
        self._identity: tuple[int, int] | None = None
        self._stopped = False
        self._files: dict[str, _Seen] = {}
        self._pictures: frozenset[str] = frozenset()

    def __enter__(self) -> Watch:
        self._listen()
        self._files = self._look(set())
        return self

    def __exit__(self, *_: object) -> None:
        self._deafen()

    def stop(self) -> None:
        """Ends `wait`, from any thread or signal handler."""
        self._stopped = True
        self._bell.set()

    def look_at(self, pictures: Mapping[str, Stamp | None]) -> None:
        """From now on these pictures too (whole paths inside the folder), and no others: whether they become other than
        they are said to be, so that a change made while they were printed is not missed."""
        self._pictures = frozenset(pictures)
        formulas = {path: seen for path, seen in self._files.items() if path.endswith(SUFFIX)}
        shown = {self._inside(file): _Seen(stamp, b"") for file, stamp in pictures.items() if stamp is not None}
        self._files = shown | formulas

    def _inside(self, file: str) -> str:
        return os.path.relpath(file, self.root).replace(os.sep, "/")

    @property
    def stopped(self) -> bool:
        return self._stopped

    def wait(self) -> SavedFiles | None:
        """The next changes; None once stopped."""
        while not self._stopped:
            rang = self._bell.wait(POLL if self.polling or self._identity is None else RESCAN)
            if self._stopped:
                return None
            if rang:
                self._let_it_settle()
            if self._identity != _identity(self.root):
                self._listen()
            _stay_in(self._here)
            changes = self._compare()
            if changes.changed or changes.gone:
                return changes
        return None

    # ---- looking ----------------------------------------------------------------------------------

    def _compare(self) -> SavedFiles:
        named, self._named = self._named, set()
        now = self._look(named)
        if self._files.keys() - now.keys():
            # Perhaps only between "move the old one away" and "move the new one in".
            until = time.monotonic() + GONE_AFTER
            while self._files.keys() - now.keys() and time.monotonic() < until and not self._stopped:
                time.sleep(0.02)
                now = self._look(named)
        before, self._files = self._files, now
        changed = [path for path, seen in now.items() if path not in before or _differ(before[path], seen)]
        return SavedFiles(tuple(sorted(changed)), tuple(sorted(before.keys() - now.keys())))

    def _look(self, named: set[str]) -> dict[str, _Seen]:
        """What is there. A file with the same size, date and number is not read again, unless an event named it."""
        try:
            paths = listing(self.premises).paths
        except Trouble:
            return {}
        result: dict[str, _Seen] = {}
        for path in paths:
            place = os.path.join(self.root, path)
            stamp = stamp_of(place)
            if stamp is None:
                continue
            before = self._files.get(path)
            if before and before.stamp == stamp and place not in named:
                result[path] = before
                continue
            read = bytes_of(place, path)
            if any(report.name == "file-missing" for report in read.diagnostics):
                continue
            content = read.value if read.value is not None else read.diagnostics[0].name.encode()
            result[path] = _Seen(stamp, blake2b(content, digest_size=16).digest())
        for file in self._pictures:
            stamp = stamp_of(file)
            if stamp is not None:
                result.setdefault(self._inside(file), _Seen(stamp, b""))
        return result

    def _let_it_settle(self) -> None:
        deadline = time.monotonic() + DEADLINE
        while self._bell.is_set() and time.monotonic() < deadline and not self._stopped:
            self._bell.clear()
            self._bell.wait(min(self._quiet, max(deadline - time.monotonic(), 0)))
        self._quiet = QUIET
        if not self._stopped:
            self._bell.clear()

    # ---- listening --------------------------------------------------------------------------------

    def _listen(self) -> None:
        """Begins to listen at the folder that is there now; it may be another than the one before."""
        self._deafen()
        self._identity = _identity(self.root)
        if self.polling or self._identity is None:
            return
        try:
            self._observer = observer_of(self.premises, self._heard, self._is_ours)
        except OSError as error:
            self.polling = f"the system gives no events: {(error.strerror or 'no reason given').lower()}"

    def _deafen(self) -> None:
        if self._observer is not None:
            self._observer.stop()
            self._observer.join(timeout=2)
            self._observer = None

    def _is_ours(self, path: str) -> bool:
        return path.endswith(SUFFIX) or path in self._pictures

    def _heard(self, paths: list[str], ends_a_save: bool) -> None:
        self._named.update(paths)
        self._quiet = SURE if ends_a_save else QUIET
        self._bell.set()


def _stay_in(here: str) -> None:
    """Goes back to the folder that the command runs in, where it was taken away and another stands in its place."""
    try:
        if os.path.exists(here) and not os.path.samefile(".", here):
            os.chdir(here)
    except OSError:
        return  # gone again: at the next look


def _differ(before: _Seen, now: _Seen) -> bool:
    return before.content != now.content or (not now.content and before.stamp != now.stamp)


def _identity(root: str) -> tuple[int, int] | None:
    """Which folder stands at this place now; None if there is none."""
    try:
        status = os.stat(root)
    except OSError:
        return None
    return status.st_dev, status.st_ino
