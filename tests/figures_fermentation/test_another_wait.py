"""A wait asked for at another time or warmth: what moves, what stays, there and back, and what cannot be asked."""

from fractions import Fraction
from itertools import product

import pytest
from every import every
from figures_fermentation.test_yeast_grid import POOLISH, STRAIGHT
from hypothesis import given, strategies as st
from loaves import HOUSE_POOLISH, LOAF_OF_HOUSE_POOLISH
from run_length import FEW_EXAMPLES
from works import bakery_of

from manchet.batch.order import AS_WRITTEN
from manchet.batch.work import work_of
from manchet.changes.waits import wanted_wait
from manchet.figures.derived import figures_of
from manchet.formula.model import Formula, Stage
from manchet.kitchen.model import PLAIN
from manchet.larder.book import builtin
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.workspace.bakery import Bakery
from manchet.workspace.changes import Changes

PLAIN_POOLISH = POOLISH.format(ripe="12-14 h at 20 C")
PLAIN_STRAIGHT = STRAIGHT.format(bulk="2 h at 26 C with 2 folds every 40 min")

BY_WEIGHT = """
formula By weight
  kind hearth loaf
  makes 2 loaves at 840 g dough

  poolish
    white flour          300 g
    water                300 g
    instant yeast          0.3 g
    ripen covered 12 h at 20 C

  dough
    white flour          700 g
    water                360 g
    salt                  20 g
    instant yeast          4 g
    {poolish}
    mix by hand 8 min to 25 C
    ferment covered 90 min at 25 C
    divide
    shape round
    prove covered 60 min at 25 C
    bake 40 min at 230 C
    cool 2 h
"""

SHARED = HOUSE_POOLISH + LOAF_OF_HOUSE_POOLISH


def bakery(text: str, *waits: str, names: frozenset[str] = frozenset()) -> Bakery:
    return bakery_of(text, changes=Changes((), names, waits))


def moved_formula(text: str, *waits: str) -> Formula:
    found = bakery(text, *waits)
    assert not found.refused and len(found.formulas) == 1, (found.refused, found.diagnostics)
    return found.formulas[0]


def refusal(text: str, wait: str) -> tuple[str, str]:
    (found,) = bakery(text, wait).refused
    return found.message, found.help


def yeast(stage: Stage) -> Fraction:
    return sum((p.share for p in stage.portions if p.ingredient and p.ingredient.class_ == "yeast"), Fraction(0))


def test_the_poolish_is_moved_and_the_dough_keeps_its_yeast() -> None:
    before, after = moved_formula(PLAIN_POOLISH), moved_formula(PLAIN_POOLISH, "poolish 8 h at 24 C")
    times = after.moved[0].times
    assert times == Fraction("1.51"), "13 h at 20 C (0.2198 an hour) for 8 h at 24 C (0.2903)"
    poolish, dough = after.stages[0], after.stages[-1]
    (ripe,) = [step for step in poolish.steps if step.verb == "ripen"]
    assert ripe.time is not None and ripe.time.likely == 8 * 3600 and ripe.heats[0].celsius.likely == 24
    assert yeast(poolish) == yeast(before.stages[0]) * times
    assert yeast(dough) == yeast(before.stages[-1])
    for line, was in zip(after.overall, before.overall, strict=True):
        expected = was.share if line.name != "instant yeast" else was.share + Fraction("0.0003") * (times - 1)
        assert line.share == expected
    assert after.moved[0].in_all_now == next(line.share for line in after.overall if line.name == "instant yeast")


def test_only_the_time_or_only_the_warmth() -> None:
    longer, warmer = moved_formula(PLAIN_POOLISH, "poolish 16 h"), moved_formula(PLAIN_POOLISH, "poolish at 24 C")
    assert longer.moved[0].times == Fraction("0.66") and longer.moved[0].celsius is None
    ripe = next(step for step in warmer.stages[0].steps if step.verb == "ripen")
    assert ripe.time is not None and (ripe.time.low, ripe.time.high) == (12 * 3600, 14 * 3600), "as written"
    assert warmer.moved[0].times == Fraction("0.57")


