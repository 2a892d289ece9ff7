"""What is odd about a figure in itself, and what to write instead."""

from __future__ import annotations

import re
from decimal import Decimal, InvalidOperation

from manchet.diagnostics.suggest import nearest
from manchet.quantities.units import LONG_FORMS, UNITS
from manchet.syntax.mistakes.faults import Fault, LineFix, choices, in_place
from manchet.syntax.tokens import RawToken
from manchet.syntax.vocabulary import IN_OVEN


def fault_of(raw: RawToken, body: str) -> Fault:
    """The report of a figure that is odd in itself."""
    written = body[raw.start : raw.end]
    words = {"written": short(written)}
    fixes: tuple[LineFix, ...] = ()
    if raw.fault == "unit-long-form":
        unit = re.search(r"[A-Za-z]+$", written)
        instead = f"{written[: unit.start()].strip()}{'' if raw.unit == '%' else ' '}{raw.unit}" if unit else written
        fixes = (in_place(raw.start, raw.end, instead, safe=True),)
    elif raw.fault == "thousands-point":
        digits = written.rstrip(" abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ")
        exact = re.sub(r"\.?0+$", "", digits)
        fixes = choices(raw.start, raw.end, f"{digits.replace('.', '')} {raw.unit}", f"{exact} {raw.unit}")
    elif raw.fault == "fraction-or-two":
        meant = _of_two(raw, body)
        words["offer"] = " or ".join(f"`{text}`" for text in meant)
        fixes = choices(raw.start, raw.end, *meant)
    elif raw.fault == "hyphen-fraction":
        whole, _, rest = written.replace("–", "-").partition("-")
        number = re.match(r"[0-9/½⅓⅔¼¾⅛⅜⅝⅞.]+", rest.strip())
        fraction = number[0] if number else rest
        words |= {"whole": whole.strip(), "fraction": fraction, "instead": f"{whole.strip()} {rest.strip()}"}
        fixes = choices(raw.start, raw.end, words["instead"])
    elif raw.fault == "range-backwards":
        ends = re.fullmatch(r"([0-9.]+)(\s?[-–]\s?)([0-9.]+)(.*)", written)
        words["instead"] = "".join((ends[3], ends[2], ends[1], ends[4])) if ends else "40-50 min"
        fixes = choices(raw.start, raw.end, words["instead"]) if ends else ()
    elif raw.fault == "number-before-fraction":
        words |= {
            "one": "the number is part of the name",
            "other": "it is all one amount: write it as one decimal number",
        }
        match = re.match(r"([0-9]+) ([0-9]+)/([0-9]+)(.*)", written)
        if match:
            value = int(match[2]) / int(match[3])
            before = " ".join(body[: raw.start].split())
            words["one"] = f"`{match[1]}` is part of the name: write `{before} {match[1]} {value:.4g}{match[4]}`"
            words["other"] = f"it is all one amount: write `{before} {int(match[1]) + value:.7g}{match[4]}`"
            readings = (f"{match[1]} {value:.4g}{match[4]}", f"{int(match[1]) + value:.7g}{match[4]}")
            fixes = choices(raw.start, raw.end, *readings)
    elif raw.fault == "unit-small-c":
        figure = written.removesuffix("c").rstrip()
        fixes = choices(raw.start, raw.end, f"{figure} C", f"{figure} cup")
    elif raw.fault == "range-of-two-kinds":
        low, high = (end.strip() for end in re.split(r"[-–]", written, maxsplit=1))
        bare = not low[-1:].isalpha()  # `45-1 h 15 min`: of hours it would run backwards
        fixes = choices(raw.start, raw.end, *((f"{low} {high.split(' ')[-1]}-{high}",) if bare else (low, high)))
    return Fault(raw.fault, raw.start, raw.end, words, fixes)


def _of_two(raw: RawToken, body: str) -> tuple[str, ...]:
    """What `3/2 kg`, `20/25 min` or `240/220 C` may have been meant as, the likeliest first."""
    match = re.search(r"([0-9]+)/([0-9]+)(.*)", body[raw.start : raw.end])
    if match is None:
        return ()
    one, other = int(match[1]), int(match[2])
    unit = "%" if raw.unit == "%" else f" {raw.unit}"
    found = []
    if one > other and 1 < other <= MOST_PARTS:
        whole, rest = divmod(one, other)
        found.append(f"{whole} {rest}/{other}{unit}" if rest else f"{whole}{unit}")
    if raw.kind == "TEMPERATURE" and one > other and body.partition(" ")[0].lower() in IN_OVEN:
        return (f"{one} {raw.unit} falling to {other} {raw.unit}", f"{one} {raw.unit} top {other} {raw.unit} bottom")
    if raw.kind in ("TIME", "TEMPERATURE"):
        return (*found, f"{min(one, other)}-{max(one, other)}{unit}")
    return (*found, f"{one}{unit}", f"{other}{unit}")


