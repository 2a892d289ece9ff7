"""A mix says how: by hand, or on a machine at one of its speeds."""

import pytest
from works import reports_of

LOAF = """\
formula Plain loaf
  kind hearth loaf
  makes 4 loaves at 800 g dough

  overall
    white flour 100%
    water 67%
    salt 2%
    instant yeast 0.8%

  dough
    everything else
    {mix}
    ferment covered 90 min at 24 C
    divide
    shape round
    prove covered 60 min at 24 C
    bake 40 min at 230 C, steam, vent open after 20 min
    cool 2 h
"""


def test_a_bare_mix_is_asked() -> None:
    (asked,) = reports_of(LOAF.format(mix="mix 8 min to 25 C"))
    assert (asked.name, asked.place.line) == ("mixed-how", 13)
    assert [fix.title for fix in asked.fixes] == ["write `mix by hand`", "write `mix slow`", "write `mix fast`"]


@pytest.mark.parametrize(
    "mix", ["mix by hand 8 min", "mix slow 8 min", "mix speed 1 8 min", "mix 8 min\n      by hand", "mix 8 min, slow"]
)
def test_a_mix_that_says_how_is_not(mix: str) -> None:
    assert [r.name for r in reports_of(LOAF.format(mix=mix)) if r.name not in ("read-as", "mix-too-short")] == []
