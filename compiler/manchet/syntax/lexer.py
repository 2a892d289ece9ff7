"""From the pieces of a line to the tokens of the grammar: fixed phrases found, what is left made into names."""

from __future__ import annotations

import re

from manchet.syntax.nodes import Amount, Word
from manchet.syntax.phrases import Phrase, Phrases
from manchet.syntax.tokens import WEIGHTS, RawToken

Value = Word | Amount | None

_NAME_FOLLOWS = frozenset({"PREPOSITION", "ONTO", "_AS"})
_ENDS_NAME = frozenset(
    {"_AT", "_TO", "_TO_PH", "RAMP", "_LOSES", "_TAKES_UP", "_STEAM", "_MAY_WAIT", "_TURN_AFTER", "PROSE", "_AFTER"}
)
"""Phrases that end a free name when a figure or quoted words follow (`in walk in cold room at 4 C`)."""

_DATE = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_WORK = {"fold": "fold", "folds": "fold", "turn": "turn", "turns": "turn", "stir": "stir", "stirs": "stir"}


def fold_word(text: str) -> str:
    """The text with its inner space made single."""
    return " ".join(text.split())


class Tokens:
    """The tokens of a line: their types and their values, side by side.

    `mode` says what is special about the line: in a "list" (and a stage's heading) numbers and quoted words belong to
    names, and every weight is the token WEIGHT; in a "step" a name runs on after in, on, with and as; a "dated" line
    may hold a date, a "plan" clock times and days, one of "days" days of the week alone.
    """

    __slots__ = ("at", "body", "mode", "phrases", "raws", "types", "values")

    def __init__(self, body: str, raws: list[RawToken], phrases: Phrases, mode: str) -> None:
        self.body = body
        self.raws = raws
        self.phrases = phrases
        self.mode = mode
        self.at = 0
        self.types: list[str] = []
        self.values: list[Value] = []

    def add(self, kind: str, value: Value) -> None:
        self.types.append(kind)
        self.values.append(value)

    def opening(self, token: str, canonical: str, size: int) -> None:
        """The words that open the line."""
        self.add(token, Word(canonical, self.raws[0].start, self.raws[size - 1].end))
        self.at = size

    def name(self, start: int, end: int) -> None:
        text = self.body[start:end]
        self.add("NAME", Word(fold_word(text) if "  " in text else text, start, end))

    def whole_rest(self) -> None:
        """What is left of the line is one name, whatever is in it; quotes around all of it are taken off."""
        if self.at < len(self.raws):
            first = self.raws[self.at]
            if first.kind == "QUOTED" and self.at == len(self.raws) - 1:
                self.add("NAME", Word(fold_word(first.text), first.start, first.end))
            else:
                self.name(first.start, len(self.body))
            self.at = len(self.raws)

    def rest(self) -> None:
        """Everything to the end of the line. Never fails: what fits no phrase is a name."""
        raws, mode = self.raws, self.mode
        in_list = mode in ("list", "stage")
        step = mode == "step"
        size = len(raws)
        while self.at < size:
            raw = raws[self.at]
            kind = raw.kind
            if kind == "WORD":
                if step and raw.text == "with" and self._within():
                    continue
                phrase = self._phrase(self.at)
                if phrase is None:
                    self._name(in_list)
                    continue
                last = self.at + len(phrase.rest)
                self.at = last + 1
                self.add(phrase.token, Word(phrase.canonical, raw.start, raws[last].end))
                if step and phrase.token in _NAME_FOLLOWS:
                    self._free_name()
            elif kind == "COMMA":
                if mode != "list" or not self._ends_the_list(self.at + 1):
                    self.add("_COMMA", Word(",", raw.start, raw.end))
                self.at += 1
            elif kind == "QUOTED":
                quoted = not in_list or (self.types and self.types[-1] == "_BECAUSE")
                self.add("QUOTED" if quoted else "NAME", Word(fold_word(raw.text), raw.start, raw.end))
                self.at += 1
            elif kind == "NUMBER" and in_list and not (self.types and self.types[-1] == "_IN"):
                self._name(in_list)
            else:
                self.figure(raw, mode == "list")
                self.at += 1

    def figure(self, raw: RawToken, weight: bool) -> None:
        kind = "WEIGHT" if weight and raw.kind in WEIGHTS else raw.kind
        self.add(kind, Amount(raw.low, raw.high, raw.unit, raw.start, raw.end, raw.smaller))

    def _phrase(self, at: int) -> Phrase | None:
        """The longest fixed phrase at a piece."""
        raws = self.raws
        for phrase in self.phrases.get(raws[at].text, ()):
            size = len(phrase.rest)
            if not size or (
                at + size < len(raws)
                and all(
                    raws[at + 1 + i].text == phrase.rest[i] and raws[at + 1 + i].kind == "WORD" for i in range(size)
                )
            ):
                return phrase
        if self.mode == "list" and raws[at].text == "in" and at + 2 < len(raws) and raws[at + 1].kind == "NUMBER":
            return _IN if raws[at + 2].text in ("additions", "addition") else None
        return None

    def _ends_the_list(self, at: int) -> bool:
        """Whether a comma before this piece stands after the last thing of a list: `add butter, in 3 additions`."""
        phrase = self._phrase(at) if at < len(self.raws) else None
        return phrase is not None and phrase.token in ("_IN", "_AT")

    def _name(self, numbers: bool) -> None:
        """A name: words up to the next phrase, comma, quote or figure; a number belongs to it where `numbers`."""
        raws, start = self.raws, self.raws[self.at].start
        if self.mode == "dated" and _DATE.fullmatch(raws[self.at].text):
            self.add("DATE", Word(raws[self.at].text, start, raws[self.at].end))
            self.at += 1
            return
        end = raws[self.at].end
        self.at += 1
        while self.at < len(raws):
            raw = raws[self.at]
            if raw.kind == "WORD":
                if self._phrase(self.at) is not None or (self.mode == "dated" and _DATE.fullmatch(raw.text)):
                    break
            elif not (numbers and raw.kind == "NUMBER"):
                break
            end = raw.end
            self.at += 1
        self.name(start, end)

    def _free_name(self) -> None:
        """After in, on, with, as: any words up to a comma, a figure, or a phrase that a figure follows."""
        raws, size = self.raws, len(self.raws)
        first = self.at
        while self.at < size:
            raw = raws[self.at]
            if raw.kind == "WORD":
                phrase = self._phrase(self.at)
                if phrase is not None and self.at > first:
                    after = self.at + len(phrase.rest) + 1
                    if phrase.token in _ENDS_NAME and after < size and raws[after].kind not in ("WORD", "COMMA"):
                        break
                    if phrase.token in ("ONE_WORK", "BY_FIRE") or (raw.text == "with" and self._within_at(self.at)):
                        break
                elif raw.text == "for" and self.at > first and self.at + 1 < size and raws[self.at + 1].kind == "TIME":
                    break
            elif raw.kind != "NUMBER" or self.at == first:
                break
            self.at += 1
        if self.at > first:
            self.name(raws[first].start, raws[self.at - 1].end)
        elif first < size and raws[first].kind == "QUOTED":
            self.add("NAME", Word(fold_word(raws[first].text), raws[first].start, raws[first].end))
            self.at += 1

    def _within_at(self, at: int) -> bool:
        """`with 4 folds`, `with 2 turns`: `turns` after a number is a figure by itself."""
        raws = self.raws
        if at + 1 >= len(raws):
            return False
        kind = raws[at + 1].kind
        return kind == "TURNS" or (kind == "NUMBER" and at + 2 < len(raws) and raws[at + 2].text in _WORK)

    def _within(self) -> bool:
        if not self._within_at(self.at):
            return False
        first, number = self.raws[self.at], self.raws[self.at + 1]
        self.add("_WITH", Word("with", first.start, first.end))
        if number.kind == "TURNS":
            self.add("NUMBER", Amount(number.low, number.high, "", number.start, number.end))
            self.add("WORK", Word("turn", number.start, number.end))
            self.at += 2
        else:
            self.figure(number, False)
            work = self.raws[self.at + 2]
            self.add("WORK", Word(_WORK[work.text], work.start, work.end))
            self.at += 3
        return True


_IN = Phrase((), "_IN", "in")
