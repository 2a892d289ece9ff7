"""Whatever stands in a file, reading it ends, raises nothing, and reports inside the text."""

from __future__ import annotations

from benchmarks.generate import by_weight, in_overall, on_dough_flour, recipe
from hypothesis import given, strategies as st

from manchet.source.text import SourceText
from manchet.workspace.bakery import read

SAID = """formula larder kitchen overall dough levain sour scald soaker poolish stage makes loaves at of all with flour
water salt keep return hold back add everything else mix slow fast 3 min 12-15 h 100% 60 g 76.5 % 1/2 lb to 97 C "words"
, # - – ½ because allow for the what is left percentages preparation per 100 g made class"""
WORDS = st.sampled_from(SAID.split())
LINES = st.builds(lambda depth, words: "  " * depth + " ".join(words), st.integers(0, 4), st.lists(WORDS, max_size=9))
SHUFFLED = st.lists(LINES, max_size=30).map("\n".join)


def hold_inside(text: str) -> None:
    lines = text.replace("\r\n", "\n").split("\n")
    for report in read([SourceText("any.bake", text)]).diagnostics:
        assert report.name and report.message
        for place in (report.place, *(related.place for related in report.related)):
            if place.path == "any.bake":
                assert 1 <= place.line <= len(lines)
                assert 1 <= place.column <= place.end_column <= len(lines[place.end_line - 1]) + 2


@given(st.text(max_size=400))
def test_any_characters(text: str) -> None:
    hold_inside(text)


@given(SHUFFLED)
def test_words_of_the_language_in_any_order(text: str) -> None:
    hold_inside(text)


@given(
    random=st.randoms(use_true_random=False),
    write=st.sampled_from((in_overall, on_dough_flour, lambda bread: by_weight(bread, 1000))),
    data=st.data(),
)
def test_a_sound_formula_with_a_hole_in_it(random: object, write: object, data: st.DataObject) -> None:
    text = write(recipe(random, 1))  # type: ignore[operator,arg-type]
    start = data.draw(st.integers(0, len(text)))
    cut = data.draw(st.integers(0, 40))
    hold_inside(text[:start] + data.draw(st.text(max_size=5)) + text[start + cut :])
