"""What can be wrong with a line, as data: a name, where in the line, and the words that fill its message."""

from __future__ import annotations

import re

from manchet.diagnostics.diagnostic import Diagnostic, Edit, Fix
from manchet.diagnostics.reports import remarks_of, report
from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax.tokens import RawToken


class LineFix(NamedTuple):
    """A fix of one line: in each part body[start:end] of it a text is typed instead."""

    parts: tuple[tuple[int, int, str], ...]
    """In order, apart from each other. A text that begins with the end of a line comes in as lines under this one, two spaces
    deeper; what stands behind one inside of another text is a line of its own."""
    title: str
    safe: bool = False

    def of(self, body: str) -> str:
        """The body as it then stands, without a line that comes in below it."""
        for start, end, text in reversed(self.parts):
            body = body[: max(start, 0)] + text + body[max(end, 0) :]
        return body.partition("\n")[0]


def in_place(start: int, end: int, text: str, safe: bool = False, title: str = "") -> LineFix:
    """`text` in place of body[start:end]."""
    return LineFix(((start, end, text),), title or f"write `{text}`", safe)


def two_lines(body: str, first: str, second: str) -> LineFix:
    """The line written as two."""
    return LineFix(((0, len(body), f"{first}\n{second}"),), f"write two lines: `{first}`, and under it `{second}`")


def with_under(body: str, head: str, *lines: str) -> LineFix:
    """The line written as `head`, and what else it says in lines that belong to it."""
    told = " and ".join(f"`{line}`" for line in lines)
    end = len(body)
    parts = ((0, end, head), (end, end, "".join(f"\n{line}" for line in lines)))
    return LineFix(parts, f"write `{head}`, and under it {told}")


def choices(start: int, end: int, *texts: str) -> tuple[LineFix, ...]:
    """One of the texts in place of body[start:end], the likeliest first."""
    return tuple(in_place(start, end, text) for text in dict.fromkeys(texts))


def left_out(body: str, start: int, end: int, figures: bool = False) -> tuple[LineFix, ...]:
    """What body[start:end] says is said in a note under the line, or not at all; but a line keeps its beginning."""
    words = body[start:end]
    gone = (len(body[:start].rstrip(" ,")), end, "")
    if not gone[0] or (_FIGURE.search(words) and not figures):
        return ()  # a figure is lost in no note, unless it is the mistake
    out = LineFix((gone,), f"leave out `{words}`")
    if '"' in words:
        return (out,)
    note = f'note "{words}"'
    return LineFix((gone, (len(body), len(body), f"\n{note}")), f"say it in a line under this one: `{note}`"), out


_FIGURE = re.compile(r"[0-9] ?(?:min|h|s|C|F|g|kg|%)")


class Fault(NamedTuple):
    """A mistake at body[start:end]. `words` fill the message and the help of its name; where that has no help, the fixes are told."""

    name: str
    start: int
    end: int
    words: dict[str, str]
    fixes: tuple[LineFix, ...] = ()
    advice: str = ""
    """What is told where there is neither a help nor a fix by which the whole line could be read."""


class LineTrouble(NamedTuple):
    """A line that could not be read: its text, its pieces, where it stands, the rule it was read by and where that
    stopped (`at` counts pieces of `spans`)."""

    body: str
    raws: tuple[RawToken, ...]
    context: str
    rule: str
    spans: tuple[tuple[int, int], ...]
    at: int
    expected: tuple[str, ...]


REMARKS = remarks_of("syntax")
"""Faults with which a line can still be read."""


def as_report(fault: Fault, line: Line) -> Diagnostic:
    """The report of a fault of a line."""
    from manchet.syntax.mistakes.messages import MESSAGES  # a sound file has no need of them

    message, help = MESSAGES[fault.name]
    place = line.place(fault.start, max(fault.end, fault.start + 1))
    fixes = tuple(_fix(fix, line) for fix in fault.fixes)
    told = help.format(**fault.words) or ("" if fixes else fault.advice)
    return report(fault.name, place, message.format(**fault.words), told, fixes=fixes)


def _fix(fix: LineFix, line: Line) -> Fix:
    return Fix(fix.title, tuple(_edit(*part, line) for part in fix.parts), fix.safe)


def _edit(start: int, end: int, text: str, line: Line) -> Edit:
    if not text.startswith("\n"):
        return Edit(line.place(start, end), text.replace("\n", f"\n{' ' * line.indent}"))
    after = len(line.raw) - line.indent  # behind the remark of the line, if it has one
    return Edit(line.place(after, after), text.replace("\n", f"\n{' ' * (line.indent + 2)}"))
