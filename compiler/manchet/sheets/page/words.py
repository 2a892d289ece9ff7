"""The printed words of a language, gathered from the `words.toml` of every folder that prints.

A folder has its words in British English, the base; under `[american]` it says only what American English prints otherwise.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import Any

DEFAULT = "British"
OVERLAYS = {"American": "american"}
"""Every other language that can be printed, by the kitchen's word for it, and what its part of a file is called."""

LANGUAGES = (DEFAULT, *OVERLAYS)


class Words:
    """A table of printed words. A word that is not in it raises KeyError: a sheet is never silently empty."""

    def __init__(self, table: Mapping[str, Any]) -> None:
        self.table = table

    def __getitem__(self, name: str) -> str:
        """The word or phrase called `name`; `group.name` for one in a group."""
        found = self._found(name)
        if not isinstance(found, str):
            raise KeyError(name)
        return found

    def several(self, name: str) -> tuple[str, ...]:
        """The list of words called `name`."""
        return tuple(self._found(name))

    def say(self, name: str, *values: str) -> str:
        """The phrase called `name` with `values` in the places it leaves open, in their order."""
        return phrase_with(self[name], *values)

    def known(self, group: str, name: str) -> str | None:
        """The word for `name` in `group`, or None: for what a file may say freely."""
        word = self.table[group].get(name)
        return word if isinstance(word, str) else None

    def _found(self, name: str) -> Any:
        found: Any = self.table
        for part in name.split("."):
            found = found[part]
        return found


def phrase_with(phrase: str, *values: str) -> str:
    """A phrase with `values` in the places it leaves open. KeyError where it has more places, or fewer."""
    pieces = phrase.split("{}")
    if len(pieces) != len(values) + 1:
        raise KeyError(f"“{phrase}” takes {len(pieces) - 1}")
    return pieces[0] + "".join(value + piece for value, piece in zip(values, pieces[1:], strict=True))


@cache
def words_of(language: str) -> Words:
    """The words of "British", "American", or "" (then British)."""
    language = language or DEFAULT
    if language == DEFAULT:
        return Words(_gather(DEFAULT))
    return Words(_overlay(words_of(DEFAULT).table, _gather(language)))


def in_language(tag: str) -> Words:
    """The words of a page that says of itself that it is in `en-GB` or `en-US`."""
    return next(words for words in map(words_of, LANGUAGES) if words["language"] == tag)


def words_by_folder(language: str) -> dict[str, dict[str, Any]]:
    """What each folder says in a language, by its path below `sheets`: of an overlay only what it says otherwise."""
    return {folder: _of_language(table, language) for folder, table in _tables().items()}


def _of_language(table: dict[str, Any], language: str) -> dict[str, Any]:
    if language != DEFAULT:
        return dict(table.get(OVERLAYS[language], {}))
    return {name: word for name, word in table.items() if name not in OVERLAYS.values()}


@cache
def _tables() -> dict[str, dict[str, Any]]:
    return {
        folder: tomllib.loads(file.read_text(encoding="utf-8"))
        for folder, file in sorted(_word_files(files("manchet.sheets"), ""))
    }


def _word_files(folder: Traversable, path: str) -> Iterator[tuple[str, Traversable]]:
    for inside in folder.iterdir():
        if inside.name == "words.toml":
            yield path, inside
        elif inside.is_dir() and not inside.name.startswith("_"):
            yield from _word_files(inside, f"{path}/{inside.name}".removeprefix("/"))


def _gather(language: str) -> dict[str, Any]:
    """The words of all folders in one table. A group may be parted between folders; no word stands in two."""
    table: dict[str, Any] = {}
    for said in words_by_folder(language).values():
        for name, word in said.items():
            if isinstance(word, dict):
                table.setdefault(name, {}).update(word)
            else:
                table[name] = word
    return table


def _overlay(base: Mapping[str, Any], overlay: Mapping[str, Any]) -> dict[str, Any]:
    """The base with the words of the overlay in place of its own, group by group."""
    return {
        name: _overlay(word, overlay.get(name, {})) if isinstance(word, dict) else overlay.get(name, word)
        for name, word in base.items()
    }
