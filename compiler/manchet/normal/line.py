"""The normal form of one line: its own tokens, spelt and spaced anew, a step's clauses in their order.

There is no second grammar here: what a line says is told by the tokens and the tables by which it was read. And every line
proves itself: where what was made of it does not read the same, it stays as it was written.
"""

from __future__ import annotations

from manchet.normal.columns import Column, in_column
from manchet.normal.plans import ABOUT, plan_line
from manchet.normal.wording import SpeltToken, join_words, words_of
from manchet.source.text import line_of
from manchet.syntax.clause_order import AFTER_A_COMMA, place_of, sort_of
from manchet.syntax.clauses import Clause
from manchet.syntax.driver import reductions
from manchet.syntax.lexer import Tokens
from manchet.syntax.line import TABLES, LineTokens, Read, read_line, tokens_of
from manchet.syntax.mistakes.characters import plain
from manchet.syntax.mistakes.faults import REMARKS
from manchet.syntax.nodes import ClauseLine, ReservedHead, StepNode, Unread
from manchet.syntax.openings import STEP
from manchet.syntax.sameness import says_same
from manchet.syntax.tokens import pieces


def normal_line(body: str, context: str, column: Column | None = None, american: bool = False) -> str:
    """The body of a line in a context, in its normal form; as it is where it cannot be read, or has a mistake that is the
    baker's to decide."""
    read = read_line(body, context)
    if not _can_be_written_anew(read):
        return body
    plainly = plain(body)[0]
    tokens = tokens_of(plainly, pieces(plainly), context)
    words = words_of(plainly, tokens, american)
    line = _written(tokens, words, read.node, context, column)
    return line if _proves_itself(line, read, context) else body


def _can_be_written_anew(read: Read) -> bool:
    if read.trouble is not None or read.node is None or isinstance(read.node, (Unread, ReservedHead)):
        return False
    return all(fault.name in _TO_BE_LAID_OUT for fault in read.faults)


_TO_BE_LAID_OUT = REMARKS - {"read-as"}
"""What a line may have against it. A loose spelling is first written down by its fix: its own words are those of no rule."""


def _proves_itself(line: str, before: Read, context: str) -> bool:
    """Whether a line is read as the one it came from, and asks the same. What a safe fix would mend may be mended."""
    if line_of("", 0, line)[3:] != (0, line, ""):
        return False
    after = read_line(line, context)
    open_questions = [fault.name for fault in before.faults if not any(fix.safe for fix in fault.fixes)]
    return (
        after.trouble is None
        and after.opens == before.opens
        and [fault.name for fault in after.faults] == open_questions
        and says_same(after.node, before.node)
    )


def _written(read: LineTokens, words: list[SpeltToken], node: object, context: str, column: Column | None) -> str:
    if isinstance(node, (StepNode, ClauseLine)):
        verb, clauses = _step(read, words, node.clauses)
        if not verb or not clauses:
            return verb or clauses
        return in_column(verb, clauses, column if context == "kitchen" else None)
    if read.rule in ("material", "laid", "tail"):
        return _material(words, column)
    if read.rule in ABOUT:
        return plan_line(read.rule, words, column)
    if read.rule in ("hold_back", "add"):
        return f"{words[0].text} {_listed(words[1:])}"
    if read.rule == "good_for":
        words = [word for word in words if word.kind != "_COMMA"]
    if words[0].kind == "KEEPS_KEY":
        figures = [word for word in words[1:] if word.kind != "_COMMA"]
        keeps = ", ".join(filter(None, (join_words(figures[:1]), join_words(figures[1:]))))
        return in_column(words[0].text, keeps, column)
    if read.rule == "counted" and words[1:]:
        return in_column(words[0].text, join_words(words[1:]), column)
    in_a_column = read.rule in ("setting", "could_be", "ask") or (
        read.rule in ("sale", "contact") and context in ("entry", "kitchen")
    )
    if in_a_column and words[0].kind not in _HEADINGS and words[1:]:
        return in_column(words[0].text, join_words(words[1:]), column)
    return join_words(words)


_HEADINGS = frozenset({"THING", "COMPOSITION_KEY"})
"""What opens lines of a kitchen and a larder that have no value."""


def _material(words: list[SpeltToken], column: Column | None) -> str:
    said = [word for word in words if word.kind != "_COMMA"]
    for at in range(len(said) - 1, 0, -1):
        if said[at].kind in ("BOOKING", "ASKED", "_COUNTED_AS"):
            said.insert(at, SpeltToken("_COMMA", ","))
    return join_words(said) if column is None else in_column(said[0].text, join_words(said[1:]), column)


def _listed(words: list[SpeltToken]) -> str:
    """`salt, butter and water 4%`"""
    items: list[list[SpeltToken]] = [[]]
    for word in words:
        if word.kind in ("_COMMA", "_AND"):
            if items[-1]:
                items.append([])
        else:
            items[-1].append(word)
    *others, last = (join_words(item) for item in items if item)
    return f"{', '.join(others)} and {last}" if others else last


def _step(read: LineTokens, words: list[SpeltToken], clauses: tuple[Clause, ...]) -> tuple[str, str]:
    """The verb of a step, "" on a line of clauses alone; and its clauses in their order."""
    spans = [one for one in reductions(TABLES, read.rule, read.tokens.types) if one.action not in _NO_CLAUSES]
    verb = words[0].text if words[0].kind == "VERB" else ""
    texts = [join_words(words[one.start : one.end]) for one in spans]
    if len(texts) != len(clauses):
        return verb, ""
    line = before = ""
    for clause, text in sorted(zip(clauses, texts, strict=True), key=lambda one: place_of(one[0])):
        if not line:
            line = text
            verb += "," if verb and sort_of(clause) in AFTER_A_COMMA else ""
        elif sort_of(clause) in AFTER_A_COMMA or not _stay_apart(before, text):
            line = f"{line}, {text}"
        else:
            line = f"{line} {text}"
        before = text
    return verb, line


_NO_CLAUSES = frozenset({"step", "clause_line"})


def _stay_apart(one: str, other: str) -> bool:
    """Whether two clauses with a space between them are read as two: a place runs on to a comma or a figure."""
    return _types(f"{one} {other}") == _types(one) + _types(other)


def _types(text: str) -> list[str]:
    tokens = Tokens(text, pieces(text), STEP.phrases, STEP.mode)
    tokens.rest()
    return tokens.types
