"""Days and clock times as they are written elsewhere: `Saturday 6.00`, `6am`, `ready by Sat 06:00`."""

from __future__ import annotations

import re

from manchet.syntax.loose.rules import Rewriter, any_of, rule

_SHORT = {
    long: long[:3].capitalize()
    for long in ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
} | {"tues": "Tue", "weds": "Wed", "thur": "Thu", "thurs": "Thu"}

_DAY = "(?:mon|tue|wed|thu|fri|sat|sun)"
_BEFORE = rf"(?:{_DAY}|ready|packed|served|leaves|to|until|from|lit|taken|made|-|[0-9]{{4}}-[0-9]{{2}}-[0-9]{{2}})"
"""What stands before a time of the clock."""

_AT_A_TIME = r",? (?:at )?[0-9]{1,2}(?:[:.h][0-9]{2}| ?[ap]\.?m)"
_WHEN = r"\b((?:every|on|ready|packed|served|leaves|from|to|until|by|before|and|lit|made)[ ]|(?<=day), ?)"
"""What stands after or before a day that is meant. A bread may be called `Sunday plait`, and a customer `Friday club`."""


def _in_24(match: re.Match[str]) -> str:
    """`6am`, `6:30 pm`, `12 pm`; as it stands where there is no such hour."""
    hour, minute, half = int(match[1]), match[2] or "00", match[3][0].lower()
    if not 1 <= hour <= 12:
        return match[0]
    return f"{hour % 12 + (12 if half == 'p' else 0):02}:{minute}"


DAYS: tuple[Rewriter, ...] = (
    rule(rf"(?<=[\w,] )\b({any_of(_SHORT)})\.?(?={_AT_A_TIME})", lambda m: _SHORT[m[1].lower()]),
    rule(rf"{_WHEN}({any_of(_SHORT)})\.?(?=[\s,]|$)", lambda m: f"{m[1]}{_SHORT[m[2].lower()]}"),
    rule(rf"\b({_DAY})\.(?=\s)", r"\1"),
    rule(r"\b([0-9]{1,2})(?:[:.]([0-9]{2}))? ?([ap])\.?m\b\.?", lambda m: _in_24(m)),
    rule(rf"(?<![\w-])({_BEFORE}) (?:at )?([0-9]{{1,2}})[.h]([0-9]{{2}})\b(?!\.)", r"\1 \2:\3"),
    rule(r"(:[0-9]{2} ?[-–] ?[0-9]{1,2})[.h]([0-9]{2})\b", r"\1:\2"),
    rule(rf"({_DAY}),? at (?=[0-9]{{1,2}}:)", r"\1 "),
    rule(r"\b(ready|packed|served|leaves) (?:by|at|for|on|before) ", r"\1 "),
    rule(r"(:[0-9]{2}) ?[-–] ?(?=[0-9]{1,2}:)", r"\1-"),
    rule(rf"(:[0-9]{{2}}) ?[-–] ?(?={_DAY} )", r"\1 to "),
    rule(
        rf"^(van(?: (?!leaves\b|at\b|{_DAY}\b)[^\W\d_]+)?) (?:at )?(?=(?:{_DAY} )?[0-9]{{1,2}}:[0-9]{{2}}\b)",
        r"\1 leaves ",
    ),
    rule(
        r"^([0-9]+) ((?:loaves|rolls|buns|baguettes|plaits)(?: of)?|[^\W\d_]+ of) ([^\W\d_][^,\d]*)(?=,|$)",
        lambda m: _counted(m),
    ),
    rule(r",? with (?:a )?break(?: of)? (?=[0-9])", ", break "),
    rule(r"^on (?:the )?([0-9]{4})[./]([0-9]{2})[./]([0-9]{2})$", r"on \1-\2-\3"),
    rule(r"^every (?:week ?day|day)s? of the week$", "every Mon, Tue, Wed, Thu, Fri, Sat, Sun"),
    rule(rf"^every ((?:{_DAY}(?:, | and |, and | & |/)?)+)$", lambda m: _listed(m[1])),
)


def _counted(match: re.Match[str]) -> str:
    return f"{match[3]} {match[1]} {match[2].removesuffix(' of')}"


def _listed(days: str) -> str:
    return "every " + ", ".join(day.capitalize() for day in re.findall(_DAY, days, re.IGNORECASE))
