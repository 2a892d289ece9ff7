"""The normal form of a whole text: blank lines, remarks, tabs; and that every file and every example of the house is in it."""

from __future__ import annotations

import random
from collections import Counter
from pathlib import Path

import pytest
from every import every
from fuzz.disturbed import disturbed
from fuzz.texts import sound_texts
from fuzz.trials.tidying import tidying
from fuzz.trials.writing_otherwise import same_figures
from normal.many_texts import wrong
from reference_page.examples import Example, examples_of, whole
from run_length import at_length
from works import reports_of

from manchet.intake.starter import starter
from manchet.intake.table_import import Known, import_table
from manchet.normal import text as normal
from manchet.normal.text import normal_text
from manchet.source.text import SourceText
from manchet.syntax.sameness import reads_same

ROOT = Path(__file__).parents[2]
PAGES = ("grammar/reference.md", "README.md")
EVERY_FILE = sorted([*ROOT.glob("recipes/**/*.bake"), *ROOT.glob("tests/**/*.bake"), *ROOT.glob("compiler/**/*.bake")])
OURS = sorted(ROOT.glob("recipes/**/*.bake"))
LARDER = ROOT / "compiler/manchet/larder/builtin.bake"


def tidy(text: str, words: str = "") -> str:
    return normal_text(SourceText("x", text), words)


