"""What is odd about a figure in itself, and what to write instead."""

from __future__ import annotations

import re

from manchet.syntax.mistakes.faults import Fault, LineFix, in_place
from manchet.syntax.tokens import RawToken


def fault_of(raw: RawToken, body: str) -> Fault:
    """The report of a figure that is odd in itself."""
    written = body[raw.start : raw.end]
    words = {"written": short(written)}
    fixes: tuple[LineFix, ...] = ()
    if raw.fault == "unit-long-form":
        unit = re.search(r"[A-Za-z]+$", written)
        instead = f"{written[: unit.start()].strip()}{'' if raw.unit == '%' else ' '}{raw.unit}" if unit else written
        fixes = (in_place(raw.start, raw.end, instead, safe=True),)
    elif raw.fault == "hyphen-fraction":
        whole, _, rest = written.replace("–", "-").partition("-")
        number = re.match(r"[0-9/½⅓⅔¼¾⅛⅜⅝⅞.]+", rest.strip())
        fraction = number[0] if number else rest
        words |= {"whole": whole.strip(), "fraction": fraction, "instead": f"{whole.strip()} {rest.strip()}"}
    elif raw.fault == "range-backwards":
        ends = re.fullmatch(r"([0-9.]+)(\s?[-–]\s?)([0-9.]+)(.*)", written)
        words["instead"] = "".join((ends[3], ends[2], ends[1], ends[4])) if ends else "40-50 min"
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
    return Fault(raw.fault, raw.start, raw.end, words, fixes)


def short(text: str) -> str:
    """A text short enough to be quoted in a message."""
    return text if len(text) <= 40 else text[:30].rstrip() + " …"
