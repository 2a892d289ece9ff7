"""Days as they are printed, on every form alike."""

from __future__ import annotations

from datetime import date

WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def day_month(day: date) -> str:
    """`28 Nov`"""
    return f"{day.day} {_MONTHS[day.month - 1]}"


def day_month_year(day: date) -> str:
    """`28 Nov 2026`"""
    return f"{day_month(day)} {day.year}"


def weekday_day(day: date) -> str:
    """`Sat 28 Nov`"""
    return f"{WEEKDAYS[day.weekday()]} {day_month(day)}"


def printed_day(day: date) -> str:
    """`Sat 28 Nov 2026`"""
    return f"{WEEKDAYS[day.weekday()]} {day_month_year(day)}"
