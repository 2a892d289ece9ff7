"""The core a bread is done at, where its file says none."""

from __future__ import annotations

import pytest
from every import every
from loaves import PLAIN_LOAF, vary
from works import formula_of

from manchet.figures.limits.lookup import limit
from manchet.figures.oven.core import CORES, core_figures
from manchet.formula.model import Formula
from manchet.syntax.vocabulary import KINDS, Kind


def bread(kind: str, core: str = "") -> Formula:
    text = vary(PLAIN_LOAF, kind=kind, bake=f"10 min at 240 C\n    bake 20 min at 200 C{core}")
    return formula_of(text)


@pytest.mark.parametrize(("kind", "celsius"), [("hearth loaf", 96), ("rye tin loaf", 98), ("soft", 91)])
def test_by_kind(kind: str, celsius: int) -> None:
    """205 F and 195 F are 96 and 91 C."""
    figure = core_figures(bread(kind))["core when done, estimate"]
    assert (figure.value, figure.unit) == (celsius, "C")
    assert figure.source


def test_none_where_the_file_says_it_or_there_is_no_crumb() -> None:
    assert core_figures(bread("hearth loaf", " to 97 C core")) == {}
    assert core_figures(bread("crisp")) == {}


@every([kind for kind in KINDS if kind.core], at_least=12)
def test_no_estimate_is_what_a_check_calls_raw(kind: Kind) -> None:
    least = limit("core-least", kind.word)
    assert least is not None and CORES[kind.core].celsius >= least
