"""What git does with formulas once a clone is set up, each with git itself: showing changes, merging, and what the two give up on.

Git's ways are its own: gitattributes(5), git-merge-file(1).
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
import yaml

from manchet.workspace.git_settings import ATTRIBUTES, SETTINGS

LOOSE = """formula Plain loaf
  kind hearth loaf
  makes 10 loaves at 900 g dough

  overall
    white flour 80%
    water 68%
    salt 2%
    whole rye flour 20%
    instant yeast 0.5%
    sugar 1%
    butter 2%

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
WAYS = {**os.environ, "PATH": f"{Path(sys.executable).parent}{os.pathsep}{os.environ['PATH']}", "GIT_PAGER": "cat"}


def run(*words: str, status: int = 0) -> str:
    done = subprocess.run(words, capture_output=True, text=True, env=WAYS, timeout=120, check=False)
    assert done.returncode == status, done.stdout + done.stderr
    return done.stdout + done.stderr


def written(*changes: tuple[str, str]) -> None:
    file = Path("loaf.bake")
    text = file.read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    file.write_text(text, encoding="utf-8")


def committed(message: str, *changes: tuple[str, str]) -> None:
    written(*changes)
    run("git", "commit", "-qam", message)


def branched(name: str) -> None:
    run("git", "checkout", "-q", "-b", name)


def main_again() -> None:
    run("git", "checkout", "-q", "main")


@pytest.fixture(autouse=True)
def clone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    run("git", "init", "-q", "-b", "main")
    for key, value in (("user.name", "Ines Marrow"), ("user.email", "ines@example.org")):
        run("git", "config", key, value)
    Path("loaf.bake").write_text(LOOSE, encoding="utf-8")
    Path(".gitattributes").write_text(f"{ATTRIBUTES}\n", encoding="utf-8")
    run("manchet", "doctor", "--git")
    run("git", "add", ".")
    run("git", "commit", "-qm", "one loaf")
    return tmp_path


def test_the_settings_are_shown_and_stand_in_this_clone_alone() -> None:
    said = run("manchet", "doctor", "--git")
    for one in SETTINGS:
        assert f"git config {one.key} '{one.value}'" in said
        assert run("git", "config", "--local", one.key).rstrip("\n") == one.value
    assert "nothing to write" in said and ".gitattributes" not in said
    assert run("git", "status", "--porcelain") == ""


def test_a_command_that_is_on_no_path_is_written_whole(tmp_path: Path) -> None:
    bare = {**WAYS, "PATH": "/usr/bin:/bin"}
    command = Path(sys.executable).parent / "manchet"
    subprocess.run([command, "doctor", "--git"], env=bare, check=True, capture_output=True, timeout=120)
    written(("water 68%", "water 70%"))
    done = subprocess.run(
        ["git", "diff"], env={**bare, "GIT_PAGER": "cat"}, capture_output=True, text=True, timeout=120
    )
    assert "+    water                 70%" in done.stdout, done.stderr


def test_it_says_what_gitattributes_lack() -> None:
    Path(".gitattributes").write_text("", encoding="utf-8")
    assert ATTRIBUTES in run("manchet", "doctor", "--git")


def test_outside_a_checkout_it_says_so(
    tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path_factory.mktemp("apart"))
    assert "in no git checkout" in run("manchet", "doctor", "--git", status=2)


def test_columns_set_anew_are_no_change_to_look_at() -> None:
    run("manchet", "tidy")
    assert run("git", "status", "--porcelain") and run("git", "diff") == ""
    written(("water                 68%", "water                 70%"))
    changed = [line for line in run("git", "diff").splitlines() if line.startswith(("+ ", "- "))]
    assert [line.split()[1:] for line in changed] == [["water", "68%"], ["water", "70%"]]


def test_one_side_tidied_and_the_other_changed_the_water() -> None:
    branched("tidied")
    run("manchet", "tidy")
    run("git", "commit", "-qam", "tidied")
    main_again()
    committed("wetter", ("water 68%", "water 70%"), ("salt 2%", "salt 1.8%"))
    run("git", "merge", "-q", "tidied", "-m", "both")
    text = Path("loaf.bake").read_text(encoding="utf-8")
    assert "water                 70%" in text and "salt                   1.8%" in text
    assert run("manchet", "tidy", "--check")