@every([*OURS, LARDER], at_least=30)
def test_the_demo_and_the_built_in_larder_are_in_normal_form(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert tidy(text, "American" if "home" in path.parts else "") == text


@every([(page, one) for page in PAGES for one in examples_of(ROOT / page)], at_least=33)
def test_every_example_that_a_baker_is_shown_is_in_normal_form(page: str, example: Example) -> None:
    text = whole(example)
    assert tidy(text) == text


def test_a_new_formula_is_in_normal_form() -> None:
    table = "name,amount,unit,stage\nwhite flour,1000,g,dough\nwheat 550,1/2,kg,dough\nwater,.5,kg,poolish\n"
    for text in (starter("Saturday tin"), import_table("Saturday tin", table, lambda name: Known("")).text):
        assert "formula Saturday tin\n" in text and tidy(text) == text


@every(EVERY_FILE, at_least=450)
def test_every_file_says_the_same_in_its_normal_form(path: Path) -> None:
    tidying(path.read_text(encoding="utf-8"), random.Random(1))


@every(sound_texts()[:: at_length(1, 8)], at_least=11)
def test_no_figure_and_no_report_is_another(text: str) -> None:
    same_figures(text, lambda *_: tidy(text), random.Random(1))
    before, after = (Counter(one.name for one in reports_of(each)) for each in (text, tidy(text)))
    assert before == after


def test_many_texts_typed_in_haste_or_malice() -> None:
    number = at_length(5000, 200)
    assert [fault for fault, _ in wrong(number, 20261129)] == []


TIMES = at_length(20, 1)


@every([(text, number) for text in sound_texts() for number in range(TIMES)], at_least=85)
def test_a_text_typed_in_haste_comes_back(text: str, number: int) -> None:
    written = tidy(text)
    hasty = disturbed(written, random.Random(f"{number} {text}"))
    assert tidy(hasty) == written, hasty


def test_what_is_typed_in_haste_is_not_in_normal_form() -> None:
    """Else the test above would prove nothing."""
    changed = [disturbed(tidy(text), random.Random(1)) != tidy(text) for text in sound_texts()]
    assert sum(changed) > 0.95 * len(changed)


UNTIDY = """

# The house loaf.
formula Loaf


  kind hearth loaf
  makes 2 loaves at 900 g dough   # today
  # all of it
  overall
    white flour 100 %
    # old crop
    water 65%
      at 20 C
  # the one stage
  # there is

    \t
  dough
    everything else
    knead   8 min
    bake 30 min   at 230 C   #hot
      note “mind  the door”
  variant by hand
    without malt
larder House
  Rye
    class rye flour
    per 100 g
      carbohydrate 70 g
      water 13 g
    made of
      white flour 100%

"""
TIDY = """\
# The house loaf.
formula Loaf

  kind hearth loaf
  makes 2 loaves at 900 g dough  # today

  # all of it
  overall
    white flour          100%
    # old crop
    water                 65%
      at 20 C
  # the one stage
  # there is

  dough
    everything else
    knead   8 min
    bake 30 min at 230 C  #hot
      note "mind  the door"

  variant by hand
    without malt

larder House
  Rye
    class         rye flour
    per 100 g
      carbohydrate  70 g
      water         13 g
    made of
      white flour        100%
"""


def test_lines_and_what_is_between_them() -> None:
    assert tidy(UNTIDY) == TIDY
    assert tidy(TIDY) == TIDY
    assert reads_same(SourceText("x", UNTIDY), SourceText("x", TIDY))


def test_nothing_is_nothing() -> None:
    assert [tidy(text) for text in ("", "\n", " \n\t\n", "# a remark  ", "x")] == ["", "", "", "# a remark\n", "x\n"]


def test_what_is_indented_by_tabs_is_so_with_spaces_its_remarks_too() -> None:
    spaces = "formula Loaf\n  kind soft\n\n  # first\n  dough\n    # salted\n    salt                  20 g\n"
    assert (
        tidy(spaces.replace("    # s", "\t\t# s").replace("    salt", "\t\tsalt").replace("  dough", "\tdough"))
        == spaces
    )


def test_lines_that_are_none_are_not_put_apart() -> None:
    text = "Dear baker,\nthis is a letter.\nformula Loaf\nyours,\nthe mill\nformula Other\n"
    assert tidy(text) == text.replace("formula", "\nformula")


def test_a_half_finished_merge_stays_as_git_left_it() -> None:
    text = "<<<<<<< HEAD\nformula Loaf\n=======\nformula Other\n>>>>>>> theirs\nDear baker,\nthis is a letter.\n"
    assert tidy(text) == text


def test_an_odd_indentation_is_the_bakers_to_decide() -> None:
    odd = "formula Loaf\n\n  dough\n   to  scald\n     salt 20 g\n"
    assert tidy(odd) == odd
    assert tidy(odd.removesuffix("\n")) == odd


def test_what_stands_under_a_line_that_cannot_be_read_stays_as_it_is() -> None:
    for head in ("bake log", "Monday's   bread"):
        text = f"{head}\n  12  March : 30   loaves\n     salt  20 g   \n"
        assert tidy(text) == text


def test_a_mistake_that_has_a_safe_fix_is_mended_however_many_there_are() -> None:
    head = "formula Loaf\n  kind soft\n\n  levain\n"
    many = "".join(f"    ferment {number} hours\n    shape as round\n" for number in range(1, 300))
    mended = many.replace("ferment", "ripen").replace(" hours", " h").replace("as round", "round")
    assert tidy(head + many) == head + mended


LOOSE = """
water: 650 g -> water                650 g
- water 650 g -> water                650 g
650 g water -> water                650 g
water ...... 650 g -> water                650 g
oil 2,5 g -> oil                    2.5 g
ferment covered 1h30 at 24 C -> ferment covered 1 h 30 min at 24 C
mix slow for 4 minutes, to 25 degrees C -> mix slow 4 min to 25 C
bake @ 240 C 25 to 30 min   # top deck -> bake 25-30 min at 240 C  # top deck
1. mix by hand 8' to 25 C -> mix by hand 8 min to 25 C
ferment covered 2 h with two folds every 40 min at 24 C -> ferment covered 2 h at 24 C with 2 folds every 40 min
Proof covered an hour at 26 C. -> prove covered 1 h at 26 C
bake 22-25  min at 225    C -> bake 22-25 min at 225 C
bake 30 min at  230 degrees -> bake 30 min at  230 degrees
mix  1:30 -> mix  1:30
water  1,200 g -> water  1,200 g
water about  650 g -> water about  650 g
rest  overnight -> rest  overnight
"""


@every([tuple(row.split(" -> ")) for row in LOOSE.strip().splitlines()], at_least=17)
def test_a_loose_spelling_is_written_down_and_what_has_two_readings_stays(typed: str, written: str) -> None:
    assert tidy(f"formula Loaf\n  dough\n    {typed}\n") == f"formula Loaf\n\n  dough\n    {written}\n"


def test_what_does_not_read_the_same_is_not_believed(monkeypatch: pytest.MonkeyPatch) -> None:
    """Were the form of a line wrong, the text would stay as it was."""
    right = normal.normal_line
    monkeypatch.setattr(normal, "normal_line", lambda body, *rest: right(body, *rest).replace("65%", "66%"))
    assert tidy(UNTIDY) == UNTIDY


def test_a_kitchen_in_american_words() -> None:
    british = (
        "kitchen Home\n  words         American\n  tin deep\n    count       2\n  prover box\n    keeps       28 C\n"
    )
    american = british.replace("tin ", "pan ").replace("prover", "proofer")
    assert (tidy(british, "American"), tidy(american), tidy(american, "British")) == (american, british, british)