def test_as_written_nothing_moves() -> None:
    before, after = moved_formula(PLAIN_POOLISH), moved_formula(PLAIN_POOLISH, "poolish 12-14 h at 20 C")
    assert after.moved[0].times == 1
    assert after._replace(moved=()) == before


def test_bulk_proof_and_folds_go_in_proportion() -> None:
    """3 h in all at 26 and 28 C to 6 h at 24 C: by their work, 3 h 55 min and 2 h 5 min; the folds move along."""
    after = moved_formula(PLAIN_STRAIGHT, "dough 6 h at 24 C")
    bulk = next(step for step in after.stages[-1].steps if step.verb == "ferment")
    proofs = {b.noun: next(s for s in b.steps if s.verb == "prove") for b in after.branches}
    assert bulk.time is not None and bulk.time.likely == 235 * 60 and bulk.heats[0].celsius.likely == 24
    assert {noun: step.time.likely / 60 for noun, step in proofs.items() if step.time} == {"loaves": 125, "rolls": 85}
    assert bulk.folds[0].seconds == 80 * 60
    assert after.moved[0].together and yeast(after.stages[-1]) == Fraction("0.015") * after.moved[0].times
    assert after.dough_share - moved_formula(PLAIN_STRAIGHT).dough_share == Fraction("0.015") * (
        after.moved[0].times - 1
    )


@pytest.mark.parametrize("line", ["poolish", "poolish 600.3 g"])
def test_by_weight_all_of_it_is_all_of_it_still(line: str) -> None:
    text = BY_WEIGHT.format(poolish=line)
    before, after = moved_formula(text), moved_formula(text, "poolish 20 h")
    assert after.moved[0].times == Fraction("0.36")
    assert yeast(after.stages[0]) == yeast(before.stages[0]) * Fraction("0.36")
    assert [s.portions[0].share for s in after.stages] == [s.portions[0].share for s in before.stages]


def test_a_stage_of_the_house_is_moved_for_this_run() -> None:
    after = moved_formula(SHARED, "House poolish 8 h at 24 C")
    assert yeast(after.stages[0]) == Fraction("0.0003") * Fraction("1.51")


def test_a_falling_place_is_one_warmth_then() -> None:
    text = PLAIN_POOLISH.replace("20 C\n", "24 C falling to 18 C\n", 1)
    ripe = next(step for step in moved_formula(text, "poolish 10 h at 20 C").stages[0].steps if step.verb == "ripen")
    assert ripe.ramp is None and ripe.heats[0].celsius.likely == 20


def test_clauses_on_lines_of_their_own_are_moved_too() -> None:
    text = PLAIN_POOLISH.replace("ripen covered 12-14 h at 20 C", "ripen covered\n      12-14 h\n      at 20 C")
    ripe = next(step for step in moved_formula(text, "poolish 8 h at 24 C").stages[0].steps if step.verb == "ripen")
    assert ripe.time is not None and (ripe.time.likely, ripe.heats[0].celsius.likely) == (8 * 3600, 24)


@FEW_EXAMPLES
@given(st.integers(6, 24), st.integers(16, 28))
def test_there_and_back_is_the_formula(hours: int, celsius: int) -> None:
    """Moved and moved back: the same yeast, to the two decimals of the factor."""
    there = bakery(PLAIN_POOLISH, f"poolish {hours} h at {celsius} C", "poolish 13 h at 20 C")
    if there.refused:
        return
    before = moved_formula(PLAIN_POOLISH.replace("12-14 h", "13 h"))
    if len(there.formulas[0].moved) < 2:
        return
    first, back = there.formulas[0].moved
    assert abs(first.times * back.times - 1) <= Fraction(1, 50) * max(first.times, back.times)
    assert abs(yeast(there.formulas[0].stages[0]) / yeast(before.stages[0]) - 1) < Fraction(1, 20)
    assert yeast(there.formulas[0].stages[-1]) == yeast(before.stages[-1])


