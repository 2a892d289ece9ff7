"""`manchet plan` as it is typed: what is shown and written, what is said where a day can't be done, a day planned again."""

from __future__ import annotations

import json
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from cli.transcripts import CommandRun, manchet, scene
from day.market import market
from day.test_clashes import clashes, two_things_that_clash
from dishes.bread import ALL
from dishes.test_in_a_plan import PLAN as LUNCH

import manchet as manchet_package
from manchet.cli.plan_text import clash_lines
from manchet.day import posting
from manchet.day.model import Day, Planned
from manchet.day.posting import plan_by_hand
from manchet.day.report import clash_report
from manchet.workspace import versions

BAKERY = """
formula Plain
  kind hearth loaf
  makes 10 loaves at 900 g dough
  overall
    white flour          100%
    water                 65%
    salt                   2%
    instant yeast          0.5%
  dough
    everything else
    mix slow 5 min
    ferment covered 60-90 min at 24 C
    divide
    shape round
    prove 50-60 min at 26 C
    bake 40 min at 230 C
    cool 2 h

formula Rolls
  kind rolls
  makes 24 rolls at 90 g dough
  overall
    white flour          100%
    water                 60%
    salt                   2%
    instant yeast          0.8%
  dough
    everything else
    mix slow 5 min
    ferment covered 60-75 min at 24 C
    divide
    shape round
    prove 40-50 min at 26 C
    bake 18 min at 230 C
    cool 30 min

kitchen House
  hands 1
  mixer spiral
    takes 1-45 kg dough
  oven deck
    holds 12 loaves, or 40 rolls
    recovers 5 min
"""

PLAN = """
plan Morning
  on 2026-11-28
  Plain                 10 loaves, ready Sat 09:00
  Rolls                 24 rolls, ready Sat 08:00
  hands Ada             Sat 02:00 to Sat 09:00
"""


@pytest.fixture
def bakehouse(tmp_path: Path) -> Iterator[Path]:
    with scene(tmp_path, {}):
        Path("bakery.bake").write_text(BAKERY + PLAN, encoding="utf-8")
        yield Path.cwd()


SCHEMA = json.loads((Path(manchet_package.__file__).parent / "day" / "plan.schema.json").read_text(encoding="utf-8"))


def git(*words: str) -> str:
    return subprocess.run(["git", *words], check=True, capture_output=True, text=True).stdout.strip()


def validate(said: dict[str, Any]) -> None:
    jsonschema.Draft202012Validator(SCHEMA).validate(said)


def planned(*words: str) -> dict[str, Any]:
    ran = manchet(["plan", "--only", "html", "--format", "json", *words])
    assert ran.status == 0, ran.err
    said: dict[str, Any] = json.loads(ran.out)
    validate(said)
    return said


def at(said: dict[str, Any], bread: str, what: str) -> str:
    return next(job["start"][11:] for job in said["jobs"] if job["bread"] == bread and what in job["what"])


def test_a_day_is_planned_and_its_pages_are_written(bakehouse: Path) -> None:
    said = planned()
    assert (said["late_minutes"], said["may_wait_minutes"]) == (0, 0)
    assert said["proven"]["late"] and said["proven"]["may_wait"]
    assert {load["bread"] for load in said["loads"]} == {"Plain", "Rolls"}
    assert {"morning.plan.json", "morning.shift.html"} <= {file.name for file in (bakehouse / "output").iterdir()}


def test_what_a_plan_may_stretch_of_a_wait_of_one_figure_and_of_folds_is_told(bakehouse: Path) -> None:
    assert "of one figure" not in manchet(["plan", "--only", "html"]).out
    text = (BAKERY + PLAN).replace(
        "ferment covered 60-90 min at 24 C", "ferment covered 2 h at 24 C with 2 folds every 40 min"
    )
    Path("bakery.bake").write_text(text, encoding="utf-8")
    told = manchet(["plan", "--only", "html"]).out
    assert "waits of one figure may be 5 min longer, or 10% where that is more: Plain" in told
    assert "folds may come 5 min early or 10 min late" in told


