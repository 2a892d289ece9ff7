"""`check --mend` types what cannot change what is meant: whole files or none, and nothing besides."""

from __future__ import annotations

import os
import re
import stat
from pathlib import Path

import pytest
from cli.transcripts import manchet
from every import every

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix, Severity
from manchet.source.text import SourceText
from manchet.syntax.parser import parse
from manchet.syntax.sameness import reads_same
from manchet.workspace import mending
from manchet.workspace.checking import check_selection
from manchet.workspace.mending import MendedFile, mend_files, write_mended
from manchet.workspace.selection import selections
from manchet.workspace.trouble import Blocked

ROOT = Path(__file__).parents[2]
FILES = sorted([*ROOT.glob("recipes/**/*.bake"), *ROOT.glob("tests/corpus/quiet/*.bake")])

LOAF = """formula Plain loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough

  overall
    white flour           100%
    water                  68%
    salt                    2%
    instant yeast           0.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 60-65 min at 25 C
    bake 40 min at 230 C, steam, vent open after 10 min
    cool 2 h
"""
SPOILT = (
    LOAF.replace("2 h at", "2 hours at")
    .replace("60-65 min", "60—65 minutes")
    .replace("water         ", "water\u00a0\u2003\u00a0      ")
    .replace("    divide", "\tdivide")
)


@pytest.fixture(autouse=True)
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("MANCHET_CACHE", "off")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def mended(path: str = "a.bake") -> tuple[MendedFile, ...]:
    (selection,) = selections([path])
    return mend_files(selection, check_selection(selection, use_cache=False).diagnostics)


@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"], ids=["plain", "byte-order mark"])
@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"], ids=repr)
def test_a_file_is_as_it_was_but_for_what_was_mended(here: Path, mark: bytes, newline: str) -> None:
    spoilt, sound = (mark + text.replace("\n", newline).encode() for text in (SPOILT, LOAF))
    (here / "a.bake").write_bytes(spoilt)
    run = manchet(["check", "a.bake", "--mend"])
    assert (here / "a.bake").read_bytes() == sound
    assert run.status == 0 and "nothing to report" in run.out, run


def test_signs_beyond_the_basic_plane_move_no_column(here: Path) -> None:
    about = '  about "\U0001f950\U0001f950 of 𝔐 e\u0301, 2 hours"\n'
    until = ' until "\U0001f950 swollen"'
    text = LOAF.replace("  kind", f"{about}  kind")
    spoilt = text.replace("cool 2 h", f"cool{until} 2 hours").replace("\n", "\n", 1)
    (here / "a.bake").write_text(spoilt, encoding="utf-8")
    manchet(["check", "a.bake", "--mend"])
    assert (here / "a.bake").read_text(encoding="utf-8") == text.replace("cool 2 h", f"cool{until} 2 h")


def test_what_is_shown_is_what_is_then_typed_and_showing_writes_nothing(here: Path) -> None:
    (here / "a.bake").write_text(SPOILT, encoding="utf-8")
    shown = manchet(["check", "--mend", "--dry-run"])
    assert (here / "a.bake").read_text(encoding="utf-8") == SPOILT
    done = manchet(["check", "--mend"])
    lines = [line for line in shown.out.split("\n") if ": would mend: " in line]
    assert lines and [line.replace("would mend", "mended") for line in lines] == done.out.split("\n")[: len(lines)]
    assert "\n-    ferment covered 2 hours at 25 C\n" in shown.out
    assert "\n+    ferment covered 2 h at 25 C\n" in shown.out
    assert manchet(["check", "--mend", "--dry-run"]).out == "nothing would be mended\n"


def test_a_program_that_reads_the_report_is_told_beside_it(here: Path) -> None:
    (here / "a.bake").write_text(SPOILT, encoding="utf-8")
    run = manchet(["check", "--mend", "--format", "json"])
    assert run.out.startswith("{") and '"diagnostics": []' in run.out
    assert "a.bake:14:21: mended: write `2 h` [unit-long-form]" in run.err


def test_only_the_formula_that_was_asked_for_is_mended(here: Path) -> None:
    other = SPOILT.replace("Plain loaf", "Other loaf")
    (here / "a.bake").write_text(SPOILT.replace("\tdivide", "    divide") + "\n" + other, encoding="utf-8")
    manchet(["check", "Plain loaf", "--mend"])
    assert (here / "a.bake").read_text(encoding="utf-8") == LOAF + "\n" + other


def test_more_mistakes_than_a_check_tells_at_once_are_all_mended(here: Path) -> None:
    steps = "".join(f"    rest {number} minutes\n" for number in range(1, 60))
    text = LOAF.replace("    divide\n", steps + "    divide\n")
    (here / "a.bake").write_text(text, encoding="utf-8")
    manchet(["check", "a.bake", "--mend"])
    assert (here / "a.bake").read_text(encoding="utf-8") == text.replace(" minutes", " min")


