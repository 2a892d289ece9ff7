"""Hours, minutes and heat, and the folds within a wait."""

from __future__ import annotations

import re
from decimal import Decimal

from manchet.syntax.loose.rules import Rewriter, rule

_FIGURE = "<n> <span>(?: <n> <time>)*"
"""A time or a length with its units: `1 h 15 min`. No temperature, which another may follow: `at 220 C to 97 C`."""

DOUGH_WARMTH = r"(?:[df]?dt|tdt|tt|dough temp(?:erature|\.)?|teigtemperatur)(?: of|:| =)?"
"""How the warmth of the mixed dough is called on printed sheets."""

_TO = r"(?:to|or|\.\.+|~|…)"

TIMES: tuple[Rewriter, ...] = (
    rule(
        r"(?<![\w.])([0-9]+) ?h ?([0-9]{1,2})(?: ?(?:m|min))?\b(?![.%°'])(?! ?(?:[CF]\b|[a-z]*folds?\b|times\b))",
        r"\1 h \2 min",
    ),
    rule(r"(?<![\w.:])([0-9]{1,2}):([0-5][0-9]) h\b", lambda m: _hours(m)),
    rule(
        r"^((?:bulk|ferment|ripen|retard|prove|proof|soak|cool|chill|freeze|thaw|rest)\b.*?)(?<![\w.:])([0-9]{1,2}):([0-5][0-9])(?![\w:])",
        lambda m: m[1] + _hours(m, 2),
    ),
    rule(r"(?<=[0-9])['’](?=[\s,]|$)", " min"),
    rule(r"(<n>) ?mn?(?=[\s,]|$)", r"\1 min"),
    rule(rf"\b(?:from )?between (<n>|{_FIGURE}) and ({_FIGURE})<end>", lambda m: _range(m[1], m[2])),
    rule(r"\b(?:from )?between (<n>) and (<n> [CF])<end>", r"\1-\2"),
    rule(rf"(?<!\bh )(?<!\bmin )(?<![\w.,/])(<n>) ?{_TO} ?({_FIGURE})<end>", lambda m: _range(m[1], m[2])),
    rule(rf"(?<![\w.,/])({_FIGURE}) ?(?:{_TO}|[-–]) ?({_FIGURE})<end>", lambda m: _range(m[1], m[2])),
    rule(r"\bsteam (after <n> (?:min|s)),? (?:for|with) (<n> (?:s|ml))\b", r"steam \2 \1"),
    rule(r"(?<!good )\bfor (?=(?:at least |at most )?<n>(?:-<n>)? <time><end>)", ""),
    rule(r"\bup to (?=<n> <time><end>)", "at most "),
    rule(r"(<n>) more (?=<time><end>)", r"\1 "),
    rule(r"(<n> <time>) more<end>", r"\1"),
    rule(r"\b(?:min\.|minimum) (?=<n> <time><end>)", "at least "),
    rule(r"\b(?:max\.|maximum) (?=<n> <time><end>)", "at most "),
    rule(r"(<n> <time>) (?:per|each|on each|on every) side\b", r"\1 a side"),
    rule(r"\bper (?:piece|loaf|roll|bun)\b", "each"),
    rule(r"(?<=\d) (g|kg|oz|ml) per (?!cent\b|side\b|[0-9])[^\W\d_]+$", r" \1 each"),
    rule(r"^((?:cool|chill|heat|warm|freeze|thaw)\b.* [CF]) in (?=<n>(?:-<n>)? <time>$)", r"\1 "),
)


def _range(low: str, high: str) -> str:
    """The range between two figures. A unit is left out only where both have the same one; before hours and minutes a
    bare number is of hours."""
    lower, upper = _UNIT.findall(low), _UNIT.findall(high)
    if not lower and len(upper) > 1:
        return f"{low} {upper[0]}-{high}"
    return f"{low.removesuffix(f' {upper[0]}') if lower == upper[:1] == upper else low}-{high}"


_UNIT = re.compile("[a-z]+", re.IGNORECASE)


def _hours(match: re.Match[str], first: int = 1) -> str:
    hours, minutes = int(match[first]), int(match[first + 1])
    return " ".join((*(() if not hours else (f"{hours} h",)), *(() if hours and not minutes else (f"{minutes} min",))))


def around(text: str) -> str:
    """`prove 1 h 28 C`, `bake 230 C 30 min`: of a wait it is the warmth around it, and no core is so hot as an oven."""
    found = _BARE_WARMTH.fullmatch(text)
    if found is None or " at " in text or text.count(f"{found['degrees']} {found['scale']}") > 1:
        return text
    degrees, scale = int(found["degrees"].lstrip("-").partition("-")[0]), found["scale"]
    if found["verb"].lower() == "bake" and degrees < (HOTTER_THAN_A_CORE if scale == "C" else 2 * HOTTER_THAN_A_CORE):
        return text
    return f"{found['before'].rstrip()} at {found['degrees']} {scale}{found['after']}"