def test_each_dough_has_its_prep_sheet_at_the_size_of_the_plan(bakehouse: Path) -> None:
    text = (BAKERY + PLAN).replace("Rolls                 24 rolls", "Rolls                 36 rolls")
    Path("bakery.bake").write_text(text, encoding="utf-8")
    planned("--sheets")
    sheet = (bakehouse / "output" / "morning.rolls.sheet.html").read_text(encoding="utf-8")
    assert "36 rolls" in sheet and "24 rolls" not in sheet


def test_a_dish_of_a_plan_has_its_dish_sheet_and_no_prep_sheet(bakehouse: Path) -> None:
    text = ALL + LUNCH.replace("24 plates, served", "36 plates, served").replace(
        "Tom             Sat 08", "Tom             Sat 02"
    )
    Path("bakery.bake").write_text(text, encoding="utf-8")
    assert manchet(["plan", "Lunch", "--sheets", "--only", "html"]).status == 0
    written = {file.name for file in (bakehouse / "output").iterdir()}
    assert "lunch.plain-loaf.sheet.html" in written and "lunch.toast.sheet.html" not in written
    sheet = (bakehouse / "output" / "lunch.toast.dish.html").read_text(encoding="utf-8")
    assert "36 plates" in sheet and "6 rounds of 6 plates" in sheet and "72 slices of 88, 16 over" in sheet


def test_the_same_plan_is_the_same_bytes(bakehouse: Path) -> None:
    planned()
    before = {file.name: file.read_bytes() for file in (bakehouse / "output").iterdir()}
    planned()
    assert before == {file.name: file.read_bytes() for file in (bakehouse / "output").iterdir()}


def test_what_is_shown_has_people_and_oven(bakehouse: Path) -> None:
    ran = manchet(["plan", "--only", "html"])
    assert ran.status == 0
    assert ran.out.startswith("Morning: on time\n")
    assert "  Ada  Sat " in ran.out and "Plain, 10 loaves" in ran.out


def test_where_it_cannot_be_done_nothing_is_written(bakehouse: Path) -> None:
    planned()
    written = {file.name: file.read_bytes() for file in (bakehouse / "output").iterdir()}
    text = (BAKERY + PLAN).replace("ready Sat 08:00", "ready Sat 03:00")
    Path("bakery.bake").write_text(text, encoding="utf-8")
    ran = manchet(["plan"])
    assert ran.status == 1
    assert ran.out.startswith("Morning can't be done on time\n")
    assert "Rolls" in ran.out and "any one of these would do:" in ran.out
    assert written == {file.name: file.read_bytes() for file in (bakehouse / "output").iterdir()}
    said = json.loads(manchet(["plan", "--format", "json"]).out)
    assert said["late_minutes"] > 0 and said["jobs"] == []
    assert all(clash["words"] and clash["changes"] for clash in said["clashes"])
    validate(said)


def test_two_things_that_clash_are_told_line_by_line() -> None:
    found, of = clashes(two_things_that_clash()), market().of
    lines = list(clash_lines("Morning", of, None, found))
    assert lines[:5] == [
        "Morning can't be done on time",
        "",
        "  2 things clash at once:",
        "",
        "  Mudlark and Lamplight can't both be done on time; whatever is done, one of these comes of it:",
    ]
    assert "    - Mudlark and Lamplight would both be in deck at 11:15" in lines
    assert "      with Mudlark 5 min later, at 13:25" in lines
    assert "    with Mudlark 5 min later, at 13:25, and with Ebb rye 5 min later, at 06:45" in lines
    said = json.loads(json.dumps(clash_report("Morning", "2026-11-28", of, None, found)))
    assert said["clashes"][0]["changes"] == said["clashes"][1]["changes"]
    assert said["clashes"][0]["mend_this"] != said["clashes"][1]["mend_this"]
    validate(said)


