"""The catalogue explains every report, and its examples do what they say."""

import pytest

from manchet.checks.registry import NAMES
from manchet.diagnostics.catalogue import explain, names
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

SEVERITIES = {"error", "warning", "note"}


def reports_of(text: str) -> list[tuple[str, str]]:
    return [(r.name, r.severity.value) for r in read([SourceText("example.bake", text)]).diagnostics]


@pytest.mark.parametrize("name", names())
def test_an_example_gives_exactly_its_report(name: str) -> None:
    entry = explain(name)
    assert entry is not None
    assert entry.severity in SEVERITIES
    assert entry.title and entry.text
    assert not entry.title.endswith("."), entry.title
    if entry.example:
        assert reports_of(entry.example) == [(name, entry.severity)]


@pytest.mark.parametrize("name", names())
def test_the_same_put_right_gives_none(name: str) -> None:
    entry = explain(name)
    assert entry is not None
    assert bool(entry.example) == bool(entry.instead)
    if entry.instead:
        assert reports_of(entry.instead) == []


def test_every_check_is_explained() -> None:
    explained = {name for name in names() if (entry := explain(name)) and entry.package == "checks"}
    assert NAMES | {"allow-unused", "unknown-allow"} == explained


def test_there_are_checks_enough_for_a_bakery() -> None:
    assert len(NAMES) >= 40


def test_a_name_is_found_whatever_its_case_and_an_unknown_one_is_not() -> None:
    found = explain(" Salt-Missing ")
    assert found is not None and found.name == "salt-missing"
    assert explain("salt-present") is None
