"""One slip gives one report; a stage may have a number in its name."""

import pytest
from every import every
from works import bakery_of, reports_of

from manchet.diagnostics.diagnostic import Severity

BUILDS = """\
formula Two builds
  makes 1800 g dough

  sour build 1
    medium rye flour 100 g
    water 100 g
    ripe rye starter 20 g
    ripen 6 h at 26 C

  sour build 2
    build 1
    medium rye flour 400 g
    water 400 g
    ripen 6 h at 28 C

  dough
    build 2
    white flour 500 g
    water 300 g
    salt 18 g
    mix slow 5 min
"""

SLIPS = """\
formula Berries
  makes 2 kg dough

  overall
    white flour 100%
    water 65%
    salt 2%
    raisins 20%

  dough
    white flour 100%
    water 65%
    salt 2%
{lines}
    mix slow 5 min
"""


def names(text: str) -> list[tuple[str, int, int]]:
    return [(r.name, r.place.line, r.place.column) for r in reports_of(text)]


def test_a_stage_with_a_number_for_a_name_is_taken_whole() -> None:
    bakery = bakery_of(BUILDS)
    assert [r.name for r in bakery.diagnostics] == []
    (formula,) = bakery.formulas
    assert [p.name for stage in formula.stages for p in stage.portions if p.stage] == ["build 1", "build 2"]


def test_a_number_after_an_ingredient_still_wants_its_unit() -> None:
    assert names(BUILDS.replace("salt 18 g", "salt 18")) == [("missing-unit", 20, 10)]
    assert names(BUILDS.replace("    build 2\n", "    build 3\n")) == [("missing-unit", 17, 11)]


@pytest.mark.parametrize(
    ("lines", "report"),
    [
        ("    hold back raisins\n    mix slow 2 min\n    add raisins", "held-back-but-not-weighed"),
        ("    mix slow 2 min\n    add raisins", "add-of-nothing-held"),
    ],
)
def test_what_is_added_but_not_weighed_is_said_once(lines: str, report: str) -> None:
    assert [name for name, _, _ in names(SLIPS.format(lines=lines))] == [report]


HELD = """\
formula Held
  makes 2 kg dough

  overall
    white flour 100%
    water 65%
    salt 2%

  dough
    everything else
    hold back salt
    mix slow 5 min
    add salt
    mix slow 5 min
"""


@every(
    [
        ("salt 2%", "salt 2,500%", "decimal-comma"),
        ("salt 2%", "salt -2%", "negative-amount"),
        ("salt 2%", "salt 20 g", "weight-in-overall"),
        ("salt 2%", "slat 2%", "unknown-ingredient"),
        ("    everything else\n", "", "everything-else-missing"),
        ("everything else", "the rest", "unknown-word"),
        ("add salt", "add slat", "unknown-ingredient"),
        ("hold back salt", "hold bak salt", "neither-stage-nor-step"),
    ],
    at_least=8,
)
def test_what_follows_from_a_slip_is_not_said(right: str, wrong: str, report: str) -> None:
    """`hold back salt` and `add salt` are right, whatever is wrong with the salt."""
    assert names(HELD) == []
    assert [name for name, _, _ in names(HELD.replace(right, wrong, 1))] == [report]


@every(
    [
        ("  overall", "  overal", "unknown-word", 4, 3),
        ("  overall", "  overall:", "read-as", 4, 3),
        ("    salt 2%", "      salt 2%", "unreadable-line", 7, 7),
        ("makes 2 kg", "makes 1" + "0" * 40 + " kg", "number-too-long", 2, 9),
        ("makes 2 kg dough", "makes 2 kg dough\n  status aproved", "unknown-status", 3, 10),
        ("makes 2 kg dough", "makes 2 kg dough\n  status approved 2026-02-29 by Ada", "no-such-day", 3, 19),
        ("  dough\n", "  overall\n    white flour 100%\n\n  dough\n", "said-twice", 9, 3),
    ],
    at_least=7,
)
def test_a_heading_that_cannot_be_read_still_opens_its_block(
    right: str, wrong: str, report: str, line: int, column: int
) -> None:
    assert names(HELD.replace(right, wrong, 1)) == [(report, line, column)]


@pytest.mark.parametrize("heading", ["polish with 20% of all flour", "poolish with 20% of the flour"])
def test_a_stage_whose_heading_cannot_be_read_is_known_by_its_kind(heading: str) -> None:
    poolish = f"  {heading}\n    white flour 100%\n    water 100%\n    instant yeast 0.1%\n\n  dough\n    poolish\n"
    text = HELD.replace("  dough\n", poolish).replace("    salt 2%\n", "    salt 2%\n    instant yeast 0.5%\n", 1)
    assert [line for _, line, _ in names(text)] == [10]


@pytest.mark.parametrize(("name", "report"), [("moon dust", "unknown-ingredient"), ("yeast", "ambiguous-ingredient")])
def test_a_name_that_means_nothing_is_said_once_with_every_place(name: str, report: str) -> None:
    text = HELD.replace("    salt 2%\n", f"    salt 2%\n    {name} 1%\n").replace(
        "hold back salt", f"hold back salt and {name}"
    )
    (found,) = reports_of(text.replace("    add salt\n", f"    add salt and {name}\n"))
    assert (found.name, found.place.line) == (report, 8)
    assert [also.place.line for also in found.related] == [12, 14]


