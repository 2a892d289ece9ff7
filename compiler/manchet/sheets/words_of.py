"""The printed words of a language: British English is the base, and another language says only what it prints otherwise."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from typing import Any

DEFAULT = "British"
OVERLAYS = {"American": "american"}
"""Every other language that can be printed, by the kitchen's word for it, and the table that is laid over the base."""

LANGUAGES = (DEFAULT, *OVERLAYS)


class Words:
    """A table of printed words. A word that is not in it raises KeyError: a sheet is never silently empty."""

    def __init__(self, table: Mapping[str, Any]) -> None:
        self.table = table

    def __getitem__(self, name: str) -> str:
        """The word or phrase called `name`; `group.name` for one in a group."""
        found: Any = self.table
        for part in name.split("."):
            found = found[part]
        if not isinstance(found, str):
            raise KeyError(name)
        return found

    def say(self, name: str, *values: str) -> str:
        """The phrase called `name` with `values` in the places it leaves open, in their order."""
        pieces = self[name].split("{}")
        if len(pieces) != len(values) + 1:
            raise KeyError(f"{name} takes {len(pieces) - 1}")
        return pieces[0] + "".join(value + piece for value, piece in zip(values, pieces[1:], strict=True))

    def known(self, group: str, name: str) -> str | None:
        """The word for `name` in `group`, or None: for what a file may say freely."""
        word = self.table[group].get(name)
        return word if isinstance(word, str) else None


@cache
def words_of(language: str) -> Words:
    """The table for "British", "American", or "" (then British)."""
    if language in ("", DEFAULT):
        return Words(table_called("british"))
    return Words(laid_over(words_of(DEFAULT).table, table_called(OVERLAYS[language])))


def table_called(name: str) -> dict[str, Any]:
    """One file of words as it stands; raises FileNotFoundError where there is none."""
    return tomllib.loads(files("manchet.sheets").joinpath("words", f"{name}.toml").read_text(encoding="utf-8"))


def laid_over(base: Mapping[str, Any], overlay: Mapping[str, Any]) -> dict[str, Any]:
    """The base with the words of the overlay in place of its own, group by group."""
    return {
        name: laid_over(word, overlay.get(name, {})) if isinstance(word, dict) else overlay.get(name, word)
        for name, word in base.items()
    }
