"""What holds for every text: it is read to its end, lines join back to it, and every place lies inside it."""

from __future__ import annotations

from fractions import Fraction

from fuzz.trials.reading import parsing
from hypothesis import given, strategies as st
from run_length import MANY_EXAMPLES

from manchet.quantities.reading import figure_at
from manchet.quantities.units import COUNTED, UNITS
from manchet.source.text import SourceText

WORDS = st.sampled_from(
    ["formula", "dough", "salt", "2%", "mix", "slow", "5 min", "with", "a fold", "after", "at", "to", "24 C", '"x"', ",",
     "in", "as", "overall", "keep", "what is left", "\n  ", "\n    ", "#", "1/2", "12-15 h", "each", "“", "kitchen", "steam"]
)  # fmt: skip


@MANY_EXAMPLES
@given(st.lists(WORDS, max_size=30).map(" ".join))
def test_any_words_of_the_trade(text: str) -> None:
    parsing(SourceText("x", text))


@MANY_EXAMPLES
@given(st.text(max_size=200))
def test_any_text(text: str) -> None:
    parsing(SourceText("x", text.replace("\r", "")))


@given(st.integers(0, 999_999), st.integers(0, 999_999), st.sampled_from(sorted(set(UNITS) - {"C", *COUNTED})))
def test_a_figure_is_exact(whole: int, part: int, unit: str) -> None:
    figure = figure_at(f"{whole}.{part:06d} {unit}", 0)
    assert figure is not None
    assert (figure.low, figure.unit, figure.fault) == (whole + Fraction(part, 10**6), unit, "")