def test_a_choice_is_never_made_for_the_baker(here: Path) -> None:
    text = LOAF.replace("water  ", "watter ").replace("2 h at", "2,500 h at")
    (here / "a.bake").write_text(text, encoding="utf-8")
    assert mended() == ()
    run = manchet(["check", "a.bake", "--mend"])
    assert run.status == 1 and run.out.startswith("nothing mended\n")
    assert (here / "a.bake").read_text(encoding="utf-8") == text


def test_a_file_that_was_saved_meanwhile_is_left_alone(here: Path) -> None:
    for name in "ab":
        (here / f"{name}.bake").write_text(SPOILT.replace("Plain", name), encoding="utf-8")
    files = mended(".")
    (here / "b.bake").write_text("# saved by the editor\n", encoding="utf-8")
    with pytest.raises(Blocked, match=r"b\.bake was changed while it was looked over, and nothing was written"):
        list(write_mended(files))
    assert (here / "a.bake").read_text(encoding="utf-8") == SPOILT.replace("Plain", "a")
    assert (here / "b.bake").read_text(encoding="utf-8") == "# saved by the editor\n"


def test_a_file_keeps_who_may_read_it_and_leaves_nothing_beside(here: Path) -> None:
    (here / "a.bake").write_text(SPOILT, encoding="utf-8")
    os.chmod(here / "a.bake", 0o640)
    manchet(["check", "a.bake", "--mend"])
    assert stat.S_IMODE(os.stat(here / "a.bake").st_mode) == 0o640
    assert os.listdir(here) == ["a.bake"]


def test_a_full_disk_leaves_the_file_whole(here: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (here / "a.bake").write_text(SPOILT, encoding="utf-8")

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "replace", full)
    run = manchet(["check", "a.bake", "--mend"])
    assert run.status == 1 and "the disk is full" in run.err
    assert (here / "a.bake").read_text(encoding="utf-8") == SPOILT
    assert os.listdir(here) == ["a.bake"]


@pytest.mark.parametrize("instead", ["salt 3%", "salt 2", ""], ids=["another figure", "a mistake", "nothing"])
def test_a_fix_that_says_it_is_safe_is_not_believed(here: Path, monkeypatch: pytest.MonkeyPatch, instead: str) -> None:
    (here / "a.bake").write_text(SPOILT, encoding="utf-8")
    found = mending._reports

    def with_a_lie(*of: object) -> tuple[Diagnostic, ...]:
        reports = found(*of)  # type: ignore[arg-type]
        one = next((r for r in reports if r.name == "tab-indentation"), None)
        if one is None:
            return reports
        salt = one.place._replace(line=8, end_line=8, column=5, end_column=31, text="    salt                    2%")
        lie = Diagnostic("salt-odd", Severity.NOTE, "x", salt, fixes=(Fix("x", (Edit(salt, instead),), True),))
        return (*reports, lie)

    monkeypatch.setattr(mending, "_reports", with_a_lie)
    (file,) = mended()
    assert (file.done, file.after) == ((), file.before)
    run = manchet(["check", "a.bake", "--mend"])
    assert "a.bake: left as it is, for with its fixes it would not read the same\n" in run.out
    assert (here / "a.bake").read_text(encoding="utf-8") == SPOILT


@every(FILES, at_least=85)
def test_a_spoilt_file_is_mended_back_to_what_it_said(file: Path) -> None:
    """Long units and tabs in every file of the demo and of the sound corpus."""
    text = file.read_text(encoding="utf-8")
    spoilt = "\n".join(map(_spoilt, text.split("\n")))
    if spoilt == text or parse(SourceText("a", text)).diagnostics:
        return
    safe = {fix.safe for one in parse(SourceText("a", spoilt)).diagnostics for fix in one.fixes}
    assert safe <= {True}
    for _ in range(100):
        fixes = [fix for one in parse(SourceText("a", spoilt)).diagnostics for fix in one.fixes]
        after = mending.mend("a", spoilt, fixes).text
        if after == spoilt:
            break
        assert reads_same(SourceText("a", spoilt), SourceText("a", after))
        spoilt = after
    assert reads_same(SourceText("a", text), SourceText("a", spoilt))


def _spoilt(line: str) -> str:
    depth = len(line) - len(line.lstrip(" "))
    if depth % 2 == 0:
        line = "\t" * (depth // 2) + line[depth:]
    prose = '"' in line or "#" in line
    return line if prose else re.sub(r"(?<=\d) (min|h)\b", lambda unit: LONG[unit[1]], line)


LONG = {"min": " minutes", "h": " hours"}


def test_texts_that_say_another_thing_are_not_the_same() -> None:
    one = SourceText("a", LOAF)
    assert reads_same(one, SourceText("b", "# a remark\n\n" + LOAF.replace("  2%", " 2 %")))
    for other in (("2%", "3%"), ("covered 2 h", "2 h"), ("    cool 2 h\n", ""), ("Plain", "Plainer"), ("25 C", "25 F")):
        assert not reads_same(one, SourceText("a", LOAF.replace(*other))), other
