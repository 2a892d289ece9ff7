"""Tokens of lines that tell of a day: clock times, days of the week, dates. They mean something in plans and orders alone.

A word of such a line is a name's unless what follows it says otherwise: `ready` is one where a time follows, `old` where a time
stands before it, so that a bread may be called Ready rye, and a customer Bread for all.
"""

from __future__ import annotations

import re

from manchet.syntax.lexer import Tokens
from manchet.syntax.nodes import Word
from manchet.syntax.phrases import Phrase
from manchet.syntax.tokens import RawToken

WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
"""As they are written, small; Monday is the first."""

CLOCK = re.compile(r"[0-9]{1,2}:[0-9]{2}(?:[-–][0-9]{1,2}:[0-9]{2})?")
"""A time of the clock, or from one to another."""
DATE = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")

_BEFORE_A_TIME = frozenset({"ENDING", "_LEAVES", "_LIT", "_TAKEN", "_TO", "_MADE", "_FROM"})
_BEFORE_AN_AMOUNT = frozenset({"SPARE", "_BREAK"})
_BEHIND_A_FIGURE = frozenset({"_OLD", "_FIRES"})
_BEHIND_A_TIME = frozenset({"WHICH", "_WITH"})


class PlanTokens(Tokens):
    """The tokens of such a line. Where its mode is "days", days of the week stand by themselves."""

    __slots__ = ()

    def rest(self) -> None:
        """Everything to the end of the line. Never fails: what is neither a time nor a phrase is a name."""
        raws = self.raws
        while self.at < len(raws):
            raw = raws[self.at]
            kind = time_kind(raws, self.at, self.mode == "days")
            phrase = None if kind else self._phrase(self.at)
            if kind:
                self.add(kind, Word(_in_short(raw.text), raw.start, raw.end))
                self.at += 1
            elif phrase is not None:
                last = self.at + len(phrase.rest)
                self.add(phrase.token, Word(phrase.canonical, raw.start, raws[last].end))
                self.at = last + 1
            elif raw.kind == "COMMA":
                self.add("_COMMA", Word(",", raw.start, raw.end))
                self.at += 1
            elif raw.kind == "QUOTED":
                self.add("NAME", Word(" ".join(raw.text.split()), raw.start, raw.end))
                self.at += 1
            elif raw.kind == "WORD" or self._belongs_to_a_name():
                self._name(True)
            else:
                self.figure(raw, False)
                self.at += 1

    def _name(self, numbers: bool) -> None:
        raws, first = self.raws, self.at
        self.at += 1
        while self.at < len(raws):
            if time_kind(raws, self.at, self.mode == "days") or self._phrase(self.at) is not None:
                break
            if raws[self.at].kind != "WORD" and not self._belongs_to_a_name():
                break
            self.at += 1
        self.name(raws[first].start, raws[self.at - 1].end)

    def _belongs_to_a_name(self) -> bool:
        """A number that another number follows: the last one counts, as in `Rye 80 12 loaves`."""
        raws, at = self.raws, self.at
        return raws[at].kind == "NUMBER" and at + 1 < len(raws) and raws[at + 1].kind == "NUMBER"

    def _phrase(self, at: int) -> Phrase | None:
        """The phrase at a piece, where it stands where it can mean what it says."""
        raws = self.raws
        for phrase in self.phrases.get(raws[at].text, ()) if raws[at].kind == "WORD" else ():
            after = at + len(phrase.rest) + 1
            if [raw.text for raw in raws[at + 1 : after]] == list(phrase.rest) and self._fits(phrase, at, after):
                return phrase
        return None

    def _fits(self, phrase: Phrase, at: int, after: int) -> bool:
        raws, token = self.raws, phrase.token
        if token in _BEFORE_A_TIME:
            return after < len(raws) and time_kind(raws, after) != ""
        if token in _BEFORE_AN_AMOUNT:
            return after < len(raws) and raws[after].kind in ("NUMBER", "MASS", "TIME")
        if token in _BEHIND_A_FIGURE:
            return at > 0 and raws[at - 1].kind in ("NUMBER", "TIME")
        if token in _BEHIND_A_TIME:
            return at > 0 and time_kind(raws, at - 1) != ""
        if token == "_FOR":
            return at == 0 or self._follows_a_count(at)
        return True

    def _follows_a_count(self, at: int) -> bool:
        """`for` begins an order behind a comma, a time, or what is counted; in a name it is a word like others."""
        if self.raws[at - 1].kind != "WORD" or time_kind(self.raws, at - 1):
            return True
        return "_FOR" not in self.types[-1:] and any(kind in ("NUMBER", "MASS") for kind in self.types)


def _in_short(text: str) -> str:
    """A day or a clock time as they are kept: `Sat`, `06:00`."""
    if ":" in text:
        return "-".join(time.rjust(5, "0") for time in text.replace("–", "-").split("-"))
    return text.capitalize()


def time_kind(raws: list[RawToken], at: int, days: bool = False) -> str:
    """ "CLOCK", "DAY", "DATE", or "" for any other piece. A day of the week is one where a clock time follows, or where the line
    is one of `days`."""
    raw = raws[at]
    if raw.kind != "WORD":
        return ""
    if CLOCK.fullmatch(raw.text):
        return "CLOCK"
    if DATE.fullmatch(raw.text):
        return "DATE"
    if raw.text in WEEKDAYS and (days or (at + 1 < len(raws) and CLOCK.fullmatch(raws[at + 1].text))):
        return "DAY"
    return ""
