"""The headings read off a text are those of its tree, whatever stands in it."""

from __future__ import annotations

from pathlib import Path

from every import every
from hypothesis import given, strategies as st

from manchet.source.files import text_of
from manchet.source.merge_marks import is_unmerged
from manchet.source.text import SourceText
from manchet.syntax.block import Heading
from manchet.syntax.headings import blocks, headings, holds_house
from manchet.syntax.parsed_headings import headings_of
from manchet.syntax.parser import parse

ROOT = Path(__file__).parents[2]
FILES = sorted(path for folder in ("recipes", "tests", "compiler") for path in (ROOT / folder).rglob("*.bake"))

LINES = [
    "formula Rye",
    "formula Rye, dark # ours",
    'formula "Rye #1"',
    'formula "Rye #2"  # ours',
    "formula\u00a0Rye",
    "formula Rye\u00a0bread",
    "formula",
    "formula, Rye",
    "formula: Rye",
    "formula  Rye  bread",
    "formula Ry\u200be",
    "formula Ry\x07e",
    "FORMULA Brötchen",
    "formula 200",
    "formula Rye\u2028  kind x",
    "formula Rye\u2013bread",
    "formula Rye#1",
    "formula ,",
    'formula "Rye',
    "preparation Paste",
    "larder Row",
    "larder",
    "kitchen Row",
    "levain Wheat sour with 20% of all flour",
    "sour",
    "poolish 20%",
    "bake log of May",
    "plan",
    "frmula Rye",
    "variant by hand",
    "  variant by hand",
    "  variant by hand # ours",
    '  variant "by #1"',
    "  variant\u00a0late",
    "  variant",
    "  Variant 2",
    "   variant late",
    "    variant late",
    "  kind hearth loaf",
    "\tvariant late",
    "\u00a0formula Rye",
    " formula Rye",
    "  formula Rye",
    "  # of ours",
    " # of ours",
    "# of ours",
    "",
    "  ",
    "\t",
    "  dough",
    "    white flour 100%",
    "\x1cformula Rye",
    "\ufeffformula Rye",
]


def of_tree(text: str) -> tuple[Heading, ...]:
    return headings_of(parse(SourceText("any.bake", text)).value.entries)


@every(FILES, at_least=200)
def test_of_every_file(file: Path) -> None:
    source = text_of(str(file), file.read_bytes()).value
    assert source is not None
    if not is_unmerged(source.text):  # of a half-finished merge nothing is read but our version
        assert headings(source.text) == of_tree(source.text)


@every(LINES, at_least=50)
def test_of_every_line_alone_and_under_a_formula(line: str) -> None:
    for text in (line, f"{line}\n", f"formula A\n{line}\n  kind x", f"{line}\n  kind x\n  variant B\n\nlarder C"):
        assert headings(text) == of_tree(text)


@given(st.lists(st.sampled_from(LINES), max_size=12).map("\n".join))
def test_of_any_lines(text: str) -> None:
    assert headings(text) == of_tree(text)


@given(
    st.lists(
        st.one_of(st.text(max_size=12), st.sampled_from(["formula", "\n", "\n  ", " ", "variant", '"', "#", "larder"])),
        max_size=14,
    ).map("".join)
)
def test_of_any_text(text: str) -> None:
    text = text.replace("\r", "\n")
    assert headings(text) == of_tree(text)


def names(data: bytes) -> list[str]:
    source = text_of("any.bake", data).value
    assert source is not None
    return [block.name for top in blocks(source.text) for block in top.with_variants()]


def test_a_name_is_what_the_parser_takes_it_for() -> None:
    assert names(b'formula "Rye #1"\nformula "Rye #2"\n') == ["Rye #1", "Rye #2"]
    assert names("formula\u00a0Rye\n".encode()) == ["Rye"]
    assert names(b"\xef\xbb\xbfformula Rye\r  variant late\rformula Oat\r\n") == ["Rye", "Rye, late", "Oat"]
    assert names("formula Rye\u2028formula Oat\n".encode()) == ["Rye\u2028formula Oat"]


def test_a_block_ends_where_the_next_begins() -> None:
    first, second = blocks("# ours\nformula Rye\n  kind x\n\nformula Oat\n  kind y")
    assert [line for line in range(1, 8) if first.holds(line)] == [2, 3, 4]
    assert [line for line in range(1, 8) if second.holds(line)] == [5, 6]
    assert first.text == "formula Rye\n  kind x\n\n"


def test_a_house_has_a_larder_or_a_kitchen() -> None:
    assert holds_house("formula Larder\n\nkitchen Row\n") and holds_house("LARDER\u00a0Row")
    assert not holds_house("formula Larder\n  about x\n# larder\n")