MOST_PARTS = 16
"""A pound has sixteen ounces; nobody writes smaller parts of a weight."""


def short(text: str) -> str:
    """A text short enough to be quoted in a message."""
    return text if len(text) <= 40 else text[:30].rstrip() + " …"


def written_out(raw: RawToken) -> tuple[LineFix, ...]:
    """`2e3g` as `2000 g`, where that can be read at a glance."""
    number, unit = re.fullmatch(r"([0-9.]+e[+-]?[0-9]+)([a-z%]*)", raw.text).groups()  # type: ignore[union-attr]
    try:
        value = f"{Decimal(number):f}"
    except InvalidOperation:
        return ()
    text = f"{value}{' ' if unit.isalpha() else ''}{unit}"
    return choices(raw.start, raw.end, text) if len(value) < 16 else ()


def units_of(number: str, context: str, name: str) -> tuple[str, ...]:
    """How a number of `name` may have been meant, the likeliest first: in `overall` a share; few are counted, as eggs are,
    and of what is one thing alone, as salt, none."""
    grams, share = f"{number} g", f"{number}%"
    last = name.lower().rpartition(" ")[2]
    few = number.isdigit() and int(number) <= MOST_COUNTED and (last.endswith("s") or last in _COUNTED_ONE)
    whole = (f"{number} whole",) if few else ()
    return (share, *whole, grams) if context == "overall" else (*whole, grams, share)


def with_unit_meant(start: int, end: int, number: str, unit: str, context: str) -> tuple[LineFix, ...]:
    """The number with the unit that was meant: a slip of one, or one with a letter too many."""
    if unit in HOW_MANY:
        return ()
    near = nearest(unit, (*UNITS, *LONG_FORMS)) if len(unit) > 2 else next((u for u in UNITS if u == unit[:-1]), None)
    meant = LONG_FORMS.get(near, near) if near else None
    if not meant or (context == "overall" and meant != "%"):
        return ()  # `overall` knows no weight
    return choices(start, end, f"{number}{'' if meant == '%' else ' '}{meant}")


HOW_MANY = frozenset({"times", "x", "pieces", "piece", "pcs", "pc", "stk", "ea"})
"""Words that count and are no unit, and no slip of one."""

_COUNTED_ONE = frozenset({"egg", "yolk", "pod", "bean", "lemon", "orange", "apple", "potato", "banana", "onion"})
"""Things that are counted, where there is one of them; the name of several ends in an s."""

MOST_COUNTED = 60
"""Five trays of a dozen eggs; nobody counts more."""


def range_as_amount(name: str, written: str, start: int) -> Fault:
    """`28-30 qt` of `name`, or of what has none. Of what is poured the flour may decide how much it is."""
    ends = ends_of(written)
    if ends and name.rpartition(" ")[2].lower() in _POURED:
        asked = f"{'-'.join(ends) if ' to ' in written else written}, as the flour asks"
        return _range(
            written, start, f"where more may go in than the low end write `{asked}`; else choose one", asked, *ends
        )
    return _range(written, start, "choose one", *ends)


def _range(written: str, start: int, offer: str, *texts: str) -> Fault:
    end = start + len(written)
    return Fault("range-as-amount", start, end, {"written": written, "offer": offer}, choices(start, end, *texts))


_POURED = frozenset({"water", "milk", "buttermilk", "whey", "beer", "coffee", "tea", "juice", "cider", "kefir", "eggs"})
"""Last words of liquids that a dough is made with. No larder is at hand where a line is read."""


def ends_of(written: str) -> tuple[str, ...]:
    """The two figures of a range, each with a unit: `1 kg` and `1 kg 200 g` of `1-1 kg 200 g`."""
    ends = re.split(r"\s?[-–]\s?(?=[0-9.½⅓⅔¼¾⅛⅜⅝⅞])|\s(?:to|or)\s", written, maxsplit=1)
    if len(ends) < 2:
        return ()
    low, high = ends
    unit = re.search(r"\s?[a-z%]+", high, re.IGNORECASE)
    bare = unit is not None and not re.search(r"[a-z%]$", low, re.IGNORECASE)
    return (f"{low}{unit[0]}" if unit is not None and bare else low, high)