def test_without_the_driver_the_same_two_meet() -> None:
    """What the driver is for: should git come to merge this by itself, it is not needed any more."""
    run("git", "config", "--remove-section", "merge.bake")
    branched("tidied")
    run("manchet", "tidy")
    run("git", "commit", "-qam", "tidied")
    main_again()
    committed("wetter", ("water 68%", "water 70%"))
    assert "CONFLICT" in run("git", "merge", "-q", "tidied", "-m", "both", status=1)


def test_the_same_line_on_both_sides_is_left_to_a_person() -> None:
    branched("theirs")
    committed("less", ("salt 2%", "salt 1.8%"))
    main_again()
    committed("more", ("salt 2%", "salt 2.2%"))
    assert "1 place changed on both sides" in run("git", "merge", "-q", "theirs", "-m", "both", status=1)
    report = run("manchet", "check", "loaf.bake", status=1)
    assert report.count("error: ") == 1 and "take ours: `salt 2.2%` or take theirs: `salt 1.8%`" in report


def test_two_sound_changes_that_together_cannot_be_true() -> None:
    """70 + 30 + 10 % of flour: written, so that nothing is lost, and marked by git as not merged."""
    branched("theirs")
    committed("spelt", ("white flour 80%", "white flour 70%"), ("butter 2%", "butter 2%\n    spelt flour 10%"))
    main_again()
    committed("more rye", ("white flour 80%", "white flour 70%"), ("whole rye flour 20%", "whole rye flour 30%"))
    said = run("git", "merge", "-q", "theirs", "-m", "both", status=1)
    assert "both together are not" in said and "110" in said
    text = Path("loaf.bake").read_text(encoding="utf-8")
    assert "<<<<" not in text and "spelt flour" in text and "30%" in text
    assert run("git", "status", "--porcelain").startswith("UU loaf.bake")


def test_what_no_side_can_read_merges_all_the_same() -> None:
    """A mistake that was there before is none of the merge."""
    committed("odd", ("    sugar 1%", "    sugar a little"))
    branched("theirs")
    committed("less", ("butter 2%", "butter 1%"))
    main_again()
    committed("more", ("water 68%", "water 69%"))
    run("git", "merge", "-q", "theirs", "-m", "both")
    assert "butter                 1%" in Path("loaf.bake").read_text(encoding="utf-8")


def hook(name: str) -> list[str]:
    file = Path(__file__).parents[2] / ".pre-commit-hooks.yaml"
    (one,) = [one for one in yaml.safe_load(file.read_text(encoding="utf-8")) if one["id"] == name]
    return [*one["entry"].split(), *(["loaf.bake"] if one.get("pass_filenames", True) else [])]


def test_the_hook_that_checks_reads_the_whole_bakery() -> None:
    """With the larder's entry renamed, the formula that weighs it is the one that breaks."""
    larder = "larder House\n  tin sugar\n    class sweetener\n"
    Path("larder.bake").write_text(larder, encoding="utf-8")
    committed("our sugar", ("    sugar 1%", "    tin sugar 1%"))
    run(*hook("manchet-check"))
    Path("larder.bake").write_text(larder.replace("tin sugar", "box sugar"), encoding="utf-8")
    run("manchet", "check", "larder.bake")
    assert "tin sugar" in run(*hook("manchet-check"), status=1)


def test_the_hook_that_tidies_stops_at_what_is_not_tidy() -> None:
    assert "loaf.bake:6: not tidy" in run(*hook("manchet-tidy"), status=1)
    run("manchet", "tidy")
    run(*hook("manchet-tidy"))


def test_a_version_that_is_not_there_is_named() -> None:
    said = run("manchet", "merge", "none.bake", "loaf.bake", "loaf.bake", status=2)
    assert "none.bake" in said and Path("loaf.bake").read_text(encoding="utf-8") == LOOSE


def test_difftool_says_it_in_bakers_terms() -> None:
    committed("less salt", ("salt 2%", "salt 1.8%"))
    said = run("git", "difftool", "-y", "-t", "bake", "HEAD~1", "HEAD")
    assert "Plain loaf: before → after\n  salt 2 → 1.8 %: 104 g → 93 g today\n" in said
    written(("water 68%", "water 70%"))
    assert "  water 68 → 70 %" in run("git", "difftool", "-y", "-t", "bake")


def test_difftool_of_a_new_file_and_of_one_that_is_gone() -> None:
    Path("loaf.bake").rename("other.bake")
    run("git", "add", "-A")
    said = run("git", "difftool", "-y", "-t", "bake", "--no-renames", "HEAD")
    assert "Plain loaf: only in before\n" in said and "Plain loaf: only in after\n" in said


