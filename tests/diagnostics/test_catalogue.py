"""Every report has one case, which gives exactly that report on the line it marks, and none put right."""

from __future__ import annotations

import re
from pathlib import Path

from every import every
from works import reports_of

import manchet
from manchet.checks.registry import NAMES
from manchet.diagnostics.case import PUT_RIGHT, Case
from manchet.diagnostics.catalogue import explain, names
from manchet.diagnostics.names import REPORTS

PACKAGE = Path(manchet.__file__).parent
NOT_OF_A_TEXT = {"source", "workspace"}
"""Packages whose reports are about files, folders and pictures: no text of a formula can show them."""
OTHER_MISTAKES = {
    "currencies-mixed",
    "made-by-the-plate",
    "made-of-too-much",
    "makes-no-piece",
    "moved-by-rounding",
    "no-larder-line",
    "part-has-mistakes",
    "too-deep",
    "too-many-mistakes",
    "too-small-to-weigh",
}
"""Too long to be read, or of the amount of the day and not of the file."""


def case_called(name: str) -> Case:
    case = explain(name)
    assert case is not None
    return case


SHOWN = [name for name in names() if case_called(name).mistake]


@every(names(), at_least=250)
def test_a_case_explains_its_report(name: str) -> None:
    case = case_called(name)
    assert case.title and case.text
    assert not case.title.endswith("."), case.title
    assert bool(case.mistake) == bool(case.put_right)


@every(SHOWN, at_least=230)
def test_a_mistake_gives_exactly_its_report_on_its_line(name: str) -> None:
    case = case_called(name)
    found = [(one.name, one.severity.value, one.place.line) for one in reports_of(case.mistake)]
    assert found == [(name, case.severity, case.line)]


@every(SHOWN, at_least=230)
def test_the_same_put_right_gives_none(name: str) -> None:
    assert [one.message for one in reports_of(case_called(name).put_right)] == []


@every(SHOWN, at_least=230)
def test_a_case_is_a_formula_file_with_that_mistake(name: str) -> None:
    """So an editor shows in it what it explains; but for those that hold the file put right as well."""
    text = (PACKAGE / REPORTS[name][1] / f"{name}.bake").read_bytes().decode("utf-8")
    if PUT_RIGHT not in text.split("\n"):
        assert [one.name for one in reports_of(text)] == [name]


def test_what_no_case_can_show() -> None:
    hidden = {name for name in names() if name not in SHOWN}
    assert {name for name in hidden if REPORTS[name][1].split("/")[0] not in NOT_OF_A_TEXT} == OTHER_MISTAKES


def test_every_check_stands_beside_its_case() -> None:
    for name in NAMES:
        folder = PACKAGE / REPORTS[name][1]
        assert folder.parent.name == "checks" and (folder / f"{name.replace('-', '_')}.py").exists(), name
    of_checks = {name for name, (_, folder) in REPORTS.items() if folder.startswith("checks/")}
    assert of_checks - NAMES == {"allow-unused", "unknown-allow"}


def test_every_file_that_may_be_a_case_is_one() -> None:
    cases = {PACKAGE / folder / f"{name}.bake" for name, (_, folder) in REPORTS.items()}
    assert set(PACKAGE.rglob("*.bake")) - cases == {PACKAGE / "larder" / "builtin.bake"}
    assert all(re.fullmatch(r"[a-z]+(-[a-z0-9]+)*", name) for name in REPORTS)


def test_there_are_checks_enough_for_a_bakery() -> None:
    assert len(NAMES) >= 40


def test_a_name_is_found_whatever_its_case_and_an_unknown_one_is_not() -> None:
    found = explain(" Salt-Missing ")
    assert found is not None and found.name == "salt-missing"
    assert explain("salt-present") is None
