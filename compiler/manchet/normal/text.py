"""The normal form of a whole text: the safe fixes carried out, each line in its form, blank lines set right.

It needs no larder and no kitchen, but for the English of the house: a text is tidied wherever it stands, sound or not. What
comes of it is read again, and says the same with the same remarks, or nothing is changed.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.diagnostics.outcome import Outcome
from manchet.normal.blank_lines import LaidLine, well_spaced
from manchet.normal.columns import column_of
from manchet.normal.line import normal_line
from manchet.source.mending import mend
from manchet.source.merge_marks import is_unmerged
from manchet.source.text import Line, SourceText
from manchet.syntax.line import read_line
from manchet.syntax.nodes import (
    BlockHead,
    Entry,
    File,
    OverallHead,
    ReservedHead,
    Setting,
    StageHead,
    Unread,
    VariantHead,
)
from manchet.syntax.parser import STEP, parse
from manchet.syntax.sameness import is_same_tree

ALL = 1_000_000
"""Reports: each may bring a safe fix."""
MOST_ROUNDS = 100
"""A safe fix can bring to light another that stood behind it, and the line it is on then has a normal form."""


def normal_text(source: SourceText, words: str = "") -> str:
    """The text in its normal form, in the English of a house's `words` ("American", else British). In time linear in its
    length, as many times as there are rounds of fixes. Never raises."""
    if is_unmerged(source.text):
        return source.text  # whoever joins the two versions finds them as git left them
    american = words == "American"
    text, read = source, parse(source, ALL)
    for _ in range(MOST_ROUNDS):
        before = text.text
        text, read = _if_it_says_the_same(text, read, _laid_out(read.value, american))
        text, read = _if_it_says_the_same(text, read, _mended(text, read))
        if text.text == before:
            break
    return text.text


def normal_row(file: File, number: int, american: bool = False) -> str:
    """The line of this number (from 1) in its normal form, without its end; as it is where it cannot be read."""
    per_100_g = False
    for line, context in zip(file.lines[: number - 1], file.contexts, strict=False):
        if context == "entry":
            per_100_g = _opens_per_100_g(line, context)
    line, context = file.lines[number - 1], file.contexts[number - 1]
    return _row(line, context, per_100_g, american).text


def _if_it_says_the_same(text: SourceText, read: Outcome[File], changed: str) -> tuple[SourceText, Outcome[File]]:
    if changed == text.text:
        return text, read
    other = SourceText(text.path, changed)
    again = parse(other, ALL)
    same = is_same_tree(read.value, again.value) and _remarks(read.value) == _remarks(again.value)
    return (other, again) if same else (text, read)


def _remarks(file: File) -> list[str]:
    return [line.comment.rstrip() for line in file.lines if line.comment]


def _mended(text: SourceText, read: Outcome[File]) -> str:
    """The text with its safe fixes, but for those of lines that are wrong in another way too: these stay as they are."""
    unread = set(_unread(read.value.entries))
    fixes = [fix for report in read.diagnostics for fix in report.fixes if fix.safe]
    return mend(text.path, text.text, [fix for fix in fixes if {edit.place.line for edit in fix.edits} - unread]).text


def _unread(entries: tuple[Entry, ...]) -> Iterator[int]:
    for entry in entries:
        if isinstance(entry.node, Unread):
            yield entry.line.number
        yield from _unread(entry.children)


def _laid_out(file: File, american: bool) -> str:
    rows: list[LaidLine] = []
    per_100_g = False
    for line, context in zip(file.lines, file.contexts, strict=True):
        if context == "entry":
            per_100_g = _opens_per_100_g(line, context)
        rows.append(_row(line, context, per_100_g, american))
    lines = well_spaced(rows)
    return "\n".join([*lines, ""]) if lines else ""


def _opens_per_100_g(line: Line, context: str) -> bool:
    node = read_line(line.body, context).node
    return isinstance(node, Setting) and node.key == "per 100 g"


def _row(line: Line, context: str, per_100_g: bool, american: bool) -> LaidLine:
    body = line.body.lstrip()
    blank = line.raw[: len(line.raw) - len(line.raw.lstrip())]
    spaces = blank.replace("\t", " " * STEP)
    remark = line.comment.rstrip()
    if not body:
        return LaidLine(f"{spaces}{remark}" if remark else "", len(spaces), is_remark=bool(remark))
    if not context or len(spaces) % STEP:  # how deep an odd one is meant may hang on its very letters
        return LaidLine(line.raw)
    normal = normal_line(body, context, column_of(context, len(spaces), per_100_g), american)
    # what is indented by tabs is so until that is mended
    return LaidLine(f"{blank}{normal}{remark and f'  {remark}'}", len(spaces), opens_part=_opens_part(body, context))


def _opens_part(body: str, context: str) -> bool:
    return context in ("top", "formula") and isinstance(read_line(body, context).node, _PARTS)


_PARTS = (BlockHead, ReservedHead, StageHead, OverallHead, VariantHead)
