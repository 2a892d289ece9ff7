"""How a number is written, and what it is exactly: `1.5`, `.5`, `1 1/2`, `1½`, `½`, `33 1/3`."""

from __future__ import annotations

from fractions import Fraction

VULGAR = {
    "½": Fraction(1, 2), "⅓": Fraction(1, 3), "⅔": Fraction(2, 3), "¼": Fraction(1, 4), "¾": Fraction(3, 4),
    "⅛": Fraction(1, 8), "⅜": Fraction(3, 8), "⅝": Fraction(5, 8), "⅞": Fraction(7, 8), "⅙": Fraction(1, 6),
    "⅚": Fraction(5, 6), "⅕": Fraction(1, 5), "⅖": Fraction(2, 5), "⅗": Fraction(3, 5), "⅘": Fraction(4, 5),
}  # fmt: skip

_SIGNS = "".join(VULGAR)

NUMBER = rf"(?:[0-9]+ ?[{_SIGNS}]|[0-9]+ [0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]*\.[0-9]+|[0-9]+|[{_SIGNS}])"
"""The regular expression of a number: ASCII digits only, no sign, no exponent."""

MOST_DIGITS = 9
MOST_DECIMALS = 6


def is_too_long(text: str) -> bool:
    """More digits than any bakery weighs: at most 9 before the point and 6 after it."""
    if len(text) <= MOST_DECIMALS:
        return False
    whole, _, decimals = text.partition(".")
    longest = max(len(run) for run in whole.replace("/", " ").split(" ")) if whole else 0
    return longest > MOST_DIGITS or len(decimals) > MOST_DECIMALS


def value_of(text: str) -> Fraction | None:
    """The exact value of a text that matches `NUMBER` and is not too long; None where the denominator is 0."""
    if text.isascii():
        if "/" not in text:
            whole, point, decimals = text.partition(".")
            return Fraction(int(whole + decimals), 10 ** len(decimals)) if point else Fraction(int(text))
        whole, _, part = text.rpartition(" ")
        above, _, below = part.partition("/")
        if not int(below):
            return None
        return int(whole or 0) + Fraction(int(above), int(below))
    return int(text[:-1] or 0) + VULGAR[text[-1]]
