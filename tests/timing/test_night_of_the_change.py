"""A bread that stands over the night on which clocks change, in Lisbon: 29 March 2026 01:00 → 02:00, 25 October 02:00 → 01:00
(IANA tz database; Directive 2000/84/EC)."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF
from sheets.paper import laid_out
from works import first_work, reports_of

from manchet.batch.work import Work
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.loading_order import loading_order
from manchet.sheets.drawings.wall_clock import WallClock
from manchet.sheets.forms.oven_card.card import oven_card
from manchet.sheets.forms.timing_card.card import timing_card
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.registry import html_of
from manchet.timing.card.card import card_of
from manchet.timing.card.values import Card
from manchet.timing.when import When, not_on_the_clock, ready_at, start_at
from manchet.workspace.house import nearest_zone

TEXT = PLAIN_LOAF.replace("    prove covered 1 h at 27 C\n", "    prove covered 8 h at 8 C\n")
KITCHEN = "kitchen House\n  zone Europe/Lisbon\n  oven mother\n    heats in 1 h\n    falls 12 C an hour from 250 C\n"
SPRING, AUTUMN = datetime(2026, 3, 28, 20, 0), datetime(2026, 10, 24, 20, 0)


def work(kitchen: str = KITCHEN) -> Work:
    return first_work(TEXT + kitchen)


def card(at: datetime, is_ready: bool = False, kitchen: str = KITCHEN) -> Card:
    return card_of(work(kitchen), When(at, is_ready))


def proof(made: Card) -> tuple[str, str, timedelta]:
    row = next(row for row in made.rows if row.step is not None and row.step.verb == "prove")
    return f"{row.start:%H:%M}", f"{row.end:%H:%M}", row.end - row.start


def test_a_wait_over_the_change_keeps_its_hours() -> None:
    """Proved from 22:14: eight hours later the clock shows 06:14 on any other night, 07:14 in spring, 05:14 in autumn."""
    begins, plain, _ = proof(card(datetime(2026, 6, 6, 20, 0)))
    at = datetime.strptime(plain, "%H:%M")
    for start, hour in ((SPRING, 1), (AUTUMN, -1)):
        assert proof(card(start)) == (begins, f"{at + timedelta(hours=hour):%H:%M}", timedelta(hours=8))
    assert proof(card(SPRING, kitchen=KITCHEN.replace("  zone Europe/Lisbon\n", "")))[1] == plain


@pytest.mark.parametrize("paper", ("A4", "Letter"))
def test_the_note_on_the_clocks_leaves_the_head_its_room(paper: str) -> None:
    """The name on one line, the clocks on one, the note under them."""
    rye = first_work(TEXT.replace("Plain loaf", "Harbour rye bread") + KITCHEN)
    lines = laid_out(html_of(timing_card(rye, When(AUTUMN, False), Issue(), House(paper))))[0].lines
    note = next(n for n, line in enumerate(lines) if line.startswith("Clocks go back"))
    assert "Harbour rye bread" in lines[:note]
    assert lines[note].endswith("what the wall clock will show.")


@pytest.mark.parametrize("start", (SPRING, AUTUMN))
def test_counted_back_from_ready_it_is_the_same_card(start: datetime) -> None:
    forward = card(start)
    back = card(forward.ready.replace(tzinfo=None), is_ready=True)
    assert [(row.start, row.end) for row in back.rows] == [(row.start, row.end) for row in forward.rows]
    for row in forward.rows:
        assert row.start - forward.start == timedelta(minutes=row.elapsed)


def test_the_card_says_so_in_one_line_and_its_strip_goes_with_it() -> None:
    made = timing_card(work(), When(AUTUMN, False), Issue(), House())
    assert made.clock_changes == (
        "Clocks go back, Sun 02:00 → 01:00: waits keep their length, and every time is what the wall clock will show.",
    )
    assert made.strip is not None
    assert re.findall(r">(\d\d:\d\d)<", made.strip.svg)[4:] == ["03:00", "04:00", "05:00", "06:00", "07:00"]
    assert [job.clock for job in made.days[-1].jobs] == ["04:14", "05:14", "05:56"]
    assert timing_card(work(), When(datetime(2026, 6, 6, 20, 0), False), Issue(), House()).clock_changes == ()


def test_the_clock_under_a_drawing() -> None:
    """From 23:30 over a night on which at 02:00 it is 01:00 again: 150 minutes on."""
    autumn, spring = WallClock(23 * 60 + 30, ((150, -60),)), WallClock(23 * 60 + 30, ((90, 60),))
    assert [autumn.said(minute) for minute in autumn.every(60, 240)] == ["00:00", "01:00", "01:00", "02:00"]
    assert [spring.said(minute) for minute in spring.every(60, 240)] == ["00:00", "02:00", "03:00", "04:00"]
    assert list(autumn.every(1440, 240)) == [30]


def test_the_oven_card_shows_the_same_clocks() -> None:
    bread = work()
    (oven,) = bread.kitchen.ovens
    plan = loading_order(list(bakes_of(bread)), oven)
    when = When(datetime(2026, 10, 25, 0, 30), False)
    (said,) = oven_card("", [plan], {}, (), Issue(), House(), when, bread.kitchen.zone).ovens
    assert (said.loads[0].into, said.loads[0].out) == ("01:30", "01:10"), (
        "lit at 00:30 for an hour; 40 minutes later it is 01:10"
    )
    assert any(rule.startswith("Clocks go back, Sun 02:00 → 01:00") for rule in said.rules)


NOW = datetime(2026, 10, 20, 12, 0)


def test_a_time_that_is_left_out_or_comes_twice_is_answered() -> None:
    def answer(text: str, zone: str = "Europe/Lisbon") -> tuple[str, str] | None:
        when = start_at(text, NOW)
        assert isinstance(when, When)
        return not_on_the_clock(when, zone)

    assert answer("2026-03-29 01:30") == (
        "there is no 01:30 on Sunday 2026-03-29 in Europe/Lisbon: the clock goes from 01:00 straight to 02:00",
        "write a time before 01:00, or from 02:00 on",
    )
    assert answer("Sun 01:30") == (
        "01:30 comes twice on Sunday 2026-10-25 in Europe/Lisbon: at 02:00 the clock goes back to 01:00",
        "say which: `2026-10-25 01:30 first` or `… second`",
    )
    for fine in ("Sun 01:30 first", "Sun 01:30 second", "Sun 02:00", "Mon 01:30", "2026-03-29 02:00"):
        assert answer(fine) is None, fine
    assert answer("Sun 01:30", "") is None and answer("Sun 01:30", "Asia/Tokyo") is None


def test_first_and_second_are_an_hour_apart() -> None:
    first, second = (ready_at(f"Sun 01:30 {which}", NOW) for which in ("first", "second"))
    assert isinstance(first, When) and isinstance(second, When)
    ready = [card_of(work(), when).ready for when in (first, second)]
    assert ready[1] - ready[0] == timedelta(hours=1) and f"{ready[0]:%H:%M}" == f"{ready[1]:%H:%M}" == "01:30"


def test_the_command_answers_in_plain_words(tmp_path: Path) -> None:
    with scene(tmp_path, {}):
        Path("x.bake").write_text(TEXT + KITCHEN)
        refused = manchet(["build", "--only", "card,json", "--ready", "2026-03-29 01:30"])
        assert refused.status != 0 and "there is no 01:30 on Sunday 2026-03-29" in refused.err
        asked = manchet(["build", "--only", "card,json", "--start", "2026-10-25 01:30"])
        assert asked.status != 0 and "comes twice" in asked.err and "first` or" in asked.err
        assert not list(Path().rglob("*.json")), "nothing was printed"
        built = manchet(["build", "--only", "card,json", "--start", "2026-10-25 01:30 second"])
        assert built.status == 0, built.err


def test_a_zone_nobody_knows_is_told_with_the_one_that_is_meant() -> None:
    for said, meant in (
        ("Europe/Lisbonn", "Europe/Lisbon"), ("europe/lisbon ", "Europe/Lisbon"), ("Lisbon", "Europe/Lisbon"),
        ("America/New York", "America/New_York"), ("Tokyo", "Asia/Tokyo"),
    ):  # fmt: skip
        found = nearest_zone(said, {"Europe/Lisbon", "Asia/Tokyo", "America/New_York", "UTC"})
        assert found == meant, said
    (told,) = reports_of("kitchen House\n  zone Mars/Olympus\n")
    assert told.name == "zone-unknown" and "zone Europe/Lisbon" in told.help


def test_a_machine_without_zone_data_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("manchet.timing.zones.zone_of", lambda name: None)
    monkeypatch.setattr("manchet.timing.zones.zones_known", frozenset)
    (told,) = reports_of("kitchen House\n  zone Europe/Lisbon\n")
    assert told.name == "zone-data-missing"
    ran = manchet(["doctor"])
    assert "no zone data" in ran.out and "apt install tzdata" in ran.out
