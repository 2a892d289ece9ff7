"""What `--start` and `--ready` mean. The clock is handed in: Tuesday 24 November 2026, 21:40."""

from __future__ import annotations

from datetime import datetime

from every import every
from hypothesis import given, strategies as st

from manchet.timing.when import When, moment, ready_at, start_at

NOW = datetime(2026, 11, 24, 21, 40)


@every(
    [
        ("Sat 05:00", datetime(2026, 11, 28, 5), True),
        ("saturday 5:00", datetime(2026, 11, 28, 5), True),
        ("Tue 22:00", datetime(2026, 11, 24, 22), True),
        ("Tue 21:00", datetime(2026, 12, 1, 21), True),
        ("2026-11-28T05:00", datetime(2026, 11, 28, 5), True),
        ("2026-11-28 05:00:00", datetime(2026, 11, 28, 5), True),
        ("tomorrow 05:30", datetime(2026, 11, 25, 5, 30), True),
        ("today 23:15", datetime(2026, 11, 24, 23, 15), True),
        ("07:30", datetime(2026, 11, 25, 7, 30), False),
        ("22:00", datetime(2026, 11, 24, 22), False),
        ("5 am", datetime(2026, 11, 25, 5), False),
        ("12:15am", datetime(2026, 11, 25, 0, 15), False),
        ("Fri 12 pm", datetime(2026, 11, 27, 12), True),
    ],
    at_least=13,
)
def test_moments(text: str, at: datetime, day_said: bool) -> None:
    assert moment(text, NOW) == (at, day_said)


@every(
    [
        ("Sat", "`Sat` says the day and no time; write both, as in `Sat 05:00`"),
        ("25:00", "`25:00` is not a time of day; write `05:00`, `Sat 05:00` or `2026-11-28 05:00`"),
        ("5", "`5` is not a time of day; write `05:00`, `Sat 05:00` or `2026-11-28 05:00`"),
        ("13:00 pm", "`13:00 pm` is not a time of day; write `05:00`, `Sat 05:00` or `2026-11-28 05:00`"),
        ("2026-02-30 05:00", "there is no day 2026-02-30; write the day like 2026-11-28"),
        (
            "smarch 05:00",
            "`smarch 05:00` names no day; write a day of the week and a time, as in `Sat 05:00`, or a date",
        ),
        ("", "`` is not a time of day; write `05:00`, `Sat 05:00` or `2026-11-28 05:00`"),
    ],
    at_least=7,
)
def test_what_is_no_moment(text: str, message: str) -> None:
    assert moment(text, NOW) == message
    assert start_at(text, NOW) == message


def test_a_day_that_is_not_said_lets_the_card_move_on() -> None:
    assert ready_at("07:30", NOW) == When(datetime(2026, 11, 25, 7, 30), True, NOW)
    assert start_at("Sat 05:00", NOW) == When(datetime(2026, 11, 28, 5), False, None)


@given(st.text(max_size=20))
def test_anything_typed_is_a_moment_or_a_message(text: str) -> None:
    found = moment(text, NOW)
    assert isinstance(found, str | tuple)
    if isinstance(found, str):
        assert (found and found[0].islower()) or found.startswith("`")
