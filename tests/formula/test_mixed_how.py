"""A mix says how: by hand, or on a machine at one of its speeds."""

import pytest
from loaves import PLAIN_LOAF, vary
from works import reports_of


def loaf(mix: str) -> str:
    return vary(PLAIN_LOAF, mix=mix, bake="40 min at 230 C, steam, vent open after 20 min")


def test_a_bare_mix_is_asked() -> None:
    (asked,) = reports_of(loaf("8 min to 25 C"))
    assert (asked.name, asked.place.line) == ("mixed-how", 13)
    assert [fix.title for fix in asked.fixes] == ["write `mix by hand`", "write `mix slow`", "write `mix fast`"]


@pytest.mark.parametrize("mix", ["by hand 8 min", "slow 8 min", "speed 1 8 min", "8 min\n      by hand", "8 min, slow"])
def test_a_mix_that_says_how_is_not(mix: str) -> None:
    assert [r.name for r in reports_of(loaf(mix)) if r.name not in ("read-as", "mix-too-short")] == []