@FEW_EXAMPLES
@given(st.integers(4, 30), st.integers(16, 28))
def test_flour_and_water_stay_as_they_are(hours: int, celsius: int) -> None:
    found = bakery(PLAIN_POOLISH, f"poolish {hours} h at {celsius} C")
    before = moved_formula(PLAIN_POOLISH)
    for after in found.formulas:
        of = {line.name: line.share for line in after.overall}
        assert {n: s for n, s in of.items() if "yeast" not in n} == {
            line.name: line.share for line in before.overall if "yeast" not in line.name
        }


# ---- what cannot be asked -----------------------------------------------------------------------------


@every(
    ["poolish", "16 h at 18 C", "poolish at least 16 h", "poolish 16 C", "poolish 16 h covered", "poolish 4 g",
     "poolish 16 h at", "", "poolish 20 min each"],
    at_least=9,
)  # fmt: skip
def test_no_wait_is_read_from(text: str) -> None:
    assert wanted_wait(text) is None


def test_a_name_of_several_words_and_fahrenheit() -> None:
    asked = wanted_wait("House poolish 16 h at 68 F")
    assert asked is not None and (asked.name, asked.seconds, asked.celsius) == ("House poolish", 57600, 20)


@every(
    [
        ("porlish 8 h", "no stage called porlish", "did you mean poolish?"),
        ("poolish 8 h at 8 C", "from 14 C to 40 C only", "ask for something between"),
        ("poolish 8 h at 46 F", "poolish at 46 F: how fast yeast works is told from 57 F to 104 F only", "between"),
        ("poolish 1 h", "poolish for 1 h lies beyond half and twice the 13 h", "from about 7 h to 26 h"),
        ("poolish 80 h", "poolish for 80 h lies beyond half and twice", "from about 7 h to 26 h"),
        (
            "poolish 12 h at 40 C",
            "poolish for 12 h at 40 C: yeast does not live through 12 h over 35 C",
            "ask for 35 C or cooler",
        ),
        ("dough 4 h", "brings yeast of its own", "yeast can move: poolish (12-14 h at 20 C)"),
        ("poolish 0 h", "0 h is no wait", "say how long it is to wait: 'poolish 12-14 h'"),
        ("poolish 0 min at 26 C", "0 min is no wait", "'poolish 12-14 h at 26 C'"),
        ("poolish 0-16 h", "poolish for 0-16 h: 0 h is no wait", "give its shortest time too: 'poolish 12-14 h'"),
        ("poolish 9999999 h", "lies beyond half and twice", "from about 7 h to 26 h"),
    ],
    at_least=10,
)
def test_refused_in_words_of_the_trade(wait: str, message: str, help: str) -> None:
    said = refusal(PLAIN_POOLISH, wait)
    assert message in said[0] and help in said[1]


def test_of_several_formulas_those_that_cannot_are_left_alone() -> None:
    both = PLAIN_POOLISH + PLAIN_STRAIGHT
    found = bakery(both, "poolish 8 h at 24 C")
    assert not found.refused
    assert {f.name: len(f.moved) for f in found.formulas} == {"Poolish loaf": 1, "Straight loaf": 0}
    assert bakery(both, "levain 8 h").refused
    named = bakery(both, "poolish 8 h", names=frozenset({"straight loaf"}))
    assert [r.message for r in named.refused] == ["Straight loaf has no stage called poolish"]


# ---- as said ------------------------------------------------------------------------------------------


def test_the_sheet_says_that_it_was_asked_for() -> None:
    (line,) = wait_lines(
        moved_formula(PLAIN_POOLISH, "poolish 8 h at 24 C").moved, Measures(House(), words_of("British"))
    )
    assert line.replace("\u00a0", " ") == (
        "poolish: 8 h at 24 °C instead of 12–14 h at 20 °C; so instant yeast × 1.51, 0.15 % of its flour "
        "instead of 0.1 % (estimate), 0.42 % of all flour in total instead of 0.4 %; flour and water as written"
    )
    fahrenheit = House("Letter", "US", "F", "American")
    (line,) = wait_lines(
        moved_formula(PLAIN_POOLISH, "poolish 8 h at 24 C").moved, Measures(fahrenheit, words_of("American"))
    )
    assert "75\u00a0°F" in line and "68\u00a0°F" in line and "°C" not in line


