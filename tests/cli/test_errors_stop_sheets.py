"""What cannot be weighed, or is of nothing, is an error of `check` too; and with an error nothing is printed over a good sheet."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from cli.transcripts import manchet, scene
from loaves import PLAIN_LOAF

TINY_LYE = """\
formula Knots
  kind lye
  makes {number} knots at 60 g dough

  overall
    white flour          100%
    water                 55%
    salt                   2%
    instant yeast          0.5%

  dough
    everything else
    mix slow 8 min to 25 C
    ferment covered 1 h at 25 C
    divide
    shape round
    prove covered 1 h at 27 C
    dip in lye bath 4 g each
    bake 15 min at 230 C
    cool 1 h

preparation lye bath
  water      0.965 g
  bath lye   0.035 g

larder Ours
  bath lye
    class lye
"""
BUILD = ["build", "--only", "html,sheet", "--jobs", "1"]
SHEET = Path("output/plain-loaf.sheet.html")


@pytest.fixture(autouse=True)
def bakery(tmp_path: Path) -> Iterator[None]:
    with scene(tmp_path, {}):
        Path("plain.bake").write_text(PLAIN_LOAF)
        yield


def errors(words: list[str]) -> list[str]:
    ran = manchet(words)
    assert ran.status == 1, ran
    return [line for line in (ran.out + ran.err).splitlines() if ": error: " in line]


def test_what_no_scale_can_weigh_is_an_error_of_check_and_of_build() -> None:
    Path("knots.bake").write_text(TINY_LYE.format(number=20))
    said = errors(["check"])
    assert len(said) == 1 and "0.035 g of bath lye in" in said[0] and "[too-small-to-weigh]" in said[0]
    assert errors(BUILD) == said
    assert not list(Path("output").glob("lye-bath*")) and SHEET.exists()


@pytest.mark.parametrize(
    ("size", "says"),
    [
        (["--have", "water 1 g"], "makes no whole loaf"),
        (["--dough", "800 g"], "800 g of dough to divide makes no whole loaf: one takes 900 g"),
        (["--pieces", "1", "--piece-weight", "1 g dough"], "is too little for a scale"),
    ],
)
def test_an_amount_that_cannot_be_made_is_never_printed_over_a_good_sheet(size: list[str], says: str) -> None:
    assert manchet(BUILD).status == 0
    good = SHEET.read_bytes()
    ran = manchet([*BUILD, "Plain loaf", *size])
    assert ran.status == 1 and says in ran.err
    assert "the last good sheet was left as it is" in ran.err
    assert SHEET.read_bytes() == good


def test_what_is_wrong_with_the_amount_in_the_file_is_not_said_of_another() -> None:
    Path("knots.bake").write_text(TINY_LYE.format(number=20))
    assert errors(["check", "lye bath"])
    bath = [word.replace("sheet", "preparations") for word in BUILD]
    assert manchet([*bath, "lye bath", "--dough", "5 kg"]).status == 0
