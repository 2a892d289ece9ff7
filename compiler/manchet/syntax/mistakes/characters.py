"""Characters that are not what they look like: found before a line is read, outside quotes."""

from __future__ import annotations

import re
import unicodedata

from manchet.syntax.mistakes.faults import Fault, LineFix, choices

_SPACES = "\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"
_DASHES = "\u2010\u2011\u2012\u2014\u2015\u2212\ufe63\uff0d"
_HIDDEN = "\u00ad\u061c\u180e\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060-\u2064\u2066-\u206f\ufeff\ufff9-\ufffb"
_CONTROLS = "\x00-\x08\x0b-\x1f\x7f-\x9f"

_ODD = re.compile(rf"[{_SPACES}]|([{_DASHES}])|([{_HIDDEN}{_CONTROLS}])")
_ODD_ASCII = re.compile(r"[\x00-\x08\x0b-\x1f\x7f]")
_PLAIN = str.maketrans(dict.fromkeys(_SPACES, " ") | dict.fromkeys(_DASHES, "-"))
_QUOTED = re.compile(r'"[^"]*"|“[^”]*”|„[^“”]*[“”]')
MOST_AT_ONCE = 200
"""Changes of one fix of a line; whoever wants more has it mended twice."""
_ALPHABETS = ("LATIN", "CYRILLIC", "GREEK")
_WORD = re.compile(r"[^\W\d_]+")
_LATIN = re.compile(r"[A-Za-z]")
_LATIN_TWIN = str.maketrans(
    "аеорсухіјѕһԁԛԝАВЕКМНОРСТХІЈЅοναΑΒΕΖΗΙΚΜΝΟΡΤΥΧ", "aeopcyxijshdqwABEKMHOPCTXIJSovaABEZHIKMNOPTYX"
)
"""Letters of Cyrillic and Greek that look like Latin ones (Unicode Technical Standard 39, confusables; the letters of a
keyboard alone)."""


def show_character(character: str) -> str:
    """A character as `U+202E RIGHT-TO-LEFT OVERRIDE`."""
    name = unicodedata.name(character, "").lower()
    return f"U+{ord(character):04X}{' ' if name else ''}{name}"


def plain(body: str) -> tuple[str, tuple[Fault, ...]]:
    """The body with odd spaces and dashes outside quotes made plain (its length kept), and a fault for the first of
    each sort: what cannot be seen at all is an error, even in quotes."""
    if body.isascii():
        hidden = _ODD_ASCII.search(body)
        if hidden is None:
            return body, ()
        return body, (_mended(_hidden(hidden), [(*m.span(), "") for m in _ODD_ASCII.finditer(body)]),)
    faults: dict[str, Fault] = {}
    found: dict[str, list[tuple[int, int, str]]] = {}
    quoted = [match.span() for match in _QUOTED.finditer(body)] if '"' in body or "“" in body or "„" in body else []
    span = 0
    for match in _ODD.finditer(body):
        at = match.start()
        while span < len(quoted) and quoted[span][1] <= at:
            span += 1
        inside = span < len(quoted) and quoted[span][0] <= at
        if match[2]:
            faults.setdefault("hidden-character", _hidden(match))
            found.setdefault("hidden-character", []).append((at, at + 1, ""))
        elif not inside:
            name = "odd-dash" if match[1] else "no-break-space"
            faults.setdefault(name, Fault(name, at, at + 1, {"shown": show_character(match[0])}))
            found.setdefault(name, []).append((at, at + 1, match[0].translate(_PLAIN)))
    if faults:
        body = _outside(body, quoted)
    mended = (_mended(fault, found[name]) for name, fault in faults.items())
    return body, tuple(mended)


_WAYS = {
    "hidden-character": "delete it",
    "odd-dash": "type a plain hyphen -",
    "no-break-space": "type a plain space",
}


def _mended(fault: Fault, parts: list[tuple[int, int, str]]) -> Fault:
    """The fault with its fix, which is of all its sort in the line: only the first of them is told."""
    safe = fault.name != "hidden-character"  # what cannot be seen may stand where a letter should
    return fault._replace(fixes=(LineFix(tuple(parts[:MOST_AT_ONCE]), _WAYS[fault.name], safe),))


def _outside(body: str, quoted: list[tuple[int, int]]) -> str:
    parts = []
    at = 0
    for start, end in quoted:
        parts += [body[at:start].translate(_PLAIN), body[start:end]]
        at = end
    return "".join((*parts, body[at:].translate(_PLAIN)))


def _hidden(match: re.Match[str]) -> Fault:
    return Fault("hidden-character", match.start(), match.end(), {"shown": show_character(match[0])})


def look_alike(body: str) -> Fault | None:
    """A word that mixes Latin letters with Cyrillic or Greek ones: nobody types that on purpose."""
    if body.isascii():
        return None
    for word in _WORD.finditer(body):
        if word[0].isascii() or _LATIN.search(word[0]) is None:
            continue
        for at, letter in enumerate(word[0]):
            alphabet = unicodedata.name(letter, "").partition(" ")[0]
            if alphabet in _ALPHABETS[1:]:
                start = word.start()
                return Fault(
                    "look-alike-letter",
                    start,
                    word.end(),
                    {"word": word[0], "shown": f"letter {at + 1} ({show_character(letter)})"},
                    choices(start, word.end(), latin) if (latin := word[0].translate(_LATIN_TWIN)).isascii() else (),
                )
    return None


def other_digit(body: str) -> Fault | None:
    """The first run of digits that are not 0 to 9."""
    if body.isascii():
        return None
    runs = list(re.finditer(r"(?:(?![0-9])\d)+", body))
    if not runs:
        return None
    match = runs[0]
    written = [(*run.span(), "".join(str(unicodedata.digit(digit, 0)) for digit in run[0])) for run in runs]
    instead = written[0][2]
    fix = LineFix(tuple(written[:MOST_AT_ONCE]), "write numbers with 0 to 9" if written[1:] else f"write `{instead}`")
    words = {"shown": show_character(match[0][0]), "instead": instead}
    return Fault("other-digits", match.start(), match.end(), words, (fix,))