HOTTER_THAN_A_CORE = 150
"""Celsius; no bread's core passes 100. Our rule."""

_BARE_WARMTH = re.compile(
    r"(?P<before>(?P<verb>bake|ferment|bulk|prove|proof|retard|ripen)\b.*?(?<!\bat)(?<!\bto)(?<!\bof)(?<!or)(?<![@-])) "
    r"(?P<degrees>-?[0-9]{1,3}(?:-[0-9]{1,3})?) (?P<scale>[CF])(?P<after>(?:[ ,].*)?)",
    re.IGNORECASE,
)

HEAT: tuple[Rewriter, ...] = (
    rule(r"\s*@\s*(?=[0-9½¼¾])", " at "),
    rule(r"([0-9]) ?(?:°|º|degrees?|deg\.?) ?(C|F)(?:elsius|ahrenheit)?\b", lambda m: f"{m[1]} {m[2].upper()}"),
    rule(r"([0-9]) ?(C|F)\b", r"\1 \2"),
    rule(r"\bat fan (<n> [CF])\b", r"at \1 fan"),
    rule(r"(?<= [CF]) ?\(?(?:fan|convection)\)?(?=[\s,]|$)", " fan"),
    rule(r"\b(?:dropping|reducing|lowering|going down|down|falling) (?:to )?(?=<n> [CF]\b)", "falling to "),
    rule(r"\b(?:to|until) (?:a )?core (?:temperature |temp\.? )?(?:of )?(<n>(?:-<n>)? [CF])\b", r"to \1 core"),
    rule(r"(?:to |until )?(?:an? )?(?:core|internal) temp(?:erature|\.)? (?:of )?(<n>(?:-<n>)? [CF])\b", r"to \1 core"),
    rule(rf"\b{DOUGH_WARMTH} (?=<n>(?:-<n>)? [CF]\b)", "to "),
    rule(r"\bto (<n>(?:-<n>)? [CF]) (?:final )?dough temp(?:erature|\.)?(?=[\s,]|$)", r"to \1"),
    rule(r"^((?:mix|stir|fold|stretch)\b.*) until (?=<n> [CF]\b)", r"\1 to "),
    rule(r"(?<=[\w,]) (?:à|a) (?=<n> [CF]\b)", " at "),
    rule(
        r"^((?:ferment|bulk|ripen|prove|proof|retard)\b.*?) (?:to|until|till) ([0-9.]+) ?(?:x|×|times)(?: (?:its |the |original )*(?:volume|size))?(?=$|,| [0-9])",
        r"\1 to \2 times its volume",
    ),
    rule(
        r"\b(?:to|until|till) (?:an? )?([0-9]{1,3}) ?% (?:rise|increase|growth|volume increase|increase in volume)\b",
        lambda m: f"to {Decimal(100 + int(m[1])) / 100} times its volume",
    ),
)

_WITHIN: tuple[Rewriter, ...] = (
    rule(r"\b(fold\w*|turn\w*) hourly\b", r"\1 every 1 h"),
    rule(r"\b(fold\w*|turn\w*) (?:half-hourly|every half hour)\b", r"\1 every 30 min"),
    rule(r"\b([0-9]+) (?:sets of )?(?:stretch(?:es)? and |coil |sets of )?folds\b", r"\1 folds"),
    rule(
        r"^(?!stretch\b|coil\b)(.*\w)(,?) (?:and )?fold(?:ing|ed)? ([0-9]+) times (?=every\b)",
        r"\1\2 with \3 folds ",
    ),
    rule(r"(?:\b(at|in) )?(<n> min)(?: intervals| apart)\b", r"every \2"),
    rule(r"(?<!with)(,?) ([0-9]+ (?:folds|turns|stirs)) (?=every\b)", r"\1 with \2 "),
    rule(r"(?:\bwith )?(?:[0-9]+ )?folds after ((?:<n>(?:, | and ))+<n>) min\b", lambda m: _folds_after(m[1])),
    rule(r"(?<=\w)(,?) (?:with )?(?:an? |1 |one )?(fold|turn) (?=after <n> (?:min|h)\b)", r"\1 with a \2 "),
)


def _within(text: str) -> str:
    """Folds within a wait; `do 4 folds every 30 min` is told of none, and is asked about."""
    if text.partition(" ")[0].lower() not in ("do", "give", "perform"):
        for rewriter in _WITHIN:
            text = rewriter(text)
    return text


FOLDS: tuple[Rewriter, ...] = (_within,)


def _folds_after(minutes: str) -> str:
    return " ".join(f"with a fold after {one} min" for one in re.split(r", | and ", minutes))
