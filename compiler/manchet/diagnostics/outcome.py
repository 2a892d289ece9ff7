"""What every pass gives back: a value and the mistakes found on the way to it."""

from __future__ import annotations

from typing import Generic, TypeVar

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.records import NamedTuple

T = TypeVar("T")


class Outcome(NamedTuple, Generic[T]):
    """The sound part of the work, and a report for each part that was not sound."""

    value: T
    diagnostics: tuple[Diagnostic, ...] = ()
