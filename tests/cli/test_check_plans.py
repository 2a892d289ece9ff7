"""`check` of a folder with plans: what it remembers of them follows from the breads they name."""

from __future__ import annotations

from pathlib import Path

import pytest
from loaves import PLAIN_LOAF

from manchet.cli.main import command

DAY = "plan Market\n  on 2026-11-28\n  orders\n  Plain loaf 12 loaves, ready 06:00\n"
LOAF = PLAIN_LOAF.replace("bake 40 min at 230 C", "bake 40 min at 230 C, steam, vent open after 20 min")
ORDERS = "order Quay cafe\n  every Sat\n  Plain loaf 4 loaves\n"


def checked(capsys: pytest.CaptureFixture[str], *words: str) -> list[str]:
    """The names of the reports that `check` prints, read anew or remembered."""
    command(["check", *words])
    printed = capsys.readouterr().out
    return [line.rpartition("[")[2].rstrip("]") for line in printed.splitlines() if line.endswith("]") and ": " in line]


def test_what_is_remembered_of_a_plan_follows_its_breads(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    day = DAY.replace("12 loaves, ready", "ready").replace("Plain loaf ready", "Plain loaf, ready")
    texts = {"loaf.bake": LOAF, "day.bake": day, "orders.bake": ORDERS}
    for name, text in texts.items():
        Path(name).write_text(text)
    assert checked(capsys) == checked(capsys) == []
    Path("loaf.bake").write_text(LOAF.replace("loaves at", "boules at"))
    assert checked(capsys, "day.bake") == ["no-such-piece"]  # at the order that the plan takes in
    assert checked(capsys) == ["no-such-piece"]
    Path("loaf.bake").write_text(LOAF)
    assert checked(capsys) == []
    Path("orders.bake").write_text(ORDERS.replace("Sat", "Mon"))
    assert sorted(checked(capsys, "day.bake")) == ["no-orders-that-day", "wanted-how-many"]


def test_what_a_pattern_lends_is_told_once(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """No order falls on the pattern's day, nor on that of the plan that is like it: one line, one report."""
    monkeypatch.chdir(tmp_path)
    Path("loaf.bake").write_text(LOAF)
    Path("orders.bake").write_text(ORDERS.replace("Sat", "Mon"))
    Path("day.bake").write_text(DAY + "\nplan 2026-12-05 like Market\n")
    assert checked(capsys, "day.bake") == ["no-orders-that-day"]
