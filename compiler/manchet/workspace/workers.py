"""Work spread over processes. Each is started fresh, so that nothing half-used is inherited."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
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
    pool = ProcessPoolExecutor(min(jobs, len(calls)), mp_context=get_context("spawn"))
    try:
        for future in [pool.submit(work, *call) for call in calls]:
            yield future.result()
    finally:
        pool.shutdown(wait=True, cancel_futures=True)
