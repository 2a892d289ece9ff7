"""Instant yeast typed for fresh, and fresh for instant: caught in sound doughs of many schools, and these quiet themselves."""

from pathlib import Path

import pytest
from every import every
from works import reports_of

ROOT = Path(__file__).parents[2]
QUIET = ROOT / "tests" / "corpus" / "quiet"
NO_BREADS = {"cups-of-an-army-card", "teaspoons-of-a-british-miller"}
"""One measure of everything, to weigh it."""
CASES = sorted(case for case in (ROOT / "tests" / "reference" / "cases").iterdir() if case.name not in NO_BREADS)
REPORTS = {"yeast-against-time", "preferment-yeast-against-time", "yeast-high", "yeast-low"}
FRESH, INSTANT = "fresh yeast", "instant yeast"


def reports(text: str) -> set[str]:
    return {d.name for d in reports_of(text) if d.name in REPORTS}


SLIPPED = [
    ("autolyse-cold-night", FRESH), ("autolyse-half-hour", INSTANT), ("bran-and-gluten-loaf", FRESH),
    ("by-baked-weight", FRESH), ("loaves-and-rolls", FRESH), ("milk-loaf", FRESH), ("near-names", FRESH),
    ("no-knead", INSTANT), ("no-time-dough", FRESH), ("pearl-sugar-waffles", INSTANT), ("sweet-buns", FRESH),
]  # fmt: skip


@every(SLIPPED, at_least=11)
def test_the_wrong_yeast_is_caught(file: str, yeast: str) -> None:
    """A factor of three. Of a dough at the edge of what is usual one of the two slips cannot be told from a sound one."""
    text = (QUIET / f"{file}.bake").read_text(encoding="utf-8")
    other = INSTANT if yeast == FRESH else FRESH
    assert yeast in text and reports(text) == set()
    assert reports(text.replace(yeast, other))


LOAF = """
formula Printed loaf
  kind {kind}
  makes 10 loaves at 900 g dough

  overall
    bread flour          100%
    water                 62%
    sugar                  {sugar}%
    salt                   1.8%
    {yeast}

  dough
    everything else
    mix slow 8 min
    ferment covered {bulk}
    divide
    shape long
    prove covered {proof}
    bake 35 min at 220 C to 97 C core
    cool 2 h
"""

PRINTED = [
    # Western Wheat Quality Laboratory, test loaf: 1.8 % dry yeast, 90 min with punches, proof 32-33 min at 30 C.
    ("tin loaf", "6", "instant yeast 1.8%", "90 min at 30 C", "33 min at 30 C"),
    # DiMuzio, Bread Baking: intensive mix, instant yeast about 0.7 %, on the bench after 30-60 min; the proof is common practice.
    ("hearth loaf", "0", "instant yeast 0.7%", "45 min at 25 C", "60 min at 27 C"),
    # McGee, On Food and Cooking: overnight 0.25 % of fresh yeast.
    ("hearth loaf", "0", "fresh yeast 0.25%", "12 h at 20 C", "60 min at 24 C"),
    # King Arthur Flour, hearth breads 0.75-1.25 % fresh; hours by DiMuzio's improved mix, bulk 1-2 h.
    ("hearth loaf", "0", "fresh yeast 1.25%", "2 h at 24 C", "60 min at 25 C"),
]  # fmt: skip


@pytest.mark.parametrize(("kind", "sugar", "yeast", "bulk", "proof"), PRINTED)
def test_a_printed_dough_is_quiet(kind: str, sugar: str, yeast: str, bulk: str, proof: str) -> None:
    text = LOAF.format(kind=kind, sugar=sugar, yeast=yeast, bulk=bulk, proof=proof)
    assert reports(text.replace("    sugar                  0%\n", "")) == set()


@every(CASES, at_least=85)
def test_a_published_example_is_quiet(case: Path) -> None:
    """Sponges, poolishes, bigas and straight doughs as millers and manuals print them."""
    assert reports((case / "formula.bake").read_text(encoding="utf-8")) == set()


@pytest.mark.parametrize(
    ("case", "written", "slip"),
    [
        ("w19-sponge-with-true-percent", "fresh yeast            2%", "instant yeast          2%"),
        ("sponge-of-an-army-manual", "fresh yeast            0.625 lb", "fresh yeast            6.25 lb"),
        ("w16-poolish", "fresh yeast            0.2%", "fresh yeast            2%"),
        ("w17-biga", "fresh yeast            0.1%", "fresh yeast            0.01%"),
    ],
)
def test_a_slip_in_a_published_preferment_is_caught(case: str, written: str, slip: str) -> None:
    text = (ROOT / "tests" / "reference" / "cases" / case / "formula.bake").read_text(encoding="utf-8")
    assert written in text
    assert "preferment-yeast-against-time" in reports(text.replace(written, slip, 2))
