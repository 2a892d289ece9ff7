"""Days as they are written: `2026-11-28`, of the calendar that the world trades by."""

from __future__ import annotations


def is_day(text: str) -> bool:
    """Whether a calendar has the day, written as year, month and day."""
    year, month, day = (int(part) for part in text.split("-"))
    long = (
        31 - (month in (4, 6, 9, 11)) if month != 2 else 28 + (year % 4 == 0 and (year % 100 != 0 or year % 400 == 0))
    )
    return 1 <= month <= 12 and 1 <= day <= long
