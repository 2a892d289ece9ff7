"""One formula's fault is one formula's: it is reported of that formula, with the way to send it in, and all else goes on."""

from __future__ import annotations

import importlib
from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import CommandRun, manchet, scene
from loaves import PLAIN_LOAF, POOLISH_LOAF


def errors() -> list[str]:
    ran = manchet(["check", "--format", "short"])
    assert ran.status == 1 and ran.err == ""
    return [line for line in ran.out.splitlines() if ": error: " in line]


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[None]:
    with scene(tmp_path, {}):
        Path("a.bake").write_text(PLAIN_LOAF)
        Path("b.bake").write_text(POOLISH_LOAF)
        yield


def broken(monkeypatch: pytest.MonkeyPatch, module: str, name: str) -> None:
    """Makes one function of manchet break off where it is about Plain loaf."""
    inside = importlib.import_module(module)
    sound = getattr(inside, name)

    def breaks_off(*given: object, **more: object) -> object:
        if any("Plain loaf" in str(getattr(getattr(one, "formula", one), "name", one)) for one in given):
            raise ZeroDivisionError("of Plain loaf")
        return sound(*given, **more)

    monkeypatch.setattr(inside, name, breaks_off)


def told_of_one(ran: CommandRun) -> None:
    """Plain loaf is reported, and nothing else; what happened can be sent in."""
    said = ran.out + ran.err
    assert ran.status == 1
    assert said.count("[fault-of-manchet]") == 1 and "a.bake:1:1: error: Plain loaf could not be" in said, said
    assert "Traceback" not in said and "ZeroDivisionError" not in said
    account = Path(said.split("is recorded in ")[1].split(": please send")[0])
    assert "ZeroDivisionError: of Plain loaf" in account.read_text()
    assert account.stat().st_mode & 0o777 == 0o600


@pytest.mark.parametrize(
    ("module", "name"),
    [
        ("manchet.workspace.bound_formula", "bind"),
        ("manchet.workspace.bound_formula", "work_of"),
        ("manchet.checks.registry", "check"),
    ],
    ids=["binding", "sizing", "checking"],
)
def test_a_fault_before_the_sheet(monkeypatch: pytest.MonkeyPatch, module: str, name: str) -> None:
    broken(monkeypatch, module, name)
    told_of_one(manchet(["check"]))
    told_of_one(manchet(["check"]))
    built = manchet(["build", "--only", "html,sheet", "--jobs", "1"])
    told_of_one(built)
    assert built.out == "output/poolish-loaf.sheet.html\n"


def test_a_fault_while_a_sheet_is_made_keeps_the_last_good_one(monkeypatch: pytest.MonkeyPatch) -> None:
    assert manchet(["build", "--only", "html,sheet", "--jobs", "1"]).status == 0
    good = Path("output/plain-loaf.sheet.html").read_bytes()
    Path("a.bake").write_text(PLAIN_LOAF.replace("70%", "71%"))
    Path("b.bake").write_text(POOLISH_LOAF.replace("68%", "69%"))
    broken(monkeypatch, "manchet.workspace.building", "render_formula")
    built = manchet(["build", "--only", "html,sheet", "--jobs", "1"])
    told_of_one(built)
    assert built.out == "output/poolish-loaf.sheet.html\n"
    assert "Plain loaf: the last good sheet was left as it is" in built.err
    assert Path("output/plain-loaf.sheet.html").read_bytes() == good


def test_a_fault_in_the_figures(monkeypatch: pytest.MonkeyPatch) -> None:
    broken(monkeypatch, "manchet.figures.derived", "figures_of")
    told_of_one(manchet(["figures", "Plain loaf"]))
    told_of_one(manchet(["trace", "Plain loaf", "salt"]))
    assert manchet(["figures", "Poolish loaf"]).status == 0


def test_a_fault_in_what_all_share_is_said_once_and_the_rest_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.larder import reading

    def breaks_off(*_: object) -> object:
        raise RecursionError

    monkeypatch.setattr(reading, "ingredients_of", breaks_off)
    Path("c.bake").write_text("larder Row\n  Row flour\n    class wheat flour\n")
    (said,) = errors()
    assert said.startswith("c.bake:1:1: error: this larder and others could not be read to the end")


def test_a_fault_of_the_parser_is_one_file_s(monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.workspace import passes

    sound = passes.parse

    def parse(source: object) -> object:
        if "Plain loaf" in str(source):
            raise IndexError
        return sound(source)  # type: ignore[arg-type]

    monkeypatch.setattr(passes, "parse", parse)
    (said,) = errors()
    assert said.startswith("a.bake:1:1: error: this file could not be read to the end")


def test_what_was_kept_is_no_fault(monkeypatch: pytest.MonkeyPatch) -> None:
    """A fault may be of the moment: it is looked at again, and gone when it is gone."""
    with monkeypatch.context() as patch:
        broken(patch, "manchet.checks.registry", "check")
        told_of_one(manchet(["check"]))
    assert manchet(["check"]).status == 0


def test_accounts_are_thinned_and_one_fault_is_one_account(monkeypatch: pytest.MonkeyPatch) -> None:
    from manchet.workspace.fault_record import MOST_KEPT, way_to_send

    def fault(number: int) -> Exception:
        try:
            exec(compile("\n" * number + "1 / 0", "ours", "exec"))
        except ZeroDivisionError as found:
            return found
        raise AssertionError

    said = {way_to_send(fault(number % 40)) for number in range(80)}
    assert len(said) == 40
    folder = Path(said.pop().split("recorded in ")[1]).parent
    assert len([one for one in folder.iterdir() if one.name.startswith("fault-")]) == MOST_KEPT
