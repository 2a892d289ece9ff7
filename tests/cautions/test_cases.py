"""Whole files, each with the cautions that it has: what they say, how loudly, and at which step. A case stands beside its
neighbour, the same thing done so that nothing is said.

Each names its source in its first line; a limit is a box for the pen, which no sentence goes with.
"""

from pathlib import Path

from every import every
from works import bakery_of, works

from manchet.batch.work import Work
from manchet.cautions.caution import Caution
from manchet.cautions.gate import may_hurt
from manchet.cautions.hazards import HAZARDS
from manchet.cautions.registry import cautions_of
from manchet.diagnostics.diagnostic import Severity

CASES = sorted((Path(__file__).parent / "cases").glob("*.bake"))
SILENCE, MARK = "silence", "#> "


def expected_of(text: str) -> list[str]:
    said = [line.removeprefix(MARK) for line in text.split("\n") if line.startswith(MARK)]
    return sorted(line for line in said if line != SILENCE)


def line_of(found: Caution, work: Work) -> str:
    """`cool-it-fast warning at chill`"""
    stage = work.formula.stage(found.at.stage)
    assert stage is not None, found
    steps = stage.steps if found.at.branch is None else work.formula.branches[found.at.branch].steps
    number = found.at.step
    where = "weighing" if number is None else steps[number].verb if number < len(steps) else "good for"
    return f"{found.name} {found.level} at {where}"


@every([path.stem for path in CASES], at_least=80)
def test_a_file_has_the_cautions_that_it_says(name: str) -> None:
    text = next(path for path in CASES if path.stem == name).read_text(encoding="utf-8")
    assert MARK in text, "what it expects"
    bakery = bakery_of(text)
    errors = [f"{one.name} error" for one in bakery.mistakes if one.severity is Severity.ERROR]
    found = [(one, work) for work in works(bakery) for one in cautions_of(work) if one.of == "formula"]
    assert sorted([*errors, *(line_of(*one) for one in found)]) == expected_of(text)
    assert all(may_hurt(work) for one, work in found if one.level != "limit"), "the gate lets it by"


def test_every_hazard_of_a_formula_has_a_case_that_meets_it() -> None:
    met = {line.split()[0] for path in CASES for line in expected_of(path.read_text(encoding="utf-8"))}
    assert {name for name, hazard in HAZARDS.items() if hazard.of == "formula"} - met == set()


def test_as_many_cases_are_silent_as_a_table_of_neighbours_has() -> None:
    assert sum(not expected_of(path.read_text(encoding="utf-8")) for path in CASES) >= 25