def test_two_shares_that_are_near_have_digits_enough_to_tell_them_apart() -> None:
    text = PLAIN_POOLISH.replace("instant yeast          0.4%", "instant yeast          1%")
    (line,) = wait_lines(moved_formula(text, "poolish 12-15 h at 20 C").moved, Measures(House(), words_of("British")))
    said = line.replace("\u00a0", " ")
    assert "0.998 % of all flour in total instead of 1 %" in said, said


NAMES = ("poolish", "dough", "", "polish", "16 h")
MUCH = (
    "-3 h", "0 h", "0 s", "0.5 min", "½ h", "0-0 h", "16-12 h", "99999999 h", "١٦ h", "16 h at 60 F", "at 0 C", "at 500 C",
     "at -40 F", "16 h at 18 C at 20 F", "12-16 h at 60-68 F", "16 h 30 min", "1e5 h", "0 d at 20 C", "at 18-20 C", "16 d",
)  # fmt: skip


@every(product(NAMES, MUCH), at_least=100)
def test_whatever_is_asked_it_is_moved_or_refused(name: str, much: str) -> None:
    for text in (PLAIN_POOLISH, PLAIN_STRAIGHT):
        found = bakery(text, f"{name} {much}".strip())
        assert len(found.formulas) == 1
        if found.refused:
            assert found.refused[0].message and found.refused[0].help
        elif wanted_wait(f"{name} {much}") is not None:
            assert found.formulas[0].moved and wait_lines(
                found.formulas[0].moved, Measures(House(), words_of("British"))
            )


def test_a_figure_of_its_own() -> None:
    after = moved_formula(PLAIN_POOLISH, "poolish 8 h at 24 C")
    work = work_of(after, AS_WRITTEN, PLAIN, builtin()).value
    assert work is not None
    figure = figures_of(work).totals["wait: poolish"]
    assert figure.value == Fraction("1.51") and "estimate" in figure.rule
    assert [(g.name, g.value) for g in figure.inputs][2:4] == [("asked for", 480), ("as warm as asked for", 24)]


def test_what_was_approved_is_the_file() -> None:
    text = PLAIN_POOLISH.replace("  makes", "  status approved 2026-11-14 by Ines Marrow\n  makes", 1)
    for changes, warned in (
        (Changes(waits=("poolish 8 h",)), True),
        (Changes(("instant yeast for fresh yeast",)), True),
        (None, False),
    ):
        found = bakery_of(text, changes=changes)
        work = work_of(found.formulas[0], AS_WRITTEN, PLAIN, found.larder).value
        assert work is not None
        assert prep_sheet(work, Issue(), House()).warning.startswith("NOT APPROVED") == warned


def test_on_the_doughs_own_flour_the_flour_stays_too() -> None:
    """What the dough takes of a poolish goes by the poolish's weight, and that has a little less yeast in it."""
    text = PLAIN_POOLISH.replace("  makes 20 loaves at 900 g dough\n", "  from 10 kg flour\n  written on dough flour\n")
    text = text[: text.index("  overall")] + text[text.index("  poolish with") :]
    text = text.replace(" with 30% of all flour", "").replace("    poolish\n    everything else\n", "    white flour 100%\n"
           "    water 60%\n    salt 2.6%\n    instant yeast 0.4%\n    poolish 60%\n")  # fmt: skip
    before, after = moved_formula(text), moved_formula(text, "poolish 8 h at 24 C")
    assert yeast(after.stages[0]) == yeast(before.stages[0]) * after.moved[0].times
    shares = [{p.name: p.share for p in f.stages[0].portions if "yeast" not in p.name} for f in (before, after)]
    assert shares[0] == shares[1]