def test_nothing_new_moves_nothing(bakehouse: Path) -> None:
    before = planned()
    ran = manchet(["plan", "--only", "html", "--now", "Sat 05:00"])
    assert ran.status == 0 and "nothing moves" in ran.out
    again = planned("--now", "Sat 05:30")
    assert [job["start"] for job in again["jobs"]] == [job["start"] for job in before["jobs"]]


def test_what_runs_late_moves_what_follows_and_stays_told(bakehouse: Path) -> None:
    before = planned()
    ran = manchet(["plan", "--only", "html", "--now", "Sat 05:00", "--late", "Plain prove 20 min"])
    assert ran.status == 0, ran.err
    assert "Plain: load" in ran.out and "->" in ran.out
    again = planned("--now", "Sat 05:05")
    assert at(again, "Plain", "load") > at(before, "Plain", "load")
    assert "nothing moves" in manchet(["plan", "--only", "html", "--now", "Sat 05:10"]).out


def test_without_a_plan_written_it_is_worked_out_first(bakehouse: Path) -> None:
    ran = manchet(["plan", "--only", "html", "--now", "Sat 05:00"])
    assert ran.status == 0
    assert "no plan is written in output/morning.plan.json yet: it is worked out first" in ran.err


def test_a_file_that_changed_since_is_named(bakehouse: Path) -> None:
    planned()
    Path("bakery.bake").write_text(BAKERY.replace("cool 30 min", "cool 40 min") + PLAN, encoding="utf-8")
    assert (
        "changed since the plan was written: bakery.bake"
        in manchet(["plan", "--only", "html", "--now", "Sat 04:00"]).err
    )


@pytest.mark.parametrize(
    ("words", "said"),
    (
        (("--late", "Plain prove 20 min"), "--done and --late tell of a day that has begun"),
        (("--now", "Sat 05:00", "--late", "Plain prove"), "does not say by how much"),
        (("--now", "Sat 05:00", "--done", "Plain nonsense"), "nothing in this plan is called `Plain nonsense`"),
        (("--now", "Sat 05:00", "--done", "Plain"), "`Plain` fits"),
        (("--now", "Tue 05:00"), "lies outside this plan"),
        (("Evening",), "no plan here is called Evening"),
    ),
)
def test_what_cannot_be_meant_is_answered(bakehouse: Path, words: tuple[str, ...], said: str) -> None:
    ran = manchet(["plan", *words])
    assert ran.status == 2 and said in ran.err


def test_the_pots_of_a_week_are_added_up(bakehouse: Path) -> None:
    levain = (
        "  levain with 20% of all flour\n    white flour          100%\n    water                100%\n"
        "    even starter          10%\n    mix by hand 4 min\n    ripen covered 4-6 h at 26 C\n"
        "    keep 50 g as even starter\n"
    )
    text = BAKERY.replace("  dough\n", f"{levain}  dough\n    levain\n", 1) + PLAN.replace("Sat 02:00", "Fri 18:00")
    Path("bakery.bake").write_text(text, encoding="utf-8")
    ran = manchet(["plan", "--week"])
    assert ran.status == 0, ran.err
    assert ran.out.startswith("the pots in the week of Mon 2026-11-23\n") and "back 50 g" in ran.out
    (pot,) = json.loads(manchet(["plan", "--week", "--format", "json"]).out)["pots"]
    assert pot["culture"] == "even starter" and pot["moves"][0]["out_grams"] > 0
    assert f"out  {pot['moves'][0]['out_grams']} g" in ran.out  # the figure of the text


