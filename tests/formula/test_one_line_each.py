"""In overall one thing has one line, however warm: what a second line says is never lost."""

import pytest
from loaves import PLAIN_LOAF, vary
from works import reports_of


def loaf(first: str, second: str = "") -> str:
    """With two lines where its water was, or one."""
    text = vary(PLAIN_LOAF, bake="40 min at 230 C, steam, vent open after 20 min")
    return text.replace("    water                 70%\n", f"    {first}\n    {second}\n")


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("water 62%", "warm water 5%"),
        ("warm water 35%", "cold water 30%"),
        ("water 62%", "ice 5%"),
        ("water 35% at 40 C", "water 30% at 10 C"),
        ("water 35%", "water 30%, cold"),
    ],
)
def test_two_waters_in_overall_are_one_thing_written_twice(first: str, second: str) -> None:
    (twice,) = (r for r in reports_of(loaf(first, second)) if r.name != "read-as")
    assert (twice.name, twice.place.line) == ("ingredient-twice", 8)
    assert "in a stage, two temperatures may stand apart" in twice.help


def test_a_preparation_twice_in_overall_is_reported() -> None:
    mix = '\npreparation seed mix\n  makes 1 kg dough\n  sunflower seeds 100 g\n  linseed 100 g\n  do "mix" 1 min hands-on\n'
    text = loaf("water 62%", "seed mix 5%\n    seed mix 4%") + mix
    assert [r.name for r in reports_of(text)] == ["ingredient-twice"]


def test_two_waters_in_a_stage_are_two_lines() -> None:
    text = loaf("water 62%").replace(
        "    everything else\n", "    cold water 30%\n    warm water 32%\n    everything else\n"
    )
    assert [r.name for r in reports_of(text)] == []
