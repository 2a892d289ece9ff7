"""Two mistakes that once hid each other, or made a third: each is told, and nothing else."""

from __future__ import annotations

from every import every
from works import bakery_of

PLAN = "plan Saturday market\n  on 2026-11-28\n  Plain loaf 12 loaves{}\n\n"
LOAF = """formula Plain loaf
  kind hearth loaf
{}  {}
    white flour 100%
    water 68%
    salt 2%
    instant yeast 0.5%

{}  dough
{}    {}
    mix slow 8 min to 25 C
    ferment covered 2 h at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C, steam
    cool 2 h
"""
MAKES = "  makes 10 loaves at 900 g dough\n"
POOLISH = """  poolish with {} of all flour
    white flour 100%
    water 100%
    instant yeast 0.1%
    mix by hand 3 min to 22 C
    ripen covered 12-14 h at 20 C

"""
READY = ", ready Sat 06:00"

TOGETHER = [
    ("no end, and another noun", PLAN.format("") + LOAF.format(MAKES.replace("loaves", "loaaves"), "overall", "", "", "everything else"),
     {"wanted-by-when", "no-such-piece"}),
    ("nothing made, and a slip in `overall`", PLAN.format(READY) + LOAF.format("", "ovverall", "", "", "everything else"),
     {"no-makes", "unknown-word"}),
    ("too much water in a stage, and a slip in `everything else`",
     LOAF.format(MAKES, "overall", POOLISH.format("80%"), "    poolish\n", "everything elsse"),
     {"takes-more-than-there-is", "neither-stage-nor-step"}),
    ("a stage that nobody takes, and a slip in `add salt`",
     LOAF.format(MAKES, "overall", POOLISH.format("20%"), "    addd salt\n", "everything else"),
     {"never-used", "neither-stage-nor-step"}),
]  # fmt: skip


@every(TOGETHER, at_least=4)
def test_each_is_told(title: str, text: str, names: set[str]) -> None:
    assert {one.name for one in bakery_of(text).diagnostics if one.severity.name == "ERROR"} == names
