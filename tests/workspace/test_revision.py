"""A bakery of a revision: larder, kitchen and formulas of then, in as many calls of git however many files there are."""

from __future__ import annotations

import subprocess
from pathlib import Path
from typing import Any

import pytest

from manchet.cli.main import command
from manchet.workspace.revision import bakery_at
from manchet.workspace.trouble import Unknown

LARDER = """larder House
  white flour
    price         20 EUR for 25 kg
  salt
    price         10 EUR for 25 kg
  water
    price         2 EUR for 1000 l
"""

BREAD = """formula Loaf {}
  kind hearth loaf
  makes 10 loaves at 900 g dough
  bake loss 12%

  overall
    white flour          100%
    water                 70%
    salt                   2%
    instant yeast          0.6%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C, steam
    cool 2 h
"""


def checkout(folder: Path, breads: int) -> None:
    inside = folder / "bakery"
    inside.mkdir()
    (inside / "larder.bake").write_text(LARDER)
    for number in range(breads):
        (inside / f"loaf-{number}.bake").write_text(BREAD.format(number))
    (folder / "elsewhere.bake").write_text(BREAD.format("elsewhere"))
    for words in (("init", "-q"), ("add", "-A"), ("-c", "user.name=A", "-c", "user.email=a@b", "commit", "-qm", "one")):
        subprocess.run(["git", "-C", str(folder), *words], check=True)


@pytest.mark.parametrize("breads", [1, 12])
def test_three_calls_of_git_however_many_files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, breads: int) -> None:
    checkout(tmp_path, breads)
    calls: list[Any] = []
    run = subprocess.run

    def counted(*words: Any, **more: Any) -> Any:
        calls.append(words)
        return run(*words, **more)

    monkeypatch.setattr(subprocess, "run", counted)
    then = bakery_at(str(tmp_path / "bakery"), "", "HEAD")
    assert len(calls) == 3
    assert len(then.bakery.read().formulas) == breads  # and none of the folder beside it


def test_what_was_then_is_told_of_then(tmp_path: Path) -> None:
    checkout(tmp_path, 1)
    larder = tmp_path / "bakery" / "larder.bake"
    larder.write_text(LARDER.replace("20 EUR", "30 EUR"))
    (tmp_path / "bakery" / "loaf-0.bake").unlink()
    then = bakery_at(str(tmp_path / "bakery"), "", "HEAD").bakery.read()
    price = then.larder.find("white flour").buying.price  # type: ignore[union-attr]
    assert price is not None and price.amount == 20
    assert then.formula("Loaf 0") is not None


@pytest.mark.parametrize("revision", ["nosuch", "-x", "--help", "HEAD:bakery", ""])
def test_a_revision_that_git_does_not_know(tmp_path: Path, revision: str) -> None:
    checkout(tmp_path, 1)
    with pytest.raises(Unknown):
        bakery_at(str(tmp_path / "bakery"), "", revision)


def test_no_checkout_at_all(tmp_path: Path) -> None:
    with pytest.raises(Unknown):
        bakery_at(str(tmp_path), "", "HEAD")


def test_the_command_says_before_and_after(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    checkout(tmp_path, 2)
    monkeypatch.chdir(tmp_path / "bakery")
    bread = tmp_path / "bakery" / "loaf-0.bake"
    bread.write_text(
        BREAD.format(0).replace(
            "instant yeast          0.6%", "butter                 5%\n    instant yeast          0.6%"
        )
    )
    assert command(["build", "--against", "HEAD"]) == 0
    told = capsys.readouterr().out
    assert "contains WHEAT → WHEAT, MILK" in told
    assert "  list WHEAT flour, water, salt, yeast\n     → WHEAT flour, water, butter (MILK), salt, yeast" in told
    assert "per 100 g energy " in told and "fat 0.7 → 3.3 g" in told
    assert "1 is as it was" in told
    assert not (tmp_path / "bakery" / "output").exists()
