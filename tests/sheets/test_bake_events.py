"""Steam and vent, as often as one bake has them: on the sheet, the timing card, the handout, and among the day's jobs at the oven."""

from __future__ import annotations

from loaves import PLAIN_LOAF, vary
from sheets.card_text import said_of
from sheets.home import taken
from sheets.work import card, parts_of, sheet
from works import first_work, formula_of, reports_of

from manchet.day.jobs.oven_times import events_of
from manchet.sheets.forms.prep_sheet.view import BakeTable
from manchet.timing.jobs.loads import Doing

TWICE = "steam, vent open after 10 min, vent closed after 15 min, steam 5 s after 15 min, vent open after 25 min"


def text(events: str = TWICE, more: str = "") -> str:
    return vary(PLAIN_LOAF, bake=f"40 min at 230 C, {events}{more}")


def plain(said: str) -> str:
    return said.replace("\N{NO-BREAK SPACE}", " ")


def test_the_sheet_has_them_in_order_of_time() -> None:
    jumbled = "vent open after 25 min, steam 5 s after 15 min, steam, vent open after 10 min, vent closed after 15 min"
    for said in (TWICE, jumbled):
        (bake,) = [part for part in parts_of(sheet(text(said))) if isinstance(part, BakeTable)]
        assert [plain(one) for one in bake.phases[0].steam_vent] == [
            "steam", "damper open after 10 min", "damper closed after 15 min", "5 s steam after 15 min",
            "damper open after 25 min",
        ]  # fmt: skip


def test_the_card_has_each_at_its_clock() -> None:
    said = [(clock, plain(line)) for clock, line in said_of(card(text()))]
    load = next(at for at, (_, line) in enumerate(said) if line.startswith("Load"))
    assert said[load][1].endswith("at 230 °C, steam")
    assert [line for _, line in said[load + 1 : load + 4]] == [
        "Damper open",
        "Damper closed · 5 s steam",
        "Damper open",
    ]
    out = said[load + 4][0]  # after 40 min in the oven
    assert [40 - _minutes(clock, out) for clock, _ in said[load + 1 : load + 4]] == [10, 15, 25]


def _minutes(first: str, then: str) -> int:
    hours, minutes = (int(b) - int(a) for a, b in zip(first.split(":"), then.split(":"), strict=True))
    return (60 * hours + minutes) % 1440


def test_at_home_the_tray_is_filled_again() -> None:
    def advice(said: str) -> str:
        view = taken(text(said)).oven
        assert view is not None
        return plain(" ".join(view.advice))

    assert "Again 15 min after it goes in." in advice(TWICE)
    assert "after it goes in" not in advice("steam, vent open after 20 min")
    assert "Do this 5 min after it goes in." in advice("steam after 5 min, vent open after 20 min")


def test_the_day_counts_each_as_a_job_at_the_oven() -> None:
    work = first_work(text())
    phases = [Doing(step, work.batch.dough) for step in work.formula.steps if step.verb == "bake"]
    found = [(event.does, event.seconds / 60) for event in events_of(phases, work, None)]
    assert found == [("vent open", 10), ("vent closed", 15), ("steam", 15), ("vent open", 25)]


def test_steam_of_a_later_phase_finds_the_vent_as_the_phase_before_left_it() -> None:
    def told(*phases: str) -> list[str]:
        lines = "\n    bake ".join(phases)
        return [one.name for one in reports_of(vary(PLAIN_LOAF, bake=lines)) if one.name == "steam-while-vent-open"]

    first = "20 min at 230 C, steam, vent open after 15 min"
    assert told(first, "20 min at 220 C, steam after 5 min")
    assert not told(first, "20 min at 220 C, vent closed, steam after 5 min, vent open after 9 min")
    assert told("40 min at 230 C, steam, vent open")
    assert not told("40 min at 230 C, steam, vent open after 15 min")


def test_a_bake_of_one_steam_is_read_as_ever() -> None:
    (bake,) = [step for step in formula_of(text("steam 200 ml, vent open after 20 min")).steps if step.verb == "bake"]
    assert [(event.what, event.after, event.millilitres) for event in bake.events] == [
        ("steam", 0, 200),
        ("vent open", 1200, None),
    ]
