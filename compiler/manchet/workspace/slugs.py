"""What an output file is called: a name made by us, never taken raw from a formula.

`Tern loaf` is `tern-loaf`, its variant `Tern loaf, by hand` is `tern-loaf--by-hand`, and `Göteborg rye` is
`goteborg-rye-64b87c`: a name of which letters, accents or signs are lost ends in a mark made from all of it. So a file name
follows from its own formula alone, and no two formulas share one. At most 60 letters, figures and hyphens; never a name
that Windows keeps for itself.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import TYPE_CHECKING
from unicodedata import normalize

from manchet.diagnostics.suggest import fold
from manchet.workspace.cache import digest

if TYPE_CHECKING:
    from manchet.workspace.raw_files import Raw

LONGEST = 60
MARK = 6
"""Letters and figures of a mark."""
OF_A_VARIANT = ", "
"""What stands between a formula's name and its variant's."""
NO_KITCHEN = "kitchen"
"""What the cards are called of a bakery that says nothing of its kitchen."""
_RESERVED = frozenset({"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(10))})
_LETTERS = {"ß": "ss", "æ": "ae", "œ": "oe", "ø": "o", "đ": "d", "ð": "d", "ł": "l", "þ": "th", "ı": "i"}


def slug(name: str) -> str:
    """The file name (without its ending) for a formula's name; "" where nothing of the name can be kept."""
    spelled = "".join(_LETTERS.get(letter, letter) for letter in name.casefold())
    plain = normalize("NFKD", spelled).encode("ascii", "ignore").decode().replace("'", "")
    short = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:LONGEST].rstrip("-")
    return f"{short}-1" if short in _RESERVED else short


def _kept(name: str) -> str:
    """The slug of a name, marked where it would be that of another name too."""
    whole = "--".join(_marked(part) for part in fold(name).split(OF_A_VARIANT))
    return whole if len(whole) <= LONGEST else _with_mark(slug(name), name)


def _marked(name: str) -> str:
    short = slug(name)
    return short if short and short.replace("-", " ") == name else _with_mark(short, name)


def _with_mark(short: str, name: str) -> str:
    return f"{(short or 'formula')[: LONGEST - 1 - MARK].rstrip('-')}-{digest(fold(name))[:MARK]}"


def slugs(names: Iterable[str]) -> dict[str, str]:
    """A slug for each name, which follows from that name alone. Only what is one name to a reader (`two-blocks-one-name`, an
    error) is numbered, in the order of the spellings."""
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
    assert len(taken) == len(result)
    return result


def kitchen_slugs(files: Iterable[Raw]) -> frozenset[str]:
    """What the posted cards of the kitchens in some files are called."""
    names = (block.name for file in files for block in file.blocks if block.word == "kitchen")
    return frozenset((NO_KITCHEN, *slugs(name for name in names if name).values()))
