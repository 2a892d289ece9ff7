"""A caution, as it is printed: what may go wrong, the limit, what to do if it is missed, and who says so.

The words stand in `hazards.toml`, dated, with their sources; `hazards.py` is written from it (`literals`), since
reading TOML would cost every start of the command. No caution says that anything is harmless, and every one gives way
to local codes and licensed practice.
"""

from __future__ import annotations

from typing import NamedTuple


class Caution(NamedTuple):
    """One hazard of a formula or of the house."""

    name: str
    level: str
    """"warning" (boxed at the stage) or "note"."""
    of: str
    """"formula", or "house": those stand on one posted card, and the sheet only points to it."""
    stage: str
    """Key of the stage that causes it, "" for the house."""
    words: str
    limit: str
    """The figure to hold, "" where there is none."""
    reading: str
    """What to write in the box ("C at 2 h and at 6 h"), "" for no box."""
    if_missed: str
    source: str


class Hazard(NamedTuple):
    """What the data says of one hazard, before it is met in a formula."""

    level: str
    of: str
    words: str
    limit: str
    reading: str
    if_missed: str
    source: str


DEFERS = "Local codes and licensed practice come first."
"""Printed once with every set of cautions."""


def caution(name: str, stage: str = "", level: str = "") -> Caution:
    """The caution of that name at that stage; `level` overrules the data's. Raises `KeyError` on an unknown name."""
    from manchet.cautions.hazards import HAZARDS

    h = HAZARDS[name]
    return Caution(name, level or h.level, h.of, stage, h.words, h.limit, h.reading, h.if_missed, h.source)


def literals(toml: str) -> str:
    """The text of `hazards.py` for the text of `hazards.toml`."""
    import tomllib

    data = tomllib.loads(toml)
    dated = data.pop("dated")
    lines = [
        '"""Written from hazards.toml by `python -m manchet.cautions.caution`; change that file, not this one."""',
        "",
        "# fmt: off",
        "from manchet.cautions.caution import Hazard",
        "",
        f'DATED = "{dated}"',
        "",
        "HAZARDS = {",
    ]
    for name, entry in data.items():
        fields = ", ".join(repr(entry.get(field, "")) for field in Hazard._fields)
        lines.append(f"    {name!r}: Hazard({fields}),")
    return "\n".join([*lines, "}", ""])


if __name__ == "__main__":
    from manchet.source.generated import write_beside

    write_beside(__file__, "hazards.toml", "hazards.py", literals)
