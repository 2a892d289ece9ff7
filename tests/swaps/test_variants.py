"""A variant: what it says takes the place of what its formula says, and nothing else changes."""

from __future__ import annotations

from fractions import Fraction

import pytest
from swaps.bread import STEPS, bread
from works import bakery_of, reports_of

from manchet.batch.pieces import PieceWeights
from manchet.formula.model import Formula
from manchet.workspace.bakery import Bakery


def bakery(variant: str, way: str = "overall") -> Bakery:
    return bakery_of(f"{bread(way).rstrip()}\n  variant other\n{variant}")


def both(variant: str, way: str = "overall") -> tuple[Formula, Formula]:
    found = bakery(variant, way)
    assert [d.message for d in found.diagnostics if d.severity.value == "error"] == []
    one, two = found.formulas
    assert (one.name, two.name) == ("Bread", "Bread, other")
    return one, two


def test_a_variant_that_says_nothing_is_the_formula() -> None:
    one, two = both("")
    assert two._replace(name=one.name, place=one.place) == one


def test_a_line_of_overall_takes_the_place_of_the_same_ingredient() -> None:
    one, two = both("    overall\n      water 60%\n      sugar 1%\n")
    was = {line.name: line.share for line in one.overall}
    assert {line.name: line.share for line in two.overall} == was | {
        "water": Fraction("0.6"),
        "sugar": Fraction("0.01"),
    }


def test_without_takes_an_ingredient_out_everywhere() -> None:
    _, two = both("    without fresh yeast\n")
    assert all(p.key != "fresh yeast" for stage in two.stages for p in stage.portions)
    assert "fresh yeast" not in {line.name for line in two.overall}


def test_without_takes_a_stage_out() -> None:
    _, two = both("    without sponge\n")
    assert [stage.key for stage in two.stages] == ["dough"]


def test_a_stage_takes_the_place_of_the_stage() -> None:
    one, two = both(f"    dough\n      sponge\n      everything else{STEPS.replace(chr(10) + '    ', chr(10) + '      ')}"
                    .replace("5 min", "9 min"))  # fmt: skip
    assert two.stages[-1].steps[0].time != one.stages[-1].steps[0].time
    assert two.overall == one.overall


@pytest.mark.parametrize("line", ["makes 2 loaves at 900 g dough", "from 3 kg flour"])
def test_head_lines_take_the_place_of_those_that_say_the_same(line: str) -> None:
    one, two = both(f"    {line}\n")
    assert PieceWeights(two).written_flour().value != PieceWeights(one).written_flour().value
    assert len(two.makes) == (1 if line.startswith("makes") else 0)


def test_a_variant_of_a_formula_by_weight() -> None:
    _, two = both("    swap fresh yeast for instant yeast\n", "weight")
    assert [made.on for made in two.swapped] == ["instant yeast"]


@pytest.mark.parametrize(
    ("variant", "name"),
    [
        ("    without cardamom\n", "without-what"),
        ("    without dough\n", "without-what"),
        ("    swap lard for butter\n", "swap-not-there"),
        ("    overall\n      watter 60%\n", "unknown-ingredient"),
        ("    overall\n      salt 9 g\n", "weight-in-overall"),
    ],
)
def test_a_slip_in_a_variant_is_one_report_and_the_formula_stands(variant: str, name: str) -> None:
    found = bakery(variant)
    errors = [d for d in found.diagnostics if d.severity.value == "error"]
    assert [error.name for error in errors] == [name]
    assert errors[0].place.line > bread("overall").rstrip().count("\n")
    assert [formula.name for formula in found.formulas] == ["Bread"]


def test_a_formula_by_weight_has_no_overall_to_differ() -> None:
    (report,) = [
        d for d in bakery("    overall\n      water 60%\n", "weight").diagnostics if d.severity.value == "error"
    ]
    assert report.name == "variant-without-overall"


def test_a_mistake_in_what_both_share_is_said_once() -> None:
    text = (
        bread("overall").replace("    mix by hand 5 min", "    mixx by hand 5 min")
        + "  variant other\n    without honey\n"
    )
    reports = reports_of(text)
    assert [d.place.line for d in reports] == [text[: text.index("mixx")].count("\n") + 1]


def test_two_variants_of_one_name() -> None:
    text = bread("overall").rstrip() + "\n  variant other\n  variant other\n"
    assert [d.name for d in reports_of(text)] == ["two-blocks-one-name"]
