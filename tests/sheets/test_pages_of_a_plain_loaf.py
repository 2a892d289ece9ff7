"""Sheets of plain breads of one dough, on both papers: a leaf each, turned at the bench, and no foot stands alone."""

from __future__ import annotations

from pathlib import Path

import pytest
from sheets.paper import LaidPage, laid_out

from manchet.cli.main import command

FORMULA = """formula Plain loaf
  kind {kind}
  makes {makes}
  bake loss 12%

  overall
{materials}

  dough
    everything else
{steps}

kitchen Back room
  air            21 C
  flour          20 C
  tap            12 C
  mixer spiral
    takes        4-20 kg dough
    slow         100 turns a minute
    fast         200 turns a minute
    warms        10 C in 4 min slow, 6 min fast
  tin long tin
    inside       230 x 110 x 90 mm
    count        24
"""
LEAN = ("white flour 100%", "water 66%", "salt 2%", "fresh yeast 1.5%")
SOFT = ("white flour 100%", "water 60%", "butter 3%", "sugar 2%", "salt 2%", "fresh yeast 2%")
RICH = ("white flour 100%", "milk 40%", "eggs 15%", "butter 15%", "sugar 10%", "salt 1.8%", "fresh yeast 4%", "lemon zest 0.5%")  # fmt: skip
TIN = (
    "mix slow 4 min", "mix fast 6 min to 26 C", "ferment covered 75-90 min at 26 C", "divide", "shape long",
    "grease tins with sunflower oil 3 g each", "place seam down in long tin",
    "prove covered 55-65 min at 30 C to 20 mm below the rim", 'score "one long cut, 8 mm deep"',
    "bake 35-40 min at 205 C to 95 C core", "turn out", "cool 2 h",
)  # fmt: skip
HEARTH = (
    "mix slow 4 min", "mix fast 6 min to 25 C", "ferment covered 120 min at 25 C with 2 folds every 40 min", "divide",
    "shape round", "rest covered 15 min", "shape oval", "place seam up in basket",
    "prove covered 60 min at 26 C until \"a finger's mark fills slowly\"", 'score "one long cut, at 30 degrees"',
    "bake 15 min at 250 C, steam", "bake 25 min at 220 C to 97 C core, vent open", "cool 2 h",
)  # fmt: skip
PLAIT = (
    "mix slow 4 min", "mix fast 8 min to 25 C", "ferment covered 60 min at 25 C with a fold after 30 min", "divide",
    "shape round", "rest covered 15 min", "shape as plait of 4", "prove covered 60 min at 27 C until \"a finger's mark stays\"",
    "brush with eggs 8 g each", "sprinkle with poppy seeds 2 g each", "bake 30 min at 185 C to 93 C core", "cool 90 min",
)  # fmt: skip
SOAKED = ("mix slow 2 min", "rest covered 30 min")
"""An autolyse before it: two lines more, which is where a page ends at another step."""
BREADS = {
    "tin": ("tin loaf", "12 loaves at 900 g dough", SOFT, TIN),
    "tin, soaked": ("tin loaf", "12 loaves at 900 g dough", SOFT, SOAKED + TIN),
    "rich tin, soaked": ("soft", "12 loaves at 800 g dough", RICH, SOAKED + TIN),
    "hearth": ("hearth loaf", "10 loaves at 900 g dough", LEAN, HEARTH),
    "hearth, soaked": ("hearth loaf", "10 loaves at 900 g dough", LEAN, SOAKED + HEARTH),
    "plait": ("soft", "20 plaits at 500 g dough", RICH, PLAIT),
    "plait of soft dough, soaked": ("soft", "20 plaits at 500 g dough", SOFT, SOAKED + PLAIT),
}


def pages(bread: str, paper: str, folder: Path) -> list[LaidPage]:
    kind, makes, materials, steps = BREADS[bread]
    said = {"materials": materials, "steps": steps}
    text = FORMULA.format(
        kind=kind, makes=makes, **{k: "\n".join("    " + line for line in v) for k, v in said.items()}
    )
    (folder / "plain.bake").write_text(text, encoding="utf-8")
    command(["build", str(folder), "--only", "sheet,html", "--paper", paper, "--out", str(folder)])
    return laid_out((folder / "plain-loaf.sheet.html").read_text(encoding="utf-8"))


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("bread", BREADS)
def test_two_sides_at_most_and_no_foot_alone(bread: str, paper: str, tmp_path: Path) -> None:
    found = pages(bread, paper, tmp_path)
    assert len(found) <= 2
    assert not found[-1].words.startswith("Overall"), "nothing is done on the last side"
    if len(found) == 2:
        assert found[1].words.startswith("bench and oven"), "turned where the dough leaves the bowl"