def test_difftool_of_a_larder_says_what_that_does_to_each_bread() -> None:
    larder = "larder House\n  butter\n    class fat\n    per 100 g\n      fat 82 g\n    no allergens\n"
    Path("larder.bake").write_text(larder, encoding="utf-8")
    run("git", "add", ".")
    run("git", "commit", "-qm", "larder")
    Path("larder.bake").write_text(larder.replace("no allergens", "allergens milk"), encoding="utf-8")
    said = run("git", "difftool", "-y", "-t", "bake")
    assert "Plain loaf: before → after\n  now contains MILK (from butter)\n" in said


def test_as_an_external_diff_of_git_log() -> None:
    committed("less salt", ("salt 2%", "salt 1.8%"))
    said = run("git", "-c", "diff.bake.command=manchet compare --git", "log", "-p", "--ext-diff", "-1")
    assert "  salt 2 → 1.8 %" in said and "less salt" in said


def test_compare_is_told_what_git_hands_over() -> None:
    assert "--git takes a path and two files" in run("manchet", "compare", "--git", "loaf.bake", status=2)
    assert "none.bake" in run("manchet", "compare", "--git", "loaf.bake", "none.bake", "loaf.bake", status=2)


def hook_before_the_message(monkeypatch: pytest.MonkeyPatch) -> None:
    """The hook as pre-commit runs it, and an editor that keeps what it was shown."""
    file = Path(".git/hooks/prepare-commit-msg")
    command = " ".join(hook("manchet-compare")[:-1])
    file.write_text(f'#!/bin/sh\nPRE_COMMIT_COMMIT_MSG_SOURCE="$2" exec {command} "$1"\n', encoding="utf-8")
    file.chmod(0o755)
    editor = Path(".git/editor")
    editor.write_text(
        '#!/bin/sh\ncp "$1" .git/shown\nprintf "less salt\\n" | cat - .git/shown > "$1"\n', encoding="utf-8"
    )
    editor.chmod(0o755)
    monkeypatch.setitem(WAYS, "GIT_EDITOR", str(editor.resolve()))


def test_the_hook_says_in_the_message_what_is_about_to_be_committed(monkeypatch: pytest.MonkeyPatch) -> None:
    hook_before_the_message(monkeypatch)
    written(("salt 2%", "salt 1.8%"))
    run("git", "add", ".")
    written(("water 68%", "water 90%"))  # not staged: none of this commit
    run("git", "commit", "-q")
    shown = Path(".git/shown").read_text(encoding="utf-8").splitlines()
    assert shown[:4] == ["", "# Plain loaf", "#   salt 2 → 1.8 %: 104 g → 93 g today", "#"]
    assert shown[4].startswith("# Please enter the commit message")
    assert run("git", "log", "-1", "--format=%B").strip() == "less salt"


def test_the_hook_leaves_a_message_that_is_written_and_one_without_news(monkeypatch: pytest.MonkeyPatch) -> None:
    hook_before_the_message(monkeypatch)
    committed("less salt, as said", ("salt 2%", "salt 1.8%"))
    assert run("git", "log", "-1", "--format=%B").strip() == "less salt, as said"
    run("git", "commit", "-q", "--allow-empty")
    assert "salt" not in Path(".git/shown").read_text(encoding="utf-8")
    run("git", "config", "commit.cleanup", "verbatim")
    written(("water 68%", "water 70%"))
    run("git", "commit", "-qa")
    assert "water" not in Path(".git/shown").read_text(encoding="utf-8")


def test_the_hook_with_another_mark_and_before_the_first_commit(
    tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch
) -> None:
    hook_before_the_message(monkeypatch)
    run("git", "config", "core.commentChar", ";")
    written(("salt 2%", "salt 1.8%"))
    run("git", "commit", "-qa")
    assert "\n;   salt 2 → 1.8 %" in Path(".git/shown").read_text(encoding="utf-8")
    monkeypatch.chdir(tmp_path_factory.mktemp("first"))
    run("git", "init", "-q")
    Path("loaf.bake").write_text(LOOSE, encoding="utf-8")
    Path("message").write_text("", encoding="utf-8")
    run("git", "add", ".")
    run("manchet", "compare", "--message", "message")
    assert Path("message").read_text(encoding="utf-8") == ""
