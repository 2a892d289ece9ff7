"""One formula's fault is one formula's: where something breaks off inside manchet while it is about one thing, that is
reported of it, with the way to send it in, and all else goes on."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.workspace.trouble import Trouble

T = TypeVar("T")

OUR_FAULT = "fault-of-manchet"


def kept_to(place: Place, broke_off: str, work: Callable[[], T], instead: Callable[[Diagnostic], T]) -> T:
    """What `work` gives; where it fails by a fault of our own, what `instead` makes of the report on that.

    `broke_off` says of what was not done: `Tern loaf could not be checked`. Trouble that a person can act on is let through.
    """
    try:
        return work()
    except Trouble:
        raise
    except Exception as fault:
        return instead(fault_report(fault, place, broke_off))


def fault_report(fault: Exception, place: Place, broke_off: str) -> Diagnostic:
    """The report of a fault of our own, which is written down."""
    from manchet.workspace.fault_record import way_to_send

    message = f"{broke_off}: that is a fault in manchet itself"
    return report(OUR_FAULT, place, message, way_to_send(fault))