@pytest.mark.parametrize("wrong", ["salt 0%", "salt 0.0%"])
def test_an_amount_of_nothing_is_asked_about(wrong: str) -> None:
    assert names(HELD.replace("salt 2%", wrong, 1)) == [("nothing-of-it", 7, 10)]


def test_as_many_reports_as_mistakes() -> None:
    """Eight slips that have nothing to do with one another, in one formula."""
    text = """\
formula Eight slips
  makes 10 loaves at 900 g dough

  overall
    white flour 85%
    whole rye flour 10%
    water 70%
    salt 2

  soaker oats
    water 100 g
    soak 2 h at 20 C

  dough
    everything else
    knead 8 min
    ferment at 25 C
    divide
    for the rolls
      shape round
      bake 15 min, steam
"""
    assert [(name, line) for name, line, _ in names(text)] == [
        ("flours-not-100", 4), ("missing-unit", 8), ("never-used", 10), ("percent-and-weight-mixed", 11),
        ("unknown-word", 16), ("step-time-missing", 17), ("unknown-noun", 19), ("heat-missing", 21),
    ]  # fmt: skip


@pytest.mark.parametrize("heading", ["fromula Berries", "formulla Berries"])
def test_a_heading_that_cannot_be_read_hides_no_mistake_under_it(heading: str) -> None:
    text = SLIPS.format(lines="    slat 1%\n    raisins 20%").replace("formula Berries", heading)
    assert {name for name, line, _ in names(text)} == {"unknown-word", "unknown-ingredient"}
    assert [name for name, _ in bakery_of(text).unsound] == ["Berries"]


def test_a_preparation_whose_heading_cannot_be_read_is_not_missed_where_it_is_used() -> None:
    text = SLIPS.format(lines="    raisins 20%").replace(
        "mix slow 5 min", "mix slow 5 min\n    brush with glaze 5 g each"
    )
    glaze = "\npreparaton glaze\n  water 50 g\n  sugar 50 g\n  boil 2 min\n"
    assert [r.name for r in reports_of(text + glaze) if r.severity is Severity.ERROR] == ["unknown-word"]


def test_a_stage_whose_name_is_misspelt_where_it_is_taken_is_not_called_unused_too() -> None:
    text = BUILDS.replace("    build 2\n", "    biuld 600 g\n").replace("sour build 2", "sour build")
    assert [name for name, _, _ in names(text)] == ["unknown-ingredient"]


@every(
    [("    mix slow 5 min, about 5%", "about-amount"), ("    ripe rye starter 2%, coounted apart", "unreadable-line")],
    at_least=2,
)
def test_what_goes_nowhere_is_missed_beside_a_line_that_cannot_bring_it(line: str, report: str) -> None:
    """A step weighs nothing, and a starter has no salt."""
    text = HELD.replace("    everything else\n", "    water 65%\n").replace("    hold back salt\n", "")
    text = text.replace("    add salt\n", f"{line}\n")
    assert {name for name, _, _ in names(text)} == {report, "everything-else-missing"}


def test_a_larders_heading_that_cannot_be_read_hides_no_mistake_under_it() -> None:
    text = "larder House\n  pea flour\n    class other\n    peer 100 g\n      protein 12.0\n      water 10 g\n"
    assert [(name, line) for name, line, _ in names(text)] == [("unknown-word", 4), ("missing-unit", 5)]


def test_a_figure_of_the_dough_does_not_make_a_line_take_the_dough() -> None:
    text = HELD.replace("    everything else\n    hold back salt\n", "").replace("    add salt\n", "")
    text += "    for the loaves\n      add hazellnuts 10% of the dough\n"
    text = text.replace("makes 2 kg dough", "makes 2 loaves at 1 kg dough")
    assert [(name, line) for name, line, _ in names(text)] == [
        ("everything-else-missing", 9),
        ("unknown-ingredient", 13),
    ]


def test_an_ingredient_that_begins_nearly_like_a_step_is_not_said_to_be_missing() -> None:
    text = HELD.replace("    salt 2%\n", "    salt 2%\n    pearl sugar\n")
    text = text.replace("hold back salt", "hold back salt and pearl sugar").replace(
        "add salt", "add salt and pearl sugar"
    )
    assert [(name, line) for name, line, _ in names(text)] == [("unknown-word", 8)]


def test_a_flour_with_a_number_and_no_unit_is_a_flour() -> None:
    text = HELD.replace("    white flour 100%\n", "    white flour 80%\n    wheat 1050 20\n")
    assert [(name, line) for name, line, _ in names(text)] == [("missing-unit", 6)]


def test_what_is_wrong_in_a_dough_with_a_name_is_told_beside_the_name() -> None:
    text = HELD.replace("  dough\n", "  dough 12\n").replace("hold back salt", "hold back butter")
    assert [name for name, _, _ in names(text)] == ["no-dough", "held-back-but-not-weighed", "add-of-nothing-held"]
