"""Each caution stands at the step that causes it: a table of hazards and steps, over the demo and the corpus."""

from collections.abc import Iterator
from pathlib import Path

from works import bakery_of, works

from manchet.batch.work import Work
from manchet.cautions.caution import Caution
from manchet.cautions.registry import cautions_of
from manchet.sheets.page.house import House
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.caution import (
    all_cautions_at_step,
    caution_note,
    cautions_at_step,
    cautions_of_stage,
)
from manchet.sheets.parts.views import CautionNote
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

ROOT = Path(__file__).parents[2]
QUIET = sorted((ROOT / "tests" / "corpus" / "quiet").glob("*.bake"))


def demo_works() -> Iterator[Work]:
    home = ROOT / "recipes" / "home"
    files = sorted((ROOT / "recipes").rglob("*.bake"))
    for group in ([f for f in files if home not in f.parents], [f for f in files if home in f.parents]):
        yield from works(read([SourceText(f.name, f.read_text(encoding="utf-8")) for f in group]))


GOOD_FOR = "good for"


def step_of(work: Work, found: Caution) -> str:
    """The verb of the step that a caution stands at, after the noun of its branch; "" for a stage as a whole."""
    stage = work.formula.stage(found.at.stage)
    assert stage is not None, found
    if found.at.step is None:
        assert found.at.branch is None
        return ""
    if found.at.branch is None:
        return stage.steps[found.at.step].verb if found.at.step < len(stage.steps) else GOOD_FOR
    assert stage is work.formula.dough
    branch = work.formula.branches[found.at.branch]
    return f"{branch.noun}: {branch.steps[found.at.step].verb}"


def table(work: Work, of: str = "formula") -> set[tuple[str, str, str]]:
    """(hazard, stage, step) of all cautions that have a step."""
    return {(c.name, c.at.stage, step_of(work, c)) for c in cautions_of(work) if c.of == of and c.at.stage}


DEMO = {
    "Copper wreath": {("raw-egg-kept", "dough", "brush")},
    "Ebb rye": {("warm-soak", "seeds", "soak")},
    "Hawser knots": {("lye-corrosive", "dough", "dip")},
    "Lamplight tin": {("rope-weather", "dough", "cool")},
    "Mudlark": {("warm-soak", "toasted seeds", "soak")},
    "Pilot rye": {("warm-and-wet", "scald", "rest")},
    "lye bath": {("lye-mixing", "lye bath", "add"), ("lye-kept", "lye bath", GOOD_FOR)},
    "celeriac under oil": {
        ("cool-it-fast", "celeriac under oil", "chill"),
        ("plants-under-fat", "celeriac under oil", "pack"),
    },
    "egg wash": {("raw-egg-kept", "egg wash", GOOD_FOR)},
    "Herring on rye": {("plants-under-fat", "herring on rye", "top")},
    "slow onions": {("cool-it-fast", "slow onions", "cool")},
    "bean patties": {
        ("hot-oil", "bean patties", "fry"),
        ("cook-egg-through", "bean patties", "fry"),
        ("cool-it-fast", "bean patties", "cool"),
    },
    "Lantern buns": {("hot-oil", "dough", "fry")},
}

OF_THE_HOUSE = {
    "Ebb rye": {("scald-burns", "scald", "mix")},
    "Mist buns": {("steamer-burns", "dough", "steam")},
    "Mooring rings": {("kettle-burns", "dough", "boil")},
    "Pilot rye": {("scald-burns", "scald", "mix")},
    "Night loaf": {("hot-lid", "dough", "bake")},
}
"""Of the posted card, and of a handout at their step."""

CORPUS = {
    "Parlour brioche": {("raw-egg-kept", "dough", "brush")},
    "Corner croissants": {("raw-egg-kept", "dough", "brush")},
    "egg wash": {("raw-egg-kept", "egg wash", GOOD_FOR)},
    "Square pretzels": {("lye-corrosive", "dough", "dip")},
    "lye bath": {("lye-mixing", "lye bath", "")},
    "bean paste": {("cool-it-fast", "bean paste", "cool")},
    "Toast": {("keep-filling-cold", "toast", "top")},
    "Moor pumpernickel": {("warm-and-wet", "scald", "rest")},
    "Seeded harbour rye": {("warm-soak", "soaker", "soak")},
}
"""All that is said of the sound formulas of every school: nothing of the others."""


def test_each_caution_of_the_demo_stands_at_its_step() -> None:
    assert {work.formula.name: at for work in demo_works() if (at := table(work))} == DEMO


def test_each_caution_of_the_corpus_stands_at_its_step() -> None:
    found = {
        work.formula.name: at
        for path in QUIET
        for work in works(bakery_of(path.read_text(encoding="utf-8")))
        if (at := table(work))
    }
    assert found == CORPUS


def test_what_stands_on_the_posted_card_has_its_step_for_a_handout() -> None:
    assert {work.formula.name: at for work in demo_works() if (at := table(work, "hands"))} == OF_THE_HOUSE


PARTED = """formula Row
  kind soft
  makes 4 buns at 100 g dough
  makes 2 loaves at 400 g dough

  dough
    white flour 720 g
    water 460 g
    salt 14 g
    instant yeast 6 g
    mix slow 8 min to 25 C
    ferment covered 60 min at 25 C
    divide
    for the buns
      shape round
      prove 40 min at 28 C
      fry 2 min a side at 175 C
    for the loaves
      shape round
      prove 60 min at 28 C
      bake 35 min at 210 C
      cool 20 min
      slice "12 mm"
"""


def test_a_step_of_a_branch_is_found_in_its_branch() -> None:
    (work,) = works(bakery_of(PARTED))
    assert table(work) == {("hot-oil", "dough", "buns: fry"), ("wrapped-warm", "dough", "loaves: slice")}


def test_a_form_finds_each_caution_once_at_its_step() -> None:
    """Asked for each stage and each step, the parts of a sheet give every caution of the formula, none twice."""
    m = Measures(House(), words_of("British"))
    bakeries = [*demo_works(), *works(bakery_of(PARTED))]
    for work in bakeries:
        cautions, formula = cautions_of(work), work.formula
        shown: list[CautionNote] = []
        for stage in formula.stages:
            shown += cautions_of_stage(cautions, stage.key, m)
            for n in range(len(stage.steps) + 1):
                shown += all_cautions_at_step(cautions, stage.key, n, m)
        for number, branch in enumerate(formula.branches):
            for n in range(len(branch.steps)):
                shown += all_cautions_at_step(cautions, formula.dough.key, n, m, number)
        expected = [caution_note(c, m) for c in cautions if c.of == "formula"]
        assert sorted(shown) == sorted(expected), formula.name


def test_what_is_weighed_is_cautioned_above_the_steps_and_at_none_of_them() -> None:
    m = Measures(House(), words_of("British"))
    bath = "preparation lye bath\n  water 965 g\n  lye 35 g\n  stir 1 min\n  strain\n"
    (work,) = works(bakery_of(bath))
    cautions = cautions_of(work)
    assert len(cautions_of_stage(cautions, "lye bath", m)) == 1
    assert not any(cautions_at_step(cautions, "lye bath", step, m) for step in (0, 1))
