"""Hearing of a save from the system. The only module that knows watchdog."""

from __future__ import annotations

import os
from collections.abc import Callable
from typing import Protocol

from manchet.workspace.folder import Premises


class Observer(Protocol):
    """What listens, in a thread of its own."""

    def stop(self) -> None: ...
    def join(self, timeout: float | None = None) -> None: ...


def observer_of(
    premises: Premises, heard: Callable[[list[str], bool], None], is_ours: Callable[[str], bool]
) -> Observer:
    import logging

    from watchdog import observers
    from watchdog.events import FileSystemEvent, FileSystemEventHandler

    # Our own reading sends events too; to react to them would be to run for ever.
    readings = ("opened", "closed_no_write")

    class Listener(FileSystemEventHandler):
        def on_any_event(self, event: FileSystemEvent) -> None:
            paths = [os.fsdecode(path) for path in (event.src_path, event.dest_path) if path]
            # A folder that is "modified" only repeats that something in it was, which is said by itself.
            of_ours = any(is_ours(path) for path in paths)
            of_ours = of_ours or (event.is_directory and event.event_type != "modified")
            if of_ours and event.event_type not in readings:
                closed = event.event_type == "closed" and not event.is_directory
                heard(paths, closed or (event.event_type == "moved" and is_ours(paths[-1])))

    # A thread that is stopped while it starts remarks on it; a handler of its own keeps that off the terminal.
    logging.getLogger("watchdog").addHandler(logging.NullHandler())
    observer = observers.Observer()
    observer.schedule(Listener(), premises.root, recursive=premises.whole)
    observer.start()
    return observer
