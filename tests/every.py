"""A table tried row by row in one test: every row is tried, and those that fail are told together."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable
from functools import wraps
from traceback import extract_tb


def every(rows: Iterable[object], at_least: int) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """Makes a test of one row into a test of all: a row is its first argument, or its first several if it is a tuple.

    What follows them are fixtures, the same for every row. A table of fewer than `at_least` rows has lost some: it fails.
    """
    table = list(rows)

    def of_all(test: Callable[..., None]) -> Callable[..., None]:
        parameters = list(inspect.signature(test).parameters.values())
        columns = len(_arguments(table[0])) if table else 0

        @wraps(test)
        def try_each(**fixtures: object) -> None:
            failures = []
            for row in table:
                try:
                    test(*_arguments(row), **fixtures)
                except Exception as fault:
                    failures.append((row, fault))
            assert len(table) >= at_least, f"{len(table)} rows, and there were at least {at_least}"
            if failures:
                told = "\n".join(f"{_row_text(row)}: {_reason(fault)}" for row, fault in failures)
                raise AssertionError(f"{len(failures)} of {len(table)} rows:\n{told}") from failures[0][1]

        try_each.__signature__ = inspect.Signature(parameters[columns:])  # type: ignore[attr-defined]
        return try_each

    return of_all


def _arguments(row: object) -> tuple[object, ...]:
    return row if type(row) is tuple else (row,)


def _row_text(row: object) -> str:
    said = repr(row)
    return said if len(said) <= 160 else f"{said[:159]}…"


def _reason(fault: Exception) -> str:
    """What is wrong, and the line that found it."""
    where = extract_tb(fault.__traceback__)[-1]
    return f"{type(fault).__name__} in line {where.lineno} of {where.filename.rpartition('/')[2]}: {fault}"