def test_what_the_pots_want_until_the_next_plan_stands_on_one_page_of_the_evening_before(bakehouse: Path) -> None:
    """Baked on Tuesday and on Sunday: 50 g that are given back on Tuesday have stood for three days on Friday, and more is wanted
    on Sunday than they are. The one stands on the page of Monday evening, the other on that of Saturday evening."""
    levain = (
        "  levain with 20% of all flour\n    white flour          100%\n    water                100%\n"
        "    even starter          10%\n    mix by hand 4 min\n    ripen covered 4-6 h at 26 C\n"
        "    keep 50 g as even starter\n"
    )
    bread = BAKERY.replace("  dough\n", f"{levain}  dough\n    levain\n", 1)
    tuesday = (
        "\nplan Early\n  on 2026-11-24\n  Plain  10 loaves, ready Tue 12:00\n  hands Ada  Mon 18:00 to Tue 12:00\n"
    )
    sunday = PLAN.replace("2026-11-28", "2026-11-29").replace("Sat 02:00", "Sat 18:00").replace("Sat 0", "Sun 0")
    Path("bakery.bake").write_text(bread + sunday + tuesday, encoding="utf-8")
    (pot,) = json.loads(manchet(["plan", "--week", "--format", "json"]).out)["pots"]
    assert [(fed["date"], fed["because"]) for fed in pot["feedings"]] == [
        ("2026-11-27", "stands"),
        ("2026-11-28", "use"),
    ]
    for name in ("Early", "Morning"):
        assert manchet(["plan", name, "--only", "tonight,html"]).status == 0
    early, morning = (
        Path("output", f"{name}.tonight.html").read_text(encoding="utf-8") for name in ("early", "morning")
    )
    assert "Fri evening: feed half of the even starter with" in early and early.count("evening: feed") == 1
    assert "Sat evening: feed the even starter with" in morning and morning.count("evening: feed") == 1


def test_a_folder_without_a_plan_says_how_one_begins(bakehouse: Path) -> None:
    Path("bakery.bake").write_text(BAKERY, encoding="utf-8")
    ran: CommandRun = manchet(["plan"])
    assert ran.status == 2 and "no plan is written here" in ran.err


def test_a_plan_with_a_mistake_is_not_planned(bakehouse: Path) -> None:
    Path("bakery.bake").write_text(BAKERY + PLAN.replace("Rolls   ", "Buns    "), encoding="utf-8")
    ran = manchet(["plan"])
    assert ran.status == 1 and "no formula here is called Buns" in ran.err
    assert not Path("output").exists()


def test_a_plan_of_ours_that_breaks_a_rule_is_not_printed(bakehouse: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def begun_too_soon(day: Day) -> Planned:
        found = plan_by_hand(day)
        assert isinstance(found, Planned)
        starts = (day.begins - 1, *found.timetable.starts[1:])
        return found._replace(timetable=found.timetable._replace(starts=starts))

    monkeypatch.setattr(posting, "plan_by_hand", begun_too_soon)
    ran = manchet(["plan", "--no-solver"])
    assert (ran.status, ran.out) == (3, "")
    assert ran.err.startswith("a plan was found that breaks a rule, and was left out: ")
    assert not (bakehouse / "output").exists()


def test_git_is_asked_once_however_many_sheets_are_printed(bakehouse: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    git("init", "-q")
    git("add", "-A")
    git("-c", "user.name=Ada", "-c", "user.email=ada@example.org", "commit", "-qm", "first")
    asked: list[str] = []

    def counted(folder: str, *words: str) -> str | None:
        asked.append(words[0])
        return versions_git(folder, *words)

    versions_git = versions.git
    monkeypatch.setattr(versions, "git", counted)
    planned("--sheets")
    assert asked == ["status", "rev-parse", "log"]
    commit = git("rev-parse", "--short", "HEAD")
    pages = [file.read_text(encoding="utf-8") for file in (bakehouse / "output").glob("*.html")]
    assert len(pages) > 3 and all(commit in page for page in pages)


def test_what_a_bread_has_no_job_for_is_answered_with_those_it_has(bakehouse: Path) -> None:
    ran = manchet(["plan", "--now", "Sat 05:00", "--late", "Rolls laminate 20 min"])
    assert ran.status == 2 and "nothing in this plan is called `Rolls laminate`" in ran.err
    assert "there is: `Rolls: weigh" in ran.err and "Plain" not in ran.err.split("there is")[1]
