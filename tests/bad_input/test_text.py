"""Text that is no formula: a clear report at its place, in time linear in its length, never an exception."""

from __future__ import annotations

import pytest
from every import every
from run_length import at_length

from manchet.source.text import SourceText
from manchet.syntax.parser import parse

HEAD = "formula A\n  dough\n    "


def names(text: str) -> list[str]:
    return [report.name for report in parse(SourceText("x", text)).diagnostics]


def test_an_empty_file_says_nothing() -> None:
    for text in ("", "\n\n", "# only this\n", "   \n"):
        out = parse(SourceText("x", text))
        assert out.value.entries == () and out.diagnostics == ()


@every(
    [
        ("salt " + "9" * 10_000 + " g", "number-too-long"),
        ("salt 0." + "1" * 10_000 + " g", "number-too-long"),
        ("salt 1/" + "3" * 10_000 + " g", "number-too-long"),
        ("salt 1e9 g", "number-exponent"),
        ("salt -5 g", "negative-amount"),
        ("salt ٢%", "other-digits"),
        ("salt \u202e2%", "hidden-character"),
        ("sa\u200blt 2%", "hidden-character"),
        ("salt\x1b[31m 2%", "hidden-character"),
        ("salt \x072%", "hidden-character"),
        ("s\u0430lt 2%", "look-alike-letter"),
        ('"salt 2%', "quote-unclosed"),
        ("salt 1,500%", "decimal-comma"),
    ],
    at_least=13,
)
def test_one_report_for_one_odd_line(line: str, name: str) -> None:
    assert names(HEAD + line + "\n") == [name]


def test_names_are_just_names() -> None:
    for name in ("<b>salt</b>", "../../etc/passwd", "salt & pepper", "{{ salt }}", "соль", "食塩", "sel d'été"):
        assert names(f"{HEAD}{name} 2%\n") == [], name


def test_hidden_characters_are_harmless_in_comments() -> None:
    assert names("formula A # \u202e\u200b\n") == []


def test_a_tab_is_said_once() -> None:
    assert names("formula A\n\tdough\n\t\tsalt 2%\n\t\twater 5%\n") == ["tab-indentation"]


def test_sixty_four_deep_and_deeper() -> None:
    deep = "".join("  " * depth + 'note "x"\n' for depth in range(300))
    out = parse(SourceText("x", "formula A\n" + deep))
    assert len(out.diagnostics) <= 21


MEGABYTE = at_length(1_000_000, 50_000)
"""In the long run. What took the square of it would not end in a day."""


def so_long(words: str) -> str:
    return words * (MEGABYTE // len(words))


@pytest.mark.parametrize(
    "line",
    [so_long("a") + " 5%", so_long("1 ") + "g", so_long('"') + '"', *map(so_long, (", ", "with ", "1-", "in "))],
    ids=["word", "numbers", "quotes", "commas", "with", "dashes", "in"],
)
def test_a_line_of_a_megabyte(line: str) -> None:
    for context in (HEAD, HEAD + "mix slow "):
        out = parse(SourceText("x", context + line))
        assert out.value.lines[-1].raw.endswith(line) and len(out.diagnostics) <= 2


def test_a_hundred_thousand_lines() -> None:
    lines = at_length(100_000, 10_000)
    good = "formula A\n  overall\n" + "".join(f"    ingredient {n} {n % 90 + 1}%\n" for n in range(lines))
    out = parse(SourceText("x", good))
    assert out.diagnostics == () and len(out.value.entries[0].children[0].children) == lines
    bad = "formula A\n  dough\n" + "".join(f"    knaed {n} mni\n" for n in range(lines // 5))
    assert len(parse(SourceText("x", bad)).diagnostics) == 21
