"""Every report that Manchet can make, explained: the names, and for each why it matters, a case, and the same put right.

Each package that makes reports keeps its own `explanations.toml`; a new package with such a file is found by itself.
"""

from __future__ import annotations

from functools import cache
from typing import NamedTuple


class Explanation(NamedTuple):
    """What the catalogue knows of one report. `example` and `instead` are bake text, "" where text cannot show it."""

    name: str
    severity: str
    """error, warning or note."""
    title: str
    text: str
    example: str
    instead: str
    package: str
    """The package that makes the report: `checks`, `formula` …"""


def explain(name: str) -> Explanation | None:
    """The entry of that name, None where there is none."""
    return _all().get(name.strip().casefold())


def names() -> tuple[str, ...]:
    """Every name, in the order of the alphabet."""
    return tuple(sorted(_all()))


@cache
def _all() -> dict[str, Explanation]:
    """Raises `ValueError` if two packages explain the same name: a name means one thing, for ever."""
    import tomllib
    from importlib.resources import files

    found: dict[str, Explanation] = {}
    for package in sorted(files("manchet").iterdir(), key=lambda folder: folder.name):
        listing = package / "explanations.toml"
        if not package.is_dir() or not listing.is_file():
            continue
        for name, entry in tomllib.loads(listing.read_text(encoding="utf-8")).items():
            if name in found:
                raise ValueError(f"{name} is explained in {found[name].package} and in {package.name}")
            found[name] = Explanation(
                name,
                entry["severity"],
                entry["title"],
                entry["text"].strip(),
                entry.get("example", "").lstrip("\n"),
                entry.get("instead", "").lstrip("\n"),
                package.name,
            )
    return found
