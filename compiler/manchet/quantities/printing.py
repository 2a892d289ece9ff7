"""Exact figures as printed text: the one place that rounds. Halves round up, as a baker does."""

from __future__ import annotations

from fractions import Fraction

FINEST = 12
"""Decimals beyond which nothing is told: a million millionth of a gram."""


def round_to(value: Fraction, places: int) -> Fraction:
    """The nearest figure with so many decimals; a half goes away from zero."""
    step = 10**places
    scaled = abs(value) * step
    whole = (2 * scaled.numerator + scaled.denominator) // (2 * scaled.denominator)
    return Fraction(whole if value >= 0 else -whole, step)


def decimal(value: Fraction, most: int = 2, least: int = 0) -> str:
    """`value` with at most `most` decimals, trailing zeros left out down to `least`."""
    near = round_to(value, most)
    sign = "-" if near < 0 else ""
    whole, rest = divmod(abs(near), 1)
    digits = str(int(rest * 10**most)).rjust(most, "0") if most else ""
    while len(digits) > least and digits.endswith("0"):
        digits = digits[:-1]
    return f"{sign}{int(whole)}.{digits}" if digits else f"{sign}{int(whole)}"


def telling(value: Fraction, places: int) -> int:
    """So many decimals, or more where something that is there would else print as nothing: 0.000001 g is not 0 g."""
    while value and places < FINEST and not round_to(value, places):
        places += 1
    return places


def exact_text(value: Fraction) -> str:
    """The exact figure: a finite decimal where there is one, else `a/b`."""
    twos = fives = 0
    rest = value.denominator
    while rest % 2 == 0:
        rest //= 2
        twos += 1
    while rest % 5 == 0:
        rest //= 5
        fives += 1
    if rest != 1:
        return f"{value.numerator}/{value.denominator}"
    return decimal(value, max(twos, fives))


def rounded_number(value: Fraction) -> int | float:
    """The figure as a number for a machine, with at most six decimals."""
    near = round_to(value, 6)
    return near.numerator if near.denominator == 1 else near.numerator / near.denominator


def mass_text(grams: Fraction) -> str:
    """`1,483 g`, `12.5 g`: whole grams from 100 g, a tenth below that, a hundredth below 1 g."""
    size = abs(grams)
    text = decimal(grams, telling(grams, 0 if size >= 100 else 1 if size >= 1 else 2))
    whole, dot, rest = text.partition(".")
    return f"{int(whole):,}{dot}{rest} g" if size >= 1000 else f"{text} g"
