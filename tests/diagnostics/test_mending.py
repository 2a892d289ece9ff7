"""Fixes carried out on a text: what is not fixed stays to the byte, what does not fit is left out whole."""

from __future__ import annotations

import pytest

from manchet.diagnostics.diagnostic import Edit, Fix, Place
from manchet.source.mending import mend


def edit(line: int, column: int, end: int, text: str, written: str, end_line: int = 0) -> Edit:
    return Edit(Place("a.bake", line, column, end_line or line, end, written), text)


def fix(*edits: Edit) -> Fix:
    return Fix("write it", edits)


def test_all_places_are_those_of_the_text_as_it_was() -> None:
    one = fix(edit(1, 1, 2, "flour", "a b"), edit(1, 3, 4, "", "a b"))
    two = fix(edit(2, 1, 1, "  ", "c"))
    assert mend("a.bake", "a b\nc", [two, one]) == ("flour \n  c", (0, 1))


@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"], ids=repr)
def test_a_file_keeps_its_ends_of_lines_and_a_new_line_gets_them_too(newline: str) -> None:
    text = newline.join(["a", "\tb  ", "c\x0bd\u2028e", ""])
    added = fix(edit(3, 6, 6, "\nf", "c\x0bd\u2028e"))
    assert mend("a.bake", text, [added]).text == newline.join(["a", "\tb  ", "c\x0bd\u2028e", "f", ""])


def test_columns_count_code_points_beyond_the_basic_plane_too() -> None:
    line = "𝔐\U0001f950e\u0301 minutes"
    assert mend("a.bake", line, [fix(edit(1, 6, 13, "min", line))]).text == "𝔐\U0001f950e\u0301 min"


def test_a_line_is_taken_out_with_its_end_and_the_last_one_without() -> None:
    out = fix(edit(1, 1, 1, "", "a", end_line=2))
    assert mend("a.bake", "a\r\nb", [out]).text == "b"
    assert mend("a.bake", "a", [out]).text == ""


def test_of_fixes_that_meet_the_first_is_carried_out_and_the_other_not_in_part() -> None:
    one = fix(edit(1, 2, 4, "x", "abcd"))
    two = fix(edit(1, 3, 5, "y", "abcd"), edit(2, 1, 2, "z", "e"))
    inside = fix(edit(1, 2, 2, "<", "abcd"), edit(1, 4, 4, ">", "abcd"))
    assert mend("a.bake", "abcd\ne", [one, two, inside]) == ("a<x>d\ne", (0, 2))
    assert mend("a.bake", "abcd\ne", [two, one]) == ("aby\nz", (0,))


def test_two_texts_for_one_point_have_no_order() -> None:
    here = [fix(edit(1, 2, 2, text, "ab")) for text in "xy"]
    assert mend("a.bake", "ab", here) == ("axb", (0,))


@pytest.mark.parametrize(
    "other",
    [
        edit(1, 1, 2, "x", "A"),
        edit(9, 1, 2, "x", "a"),
        edit(0, 1, 2, "x", "a"),
        edit(1, 2, 1, "x", "a"),
        Edit(Place("b.bake", 1, 1, 1, 2, "a"), "x"),
    ],
    ids=["another line", "past the end", "before the start", "backwards", "another file"],
)
def test_a_fix_that_does_not_fit_is_left_out_whole(other: Edit) -> None:
    assert mend("a.bake", "a\nb", [fix(edit(2, 1, 2, "y", "b"), other)]) == ("a\nb", ())
