"""Work spread over processes. Each is started fresh, so that nothing half-used is inherited."""

from __future__ import annotations

import signal
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import Any, TypeVar

T = TypeVar("T")

STOPS = tuple(getattr(signal, name) for name in ("SIGINT", "SIGTERM", "SIGHUP") if hasattr(signal, name))
"""Signals that ask for an end: Ctrl-C, a polite kill, a terminal that is closed."""


def spread(work: Callable[..., T], calls: Sequence[tuple[Any, ...]], jobs: int) -> Iterator[T]:
    """`work(*call)` for each call, at most `jobs` at once; results in the order of the calls, as they come."""
    if jobs < 2 or len(calls) < 2:
        yield from (work(*call) for call in calls)
        return
    from concurrent.futures import ProcessPoolExecutor
    from concurrent.futures.process import BrokenProcessPool
    from multiprocessing import active_children, get_context

    from manchet.workspace.trouble import Blocked

    # "spawn": a forked copy of a process that has WeasyPrint's or a watcher's threads in it may hang.
    pool = ProcessPoolExecutor(min(jobs, len(calls)), get_context("spawn"), _end_without_a_word)
    try:
        with _interrupts_held():
            futures = [pool.submit(work, *call) for call in calls]
        for future in futures:
            yield future.result()
    except BrokenProcessPool:
        raise Blocked(
            "a worker process was ended from outside", "perhaps this machine is short of memory: try --jobs 1"
        ) from None
    except BaseException:
        for worker in active_children():
            worker.terminate()
        raise
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


@contextmanager
def _interrupts_held() -> Iterator[None]:
    """Ctrl-C waits meanwhile. The processes that are started inherit that, and so are not caught half begun."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


def end_with_the_first() -> None:
    """In a process that was started: it ends when the one that started it does, however that ends."""
    import os
    import threading
    from multiprocessing import parent_process

    first = parent_process()
    if first is None:
        return

    def wait() -> None:
        first.join()
        os._exit(1)

    threading.Thread(target=wait, daemon=True).start()


def _end_without_a_word() -> None:
    """In a process that was started: Ctrl-C, also one that came before, ends it; the first process does the talking."""
    end_with_the_first()
    for number in STOPS:
        signal.signal(number, signal.SIG_DFL)
    if hasattr(signal, "pthread_sigmask"):
        signal.pthread_sigmask(signal.SIG_UNBLOCK, {signal.SIGINT})
