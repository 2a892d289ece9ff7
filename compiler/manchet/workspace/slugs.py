"""What an output file is called: a name made by us, never taken raw from a formula.

`Göteborg rye, No. 3` is `goteborg-rye-no-3`. At most 60 letters, figures and hyphens; never a name that Windows
keeps for itself; two formulas never share one.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import TYPE_CHECKING
from unicodedata import combining, normalize

from manchet.diagnostics.suggest import fold
from manchet.workspace.cache import digest

if TYPE_CHECKING:
    from manchet.workspace.raw_files import Raw

LONGEST = 60
NO_KITCHEN = "kitchen"
"""What the cards are called of a bakery that says nothing of its kitchen."""
_RESERVED = frozenset({"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(10))})
_LETTERS = {"ß": "ss", "æ": "ae", "œ": "oe", "ø": "o", "đ": "d", "ð": "d", "ł": "l", "þ": "th", "ı": "i"}


def slug(name: str) -> str:
    """The file name (without its ending) for a formula's name; "" where nothing of the name can be kept."""
    spelled = "".join(_LETTERS.get(letter, letter) for letter in name.casefold())
    plain = normalize("NFKD", spelled).encode("ascii", "ignore").decode()
    short = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:LONGEST].rstrip("-")
    return f"{short}-1" if short in _RESERVED else short


def _kept(name: str) -> str:
    """The slug of a name, with a digest where letters of it are lost: `xiao-mai` has them all, of 小麦 none is left."""
    short = slug(name)
    letters = sum(not combining(sign) and sign.isalnum() for sign in normalize("NFKD", name))
    if short and letters <= len(short.replace("-", "")):
        return short
    ending = digest(fold(name))[:6]
    return f"{(short or 'formula')[: LONGEST - 7].rstrip('-')}-{ending}"


def slugs(names: Iterable[str]) -> dict[str, str]:
    """A slug for each name. One that keeps not every letter of its name ends in a digest of it, so that what else there is
    does not change it. Names that differ in signs and accents alone are numbered, in the order of the names themselves."""
    result: dict[str, str] = {}
    taken: set[str] = set()
    for name in sorted(set(names)):
        wanted = _kept(name)
        chosen, number = wanted, 1
        while chosen in taken:
            number += 1
            ending = f"-{number}"
            chosen = wanted[: LONGEST - len(ending)].rstrip("-") + ending
        taken.add(chosen)
        result[name] = chosen
    return result


def kitchen_slugs(files: Iterable[Raw]) -> frozenset[str]:
    """What the posted cards of the kitchens in some files are called."""
    names = (block.name for file in files for block in file.blocks if block.word == "kitchen")
    return frozenset((NO_KITCHEN, *slugs(name for name in names if name).values()))
