"""Work spread over processes. Each is started fresh, so that nothing half-used is inherited."""

from __future__ import annotations

import signal
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import Any, TypeVar

T = TypeVar("T")


def spread(work: Callable[..., T], calls: Sequence[tuple[Any, ...]], jobs: int) -> Iterator[T]:
    """`work(*call)` for each call, at most `jobs` at once; results in the order of the calls, as they come."""
    if jobs < 2 or len(calls) < 2:
        yield from (work(*call) for call in calls)
        return
    from concurrent.futures import ProcessPoolExecutor
    from multiprocessing import get_context

    # "spawn": a forked copy of a process that has WeasyPrint's or a watcher's threads in it may hang.
    pool = ProcessPoolExecutor(min(jobs, len(calls)), get_context("spawn"), _end_without_a_word)
    try:
        with _interrupts_held():
            futures = [pool.submit(work, *call) for call in calls]
        for future in futures:
            yield future.result()
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


def _end_without_a_word() -> None:
    """In a process that was started: Ctrl-C, also one that came before, ends it; the first process does the talking."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    if hasattr(signal, "pthread_sigmask"):
        signal.pthread_sigmask(signal.SIG_UNBLOCK, {signal.SIGINT})
