"""A file written in words of before is read as it always was, and says the words of now."""

from __future__ import annotations

from every import every

from manchet.syntax.line import read_line
from manchet.syntax.openings import LINES, OpeningLine
from manchet.syntax.vocabulary import SHAPES

RESPELT = [(line, before) for line in LINES for before in line.was]


@every(RESPELT, at_least=3)
def test_a_line_in_words_of_before_is_the_same_line(line: OpeningLine, before: str) -> None:
    written = line.example or line.words
    for context in line.under:
        then, now = read_line(written.replace(line.words, before), context), read_line(written, context)
        assert [fault.name for fault in then.faults] == ["old-spelling"] and now.faults == ()
        assert type(then.node) is type(now.node) and then.opens == now.opens
        (fix,) = then.faults[0].fixes
        assert fix.safe and [text for _start, _end, text in fix.parts] == [line.words]


@every(SHAPES, at_least=4)
def test_how_a_piece_lies_needs_no_as(shape: str) -> None:
    (fault,) = read_line(f"shape as {shape} 20 s each", "stage").faults
    assert fault.name == "old-spelling" and fault.fixes[0].parts == ((6, 9 + len(shape), shape),)
    then, now = (read_line(f"shape {written} 20 s each", "stage").node for written in (f"as {shape}", shape))
    assert [type(clause) for clause in then.clauses] == [type(clause) for clause in now.clauses]
