"""A file that git left half merged: one report for each place, and two ways out of it."""

from __future__ import annotations

import pytest
from loaves import PLAIN_LOAF

from manchet.normal.text import normal_text
from manchet.source.mending import mend
from manchet.source.text import SourceText
from manchet.syntax.parser import parse
from manchet.workspace.bakery import read

WATER = next(line for line in PLAIN_LOAF.splitlines(keepends=True) if line.split()[:1] == ["water"])
OTHER = WATER.replace("water", "whole milk")
MARKED = f"<<<<<<< HEAD\n{WATER}=======\n{OTHER}>>>>>>> milk\n"
BOTH = PLAIN_LOAF.replace(WATER, MARKED)


def mended(text: str, choice: int) -> str:
    reports = parse(SourceText("loaf.bake", text)).diagnostics
    return mend("loaf.bake", text, [one.fixes[choice] for one in reports]).text


def test_it_is_one_report_and_all_else_is_quiet() -> None:
    nonsense = BOTH.replace("    salt", "    no such thing at all\n    salt")
    (one,) = read([SourceText("loaf.bake", nonsense)]).diagnostics
    assert (one.name, one.place.line) == ("merge-unfinished", BOTH.split("\n").index("<<<<<<< HEAD") + 1)
    assert one.message == "two versions of 1 line meet here and were not joined"
    assert one.help.startswith("take ours (HEAD): `water") and "take theirs (milk): `whole milk" in one.help
    assert not any(fix.safe for fix in one.fixes)


def test_either_fix_gives_that_version_whole() -> None:
    assert mended(BOTH, 0) == PLAIN_LOAF
    assert mended(BOTH, 1) == PLAIN_LOAF.replace(WATER, OTHER)


def test_the_version_both_come_from_may_stand_between_them() -> None:
    three = BOTH.replace("=======\n", f"||||||| 4f2a91c\n{WATER.replace('water', 'buttermilk')}=======\n")
    assert mended(three, 0) == PLAIN_LOAF
    assert mended(three, 1) == PLAIN_LOAF.replace(WATER, OTHER)


def test_two_places_are_two_reports_and_nothing_may_be_one_version() -> None:
    gone = PLAIN_LOAF.replace(WATER, f"<<<<<<< HEAD\n{WATER}=======\n>>>>>>> dry\n")
    twice = f"{gone}\n{gone.replace('Plain loaf', 'Other loaf')}"
    reports = parse(SourceText("loaf.bake", twice)).diagnostics
    assert [one.name for one in reports] == ["merge-unfinished"] * 2
    assert all(one.fixes[1].title == "take theirs (dry): nothing" for one in reports)


@pytest.mark.parametrize("mark", ["<<<<<<< HEAD", ">>>>>>> milk"])
def test_a_mark_left_by_itself_is_to_be_left_out(mark: str) -> None:
    (one,) = parse(SourceText("loaf.bake", PLAIN_LOAF.replace(WATER, f"{mark}\n{WATER}"))).diagnostics
    assert one.name == "merge-unfinished" and [fix.title for fix in one.fixes] == ["leave the line out"]
    assert mended(PLAIN_LOAF.replace(WATER, f"{mark}\n{WATER}"), 0) == PLAIN_LOAF


def test_no_sheet_is_made_of_it_but_others_draw_on_our_version() -> None:
    house = "<<<<<<< HEAD\nlarder\n  sea salt flakes\n    class salt\n=======\n>>>>>>> other\n"
    loaf = PLAIN_LOAF.replace("    salt", "    sea salt flakes")
    bakery = read([SourceText("larder.bake", house), SourceText("loaf.bake", loaf)])
    assert [one.name for one in bakery.mistakes] == ["merge-unfinished"] and len(bakery.formulas) == 1
    assert not read([SourceText("loaf.bake", BOTH)]).formulas


def test_tidy_leaves_it_as_git_left_it() -> None:
    assert normal_text(SourceText("loaf.bake", BOTH.replace("  dough", "  dough  "))) == BOTH.replace(
        "  dough", "  dough  "
    )
